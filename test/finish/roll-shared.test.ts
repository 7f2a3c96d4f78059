/** Liners of several boxes that one length of a roll gives. */
import { describe, expect, it } from "vitest";
import { evaluate, sheetOf } from "../../server/service";
import { nothing } from "../checks/plans";

const troughs = (roll: string, make = ""): string => `plan Two troughs
${make}
roll pond-liner
  width ${roll}
  price $2.10 per foot
box left, inside 10" x 9" x 5-1/2"
  filled with potting-mix
box right, inside 12" x 9" x 5-1/2"
  filled with potting-mix
line left and right with pond-liner
`;

const bought = (text: string) => {
  const evaluated = evaluate("p.sawbuck", text, nothing);
  const [liner] = evaluated.worked.shopping.liners;
  const notes = sheetOf(evaluated).linings.map((l) => l.notes.filter((n) => n.startsWith("side by side")));
  return {
    feet: Math.round(liner!.bought.approx / 304.8),
    along: Math.round((liner!.along.approx / 25.4) * 1e6) / 1e6,
    notes,
  };
};

describe("a roll", () => {
  // Each liner is its box and twice its height and fold: 25" x 24" and 27" x 24" (L + 2D + 2 overlaps, W + 2D + 2 overlaps).
  it("wide enough for both lays them side by side, and half as much is bought", () => {
    const { feet, along, notes } = bought(troughs("6'"));
    expect([feet, along]).toEqual([2, 24]);
    expect(notes).toEqual([
      ['side by side on 24" of the roll: right, left'],
      ['side by side on 24" of the roll: right, left'],
    ]);
  });

  it("too narrow for that gives one after the other", () => {
    const { feet, along, notes } = bought(troughs('30"'));
    expect([feet, along]).toEqual([4, 48]);
    expect(notes).toEqual([[], []]);
  });

  it("gives all copies", () => {
    // Six pieces 27" or 25" wide on 72": two by two.
    expect(bought(troughs("6'", "  make 3")).along).toBe(72);
  });
});
