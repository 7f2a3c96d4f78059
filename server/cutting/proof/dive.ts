/**
 * Pieces packed into exactly these boards, led by the linear program: fillings it takes whole are cut, then the one it
 * takes most of, and the rest is asked anew. Where that ends with pieces left over it begins again with a few fillings drawn
 * at random, from a fixed seed.
 */
import { type Dice, diceFrom } from "../dice";
import type { Cover, Share } from "./cover";
import { type Filled, type Packed, packInto } from "./fill";
import type { Filling } from "./knapsack";
import { isSpent, type Pausing, type Work } from "./pausing";
import type { Puzzle } from "./puzzle";

/** `cover` has found that these boards cover all pieces. The packing that leaves least over; it may leave nothing. */
export function* diveFor(
  puzzle: Puzzle,
  counts: readonly number[],
  cover: Cover,
  dives: number,
  work: Work,
): Pausing<Packed | null> {
  const dice = diceFrom(SEED);
  let best: Packed | null = null;
  for (let n = 0; n < dives && !isSpent(work) && best?.lack !== 0; n++) {
    const packed = yield* dive(puzzle, counts, cover, n % WANDERING, dice, work);
    if (packed && (best === null || packed.lack < best.lack)) best = packed;
    puzzle.demand.forEach((to, g) => {
      cover.demandOf(g, to);
    });
    counts.forEach((to, p) => {
      cover.countOf(p, to);
    });
    if (best?.lack !== 0 && n + 1 < dives && (yield* cover.covers()) !== "all") break;
  }
  return best;
}

function* dive(
  puzzle: Puzzle,
  counts: readonly number[],
  cover: Cover,
  wandering: number,
  dice: Dice,
  work: Work,
): Pausing<Packed | null> {
  const demand = puzzle.demand.slice();
  const free = [...counts];
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
  for (let round = 0; ; round++) {
    const rest = packInto(puzzle, demand, free, STEPS);
    work.done += 200 + STEPS * rest.filled.length;
    if (best === null || rest.lack < best.lack) best = { ...rest, filled: [...filled, ...rest.filled] };
    if (best.lack === 0 || isSpent(work)) return best;
    const shares = cover.shares();
    if (shares.length === 0) return best;
    const whole = shares.filter(({ times }) => times > 1 - NEAR);
    if (round < wandering) cut(shares[dice(shares.length)]!, 1);
    else if (whole.length === 0)
      cut(
        shares.reduce((most, share) => (share.times > most.times ? share : most)),
        1,
      );
    else for (const share of whole) cut(share, Math.floor(share.times + NEAR));
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
/** Dives begin with so many fillings, less one, drawn at random; the first with none. */
const WANDERING = 8;
const STEPS = 60;
const SEED = 20_270;
