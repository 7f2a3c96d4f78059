/** Volumes, weights and pressures of boxes against exact geometry, with units converted by another library. */
import { unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { boxVolume, fillWeight, outlinePressure, pascalsFromPsf } from "../../server/strength/box";

const INCH = 25.4;
const mm = (inches: number): number => inches * INCH;
const box = { length: mm(48), width: mm(24), height: mm(18) };

function cubicMetres(inside: Parameters<typeof boxVolume>[0]): number {
  const v = boxVolume(inside);
  if (v.kind !== "volume") throw new Error(`no volume: ${v.reason}`);
  return v.m3;
}

describe("48 x 24 x 18 in inside (exact geometry)", () => {
  it.each([
    ["cuft", 12.0, 2],
    ["gallon", 89.77, 2],
    ["litre", 339.8, 1],
    ["cuyd", 0.444, 3],
  ])("is that many %s: %d", (name, expected, places) => {
    const perUnit = name === "cuyd" ? unit(1, "yard").toNumber("m") ** 3 : unit(1, name).toNumber("m^3");
    expect(cubicMetres(box) / perUnit).toBeCloseTo(expected, places);
  });

  it("at 100 lb/cuft on its own 8 sqft: 1200 lb, 150 psf, 7.18 kPa, over 40, 60 and 100", () => {
    const density = unit(100, "lbm").toNumber("kg") / unit(1, "cuft").toNumber("m^3");
    const kg = fillWeight(cubicMetres(box), density)!;
    expect(unit(kg, "kg").toNumber("lbm")).toBeCloseTo(1200, 6);
    const pressure = outlinePressure(kg, box.length, box.width)!;
    expect(pressure.psf).toBeCloseTo(150, 6);
    expect(pressure.pascals / 1000).toBeCloseTo(7.18, 2);
    expect(pressure.kgfPerM2 * unit(1, "kgf").toNumber("N")).toBeCloseTo(pressure.pascals, 6);
    for (const limit of [40, 60, 100]) expect(pressure.pascals).toBeGreaterThan(pascalsFromPsf(limit));
  });
});

describe("pounds per square foot in kilopascals", () => {
  it.each([
    // Computed from the definitions of the pound, the foot and standard gravity.
    [40, 1.915],
    [60, 2.873],
    [100, 4.788],
  ])("%d psf is %d kPa", (psf, kPa) => {
    expect(pascalsFromPsf(psf) / 1000).toBeCloseTo(kPa, 3);
    expect(pascalsFromPsf(psf)).toBeCloseTo(
      unit(psf, "lbf").toNumber("N") / unit(1, "sqft").toNumber("m^2"),
      6,
    );
  });
});

describe("tapered boxes (the prismatoid, h/6 (A1 + 4 Am + A2), from memory; exact geometry)", () => {
  it("a pyramid standing on its point holds a third of its block", () => {
    const v = cubicMetres({ ...box, bottomLength: 0, bottomWidth: 0 });
    expect(v).toBeCloseTo(cubicMetres(box) / 3, 12);
  });

  it("a wedge holds half of its block", () => {
    expect(cubicMetres({ ...box, bottomWidth: 0 })).toBeCloseTo(cubicMetres(box) / 2, 12);
  });

  it("a frustum of similar ends: h/3 (A1 + sqrt(A1 A2) + A2)", () => {
    const v = cubicMetres({ length: 600, width: 300, height: 400, bottomLength: 400, bottomWidth: 200 });
    const [a1, a2] = [600 * 300, 400 * 200];
    expect(v * 1e9).toBeCloseTo((400 / 3) * (a1 + Math.sqrt(a1 * a2) + a2), 3);
  });

  it("to 1 in below the rim, 48 x 24 x 18 holds 17 of its 18 inches", () => {
    expect(cubicMetres({ ...box, fill: { belowRim: mm(1) } })).toBeCloseTo((cubicMetres(box) * 17) / 18, 12);
  });
});
