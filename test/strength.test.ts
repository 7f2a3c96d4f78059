/** What must hold of any box's volume, of the weights in it and of the pressure under it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BoxInside, boxVolume, fillWeight, outlinePressure } from "../server/strength/box";
import { woodWeight } from "../server/strength/weight";
import { odd, real } from "./numbers";

const tapered = fc.record({
  length: real(50, 3000),
  width: real(50, 3000),
  height: real(20, 1500),
  bottomLength: real(0, 3000),
  bottomWidth: real(0, 3000),
});

function volume(box: BoxInside): number {
  const v = boxVolume(box);
  if (v.kind !== "volume") throw new Error(v.reason);
  return v.mm3;
}

describe("a box's volume", () => {
  it("is the sum of thin slices, at any fill (midpoint rule)", () => {
    fc.assert(
      fc.property(tapered, real(0.05, 1), (box, share) => {
        const depth = box.height * share;
        const slices = 2000;
        let sum = 0;
        for (let i = 0; i < slices; i++) {
          const up = ((i + 0.5) / slices) * share;
          const l = box.bottomLength * (1 - up) + box.length * up;
          const w = box.bottomWidth * (1 - up) + box.width * up;
          sum += (l * w * depth) / slices;
        }
        expect(volume({ ...box, fill: { height: depth } }) / sum).toBeCloseTo(1, 5);
      }),
      { numRuns: 50 },
    );
  });

  it("is the same told from the bottom or from the rim, and full when unsaid", () => {
    fc.assert(
      fc.property(tapered, real(0, 1), (box, share) => {
        const height = box.height * share;
        const fromRim = volume({ ...box, fill: { belowRim: box.height - height } });
        expect(fromRim).toBeCloseTo(volume({ ...box, fill: { height } }), 0);
        expect(volume({ ...box, fill: { belowRim: 0 } })).toBe(volume(box));
      }),
    );
  });

  it("straight is length x width x height", () => {
    expect(boxVolume({ length: 1000, width: 500, height: 400 })).toEqual({
      kind: "volume",
      mm3: 2e8,
      m3: 0.2,
      depth: 400,
    });
  });

  it.each([
    ["number", { length: Number.NaN }],
    ["number", { fill: { belowRim: Number.NaN } }],
    ["size", { width: 0 }],
    ["size", { height: -1 }],
    ["bottom", { bottomWidth: -1 }],
    ["fill", { fill: { height: 401 } }],
    ["fill", { fill: { belowRim: 401 } }],
    ["fill", { fill: { belowRim: -1 } }],
  ] as const)("refuses a wrong %s: %o", (reason, wrong) => {
    const box = { length: 1000, width: 500, height: 400, ...wrong };
    expect(boxVolume(box)).toEqual({ kind: "impossible", reason });
  });

  it("never throws, and never gives a number that is none", () => {
    fc.assert(
      fc.property(odd, odd, odd, odd, odd, (length, width, height, bottomLength, at) => {
        const v = boxVolume({ length, width, height, bottomLength, fill: { height: at } });
        if (v.kind !== "volume") return;
        expect(v.mm3).toBeGreaterThanOrEqual(0);
        expect(v.mm3).toBeLessThan(Number.POSITIVE_INFINITY);
      }),
    );
  });
});

describe("weights", () => {
  it("wood: a cubic metre weighs its density; an 8-ft 2x4 of 448 kg/m3 weighs 3.70 kg (computed)", () => {
    expect(woodWeight(1e9, 448)).toBe(448);
    expect(woodWeight(38.1 * 88.9 * 2438.4, 448)).toBeCloseTo(3.7, 2);
  });

  it("are undefined, never wrong, for what is no volume or no density", () => {
    for (const wrong of [Number.NaN, -1, Number.POSITIVE_INFINITY]) {
      expect(woodWeight(wrong, 448)).toBeUndefined();
      expect(woodWeight(1e9, wrong)).toBeUndefined();
      expect(fillWeight(wrong, 1600)).toBeUndefined();
      expect(fillWeight(1, wrong)).toBeUndefined();
    }
    expect(woodWeight(1e9, 0)).toBeUndefined();
    expect(fillWeight(0.2, 1600)).toBeCloseTo(320, 9);
  });

  it("press the less, the wider they stand", () => {
    fc.assert(
      fc.property(real(1, 2000), real(100, 2000), real(100, 2000), (kg, l, w) => {
        const [small, twice] = [outlinePressure(kg, l, w)!, outlinePressure(kg, 2 * l, w)!];
        expect(small.psf / twice.psf).toBeCloseTo(2, 9);
        expect(small.kgfPerM2 * 9.80665).toBeCloseTo(small.pascals, 6);
      }),
    );
    expect(outlinePressure(100, 0, 500)).toBeUndefined();
    expect(outlinePressure(-1, 500, 500)).toBeUndefined();
    expect(outlinePressure(Number.NaN, 500, 500)).toBeUndefined();
    expect(outlinePressure(100, -500, -500)).toBeUndefined();
  });
});
