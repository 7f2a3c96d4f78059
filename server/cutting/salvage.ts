/** What goes on the boards on hand: a few ways to fill them, before anything is bought. */
import { fullestFilling, supplyOf } from "./fullest";
import { type Bin, packDecreasing } from "./pack";
import type { Question } from "./question";

export interface Start {
  /** One bin for each usable stretch on hand. */
  readonly bins: readonly Bin[];
  /** Pieces per group that remain to be bought for. */
  readonly counts: Int32Array;
}

/**
 * Pieces too long for any board sold come first; with "keep" nothing else goes on hand. The ways: first fit, best fit,
 * each stretch as full as can be from the shortest up; those that leave the same pieces count once.
 */
export function salvageStarts(question: Question, salvage: "use up" | "keep"): readonly Start[] {
  const { sizes, counts, spans, tooLong } = question;
  const last = salvage === "keep" ? tooLong : sizes.length;
  const empty = (): Bin[] => spans.map(({ room }, wood) => ({ wood, bought: false, room, runs: [] }));
  if (spans.length === 0 || last === 0) return [{ bins: empty(), counts }];
  const ways = [
    (bins: Bin[], left: Int32Array) => packDecreasing("first", sizes, left, [0, last], bins, () => null),
    (bins: Bin[], left: Int32Array) => packDecreasing("best", sizes, left, [0, last], bins, () => null),
    (bins: Bin[], left: Int32Array) => {
      packDecreasing("best", sizes, left, [0, tooLong], bins, () => null);
      if (last > tooLong) fillUp(sizes, left, bins);
    },
  ];
  const starts = new Map<string, Start>();
  for (const way of ways) {
    const bins = empty();
    const left = counts.slice();
    way(bins, left);
    const key = left.join();
    if (!starts.has(key)) starts.set(key, { bins, counts: left });
  }
  return [...starts.values()];
}

/** Steps of the search for one stretch. */
const STEPS = 60;

function fillUp(sizes: Int32Array, counts: Int32Array, bins: readonly Bin[]): void {
  const supply = supplyOf(sizes, counts);
  const byRoom = bins.map((_, i) => i).sort((a, b) => bins[a]!.room - bins[b]!.room || a - b);
  for (const i of byRoom) {
    const bin = bins[i]!;
    const { runs, used } = fullestFilling(supply, bin.room, STEPS, null);
    for (let r = 0; r < runs.length; r += 2) counts[runs[r]!]! -= runs[r + 1]!;
    bin.runs.push(...runs);
    bin.room -= used;
  }
}
