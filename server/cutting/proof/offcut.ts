/**
 * The largest single offcut: of the boards that are to be bought anyway, one is left with as little on it as the emptiest
 * others allow. It is looked for, not proven to be the largest.
 */
import type { Bin } from "../pack";
import { packInto } from "./fill";
import { lengthOf } from "./knapsack";
import type { Pausing, Work } from "./pausing";
import type { Puzzle } from "./puzzle";
import { binsOf, filledOf } from "./state";

/** The same boards, packed so that the largest rest of any is no smaller. */
export function* withLargestOffcut(
  puzzle: Puzzle,
  bins: readonly Bin[],
  work: Work,
): Pausing<readonly Bin[]> {
  let best = bins;
  for (let round = 0; round < ROUNDS; round++) {
    const better = yield* withLarger(puzzle, best, work);
    if (!better) return best;
    best = better;
  }
  return best;
}

function* withLarger(puzzle: Puzzle, bins: readonly Bin[], work: Work): Pausing<readonly Bin[] | null> {
  const filled = filledOf(puzzle, bins);
  const rest = (n: number) => puzzle.places[filled[n]!.place]!.room - lengthOf(puzzle, filled[n]!.filling);
  const byRest = filled.map((_, n) => n).sort((a, b) => rest(b) - rest(a) || a - b);
  const bought = byRest.filter((n) => puzzle.places[filled[n]!.place]!.kind === "sold");
  if (bought.length === 0) return null;
  const largest = rest(byRest[0]!);
  for (const target of bought.slice(0, TARGETS)) {
    const some = [target, ...byRest.filter((n) => n !== target).slice(0, OTHERS)];
    const demand = new Int32Array(puzzle.sizes.length);
    for (const n of some) {
      const { filling } = filled[n]!;
      for (let i = 0; i < filling.length; i += 2) demand[filling[i]!]! += filling[i + 1]!;
    }
    const { place } = filled[target]!;
    const free = puzzle.places.map(() => 0);
    for (const n of some.slice(1)) free[filled[n]!.place]!++;
    // One piece alone on it, the shortest first.
    for (let g = demand.length - 1; g >= 0; g--) {
      if (demand[g] === 0) continue;
      if (puzzle.places[place]!.room - puzzle.sizes[g]! <= largest) break;
      yield;
      const others = demand.slice();
      others[g]!--;
      const packed = packInto(puzzle, others, free, STEPS);
      work.done += 500 + STEPS * some.length;
      if (packed.lack > 0) continue;
      const kept = filled.filter((_, n) => !some.includes(n));
      return binsOf(puzzle, [...kept, ...packed.filled, { place, filling: [g, 1] }]);
    }
  }
  return null;
}

const ROUNDS = 4;
/** Boards tried as the one to be left, and others packed anew with it. */
const TARGETS = 4;
const OTHERS = 5;
const STEPS = 200;
