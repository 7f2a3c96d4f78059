/**
 * The cheapest way to cut a board job, and the proof of it. The question is split in two: which boards (`least.ts`), and
 * whether the pieces can be cut from exactly these (`cover.ts`, `dive.ts`). A "no" to the second is a need that the first
 * must heed from then on; a "yes" ends it, since nothing less was left. Best and bound are told as they change; whatever
 * is told has been accepted by `certify-boards.ts`.
 */
import { answerOf } from "../answer";
import type { Proof } from "../improve";
import type { BoardAnswer, BoardJob } from "../job";
import { firstBins } from "../lay-out";
import { type Certificate, checkingBound } from "./certify-boards";
import type { Price } from "./least";
import { withLargestOffcut } from "./offcut";
import type { Pausing } from "./pausing";
import { leastWeight, search } from "./search";
import { begun, leftOut, priceOf, type State } from "./state";

export interface Progress {
  readonly answer: BoardAnswer;
  readonly proof: Proof<Certificate>;
}

/**
 * Tells what is best and what is bound whenever that has changed, and in between, now and then, nothing: a place to pause
 * or to stop. Ends when it is proven, or the counted work is done. Never throws, whatever numbers the job holds.
 */
export function* prove(job: BoardJob, effort: number): Generator<Progress | undefined, Progress, void> {
  const { question, bins } = firstBins(job);
  const state = begun(job, question, bins, { done: 0, most: effort });
  const run = search(state);
  let news = yield* told(state, false);
  yield news;
  for (let before = state.work.done; ; ) {
    const { value, done } = run.next();
    if (done) {
      state.bins = yield* withLargestOffcut(state.puzzle, state.bins, state.work);
      return yield* told(state, value);
    }
    const { cost, bound } = news.proof;
    // A bound is checked before it is told, which takes as long as many a step.
    const fresh = costOf(state) < cost || Math.min(state.bound[0], cost) > bound;
    if (fresh && state.work.done > before + TELLING) {
      news = yield* told(state, false);
      before = state.work.done;
    }
    yield news;
  }
}

/** Counted work between two news. */
const TELLING = 5_000_000;

const costOf = ({ puzzle, bins }: State): number => priceOf({ ...puzzle, wares: 0 }, bins)[0];

/** What is best and what is bound, as far as the checker accepts it. */
function* told(state: State, proven: boolean): Pausing<Progress> {
  const { job, puzzle, bins, worths, best, bound, work } = state;
  const out = [...leftOut(puzzle.question, bins)];
  const certificate = { worths: worths.map((w) => w.worths) };
  const cost = costOf(state);
  const holds = (price: Price) => checkingBound(job, certificate, out, price);
  const sure = proven && (yield* holds([cost, best[1]]));
  // What a single need shows is easy to check where many boards make the rest too long to.
  let least = sure ? cost : 0;
  for (const weight of [bound[0], leastWeight(state)]) {
    const some = Math.min(cost, weight);
    if (least > 0 || some <= 0) continue;
    if (yield* holds([some, 0])) least = some;
  }
  return {
    answer: answerOf(job, puzzle.question, bins),
    proof: {
      status: sure ? "proven" : "bounded",
      cost,
      bound: least,
      money: job.sold.every(({ price }) => price !== null),
      work: work.done,
      certificate,
    },
  };
}
