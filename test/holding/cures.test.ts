/** What a problem says would help, done to the plan by hand, does help. */
import { describe, expect, test } from "vitest";
import { problemText } from "../../server/checks";
import { codesOf, run } from "../checks/plans";

/** The cures of a problem, as they are read. */
function curesOf(text: string, code: string): string[] {
  const { problems, worked } = run(text);
  const found = problems.filter((p) => p.code === code);
  expect(found).toHaveLength(1);
  return found[0]!.cures.map((c) => problemText(code, c, worked.settings.display));
}

/** Told before, and neither it nor another of these after. */
function cured(before: string, code: string, after: string): void {
  expect(codesOf(before)).toContain(code);
  const six = [
    "too-weak",
    "slat-sags",
    "side-bows",
    "screw-overloaded",
    "load-has-no-path",
    "foot-over-load",
  ];
  expect(codesOf(after).filter((c) => six.includes(c) || c === "pieces-overlap")).toEqual([]);
}

const slat = (board: string, long: number, load: number, more = ""): string => `plan Slat
  indoors
part rail of 2x4, length 12"
part slat of ${board}, length ${long}"
place rail front to back, on edge, on floor, 0 from left, 0 from front
place rail front to back, on edge, on floor, ${long - 1.5}" from left, 0 from front
${more}place slat across, flat, on rails, 0 from left, 0 from front
load slat ${load} lb
`;

describe("a board that is too weak", () => {
  const weak = slat("1x6", 60, 60);
  test("holds over one rail more in its middle", () => {
    expect(curesOf(weak, "too-weak").join("\n")).toContain(
      'Hold it up in one more place, in the middle of its longest span: 29-1/4" is then left',
    );
    const more = slat(
      "1x6",
      60,
      60,
      'place rail front to back, on edge, on floor, 29-1/4" from left, 0 from front\n',
    );
    cured(weak, "too-weak", more);
  });

  test("holds when it is cut from the board that is named", () => {
    expect(curesOf(weak, "too-weak").join("\n")).toContain("Cut slat from 2x6 instead.");
    cured(weak, "too-weak", slat("2x6", 60, 60));
  });

  test("as a seat, under what is counted for somebody", () => {
    const seat = (board: string): string => `plan Seat
  outdoors
part leg of 4x4, length 15-1/4"
part top of ${board}, length 40"
place leg upright, wide face front, on floor, at each corner of 40" x 7-1/4"
place top across, flat, on legs, flush with left of legs, flush with front of legs
`;
    expect(curesOf(seat("1x8"), "too-weak").join("\n")).toContain("Cut top from 2x8 instead.");
    cured(seat("1x8"), "too-weak", seat("2x8"));
  });

  test("the heavier board carries itself too: no cure that holds only without its own weight", () => {
    // Loads from where a 2x6 will do to where it will not: wherever it is named, it does.
    let named = 0;
    for (let load = 110; load < 145; load += 0.5) {
      if (!curesOf(slat("1x6", 60, load), "too-weak").some((c) => c.includes("2x6"))) continue;
      named++;
      expect(codesOf(slat("2x6", 60, load))).not.toContain("slat-sags");
    }
    expect(named).toBeGreaterThan(5);
    expect(named).toBeLessThan(70);
  });
});

describe("a board that sags", () => {
  const limp = slat("1x6", 48, 24);
  test("is stiff over one rail more, or as a thicker board", () => {
    const cures = curesOf(limp, "slat-sags");
    expect(cures.join("\n")).toContain("Hold it up in one more place");
    cured(
      limp,
      "slat-sags",
      slat("1x6", 48, 24, 'place rail front to back, on edge, on floor, 23-1/4" from left, 0 from front\n'),
    );
    const board = cures.join("\n").match(/Cut slat from (\S+) instead/)![1]!;
    cured(limp, "slat-sags", slat(board, 48, 24));
  });
});

const bed = (board: string, deep: string, screw: string, more = ""): string => `plan Bed
  outdoors
part post of 4x4, length 5-1/2"
part side of ${board}, length 96"
part end of 2x6, length 24"
place post upright, wide face front, on floor, at each corner of 93" x 24"
place side across, on edge, in front of posts, centered left to right on posts, flush with top of posts
place side across, on edge, behind posts, centered left to right on posts, flush with top of posts
place end front to back, on edge, left of posts, flush with front of posts, flush with top of posts
place end front to back, on edge, right of posts, flush with front of posts, flush with top of posts
fasten side and end into post, 3 ${screw} at each crossing
${more}box bed, walls side and end
  filled with soil ${deep}
`;
const TIED = `part upright of 2x4, length 4-3/4"
part tie of 1x4, length 24"
place upright upright, wide face front, on floor, behind front side, 44-3/4" from left of front side
place upright upright, wide face front, on floor, in front of back side, 44-3/4" from left of front side
place tie front to back, flat, on uprights, behind front side, flush with left of uprights
fasten side into upright, 3 #10 x 2-1/4" at each crossing
fasten tie into upright end, 2 #8 x 2" at each crossing
`.replaceAll('44-3/4" from left of front side', "centered left to right on front side");

describe("a wall that bows, or is too weak", () => {
  test.each([
    ["side-bows", '3" deep', "5/4x6"],
    ["too-weak", '5" deep', "2x6"],
  ])(
    "%s: an upright in the middle that is tied to the other side, or a thicker board",
    (code, deep, board) => {
      const before = bed("1x6", deep, '#10 x 3"');
      const cures = curesOf(before, code).join("\n");
      expect(cures).toContain(
        "Fasten an upright on it in the middle of its longest span, and tie that to the other side",
      );
      cured(before, code, bed("1x6", deep, '#10 x 3"', TIED));
      expect(cures).toContain(`Cut side from ${board} instead.`);
      cured(before, code, bed(board, deep, '#10 x 3-1/2"'));
    },
  );
});

describe("screws that are asked for too much", () => {
  const hung = (screws: string, load: number, board = "2x6"): string => `plan Hung
  indoors
part post of 2x4, length 40"
part rail of ${board}, length 36"
place post upright, wide face front, on floor, at each corner of 36" x 6"
place rail across, on edge, in front of posts, flush with left of posts, flush with top of posts
fasten rail into post, ${screws} at each crossing, pilot 1/8"
load rail ${load} lb spread
`;

  test("are enough when there are as many as it says, and one less are not", () => {
    const before = hung('2 #8 x 2-1/2"', 300);
    expect(curesOf(before, "screw-overloaded")).toContain("Use 4 screws there instead of 2.");
    expect(codesOf(hung('3 #8 x 2-1/2"', 300))).toContain("screw-overloaded");
    cured(before, "screw-overloaded", hung('4 #8 x 2-1/2"', 300));
  });

  test("are enough in the size it says", () => {
    const before = hung('2 #8 x 1-1/2"', 150, "1x6");
    expect(curesOf(before, "screw-overloaded")).toContain(
      'Use #8 x 2" screws instead: as many hold it then.',
    );
    cured(before, "screw-overloaded", hung('2 #8 x 2"', 150, "1x6"));
  });

  test("are not needed where the piece lies on something", () => {
    const before = hung('2 #8 x 2-1/2"', 300);
    expect(curesOf(before, "screw-overloaded").at(-1)).toContain("Or let rail lie on something");
    const after = before
      .replace(
        "in front of posts, flush with left of posts, flush with top of posts",
        "on posts, flush with front of posts, flush with left of posts",
      )
      .replace(/fasten.*\n/, "");
    cured(before, "screw-overloaded", after);
  });
});

test("what nothing holds holds when it is fastened to what is named", () => {
  const before = `plan Hook
  indoors
part leg of 2x4, length 30"
part side of 1x8, length 30"
part hook-board of 1x4, length 24"
place leg upright, wide face front, on floor, at each corner of 30" x 14"
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs
place hook-board across, on edge, in front of side, centered left to right on side, flush with top of side
fasten side into leg, 3 #8 x 2" at each crossing
load hook-board 12 lb spread
`;
  expect(curesOf(before, "load-has-no-path")).toEqual([
    "Fasten hook-board to side, or let it lie on something.",
  ]);
  cured(before, "load-has-no-path", `${before}fasten hook-board into side, 4 #8 x 1-1/4" along it\n`);
});

test("a foot that presses too hard: as many feet as it says carry all of it within the limit", () => {
  const plan = (places: string): string => `plan Foot
  foot limit 143 lb by the porch's builder
part leg of 4x4, length 30"
part plank of 2x12, length 24"
place leg upright, wide face front, on floor, ${places}
place plank across, flat, on legs, 0 from left, 0 from front
load plank 620 lb spread
`;
  const before = plan('at each corner of 24" x 11-1/4"');
  const [cure] = curesOf(before, "foot-over-load");
  const { feet } = run(before).worked.holding;
  const all = feet.reduce((sum, f) => sum + f.steady, 0) / 4.4482216152605;
  // 652 lb and four feet: five would be 130 lb each.
  expect(Math.ceil(all / 143)).toBe(5);
  expect(cure).toContain("5 feet as heavy would stay within the limit");
});
