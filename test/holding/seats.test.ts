/** What somebody is taken to sit or stand on, where the plan says nothing else. */
import { describe, expect, test } from "vitest";
import { see } from "./hand";

const SIT = 300;

/** A board on two blocks; the top of a 2x8 is 1-1/2" over them. */
const bench = (high: string, more = "", board = "2x8"): string => `plan Bench
  indoors
part leg of 4x4, length ${high} - thickness of ${board}
part top of ${board}, length 24"
place leg upright, wide face front, on floor, at each corner of 24" x 7-1/4"
place top across, flat, on legs, flush with left of legs, flush with front of legs
${more}`;

const comes = (text: string, part = "top"): number => see(text).one(part).moving;

describe("300 lb come and go on a flat top", () => {
  test.each([
    ['11-15/16"', 0],
    ['12"', SIT],
    ['12-1/16"', SIT],
    ['24"', SIT],
    ['24-1/16"', 0],
    ["304.8mm", SIT],
    ["304.7mm", 0],
    ["609.6mm", SIT],
    ["609.7mm", 0],
  ])("%s high: %i lb", (high, lb) => {
    expect(comes(bench(high))).toBeCloseTo(lb, 9);
  });

  test('they stand on 4" of the worst place of it, and go down to the feet', () => {
    const seen = see(bench('18"'));
    // 24" long, middles of the legs 1.75" in: a span of 20.5". P L / 4 - P c / 8.
    expect(seen.one("top").coming).toBeCloseTo((SIT * 20.5) / 4 - (SIT * 4) / 8, 6);
    for (const foot of seen.feet("leg")) expect(foot.moving).toBeCloseTo(SIT, 6);
  });

  test("a weight that the plan says takes their place, heavier or lighter, however it stands", () => {
    expect(comes(bench('18"', "load top 40 lb spread"))).toBe(0);
    expect(comes(bench('18"', "load top 40 lb middle"))).toBe(0);
    expect(comes(bench('18"', "load top 40 lb anywhere"))).toBeCloseTo(40, 9);
    expect(comes(bench('18"', "load leg 40 lb"))).toBeCloseTo(SIT, 9);
  });

  test("not under something that lies on it", () => {
    const under = `part crate of 2x8, length 20"
place crate across, flat, on top, flush with left of top, flush with front of top
`;
    const seen = see(bench('14"', under));
    // The crate, 15-1/2" high, is the seat; what it hands down comes and goes too.
    expect(seen.one("crate").held.loads.roaming).toHaveLength(1);
    expect(seen.one("top").held.loads.roaming).toHaveLength(0);
    expect(seen.one("top").moving).toBeCloseTo(SIT, 6);
  });
});

describe("narrow boards", () => {
  const slats = (width: string, gap: string, count = 4): string => `plan Slats
  indoors
stock strip, actual 3/4" x ${width}
part leg of 2x4, length 15-3/4"
part beam of 2x4, length 24"
part slat of strip, length 20"
place leg upright, wide face left, on floor, at each corner of 24" x 20"
place beam across, flat, on legs, flush with left of legs, flush with front of legs
place beam across, flat, on legs, flush with left of legs, flush with back of legs
place slat front to back, flat, on beams, flush with front of beams, flush with left of beams, ${count} across, ${gap} apart
`;

  test('1-1/4" wide beside each other are sat on, narrower ones are not', () => {
    expect(comes(slats('1-1/4"', '1"'), "slat")).toBeCloseTo(SIT, 9);
    expect(comes(slats('1-3/16"', '1"'), "slat")).toBe(0);
  });

  test('up to 38 mm apart (1-1/2" and a hair less)', () => {
    expect(comes(slats('1-1/4"', "38mm"), "slat")).toBeCloseTo(SIT, 9);
    expect(comes(slats('1-1/4"', '1-1/2"'), "slat")).toBe(0);
  });

  test('alone are not, from 3" on they are', () => {
    expect(comes(slats('2-15/16"', '1"', 1), "slat")).toBe(0);
    expect(comes(slats('3"', '1"', 1), "slat")).toBeCloseTo(SIT, 9);
  });
});

test("nobody sits on the bottom of a box under its soil", () => {
  const box = (filled: string): string => `plan Box
  indoors
part leg of 4x4, length 12-1/2"
part plank of 2x12, length 24"
part side of 2x6, length 27"
part end of 2x6, length 11-1/4"
place leg upright, wide face front, on floor, at each corner of 24" x 11-1/4"
place plank across, flat, on legs, flush with left of legs, flush with front of legs
place end front to back, on edge, left of plank, flush with front of plank, flush with bottom of plank
place end front to back, on edge, right of plank, flush with front of plank, flush with bottom of plank
place side across, on edge, in front of plank, flush with left of ends, flush with bottom of plank
place side across, on edge, behind plank, flush with left of ends, flush with bottom of plank
fasten side into end, 2 #10 x 3" at each crossing
fasten side and end into plank edge, 2 #10 x 3" at each crossing
box bin, walls side and end, bottom plank, drains through the gaps
${filled}`;
  const filled = see(box("  filled with soil\n"));
  expect(filled.one("plank").held.loads.roaming).toHaveLength(0);
  // 24" x 11-1/4" x 4" at 125 lb/cuft, saturated.
  expect(filled.one("plank").fill).toBeCloseTo((24 * 11.25 * 4 * 125) / 1728, 6);
  expect(see(box("")).one("plank").held.loads.roaming).toHaveLength(1);
});
