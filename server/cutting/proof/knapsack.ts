/** The fillings worth most, for all places at once: bounded knapsack by dynamic programming over the cells of the grid. */
import type { Pausing } from "./pausing";
import type { Grid, Place, Puzzle } from "./puzzle";

/** Groups and how many …, groups ascending. */
export type Filling = readonly number[];

export interface Fillings {
  /** Per place: the most that any filling of it is worth, by the rounded-down grid: never too little. */
  readonly worth: Float64Array;
  /** The filling of a place that is worth so much; null where it fits the grid but not the ticks. */
  readonly of: (place: number) => Filling | null;
  /** Cells looked at. */
  readonly work: number;
}

/** Worths that are 0 or less count as nothing. No filling holds more than `most` of a group. */
export function* bestFillings(
  puzzle: Puzzle,
  worths: ArrayLike<number>,
  most: ArrayLike<number>,
): Pausing<Fillings> {
  const { places } = puzzle;
  const groups = puzzle.sizes.length;
  const { all, few, worth } = yield* tablesOf(puzzle, worths, most, true);
  const of = (p: number): Filling | null => {
    const place = places[p]!;
    if (place.kind === "missing") return [place.from, 1];
    const filling = trace(isKept(place, groups) ? few : all, place.cells);
    return puzzle.exact || lengthOf(puzzle, filling) <= place.room ? filling : null;
  };
  return { worth, of, work: all.work + few.work };
}

/** Only what they are worth, on the finer grid. */
export function* bestWorths(
  { fine }: Puzzle,
  worths: ArrayLike<number>,
  most: ArrayLike<number>,
): Pausing<Omit<Fillings, "of">> {
  const { all, few, worth } = yield* tablesOf(fine, worths, most, false);
  return { worth, work: all.work + few.work };
}

function* tablesOf(grid: Grid, worths: ArrayLike<number>, most: ArrayLike<number>, traced: boolean) {
  const { places, cells } = grid;
  const groups = cells.length;
  const whole = places.filter((p) => p.kind !== "missing" && !isKept(p, groups));
  const kept = places.filter((p) => isKept(p, groups));
  const all = yield* table(grid, worths, most, groups, whole, traced);
  const few = yield* table(grid, worths, most, kept[0]?.to ?? 0, kept, traced);
  const worth = Float64Array.from(places, (place) => {
    if (place.kind === "missing") return Math.max(0, worths[place.from]!);
    return (isKept(place, groups) ? few : all).value[place.cells]!;
  });
  return { all, few, worth };
}

/** On hand, and kept for what nothing sold can take. */
const isKept = (place: Place, groups: number): boolean => place.kind === "on hand" && place.to < groups;

export function lengthOf({ sizes }: Puzzle, filling: Filling): number {
  let length = 0;
  for (let i = 0; i < filling.length; i += 2) length += sizes[filling[i]!]! * filling[i + 1]!;
  return length;
}

/** One item for 1, 2, 4 … pieces of a group. */
interface Item {
  readonly group: number;
  readonly copies: number;
  readonly cells: number;
}

interface Table {
  /** By cells: the most that fits into so many. */
  readonly value: Float64Array;
  readonly items: readonly Item[];
  /** Item by item, whether it is taken at so many cells; empty where that is not asked for. */
  readonly taken: Uint8Array;
  readonly work: number;
}

function* table(
  { cells }: Grid,
  worths: ArrayLike<number>,
  most: ArrayLike<number>,
  to: number,
  places: readonly Place[],
  traced: boolean,
): Pausing<Table> {
  const room = places.reduce((largest, place) => Math.max(largest, place.cells), 0);
  const items: Item[] = [];
  for (let group = 0; group < to; group++) {
    const each = cells[group]!;
    if (!(worths[group]! > 0) || each > room) continue;
    let left = Math.min(most[group]!, each > 0 ? Math.floor(room / each) : most[group]!);
    for (let copies = 1; left > 0; copies *= 2) {
      const some = Math.min(copies, left);
      items.push({ group, copies: some, cells: some * each });
      left -= some;
    }
  }
  const width = room + 1;
  const value = new Float64Array(width);
  const taken = new Uint8Array(traced ? items.length * width : 0);
  let since = 0;
  for (const [i, item] of items.entries()) {
    since += width;
    if (since > PAUSE) {
      since = 0;
      yield;
    }
    const gain = worths[item.group]! * item.copies;
    takeIn(value, gain, item.cells, traced ? taken.subarray(i * width, (i + 1) * width) : null);
  }
  return { value, items, taken, work: items.length * width };
}

/** Cells looked at between two pauses. */
const PAUSE = 1_000_000;

/** One item more: worth so much, over so many cells. */
function takeIn(value: Float64Array, gain: number, cells: number, taken: Uint8Array | null): void {
  for (let at = value.length - 1, before = at - cells; before >= 0; at--, before--) {
    const sum = value[before]! + gain;
    if (sum <= value[at]!) continue;
    value[at] = sum;
    if (taken) taken[at] = 1;
  }
}

function trace({ items, taken, value }: Table, cells: number): Filling {
  const width = value.length;
  const counts = new Map<number, number>();
  let at = cells;
  for (let i = items.length - 1; i >= 0; i--) {
    if (taken[i * width + at] === 0) continue;
    const { group, copies, cells: used } = items[i]!;
    counts.set(group, (counts.get(group) ?? 0) + copies);
    at -= used;
  }
  return [...counts].sort((a, b) => a[0] - b[0]).flat();
}
