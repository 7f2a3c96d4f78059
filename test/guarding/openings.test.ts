/** Openings that catch a finger or a head, by hand: just under, at and just over each limit. */
import { describe, expect, test } from "vitest";
import { uncheckedText } from "../../server/checks";
import { rowChanges } from "../../server/worked";
import { run } from "../checks/plans";

const PLAN = 'plan Yard thing\n  units inches to 1/64"\n  near children\n';
const IN = 25.4;

/** Each opening told: what it catches, how wide and how long in inches, and how many more. */
const traps = (text: string): [string, number, number, number][] =>
  run(PLAN + text).worked.guarding.traps.map(({ catches, opening, more }) => [
    catches,
    round(opening.gap / IN),
    round(opening.long / IN),
    more,
  ]);
const round = (x: number): number => Math.round(x * 1e6) / 1e6;
const codes = (text: string): string[] =>
  run(PLAN + text).problems.flatMap((p) => (p.code === "gap-traps" ? [`${p.says} ${p.class}`] : []));

/** Slats on two battens on the floor: 27 inches are open between these. */
const slats = (gap: string, more = "", n = 2): string => `part batten of 2x2, length 20"
part slat of 1x4, length 30"
place batten front to back, flat, on floor, 0 from left, 0 from front
place batten front to back, flat, on floor, 28-1/2" from left, 0 from front
place slat across, flat, on battens, flush with left of battens, flush with front of battens, ${n} deep, ${gap} apart
${more}`;

/** Two boards, one over the other, between two posts. */
const window = (
  gap: string,
  long: string,
  low = '12"',
  more = "",
): string => `stock bar-wood, actual 1-1/2" x 3-1/2"
part post of 4x4, length 80"
part bar of bar-wood, length ${long}
part bar-2 of bar-wood, length ${long}
place post upright, wide face front, on floor, 0 from left, 0 from front, 2 across, ${long} apart
place bar across, flat, ${low} from floor, between left post and right post, flush with front of posts
place bar-2 across, flat, ${gap} above bar, between left post and right post, flush with front of posts
${more}`;

describe("a finger is caught from 5/16 to 1 inch (ASTM F1148, from memory)", () => {
  test.each([
    ['19/64"', []],
    ['5/16"', [["finger", 0.3125, 27, 0]]],
    ['1"', [["finger", 1, 27, 0]]],
    ['1-1/64"', []],
  ])("slats %s apart", (gap, found) => {
    expect(traps(slats(gap))).toEqual(found);
  });

  test("it is a hint", () => {
    expect(codes(slats('1/2"'))).toEqual(["finger hint"]);
  });

  test("gaps of a row are told once", () => {
    expect(traps(slats('1/2"', "", 5))).toEqual([["finger", 0.5, 27, 3]]);
  });
});

describe("a head is caught over 3-1/2 and under 9 inches (playground guidance, from memory)", () => {
  test.each([
    ['3-1/2"', []],
    ['3-33/64"', [["head", 3.515625, 30, 0]]],
    ['8-63/64"', [["head", 8.984375, 30, 0]]],
    ['9"', []],
  ])("bars %s apart", (gap, found) => {
    expect(traps(window(gap, '30"'))).toEqual(found);
  });

  test.each([
    ["157.4mm", []],
    ["157.5mm", [["head", 4, 6.200787, 0]]],
  ])("a body needs 6.2 inches the other way: %s", (long, found) => {
    expect(traps(window('4"', long))).toEqual(found);
  });

  test("a hole that is found by all four of its sides is told once, by the narrower way", () => {
    expect(traps(window('8"', '7"'))).toEqual([["head", 7, 8, 0]]);
  });

  test("an opening that nothing closes at its ends is let be", () => {
    const open = `part bar of 2x4, length 30"\npart foot of 2x4, length 12"
place foot upright, wide face front, on floor, 14" from left, 0 from front
place bar across, flat, on foot, 0 from left, 0 from front
place bar across, flat, 5" above foot, 0 from left, 0 from front`;
    expect(traps(open)).toEqual([]);
  });
});

describe("what closes an opening", () => {
  const behind = (far: string, thick = '1-1/2"'): string => `part panel of panel-wood, length 30"
stock panel-wood, actual ${thick} x 20"
place panel across, flat, ${far} above slats, flush with left of battens, flush with front of battens`;

  test.each([
    ['31/64"', []],
    ['1/2"', ["finger"]],
  ])("a panel %s behind a gap keeps a finger out, or not", (far, found) => {
    const caught = traps(slats('1/2"', behind(far)))
      .filter(([, , long]) => long === 27)
      .map(([what]) => what);
    expect(caught).toEqual(found);
  });

  test("the ground right under it does too", () => {
    expect(
      traps('part slat of 1x4, length 30"\nplace slat across, flat, on floor, 3 deep, 1/2" apart'),
    ).toEqual([]);
  });

  test("a board behind that leaves less than 5/16 of it open", () => {
    // The gap is 3/4 wide; a lath under it leaves 1/4 or 3/8 at its side.
    const lath = (at: string): string =>
      slats(
        '3/4"',
        `stock lath-wood, actual 3/4" x 3/4"
part lath of lath-wood, length 27"
place lath across, flat, under slats, 1-1/2" from left, ${at} from front`,
      );
    expect(traps(lath('3-3/4"')).filter(([, gap]) => gap === 0.75)).toEqual([]);
    expect(traps(lath('3-7/8"')).filter(([, gap]) => gap === 0.75)).toEqual([["finger", 0.75, 27, 0]]);
  });

  test.each([
    ['3-31/64"', []],
    ['3-1/2"', ["head"]],
  ])("a wall %s behind keeps a body out, or not", (far, found) => {
    const wall = `stock wall-wood, actual 1-1/2" x 40"
part wall of wall-wood, length 60"
place wall upright, wide face front, on floor, 0 from left, ${far} behind bar`;
    expect(
      traps(window('6"', '30"', '12"', wall))
        .filter(([what]) => what === "head")
        .map(([what]) => what),
    ).toEqual(found);
  });

  test("a piece between two others makes of their gap two", () => {
    // Three pickets 1-1/2 apart: the outer two stand 6-1/2 apart.
    expect(traps(slats('1-1/2"', "", 3))).toEqual([]);
  });

  test("soil in a box", () => {
    const box = (fill: string): string => `part side of 1x6, length 30"
part end of 1x6, length 11"
part plank of 1x4, length 28-1/2"
place side across, on edge, 6" from floor, 0 from left, 0 from front
place side across, on edge, 6" from floor, 0 from left, 11-3/4" from front
place end front to back, on edge, 6" from floor, 0 from left, between front side and back side
place end front to back, on edge, 6" from floor, 29-1/4" from left, between front side and back side
place plank across, flat, 6" from floor, between left end and right end, 3 deep, spread between front side and back side
box bed, walls side and end, bottom plank${fill}`;
    // (11 - 3 * 3.5) / 2 = 1/4: too narrow; two planks leave 4.
    expect(traps(box(""))).toEqual([]);
    const two = box("").replace("3 deep", "2 deep");
    expect(traps(two)).toEqual([["head", 4, 28.5, 0]]);
    expect(traps(box(", filled with soil").replace("3 deep", "2 deep"))).toEqual([]);
  });
});

describe("the ground and the reach of a child", () => {
  const pickets = (rails: string): string => `part rail of 2x4, length 32"
part picket of 1x4, length 36"
place picket upright, wide face front, on floor, 4 across, spread over rails
place rail across, on edge, behind pickets, ${rails}`;

  test("between two rails it is closed, down to the ground it is not", () => {
    // (32 - 4 * 3-1/2) / 3 = 6 wide; 36 - 4 - 4 - 2 * 3-1/2 = 21 high.
    expect(traps(pickets('4" in from bottom of pickets, 4" in from top of pickets, 2 high'))).toEqual([
      ["head", 6, 21, 2],
    ]);
    expect(traps(pickets('4" in from top of pickets'))).toEqual([]);
  });

  test.each([
    ['59-63/64"', 1],
    ['60"', 0],
  ])("a gap that begins %s up", (low, count) => {
    // The gap begins over the lower bar, which is 1-1/2 thick.
    expect(traps(window('1/2"', '30"', `${low} - 1-1/2"`))).toHaveLength(count);
  });
});

test("nothing is said where no children are near", () => {
  expect(run(`plan Yard thing\n${slats('1/2"')}`).worked.guarding.traps).toEqual([]);
});

test("what leans is listed as not checked", () => {
  const list = run(
    `${PLAN}part prop of 2x4, length 30"\nplace prop upright, wide face front, leaning 10° back, on floor`,
  ).worked.unchecked.map((u) => uncheckedText(u).what);
  expect(list).toContain("openings beside prop");
});

describe("other numbers and distances for a row", () => {
  const changes = (text: string) => {
    const { worked } = run(PLAN + text);
    return worked.guarding.traps.flatMap((trap) =>
      rowChanges(trap, worked).map(({ is, to, pieces, gap, count }) => [
        is,
        is === "count" ? to : round(to / IN),
        pieces,
        round(gap / IN),
        count?.to,
      ]),
    );
  };
  const spread = (part: string): string => `part rail of 2x4, length 32"
part picket ${part}of 1x4, length 36"
place picket upright, wide face front, on floor, 4 across, spread over rails
place rail across, on edge, behind pickets, 4" in from bottom of pickets, 4" in from top of pickets, 2 high`;

  test("more: 5 pickets still leave 3-5/8, 6 leave 2-1/5; fewer: 3 leave 10-3/4", () => {
    expect(changes(spread(""))).toEqual([
      ["count", 6, 6, 2.2, undefined],
      ["count", 3, 3, 10.75, undefined],
    ]);
  });

  test("a part's own count is told as well", () => {
    expect(changes(spread("4 "))).toEqual([
      ["count", 6, 6, 2.2, 6],
      ["count", 3, 3, 10.75, 3],
    ]);
  });

  test("distances on the plan's marks beside the band", () => {
    expect(changes(slats('1/2"', "", 4))).toEqual([
      ["apart", round(19 / 64), 4, round(19 / 64), undefined],
      ["apart", round(65 / 64), 4, round(65 / 64), undefined],
    ]);
  });

  test("none that would leave a slat on nothing", () => {
    // Set 1-1/64 apart, the last of four would begin 13-35/64 from the front.
    const ending = (long: string): string =>
      slats('1/2"', "", 4).replace('batten of 2x2, length 20"', `batten of 2x2, length ${long}`);
    expect(changes(ending('13-9/16"'))).toHaveLength(2);
    expect(changes(ending('13-1/2"')).map(([, to]) => to)).toEqual([round(19 / 64)]);
  });

  test("none that would put a slat into something", () => {
    // Set 1-1/64 apart, four slats reach 17-3/64 to the back.
    const stop = (at: string): string =>
      slats(
        '1/2"',
        `part stop of 1x2, length 30"\nplace stop across, flat, on battens, 0 from left, ${at} from front`,
        4,
      );
    expect(changes(stop('17-1/16"'))).toHaveLength(2);
    expect(changes(stop('17"')).map(([, to]) => to)).toEqual([round(19 / 64)]);
  });

  test("none where another line leans on the row", () => {
    const leaning = slats(
      '1/2"',
      'part lip of 1x2, length 30"\nplace lip across, on edge, on floor, in front of slats, flush with left of slats',
      4,
    );
    expect(changes(leaning).filter(([is]) => is === "apart")).toEqual([]);
  });
});
