/** Cutting anew the boards that use their money worst. */
import { packBought } from "./bought";
import type { Effort } from "./fullest";
import type { Bin } from "./pack";
import type { Question } from "./question";
import { isBetter, scoreOf } from "./score";

/**
 * Takes the bought boards that cost most for the wood used on them, two, three … `MOST_BOARDS` of them together, and
 * packs their pieces again; keeps what is cheaper and begins again, until nothing is or the effort is spent.
 */
export function cutAgain(question: Question, bins: readonly Bin[], effort: Effort): readonly Bin[] {
  let boards = [...bins].sort(worstFirst(question));
  for (let n = 2; n <= Math.min(MOST_BOARDS, boards.length) && effort.left > 0; n++) {
    const worst = boards.slice(0, n);
    const counts = question.sizes.map(() => 0);
    for (const { runs } of worst) for (let r = 0; r < runs.length; r += 2) counts[runs[r]!]! += runs[r + 1]!;
    const anew = packBought(question, counts, effort, false);
    if (!isBetter(scoreOf(question, anew), scoreOf(question, worst))) continue;
    boards = [...anew, ...boards.slice(n)].sort(worstFirst(question));
    n = 1;
  }
  return boards;
}

const MOST_BOARDS = 12;

function worstFirst({ kinds }: Question): (a: Bin, b: Bin) => number {
  return (a, b) => {
    const [kindA, kindB] = [kinds[a.wood]!, kinds[b.wood]!];
    return kindB.weight * (kindA.room - a.room) - kindA.weight * (kindB.room - b.room) || a.wood - b.wood;
  };
}
