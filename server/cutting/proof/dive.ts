/**
 * Pieces packed into exactly these boards, led by the linear program: fillings it takes whole are cut, then the one it
 * takes most of, and the rest is asked anew. Where that ends with pieces left over it begins again with other choices,
 * drawn from a fixed seed.
 */
import type { Cover, Pausing, Share, Work } from "./cover";
import { isSpent } from "./cover";
import { type Filled, type Packed, packInto } from "./fill";
import type { Filling } from "./knapsack";
import type { Puzzle } from "./puzzle";

/** `cover` has found that these boards cover all pieces. The packing that leaves least over; it may leave nothing. */
export function* diveFor(
  puzzle: Puzzle,
  counts: readonly number[],
  cover: Cover,
  dives: number,
  work: Work,
): Pausing<Packed | null> {
  const random = randomFrom(SEED);
  let best: Packed | null = null;
  for (let n = 0; n < dives && !isSpent(work) && best?.lack !== 0; n++) {
    const packed = yield* dive(puzzle, counts, cover, n === 0 ? () => 0 : random, work);
    if (packed && (best === null || packed.lack < best.lack)) best = packed;
    puzzle.demand.forEach((to, g) => {
      cover.demandOf(g, to);
    });
    counts.forEach((to, p) => {
      if (puzzle.places[p]!.kind !== "on hand") cover.countOf(p, to);
      else cover.countOf(p, puzzle.places[p]!.supply);
    });
    if (best?.lack !== 0 && n + 1 < dives && (yield* cover.covers()) !== "all") break;
  }
  return best;
}

function* dive(
  puzzle: Puzzle,
  counts: readonly number[],
  cover: Cover,
  random: () => number,
  work: Work,
): Pausing<Packed | null> {
  const demand = puzzle.demand.slice();
  const free = puzzle.places.map(({ kind, supply }, p) => (kind === "on hand" ? supply : counts[p]!));
  const filled: Filled[] = [];
  const cut = ({ place, filling }: Share, times: number) => {
    for (let n = 0; n < times && free[place]! > 0; n++) {
      const some = wanted(filling, demand);
      if (some.length === 0) return;
      for (let i = 0; i < some.length; i += 2) demand[some[i]!]! -= some[i + 1]!;
      free[place]!--;
      filled.push({ place, filling: some });
    }
    for (let i = 0; i < filling.length; i += 2) cover.demandOf(filling[i]!, demand[filling[i]!]!);
    cover.countOf(place, free[place]!);
  };
  let best: Packed | null = null;
  for (;;) {
    const rest = packInto(puzzle, demand, free, STEPS);
    work.done += 200 + STEPS * rest.filled.length;
    if (best === null || rest.lack < best.lack) best = { ...rest, filled: [...filled, ...rest.filled] };
    if (best.lack === 0 || isSpent(work)) return best;
    const shares = cover.shares();
    if (shares.length === 0) return best;
    const whole = shares.filter(({ times }) => times > 1 - NEAR);
    for (const share of whole) cut(share, Math.floor(share.times + NEAR));
    if (whole.length === 0) {
      const byTimes = shares.sort((a, b) => b.times - a.times);
      cut(byTimes[Math.min(byTimes.length - 1, Math.floor(random() * CHOICES))]!, 1);
    }
    if ((yield* cover.covers()) !== "all") return best;
  }
}

/** What of a filling is still to be cut. */
function wanted(filling: Filling, demand: Int32Array): Filling {
  const some: number[] = [];
  for (let i = 0; i < filling.length; i += 2) {
    const n = Math.min(filling[i + 1]!, demand[filling[i]!]!);
    if (n > 0) some.push(filling[i]!, n);
  }
  return some;
}

const NEAR = 1e-6;
/** Of so many fillings one is drawn when a dive begins again. */
const CHOICES = 4;
const STEPS = 60;
const SEED = 20_270;

/** Numbers from 0 up to 1, the same ones for the same seed (a linear congruential generator modulo 2^32). */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
