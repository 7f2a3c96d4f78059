/** Saw settings for sloped corners and angles for flat rings, against printed tables. */
import { describe, expect, it } from "vitest";
import { hopper, leaningCorner } from "../../server/solid/hopper";
import { MANUAL } from "./ring-saw-table";

describe("the compound-miter table of a miter-saw operator's manual", () => {
  it.each(MANUAL)("pitch %d, %d sides: miter %d, tilt %d", (pitch, sides, miter, tilt) => {
    const cut = hopper(sides, 90 - pitch)!;
    expect(Math.abs(cut.miter - miter)).toBeLessThan(0.006);
    expect(Math.abs(cut.tilt - tilt)).toBeLessThan(0.006);
  });

  it.each(MANUAL.filter(([pitch]) => pitch > 0))(
    "pitch %d, %d sides, by the general corner",
    (pitch, sides, miter, tilt) => {
      const cut = leaningCorner(360 / sides, 90 - pitch, 90 - pitch)!;
      for (const m of cut.miters) expect(Math.abs(m - miter)).toBeLessThan(0.006);
      expect(Math.abs(cut.tilt - tilt)).toBeLessThan(0.006);
    },
  );
});

describe("other published settings", () => {
  it("crown molding of spring angle 38 at a 90-degree corner: 31.6 is a stock detent of miter saws", () => {
    // Detent: a miter-saw operator's manual. 31.62 and 33.86: the same formula, computed.
    const cut = hopper(4, 38)!;
    expect(cut.miter).toBeCloseTo(31.62, 2);
    expect(cut.tilt).toBeCloseTo(33.86, 2);
  });

  it.each([
    // 360 / n / 2, an octagon 22.5: a table-saw text. The rest: exact geometry.
    [3, 60],
    [4, 45],
    [5, 36],
    [6, 30],
    [8, 22.5],
    [10, 18],
    [12, 15],
  ])("a flat ring of %d sides is cut at %d", (sides, miter) => {
    expect(hopper(sides, 90)!.miter).toBeCloseTo(miter, 9);
  });

  it.each([
    // Computed from tan(miter) = tan(180/n) sin t and sin(tilt) = sin(180/n) cos t separately.
    [4, 15, 14.5108, 43.0795],
    [8, 30, 11.7009, 19.3546],
    [4, 38, 31.619, 33.8629],
  ])("%d sides leaning %d: %d, %d", (sides, lean, miter, tilt) => {
    const cut = hopper(sides, lean)!;
    expect(cut.miter).toBeCloseTo(miter, 4);
    expect(cut.tilt).toBeCloseTo(tilt, 4);
  });

  it("leans of 10 and 25 at one square corner: 24.6657, 9.0795, tilt 42.8957 (computed separately)", () => {
    const cut = leaningCorner(90, 10, 25)!;
    expect(cut.miters[0]).toBeCloseTo(24.6657, 4);
    expect(cut.miters[1]).toBeCloseTo(9.0795, 4);
    expect(cut.tilt).toBeCloseTo(42.8957, 4);
  });
});
