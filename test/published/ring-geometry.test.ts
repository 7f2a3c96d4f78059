/** Flat rings against exact geometry: what must hold of any polygon of mitred parts, and of its cures. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closeRing, type Ring, type RingSide, roundingExplains } from "../../server/solid/ring";
import { applyCure, curesFor, unequalMiter } from "../../server/solid/ring-cures";
import { odd, rad, real } from "../numbers";

const TIGHT = { length: 1e-6, degrees: 1e-6 };
function ring(sides: readonly RingSide[], tolerance = TIGHT): Ring {
  const result = closeRing(sides, tolerance);
  if (result.kind !== "ring") throw new Error(`${result.reason} at side ${result.side}`);
  return result;
}
const regular = (n: number, outsideLength: number, width: number): readonly RingSide[] =>
  Array.from({ length: n }, (_, i) => ({
    id: `side ${i + 1}`,
    outsideLength,
    width,
    startAngle: 180 / n,
    endAngle: 180 / n,
  }));

/** A convex polygon of corners on a circle, its turns halved into end angles, in narrow boards. */
const convex = fc
  .array(real(5, 100), { minLength: 3, maxLength: 12 })
  .filter((arcs) => Math.max(...arcs) < 0.45 * arcs.reduce((s, a) => s + a, 0))
  .map((arcs): readonly RingSide[] => {
    const whole = arcs.reduce((s, a) => s + a, 0);
    const share = (i: number): number => (arcs[(i + arcs.length) % arcs.length]! / whole) * 180;
    const chord = (i: number): number => 1000 * Math.sin(rad(share(i)));
    const least = Math.min(...arcs.map((_, i) => chord(i)));
    return arcs.map((_, i) => ({
      id: `side ${i + 1}`,
      outsideLength: chord(i),
      width: least / 20,
      startAngle: (share(i - 1) + share(i)) / 2,
      endAngle: (share(i) + share(i + 1)) / 2,
    }));
  });

describe("a ring of mitred parts", () => {
  it("closes when regular, for any number of sides and any length", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 60 }), real(50, 3000), (n, length) => {
        const r = ring(regular(n, length, length / 10));
        expect(r.closes).toBe(true);
        expect(curesFor(r)).toEqual([]);
        for (const c of r.corners) expect(c.turn).toBeCloseTo(360 / n, 9);
      }),
    );
  });

  it("closes as any convex polygon, however its turns are split between the boards that meet", () => {
    fc.assert(
      fc.property(convex, fc.array(real(-0.4, 0.4), { minLength: 12, maxLength: 12 }), (sides, splits) => {
        expect(ring(sides).closes).toBe(true);
        const moved = sides.map((s, i) => {
          const before = (i + sides.length - 1) % sides.length;
          return {
            ...s,
            width: s.width / 5,
            endAngle: s.endAngle * (1 + splits[i]!),
            startAngle: s.startAngle - splits[before]! * sides[before]!.endAngle,
          };
        });
        fc.pre(moved.every((s) => Math.abs(s.startAngle) < 85 && Math.abs(s.endAngle) < 85));
        expect(ring(moved).closes).toBe(true);
      }),
    );
  });

  it("opens by just what one side is out, and is cured by making that side right", () => {
    fc.assert(
      fc.property(convex, fc.nat(), real(0.05, 0.5), fc.boolean(), (sides, pick, out, longer) => {
        const at = pick % sides.length;
        const error = longer ? out : -out;
        const wrong = sides.map((s, i) => (i === at ? { ...s, outsideLength: s.outsideLength + error } : s));
        const r = ring(wrong, { length: 1e-4, degrees: 1e-4 });
        expect(r.opening).toBeCloseTo(out, 6);
        expect(r.misfitDegrees).toBeCloseTo(0, 9);
        expect(r.closes).toBe(false);
        const cure = curesFor(r).find((c) => c.kind === "side-length" && c.side === at);
        expect(cure).toMatchObject({ to: expect.closeTo(sides[at]!.outsideLength, 6) });
      }),
    );
  });

  it("opens by the swing of the rest when one turn is out: 2 arm sin(error / 2)", () => {
    fc.assert(
      fc.property(convex, fc.nat(), real(-5, 5), (sides, pick, error) => {
        const at = pick % (sides.length - 1);
        const wrong = sides.map((s, i) => (i === at ? { ...s, endAngle: s.endAngle + error } : s));
        const r = ring(wrong);
        const [x, y] = r.points[at + 1]!;
        expect(r.misfitDegrees).toBeCloseTo(error, 6);
        expect(r.opening).toBeCloseTo(2 * Math.hypot(x, y) * Math.sin(Math.abs(rad(error)) / 2), 6);
      }),
    );
  });

  it("is not opened by more than rounding explains, when only rounding is at work", () => {
    const step = { length: 1.5875, degrees: 0.5 };
    const to = (value: number, by: number): number => Math.round(value / by) * by;
    fc.assert(
      fc.property(convex, (sides) => {
        const r = ring(
          sides.map((s) => ({
            ...s,
            outsideLength: to(s.outsideLength, step.length) || step.length,
            startAngle: to(s.startAngle, step.degrees),
            endAngle: to(s.endAngle, step.degrees),
          })),
        );
        const most = roundingExplains(r, step);
        expect(Math.abs(r.misfitDegrees)).toBeLessThanOrEqual(most.degrees + 1e-9);
        // To first order: the square of the swing is left out.
        expect(r.opening).toBeLessThanOrEqual(most.length * (1 + rad(most.degrees)) + 1e-9);
      }),
    );
  });

  it("applies what it offers: every cure leaves a ring that closes and asks for nothing more", () => {
    fc.assert(
      fc.property(convex, fc.nat(), real(1, 20), real(-3, 3), (sides, pick, out, turned) => {
        const at = pick % sides.length;
        for (const wrong of [
          sides.map((s, i) => (i === at ? { ...s, outsideLength: s.outsideLength + out } : s)),
          regular(sides.length, 300, 40).map((s) => ({ ...s, startAngle: s.startAngle + turned })),
        ]) {
          const r = ring(wrong, { length: 0.1, degrees: 0.01 });
          expect(curesFor(r).length > 0).toBe(!r.closes);
          for (const cure of curesFor(r)) {
            const after = ring(applyCure(r.sides, cure), r.tolerance);
            expect(after.closes).toBe(true);
            expect(curesFor(after)).toEqual([]);
          }
        }
      }),
    );
  });

  it("offers nothing where two things are wrong at once", () => {
    const both = regular(6, 300, 90).map((s, i) => ({
      ...s,
      endAngle: 29,
      outsideLength: i === 2 ? 320 : 300,
    }));
    expect(curesFor(ring(both))).toEqual([]);
  });

  it("does not cure a misfit of boards of unequal width by ends that then differ in length", () => {
    const sides = [89, 140, 89, 140].map((width, i) => {
      const wide = width === 140;
      const [narrowEnd, wideEnd] = [unequalMiter(89, 140, 90)!.endAngle, unequalMiter(140, 89, 90)!.endAngle];
      const angle = wide ? wideEnd : narrowEnd;
      return {
        id: `rail ${i + 1}`,
        outsideLength: wide ? 500 : 1200,
        width,
        startAngle: angle,
        endAngle: angle,
      };
    });
    expect(ring(sides).closes).toBe(true);
    expect(curesFor(ring(sides))).toEqual([]);
    const wrong = ring(sides.map((s, i) => (i === 2 ? { ...s, endAngle: s.endAngle - 1 } : s)));
    expect(wrong.closes).toBe(false);
    expect(curesFor(wrong)).toEqual([]);
  });

  it("opens on the inside by no step between faces of unequal length, only by the gap they share", () => {
    // A frame of rails 89 and 140 wide with one long side 3 over: its last corner is 3 apart all along.
    const sides = [89, 140, 89, 140].map((width, i) => ({
      id: `rail ${i + 1}`,
      outsideLength: i % 2 ? 500 : i === 0 ? 1203 : 1200,
      width,
      startAngle: 45,
      endAngle: 45,
    }));
    const last = ring(sides).corners.at(-1)!;
    expect([last.heel, last.toe]).toEqual([expect.closeTo(3, 9), expect.closeTo(3, 9)]);
    // Turned a degree too little besides, the shared opening is the shorter face's: 2 (89 / cos 45) sin(1/8).
    const turned = ring(sides.map((s, i) => (i === 0 ? { ...s, endAngle: 44 } : s)));
    expect(turned.corners[2]!.spread).toBeCloseTo(2 * 89 * Math.SQRT2 * Math.sin(rad(1 / 8)), 9);
  });

  it("closes with boards of unequal width, but their mitred faces differ until the two angles are cut", () => {
    const width = [89, 140, 89, 140];
    const sides = width.map((w, i) => ({
      id: `rail ${i + 1}`,
      outsideLength: i % 2 ? 500 : 1200,
      width: w,
      startAngle: 45,
      endAngle: 45,
    }));
    const r = ring(sides);
    expect(r.closes).toBe(true);
    for (const c of r.corners) expect(c.lengthMismatch).toBeCloseTo((140 - 89) * Math.SQRT2, 9);
    const [cure, ...more] = curesFor(r);
    expect(more).toEqual([]);
    const after = ring(applyCure(sides, cure!));
    expect(after.closes).toBe(true);
    for (const c of after.corners) expect(c.lengthMismatch).toBeCloseTo(0, 9);
    expect(after.corners[0]!.miters[0]).toBeCloseTo(Math.hypot(89, 140), 9);
    expect(curesFor(after)).toEqual([]);
  });

  it("gives two boards one mitred face at any widths and turn", () => {
    fc.assert(
      fc.property(real(20, 300), real(20, 300), real(5, 175), (w1, w2, turn) => {
        const angles = unequalMiter(w1, w2, turn);
        fc.pre(angles !== undefined && Math.abs(angles.startAngle) < 85 && Math.abs(angles.endAngle) < 85);
        const face = w1 / Math.cos(rad(angles!.endAngle));
        expect(w2 / Math.cos(rad(angles!.startAngle)) / face).toBeCloseTo(1, 9);
        expect(angles!.endAngle + angles!.startAngle).toBeCloseTo(turn, 9);
      }),
    );
    expect(unequalMiter(89, 89, 180)).toBeUndefined();
    expect(unequalMiter(89, 0, 90)).toBeUndefined();
    expect(unequalMiter(Number.NaN, 89, 90)).toBeUndefined();
  });

  it("says what is wrong with what is no ring", () => {
    const good = regular(4, 500, 89);
    const spoil = (change: Partial<RingSide>) =>
      closeRing([good[0]!, { ...good[1]!, ...change }, good[2]!], TIGHT);
    for (const n of [0, 1, 2])
      expect(closeRing(good.slice(0, n), TIGHT)).toEqual({ kind: "no-ring", reason: "too-few" });
    expect(spoil({ outsideLength: 0 })).toEqual({ kind: "no-ring", reason: "length", side: 1 });
    expect(spoil({ outsideLength: Number.NaN })).toEqual({ kind: "no-ring", reason: "number", side: 1 });
    expect(spoil({ startAngle: Number.NaN })).toEqual({ kind: "no-ring", reason: "number", side: 1 });
    expect(spoil({ width: 0 })).toEqual({ kind: "no-ring", reason: "width", side: 1 });
    expect(spoil({ endAngle: 90 })).toEqual({ kind: "no-ring", reason: "angle", side: 1 });
    expect(spoil({ outsideLength: 177 })).toEqual({ kind: "no-ring", reason: "ends-cross", side: 1 });
  });

  it("never throws, and never gives a number that is none", () => {
    const anySide = fc.record({
      id: fc.string(),
      outsideLength: odd,
      width: odd,
      startAngle: odd,
      endAngle: odd,
    });
    fc.assert(
      fc.property(fc.array(anySide, { maxLength: 5 }), (sides) => {
        const r = closeRing(sides, TIGHT);
        if (r.kind === "no-ring") {
          expect(r.reason).toMatch(/^(too-few|number|length|width|angle|ends-cross)$/);
          return;
        }
        const corners = r.corners.flatMap((c) => [c.turn, c.heel, c.toe, c.spread, c.lengthMismatch]);
        expect([r.opening, ...corners].every(Number.isFinite)).toBe(true);
        expect(curesFor(r).length).toBeLessThanOrEqual(sides.length + 1);
      }),
    );
  });
});
