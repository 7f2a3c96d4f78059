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
    const anew = packAgain(question, worst, effort);
    if (!isBetter(scoreOf(question, anew), scoreOf(question, worst))) continue;
    boards = [...anew, ...boards.slice(n)].sort(worstFirst(question));
    n = 1;
  }
  return boards;
}

const MOST_BOARDS = 12;

/** The pieces on these boards packed again, as a question with no other lengths in it. */
function packAgain(question: Question, boards: readonly Bin[], effort: Effort): readonly Bin[] {
  const onThem = new Map<number, number>();
  for (const { runs } of boards)
    for (let r = 0; r < runs.length; r += 2) onThem.set(runs[r]!, (onThem.get(runs[r]!) ?? 0) + runs[r + 1]!);
  const groups = [...onThem.keys()].sort((a, b) => a - b);
  const counts = Int32Array.from(groups, (g) => onThem.get(g)!);
  const few = { ...question, sizes: Int32Array.from(groups, (g) => question.sizes[g]!), counts, tooLong: 0 };
  const bins = packBought(few, counts, effort, false);
  return bins.map((bin) => ({ ...bin, runs: bin.runs.map((n, i) => (i % 2 === 0 ? groups[n]! : n)) }));
}

function worstFirst({ kinds }: Question): (a: Bin, b: Bin) => number {
  return (a, b) => {
    const [kindA, kindB] = [kinds[a.wood]!, kinds[b.wood]!];
    return kindB.weight * (kindA.room - a.room) - kindA.weight * (kindB.room - b.room) || a.wood - b.wood;
  };
}
