/**
 * The first answer to a board job: good, not proven. Several rules are tried and the cheapest answer wins: fewest pieces
 * left over, least money (least length when a sold board has no price), least length bought, largest single offcut,
 * then the rule tried first.
 *
 * Boards on hand are filled first-fit, best-fit or fullest first. What remains goes on bought boards: first-fit and
 * best-fit decreasing with new boards of each single length, of the cheapest that takes the piece, or of the cheapest
 * for a run of equal pieces; and board by board, each the fullest for its money. Then the boards that use their money
 * worst are cut anew together. Each bought board becomes the cheapest that holds its content.
 *
 * Equal lengths are handled together: a rule costs O((g + b) log b) for g different lengths and b boards, and the rules
 * and steps tried are counted, not timed, so that 20,000 pieces end soon and the same job always gives the same answer.
 */
import { cutAgain } from "./again";
import { answerOf } from "./answer";
import { packBought } from "./bought";
import type { BoardAnswer, BoardJob } from "./job";
import type { Bin } from "./pack";
import { type Question, readJob } from "./question";
import { salvageStarts } from "./salvage";
import { isBetter, leftOver, type Score, scoreOf } from "./score";

/** Never throws, whatever numbers the job holds. */
export function layOut(job: BoardJob): BoardAnswer {
  const { question, bins } = firstBins(job);
  return answerOf(job, question, bins);
}

/** The same before pieces are dealt out to boards. */
export function firstBins(job: BoardJob): { readonly question: Question; readonly bins: readonly Bin[] } {
  const question = readJob(job);
  let best: readonly Bin[] = [];
  let bestScore: Score | null = null;
  const starts = salvageStarts(question, job.salvage);
  for (const { bins, counts } of starts) {
    const effort = { left: Math.floor(EFFORT / starts.length) };
    const all = [...bins, ...cutAgain(question, packBought(question, counts, effort, true), { left: AGAIN })];
    const left = counts.map((count, g) => (g < question.tooLong ? count : 0));
    const score = [...leftOver(question, left), ...scoreOf(question, all)];
    if (bestScore !== null && !isBetter(score, bestScore)) continue;
    bestScore = score;
    best = all;
  }
  return { question, bins: best };
}

/** Counted work for the rules, shared by the ways to fill boards on hand, and for cutting anew after each of them. */
const EFFORT = 10_000;
const AGAIN = 8_000;
