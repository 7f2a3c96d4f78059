/** What must hold of soil, of moving wood, of weights, of what tips and of wind; and sums done by hand. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { centreOfGravity, densityOvenDry, gravityAtMoisture } from "../server/strength/gravity";
import { byCoefficient, change, equilibriumMoisture, shrinkage } from "../server/strength/movement";
import { active, atRest, blockedDrain, overconsolidated, pressureAt, thrust } from "../server/strength/soil";
import { forceToTip, heightToBase, tipMargin, windForce, windPressure } from "../server/strength/tipping";
import {
  frictionAngle,
  moistureRanges,
  movementOf,
  shrinksBelow,
  species,
  woodDensity,
} from "../server/trade";
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

  it("at rest presses more than where the wall gives way", () => {
    fc.assert(
      fc.property(real(0, 60), (phi) => {
        expect(atRest(phi)!).toBeGreaterThanOrEqual(active(phi)! - 1e-12);
      }),
    );
    expect([atRest(0), active(0)]).toEqual([1, expect.closeTo(1, 12)]);
    expect([atRest(90), active(-1), overconsolidated(30, 0.5)]).toEqual([undefined, undefined, undefined]);
  });

  it("by hand: 18 in at 100 lb/cuft and K .5 press 75 psf at the foot, 56.25 lb on a foot of wall, 6 in up", () => {
    const foot = pressureAt(457.2, 1601.846, 0.5)!;
    const all = thrust(457.2, 1601.846, 0.5)!;
    expect((foot / LB) * 304.8 ** 2).toBeCloseTo(75, 2);
    expect((all.newtonsPerMm * 304.8) / LB).toBeCloseTo(56.25, 2);
    expect(all.heightMm).toBeCloseTo(152.4, 9);
  });

  it("by hand: a load on the surface alone acts halfway up, and nothing at all a third up", () => {
    expect(thrust(600, 0, 0.5, 0.002)).toEqual({ newtonsPerMm: 0.6, heightMm: 300 });
    expect(thrust(600, 0, 0.5)).toEqual({ newtonsPerMm: 0, heightMm: 200 });
  });

  it("by hand: 400 mm of soil of 2000 kg/m3 in water: 3.92 kPa of water and half of 3.92 of soil", () => {
    const wet = blockedDrain(400, 2000, 0.5)!;
    expect(wet.water).toBeCloseTo(0.0039227, 7);
    expect(wet.soil).toBeCloseTo(0.0019613, 7);
    expect(wet.total).toBe(wet.water + wet.soil);
    expect(blockedDrain(400, 600, 0.5)!.soil).toBe(0);
  });

  it("has a friction angle for every fill that stands by itself", () => {
    expect(frictionAngle("soil")?.value).toBe(30);
    expect(frictionAngle("water")).toBeUndefined();
  });
});

describe("wood that moves", () => {
  const moisture = real(0, 40);
  it("swells when it gets wetter, comes back to its size, and does nothing over its saturation", () => {
    fc.assert(
      fc.property(moisture, moisture, real(0, 15), real(15, 30), (from, to, total, saturation) => {
        const moved = change(200, from, to, total, saturation)!;
        expect(Math.sign(moved) * Math.sign(to - from)).toBeGreaterThanOrEqual(0);
        expect(200 + moved + change(200 + moved, to, from, total, saturation)!).toBeCloseTo(200, 6);
        if (Math.min(from, to) >= saturation) expect(moved).toBeCloseTo(0, 12);
      }),
    );
  });

  it("by hand: a green board of 140 mm that shrinks 5.0% in all is 2.0% less at 18%, or 137.2 mm", () => {
    expect(shrinkage(5, 18)).toBeCloseTo(2, 12);
    expect(change(140, 35, 18, 5)).toBeCloseTo(-2.8, 9);
    expect(change(137.2, 18, 35, 5)).toBeCloseTo(2.8, 9);
  });

  it("by hand: western redcedar, which shrinks from 22%, 140 mm from 20 to 8%: 140 x 2.727 / 99.545", () => {
    const below = shrinksBelow("western-redcedar").value;
    expect(below).toBe(22);
    expect(change(140, 20, 8, 5, below)).toBeCloseTo((-140 * ((5 * 12) / 22)) / (100 - (5 * 2) / 22), 9);
    expect(shrinksBelow("douglas-fir").value).toBe(30);
  });

  it("by coefficient agrees with the shrinkage form within 6% about 10% moisture, where a wood is in both tables", () => {
    for (const wood of ["douglas-fir", "western-redcedar", "eastern-white-pine", "white-fir", "white-oak"]) {
      const { tangential } = movementOf(wood)!.value;
      const moved = byCoefficient(100, tangential, 8, 12)!;
      const total = species(wood)!.shrinkage!.value.tangential;
      const form = change(100, 8, 12, total, shrinksBelow(wood).value)!;
      expect(moved).toMatchObject({ kind: "change" });
      expect(Math.abs(form / (moved.kind === "change" ? moved.mm : 0) - 1), wood).toBeLessThan(0.06);
    }
  });

  it("by coefficient holds from 6 to 14 percent only", () => {
    expect(byCoefficient(100, 0.0025, 6, 14)).toEqual({ kind: "change", mm: expect.closeTo(2, 9) });
    expect(byCoefficient(100, 0.0025, 5.9, 14)).toEqual({ kind: "outside" });
    expect(byCoefficient(100, 0.0025, 14.1, 6)).toEqual({ kind: "outside" });
    expect(byCoefficient(-1, 0.0025, 6, 14)).toBeUndefined();
  });

  it("is the wetter, the damper the air", () => {
    fc.assert(
      fc.property(real(0, 99), real(0, 1), real(0, 60), (humidity, damper, celsius) => {
        const dry = equilibriumMoisture(humidity, celsius)!;
        expect(dry).toBeGreaterThanOrEqual(0);
        expect(equilibriumMoisture(humidity + damper, celsius)!).toBeGreaterThanOrEqual(dry);
      }),
    );
    expect([equilibriumMoisture(101, 20), equilibriumMoisture(50, -20)]).toEqual([undefined, undefined]);
  });

  it("goes further the more open it stands", () => {
    const width = ({ value }: { value: { low: number; high: number } }) => value.high - value.low;
    const { indoors, sheltered, exposed, soil } = moistureRanges;
    expect([indoors, sheltered, exposed, soil].map(width)).toEqual([4, 5, 12, 18]);
  });
});

describe("weight", () => {
  it("is that of the trade's form below 30%, and what water adds above", () => {
    for (const m of [0, 12, 19, 30])
      expect(densityOvenDry(0.42, m)! / 16.018463).toBeCloseTo(woodDensity(0.42, m), 5);
    expect(densityOvenDry(0.42, 60)! / densityOvenDry(0.42, 30)!).toBeCloseTo(1.6 / 1.3, 9);
    expect(gravityAtMoisture(0.45, 30)).toBe(0.45);
    expect(gravityAtMoisture(0.45, 80)).toBe(0.45);
  });

  it("acts where it balances", () => {
    const two = centreOfGravity([
      { weight: 3, x: 0, y: 0, z: 0 },
      { weight: 1, x: 400, y: 0, z: 200 },
    ]);
    expect(two).toEqual({ weight: 4, x: 100, y: 0, z: 50 });
    expect(centreOfGravity([])).toBeUndefined();
    expect(centreOfGravity([{ weight: 0, x: 1, y: 1, z: 1 }])).toBeUndefined();
  });
});

describe("what tips", () => {
  it("by hand: 200 N standing 150 mm inside the edge, pushed by 30 N at 800 mm: 30 000 to 24 000", () => {
    const margin = tipMargin([{ newtons: 200, armMm: 150 }], [{ newtons: 30, heightMm: 800 }]);
    expect(margin).toEqual({ kind: "margin", ratio: 1.25, restoring: 30_000, overturning: 24_000 });
    expect(forceToTip(200, 150, 800)).toBe(37.5);
  });

  it("by hand: a seat's 1300 N 100 mm beyond the edge tips what weighs 200 N 150 mm inside it", () => {
    const loads = [
      { newtons: 200, armMm: 150 },
      { newtons: 1300, armMm: -100 },
    ];
    expect(tipMargin(loads, [])).toMatchObject({ kind: "margin", ratio: expect.closeTo(30 / 130, 9) });
    expect(tipMargin([{ newtons: 200, armMm: 150 }], [])).toEqual({ kind: "steady", restoring: 30_000 });
    expect(forceToTip(200, -1, 800)).toBe(0);
  });

  it("a push of the force to tip makes a margin of 1", () => {
    fc.assert(
      fc.property(real(1, 5000), real(1, 1000), real(10, 3000), (weight, arm, height) => {
        const push = forceToTip(weight, arm, height)!;
        const margin = tipMargin([{ newtons: weight, armMm: arm }], [{ newtons: push, heightMm: height }]);
        expect(margin).toMatchObject({ kind: "margin", ratio: expect.closeTo(1, 9) });
      }),
    );
  });

  it("by hand: 60 mph presses 9.216 psf, 143.8 lb on a panel of 4 x 6 ft with drag 1.3, half of it open", () => {
    const q = windPressure({ mph: 60 })!;
    expect((q / LB) * 304.8 ** 2).toBeCloseTo(9.216, 9);
    expect(windForce(q, 24 * 304.8 ** 2, 1.3, 0.5)! / LB).toBeCloseTo(143.77, 2);
    expect(windPressure({ metresPerSecond: 26.8224 })).toBeCloseTo(q, 12);
    expect(windForce(q, 1, 1.3, 1.1)).toBeUndefined();
    expect(heightToBase(1200, 300)).toBe(4);
  });
});
