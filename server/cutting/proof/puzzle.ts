/**
 * A board question as the proof sees it: how much of each length, and the places it can be cut from. Lengths lie on a
 * grid; where the grid is their common divisor nothing is rounded. A coarser one rounds pieces down for bounds, which
 * then hold all the more; whether pieces fit is always asked in ticks.
 */
import { firstTaking, type Question } from "../question";
import type { Ware } from "./least";

/** A sold length, stretches on hand of one room, or the lack of a piece that may have no wood. */
export interface Place extends Ware {
  /** In ticks, a kerf included. */
  readonly room: number;
  /** The same on the grid, rounded down. */
  readonly cells: number;
  /** `sold` at a price, `on hand` for nothing, `missing` at more than all else together. */
  readonly kind: "sold" | "on hand" | "missing";
  /** Of sold ones the place in `question.kinds`; of those on hand the places in `question.spans`. */
  readonly woods: readonly number[];
  /** Groups from `from` up to `to` may be cut here. */
  readonly from: number;
  readonly to: number;
}

export interface Puzzle {
  readonly question: Question;
  /** Per group: ticks, and cells of the grid rounded down. */
  readonly sizes: Int32Array;
  readonly cells: Int32Array;
  readonly demand: Int32Array;
  /** Sold first, then missing, then on hand. */
  readonly places: readonly Place[];
  /** How many of `places` have to be chosen: those sold and missing. */
  readonly wares: number;
  /** The grid is exact: sums of cells tell what fits. */
  readonly exact: boolean;
  /** Sizes, and rooms of places, in cells of a finer grid, for bounds; the same where it is exact. */
  readonly fine: Grid;
}

export interface Grid {
  readonly cells: Int32Array;
  readonly places: readonly Place[];
}

/** Cells of the grid for all groups together; with more it becomes coarser. For 60 groups, 0.15 mm of a 16 ft board. */
const MOST_CELLS = 2 ** 21;
const LEAST_CELLS = 2 ** 11;
/** Cells of the finer grid for bounds: 0.04 mm. */
const FINE_CELLS = 2 ** 17;
/** Of that for all pieces together. */
const FINE_UPDATES = 2 ** 25;

/** `missing`: where the first answer leaves some out, all groups that only boards on hand can take. */
export function puzzleOf(question: Question, salvage: "use up" | "keep", missing: readonly number[]): Puzzle {
  const { sizes, counts, kinds, spans, tooLong, cheapestFrom } = question;
  const last = salvage === "keep" ? tooLong : sizes.length;
  const longest = Math.max(1, ...kinds.map(({ room }) => room), ...spans.map(({ room }) => room));
  const divisor = sizes.reduce((a, b) => greatestCommon(a, b), 0) || 1;
  // More than all pieces cost with a board for each of them.
  const lack = counts.reduce(
    (sum, n, g) => sum + n * (kinds[cheapestFrom[firstTaking(question, sizes[g]!)]!]?.weight ?? 0),
    1,
  );
  const onHand = new Map<number, number[]>();
  spans.forEach(({ room }, i) => {
    const same = onHand.get(room);
    if (same) same.push(i);
    else onHand.set(room, [i]);
  });
  const places: Place[] = [
    ...kinds.map(
      ({ board, room, weight }, i): Place => ({
        room,
        cells: 0,
        kind: "sold",
        woods: [i],
        weight,
        size: board.length,
        supply: Number.POSITIVE_INFINITY,
        from: tooLong,
        to: sizes.length,
      }),
    ),
    ...missing.map(
      (g): Place => ({
        room: sizes[g]!,
        cells: 0,
        kind: "missing",
        woods: [],
        weight: lack,
        size: 0,
        supply: counts[g]!,
        from: g,
        to: g + 1,
      }),
    ),
  ];
  const wares = places.length;
  for (const [room, woods] of [...onHand].sort((a, b) => b[0] - a[0]))
    places.push({
      room,
      cells: 0,
      kind: "on hand",
      woods,
      weight: 0,
      size: 0,
      supply: woods.length,
      from: 0,
      to: last,
    });
  const onGrid = (most: number): Grid & { exact: boolean } => {
    const grid = Math.max(divisor, Math.ceil(longest / most));
    const cellsOf = (ticks: number) => Math.floor(ticks / grid);
    return {
      cells: sizes.map(cellsOf),
      places: places.map((place) => ({ ...place, cells: cellsOf(place.room) })),
      exact: grid === divisor,
    };
  };
  const usual = onGrid(Math.max(LEAST_CELLS, Math.floor(MOST_CELLS / Math.max(1, sizes.length))));
  const pieces = counts.reduce((sum, n) => sum + n, 1);
  const fine = usual.exact ? usual : onGrid(Math.min(FINE_CELLS, Math.ceil(FINE_UPDATES / pieces)));
  return { question, sizes, demand: demanded(question, missing), wares, ...usual, fine };
}

/** What has to be cut: not those too long for anything sold that nothing on hand can take either. */
function demanded({ sizes, counts, spans, tooLong }: Question, missing: readonly number[]): Int32Array {
  const longest = Math.max(0, ...spans.map(({ room }) => room));
  return counts.map((count, g) => (g < tooLong && sizes[g]! > longest && !missing.includes(g) ? 0 : count));
}

function greatestCommon(a: number, b: number): number {
  let [high, low] = [a, b];
  while (low > 0) [high, low] = [low, high % low];
  return high;
}
