/** The steps of a plan as its lines say them: what each uses, coats and lines, how long it takes, and how many hands. */
import type { Clause, Entry, Thing } from "../../grammar/tree";
import { type At, ifKnown, type Loaded, lookUp, type Scope } from "../plan";
import { type Quantity, TIME } from "../units";
import { chosen } from "./choose";
import type { Worker } from "./expressions";
import { type CoatLine, partNames } from "./finish-drying";
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
  const time = (e: StepEntry, kind: "takes" | "wait"): Quantity | undefined => {
    const clause = e.clauses.find((c): c is Extract<Clause, { kind: "takes" | "wait" }> => c.kind === kind);
    return clause && ifKnown(worker.expect(clause.value, file, TIME, "a time, like 40 min,"));
  };
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
    clear &&= named.every((t) => t.name !== "") && !entry.clauses.some((c) => c.kind === "broken");
    const people = entry.clauses.find((c) => c.kind === "people");
    const { keyword, title } = entry;
    return {
      title: title.text,
      at: { file, start: keyword.start, end: Math.max(keyword.end, title.end) },
      entry,
      uses,
      coats: coats.map((t) => ({ ...t, line: lineOf(t, coating), coats: 1 })),
      lines: lined,
      takes: time(entry, "takes"),
      wait: time(entry, "wait"),
      people: people && ifKnown(worker.wholeNumber(people.value, file, "how many people", MOST_PEOPLE)),
    };
  });
  const unread = tree.entries.some((e) => e.kind === "unknown" && e.keyword.text === "step");
  return { lines: withCoats(lines), clear: clear && !unread && !over };
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

const wordsOf = ({ where, name }: Thing): string => [...where, name].map((w) => w.text).join(" ");

/** The coat line that finishes a thing, or most of what it is made of. */
export const lineOf = (thing: StepThing, coating: readonly CoatLine[]): CoatLine | undefined =>
  coating.find(
    ({ pieces, parts }) => thing.pieces.some((i) => pieces.has(i)) || thing.parts.some((p) => parts.has(p)),
  );

/** The coats of a line are dealt to the steps that lay them; the first lay one more where that is not even. */
export function withCoats(lines: readonly StepLine[]): StepLine[] {
  const laid = new Map<string, number[]>();
  lines.forEach((line, n) => {
    for (const name of new Set(line.coats.map((c) => c.name))) laid.set(name, [...(laid.get(name) ?? []), n]);
  });
  return lines.map((line, n) => ({
    ...line,
    coats: line.coats.map((coat) => {
      const steps = laid.get(coat.name) ?? [n];
      const all = coat.line?.coats ?? 1;
      const more = steps.indexOf(n) < all % steps.length ? 1 : 0;
      return { ...coat, coats: Math.max(1, Math.floor(all / steps.length) + more) };
    }),
  }));
}
