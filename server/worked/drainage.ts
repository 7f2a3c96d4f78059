/** How boxes drain: the holes they say, or the gaps between their placed bottom boards; and what is usual, only to be told. */
import { type At, map, type Scope, unknown, type Value } from "../plan";
import { TOUCHING } from "../solid/contact";
import { drainHoles, drainSpacing, leastDrainGap, type Source } from "../trade";
import { LENGTH, type Quantity, roughly } from "../units";
import type { Box } from "./boxes";
import { floorsOf } from "./choose";
import type { Worker } from "./expressions";
import { size } from "./materials";
import { Reader } from "./settings";
import type { Space } from "./space";

export interface Drainage {
  readonly box: Box;
  /** Where it says how it drains, else its name. */
  readonly at: At;
  readonly how: Box["drains"];
  /** As typed; undefined for a box that drains by none. Not known where the plan leaves out how many, or how wide. */
  readonly holes: Value<DrainHoles> | undefined;
  /** Between placed bottom boards; undefined for a box that drains otherwise or whose bottom is not placed. */
  readonly gaps: DrainGaps | undefined;
  /** Common practice for a box of that size; told, never judged. */
  readonly advised: {
    readonly count: number;
    readonly diameter: Quantity;
    /** From one to the next. */
    readonly apart: readonly [least: Quantity, most: Quantity];
    readonly source: Source;
  };
}

export interface DrainHoles {
  readonly count: number;
  readonly diameter: Quantity;
  /** Even rows over the bottom; undefined where its size is not known. */
  readonly grid: DrainGrid | undefined;
}

/** Rows of holes along the longer side of the bottom; the first and last of each half a distance from the sides. */
export interface DrainGrid {
  readonly rows: number;
  readonly inRow: number;
  readonly apartInRow: Quantity;
  readonly apartRows: Quantity;
}

export interface DrainGaps {
  readonly count: number;
  /** How wide. */
  readonly least: Quantity;
  readonly most: Quantity;
  /** How long each is: the side of the bottom that they run along. */
  readonly long: Quantity;
}

const MOST_HOLES = 10_000;
/** mm: narrower ones close when the boards swell. */
const LEAST_GAP = size(leastDrainGap.value, "in").approx - TOUCHING;

export function drainageOf(boxes: readonly Box[], scope: Scope, space: Space, worker: Worker): Drainage[] {
  return boxes.map((box): Drainage => {
    const { entry, at } = box.declared;
    const read = new Reader(worker, at.file, entry.clauses);
    // What is said twice was told where the box was worked out.
    const clause = read.all("drains")[0];
    return {
      box,
      at: clause ? read.at(clause) : at,
      how: clause?.how,
      holes: clause?.how === "holes" ? holesOf(clause, box, worker) : undefined,
      gaps: clause?.how === "gaps" ? drainGaps(box, scope, space) : undefined,
      advised: advisedFor(box),
    };
  });
}

type Drains = Extract<Box["declared"]["entry"]["clauses"][number], { kind: "drains" }>;

function holesOf({ count, size }: Drains, box: Box, worker: Worker): Value<DrainHoles> {
  const { file } = box.declared.at;
  if (!count || !size) return unknown("unsaid", "unsaid drain holes");
  const n = worker.wholeNumber(count, file, "the number of drain holes", MOST_HOLES);
  const wide = worker.positiveLength(size, file, "a drain hole");
  if (n.state !== "known") return n;
  return map(wide, (diameter) => ({ count: n.value, diameter, grid: gridOf(n.value, box) }));
}

/** Length and width of the bottom, the longer first; undefined where the inside is not known. */
export function bottomOf({ inside, bottom }: Box): [number, number] | undefined {
  const [wide, deep] = [bottom?.wide ?? inside?.wide, bottom?.deep ?? inside?.deep];
  if (!wide || !deep) return undefined;
  return wide.approx >= deep.approx ? [wide.approx, deep.approx] : [deep.approx, wide.approx];
}

/** So many holes in even rows, as nearly as far apart one way as the other. */
function gridOf(count: number, box: Box): DrainGrid | undefined {
  const bottom = bottomOf(box);
  if (!bottom) return undefined;
  const [long, short] = bottom;
  let best = 1;
  const uneven = (rows: number): number => Math.abs(Math.log((long * rows * rows) / (count * short)));
  for (let rows = 2; rows * rows <= count; rows++)
    if (count % rows === 0 && uneven(rows) < uneven(best)) best = rows;
  const inRow = count / best;
  return {
    rows: best,
    inRow,
    apartInRow: roughly(LENGTH, long / inRow),
    apartRows: roughly(LENGTH, short / best),
  };
}

/** The bottom as water finds it: how wide the gaps are that run from side to side, each way. */
export interface BottomGaps {
  /** mm, in order: those between its boards, and beside the first and last of them, of whatever width. */
  readonly widths: readonly number[];
  /** mm: the side of the bottom that they run along. */
  readonly long: number;
}

/** Of the way that has more gaps at least so wide, in mm. Undefined where no bottom is placed between walls. */
export function bottomGaps(box: Box, scope: Scope, space: Space, least: number): BottomGaps | undefined {
  const room = box.placed?.room;
  if (!room) return undefined;
  const boards = floorsOf(box.declared, space, scope).map((i) => space.pieces[i]!.bounds);
  if (boards.length === 0) return undefined;
  const along = ([0, 1] as const).map((axis) => {
    const { from, to } = room.foot[axis];
    const open: number[] = [];
    let reached = from;
    for (const { least: low, most: high } of [...boards].sort((a, b) => a.least[axis] - b.least[axis])) {
      if (high[axis] <= from || low[axis] >= to) continue;
      if (low[axis] - reached >= least) open.push(low[axis] - reached);
      reached = Math.max(reached, high[axis]);
    }
    if (to - reached >= least) open.push(to - reached);
    return open;
  }) as [number[], number[]];
  const axis = along[0].length >= along[1].length ? 0 : 1;
  const other = room.foot[axis === 0 ? 1 : 0];
  return { widths: along[axis], long: other.to - other.from };
}

/** The gaps that are wide enough to drain. */
export function drainGaps(box: Box, scope: Scope, space: Space): DrainGaps | undefined {
  const found = bottomGaps(box, scope, space, LEAST_GAP);
  if (!found) return undefined;
  const { widths, long } = found;
  const mm = (x: number): Quantity => roughly(LENGTH, x);
  return {
    count: widths.length,
    least: mm(widths.length > 0 ? Math.min(...widths) : 0),
    most: mm(widths.length > 0 ? Math.max(...widths) : 0),
    long: mm(long),
  };
}

/** At least the four of a small container; more where the bottom is larger than they serve. */
function advisedFor(box: Box): Drainage["advised"] {
  const { diameter, apart } = drainSpacing.value;
  const { count: few } = drainHoles.value;
  const most = size(apart.high, "in");
  const [long = 0, short = 0] = bottomOf(box) ?? [];
  const count = Math.ceil(long / most.approx) * Math.ceil(short / most.approx);
  return {
    count: Math.max(few, count),
    diameter: size(count > few ? diameter : drainHoles.value.diameter, "in"),
    apart: [size(apart.low, "in"), most],
    source: count > few ? drainSpacing.source : drainHoles.source,
  };
}
