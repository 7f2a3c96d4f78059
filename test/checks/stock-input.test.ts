/** Stocks that are hard to lay out: each plan gets a clear problem, a place on the not-checked list, or a layout that holds. */
import { describe, expect, it } from "vitest";
import { uncheckedText } from "../../server/checks";
import { verifyLayout } from "../../server/cutting/check";
import { evaluate, sheetOf, writeSheet } from "../../server/service";
import { layoutsOf } from "../laid-out";
import { nothing, run } from "./plans";

interface Outcome {
  readonly text: string;
  readonly codes: readonly string[];
  /** On the not-checked list, in words. */
  readonly unchecked?: RegExp;
  /** Pieces without wood. */
  readonly unplaced?: number;
}

const PLANS: Readonly<Record<string, Outcome>> = {
  "nothing to buy": {
    text: 'stock 2x4\npart rail 2 of 2x4, length 60"',
    codes: [],
    unchecked: /what to buy of 2x4: neither the plan nor the shop says what lengths are sold/,
    unplaced: 2,
  },
  "a price missing": {
    text: "stock 2x4, sold 6', 8' $4.20\npart rail 5 of 2x4, length 60\"\npart peg 3 of 2x4, length 20\"",
    codes: [],
    unchecked: /what 2x4 costs: no price is given for 72"/,
  },
  "no price at all": {
    text: "stock 2x4, sold 6', 8'\npart rail 5 of 2x4, length 60\"",
    codes: [],
    unchecked: /what 2x4 costs: no price is given$/m,
  },
  "prices missing of sheets": {
    text: 'sheet ply, plywood 1/2", sold 48" x 96" $38, 24" x 48", 48" x 48"\npart shelf 2 of ply, length 40", width 20"',
    codes: [],
    unchecked: /what ply costs: no price is given for 24" x 48" and 48" x 48"/,
  },
  "5,000 pieces": {
    text: "stock 1x4, sold 6' $3.10, 8' $4.20, 10' $5.25\npart picket 4990 of 1x4, length 41-3/8\"\npart rail 10 of 1x4, length 60\"",
    codes: [],
  },
  "lengths that share no grid": {
    text: "stock 2x4, sold 6' $3.10, 2.41m $4.20\npart a 7 of 2x4, length 48\" / 7\npart b 9 of 2x4, length 333.3mm\npart c 5 of 2x4, length 1m / 3",
    codes: ["off-the-tape"],
  },
  "metric boards with inch pieces": {
    text: 'plan A rack\n  lumber planed metric\nstock 45x95, sold 1.8m €4.10, 2.4m €5.45\npart a 7 of 45x95, length 23-5/8"\npart b 3 of 45x95, length 5\' 2"',
    codes: [],
  },
  "a kerf longer than the board": {
    text: "plan A rail\n  kerf 9'\nstock 2x4, sold 8' $4.20\npart rail 2 of 2x4, length 60\"",
    codes: ["cannot-be-cut"],
  },
  "such a kerf, and a budget that it breaks": {
    text: "plan A rail\n  kerf 9'\n  budget $5\nstock 2x4, sold 8' $4.20\npart rail 2 of 2x4, length 60\"",
    codes: ["cannot-be-cut"],
  },
  "a kerf beyond all numbers": {
    text: "plan A rail\n  kerf 200m\nstock 2x4, sold 8' $4.20\npart rail 2 of 2x4, length 60\"",
    codes: ["cannot-be-cut"],
    unplaced: 2,
  },
  "a board too long to be laid out": {
    text: "stock 2x4, sold 400' $42\npart rail 2 of 2x4, length 60\"",
    codes: [],
    unchecked: /where 2 pieces of 2x4 can be cut from: something of it is too large to be laid out/,
    unplaced: 2,
  },
  "a bad place from its far end": {
    text: 'stock 2x4, on hand 2 of 60" bad 50" to 40"\npart rail 2 of 2x4, length 30"',
    codes: [],
  },
  "a trim that leaves nothing, and a pile that does": {
    text: "stock 2x4, sold 8' $4.20, end trim 9', on hand 1 of 5'\npart rail 2 of 2x4, length 40\"",
    codes: ["not-enough-on-hand"],
    unplaced: 1,
  },
  "a sheet with its grain across": {
    text: 'sheet ply, plywood 1/2", sold 48" x 96" $38, grain along width\npart shelf 1 of ply, length 60", width 20"',
    codes: ["too-long-for-stock"],
  },
};

describe.each(Object.entries(PLANS))("%s", (_, { text, codes, unchecked, unplaced = 0 }) => {
  const first = run(text);
  const better = evaluate(first.file, text, nothing, { layouts: layoutsOf(first, 100_000_000) });

  it.each([first, better])("a clear problem, or a layout that holds", (plan) => {
    expect([...new Set(plan.problems.map((p) => p.code))]).toEqual(codes);
    const said = plan.worked.unchecked.map((u) => uncheckedText(u)).map(({ what, why }) => `${what}: ${why}`);
    if (unchecked) expect(said.join("\n")).toMatch(unchecked);
    for (const { job, answer } of plan.worked.boards) {
      expect(verifyLayout(job, answer)).toEqual([]);
      expect(answer.unplaced.length).toBe(unplaced);
    }
    for (const language of ["en", "fr"] as const)
      expect(writeSheet(sheetOf(plan, undefined, language), "text", { language }).length).toBeGreaterThan(
        100,
      );
  });
});
