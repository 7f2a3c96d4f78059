// Weight, movement and stiffness of wood against values printed outside the project.
import { describe, expect, it } from "vitest";
import {
  assumedSpecies,
  ovenDryGravity,
  sawnShrinkage,
  sizeFactor,
  southernPineBending,
  species,
  weightOf,
  woodDensity,
} from "../../server/trade";

const KG_PER_M3 = 16.0185;
const PSI_PER_MPA = 145.038;

describe("weight", () => {
  it("G .40 at 12% is 27.97 lb/cuft, 448 kg/m3 (worked example, oakmissouri.org, citing FPL-GTR-190 chapter 4)", () => {
    const density = woodDensity(ovenDryGravity(0.4, 12), 12);
    expect(Math.abs(density - 27.97)).toBeLessThan(0.05);
    expect(Math.abs(density * KG_PER_M3 - 448)).toBeLessThan(0.5);
  });

  it.each([
    ["spruce-pine-fir", 28.1],
    ["douglas-fir-larch", 33.2],
    ["southern-pine", 36.3],
    ["hem-fir", 28.7],
    ["western-cedars", 24.2],
    ["northern-white-cedar", 21.0],
  ])("%s at 12% by the NDS form (engineeringtoolbox.com d_1616)", (name, density) => {
    expect(Math.abs(woodDensity(species(name)!.gravity!.value, 12) - density)).toBeLessThan(0.1);
  });

  it("boards of no named species are spruce-pine-fir by NDS 2018 Table 12.3.3A", () => {
    const { name, gravity } = assumedSpecies.value;
    expect(species(name)?.gravity?.value).toBe(gravity);
    expect(weightOf(species(name)!, 19)!.density - weightOf(species(name)!, 12)!.density).toBeCloseTo(1, 0);
  });
});

describe("NDS 2018 Table 12.3.3A, as reproduced by an open-source structural library (xc)", () => {
  it.each([
    ["spruce-pine-fir", 0.42],
    ["douglas-fir", 0.5],
    ["hem-fir", 0.43],
    ["southern-pine", 0.55],
    ["western-redcedar", 0.36],
    ["redwood", 0.37],
    ["eastern-white-pine", 0.36],
    ["white-oak", 0.73],
    ["red-oak", 0.67],
  ])("%s is %f", (name, gravity) => {
    expect(species(name)?.gravity?.value).toBe(gravity);
  });

  it("agrees with the Wood Handbook's gravity at 12% within a tenth, where a wood is in both on its own account", () => {
    for (const name of ["douglas-fir", "northern-white-cedar", "eastern-white-pine", "white-oak"]) {
      const { gravity, gravityAt12 } = species(name)!;
      expect(Math.abs(ovenDryGravity(gravityAt12!.value, 12) / gravity!.value - 1), name).toBeLessThan(0.1);
    }
  });
});

describe("Wood Handbook", () => {
  it("Table 4-3: volume shrinks about as much as both faces together", () => {
    for (const name of [
      "western-redcedar",
      "douglas-fir",
      "white-oak",
      "northern-white-cedar",
      "grand-fir",
    ]) {
      const { radial, tangential, volumetric } = species(name)!.shrinkage!.value;
      expect(Math.abs(radial + tangential - volumetric), name).toBeLessThan(1);
    }
  });

  it.each([
    ["douglas-fir", 12_400, 1.95], // owic.oregonstate.edu
    ["western-larch", 13_000, 1.87], // owic.oregonstate.edu
    ["northern-white-cedar", 6_500, 0.8], // engdatabase.com, 45 MPa and 5.5 GPa
    ["redwood-old-growth", 10_000, 1.34], // Wood Handbook page 107, 69 MPa and 9.2 GPa
    ["redwood-young-growth", 7_900, 1.1], // Wood Handbook page 107, 54 MPa and 7.6 GPa
  ])("Table 5-3: %s", (name, rupture, million) => {
    const known = species(name)!.stiffness!.value;
    expect(Math.abs(known.rupture / rupture - 1)).toBeLessThan(0.01);
    expect(Math.abs(known.elasticity / 1e6 / million - 1)).toBeLessThan(0.01);
  });

  it("FPL-RP-489 at 15% agrees with PS 20-70: 2.80% in width and 2.35% in thickness", () => {
    expect(sawnShrinkage("width", 15)).toBeCloseTo(2.8, 1);
    expect(sawnShrinkage("thickness", 15)).toBeCloseTo(2.35, 2);
  });
});

describe("graded lumber", () => {
  it("southern pine No. 2 in psi is what was read in MPa (open-source structural library, xc)", () => {
    for (const [width, mpa] of [
      [4, 7.6],
      [6, 6.9],
      [8, 6.4],
      [10, 5.5],
      [12, 5.2],
    ] as const)
      expect(Math.abs(southernPineBending(width)!.value / PSI_PER_MPA - mpa), `2x${width}`).toBeLessThan(
        0.06,
      );
  });

  it("a hem-fir No. 1 2x8 in repetitive use has 1345 psi (HUD Residential Structural Design Guide, Example 5.1)", () => {
    expect(Math.abs(975 * 1.15 * sizeFactor(8)!.value - 1345)).toBeLessThan(1);
  });
});
