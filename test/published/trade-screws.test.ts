// Screw diameters and holes against values printed outside the project.
import { describe, expect, it } from "vitest";
import {
  clearanceBand,
  headWidth,
  pilotBand,
  pilotHole,
  screwGauge,
  shankDiameter,
  withdrawalFactor,
} from "../../server/trade";

describe("shank diameters: printed screw tables", () => {
  it.each([
    [4, 0.112, 2.84],
    [6, 0.138, 3.51],
    [8, 0.164, 4.17],
    [10, 0.19, 4.83],
    [12, 0.216, 5.49],
    [14, 0.242, 6.15],
  ])("#%i is %f in, %f mm", (gauge, inches, mm) => {
    expect(Math.abs(shankDiameter(gauge) - inches)).toBeLessThan(0.0005);
    expect(Number(screwGauge(gauge)?.shank.value)).toBeCloseTo(inches, 9);
    expect(Math.abs(shankDiameter(gauge) * 25.4 - mm)).toBeLessThan(0.006);
  });
});

describe("roots: NDS Appendix L, Table L3", () => {
  it.each([
    [8, "0.131"], // read in a seller's table
    [10, "0.152"], // read in an open-source structural library (xc)
  ])("#%i", (gauge, root) => {
    expect(screwGauge(gauge)?.root.value).toBe(root);
  });
});

describe("lead holes: NDS 12.1.5, as reproduced by civilengineeringx.com", () => {
  it("a #8 needs none for strength at G .42; .092 (3/32) at .55; .118 (7/64 to 1/8) at .67", () => {
    expect(pilotBand(8, 0.42)?.noneForStrength).toBe(true);
    const medium = pilotBand(8, 0.55)!;
    expect(medium.noneForStrength).toBe(false);
    expect(Math.abs(medium.suggested - 0.092)).toBeLessThan(0.0005);
    expect(medium.suggestedText).toBe("3/32");
    const hard = pilotBand(8, 0.67)!;
    expect(Math.abs(hard.suggested - 0.118)).toBeLessThan(0.0005);
    expect(["7/64", "1/8"]).toContain(hard.suggestedText);
  });

  it("lateral load: the shank's hole is 7/8 of it at G .6 and less, all of it above", () => {
    expect(clearanceBand(8, 0.5).least).toBeCloseTo(0.164 * 0.875 - 1 / 64, 9);
    expect(clearanceBand(8, 0.67).least).toBeCloseTo(0.164 - 1 / 64, 9);
  });

  it("softwood rules from 70% (before 1962) to 7/8 lie in one band, and hardwood ones from 90% to the full root", () => {
    const [soft, hard] = [pilotBand(8, 0.42)!, pilotBand(8, 0.7)!];
    expect([soft.least, soft.most].map((hole) => hole * 64)).toEqual([
      expect.closeTo(0.7 * 0.131 * 64 - 1, 6),
      expect.closeTo(0.875 * 0.131 * 64 + 1, 6),
    ]);
    expect([hard.least, hard.most].map((hole) => hole * 64)).toEqual([
      expect.closeTo(0.9 * 0.131 * 64 - 1, 6),
      expect.closeTo(0.131 * 64 + 1, 6),
    ]);
  });
});

describe("bits for lead holes: NDS 12.1.5, as reproduced by civilengineeringx.com", () => {
  const bit = (gravity: number) =>
    pilotHole({ gauge: 8, diameter: shankDiameter(8) * 25.4 }, gravity, "inches");

  it("a #8 at G .42 needs none for strength, and is given 3/32 all the same", () => {
    expect(bit(0.42)).toMatchObject({ noneForStrength: true, bit: { size: "3/32", unit: "in" } });
  });

  it("a #8 takes 3/32 at G .55, and 7/64 or 1/8 at .67", () => {
    expect(bit(0.55)).toMatchObject({ noneForStrength: false, bit: { size: "3/32" } });
    expect(["7/64", "1/8"]).toContain(bit(0.67).bit?.size);
  });
});

describe("flat heads: ASME B18.6.1, largest diameters (from memory)", () => {
  it.each([
    [6, 0.279],
    [8, 0.332],
    [10, 0.385],
  ])("#%i is %f in, about twice its shank", (gauge, inches) => {
    expect(Math.abs(headWidth(shankDiameter(gauge)) - inches)).toBeLessThan(0.01);
  });
});

describe("withdrawal: engineeringtoolbox.com d_1815", () => {
  it("prints 109 lb per inch for a #10 at G .45", () => {
    const perInch = withdrawalFactor.value * 0.45 ** 2 * Number(screwGauge(10)?.shank.value);
    expect(Math.abs(perInch - 109)).toBeLessThan(1);
  });
});
