/**
 * A packing that leaves little over, mended: a few of its boards, the emptiest and some others drawn from a fixed seed,
 * are packed anew together with what is left over, until nothing is.
 */
import { type Dice, diceFrom } from "../dice";
import { Cover } from "./cover";
import { diveFor } from "./dive";
import type { Filled, Packed } from "./fill";
import { type Filling, lengthOf } from "./knapsack";
import { isSpent, type Pausing, type Work } from "./pausing";
import type { Puzzle } from "./puzzle";

/** The packing, mended as far as so many tries go. */
export function* repaired(
  puzzle: Puzzle,
  counts: readonly number[],
  packed: Packed,
  tries: number,
  work: Work,
): Pausing<Packed> {
  const dice = diceFrom(SEED);
  let best = packed;
  for (let n = 0; n < tries && best.lack > 0 && !isSpent(work); n++) {
    const [some, others] = drawn(puzzle, best.filled, dice);
    const few = { ...puzzle, demand: together(some, best.left) };
    const free = counts.map(
      (count, p) => count - others.reduce((used, { place }) => used + (place === p ? 1 : 0), 0),
    );
    const pool = [...some];
    const cover = new Cover(few, free, pool, work);
    if ((yield* cover.covers()) !== "all") continue;
    const anew = yield* diveFor(few, free, cover, DIVES, work);
    if (anew && anew.lack <= best.lack) best = { ...anew, filled: [...others, ...anew.filled] };
  }
  return best;
}

/** The boards to pack anew, and the others. */
function drawn(puzzle: Puzzle, filled: readonly Filled[], dice: Dice): [Filled[], Filled[]] {
  const rest = ({ place, filling }: Filled) => puzzle.places[place]!.room - lengthOf(puzzle, filling);
  const byRest = filled.map((one) => ({ one, key: rest(one) * dice(FINELY) })).sort((a, b) => b.key - a.key);
  const emptiest = 2 + dice(6);
  const others = byRest.slice(emptiest).map(({ one }) => ({ one, key: dice(FINELY) }));
  others.sort((a, b) => b.key - a.key);
  const more = 4 + dice(16);
  return [
    [...byRest.slice(0, emptiest), ...others.slice(0, more)].map(({ one }) => one),
    others.slice(more).map(({ one }) => one),
  ];
}

function together(filled: readonly Filled[], left: Int32Array): Int32Array {
  const demand = left.slice();
  const add = (filling: Filling) => {
    for (let i = 0; i < filling.length; i += 2) demand[filling[i]!]! += filling[i + 1]!;
  };
  for (const { filling } of filled) add(filling);
  return demand;
}

/** Keys by which boards are drawn are below this. */
const FINELY = 2 ** 20;
const DIVES = 2;
const SEED = 7_411;
