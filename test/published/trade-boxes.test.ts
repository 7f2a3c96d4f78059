// Fills, finishes and liners against values printed outside the project.
import { describe, expect, it } from "vitest";
import { fill, finish, liner, sapwoodDecay, species } from "../../server/trade";

const M2_PER_L_IN_SQFT_PER_GAL = 0.0245424;

describe("fills", () => {
  it("soaked soil is 125 lb/cuft and moist 100 (engineer's advice, seaintarchive 2003c msg00515)", () => {
    expect(fill("soil")?.saturated.value).toBe(125);
    expect(fill("topsoil")?.saturated.value).toBe(125);
    expect(fill("topsoil")?.moist?.value).toBe(100);
  });

  it("loose earth is 75 lb/cuft, 1200 kg/m3 (engineeringtoolbox.com d_1349)", () => {
    expect(fill("soil")!.dry.value * 16.0185).toBeCloseTo(1200, -1);
  });

  it("saturated potting mix outweighs measured peat and bark at container capacity: 61 and 41 lb/cuft", () => {
    const water = fill("water")!.saturated.value;
    const peat = (0.11 + 0.87) * water; // bulk density g/cc and water by volume (Int. J. Agronomy 2012, 978528, table 1)
    const bark = (0.18 + 0.48) * water; // the same table
    expect(peat).toBeCloseTo(61, 0);
    expect(bark).toBeCloseTo(41, 0);
    expect(fill("potting-mix")!.saturated.value).toBeGreaterThanOrEqual(peat);
    expect(fill("potting-mix")!.saturated.value).toBe(75); // the heavy end of retail mixes, 60 to 75
  });

  it("sand and gravel 115, clay 100 lb/cuft (HUD Residential Structural Design Guide, Table 3.5)", () => {
    expect(fill("sand")?.moist?.value).toBe(115);
    expect(fill("gravel")?.moist?.value).toBe(115);
    expect(fill("clay")?.moist?.value).toBe(100);
  });
});

describe("finishes: Wood Handbook chapter 16, semitransparent penetrating stain", () => {
  const stain = finish("penetrating-stain")!;

  it("covers 4.9 to 9.8 m2/L smooth, 2.4 to 4.9 rough", () => {
    const metric = [
      stain.smooth.value.low,
      stain.smooth.value.high,
      stain.rough!.value.low,
      stain.rough!.value.high,
    ];
    const printed = [4.9, 9.8, 2.4, 4.9];
    for (const [at, area] of metric.entries())
      expect(Math.abs(area * M2_PER_L_IN_SQFT_PER_GAL - printed[at]!)).toBeLessThan(0.06);
  });

  it("300 sqft of rough wood twice over takes 3 to 6 gal", () => {
    expect([600 / stain.rough!.value.high, 600 / stain.rough!.value.low]).toEqual([3, 6]);
  });
});

describe("liners: a pond-keeping magazine's worked size", () => {
  it("a pond 10 by 8 ft, 6 ft deep, wants 23 by 21 ft", () => {
    const overlapFeet = Number(liner("pond-liner")!.overlap.value) / 12;
    expect([10, 8].map((side) => side + 2 * 6 + 2 * overlapFeet)).toEqual([23, 21]);
  });
});

describe("decay: naval facilities manual MO-312, Table 2-1", () => {
  it.each([
    ["black-locust", "exceptional"],
    ["western-redcedar", "resistant"],
    ["white-oak", "resistant"],
    ["douglas-fir", "moderate"],
    ["eastern-white-pine", "moderate"],
    ["red-oak", "slight"],
    ["ponderosa-pine", "slight"],
  ])("heartwood of %s: %s", (name, decay) => {
    expect(species(name)?.decay?.value).toBe(decay);
  });

  it("sapwood of every species resists no better than slightly", () => {
    expect(sapwoodDecay.value).toBe("slight");
  });
});
