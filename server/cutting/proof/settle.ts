/**
 * Which of the equally good layouts it is: the one that grows with the plan. Pieces are taken up in the order of the text,
 * part by part; each part goes into what the boards so far have left over, and beside that on new boards, and only where
 * another layout is cheaper, or as cheap with less wood, is everything laid out anew. So a part that is added at the end
 * leaves the boards it does not need as they were, wherever the cost allows. It is a function of the job alone: what is
 * kept of earlier work is what would be worked out again.
 */
import { answerFrom, dealt, type Held } from "../answer";
import { packBought } from "../bought";
import type { BoardAnswer, BoardJob } from "../job";
import { firstBins } from "../lay-out";
import type { Bin } from "../pack";
import { type Question, readJob } from "../question";
import { isBetter, scoreOf, shrink } from "../score";
import { isLess } from "./least";
import { nearest } from "./nearest";
import { withLargestOffcut } from "./offcut";
import type { Pausing } from "./pausing";
import { search } from "./search";
import { begun, leftOut } from "./state";

/** The settled answer, and the counted work it took; `proven` itself where that costs less or takes less wood. */
export function* settled(
  job: BoardJob,
  proven: BoardAnswer,
  effort: number,
): Pausing<{ readonly answer: BoardAnswer; readonly work: number }> {
  const ends = endsOf(job);
  if (job.pieces.length > MOST_PIECES) return { answer: proven, work: 0 };
  const first =
    ends.length <= MOST_STEPS ? 0 : ANCHORS * Math.floor((ends.length - MOST_STEPS / 2) / ANCHORS);
  const each = Math.floor(effort / SHARES);
  let work = 0;
  let before: Step | null = null;
  for (const end of ends.slice(first)) {
    const now: BoardJob = { ...job, pieces: job.pieces.slice(0, end) };
    const key = JSON.stringify([now, each]);
    const known = KEPT.get(key);
    const step: Step = known ?? (yield* grown(now, before, each));
    if (!known) keep(key, step);
    work += step.work;
    before = step;
  }
  const answer = before && answerFrom(job, readJob(job), before.held);
  const asGood = answer?.cost === proven.cost && answer.length === proven.length;
  return { answer: answer && asGood && answer.unplaced.length === 0 ? answer : proven, work };
}

interface Step {
  readonly held: readonly Held[];
  /** Pieces taken up so far. */
  readonly pieces: number;
  /** Nothing costs less, as far as the search can tell. */
  readonly least: boolean;
  readonly work: number;
}

/** With more pieces than these it would take too long. */
const MOST_PIECES = 1200;
/** Parts that are taken up one by one; of more than these the first ones are laid out together. */
const MOST_STEPS = 16;
/** Of the effort, each of them has one such share. */
const SHARES = 32;
/** Where they begin moves by so many parts at once. */
const ANCHORS = 8;

const KEPT = new Map<string, Step>();
const MOST_KEPT = 96;

function keep(key: string, step: Step): void {
  KEPT.set(key, step);
  if (KEPT.size > MOST_KEPT) KEPT.delete(KEPT.keys().next().value!);
}

/** Where a length ends and another begins, in the order of the pieces. */
function endsOf({ pieces }: BoardJob): number[] {
  return pieces.flatMap(({ length }, i) => (pieces[i + 1]?.length === length ? [] : [i + 1]));
}

/** The layout of one part more. */
function* grown(job: BoardJob, before: Step | null, effort: number): Pausing<Step> {
  const first = firstBins(job);
  const { question } = first;
  const work = { done: 0, most: effort };
  const extended = before && extend(job, question, before);
  const bins = extended && binsOfHeld(job, question, extended);
  const pieces = job.pieces.length;
  let state = begun(job, question, first.bins, work);
  if (extended && bins && isAllPlaced(question, bins)) {
    // More pieces from the same boards: nothing could be cheaper.
    if (before.least && countBought(extended) === countBought(before.held))
      return { held: extended, pieces, least: true, work: 1000 };
    const other = begun(job, question, bins, work);
    if (!isLess(state.best, other.best)) state = other;
  }
  const least = yield* search(state);
  if (extended && state.bins === bins) return { held: extended, pieces, least, work: work.done };
  const near = before && isAllPlaced(question, state.bins) ? yield* nearest(job, state, before.held) : null;
  if (near) return { held: near, pieces, least, work: work.done };
  const held = dealt(question, yield* withLargestOffcut(state.puzzle, state.bins, work));
  return { held, pieces, least, work: work.done };
}

const countBought = (held: readonly Held[]): number => held.filter(({ bought }) => bought).length;

const isAllPlaced = (question: Question, bins: readonly Bin[]): boolean =>
  leftOut(question, bins).every((n) => n === 0);

/**
 * The new pieces in the smallest rests that take them, longest first, and on boards bought for those that fit none; or all
 * of them on new boards, where that costs no more and leaves a longer rest.
 */
function extend(job: BoardJob, question: Question, before: Step): readonly Held[] {
  const ways = [true, false].map((intoRests) => extendedBy(job, question, before, intoRests));
  const scores = ways.map((held) => scoreOf(question, binsOfHeld(job, question, held)));
  return ways[isBetter(scores[1]!, scores[0]!) ? 1 : 0]!;
}

function extendedBy(
  job: BoardJob,
  question: Question,
  { held, pieces: from }: Step,
  intoRests: boolean,
): readonly Held[] {
  const { kinds, spans, sizes, tooLong, kerf } = question;
  const groupOf = groupsOf(question);
  const longest = sizes[tooLong] ?? 0;
  const taken = new Set(held.flatMap((one) => (one.bought ? [] : [one.wood])));
  const empty = spans.flatMap((_, wood): Held[] =>
    taken.has(wood) ? [] : [{ bought: false, wood, pieces: [] }],
  );
  const boards = [...held, ...empty].map((one) => {
    const room = one.bought ? kinds[one.wood]!.room : spans[one.wood]!.room;
    const used = one.pieces.reduce((sum, p) => sum + job.pieces[p]!.length + kerf, 0);
    return { ...one, pieces: [...one.pieces], rest: room - used };
  });
  const fresh = job.pieces.map((_, p) => p).slice(from);
  fresh.sort((a, b) => job.pieces[b]!.length - job.pieces[a]!.length || a - b);
  const left = new Int32Array(sizes.length);
  const over: number[] = [];
  for (const p of fresh) {
    const g = groupOf.get(p);
    if (g === undefined) continue;
    // What nothing sold can take goes on hand in any case.
    const may = intoRests || g < tooLong;
    let best: (typeof boards)[number] | null = null;
    for (const board of boards) {
      const kept = !board.bought && job.salvage === "keep" && sizes[g]! <= longest;
      if (!may || board.rest < sizes[g]! || kept || (best !== null && board.rest >= best.rest)) continue;
      best = board;
    }
    if (best) {
      best.pieces.push(p);
      best.rest -= sizes[g]!;
    } else {
      left[g]!++;
      over.push(p);
    }
  }
  const bought = shrink(question, packBought(question, left, { left: BUYING }, true));
  const more = bought.map(({ wood, runs }): Held => {
    const taken: number[] = [];
    for (let r = 0; r < runs.length; r += 2)
      for (let n = runs[r + 1]!; n > 0; n--) {
        const at = over.findIndex((p) => groupOf.get(p) === runs[r]);
        taken.push(over.splice(at, 1)[0]!);
      }
    return { bought: true, wood, pieces: taken };
  });
  const inOrder = (a: number, b: number) => job.pieces[b]!.length - job.pieces[a]!.length || a - b;
  return [
    ...boards.map(({ bought, wood, pieces }) => ({ bought, wood, pieces: pieces.sort(inOrder) })),
    ...more,
  ];
}

const BUYING = 3_000;

function groupsOf({ members }: Question): ReadonlyMap<number, number> {
  return new Map(members.flatMap((group, g) => group.map((p) => [p, g] as const)));
}

function binsOfHeld(job: BoardJob, question: Question, held: readonly Held[]): readonly Bin[] {
  const groupOf = groupsOf(question);
  return held.map(({ bought, wood, pieces }) => {
    const counts = new Map<number, number>();
    let used = 0;
    for (const p of pieces) {
      const g = groupOf.get(p)!;
      counts.set(g, (counts.get(g) ?? 0) + 1);
      used += job.pieces[p]!.length + question.kerf;
    }
    const runs = [...counts].sort((a, b) => a[0] - b[0]).flat();
    const room = (bought ? question.kinds[wood]!.room : question.spans[wood]!.room) - used;
    return { bought, wood, room, runs };
  });
}
