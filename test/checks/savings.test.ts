/** What is told of savings and of shortages holds when it is tried. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { improved } from "../../server/cutting/improve";
import type { BoardAnswer } from "../../server/cutting/job";
import { type BoardWork, savingOf, shortageOf, wastedRest } from "../../server/worked";
import { run } from "./plans";

const RUNS = Number(process.env.FC_RUNS ?? 150);
const EFFORT = 200_000_000;

const eighths = (most: number) => fc.integer({ min: 16, max: most * 8 }).map((n) => `${n}/8"`);
const pieces = (most: number) =>
  fc
    .array(fc.tuple(fc.integer({ min: 1, max: 3 }), eighths(most)), { minLength: 1, maxLength: 4 })
    .map((all) => all.map(([n, length], i) => `part piece-${i} ${n} of wood, length ${length}\n`).join(""));

const stock = (text: string): BoardWork => run(text).worked.boards[0]!;
const best = ({ job }: BoardWork): BoardAnswer => {
  const news = improved({ kind: "boards", job }, EFFORT);
  return news.answer as BoardAnswer;
};

it("another board saves at least as much as is told, once it is there", () => {
  let told = 0;
  fc.assert(
    fc.property(pieces(90), fc.integer({ min: 6, max: 60 }), fc.boolean(), (parts, dollars, two) => {
      const sold = `sold 8' $${dollars}.40${two ? `, 12' $${Math.round(dollars * 1.4)}` : ""}`;
      const before = stock(`stock wood of 2x4, ${sold}\n${parts}`);
      const saving = savingOf(before, "ps20-dry");
      if (!saving) return;
      told++;
      const length = `${Math.ceil(saving.length.approx * 10) / 10}mm`;
      const more =
        saving.by === "length"
          ? `${sold}, ${length} $${saving.price.approx.toFixed(2)}`
          : `${sold}, on hand 1 of ${length}`;
      const after = best(stock(`stock wood of 2x4, ${more}\n${parts}`));
      const saves = Math.round(saving.saves.approx * 100);
      expect(after.unplaced).toEqual([]);
      expect(after.cost!).toBeLessThanOrEqual(before.answer.cost! - saves);
      expect(saves).toBeGreaterThanOrEqual(Math.max(500, before.answer.cost! / 10));
    }),
    { numRuns: RUNS },
  );
  expect(told).toBeGreaterThan(RUNS / 20);
});

it("where no way to lay pieces out suffices, the best of them does not", () => {
  let [sure, open] = [0, 0];
  fc.assert(
    fc.property(pieces(50), fc.integer({ min: 1, max: 4 }), (parts, n) => {
      const work = stock(`stock wood of 2x4, on hand ${n} of 52"\n${parts}`);
      const shortage = shortageOf(work);
      expect(shortage !== undefined).toBe(work.answer.unplaced.length > 0);
      if (!shortage) return;
      const { unplaced } = best(work);
      if (shortage.sure) expect(unplaced.length).toBeGreaterThan(0);
      if (shortage.sure) sure++;
      else open++;
      expect(shortage.pieces.reduce((sum, { count }) => sum + count, 0)).toBe(work.answer.unplaced.length);
    }),
    { numRuns: RUNS },
  );
  expect(Math.min(sure, open)).toBeGreaterThan(0);
});

it("a rest that is told of is in the layout, and worth what it is said to be", () => {
  let told = 0;
  fc.assert(
    fc.property(pieces(60), fc.integer({ min: 6, max: 60 }), (parts, dollars) => {
      const work = stock(`stock wood of 2x4, sold 6' $${dollars}, 10' $${dollars * 2}\n${parts}`);
      const rest = wastedRest(work);
      if (!rest) return;
      told++;
      const { length, worth, from } = rest;
      const of = work.answer.boards.filter(({ kind }) => kind === "bought");
      expect(of.some((board) => Math.abs(board.offcut / 640 - length.approx) < 0.01)).toBe(true);
      expect(length.approx).toBeGreaterThan(from.length.approx / 2);
      expect(worth.approx).toBeCloseTo((from.price!.approx * length.approx) / from.length.approx, 1);
    }),
    { numRuns: RUNS },
  );
  expect(told).toBeGreaterThan(0);
});
