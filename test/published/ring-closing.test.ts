/** Flat rings against exact geometry and values computed outside the project; inches turned to millimetres. */
import { describe, expect, it } from "vitest";
import { closeRing, type Ring, type RingSide } from "../../server/solid/ring";
import { curesFor, unequalMiter } from "../../server/solid/ring-cures";

const INCH = 25.4;
const tolerance = { length: 0.05 * INCH, degrees: 0.1 };

function ringOf(sides: readonly Omit<RingSide, "id">[]): Ring {
  const named = sides.map((s, i) => ({
    ...s,
    id: `rail ${i + 1}`,
    outsideLength: s.outsideLength * INCH,
    width: s.width * INCH,
  }));
  const ring = closeRing(named, tolerance);
  if (ring.kind !== "ring") throw new Error(`no ring: ${ring.reason}`);
  return ring;
}
const regular = (n: number, outsideLength: number, width: number, angle: number): Ring =>
  ringOf(Array.from({ length: n }, () => ({ outsideLength, width, startAngle: angle, endAngle: angle })));
const frame = (lengths: readonly number[], width: number): Ring =>
  ringOf(lengths.map((outsideLength) => ({ outsideLength, width, startAngle: 45, endAngle: 45 })));

describe("a hexagon of 12-inch sides, 3-1/2 wide (computed separately)", () => {
  it("closes at 30", () => {
    const ring = regular(6, 12, 3.5, 30);
    expect(ring.closes).toBe(true);
    expect(ring.misfitDegrees).toBeCloseTo(0, 9);
    expect(ring.opening).toBeLessThan(1e-9);
  });

  it("opens at 29.5: misfit -6, 1.2754 outside, 0.8545 inside, 0.0702 at each corner when spread", () => {
    const ring = regular(6, 12, 3.5, 29.5);
    const last = ring.corners.at(-1)!;
    expect(ring.closes).toBe(false);
    expect(ring.misfitDegrees).toBeCloseTo(-6, 9);
    expect(last.heel / INCH).toBeCloseTo(1.2754, 4);
    expect(last.toe / INCH).toBeCloseTo(0.8545, 4);
    for (const c of ring.corners) expect(c.spread / INCH).toBeCloseTo(0.0702, 4);
    expect(curesFor(ring)).toEqual([{ kind: "ends-alike", degrees: 30 }]);
  });
});

describe("frames", () => {
  it("48 x 20, 5-1/2 wide, one long side 1/8 over: 0.125 (exact geometry), cured by either long side", () => {
    const ring = frame([48.125, 20, 48, 20], 5.5);
    expect(ring.misfitDegrees).toBe(0);
    expect(ring.opening / INCH).toBeCloseTo(0.125, 9);
    expect(ring.corners.at(-1)!.heel / INCH).toBeCloseTo(0.125, 9);
    expect(ring.corners.at(-1)!.toe / INCH).toBeCloseTo(0.125, 9);
    const cures = curesFor(ring);
    expect(cures.map((c) => (c.kind === "side-length" ? [c.side, c.to / INCH] : c.kind))).toEqual([
      [0, expect.closeTo(48, 9)],
      [2, expect.closeTo(48.125, 9)],
    ]);
  });

  it("3-1/2 meets 5-1/2 at 90: 57.5288 and 32.4712 (computed separately)", () => {
    const angles = unequalMiter(3.5, 5.5, 90)!;
    expect(angles.endAngle).toBeCloseTo(57.5288, 4);
    expect(angles.startAngle).toBeCloseTo(32.4712, 4);
  });
});

describe("polygons (exact geometry)", () => {
  it.each([
    // Across flats 24: side = 2 x apothem x tan(180/n).
    [6, 13.856],
    [8, 9.941],
  ])("%d sides of %d are 24 across flats", (n, side) => {
    const ring = regular(n, side, 2.5, 180 / n);
    expect(ring.closes).toBe(true);
    // The first side lies on y = 0, so the opposite one is the distance across flats.
    const top = Math.max(...ring.points.map(([, y]) => y));
    expect(top / INCH).toBeCloseTo(24, 2);
  });

  it("a quarter degree off at every cut of a hexagon: 3 degrees, 0.21 in over a mitre of 4.04", () => {
    // n joints of two cuts each: 2 n e; 3.5 / cos 30 = 4.04; the gaps of all six corners add to 0.21.
    const ring = regular(6, 12, 3.5, 29.75);
    expect(Math.abs(ring.misfitDegrees)).toBeCloseTo(3, 9);
    expect(regular(6, 12, 3.5, 30).corners[0]!.miters[0] / INCH).toBeCloseTo(4.04, 2);
    expect(ring.corners.reduce((sum, c) => sum + c.spread, 0) / INCH).toBeCloseTo(0.21, 2);
  });
});
