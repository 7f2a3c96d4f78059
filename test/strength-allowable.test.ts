/** What boards and panels may be stressed to: the trade's values, brought to where they are used. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adjusted } from "../server/strength/allowable";
import { longTermSag } from "../server/strength/creep";
import { rectangle, shearStress } from "../server/strength/section";
import { MM_PER_INCH as INCH, MPA_PER_PSI as PSI } from "../server/strength/units";
import {
  type BendingValues,
  bendingValues,
  cite,
  clearWoodBending,
  designValues,
  flatUseFactor,
  panelValues,
  repetitiveFactor,
  sizeFactor,
  speciesNames,
  wetFactors,
} from "../server/trade";
import { odd, real } from "./numbers";

function values(species: string, thick: number, width: number, flat: boolean): BendingValues {
  const found = bendingValues(species, thick * INCH, width * INCH, flat);
  if (found === undefined) throw new Error(`no values of ${species}`);
  return found;
}

describe("lumber of grade No. 2", () => {
  it("takes Table 4A by its size, and by its width once more where it lies flat", () => {
    const spf = designValues("spruce-pine-fir")!.value;
    const onEdge = values("spruce-pine-fir", 1.5, 7.25, false);
    expect(onEdge).toMatchObject({ grade: "No. 2", kind: "graded", of: "spruce-pine-fir" });
    expect(onEdge.bending).toBeCloseTo(875 * 1.2 * PSI, 9);
    expect(onEdge.elasticity).toBeCloseTo(spf.elasticity * PSI, 6);
    expect(onEdge.shear).toBeCloseTo(135 * PSI, 9);
    expect(onEdge.bearing).toBeCloseTo(425 * PSI, 9);
    const flat = values("spruce-pine-fir", 1.5, 7.25, true);
    expect(flat.bending / onEdge.bending).toBeCloseTo(flatUseFactor(8)!.value, 9);
    expect(cite(flat.from)).toContain("NDS Supplement 2018, Table 4A");
  });

  it("is southern pine by its own widths, and takes no more for lying flat when 4 in thick", () => {
    expect(values("southern-pine", 1.5, 5.5, false).bending).toBeCloseTo(1000 * PSI, 9);
    expect(values("loblolly-pine", 1.5, 3.5, false).bending).toBeCloseTo(1100 * PSI, 9);
    const [flat, edge] = [true, false].map((way) => values("hem-fir", 3.5, 5.5, way).bending);
    expect(flat).toBe(edge);
  });

  it("of a width between two that are listed counts as the wider", () => {
    for (const [mm, nominal] of [
      [89, 4],
      [95, 5],
      [140, 6],
      [145, 8],
      [195, 10],
      [286, 12],
    ] as const)
      expect(bendingValues("hem-fir", 45, mm, false)!.bending, `${mm} mm`).toBeCloseTo(
        850 * sizeFactor(nominal)!.value * PSI,
        9,
      );
  });

  it("keeps its bending when wet where that with its size is at most 1150 psi", () => {
    expect(values("spruce-pine-fir", 1.5, 3.5, false).wet.bending).toBe(wetFactors.bending.value);
    expect(values("spruce-pine-fir", 1.5, 11.25, false).wet.bending).toBe(1);
    expect(values("western-cedars", 1.5, 3.5, true).wet).toEqual({
      bending: 1,
      shear: 0.97,
      bearing: 0.67,
      elasticity: 0.9,
    });
  });

  it("is not known wider than 12 in, thicker than 4, or of a wood that no table has", () => {
    expect(bendingValues("hem-fir", 38.1, 13.25 * INCH, false)).toBeUndefined();
    expect(bendingValues("hem-fir", 5.5 * INCH, 5.5 * INCH, false)).toBeUndefined();
    expect(bendingValues("catalpa", 38.1, 88.9, false)).toBeUndefined();
    expect(bendingValues("plastic", 38.1, 88.9, false)).toBeUndefined();
    for (const wrong of [0, -1, Number.NaN]) {
      expect(bendingValues("hem-fir", wrong, 88.9, false)).toBeUndefined();
      expect(bendingValues("hem-fir", 38.1, wrong, false)).toBeUndefined();
    }
  });

  it("is the same whichever side is named first", () => {
    expect(bendingValues("hem-fir", 88.9, 38.1, true)).toEqual(bendingValues("hem-fir", 38.1, 88.9, true));
  });
});

describe("boards thinner than 1-1/2 in", () => {
  it("are brought down from clear green wood: western redcedar, 5200 psi, to 1026 laid flat (by hand)", () => {
    const byHand = ((5200 * (1 - 1.645 * 0.16)) / 2.1) * 0.45 * 1.25;
    expect(byHand).toBeCloseTo(1026.3, 1);
    const cedar = values("western-redcedar", 0.75, 5.5, true);
    expect(cedar).toMatchObject({ kind: "clear wood", of: "western-redcedar" });
    expect(cedar.bending).toBeCloseTo(byHand * PSI, 6);
    expect(cedar.elasticity).toBeCloseTo(1_110_000 * PSI, 3);
    expect(cedar.shear).toBeCloseTo(155 * PSI, 9);
    expect(cedar.wet.bending).toBeCloseTo(0.8, 9);
    expect(cite(cedar.from)).toContain("clear wood, green");
  });

  it("bear less, the deeper they stand on edge past 2 in", () => {
    expect(clearWoodBending(5000, 20)).toBe(clearWoodBending(5000, 50.8));
    expect(clearWoodBending(5000, 101.6) / clearWoodBending(5000, 50.8)).toBeCloseTo(0.5 ** (1 / 9), 9);
  });

  it("of a group are taken for the weakest and the limpest of its woods", () => {
    const group = values("spruce-pine-fir", 0.75, 3.5, true);
    expect(group.of).toBe("engelmann-spruce");
    for (const wood of ["engelmann-spruce", "white-spruce", "lodgepole-pine", "balsam-fir"]) {
      expect(group.bending).toBeLessThanOrEqual(values(wood, 0.75, 3.5, true).bending);
      expect(group.elasticity).toBeLessThanOrEqual(values(wood, 0.75, 3.5, true).elasticity);
    }
  });

  it("are never taken to be stronger than lumber of their wood, width and lay", () => {
    let known = 0;
    for (const wood of speciesNames())
      for (const width of [2.5, 3.5, 5.5, 7.25, 9.25])
        for (const flat of [true, false]) {
          const [thin, thick] = [0.75, 1.5].map((t) => bendingValues(wood, t * INCH, width * INCH, flat));
          if (thin === undefined || thick === undefined) continue;
          known++;
          expect(thin.bending, `${wood} ${width}`).toBeLessThanOrEqual(thick.bending * (1 + 1e-9));
          expect(thin.bending, `${wood} ${width}`).toBeGreaterThan(thick.bending / 2);
        }
    expect(known).toBeGreaterThan(300);
  });
});

describe("plywood", () => {
  it("23/32 is rated 48/24: 845 lbf in and 440,000 lbf in2 to the foot along the grain, less across", () => {
    const { value, source } = panelValues("23/32")!;
    const perFoot = 4.4482216152605 / 304.8;
    expect(value.rating).toBe("48/24");
    expect(value.along.strength).toBeCloseTo(845 * INCH * perFoot, 6);
    expect(value.along.stiffness).toBeCloseTo(440_000 * INCH ** 2 * perFoot, 3);
    expect(value.across.strength).toBeLessThan(value.along.strength / 3);
    expect(value.across.stiffness).toBeLessThan(value.along.stiffness / 10);
    expect(cite(source)).toContain("from memory");
  });

  it("is found by what a plain name is sold as, bears more when thicker, and is not known of others", () => {
    expect(panelValues("3/4")?.value.rating).toBe("48/24");
    const grows = ["3/8", "7/16", "15/32", "19/32", "23/32"].map((name) => panelValues(name)!.value.along);
    for (const key of ["strength", "stiffness"] as const) {
      const sizes = grows.map((one) => one[key]);
      expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
    }
    expect(panelValues("1/4")).toBeUndefined();
    expect(panelValues("2/3")).toBeUndefined();
  });
});

describe("in use", () => {
  const dry = values("douglas-fir-larch", 1.5, 7.25, false);

  it("duration counts for bending and shear alone, three or more for bending, wet for all", () => {
    const soil = adjusted(dry, { duration: 0.9, repetitive: repetitiveFactor.value, wet: dry.wet })!;
    expect(soil.bending).toBeCloseTo(dry.bending * 0.9 * 1.15, 9);
    expect(soil.shear).toBeCloseTo(dry.shear * 0.9 * 0.97, 9);
    expect(soil.bearing).toBeCloseTo(dry.bearing * 0.67, 9);
    expect(soil.elasticity).toBeCloseTo(dry.elasticity * 0.9, 6);
  });

  it("is never a number that is none", () => {
    fc.assert(
      fc.property(odd, odd, odd, (bending, duration, repetitive) => {
        const found = adjusted({ ...dry, bending }, { duration, repetitive });
        for (const one of Object.values(found ?? {})) expect(one > 0 && Number.isFinite(one)).toBe(true);
      }),
    );
  });

  it("sags in the long run by what stays, times the factor, and by what comes and goes", () => {
    expect(longTermSag(4, 3, 2)).toBe(11);
    expect(longTermSag(4, 3, 0.5)).toBeUndefined();
    expect(longTermSag(Number.NaN, 3, 2)).toBeUndefined();
  });
});

describe("sections", () => {
  it("bend about the side that is their depth", () => {
    fc.assert(
      fc.property(real(1, 500), real(1, 500), (width, thick) => {
        const { area, inertia, modulus } = rectangle(width, thick)!;
        expect(area).toBe(width * thick);
        expect(inertia / ((modulus * thick) / 2)).toBeCloseTo(1, 9);
        expect(shearStress(area, { area, inertia, modulus })).toBeCloseTo(1.5, 9);
      }),
    );
    expect(rectangle(0, 20)).toBeUndefined();
    expect(rectangle(20, -1)).toBeUndefined();
    expect(rectangle(Number.NaN, 20)).toBeUndefined();
    expect(rectangle(1e200, 1e200)).toBeUndefined();
  });
});
