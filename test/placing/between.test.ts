/** Between two things, and names narrowed by words: whole inches, worked out beside each. */
import { describe, expect, test } from "vitest";
import { faultsOf, plan, where, whereIs } from "./plans";

/** A post 4" x 1" x 20" from (10, 20, 30) to (14, 21, 50). */
const POST = 'place post upright, wide face front, 10" from left, 20" from front, 30" up\n';

describe("between two things", () => {
  const two = `part mark of b, length 3"
place post upright, wide face left, 0 from left, 0 from front, on floor
place post upright, wide face left, 31" from left, 0 from front, on floor
`;
  test("along the direction in which they stand apart: from 1 to 31", () => {
    const rail =
      'place rail across, flat, between left posts and right posts, 1" in from front of posts, 5" up';
    expect(whereIs("rail", two + rail)).toEqual([
      [1, 31],
      [1, 5],
      [5, 6],
    ]);
    expect(whereIs("rail", two + rail.replace("left posts and right", "right posts and left"))).toEqual([
      [1, 31],
      [1, 5],
      [5, 6],
    ]);
  });

  test("things with names of their own, along the length of the board", () => {
    const other = `place post upright, wide face left, 0 from left, 0 from front, on floor
place mark upright, wide face left, 31" from left, 0 from front, on floor
place rail across, flat, between post and mark, flush with front of post, 5" up`;
    const text = `part mark of b, length 3"\n${other}`;
    expect(whereIs("rail", text)).toEqual([
      [1, 31],
      [0, 4],
      [5, 6],
    ]);
  });

  test("a stack of two between floor and ceiling boards", () => {
    const boards = `part lid of b, length 30"
place rail across, flat, 0 from left, 0 from front, on floor
place lid across, flat, 0 from left, 0 from front, 3" up
place slat across, flat, between rail and lid, 0 from left, 0 from front, 2 high, tight`;
    expect(where(boards, "slat")).toEqual({
      "slat / between rail and lid / 1": [
        [0, 12],
        [0, 4],
        [1, 2],
      ],
      "slat / between rail and lid / 2": [
        [0, 12],
        [0, 4],
        [2, 3],
      ],
    });
  });

  test("too short to touch both: 30 of wood in 31 of room", () => {
    const apart = two.replace('31" from left', '32" from left');
    const text = `${apart}place rail across, flat, between left posts and right posts, flush with front of posts, 5" up`;
    const loose = plan(text).worked.faults.find((f) => f.kind === "loose")!;
    expect(loose).toMatchObject({ subject: "rail", axis: 0, first: "left posts", second: "right posts" });
    expect(loose.kind === "loose" && loose.gap.approx).toBeCloseTo(25.4, 9);
  });

  test.each([
    ['31-1/64"', []],
    ['31-1/32"', ["loose"]],
    ['30-3/4"', []],
  ])("a room to %s", (to, faults) => {
    const text = `${two.replace('31"', to)}place rail across, flat, between left posts and right posts, flush with front of posts, 5" up`;
    expect(faultsOf(text)).toEqual(faults);
  });
});

describe("names narrowed by words", () => {
  const four = 'place post upright, wide face front, on floor, at each corner of 40" x 20"\n';
  test.each([
    // Posts from 0 to 4 and 36 to 40, 0 to 1 and 19 to 20.
    [
      "front posts",
      [
        [0, 40],
        [0, 1],
      ],
    ],
    [
      "back posts",
      [
        [0, 40],
        [19, 20],
      ],
    ],
    [
      "left posts",
      [
        [0, 4],
        [0, 20],
      ],
    ],
    [
      "right posts",
      [
        [36, 40],
        [0, 20],
      ],
    ],
    [
      "front left post",
      [
        [0, 4],
        [0, 1],
      ],
    ],
    [
      "right back post",
      [
        [36, 40],
        [19, 20],
      ],
    ],
    [
      "posts",
      [
        [0, 40],
        [0, 20],
      ],
    ],
  ])("%s", (thing, [x, y]) => {
    const spans = whereIs("slat", `${four}place slat across, flat, on ${thing}, centered on ${thing}`)!;
    expect(spans[0]).toEqual([(x![0]! + x![1]!) / 2 - 6, (x![0]! + x![1]!) / 2 + 6]);
    expect(spans[1]).toEqual([(y![0]! + y![1]!) / 2 - 2, (y![0]! + y![1]!) / 2 + 2]);
  });

  test("upper and lower, top and bottom", () => {
    const pile = 'place rail across, flat, 0 from left, 0 from front, on floor, 2 high, 10" apart\n';
    for (const [word, z] of [
      ["upper", 12],
      ["top", 12],
      ["lower", 1],
      ["bottom", 1],
    ] as const)
      expect(
        whereIs("slat", `${pile}place slat across, flat, on ${word} rail, 0 from left, 0 from front`),
      ).toEqual([
        [0, 12],
        [0, 4],
        [z, z + 1],
      ]);
  });

  test("the middle one of three, and of three above each other", () => {
    const row = 'place post upright, on floor, 0 from left, 0 from front, 3 across, 6" apart\n';
    // From 10 to 14.
    expect(whereIs("slat", `${row}place slat across, flat, on middle post, centered on middle post`)).toEqual(
      [
        [6, 18],
        [-1.5, 2.5],
        [20, 21],
      ],
    );
    const pile = 'place rail across, flat, 0 from left, 0 from front, on floor, 3 high, 6" apart\n';
    expect(
      whereIs("slat", `${pile}place slat across, flat, on middle rail, 0 from left, 0 from front`)![2],
    ).toEqual([8, 9]);
  });

  test("one alone is neither in front nor behind", () => {
    expect(faultsOf(`${POST}place slat across, flat, on front post, centered on post`)).toEqual(["unplaced"]);
  });
});
