/**
 * The search for the least purchase from which all pieces can be cut: each purchase that needs allow is tried, cheapest
 * first, until one can be cut or the next is no cheaper than the best answer.
 */
import { packBought } from "../bought";
import { shrink } from "../score";
import { Cover, needOf, SCALES, scaled, type Worths } from "./cover";
import { diveFor } from "./dive";
import { type Packed, packInto } from "./fill";
import { isLess, leastPurchase, type Purchase } from "./least";
import { isSpent, type Pausing, type Work } from "./pausing";
import type { Puzzle } from "./puzzle";
import { repaired } from "./repair";
import { binsOf, priceOf, type State } from "./state";

/** True when the best there is has been proven to be the least. */
export function* search(state: State): Pausing<boolean> {
  const { puzzle, work, pool } = state;
  state.worths.push(yield* worthsOf(puzzle, [...puzzle.sizes], work));
  if (cheapest(state, []) === null) return true;
  if (puzzle.sizes.length > MOST_GROUPS) return false;
  const cover = new Cover(puzzle, null, pool, work);
  const least = scaled(yield* cover.leastWorths(), SCALES.at(-1)!);
  state.worths.push(yield* worthsOf(puzzle, least, work));
  state.bound = [leastWeight(state), 0];
  // Purchases of which it is not known whether the pieces can be cut from them, cheapest first.
  const open: Purchase[] = [];
  while (open.length < MOST_OPEN && !isSpent(work)) {
    const next = cheapest(state, open);
    if (next === undefined) return false;
    if (next === null) break;
    if (open.length === 0) state.bound = next.price;
    yield;
    const found = yield* attempt(state, next, SHORT);
    if (found === "can be cut" && open.length === 0) return true;
    if (found === "not known") open.push(next);
  }
  for (const [n, purchase] of open.entries()) {
    if (!isLess(purchase.price, state.best)) break;
    const found = yield* attempt(state, purchase, LONG);
    if (found === "can be cut") return n === 0;
  }
  return open.length === 0 && !isSpent(work);
}

/** Tries to cut all pieces from just these boards; learns why not, or takes what is best so far. */
function* attempt(
  state: State,
  purchase: Purchase,
  tries: Tries,
): Pausing<"can be cut" | "cannot" | "not known"> {
  const { puzzle, work, pool } = state;
  const counts = puzzle.places.map(({ kind, supply }, p) =>
    kind === "on hand" ? supply : purchase.counts[p]!,
  );
  const quick = packInto(puzzle, puzzle.demand.slice(), counts, QUICK);
  work.done += 1000 + QUICK * quick.filled.length;
  if (quick.lack === 0) return take(state, quick);
  const cover = new Cover(puzzle, counts, pool, work);
  const covered = yield* cover.covers();
  if (covered !== "all" && covered !== "unsure") {
    state.worths.push(covered);
    return "cannot";
  }
  if (covered === "unsure") return "not known";
  let packed = yield* diveFor(puzzle, counts, cover, tries.dives, work);
  if (packed) packed = yield* repaired(puzzle, counts, packed, tries.repairs, work);
  if (packed?.lack === 0) return take(state, packed);
  if (packed) takeCompleted(state, packed);
  return "not known";
}

/** How often a purchase is tried. */
interface Tries {
  readonly dives: number;
  readonly repairs: number;
}

const SHORT: Tries = { dives: 8, repairs: 150 };
const LONG: Tries = { dives: 120, repairs: 1500 };
const MOST_OPEN = 6;
/** Different lengths beyond which only the wood is weighed up: the linear program grows with their square. */
const MOST_GROUPS = 400;
function cheapest(
  { puzzle, worths, best, bound, work }: State,
  without: readonly Purchase[],
): Purchase | null | undefined {
  const steps = { left: STEPS };
  const found = leastPurchase(
    puzzle.places.slice(0, puzzle.wares),
    worths.map(({ need }) => need),
    best,
    bound,
    steps,
    without.map(({ counts }) => counts),
  );
  work.done += (STEPS - steps.left) * worths.length * PER_STEP;
  return found;
}

/** What any one need alone says of the cost. */
export function leastWeight({ puzzle, worths }: Pick<State, "puzzle" | "worths">): number {
  const wares = puzzle.places.slice(0, puzzle.wares);
  return worths.reduce((most, { need }) => {
    const ratio = wares.reduce(
      (least, { weight }, w) => (need.gives[w]! > 0 ? Math.min(least, weight / need.gives[w]!) : least),
      Number.POSITIVE_INFINITY,
    );
    return need.least > 0 && ratio < Number.POSITIVE_INFINITY
      ? Math.max(most, Math.ceil(need.least * ratio - 1e-6))
      : most;
  }, 0);
}

function* worthsOf(puzzle: Puzzle, worths: readonly number[], work: Work): Pausing<Worths> {
  const { need, work: done } = yield* needOf(puzzle, worths);
  work.done += done;
  return { worths, need };
}

/** The packing becomes the best answer. */
function take(state: State, { filled }: Packed): "can be cut" {
  state.bins = binsOf(state.puzzle, filled);
  state.best = priceOf(state.puzzle, state.bins);
  return "can be cut";
}

/** The same with boards bought for what is left over, where that is better. */
function takeCompleted(state: State, { filled, left }: Packed): void {
  const { puzzle } = state;
  const more = packBought(puzzle.question, left, { left: COMPLETING }, true);
  const bins = shrink(puzzle.question, [...binsOf(puzzle, filled), ...more]);
  const price = priceOf(puzzle, bins);
  if (!isLess(price, state.best)) return;
  state.bins = bins;
  state.best = price;
}

const COMPLETING = 5_000;

const QUICK = 100;
/** Of the search for one purchase, and what each counts for each need. */
const STEPS = 400_000;
const PER_STEP = 4;
