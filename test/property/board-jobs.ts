/** Board jobs to try what must always hold on. */
import fc from "fast-check";
import type { BoardJob } from "../../server/cutting/job";

/** Sound jobs on a coarse grid, so that equal lengths and exact fits are common. */
export function boardJobs(
  most: { pieces: number; sold: number; onHand: number },
  scale = 1,
): fc.Arbitrary<BoardJob> {
  const grid = (from: number, to: number) => fc.integer({ min: from, max: to }).map((n) => n * scale);
  const pieces = fc.array(grid(1, 70), { maxLength: most.pieces });
  const sold = fc.array(fc.tuple(grid(20, 100), fc.integer({ min: 0, max: 900 })), { maxLength: most.sold });
  const bad = fc.tuple(grid(0, 60), grid(0, 12)).map(([from, wide]) => ({ from, to: from + wide }));
  const onHand = fc.array(fc.tuple(grid(5, 80), fc.array(bad, { maxLength: 2 })), { maxLength: most.onHand });
  return fc
    .record({
      pieces,
      sold,
      onHand,
      kerf: grid(0, 3),
      endTrim: grid(0, 4),
      salvage: fc.constantFrom("use up" as const, "keep" as const),
    })
    .map((job) => ({
      ...job,
      pieces: job.pieces.map((length, i) => ({ id: `piece ${i}`, length })),
      sold: job.sold.map(([length, price], i) => ({ id: `sold ${i}`, length, price })),
      onHand: job.onHand.map(([length, bad], i) => ({ id: `old ${i}`, length, bad })),
    }));
}

/** Any numbers at all, ids that repeat, prices not known. */
export const wildBoardJobs: fc.Arbitrary<BoardJob> = (() => {
  const number = fc.oneof(fc.integer({ min: -3, max: 90 }), fc.constantFrom(2 ** 26, 2 ** 60), fc.double());
  const id = fc.constantFrom("a", "b", "c", "d", "e");
  const stretch = fc.record({ from: number, to: number });
  return fc.record({
    pieces: fc.array(fc.record({ id, length: number }), { maxLength: 12 }),
    sold: fc.array(fc.record({ id, length: number, price: fc.option(number) }), { maxLength: 4 }),
    onHand: fc.array(fc.record({ id, length: number, bad: fc.array(stretch, { maxLength: 2 }) }), {
      maxLength: 4,
    }),
    kerf: fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 0, max: 5 }) }, number),
    endTrim: fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 0, max: 5 }) }, number),
    salvage: fc.constantFrom("use up" as const, "keep" as const),
  });
})();
