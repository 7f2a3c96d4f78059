/** How boxes are lined: the sheet to cut, how much of the roll it takes, where it is stapled, and how the drain stays open. */
import type { Entry } from "../../grammar/tree";
import {
  type At,
  chain,
  ifKnown,
  known,
  type Loaded,
  lookUp,
  MISTAKE,
  map,
  type Scope,
  type Told,
  unknown,
  type Value,
} from "../plan";
import { drainSpacing, linerBelowRim, linerFold, stapleSpacing } from "../trade";
import { exactly, fraction, LENGTH, type Quantity, roughly } from "../units";
import type { Assumption } from "./assumptions";
import type { Box } from "./boxes";
import type { Drainage, DrainHoles } from "./drainage";
import type { Worker } from "./expressions";
import { type LinerCut, type LinerSheet, linerCuts, linerSheet } from "./liner-cuts";
import { size } from "./materials";
import type { Roll } from "./rolls";
import { Reader } from "./settings";

export interface LiningWork {
  readonly entry: Entry & { kind: "line" };
  readonly at: At;
  /** As the line names it. */
  readonly name: string;
  /** Undefined after a fault at its name. */
  readonly box: Box | undefined;
  /** Undefined after a fault at its name. */
  readonly roll: Roll | undefined;
  /** Past the rim, on every side. */
  readonly fold: Value<Quantity>;
  /** Of two strips side by side. */
  readonly overlap: Value<Quantity>;
  /** What lines the whole box, as if the roll were wide enough. */
  readonly sheet: Value<LinerSheet>;
  /** What is cut off the roll for one copy. */
  readonly cuts: Value<readonly LinerCut[]>;
  /** How much of the roll one copy takes. */
  readonly along: Value<Quantity>;
  /** Around the rim, at the closer end of what is usual. */
  readonly staples: Value<number>;
  /** From staple to staple: what is counted with, and the most that is usual. */
  readonly staplesApart: readonly [counted: Quantity, most: Quantity];
  /** Below the rim, and above the fill: no staple is under wet soil. Nothing where the fill reaches the rim: staple on top of it. */
  readonly stapleHeight: Quantity;
  /** How the liner leaves the drain open. */
  readonly opening: LinerOpening;
  readonly assumed: readonly Assumption[];
}

export type LinerOpening =
  /** It lets water through, or the box is not to drain. */
  | { readonly how: "whole"; readonly why: "lets water through" | "no drain" }
  /** Over each gap between the bottom boards, holes at this distance. */
  | {
      readonly how: "over gaps";
      /** Undefined where the bottom is not placed. */
      readonly gaps: number | undefined;
      /** Over each gap, at the wider spacing. */
      readonly each: number | undefined;
      readonly diameter: Quantity;
      readonly apart: readonly [least: Quantity, most: Quantity];
    }
  /** Over each hole of the bottom, as large as that. */
  | { readonly how: "over holes"; readonly holes: Value<DrainHoles> }
  /** The box does not say how it drains, or is not known. */
  | { readonly how: "unsaid" };

export interface LineInput {
  readonly loaded: Loaded;
  readonly scope: Scope;
  readonly worker: Worker;
  readonly boxes: readonly Box[];
  readonly rolls: readonly Roll[];
  readonly drainage: readonly Drainage[];
}

/** The `line` entries of the plan in their order, one for each box that they name. */
export function liningsOf(input: LineInput): LiningWork[] {
  const main = input.loaded.files[0]!;
  return main.tree.entries.filter(isLine).flatMap((entry) => workLine(entry, main.file, input));
}

const isLine = (entry: Entry): entry is LiningWork["entry"] => entry.kind === "line";

function workLine(entry: LiningWork["entry"], file: string, input: LineInput): LiningWork[] {
  const { worker, rolls, boxes, scope, drainage } = input;
  const read = new Reader(worker, file, entry.clauses);
  const roll = rolls.find((r) => r.name === entry.with.text);
  const said = (kind: "fold" | "overlap", what: Told): Value<Quantity> | undefined => {
    const length = read.length(kind, what);
    if (length) return known(length);
    return entry.clauses.some((c) => c.kind === kind || c.kind === "broken") ? MISTAKE : undefined;
  };
  const [fold, overlap] = [said("fold", "the fold"), said("overlap", "the overlap")];
  const folded = fold ?? known(size(linerFold.value, "in"));
  return entry.things.map((thing) => {
    const declared = lookUp(scope, thing.name.text);
    const box = boxes.find((b) => b.declared === declared);
    const cut = sized(box, roll, folded, overlap);
    return {
      entry,
      at: { file, start: entry.keyword.start, end: entry.end },
      name: thing.name.text,
      box,
      roll,
      fold: folded,
      overlap: overlap ?? (roll ? known(roll.overlap.value) : MISTAKE),
      ...cut,
      staples: box ? staplesFor(box) : MISTAKE,
      staplesApart: [STAPLES_CLOSE, STAPLES_WIDE],
      stapleHeight: stapleHeight(box),
      opening: openingOf(roll, box && drainage.find((d) => d.box === box)),
      assumed: assumedIn(box, roll, cut, { fold: fold === undefined, overlap: overlap === undefined }),
    };
  });
}

type Sized = Pick<LiningWork, "sheet" | "cuts" | "along">;

function sized(
  box: Box | undefined,
  roll: Roll | undefined,
  fold: Value<Quantity>,
  overlap: Value<Quantity> | undefined,
): Sized {
  const sheet = box ? chain(fold, (f) => sheetOf(box, f)) : MISTAKE;
  const cuts = chain(sheet, (s) => {
    if (!roll) return MISTAKE;
    return chain(roll.width, (width) =>
      chain(overlap ?? known(roll.overlap.value), (o) => {
        const found = linerCuts(s, width, o);
        return found ? known(found) : unknown("unsaid", "roll too narrow", { name: roll.name });
      }),
    );
  });
  return { sheet, cuts: map(cuts, (c) => c.cuts), along: map(cuts, (c) => c.along) };
}

/** From the larger of its rim and its bottom: walls that lean take no more than upright ones around that. */
function sheetOf(box: Box, fold: Quantity): Value<LinerSheet> {
  if (box.volume.state !== "known") return box.volume;
  const { inside, bottom } = box;
  const [wide, deep] = [larger(inside?.wide, bottom?.wide), larger(inside?.deep, bottom?.deep)];
  return wide && deep && inside?.high ? known(linerSheet(wide, deep, inside.high, fold)) : MISTAKE;
}

const larger = (a: Quantity | undefined, b: Quantity | undefined): Quantity | undefined =>
  a && b && b.approx > a.approx ? b : (a ?? b);

const STAPLES_CLOSE = size(stapleSpacing.value.low, "in");
const STAPLES_WIDE = size(stapleSpacing.value.high, "in");

/** All round the rim inside. */
function staplesFor(box: Box): Value<number> {
  if (box.volume.state !== "known") return box.volume;
  const { wide, deep } = box.inside ?? {};
  if (!wide || !deep) return MISTAKE;
  return known(Math.ceil((2 * (wide.approx + deep.approx)) / STAPLES_CLOSE.approx - 1e-9));
}

/** As far below the rim as is usual, or half way down to the fill where that stands higher. */
function stapleHeight(box: Box | undefined): Quantity {
  const usual = size(linerBelowRim.value, "in");
  const fill = box?.fillBelowRim;
  if (!fill || fill.approx >= 2 * usual.approx) return usual;
  if (fill.approx <= 0) return exactly(LENGTH, fraction.ZERO);
  return fill.exact
    ? exactly(LENGTH, fraction.divide(fill.exact, fraction.rational(2))!)
    : roughly(LENGTH, fill.approx / 2);
}

function openingOf(roll: Roll | undefined, drainage: Drainage | undefined): LinerOpening {
  if (roll && !roll.holdsWater) return { how: "whole", why: "lets water through" };
  if (!drainage?.how || !roll) return { how: "unsaid" };
  if (drainage.how === "nothing") return { how: "whole", why: "no drain" };
  if (drainage.how === "holes") return { how: "over holes", holes: drainage.holes ?? MISTAKE };
  const { diameter, apart } = drainSpacing.value;
  const most = size(apart.high, "in");
  const { gaps } = drainage;
  return {
    how: "over gaps",
    gaps: gaps?.count,
    each: gaps && Math.max(1, Math.ceil(gaps.long.approx / most.approx - 1e-9)),
    diameter: size(diameter, "in"),
    apart: [size(apart.low, "in"), most],
  };
}

function assumedIn(
  box: Box | undefined,
  roll: Roll | undefined,
  { cuts }: Sized,
  unsaid: { readonly fold: boolean; readonly overlap: boolean },
): Assumption[] {
  if (!box || !roll) return [];
  const strips = ifKnown(cuts)?.some(({ what }) => what === "strip");
  const told: [boolean | undefined, Assumption | undefined][] = [
    [unsaid.fold, { kind: "fold", length: size(linerFold.value, "in"), source: linerFold.source }],
    [unsaid.overlap && strips, { kind: "overlap", length: roll.overlap.value, source: roll.overlap.source }],
    [box.bottom !== undefined, { kind: "sloping sides" }],
    [true, roll.assumed],
    [true, { kind: "staples", least: STAPLES_CLOSE, most: STAPLES_WIDE, source: stapleSpacing.source }],
  ];
  return told.flatMap(([is, assumption]) => (is && assumption ? [assumption] : []));
}
