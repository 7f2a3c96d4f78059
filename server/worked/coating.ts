/** What is finished, and with how much: the surface of the pieces that a `coat` line names, less what lies on other wood. */
import type { Entry } from "../../grammar/tree";
import { type At, chain, ifKnown, known, type Loaded, MISTAKE, map, type Value } from "../plan";
import { endGrainThirst, roughThirst, usualCoats } from "../trade";
import { AREA, type Quantity, roughly, VOLUME } from "../units";
import type { Assumption } from "./assumptions";
import { type CoatedArea, type CoatedIn, coatedBy, type Loose, seenOf, wordsOf } from "./coated";
import type { Worker } from "./expressions";
import { type Coverage, type Finish, MOST_COATS } from "./finishes";
import { Reader } from "./settings";
import { Surfaces } from "./surfaces";

export interface CoatWork {
  readonly entry: Entry & { kind: "coat" };
  readonly at: At;
  /** "front legs and side", as the line says them. */
  readonly title: string;
  /** Undefined after a fault at its name. */
  readonly finish: Finish | undefined;
  /** Its things as the line says them. */
  readonly things: readonly string[];
  /** Identities of the placed pieces, each once; empty where none is placed. */
  readonly pieces: readonly string[];
  /** Pieces that stand nowhere: the whole of each is counted. */
  readonly loose: readonly Loose[];
  /** One coat on one copy of the plan: what is seen of these pieces once they stand. */
  readonly exposed: Value<Quantity>;
  /** What of them lies on other wood, and is left out; undefined where `exposed` is not known. */
  readonly hidden: Quantity | undefined;
  /** The part of `exposed` that is end grain. */
  readonly ends: Quantity | undefined;
  readonly coats: Value<number>;
  readonly coatsFrom: "line" | "finish" | "assumed";
  /** Some of it is of rough or painted stock. */
  readonly rough: boolean;
  /** All coats of one copy, by the cautious end of how far the finish goes. */
  readonly amount: Value<Quantity>;
  /** The same by the other end of what is published; undefined where both are one. */
  readonly least: Quantity | undefined;
  /** How long a coat dries. */
  readonly dries: Quantity | undefined;
  readonly assumed: readonly Assumption[];
}

export interface CoatInput extends CoatedIn {
  readonly loaded: Loaded;
  readonly worker: Worker;
  readonly finishes: readonly Finish[];
}

/** The `coat` lines of the plan, in their order. */
export function coatsOf(input: CoatInput): CoatWork[] {
  const main = input.loaded.files[0]!;
  const surfaces = new Surfaces();
  return main.tree.entries.filter(isCoat).map((entry) => workCoat(entry, main.file, input, surfaces));
}

const isCoat = (entry: Entry): entry is CoatWork["entry"] => entry.kind === "coat";

function workCoat(entry: CoatWork["entry"], file: string, input: CoatInput, surfaces: Surfaces): CoatWork {
  const { space, worker } = input;
  const finish = input.finishes.find((f) => f.name === entry.with.text);
  const { coats, coatsFrom } = coatsIn(entry, file, finish, worker);
  const coated = coatedBy(entry.things, input);
  const seen = chain(coated, (c) => seenOf(c, input, surfaces));
  const amounts = chain(seen, ({ area }) =>
    finish ? chain(coats, (n) => amountOf(area, n, finish)) : MISTAKE,
  );
  const { pieces = [], loose = [] } = ifKnown(coated) ?? {};
  const [known, spread] = [ifKnown(seen), ifKnown(amounts)];
  const things = entry.things.map(wordsOf);
  return {
    entry,
    at: { file, start: entry.keyword.start, end: entry.end },
    title: things.join(" and "),
    finish,
    things,
    pieces: pieces.map((i) => space.pieces[i]!.id),
    loose,
    exposed: map(seen, ({ exposed }) => exposed),
    hidden: known && roughly(AREA, known.hidden),
    ends: known && roughly(AREA, known.area.ends),
    coats,
    coatsFrom,
    rough: (known?.area.rough ?? 0) > 0,
    amount: map(amounts, ({ most }) => most),
    least: spread && spread.least.approx < spread.most.approx ? spread.least : undefined,
    dries: ifKnown(finish?.dries)?.most,
    assumed: assumedIn(coatsFrom, finish, known?.area, loose),
  };
}

function coatsIn(
  entry: CoatWork["entry"],
  file: string,
  finish: Finish | undefined,
  worker: Worker,
): Pick<CoatWork, "coats" | "coatsFrom"> {
  const clause = new Reader(worker, file, entry.clauses).clause("coats of");
  if (clause) {
    const coats = worker.wholeNumber(clause.value, file, "the number of coats", MOST_COATS);
    return { coats, coatsFrom: "line" };
  }
  if (entry.clauses.some((c) => c.kind === "broken")) return { coats: MISTAKE, coatsFrom: "line" };
  if (finish?.coats) return { coats: finish.coats, coatsFrom: "finish" };
  return { coats: known(usualCoats.value), coatsFrom: "assumed" };
}

/** What so many coats on these areas take, by both ends of how far the finish goes and of what end grain drinks. */
export function amountOf(
  area: CoatedArea,
  coats: number,
  { covers, coversRough }: Pick<Finish, "covers" | "coversRough">,
): Value<{ readonly least: Quantity; readonly most: Quantity }> {
  return chain(covers, (smooth) =>
    map(coversRough, (rough) => {
      const by = (end: keyof Coverage, thirst: number): Quantity => {
        const once = (area.smooth + area.ends * thirst) / smooth[end].approx + area.rough / rough[end].approx;
        return roughly(VOLUME, coats * once);
      };
      const { low, high } = endGrainThirst.value;
      return { least: by("most", low), most: by("least", high) };
    }),
  );
}

function assumedIn(
  coatsFrom: CoatWork["coatsFrom"],
  finish: Finish | undefined,
  area: CoatedArea | undefined,
  loose: readonly Loose[],
): Assumption[] {
  const told: [boolean, Assumption][] = [
    [coatsFrom === "assumed", { kind: "coats", coats: usualCoats.value }],
    [
      (area?.ends ?? 0) > 0,
      { kind: "end grain", times: endGrainThirst.value, source: endGrainThirst.source },
    ],
    [
      (area?.rough ?? 0) > 0 && finish?.rough === "taken",
      { kind: "rough wood", times: roughThirst.value, source: roughThirst.source },
    ],
    [loose.length > 0, { kind: "whole pieces", parts: loose.map(({ part }) => part) }],
  ];
  return [...(finish?.assumed ?? []), ...told.flatMap(([is, assumption]) => (is ? [assumption] : []))];
}
