/**
 * Boards filled one at a time: the longest piece left, with whatever fills its board best, on the sold length that
 * costs least for the wood it uses. The search for a filling is bounded by counted steps, so any job ends.
 */
import type { Bin } from "./pack";
import { firstTaking, type Question } from "./question";

/** Work still allowed, counted in groups and boards looked at and in steps of a search. */
export interface Effort {
  left: number;
}

export interface Filling {
  /** Group and how many …, groups ascending. */
  readonly runs: readonly number[];
  readonly used: number;
  /** Steps of the search. */
  readonly steps: number;
}

/** Pieces left, with quick steps to the next group that has any. */
export interface Supply {
  readonly sizes: Int32Array;
  readonly counts: Int32Array;
  /** The first group from i on that has pieces, or `sizes.length`. */
  next(i: number): number;
  /** The first group from i on that has pieces and fits, or `sizes.length`. */
  nextFitting(i: number, room: number): number;
}

export function supplyOf(sizes: Int32Array, counts: Int32Array): Supply {
  const n = sizes.length;
  const skip = new Int32Array(n + 1);
  for (let i = 0; i <= n; i++) skip[i] = i;
  const next = (i: number) => {
    let g = i;
    while (g < n && counts[g] === 0) {
      skip[g] = skip[g] === g ? g + 1 : skip[skip[g]!]!;
      g = skip[g]!;
    }
    return g;
  };
  const nextFitting = (i: number, room: number) => {
    if (i >= n || sizes[i]! <= room) return next(i);
    let [low, high] = [i + 1, n];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sizes[middle]! > room) low = middle + 1;
      else high = middle;
    }
    return next(low);
  };
  return { sizes, counts, next, nextFitting };
}

/**
 * The fullest filling of that room found in so many steps, looking from longest to shortest; the one found first among
 * equals. With `must`, it holds at least one piece of that group, which is the longest looked at.
 */
export function fullestFilling(supply: Supply, room: number, steps: number, must: number | null): Filling {
  const { sizes, counts } = supply;
  const n = sizes.length;
  const chosen: number[] = [];
  let depth = 0;
  let best: readonly number[] = [];
  let left = room + 1;
  let looked = 0;
  const note = (rest: number) => {
    if (rest >= left || depth === 0) return;
    left = rest;
    best = chosen.slice(0, depth);
  };
  const take = (g: number, rest: number) => {
    const size = sizes[g]!;
    chosen[depth] = g;
    depth += 2;
    for (let most = Math.min(counts[g]!, Math.floor(rest / size)); most >= 1; most--) {
      looked++;
      chosen[depth - 1] = most;
      const still = rest - most * size;
      let next = depth < DEEPEST ? supply.nextFitting(g + 1, still) : n;
      if (next === n || looked >= steps) note(still);
      for (; next < n && looked < steps && left > 0; next = supply.next(next + 1)) {
        take(next, still);
      }
      if (left === 0 || looked >= steps) break;
    }
    depth -= 2;
  };
  if (must !== null) take(must, room);
  else
    for (let g = supply.nextFitting(0, room); g < n && looked < steps && left > 0; g = supply.next(g + 1)) {
      take(g, room);
    }
  return { runs: best, used: best.length === 0 ? 0 : room - left, steps: looked };
}

/**
 * Bought boards for all that is in `counts` (which becomes 0 for what the kinds can take), trying these kinds for each
 * board, and others only for pieces that none of these takes. Every step ends a group or fills as many equal boards as
 * its pieces allow: O(boards x kinds x steps).
 */
export function packFullest(
  question: Question,
  counts: Int32Array,
  kinds: readonly number[],
  effort: Effort,
): Bin[] {
  const { sizes } = question;
  const supply = supplyOf(sizes, counts);
  const bins: Bin[] = [];
  const steps = stepsEach(question, counts, kinds, effort);
  for (let g = question.tooLong; ; ) {
    g = supply.next(g);
    if (g >= sizes.length) return bins;
    const taking = kinds.filter((k) => question.kinds[k]!.room >= sizes[g]!);
    const tried = taking.length > 0 ? taking : [question.densestFrom[firstTaking(question, sizes[g]!)]!];
    let best: Filling | null = null;
    let wood = 0;
    for (const k of tried) {
      const filling = fullestFilling(supply, question.kinds[k]!.room, steps, g);
      effort.left -= filling.steps;
      const shrunk = question.cheapestFrom[firstTaking(question, filling.used)]!;
      if (best === null || worthMore(question, filling, shrunk, best, wood)) {
        best = filling;
        wood = shrunk;
      }
    }
    const { runs, used } = best!;
    let times = Number.POSITIVE_INFINITY;
    for (let i = 0; i < runs.length; i += 2)
      times = Math.min(times, Math.floor(counts[runs[i]!]! / runs[i + 1]!));
    for (let i = 0; i < runs.length; i += 2) counts[runs[i]!]! -= times * runs[i + 1]!;
    const room = question.kinds[wood]!.room - used;
    for (let i = 0; i < times; i++) bins.push({ wood, bought: true, room, runs: runs.slice() });
  }
}

/** Groups on a board beyond which the search only notes what it has; bounds the depth of the recursion. */
const DEEPEST = 2 * 200;

/** Steps for each filling, so that all boards together stay near a third of the effort left. */
function stepsEach({ sizes, kinds }: Question, counts: Int32Array, tried: readonly number[], effort: Effort) {
  let wood = 0;
  counts.forEach((count, g) => {
    wood += count * sizes[g]!;
  });
  const room = Math.max(...tried.map((k) => kinds[k]!.room));
  const fillings = Math.ceil(wood / room) * tried.length;
  return Math.min(MOST_STEPS, Math.max(LEAST_STEPS, Math.floor(effort.left / 3 / fillings)));
}

const MOST_STEPS = 100;
const LEAST_STEPS = 8;

function worthMore({ kinds }: Question, a: Filling, kindA: number, b: Filling, kindB: number): boolean {
  const difference = kinds[kindA]!.weight * b.used - kinds[kindB]!.weight * a.used;
  return difference < 0 || (difference === 0 && a.used > b.used);
}
