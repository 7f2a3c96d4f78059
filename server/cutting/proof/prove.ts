/**
 * The cheapest way to cut a board job, and the proof of it. The question is split in two: which boards (`least.ts`), and
 * whether the pieces can be cut from exactly these (`cover.ts`, `dive.ts`). A "no" to the second is a need that the first
 * must heed from then on; a "yes" ends it, since nothing less was left. Best and bound are told as they change; whatever
 * is told has been accepted by `certify-boards.ts`.
 */
import { answerOf } from "../answer";
import type { BoardAnswer, BoardJob } from "../job";
import { firstBins } from "../lay-out";
import type { Bin } from "../pack";
import type { Question } from "../question";
import { boundHolds, type Certificate } from "./certify-boards";
import { Cover, isSpent, needOf, type Pausing, SCALES, scaled, type Work, type Worths } from "./cover";
import { diveFor } from "./dive";
import { type Filled, type Packed, packInto } from "./fill";
import { leastPurchase, type Price, type Purchase } from "./least";
import { type Puzzle, puzzleOf } from "./puzzle";

/** How good an answer is known to be. */
export interface Proof {
  /** `proven`: nothing costs less, and of what costs as much nothing takes less wood. `bounded`: nothing costs less than the bound. */
  readonly status: "proven" | "bounded";
  /** Of the answer and the least there can be, in the same unit. */
  readonly cost: number;
  readonly bound: number;
  /** They are cents; else, where a price is missing, ticks of boards bought. */
  readonly money: boolean;
  /** Counted work so far. */
  readonly work: number;
  readonly certificate: Certificate;
}

export interface Progress {
  readonly answer: BoardAnswer;
  readonly proof: Proof;
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
  const learn = (worths: Worths) => state.worths.push(worths);
  learn(worthsOf(puzzle, [...puzzle.sizes], work));
  let next = cheapest(state);
  if (next === null) return true;
  const cover = new Cover(puzzle, null, pool, work);
  learn(worthsOf(puzzle, scaled(yield* cover.leastWorths(), SCALES.at(-1)!), work));
  next = cheapest(state);
  while (next && !isSpent(work)) {
    state.bound = next.price;
    yield;
    const counts = puzzle.places.map((_, p) => next!.counts[p] ?? 0);
    const quick = packInto(puzzle, puzzle.demand.slice(), withOnHand(puzzle, counts), QUICK);
    work.done += 1000 + QUICK * quick.filled.length;
    if (quick.lack === 0) return take(state, quick);
    const exactly = new Cover(puzzle, counts, pool, work);
    const covered = yield* exactly.covers();
    if (covered === "unsure") return false;
    if (covered === "all") {
      const packed = yield* diveFor(puzzle, counts, exactly, DIVES, work);
      if (packed?.lack === 0) return take(state, packed);
      return false;
    }
    learn(covered);
    next = cheapest(state);
  }
  return next === null;
}

const QUICK = 100;
const DIVES = 12;
const STEPS = 2_000_000;

const cheapest = ({ puzzle, worths, best, bound }: State): Purchase | null | undefined =>
  leastPurchase(
    puzzle.places.slice(0, puzzle.wares),
    worths.map(({ need }) => need),
    best,
    bound,
    { left: STEPS },
  );

function worthsOf(puzzle: Puzzle, worths: readonly number[], work: Work): Worths {
  const { need, work: done } = needOf(puzzle, worths);
  work.done += done;
  return { worths, need };
}

const withOnHand = ({ places }: Puzzle, counts: readonly number[]): readonly number[] =>
  places.map(({ kind, supply }, p) => (kind === "on hand" ? supply : counts[p]!));

/** The packing becomes the best answer. */
function take(state: State, { filled }: Packed): true {
  state.bins = binsOf(state.puzzle, filled);
  state.best = priceOf(state.puzzle, state.bins);
  return true;
}

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
