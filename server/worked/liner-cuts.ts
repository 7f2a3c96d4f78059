/** How a liner is cut from its roll: one sheet where the roll is wide enough, else strips side by side. Exact while lengths are. */
import { exactly, fraction, LENGTH, type Quantity, roughly } from "../units";

export interface LinerSheet {
  /** The longer side first. */
  readonly length: Quantity;
  readonly width: Quantity;
}

export interface LinerCut {
  /** One that covers all, or one of several side by side. */
  readonly what: "sheet" | "strip";
  /** Along the roll. */
  readonly length: Quantity;
  /** Across the roll. */
  readonly width: Quantity;
  readonly count: number;
}

export interface LinerCuts {
  readonly cuts: readonly LinerCut[];
  /** How much of the roll they take together. */
  readonly along: Quantity;
}

/**
 * The sheet that lines a box: its inside, twice its height, and the fold past the rim on both sides, each way
 * (L + 2D + 2 overlaps by W + 2D + 2 overlaps: a pond-keeping magazine's rule).
 */
export function linerSheet(wide: Quantity, deep: Quantity, high: Quantity, fold: Quantity): LinerSheet {
  const up = sum(high, fold);
  const [a, b] = [wide, deep].map((side) => sum(sum(side, up), up)) as [Quantity, Quantity];
  return a.approx >= b.approx ? { length: a, width: b } : { length: b, width: a };
}

/**
 * One sheet if the roll is as wide as either side of it, else strips; laid the way that takes the least of the roll, or
 * fewer pieces where both ways take as much. Undefined where the roll is no wider than the overlap, so that no number of
 * strips would do.
 */
export function linerCuts(
  { length, width }: LinerSheet,
  roll: Quantity,
  overlap: Quantity,
): LinerCuts | undefined {
  const ways = [across(length, width, roll, overlap), across(width, length, roll, overlap)].filter(
    (way) => way !== undefined,
  );
  const sheets = ways.filter((way) => piecesOf(way) === 1);
  return (sheets.length > 0 ? sheets : ways).sort((a, b) => {
    const less = a.along.approx - b.along.approx;
    return Math.abs(less) > CRUMB ? less : piecesOf(a) - piecesOf(b);
  })[0];
}

const piecesOf = ({ cuts }: LinerCuts): number => cuts.reduce((n, { count }) => n + count, 0);

/** One side lies along the roll, and the other is made up of its width. */
function across(along: Quantity, other: Quantity, roll: Quantity, overlap: Quantity): LinerCuts | undefined {
  if (other.approx <= roll.approx + CRUMB)
    return { cuts: [{ what: "sheet", length: along, width: other, count: 1 }], along };
  const each = roll.approx - overlap.approx;
  if (each <= CRUMB) return undefined;
  const count = Math.ceil((other.approx - overlap.approx) / each - CRUMB);
  if (count > MOST_STRIPS) return undefined;
  const last = sum(other, times(sum(overlap, times(roll, -1)), count - 1));
  const strip = { what: "strip", length: along } as const;
  const cuts: LinerCut[] =
    Math.abs(last.approx - roll.approx) < CRUMB
      ? [{ ...strip, width: roll, count }]
      : [
          { ...strip, width: roll, count: count - 1 },
          { ...strip, width: last, count: 1 },
        ];
  return { cuts, along: times(along, count) };
}

const sum = (a: Quantity, b: Quantity): Quantity =>
  a.exact && b.exact ? exactly(LENGTH, fraction.add(a.exact, b.exact)) : roughly(LENGTH, a.approx + b.approx);

const times = (a: Quantity, n: number): Quantity =>
  a.exact ? exactly(LENGTH, fraction.multiply(a.exact, fraction.rational(n))) : roughly(LENGTH, a.approx * n);

/** mm; nearer than this is the same. */
const CRUMB = 1e-6;
const MOST_STRIPS = 100_000;
