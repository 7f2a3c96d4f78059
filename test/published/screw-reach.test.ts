/** How far screws reach, against exact geometry and rules of the trade; inches turned to millimetres. */
import { describe, expect, it } from "vitest";
import { angleForMargin, type DrivenScrew, driveScrew, longestStraight } from "../../server/solid/screw";

const INCH = 25.4;
/** D of a #8 wood screw: 0.060 + 0.013 n in (ASME B18.6.1, as reproduced by makers' tables). */
const D8 = 0.06 + 0.013 * 8;

function drive(length: number, boards: readonly number[], angleOffSquare = 0): DrivenScrew {
  const layers = boards.map((depth, i) => ({ id: `board ${i + 1}`, depth: depth * INCH }));
  const screw = driveScrew({ length: length * INCH, angleOffSquare, layers });
  if (screw.kind !== "driven") throw new Error(`impossible: ${screw.reason}`);
  return screw;
}

describe("straight (exact geometry)", () => {
  it("#8 x 2 through 3/4 into 1-1/2: 1.25 of bite, over 6 D, 0.762 of 10 D, nothing proud", () => {
    // 6 D and 10 D: NDS 2018 12.1.5.6 and the note of Table 12L (the second from memory).
    const screw = drive(2, [0.75, 1.5]);
    expect(screw.bite / INCH).toBeCloseTo(1.25, 9);
    expect(screw.bite / INCH).toBeGreaterThan(6 * D8);
    expect(screw.bite / INCH / (10 * D8)).toBeCloseTo(0.762, 3);
    expect(screw.tip.in).toBe(1);
    expect(screw.tip.woodOverTip / INCH).toBeCloseTo(0.25, 9);
  });

  it("#8 x 1-1/4 through 3/4 into 3/4: 0.50 of bite, under 6 D, under half the screw, nothing proud", () => {
    // At least half the screw and 1/2 in into the second piece: common practice.
    const screw = drive(1.25, [0.75, 0.75]);
    expect(screw.bite / INCH).toBeCloseTo(0.5, 9);
    expect(screw.bite / INCH).toBeLessThan(6 * D8);
    expect(screw.share).toBeCloseTo(0.4, 9);
    expect(screw.tip.woodOverTip / INCH).toBeCloseTo(0.25, 9);
  });

  it("#8 x 2-1/2 through 3/4 into 1-1/2 stands 0.25 proud", () => {
    const screw = drive(2.5, [0.75, 1.5]);
    expect(screw.tip.in).toBe("beyond");
    expect(screw.tip.woodOverTip / INCH).toBeCloseTo(-0.25, 9);
    expect(screw.bite / INCH).toBeCloseTo(1.5, 9);
  });

  it("1-1/4 through two 1/2 boards stands 1/4 proud", () => {
    const screw = drive(1.25, [0.5, 0.5]);
    expect(screw.tip.in).toBe("beyond");
    expect(screw.tip.woodOverTip / INCH).toBeCloseTo(-0.25, 9);
  });

  it("2 through two 3/4 boards stands 1/2 proud; 1-3/8 is the longest that keeps 1/8 (common practice)", () => {
    expect(drive(2, [0.75, 0.75]).tip.woodOverTip / INCH).toBeCloseTo(-0.5, 9);
    expect(longestStraight(1.5 * INCH, 0.125 * INCH)! / INCH).toBeCloseTo(1.375, 9);
  });
});

describe("angled (exact geometry)", () => {
  it("1-1/4 in two 1/2 boards reaches the far face at 36.9: the 3-4-5 triangle", () => {
    const angle = angleForMargin(1.25 * INCH, 1 * INCH, 0)!;
    expect(angle).toBeCloseTo(36.9, 1);
    expect(Math.cos((angle * Math.PI) / 180)).toBeCloseTo(4 / 5, 12);
    const screw = drive(1.25, [0.5, 0.5], angle);
    expect(screw.tip.woodOverTip).toBeCloseTo(0, 9);
    expect(screw.tip.in).toBe(1);
  });

  it("2 in two 3/4 boards needs 47 degrees for 1/8 of wood over the tip (common practice: the 1/8)", () => {
    const angle = angleForMargin(2 * INCH, 1.5 * INCH, 0.125 * INCH)!;
    expect(Math.ceil(angle)).toBe(47);
    expect(drive(2, [0.75, 0.75], 47).tip.woodOverTip / INCH).toBeGreaterThan(0.125);
    expect(drive(2, [0.75, 0.75], 46).tip.woodOverTip / INCH).toBeLessThan(0.125);
  });
});
