/** What must hold of soil, of wood's weight and of wind; and sums done by hand. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { atRest, blockedDrain, pressureAt } from "../server/strength/soil";
import { windPressure } from "../server/strength/wind";
import { fillNames, frictionAngle, windFactor } from "../server/trade";
import { real } from "./numbers";

const LB = 4.4482216152605;

describe("soil", () => {
  it("never presses less, the deeper or the heavier it is", () => {
    fc.assert(
      fc.property(
        real(0, 2000),
        real(0, 1000),
        real(200, 2200),
        real(0, 500),
        real(0, 1),
        (z, more, d, heavier, k) => {
          const at = (depth: number, density: number) => blockedDrain(depth, density, k)!.total;
          expect(pressureAt(z + more, d, k)!).toBeGreaterThanOrEqual(pressureAt(z, d, k)!);
          expect(pressureAt(z, d + heavier, k)!).toBeGreaterThanOrEqual(pressureAt(z, d, k)!);
          expect(at(z + more, d)).toBeGreaterThanOrEqual(at(z, d));
          expect(at(z, d + heavier)).toBeGreaterThanOrEqual(at(z, d));
          expect(at(z, d)).toBeGreaterThanOrEqual(pressureAt(z, Math.min(d, 1000), k)!);
        },
      ),
    );
  });

  it("at rest presses sideways the less, the steeper it stands by itself, and never with more than its weight", () => {
    fc.assert(
      fc.property(real(0, 89), real(0, 0.9), (phi, more) => {
        expect(atRest(phi)!).toBeLessThanOrEqual(1);
        expect(atRest(phi + more)!).toBeLessThanOrEqual(atRest(phi)!);
      }),
    );
    expect([atRest(0), atRest(90), atRest(-1)]).toEqual([1, undefined, undefined]);
  });

  it("by hand: 1 - sin 30, 32, 36 and 22 are .5, .470, .412 and .625", () => {
    const shares = [30, 32, 36, 22].map((phi) => atRest(phi)!.toFixed(3));
    expect(shares).toEqual(["0.500", "0.470", "0.412", "0.625"]);
  });

  it("by hand: 18 in at 100 lb/cuft and K .5 press 75 psf at the foot", () => {
    expect((pressureAt(457.2, 1601.846, 0.5)! / LB) * 304.8 ** 2).toBeCloseTo(75, 2);
  });

  it("by hand: 400 mm of soil of 2000 kg/m3 in water: 3.92 kPa of water and half of 3.92 of soil", () => {
    const wet = blockedDrain(400, 2000, 0.5)!;
    expect(wet.water).toBeCloseTo(0.0039227, 7);
    expect(wet.soil).toBeCloseTo(0.0019613, 7);
    expect(wet.total).toBe(wet.water + wet.soil);
    expect(blockedDrain(400, 600, 0.5)!.soil).toBe(0);
  });

  it("has a friction angle for every fill but water", () => {
    expect(frictionAngle("soil")?.value).toBe(30);
    expect(fillNames().filter((name) => frictionAngle(name) === undefined)).toEqual(["water"]);
  });
});

describe("wind", () => {
  it("by hand: 60 mph presses 9.216 psf, and twice the wind four times that", () => {
    const psf = (mph: number): number => (windPressure(mph, windFactor.value)! / LB) * 304.8 ** 2;
    expect(psf(60)).toBeCloseTo(9.216, 9);
    expect(psf(120)).toBeCloseTo(4 * 9.216, 9);
    expect([windPressure(-1, 1), windPressure(60, Number.NaN)]).toEqual([undefined, undefined]);
  });
});
