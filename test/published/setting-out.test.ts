/** Where screws go on a patch, and how near they come to edges: plain rectangles worked by hand. */
import { describe, expect, test } from "vitest";
import { boundsApart } from "../../server/solid/contact";
import { gridOf } from "../../server/solid/grid";
import { betweenEnds, fieldOf, shares, spaced } from "../../server/solid/setout";
import type { Vec3 } from "../../server/solid/vector";
import { random } from "./random";

const UP: Vec3 = [0, 0, 1];
/** 100 by 40 mm, level, its corner at 10, 20, 5. */
const PATCH: readonly Vec3[] = [
  [10, 20, 5],
  [110, 20, 5],
  [110, 60, 5],
  [10, 60, 5],
];
const round = (list: readonly Vec3[]): Vec3[] =>
  list.map(([x, y, z]) => [x, y, z].map((n) => Math.round(n * 1e3) / 1e3 + 0) as unknown as Vec3);

describe("a row of screws on a patch", () => {
  test("two share it: a quarter of the long side from either end, in the middle of the short one", () => {
    expect(round(shares(fieldOf(PATCH, UP), 2))).toEqual([
      [35, 40, 5],
      [85, 40, 5],
    ]);
  });

  test("one alone stands in the middle", () => {
    expect(round(shares(fieldOf(PATCH, UP), 1))).toEqual([[60, 40, 5]]);
    expect(round(betweenEnds(fieldOf(PATCH, UP), 1, 15))).toEqual([[60, 40, 5]]);
  });

  test("three from end to end keep the margin and stand evenly", () => {
    expect(round(betweenEnds(fieldOf(PATCH, UP), 3, 15))).toEqual([
      [25, 40, 5],
      [60, 40, 5],
      [95, 40, 5],
    ]);
  });

  test("spaced no further than asked: 70 mm between the margins at 25 mm takes four, 23-1/3 mm apart", () => {
    const row = spaced(fieldOf(PATCH, UP), 25, 15);
    expect(row).toHaveLength(4);
    expect(row[1]![0] - row[0]![0]).toBeCloseTo(70 / 3, 9);
  });

  test("along a direction asked for, the other way of the patch is its length", () => {
    expect(round(shares(fieldOf(PATCH, UP, [0, 1, 0]), 2)).map(([x, y]) => [x, y])).toEqual([
      [60, 30],
      [60, 50],
    ]);
  });

  test("on a triangle each stands in the middle of what the patch has there", () => {
    const corner: Vec3[] = [
      [0, 0, 0],
      [100, 0, 0],
      [0, 40, 0],
    ];
    const [first, second] = shares(fieldOf(corner, UP, [1, 0, 0]), 2);
    // A quarter along, the triangle is 30 deep; three quarters along, 10.
    expect(round([first!, second!])).toEqual([
      [25, 15, 0],
      [75, 5, 0],
    ]);
  });
});

test("boxes near a box are those that trying all of them finds", () => {
  const next = random(20261126);
  const box = (size: number) => {
    const least: Vec3 = [next() * 4000 - 2000, next() * 4000 - 2000, next() * 1000];
    const most: Vec3 = [least[0] + next() * size, least[1] + next() * size, least[2] + next() * 300];
    return { least, most };
  };
  const all = Array.from({ length: 400 }, (_, i) => box(i % 40 === 0 ? 9000 : 900));
  const grid = gridOf(all);
  for (let i = 0; i < 200; i++) {
    const asked = box(600);
    const within = next() * 50;
    expect(grid.near(asked, within)).toEqual(
      all.flatMap((b, n) => (boundsApart(b, asked) <= within ? [n] : [])),
    );
  }
});
