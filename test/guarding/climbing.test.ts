/** Footholds beside a guard, by hand: just under, at and just over each limit. */
import { describe, expect, test } from "vitest";
import { problemText, uncheckedText } from "../../server/checks";
import { run } from "../checks/plans";

const CODE = "climbable-at-guard";
const PLAN = 'plan Yard thing\n  units inches to 1/64"\n  near a guard\n';
const IN = 25.4;

const problemsIn = (text: string) => run(PLAN + text).problems.filter((p) => p.code === CODE);
/** From and to what height a child climbs, in inches; empty where nothing is climbed. */
const heights = (text: string): number[] => {
  const { climb } = run(PLAN + text).worked.guarding;
  return climb ? [round(climb.lowest.from / IN), round(climb.highest.to / IN)] : [];
};
const round = (x: number): number => Math.round(x * 1e9) / 1e9;
const told = (text: string): string => {
  const plan = run(PLAN + text);
  const problem = plan.problems.find((p) => p.code === CODE)!;
  return problemText(CODE, problem, plan.worked.settings.display);
};

const edged = (thick: string, high: string, length = '30"'): string =>
  `stock curb-board, actual ${thick} x ${high}\npart curb of curb-board, length ${length}\nplace curb across, on edge, on floor`;
const post = (length: string): string =>
  `part post of 4x4, length ${length}\nplace post upright, wide face front, on floor`;

describe("a top counts over 5 inches and up to 36 (National Building Code of Canada 9.8.8.6, from memory)", () => {
  test.each([
    ['4-63/64"', 0],
    ['5"', 0],
    ['5-1/64"', 1],
    ['20"', 1],
    ['36"', 1],
    ['36-1/64"', 0],
  ])("a board %s high", (high, count) => {
    expect(problemsIn(edged('1-1/2"', high))).toHaveLength(count);
  });

  test("what is left of a guard is its height less the highest foothold", () => {
    // 36 - 20-1/4 and 42 - 20-1/4.
    expect(told(edged('1-1/2"', '20-1/4"'))).toMatch(
      /20-1\/4" up, .* 15-3\/4" left of a guard of 36", or 21-3\/4" of one of 42"/,
    );
  });

  test("nothing is said where the plan stands near no guard", () => {
    expect(run(`plan Curb\n${edged('1-1/2"', '20"')}`).problems.filter((p) => p.code === CODE)).toEqual([]);
  });
});

describe("a ledge counts from 15 mm by 1-1/2 inches", () => {
  test.each([
    ["14.9mm", '30"', 0],
    ["15mm", '30"', 1],
    ["20mm", '1-31/64"', 0],
    ["20mm", '1-1/2"', 1],
  ])("%s deep and %s long", (thick, length, count) => {
    expect(problemsIn(edged(thick, '10"', length))).toHaveLength(count);
  });
});

describe("toes need 20 mm over it", () => {
  // The upper block ends over 36 inches up, so that only the top under it can be stood on.
  const stacked = (gap: string): string =>
    `stock block-wood, actual 5-1/2" x 5-1/2"\npart low of block-wood, length 20"\npart high of block-wood, length 18"\n` +
    `place low upright, wide face front, on floor\nplace high upright, wide face front, ${gap} above low, flush with left of low, flush with front of low`;

  test.each([
    ["0mm", []],
    ["19.9mm", []],
    ["20mm", [20, 20]],
  ])("a gap of %s", (gap, found) => {
    expect(heights(stacked(gap))).toEqual(found);
  });
});

describe("a top counts up to a slope of 1 in 2, which is 26.57 degrees", () => {
  const sloped = (angle: string): string =>
    `part board of 1x12, length 40"\nplace board across, flat, sloping ${angle} down to the right, on floor`;

  test("at 26.5 degrees from 5 inches on", () => {
    const [from, to] = heights(sloped("26.5°"));
    expect(from).toBeCloseTo(5, 6);
    // 40 sin 26.5° is the far end's rise, and the board's thickness stands over it.
    expect(to).toBeCloseTo(
      40 * Math.sin((26.5 * Math.PI) / 180) + 0.75 * Math.cos((26.5 * Math.PI) / 180),
      6,
    );
  });

  test("at 26.6 degrees not", () => {
    expect(heights(sloped("26.6°"))).toEqual([]);
  });
});

describe("what is covered or closed in is no foothold", () => {
  test("of boards on each other only the upper one has a top", () => {
    const wall = 'part board of 2x6, length 30"\nplace board across, on edge, on floor, 3 high, tight';
    expect(heights(wall)).toEqual([16.5, 16.5]);
  });

  // A cupboard 40 inches high round a shelf at 12; its lid lies over 36.
  const cupboard = (front: string): string => `stock panel-board, actual 3/4" x 24"
stock shelf-board, actual 3/4" x 22-1/2"
part side of panel-board, length 40"
part back of panel-board, length 40"
part lid of panel-board, length 24"
part shelf of shelf-board, length 22-1/2"
place side upright, wide face left, on floor, 0 from left, 0 from front
place side upright, wide face left, on floor, 23-1/4" from left, 0 from front
place shelf across, flat, 12" from floor, 3/4" from left, 3/4" from front
place back upright, wide face front, on floor, 0 from left, 24" from front
place lid across, flat, on sides, 0 from left, 0 from front
${front}`;

  test("a shelf behind four walls and a lid is out of reach", () => {
    const front =
      'part door of panel-board, length 40"\nplace door upright, wide face front, on floor, 0 from left, in front of sides';
    expect(heights(cupboard(front))).toEqual([]);
  });

  test("without the door a foot comes in from the front", () => {
    expect(heights(cupboard(""))).toEqual([12.75, 12.75]);
  });
});

describe("the fill of a box", () => {
  const bed = (fill: string): string => `part side of 2x12, length 36"
part end of 2x12, length 15"
part ledger of 2x2, length 33"
place side across, on edge, on floor, 0 from left, 0 from front
place side across, on edge, on floor, 0 from left, 16-1/2" from front
place end front to back, on edge, on floor, 0 from left, between front side and back side
place end front to back, on edge, on floor, 34-1/2" from left, between front side and back side
place ledger across, flat, 6" from floor, behind front side, between left end and right end
box bed, walls side and end, filled with ${fill}`;

  test("is stood on, and buries what lies in it", () => {
    // The ledger's top is 7-1/2 up; the soil ends 2 below the rim at 11-1/4.
    expect(heights(bed('soil to 2" below rim'))).toEqual([9.25, 11.25]);
    expect(told(bed('soil to 2" below rim'))).toMatch(
      /^A child climbs from the fill of bed, 9-1\/4" up, to side/,
    );
  });

  test("of water is not", () => {
    expect(heights(bed('water to 2" below rim'))).toEqual([7.5, 11.25]);
  });

  test("whose walls are not placed is listed as not checked", () => {
    const plan = run(`${PLAN}${post('20"')}\nbox tub, inside 20" x 20" x 12", filled with soil`);
    const list = plan.worked.unchecked.map((u) => uncheckedText(u));
    expect(list).toContainEqual({
      what: "whether the fill of tub is a foothold",
      why: "it is not known how high the walls of tub hold it",
    });
  });
});

test("many footholds are one message, which is accepted on what it names", () => {
  const steps = `${post('12"')}\npart beam of 4x4, length 24"\nplace beam upright, wide face front, on floor, 12" from left, 0 from front`;
  const two = problemsIn(steps.replace("on floor\n", "on floor, 0 from left, 0 from front\n"));
  expect(two).toHaveLength(1);
  expect(two[0]!.about).toEqual(["post", "beam"]);
  const accepting = "\naccept climbable-at-guard on beam because the gate is locked";
  const apart = steps.replace("on floor\n", "on floor, 0 from left, 0 from front\n");
  expect(problemsIn(apart + accepting)).toEqual([]);
});

describe("its ways out are true", () => {
  test("as much lower as they say, or a hair more than as much higher, there is none", () => {
    const { climb } = run(PLAN + post('20"')).worked.guarding;
    const { up, down } = climb!.oneLevel!;
    expect([up / IN, down / IN]).toEqual([16, 15]);
    expect(problemsIn(post('5"'))).toEqual([]);
    expect(problemsIn(post('36-1/64"'))).toEqual([]);
  });

  test("none of them takes the clause out", () => {
    for (const cure of problemsIn(post('20"'))[0]!.cures) expect(cure.edits).toEqual([]);
  });
});

test("that guards are for local code to judge always stands on the not-checked list", () => {
  const whys = run(PLAN + post('4"')).worked.unchecked.map((u) => uncheckedText(u).why);
  expect(whys).toContain("guards, and what stands beside them, are for local code to judge");
});

test("without placed pieces climbing is not checked", () => {
  const list = run(`${PLAN}part post 4 of 4x4, length 20"`).worked.unchecked.map(
    (u) => uncheckedText(u).what,
  );
  expect(list).toContain("whether it can be climbed beside the guard");
});
