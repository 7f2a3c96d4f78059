/** Where one piece stands by each relation to another: sums of whole inches, worked out beside each. */
import { describe, expect, test } from "vitest";
import { faultsOf, whereIs } from "./plans";

/** A post 4" x 1" x 20" from (10, 20, 30) to (14, 21, 50). */
const POST = 'place post upright, wide face front, 10" from left, 20" from front, 30" up\n';
/** A slat lying across is 12" x 4" x 1"; these put it at 0 in the directions that a case leaves open. */
const X = ", 0 from left";
const Y = ", 0 from front";
const Z = ", on floor";
const slat = (clauses: string): ReturnType<typeof whereIs> =>
  whereIs("slat", `${POST}place slat across, flat, ${clauses}`);

test("a post stands where it is measured to", () => {
  expect(whereIs("post", POST)).toEqual([
    [10, 14],
    [20, 21],
    [30, 50],
  ]);
});

describe("how a board lies: 20 long, 4 wide, 1 thick", () => {
  // biome-ignore format: a table
  test.each([
    ["upright, wide face front", [4, 1, 20]],
    ["upright", [4, 1, 20]],
    ["upright, wide face back", [4, 1, 20]],
    ["upright, wide face left", [1, 4, 20]],
    ["upright, wide face right", [1, 4, 20]],
    ["across, flat", [20, 4, 1]],
    ["across, on edge", [20, 1, 4]],
    ["front to back, flat", [4, 20, 1]],
    ["front to back, on edge", [1, 20, 4]],
  ])("%s", (lies, [x, y, z]) => {
    const at = whereIs("post", `place post ${lies}, 0 from left, 0 from front, on floor`);
    expect(at).toEqual([
      [0, x],
      [0, y],
      [0, z],
    ]);
  });
});

describe("touching a face, or so far from it", () => {
  // biome-ignore format: a table
  test.each([
    // Its bottom on 50.
    [`on post${X}${Y}`, [[0, 12], [0, 4], [50, 51]]],
    [`3" above post${X}${Y}`, [[0, 12], [0, 4], [53, 54]]],
    // Its top at 30, or 2 below that.
    [`under post${X}${Y}`, [[0, 12], [0, 4], [29, 30]]],
    [`2" below post${X}${Y}`, [[0, 12], [0, 4], [27, 28]]],
    // Its right side at 10.
    [`left of post${Y}${Z}`, [[-2, 10], [0, 4], [0, 1]]],
    [`1-1/2" left of post${Y}${Z}`, [[-3.5, 8.5], [0, 4], [0, 1]]],
    [`right of post${Y}${Z}`, [[14, 26], [0, 4], [0, 1]]],
    [`2" right of post${Y}${Z}`, [[16, 28], [0, 4], [0, 1]]],
    // Its back at 20, its front at 21.
    [`in front of post${X}${Z}`, [[0, 12], [16, 20], [0, 1]]],
    [`2" in front of post${X}${Z}`, [[0, 12], [14, 18], [0, 1]]],
    [`behind post${X}${Z}`, [[0, 12], [21, 25], [0, 1]]],
    [`1" behind post${X}${Z}`, [[0, 12], [22, 26], [0, 1]]],
    [`on floor${X}${Y}`, [[0, 12], [0, 4], [0, 1]]],
  ])("%s", (clauses, spans) => {
    expect(slat(clauses)).toEqual(spans);
  });
});

describe("level with a face, in from it and past it", () => {
  // biome-ignore format: a table
  test.each([
    [`flush with left of post${Y}${Z}`, [[10, 22], [0, 4], [0, 1]]],
    [`flush with right of post${Y}${Z}`, [[2, 14], [0, 4], [0, 1]]],
    [`flush with front of post${X}${Z}`, [[0, 12], [20, 24], [0, 1]]],
    [`flush with back of post${X}${Z}`, [[0, 12], [17, 21], [0, 1]]],
    [`flush with bottom of post${X}${Y}`, [[0, 12], [0, 4], [30, 31]]],
    [`flush with top of post${X}${Y}`, [[0, 12], [0, 4], [49, 50]]],
    // In from a side is towards the middle, past it away from the middle.
    [`1" in from left of post${Y}${Z}`, [[11, 23], [0, 4], [0, 1]]],
    [`1" past left of post${Y}${Z}`, [[9, 21], [0, 4], [0, 1]]],
    [`1" in from right of post${Y}${Z}`, [[1, 13], [0, 4], [0, 1]]],
    [`1" past right of post${Y}${Z}`, [[3, 15], [0, 4], [0, 1]]],
    [`1/2" in from front of post${X}${Z}`, [[0, 12], [20.5, 24.5], [0, 1]]],
    [`1/2" past front of post${X}${Z}`, [[0, 12], [19.5, 23.5], [0, 1]]],
    [`1/2" in from back of post${X}${Z}`, [[0, 12], [16.5, 20.5], [0, 1]]],
    [`1/2" past back of post${X}${Z}`, [[0, 12], [17.5, 21.5], [0, 1]]],
    [`2" in from bottom of post${X}${Y}`, [[0, 12], [0, 4], [32, 33]]],
    [`2" past bottom of post${X}${Y}`, [[0, 12], [0, 4], [28, 29]]],
    [`2" in from top of post${X}${Y}`, [[0, 12], [0, 4], [47, 48]]],
    [`2" past top of post${X}${Y}`, [[0, 12], [0, 4], [51, 52]]],
  ])("%s", (clauses, spans) => {
    expect(slat(clauses)).toEqual(spans);
  });
});

describe("centered", () => {
  // The middle of the post is (12, 20.5, 40).
  // biome-ignore format: a table
  test.each([
    ["centered on post", [[6, 18], [18.5, 22.5], [39.5, 40.5]]],
    ["centered on post, on post", [[6, 18], [18.5, 22.5], [50, 51]]],
    ["on floor, centered on post, left of post", [[-2, 10], [18.5, 22.5], [0, 1]]],
    [`centered left to right on post${Y}${Z}`, [[6, 18], [0, 4], [0, 1]]],
    [`centered front to back on post${X}${Z}`, [[0, 12], [18.5, 22.5], [0, 1]]],
    [`centered up and down on post${X}${Y}`, [[0, 12], [0, 4], [39.5, 40.5]]],
  ])("%s", (clauses, spans) => {
    expect(slat(clauses)).toEqual(spans);
  });
});

describe("from the plan's own sides", () => {
  const room = 'plan Room\n  space 60" wide, 40" deep, 50" high\n';
  // biome-ignore format: a table
  test.each([
    ["0 from left, 0 from front, on floor", [[0, 12], [0, 4], [0, 1]]],
    ['5" from left, 6" from front, 7" up', [[5, 17], [6, 10], [7, 8]]],
    ['5" from left, 6" from front, 7" from floor', [[5, 17], [6, 10], [7, 8]]],
    ['5" from left, 6" from front, 7" from bottom', [[5, 17], [6, 10], [7, 8]]],
    // 60 - 3 - 12, 40 - 2 - 4, 50 - 1 - 1.
    ['3" from right, 2" from back, 1" from top', [[45, 57], [34, 38], [48, 49]]],
  ])("%s", (clauses, spans) => {
    expect(whereIs("slat", `${room}place slat across, flat, ${clauses}`)).toEqual(spans);
  });

  test("the right is nowhere without a space", () => {
    expect(faultsOf('place slat across, flat, 3" from right, 2" from back, on floor')).toEqual([
      "no-far-side",
      "no-far-side",
    ]);
  });
});
