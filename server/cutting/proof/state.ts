/** What a proof has found so far: the best answer, what nothing is below of, and why. */
import type { BoardJob } from "../job";
import type { Bin } from "../pack";
import type { Question } from "../question";
import type { Worths } from "./cover";
import type { Filled } from "./fill";
import { lengthOf } from "./knapsack";
import type { Price } from "./least";
import type { Work } from "./pausing";
import { type Puzzle, puzzleOf } from "./puzzle";

export interface State {
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

export function begun(job: BoardJob, question: Question, bins: readonly Bin[], work: Work): State {
  const out = leftOut(question, bins);
  const reach = Math.max(0, ...question.spans.map(({ room }) => room));
  const onlyOnHand = question.members.flatMap((_, g) =>
    g < question.tooLong && question.sizes[g]! <= reach ? [g] : [],
  );
  const puzzle = puzzleOf(question, job.salvage, onlyOnHand.some((g) => out[g]! > 0) ? onlyOnHand : []);
  return {
    job,
    puzzle,
    work,
    bins,
    best: priceOf(puzzle, bins),
    bound: [0, 0],
    worths: [],
    pool: filledOf(puzzle, bins),
  };
}

/** Bins of filled places: stretches on hand of one room are taken in their order, those left over stay empty. */
export function binsOf(puzzle: Puzzle, filled: readonly Filled[]): Bin[] {
  const { question, places } = puzzle;
  const { kinds, spans } = question;
  const bins: Bin[] = spans.map(({ room }, wood) => ({ wood, bought: false, room, runs: [] }));
  const used = places.map(() => 0);
  for (const { place, filling } of filled) {
    const { kind, woods } = places[place]!;
    if (kind === "missing") continue;
    const wood = woods[kind === "sold" ? 0 : used[place]!++]!;
    const room = (kind === "sold" ? kinds[wood]!.room : spans[wood]!.room) - lengthOf(puzzle, filling);
    if (kind === "sold") bins.push({ wood, bought: true, room, runs: [...filling] });
    else bins[wood] = { wood, bought: false, room, runs: [...filling] };
  }
  return bins;
}

/** The places that bins fill, those that are filled. */
export function filledOf({ places }: Puzzle, bins: readonly Bin[]): Filled[] {
  return bins.flatMap(({ wood, bought, runs }) => {
    const place = places.findIndex(
      ({ kind, woods }) => kind === (bought ? "sold" : "on hand") && woods.includes(wood),
    );
    return place < 0 || runs.length === 0 ? [] : [{ place, filling: runs }];
  });
}

/** Per group, how many are on no board. */
export function leftOut({ counts }: Question, bins: readonly Bin[]): Int32Array {
  const left = counts.slice();
  for (const { runs } of bins) for (let r = 0; r < runs.length; r += 2) left[runs[r]!]! -= runs[r + 1]!;
  return left;
}

export function priceOf({ question, places, wares, demand }: Puzzle, bins: readonly Bin[]): Price {
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
