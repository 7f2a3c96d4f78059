/** How plans are ranked, and each bought board made the cheapest that holds its content. */
import type { BoardOnHand } from "./job";
import type { Bin } from "./pack";
import { firstTaking, type Question } from "./question";

/** Smaller is better, the first number that differs decides. */
export type Score = readonly number[];

export function isBetter(a: Score, b: Score): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! < b[i]!;
  return false;
}

/** Each bought board as the sold length of least weight, then least length, that takes what is on it. */
export function shrink(question: Question, bins: readonly Bin[]): Bin[] {
  return bins.map((bin) => {
    if (!bin.bought) return bin;
    const used = question.kinds[bin.wood]!.room - bin.room;
    const wood = question.cheapestFrom[firstTaking(question, used)]!;
    return { ...bin, wood, room: question.kinds[wood]!.room - used };
  });
}

/** Weight, length bought, and the longest rest, counted negative; O(bins). */
export function scoreOf({ kinds, spans, kerf }: Question, bins: readonly Bin[]): Score {
  let [weight, length, offcut] = [0, 0, 0];
  const cut = new Set<BoardOnHand>();
  for (const { wood, bought, runs } of bins) if (!bought && runs.length > 0) cut.add(spans[wood]!.board);
  for (const { wood, bought, room } of bins) {
    if (bought) {
      weight += kinds[wood]!.weight;
      length += kinds[wood]!.board.length;
    }
    if (bought || cut.has(spans[wood]!.board)) offcut = Math.max(offcut, room - kerf);
  }
  return [weight, length, -offcut];
}

/** How many pieces are left over, and their length. */
export function leftOver({ sizes, kerf }: Question, counts: Int32Array): Score {
  let [pieces, length] = [0, 0];
  counts.forEach((count, g) => {
    pieces += count;
    length += count * (sizes[g]! - kerf);
  });
  return [pieces, length];
}
