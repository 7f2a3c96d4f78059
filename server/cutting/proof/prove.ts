/**
 * The cheapest way to cut a board job, and the proof of it. The question is split in two: which boards (`least.ts`), and
 * whether the pieces can be cut from exactly these (`cover.ts`, `dive.ts`). A "no" to the second is a need that the first
 * must heed from then on; a "yes" ends it, since nothing less was left. Best and bound are told as they change; whatever
 * is told has been accepted by `certify-boards.ts`.
 */
import { answerOf } from "../answer";
import { packBought } from "../bought";
import type { Proof } from "../improve";
import type { BoardAnswer, BoardJob } from "../job";
import { firstBins } from "../lay-out";
import type { Bin } from "../pack";
import type { Question } from "../question";
import { shrink } from "../score";
import { boundHolds, type Certificate } from "./certify-boards";
import { Cover, isSpent, needOf, type Pausing, SCALES, scaled, type Work, type Worths } from "./cover";
import { diveFor } from "./dive";
import { type Filled, type Packed, packInto } from "./fill";
import { isLess, leastPurchase, type Price, type Purchase } from "./least";
import { type Puzzle, puzzleOf } from "./puzzle";
import { repaired } from "./repair";

export interface Progress {
  readonly answer: BoardAnswer;
  readonly proof: Proof<Certificate>;
}

/**
 * Tells what is best and what is bound whenever that has changed, and in between, now and then, nothing: a place to pause
 * or to stop. Ends when it is proven, or the counted work is done. Never throws, whatever numbers the job holds.
 */
export function* prove(job: BoardJob, effort: number): Generator<Progress | undefined, Progress, void> {
  const work: Work = { done: 0, most: effort };
  const { question, bins } = firstBins(job);
  const state = begun(job, question, bins, work);
  yield told(state, false);
  const proven = yield* search(state);
  return told(state, proven);
}

interface State {
  readonly job: BoardJob;
  readonly puzzle: Puzzle;
  readonly work: Work;
  bins: readonly Bin[];
  /** Weight, that of missing pieces with it, and ticks bought. */
  best: Price;
  /** What nothing is below of. */
  bound: Price;
  readonly worths: Worths[];
  /** Fillings met so far. */
  readonly pool: Filled[];
}

function begun(job: BoardJob, question: Question, bins: readonly Bin[], work: Work): State {
  const out = leftOut(question, bins);
  const puzzle = puzzleOf(
    question,
    job.salvage,
    [...out.keys()].filter(
      (g) => out[g]! > 0 && question.spans.some(({ room }) => room >= question.sizes[g]!),
    ),
  );
  return {
    job,
    puzzle,
    work,
    bins,
    best: priceOf(puzzle, bins),
    bound: [0, 0],
    worths: [],
    pool: poolOf(puzzle, bins),
  };
}

/** True when the best there is has been proven to be the least. */
function* search(state: State): Pausing<boolean> {
  const { puzzle, work, pool } = state;
  state.worths.push(worthsOf(puzzle, [...puzzle.sizes], work));
  if (cheapest(state, []) === null) return true;
  const cover = new Cover(puzzle, null, pool, work);
  state.worths.push(worthsOf(puzzle, scaled(yield* cover.leastWorths(), SCALES.at(-1)!), work));
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
const QUICK = 100;
const STEPS = 2_000_000;

const cheapest = (
  { puzzle, worths, best, bound }: State,
  without: readonly Purchase[],
): Purchase | null | undefined =>
  leastPurchase(
    puzzle.places.slice(0, puzzle.wares),
    worths.map(({ need }) => need),
    best,
    bound,
    { left: STEPS },
    without.map(({ counts }) => counts),
  );

function worthsOf(puzzle: Puzzle, worths: readonly number[], work: Work): Worths {
  const { need, work: done } = needOf(puzzle, worths);
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

/** Bins of filled places: stretches on hand of one room are taken in their order, those left over stay empty. */
function binsOf({ question, places, sizes }: Puzzle, filled: readonly Filled[]): Bin[] {
  const { kinds, spans } = question;
  const length = (filling: Filled["filling"]) => {
    let sum = 0;
    for (let i = 0; i < filling.length; i += 2) sum += sizes[filling[i]!]! * filling[i + 1]!;
    return sum;
  };
  const bins: Bin[] = spans.map(({ room }, wood) => ({ wood, bought: false, room, runs: [] }));
  const used = places.map(() => 0);
  for (const { place, filling } of filled) {
    const { kind, woods } = places[place]!;
    if (kind === "missing") continue;
    const wood = woods[kind === "sold" ? 0 : used[place]!++]!;
    const room = (kind === "sold" ? kinds[wood]!.room : spans[wood]!.room) - length(filling);
    if (kind === "sold") bins.push({ wood, bought: true, room, runs: [...filling] });
    else bins[wood] = { wood, bought: false, room, runs: [...filling] };
  }
  return bins;
}

function poolOf({ places }: Puzzle, bins: readonly Bin[]): Filled[] {
  return bins.flatMap(({ wood, bought, runs }) => {
    const place = places.findIndex(
      ({ kind, woods }) => kind === (bought ? "sold" : "on hand") && woods.includes(wood),
    );
    return place < 0 || runs.length === 0 ? [] : [{ place, filling: runs }];
  });
}

/** Per group, how many are on no board. */
function leftOut({ counts }: Question, bins: readonly Bin[]): Int32Array {
  const left = counts.slice();
  for (const { runs } of bins) for (let r = 0; r < runs.length; r += 2) left[runs[r]!]! -= runs[r + 1]!;
  return left;
}

function priceOf({ question, places, wares, demand }: Puzzle, bins: readonly Bin[]): Price {
  const left = leftOut(question, bins);
  let [weight, size] = [0, 0];
  for (const { wood, bought } of bins) {
    if (!bought) continue;
    weight += question.kinds[wood]!.weight;
    size += question.kinds[wood]!.board.length;
  }
  for (const { kind, from, weight: lack } of places.slice(0, wares))
    if (kind === "missing") weight += lack * Math.min(left[from]!, demand[from]!);
  return [weight, size];
}

function told(state: State, proven: boolean): Progress {
  const { job, puzzle, bins, worths, best, bound, work } = state;
  const out = [...leftOut(puzzle.question, bins)];
  const certificate = { worths: worths.map((w) => w.worths) };
  const [cost] = priceOf({ ...puzzle, wares: 0 }, bins);
  const holds = (price: Price) => boundHolds(job, certificate, out, price);
  const sure = proven && holds([cost, best[1]]);
  const least = sure ? cost : Math.min(cost, bound[0]);
  return {
    answer: answerOf(job, puzzle.question, bins),
    proof: {
      status: sure ? "proven" : "bounded",
      cost,
      bound: sure || (least > 0 && holds([least, 0])) ? least : 0,
      money: job.sold.every(({ price }) => price !== null),
      work: work.done,
      certificate,
    },
  };
}
