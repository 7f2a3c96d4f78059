/** Whether water runs off: holes, gaps and slopes just on either side of each limit. */
import { describe, expect, test } from "vitest";
import type { Quantity } from "../../server/units";
import { run } from "../checks/plans";
import { box, codes, INDOORS, OUTDOORS } from "./plans";

const said = (text: string): string[] => codes(text).filter((c) => c.startsWith("water-stays"));
const tub = (long: string, drains: string, plan = OUTDOORS): string[] =>
  said(`${plan}box tub, inside ${long} x 12" x 10", filled with soil, drains by ${drains}`);

describe("holes", () => {
  // One in every 8": 32" take four, which is the least, and a little more takes five.
  test.each([
    ['24"', '3 holes of 1/2"', ["water-stays: few"]],
    ['24"', '4 holes of 1/2"', []],
    ['32"', '4 holes of 1/2"', []],
    ['32-1/16"', '4 holes of 1/2"', ["water-stays: few"]],
    ['32-1/16"', '5 holes of 1/2"', []],
    ['24"', '4 holes of 1/4"', []],
    ['24"', '4 holes of 3/16"', ["water-stays: small"]],
    // A metric drill for the quarter inch, and the next smaller one.
    ['24"', "4 holes of 6mm", []],
    ['24"', "4 holes of 5mm", ["water-stays: small"]],
  ])("a bottom %s long with %s", (long, drains, found) => {
    expect(tub(long, drains)).toEqual(found);
  });

  test("of a box that no water comes to are let be", () => {
    expect(tub('24"', '1 holes of 1/8"', INDOORS)).toEqual([]);
  });

  test("are counted anew in the cure, wide enough too", () => {
    const text = `${OUTDOORS}box tub, inside 60" x 12" x 10", filled with soil, drains by 2 holes of 1/8"`;
    const [problem] = run(text).problems;
    // 60 / 8 = 7.5
    expect(problem?.cures[0]?.edits[0]?.text).toBe('drains by 8 holes of 1/4"');
  });
});

describe("gaps that are to drain", () => {
  const gaps = ", drains through the gaps";
  test.each([
    ["none", '10-1/2"', "3 deep, tight", ["water-stays: tight"]],
    // Half a sixty-fourth is no gap in a shop.
    ['of 1/128"', '10-33/64"', '3 deep, 1/128" apart', ["water-stays: tight"]],
    ['of 3/32"', '10-11/16"', '3 deep, 3/32" apart', ["water-stays: narrow"]],
    ['of 1/8"', '10-3/4"', '3 deep, 1/8" apart', []],
  ])("%s", (_, deep, boards, found) => {
    expect(said(OUTDOORS + box(deep, boards, gaps))).toEqual(found);
  });

  test("are told once, though boards so tight would push as well", () => {
    const tight = (says: string): string[] => codes(OUTDOORS + box('10-1/2"', "3 deep, tight", says));
    expect(tight(gaps)).toEqual(["water-stays: tight"]);
    expect(tight(', drains by 6 holes of 1/2"')).toEqual(["gap-closes: tight"]);
  });

  test("the cure by hand: three boards ripped to have gaps that stay", () => {
    // Cedar, 5% from green to dry: from 12 to 30% a board grows to 1 / (1 - 0.05 x 18/30) = 1.030928 of its width.
    // Four gaps of 1/64" at the wettest: 3 w + 4 (0.030928 w + 1/64) = 10.5, so w = 3.34122; and gaps of 1/8" as built:
    // (10.5 - 4/8) / 3 = 3.33333, which is the less, and 3-5/16" the mark below.
    const [problem] = run(OUTDOORS + box('10-1/2"', "3 deep, tight", gaps)).problems;
    const [ripped] = problem!.cures.filter((c) => c.says === "narrower");
    const inches = (slot: unknown): number => (slot as Quantity).approx / 25.4;
    expect(inches(ripped?.slots.width)).toBeCloseTo(3.3125, 9);
    expect(inches(ripped?.slots.gap)).toBeCloseTo((10.5 - 3 * 3.3125) / 4, 9);
  });

  test("a shop that does not rip is not told to", () => {
    const text = `${OUTDOORS}${box('10-1/2"', "3 deep, tight", gaps)}tools\n  no ripping\n`;
    const [problem] = run(text).problems;
    expect(problem?.cures.map((c) => c.says)).toEqual(["holes"]);
  });
});

describe("a bottom on the floor", () => {
  const flat = (says: string, plan = OUTDOORS): string[] =>
    said(plan + box('11-1/4"', '3 deep, 3/8" apart', says, "floor"));

  test("has no way out below it outdoors", () => {
    expect(flat(", drains through the gaps")).toEqual(["water-stays: floor"]);
    expect(flat(', drains by 8 holes of 1/2"')).toEqual(["water-stays: floor"]);
    expect(flat("")).toEqual(["water-stays: floor"]);
    expect(flat(", drains through the gaps, grows basil", INDOORS)).toEqual([]);
  });

  test("has one as soon as something lies under it", () => {
    expect(said(OUTDOORS + box('11-1/4"', '3 deep, 3/8" apart', ", drains through the gaps"))).toEqual([]);
  });
});

describe("plywood in the rain", () => {
  const top = (stands: string, sheet = 'plywood 3/4"', width = '12"', plan = OUTDOORS): string[] =>
    said(`${plan}sheet top-ply, ${sheet}
part top of top-ply, length 30", width ${width}
place top across, flat, on floor, 0 from left, 0 from front${stands}`);
  // The arc tangent of 1/50 is 1.14576 degrees.
  test.each([
    ["level", "", ["water-stays: flat"]],
    ["a fall a little under 1 in 50", ", sloping 1.145° down to the front", ["water-stays: flat"]],
    ["a fall a little over 1 in 50", ", sloping 1.147° down to the front", []],
    ["the other way down", ", sloping 2° down to the right", []],
  ])("%s", (_, stands, found) => {
    expect(top(stands)).toEqual(found);
  });

  test("only of panels called plywood, with no side under 6 in, and outdoors", () => {
    expect(top("", "thickness 18mm")).toEqual([]);
    expect(top("", 'plywood 3/4"', '5-15/16"')).toEqual([]);
    expect(top("", 'plywood 3/4"', '6"')).toEqual(["water-stays: flat"]);
    expect(top("", 'plywood 3/4"', '12"', INDOORS)).toEqual([]);
  });

  test("under a roof of its own it stays dry", () => {
    const under = (reach: string): string[] =>
      said(`${OUTDOORS}sheet top-ply, plywood 3/4"
part top of top-ply, length 30", width 12"
part roof of 1x12, length ${reach}
place top across, flat, on floor, 0 from left, 0 from front
place roof across, flat, 10" above top, 0 from left, 0 from front`);
    // A board 1x12 is 11-1/4" wide: 16 in of it are half of 30 x 12.
    expect(under('15-15/16"')).toEqual(["water-stays: flat"]);
    expect(under('16-1/16"')).toEqual([]);
  });
});
