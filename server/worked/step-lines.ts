/** The steps of a plan as its lines say them: what each uses, coats and lines, how long it takes, and how many hands. */
import type { Entry, Thing } from "../../grammar/tree";
import { type At, ifKnown, type Loaded, lookUp, type Scope } from "../plan";
import { type Quantity, TIME } from "../units";
import { chosen } from "./choose";
import { wordsOf } from "./coated";
import type { Worker } from "./expressions";
import { type CoatLine, partNames } from "./finish-drying";
import { Reader } from "./settings";
import type { Space } from "./space";

/** A thing that a step names, with what it means. */
export interface StepThing {
  /** As the line says it: `front legs`. */
  readonly words: string;
  /** What its name means: `leg`. */
  readonly name: string;
  readonly thing: Thing | undefined;
  /** Places among all pieces. */
  readonly pieces: readonly number[];
  /** Its parts of which no piece is placed. */
  readonly parts: readonly string[];
}

/** A thing that a step coats: the `coat` line that says with what, and how many coats it gets in this step. */
export interface StepCoat extends StepThing {
  readonly line: CoatLine | undefined;
  readonly coats: number;
}

/** One step as it is said, or as it is proposed. */
export interface StepLine {
  readonly title: string;
  readonly at: At;
  readonly entry: (Entry & { readonly kind: "step" }) | undefined;
  readonly uses: readonly StepThing[];
  readonly coats: readonly StepCoat[];
  readonly lines: readonly StepThing[];
  readonly takes: Quantity | undefined;
  readonly wait: Quantity | undefined;
  readonly people: number | undefined;
  /** Some of its clauses could not be read: nothing is concluded from its times and hands. */
  readonly unread: boolean;
}

export interface StepLines {
  readonly lines: readonly StepLine[];
  /** Every clause of them could be read, and every name in them means something. */
  readonly clear: boolean;
}

/** The most people that one step is worked out for. */
const MOST_PEOPLE = 1000;
/** The most steps that are worked out. */
export const MOST_STEPS = 500;

export function stepLines(
  { files }: Loaded,
  scope: Scope,
  worker: Worker,
  space: Space,
  coating: readonly CoatLine[],
): StepLines {
  const { tree, file } = files[0]!;
  let clear = true;
  const entries = tree.entries.filter((e): e is StepEntry => e.kind === "step");
  const [over] = entries.slice(MOST_STEPS);
  if (over) {
    const at = { file, start: over.keyword.start, end: over.keyword.end };
    worker.fault({
      kind: "too-many",
      at,
      what: "the number of steps",
      found: entries.length,
      limit: MOST_STEPS,
    });
  }
  const meant = new Map<string, StepThing>();
  const lines = entries.slice(0, MOST_STEPS).map((entry): StepLine => {
    const things = (kind: "uses" | "coats" | "lines"): StepThing[] => {
      const all = entry.clauses.flatMap((c) => (c.kind === kind ? c.things : []));
      const named = new Map(all.map((t) => [wordsOf(t), t]));
      return [...named].map(([words, thing]) => {
        const known = meant.get(words) ?? stepThing(thing, space, scope);
        meant.set(words, known);
        return { ...known, thing };
      });
    };
    const [uses, coats, lined] = [things("uses"), things("coats"), things("lines")];
    const named = [...uses, ...coats, ...lined];
    const broken = entry.clauses.some((c) => c.kind === "broken");
    clear &&= named.every((t) => t.name !== "") && !broken;
    const read = new Reader(worker, file, entry.clauses);
    const takes = read.amount("takes", TIME, "a time, like 40 min,", "how long it takes");
    const wait = read.amount("wait", TIME, "a time, like 40 min,", "the wait");
    const hands = read.clause("people");
    const people = hands && worker.wholeNumber(hands.value, file, "how many people", MOST_PEOPLE);
    const { keyword, title } = entry;
    return {
      title: title.text,
      at: { file, start: keyword.start, end: Math.max(keyword.end, title.end) },
      entry,
      uses,
      coats: coats.map((t) => ({ ...t, line: undefined, coats: 1 })),
      lines: lined,
      takes: ifKnown(takes),
      wait: ifKnown(wait),
      people: ifKnown(people),
      unread: broken || [takes, wait, people].some((v) => v && v.state !== "known"),
    };
  });
  const unread = tree.entries.some((e) => e.kind === "unknown" && e.keyword.text === "step");
  return { lines: dealt(lines, coating), clear: clear && !unread && !over };
}

type StepEntry = Entry & { readonly kind: "step" };

/** What a name in a step means; its own name is empty where nothing is called that. */
export function stepThing(thing: Thing, space: Space, scope: Scope): StepThing {
  return {
    words: wordsOf(thing),
    name: lookUp(scope, thing.name.text)?.name ?? "",
    thing,
    pieces: chosen(thing, space, scope),
    parts: partNames(thing, scope).filter((part) => !space.named.has(part)),
  };
}

/**
 * What the steps coat, with the line that says with what. Several lines of one thing are laid in their order, each in steps
 * of its own while there are enough; the coats of a line are dealt to its steps, the first lay one more where that is not even.
 */
function dealt(lines: readonly StepLine[], coating: readonly CoatLine[]): StepLine[] {
  const layers = new Map<string, readonly CoatLine[]>();
  const laid = new Map<number | string, number[]>();
  lines.forEach(({ coats }, n) => {
    for (const thing of coats) {
      if (!layers.has(thing.words)) layers.set(thing.words, layersOn(thing, coating));
      for (const one of madeOf(thing)) {
        const steps = laid.get(one);
        if (!steps) laid.set(one, [n]);
        else if (steps.at(-1) !== n) steps.push(n);
      }
    }
  });
  return lines.map((line, n) => ({
    ...line,
    coats: line.coats.flatMap((thing): StepCoat[] => {
      let steps = [n];
      for (const one of madeOf(thing)) if (laid.get(one)!.length > steps.length) steps = laid.get(one)!;
      const own = layers.get(thing.words)!;
      return own.length === 0 ? [thing] : shareOf(steps.indexOf(n), steps.length, own, thing);
    }),
  }));
}

/** Places of the pieces of a thing, and its parts that stand nowhere. */
const madeOf = ({ pieces, parts }: StepThing): readonly (number | string)[] => [...pieces, ...parts];

/** The coat lines that finish a thing, or most of what it is made of. */
function layersOn(thing: StepThing, coating: readonly CoatLine[]): CoatLine[] {
  const counts = coating.map(
    ({ pieces, parts }) =>
      thing.pieces.filter((i) => pieces.has(i)).length + thing.parts.filter((p) => parts.has(p)).length,
  );
  const most = counts.reduce((a, b) => Math.max(a, b), 0);
  return most === 0 ? [] : coating.filter((_, k) => counts[k] === most);
}

/** What the nth of the steps that coat a thing lays on it. */
function shareOf(nth: number, steps: number, layers: readonly CoatLine[], thing: StepThing): StepCoat[] {
  let left = Math.max(0, steps - layers.length);
  let first = 0;
  return layers.flatMap((line, k): StepCoat[] => {
    const more = k === layers.length - 1 ? left : Math.min(left, line.coats - 1);
    const count = 1 + more;
    // What there is no step for is laid in the last.
    const own = nth - Math.min(first, steps - 1);
    left -= more;
    first += count;
    if (own < 0 || own >= count) return [];
    const odd = own < line.coats % count ? 1 : 0;
    return [{ ...thing, line, coats: Math.max(1, Math.floor(line.coats / count) + odd) }];
  });
}
