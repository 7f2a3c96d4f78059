/** What tips a thing over, by pure numbers: hand calculations, and what must always hold (printed examples: test/published/strength-examples/ground.ts). */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sailOf } from "../../server/strength/sail";
import {
  beyond,
  hullOf,
  type Mass,
  marginAgainst,
  narrowest,
  nearestSide,
  type Point,
  pushToTip,
  sidesOf,
  together,
  weightToTip,
} from "../../server/strength/topple";

const RUNS = Number(process.env.FC_RUNS ?? 500);
const SQUARE: Point[] = [
  [0, 0],
  [400, 0],
  [400, 200],
  [0, 200],
];
const mass = (kg: number, x: number, y: number, z = 100): Mass => ({ kg, at: [x, y, z] });

describe("the outline of feet", () => {
  test("has the corners only, counter-clockwise, whatever lies on its edges or inside", () => {
    const more: Point[] = [[200, 0], [200, 100], [400, 100], ...SQUARE, [0, 0]];
    expect(hullOf(more)).toEqual(SQUARE);
  });

  test("of points in one line has no edges and no width", () => {
    const line = hullOf([
      [0, 0],
      [100, 100],
      [50, 50],
    ]);
    expect(sidesOf(line)).toEqual([]);
    expect(narrowest(line)).toBe(0);
    expect(sidesOf(hullOf([]))).toEqual([]);
    expect(pushToTip(sidesOf(line), mass(10, 50, 50), 500)).toBeUndefined();
  });

  test("is as wide as it is where it is narrowest", () => {
    expect(narrowest(SQUARE)).toBe(200);
    // A triangle with sides of 3, 4 and 5: its least height is 3 x 4 / 5.
    expect(
      narrowest([
        [0, 0],
        [3, 0],
        [0, 4],
      ]),
    ).toBeCloseTo(2.4, 12);
  });
});

describe("what tips it", () => {
  const sides = sidesOf(SQUARE);

  test("a push is weight times arm over height, about the nearest edge", () => {
    // 20 kg, 60 mm inside the front edge, pushed 600 mm up: 20 x 60 / 600.
    const tip = pushToTip(sides, mass(20, 200, 60), 600)!;
    expect(tip.kg).toBeCloseTo(2, 12);
    expect(tip.side.outward).toEqual([0, -1]);
    expect(pushToTip(sides, mass(20, 200, 60), 0)).toBeUndefined();
  });

  test("what stands outside its feet tips by itself", () => {
    const side = nearestSide(sides, mass(20, 410, 100))!;
    expect(side.outward).toEqual([1, 0]);
    expect(beyond(side, [410, 100])).toBe(10);
    expect(pushToTip(sides, mass(20, 410, 100), 500)!.kg).toBeCloseTo(-0.4, 12);
  });

  test("a weight outside the feet by its arm; one inside, or just above an edge, never", () => {
    // 30 kg, 200 mm inside the right edge, against a weight 150 mm outside it: 30 x 200 / 150.
    const tip = weightToTip(sides, mass(30, 200, 100), [[550, 100]], 0)!;
    expect([tip.kg, tip.over]).toEqual([40, 150]);
    expect(weightToTip(sides, mass(30, 200, 100), [[550, 100]], 50)!.kg).toBeCloseTo(60, 12);
    expect(weightToTip(sides, mass(30, 200, 100), [[450, 100]], 50)).toBeUndefined();
    expect(weightToTip(sides, mass(30, 200, 100), [[399, 199]], 0)).toBeUndefined();
  });

  test("a force by the moment about the edge it presses towards", () => {
    const stands = marginAgainst(sides, mass(20, 200, 60), { kg: 3, way: [0, -1], height: 200 })!;
    expect(stands.margin).toBeCloseTo((20 * 60) / (3 * 200), 12);
    const other = marginAgainst(sides, mass(20, 200, 60), { kg: 3, way: [0, 1], height: 200 })!;
    expect(other.margin).toBeCloseTo((20 * 140) / (3 * 200), 12);
    expect(marginAgainst(sides, mass(20, 200, 60), { kg: 0, way: [0, 1], height: 200 })).toBeUndefined();
  });
});

describe("weights together", () => {
  test("act where they balance, or not at all where nothing weighs", () => {
    expect(together([mass(3, 0, 0, 0), mass(1, 400, 0, 200)])).toEqual(mass(4, 100, 0, 50));
    expect(together([])).toBeUndefined();
    expect(together([mass(0, 1, 1, 1)])).toBeUndefined();
  });
});

describe("the area that wind finds", () => {
  test("counts what stands behind something else once", () => {
    const front = { across: [0, 100], up: [0, 50] } as const;
    expect(sailOf([front])).toEqual({ area: 5000, height: 25 });
    expect(sailOf([front, front])).toEqual({ area: 5000, height: 25 });
    // A post that stands 50 above it, 20 wide: 1000 more, its middle at 75.
    const post = { across: [10, 30], up: [0, 100] } as const;
    const both = sailOf([front, post]);
    expect(both.area).toBe(6000);
    expect(both.height).toBeCloseTo((5000 * 25 + 1000 * 75) / 6000, 12);
    expect(sailOf([])).toEqual({ area: 0, height: 0 });
  });
});

const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true });
const points = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 12 });
const weight = fc.double({ min: 0.1, max: 500, noNaN: true });
const height = fc.double({ min: 1, max: 2000, noNaN: true });

describe("always", () => {
  const near = (a: number, b: number, size: number): void =>
    expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-6 * (1 + size));

  test("turned and mirrored, it takes as much", () => {
    fc.assert(
      fc.property(
        points,
        weight,
        coordinate,
        coordinate,
        height,
        fc.double({ min: 0, max: 7, noNaN: true }),
        (list, kg, x, y, h, turn) => {
          const tip = pushToTip(sidesOf(hullOf(list)), mass(kg, x, y), h);
          fc.pre(narrowest(hullOf(list)) > 1);
          const [c, s] = [Math.cos(turn), Math.sin(turn)];
          const turned = ([a, b]: readonly [number, number]): Point => [c * a - s * b, s * a + c * b];
          const mirrored = ([a, b]: readonly [number, number]): Point => [-a, b];
          for (const way of [turned, mirrored]) {
            const sides = sidesOf(hullOf(list.map(way)));
            const other = pushToTip(sides, mass(kg, ...way([x, y])), h);
            near(other!.kg, tip!.kg, kg * (2000 / h) * 4000);
          }
        },
      ),
      { numRuns: RUNS },
    );
  });

  test("no more push, and no push higher up, is held with more margin; nothing is NaN", () => {
    fc.assert(
      fc.property(points, weight, coordinate, coordinate, height, (list, kg, x, y, h) => {
        const sides = sidesOf(hullOf(list));
        const tip = pushToTip(sides, mass(kg, x, y), h);
        if (!tip) return;
        expect(Number.isFinite(tip.kg)).toBe(true);
        const margin = (push: number, at: number) =>
          marginAgainst(sides, mass(kg, x, y), { kg: push, way: tip.side.outward, height: at })!.margin;
        if (tip.kg <= 0) return;
        expect(margin(20, h)).toBeLessThanOrEqual(margin(10, h));
        expect(margin(10, h * 2)).toBeLessThanOrEqual(margin(10, h));
        expect(pushToTip(sides, mass(kg * 2, x, y), h)!.kg).toBeGreaterThanOrEqual(tip.kg);
      }),
      { numRuns: RUNS },
    );
  });
});
