/** When problems of placed solids are raised, and when they are left alone. */
import { describe, expect, test } from "vitest";
import { uncheckedText } from "../../server/checks";
import { run } from "./plans";

const found = (text: string): string[] => [...new Set(run(text).problems.map((p) => p.code))].sort();
const unchecked = (text: string): string[] => run(text).worked.unchecked.map((u) => uncheckedText(u).what);

/** How much the cures of its problems would write. */
const edits = (text: string): number =>
  run(text).problems.flatMap((p) => p.cures.flatMap((c) => c.edits)).length;

const RAIL = 'part rail of 2x4, length 30"\nplace rail across, flat, on floor, 0 from left, 0 from front\n';
const block = (where: string): string =>
  `${RAIL}part block of 4x4, length 6"\nplace block across, flat, ${where}`;

describe("pieces in one place", () => {
  test.each([
    ["face to face", block("behind rail, flush with left of rail, on floor"), []],
    ["a hair into each other", block('3-63/128" from front, flush with left of rail, on floor'), []],
    [
      '1/32" into each other',
      block('3-15/32" from front, flush with left of rail, on floor'),
      ["pieces-overlap"],
    ],
    [
      "one inside another, and on nothing: told once",
      block('1/4" up, 1" from front, flush with left of rail'),
      ["pieces-overlap"],
    ],
  ])("%s", (_, text, problems) => {
    expect(found(text)).toEqual(problems);
  });

  test("two sides of a ring that does not close are told by the ring alone", () => {
    const wall =
      'part wall of 1x6, length 24", long point to long point, ends mitered 12° and beveled 43.08°';
    const bin = `${wall}\nring bin = 4 wall\nplace bin, on floor, 0 from left, 0 from front, leaning 15° out`;
    expect(found(bin)).toEqual(["ring-open"]);
  });

  test("the later line is blamed, whatever the order of the solids", () => {
    const text = block('3" from front, flush with left of rail, on floor');
    const [problem] = run(text).problems;
    expect(text.slice(problem!.at.start, problem!.at.end)).toBe("place block");
    expect(problem!.related.map((r) => text.slice(r.at.start, r.at.end))).toEqual(["place rail"]);
  });

  test("a distance that others lean on is not rewritten", () => {
    const text = block('3" from front, flush with left of rail, on floor');
    expect(edits(text)).toBe(1);
    expect(
      edits(
        `${text}\npart cap of 1x4, length 6"\nplace cap across, flat, on block, flush with left of block, flush with front of block`,
      ),
    ).toBe(0);
    expect(edits(`${text}\nmust overall depth of block at most 4" because the shelf is narrow`)).toBe(0);
  });
});

describe("in the air", () => {
  test.each([
    [
      "what stands in the ground",
      'part post of 4x4, length 60"\nplace post upright, wide face front, -24" up, 0 from left, 0 from front',
      [],
    ],
    [
      "a plan of which a line could not be worked out",
      `${block("on shelf, flush with left of rail, flush with front of rail")}\npart shelf of 1x4, length 30"`,
      ["place-undecided"],
    ],
  ])("%s", (_, text, problems) => {
    expect(found(text)).toEqual(expect.arrayContaining(problems));
    expect(found(text)).not.toContain("hangs-in-air");
  });

  test("a distance that lays it on what would then tip is not offered", () => {
    const text = (length: string): string => `part bearer of 2x4, length 24"
part slat of 1x4, length ${length}
part block of 4x4, length 6"
place bearer across, flat, on floor, 0 from left, 0 from front
place slat front to back, flat, on bearer, flush with left of bearer, flush with front of bearer
place block across, flat, 2-3/8" up, 0 from left, ${length === '9"' ? "5-1/2" : "0"}" from front`;
    expect([found(text('9"')), edits(text('9"'))]).toEqual([["hangs-in-air"], 0]);
    expect([found(text('4"')), edits(text('4"'))]).toEqual([["hangs-in-air"], 1]);
  });

  test("a thing fixed to the wall may be accepted", () => {
    const shelf =
      'part shelf of 1x8, length 30"\nplace shelf across, flat, 48" up, 0 from left, 0 from front\n';
    expect(found(shelf)).toEqual(["hangs-in-air"]);
    expect(found(`${shelf}accept hangs-in-air because it is fixed to the wall`)).toEqual([]);
    expect(found(`${shelf}accept hangs-in-air on shelf because it is fixed to the wall`)).toEqual([]);
  });
});

describe("the space and the way in", () => {
  const plan = (clause: string, rest: string): string => `plan A thing\n  ${clause}\n${rest}`;

  test("what sticks out to the left of the plan's own corner only counts by how wide it all is", () => {
    const arm = `${RAIL}part arm of 1x4, length 12"\nplace arm across, flat, on rail, 4" past left of rail, flush with front of rail`;
    expect(found(plan('space 34" wide', arm))).toEqual([]);
    expect(found(plan('space 33" wide', arm))).toEqual(["outside-space"]);
  });

  test.each([
    ['way in 4" wide', []],
    ['way in 2" wide, 3-1/2" high', []],
    ['way in 2" wide, 3" high', ["wont-go-in"]],
    ['way in 1" wide', ["wont-go-in"]],
    ['way in 4" wide, 4" high, 20" deep', ["wont-go-in"]],
  ])("a 2x4 of 30 inches and %s", (clause, problems) => {
    expect(found(plan(clause, RAIL))).toEqual(problems);
  });

  test("are not looked at where nothing is placed, and that is said", () => {
    const clauses = 'space 34" wide\n  way in 32" wide';
    const what = ["whether it fits the space", "whether it goes in by the way in"];
    expect(unchecked(plan(clauses, 'part rail 2 of 2x4, length 30"'))).toEqual(expect.arrayContaining(what));
    expect(unchecked(plan(clauses, RAIL)).filter((w) => what.includes(w))).toEqual([]);
  });
});

describe("room for a drill", () => {
  const rack = `${RAIL}part block of 4x4, length 6"
part slat of 1x4, length 12"
part top of 1x4, length 30"
place block across, flat, on rail, flush with left of rail, flush with front of rail
place block across, flat, on rail, flush with right of rail, flush with front of rail
place slat across, flat, on rail, 9" in from left of rail, flush with front of rail
place top across, flat, on blocks, flush with left of rail, flush with front of rail
`;
  const feet = 'fasten rail into block, 2 #8 x 3" at each crossing\n';
  const top = 'fasten top into block, 2 #8 x 1-5/8" at each crossing\n';
  const slat = 'fasten slat into rail, 2 #8 x 1-5/8" in all\n';
  const steps = (first: string, second: string): string =>
    `step Begin\n  uses ${first}\nstep Go on\n  uses ${second}\n`;

  test.each([
    ["the top joined before", feet + top + slat, ["no-room-to-drive"]],
    ["the top joined later", feet + slat + top, []],
    ["a top that steps put on later", feet + top + slat + steps("rail and block and slat", "top"), []],
    [
      "a top that steps put on before",
      feet + slat + top + steps("rail and block and top", "slat"),
      ["no-room-to-drive"],
    ],
    [
      "accepted on what is in the way",
      `${feet}${top}${slat}accept no-room-to-drive on top because we have a short driver`,
      [],
    ],
  ])("%s", (_, joints, problems) => {
    expect(found(rack + joints)).toEqual(problems);
  });
});

describe("screws", () => {
  const slatOn = (screws: string, part = '1x4, length 12"'): string =>
    `${RAIL}part slat of ${part}\nplace slat front to back, flat, on rail, 9" in from left of rail, flush with front of rail\nfasten slat into rail, ${screws}\n`;

  test.each([
    [
      'a #8 screw in the middle of a ripped 3/4" slat',
      slatOn('1 #8 x 1-5/8" at each crossing', '1x2, length 12", width 3/4"'),
      [],
    ],
    [
      "a #10 screw there",
      slatOn('1 #10 x 1-5/8" at each crossing', '1x2, length 12", width 3/4"'),
      ["screw-near-edge"],
    ],
    [
      "a bolt, which is bored for",
      `fastener carriage, bolt 3/8" x 2"\n${slatOn("1 carriage at each crossing", '1x2, length 12", width 3/4"')}`,
      [],
    ],
  ])("%s", (_, text, problems) => {
    expect(found(text)).toEqual(problems);
  });

  const post = (more: string): string =>
    `part post of 4x4, length 12"\npart cap-board of 1x4, length 10", ends mitered 45°\nring cap = 4 cap-board\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace cap flat, on post, flush with left of post, flush with front of post\nfasten cap-board into post, 1 #8 x 2" at each crossing\n${more}`;

  test("into an end are accepted on a part, on its ring, or not at all", () => {
    const end = (more: string): boolean => found(post(more)).includes("screw-in-end-grain");
    expect(end("")).toBe(true);
    expect(end("accept screw-in-end-grain on cap because it carries nothing")).toBe(false);
    expect(end("accept screw-in-end-grain on post because it carries nothing")).toBe(false);
    expect(end("accept screw-in-end-grain on cap-board because it carries nothing")).toBe(false);
  });

  test("leaned 30° cross the fibers", () => {
    const text = post("").replace("at each crossing", "at each crossing, angled 30°");
    expect(found(text)).not.toContain("screw-in-end-grain");
  });
});
