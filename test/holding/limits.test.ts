/** Each of the six problems just under its limit, where it is not told, and just over it. The limits are found by hand. */
import { describe, expect, test } from "vitest";
import { codesOf, run } from "../checks/plans";
import { crossing, GRADED, inertia, modulus, THIN, weighs } from "./hand";

const slat = (board: string, load: number): string => `plan Slat
  indoors
part rail of 2x4, length 12"
part slat of ${board}, length 60"
place rail front to back, on edge, on floor, 0 from left, 0 from front
place rail front to back, on edge, on floor, 58-1/2" from left, 0 from front
place slat across, flat, on rails, 0 from left, 0 from front
load slat ${load.toFixed(6)} lb
`;
/** Middles of the rails 3/4" in. */
const [L, a] = [58.5, 0.75];

test("too-weak: the moment of a spread load against what 2.06 in3 of 1308 psi bear for good", () => {
  const uses = (load: number): number => {
    const w = (load + weighs(60, 5.5, 1.5)) / 60;
    return ((w * L ** 2) / 8 - (w * a ** 2) / 2) / (0.9 * GRADED["2x6"].flat * modulus(5.5, 1.5));
  };
  const limit = crossing((load) => uses(load) - 1, 0, 1000);
  expect(codesOf(slat("2x6", limit * 0.999))).not.toContain("too-weak");
  expect(codesOf(slat("2x6", limit * 1.001))).toContain("too-weak");
});

test("slat-sags: half as much again with the years, against 1/240 of the span", () => {
  const uses = (load: number): number => {
    const w = (load + weighs(60, 5.5, 1.5)) / 60;
    const sag = (5 * w * L ** 4) / 384 - (w * a ** 2 * L ** 2) / 16;
    return (1.5 * sag) / (GRADED.E * inertia(5.5, 1.5)) / (L / 240);
  };
  const limit = crossing((load) => uses(load) - 1, 0, 1000);
  expect(codesOf(slat("2x6", limit * 0.999))).not.toContain("slat-sags");
  expect(codesOf(slat("2x6", limit * 1.001))).toContain("slat-sags");
});

/** 93" between the outsides of the posts: held at 3-1/4" and 92-3/4" of the sides. */
const bed = (deep: number): string => `plan Bed
  outdoors
part post of 4x4, length 5-1/2"
part side of 1x6, length 96"
part end of 2x6, length 24"
place post upright, wide face front, on floor, at each corner of 93" x 24"
place side across, on edge, in front of posts, centered left to right on posts, flush with top of posts
place side across, on edge, behind posts, centered left to right on posts, flush with top of posts
place end front to back, on edge, left of posts, flush with front of posts, flush with top of posts
place end front to back, on edge, right of posts, flush with front of posts, flush with top of posts
fasten side and end into post, 3 #10 x 3" at each crossing
box bed, walls side and end
  filled with soil ${deep.toFixed(6)}" deep
`;

test("side-bows: twice as far with the years, against 1/120 of the span", () => {
  const uses = (deep: number): number => {
    // 50 lb/cuft to the side, over the 93" between the ends: 1.75" past each post.
    const w = (50 * deep ** 2) / 2 / 1728;
    const [span, over] = [89.5, 1.75];
    const bow = (5 * w * span ** 4) / 384 - (w * over ** 2 * span ** 2) / 16;
    return (2 * bow) / (0.9 * THIN.E * inertia(5.5, 0.75)) / (span / 120);
  };
  const limit = crossing((deep) => uses(deep) - 1, 0, 5.5);
  expect(codesOf(bed(limit * 0.999))).not.toContain("side-bows");
  expect(codesOf(bed(limit * 1.001))).toContain("side-bows");
});

test("too-weak, of a wall: the push of a blocked drain", () => {
  const water = 1000 / 16.018463;
  const uses = (deep: number): number => {
    const w = ((water + 0.5 * (125 - water)) * deep ** 2) / 2 / 1728;
    const moment = (w * 89.5 ** 2) / 8 - (w * 1.75 ** 2) / 2;
    return moment / ((0.9 * THIN.flat * modulus(5.5, 0.75)) / 1.25);
  };
  const limit = crossing((deep) => uses(deep) - 1, 0, 5.5);
  expect(codesOf(bed(limit * 0.999))).not.toContain("too-weak");
  expect(codesOf(bed(limit * 1.001))).toContain("too-weak");
});

test('screw-overloaded: two #8 screws through 3/4" at each end, 1-1/4" deep', () => {
  // 69.23 lb at 1.64" deep in spruce-pine-fir: by NDS Table 12.3.1A, IIIs.
  const fe = 16_600 * 0.42 ** 1.84;
  const k3 = -1 + Math.sqrt(4 + (2 * 90_000 * 3 * 0.131 ** 2) / (3 * fe * 0.75 ** 2));
  const one = ((k3 * 0.131 * 0.75 * fe) / (3 * 2.2)) * (1.25 / 1.64);
  const plan = (load: number): string => `plan Hung
  indoors
part post of 2x4, length 40"
part board of 1x6, length 30"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 26-1/2" from left, 0 from front
place board across, on edge, in front of posts, flush with left of posts, flush with top of posts
fasten board into post, 2 #8 x 2" at each crossing
load board ${load.toFixed(6)} lb
`;
  const limit = crossing((load) => (load + weighs(30, 5.5, 0.75)) / 2 / (0.9 * 2 * one) - 1, 0, 1000);
  expect(codesOf(plan(limit * 0.999))).not.toContain("screw-overloaded");
  expect(codesOf(plan(limit * 1.001))).toContain("screw-overloaded");
});

describe("load-has-no-path", () => {
  test('on one block: the middle of a board over the block, which ends 23-1/2" from the left', () => {
    const onOne = (middle: number): string => `plan One
  indoors
part block of 4x4, length 12"
part board of 2x6, length 24"
place block front to back, flat, on floor, 20" from left, 0 from front
place board across, flat, on block, ${middle - 12}" from left, 0 from front
load board 20 lb
`;
    expect(codesOf(onOne(23.4))).not.toContain("load-has-no-path");
    expect(codesOf(onOne(23.6))).toContain("load-has-no-path");
    expect(codesOf(onOne(20.1))).not.toContain("load-has-no-path");
    expect(codesOf(onOne(19.9))).toContain("load-has-no-path");
  });

  test("on two rails: a pot past the right one, up to where it lifts the board off the left one", () => {
    // Rails end at 42"; the board reaches from 0 to 50", its own weight at 25".
    const onTwo = (pot: number): string => `plan Two
  indoors
part rail of 2x4, length 12"
part board of 2x6, length 50"
part block of 4x4, length 5-1/2"
place rail front to back, on edge, on floor, 0 from left, 0 from front
place rail front to back, on edge, on floor, 40-1/2" from left, 0 from front
place board across, flat, on rails, 0 from left, 0 from front
place block front to back, flat, on board, flush with right of board, 0 from front
load block ${pot.toFixed(6)} lb
`;
    const own = weighs(50, 5.5, 1.5);
    const block = weighs(5.5, 3.5, 3.5);
    // The middle of the block is at 48-1/4": 6-1/4" past the rail. A millimetre is let be.
    const limit = crossing((pot) => (pot + block) * 6.25 - own * 17, 0, 100);
    expect(codesOf(onTwo(limit * 0.99))).not.toContain("load-has-no-path");
    expect(codesOf(onTwo(limit * 1.03))).toContain("load-has-no-path");
  });

  const hung = (fasten: string, load: string): string => `plan Hung
  indoors
part post of 2x4, length 40"
part board of 1x6, length 30"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 26-1/2" from left, 0 from front
place board across, on edge, in front of posts, flush with left of posts, flush with top of posts
${fasten}
${load}
`;
  test("held by nothing: a board that only touches what it should hang on, and carries something", () => {
    const fasten = 'fasten board into post, 2 #8 x 2" at each crossing';
    expect(codesOf(hung("", "load board 10 lb"))).toContain("load-has-no-path");
    expect(codesOf(hung(fasten, "load board 10 lb"))).not.toContain("load-has-no-path");
    expect(codesOf(hung("", ""))).not.toContain("load-has-no-path");
    // By one end alone, its weight is beside that.
    expect(codesOf(hung(fasten.replace("into post", "into left post"), "load board 10 lb"))).toContain(
      "load-has-no-path",
    );
  });

  test("what stands on it is told with it, and somebody on a seat once", () => {
    const seat = `plan Seat
  indoors
part post of 4x4, length 20"
part rail of 2x4, length 40"
part slat of 1x4, length 21"
place post upright, wide face front, on floor, at each corner of 40" x 18"
place rail across, on edge, in front of posts, flush with left of posts, 12-1/2" up
place rail across, on edge, behind posts, flush with left of posts, 12-1/2" up
place slat front to back, flat, on rails, 8 across, spread between left posts and right posts, flush with front of rails
fasten slat into rail edge, 1 #8 x 2" at each crossing
`;
    const loose = run(seat).worked.holding.noPath;
    expect(loose).toHaveLength(1);
    // Eight slats, two rails, and 300 lb once.
    const wood = 8 * weighs(21, 3.5, 0.75) + 2 * weighs(40, 3.5, 1.5);
    expect(loose[0]!.force / 4.4482216152605).toBeCloseTo(300 + wood, 4);
  });
});

describe("foot-over-load", () => {
  const plan = (load: number): string => `plan Foot
  foot limit 143 lb by the porch's builder
part leg of 4x4, length 30"
part plank of 2x12, length 24"
place leg upright, wide face front, on floor, at each corner of 24" x 11-1/4"
place plank across, flat, on legs, centered on legs
load plank ${load.toFixed(6)} lb
`;
  const wood = 4 * weighs(30, 3.5, 3.5) + weighs(24, 11.25, 1.5);
  const classOf = (load: number): string | undefined =>
    run(plan(load)).problems.find((p) => p.code === "foot-over-load")?.class;

  test("a quarter of all on each of four feet: a hazard over 143 lb, a warning from 95% of it on", () => {
    const [near, over] = [4 * 143 * 0.95 - wood, 4 * 143 - wood];
    expect(classOf(near - 0.01)).toBeUndefined();
    expect(classOf(near + 0.01)).toBe("warning");
    expect(classOf(over - 0.01)).toBe("warning");
    expect(classOf(over + 0.01)).toBe("hazard");
  });

  test("what comes and goes stands on one foot alone, where that is worst", () => {
    const some = plan(100).replace("lb\n", "lb anywhere\n").replace("100.000000 lb", "100 lb");
    const [foot] = run(some).worked.holding.feet;
    expect((foot!.steady + foot!.moving) / 4.4482216152605).toBeCloseTo(wood / 4 + 100, 4);
  });
});
