/** Rows that fill a room with even gaps, and lines that begin where nothing says. Inches; a board is 1" x 4". */
import { describe, expect, test } from "vitest";
import { ifKnown } from "../../server/plan";
import { allWhere, evaluated, faultsOf, inch, plan, STOCK } from "./plans";

const BOARD = 'stock b, actual 1" x 4"\n';
const POSTS = 'place post upright, wide face front, on floor, at each corner of 40" x 20"\n';

/** Bottoms of the slats, which stand up the front of posts 20" high. */
const bottoms = (row: string): number[] =>
  Object.entries(
    allWhere(plan(`${POSTS}place slat across, on edge, in front of posts, flush with left of posts, ${row}`)),
  )
    .filter(([id]) => id.startsWith("slat"))
    .map(([, spans]) => spans[2][0]);

describe("a row held at both its ends", () => {
  test("has even gaps: three of 4 in 20 leave two gaps of 4", () => {
    expect(bottoms("3 high, on floor, flush with top of posts")).toEqual([0, 8, 16]);
  });

  test("whichever is said first, and from insets too: from 1 to 19, two gaps of 3", () => {
    expect(bottoms('1" in from top of posts, 3 high, 1" in from bottom of posts')).toEqual([1, 8, 15]);
  });

  test("four leave three gaps of 1-1/3", () => {
    const row = bottoms("4 high, on floor, flush with top of posts");
    expect(row.map((n) => n.toFixed(4))).toEqual(["0.0000", "5.3333", "10.6667", "16.0000"]);
  });

  test("is still in dispute when it also says how far apart", () => {
    expect(
      faultsOf(
        `${POSTS}place slat across, on edge, in front of posts, flush with left of posts, 3 high, tight, on floor, flush with top of posts`,
      ),
    ).toEqual(["disputed"]);
  });
});

describe("a row spread over one thing", () => {
  test("goes from its one side to its other", () => {
    expect(bottoms("3 high, spread over posts")).toEqual([0, 8, 16]);
  });

  test("or a gap from them: 8 left in four gaps of 2", () => {
    expect(bottoms("3 high, spread over posts, with a gap at each end")).toEqual([2, 8, 14]);
  });

  test("between the floor and a thing above", () => {
    const lid = `${POSTS}place rail across, flat, on posts, flush with left of posts, flush with front of posts\n`;
    const all = allWhere(
      plan(
        `${lid}place slat across, on edge, in front of posts, flush with left of posts, 3 high, spread between floor and rail`,
      ),
    );
    expect(Object.entries(all).flatMap(([id, s]) => (id.startsWith("slat") ? [s[2][0]] : []))).toEqual([
      0, 8, 16,
    ]);
  });
});

describe("a line that does not say where it begins", () => {
  test("begins at the left and the front when it is the first", () => {
    const all = allWhere(
      plan(
        "place rail across, flat, on floor\nplace slat across, flat, on rail, flush with left of rail, flush with front of rail",
      ),
    );
    expect(Object.values(all)).toEqual([
      [
        [0, 30],
        [0, 4],
        [0, 1],
      ],
      [
        [0, 12],
        [0, 4],
        [1, 2],
      ],
    ]);
  });

  test("is open when another line already says a distance from there", () => {
    expect(
      faultsOf(
        'place rail across, flat, on floor, 2" from left, 0 from front\nplace slat across, flat, on floor, behind rail',
      ),
    ).toEqual(["undecided"]);
  });

  test("stands on the floor when it is an assembly whose pieces do", () => {
    const all = allWhere(
      evaluated(`${STOCK}assembly gable
  place post upright, wide face front, on floor
  place rail across, flat, on post, flush with left of post, flush with front of post
place gable`),
    );
    expect(Object.values(all).map((s) => s[2])).toEqual([
      [0, 20],
      [20, 21],
    ]);
  });
});

describe("how large a thing is that stands in one place", () => {
  test("does not depend on where that is", () => {
    const { worked } = evaluated(`${BOARD}part leg of b, length 20"
part tie of b, length overall width of legs
assembly frame
  place leg upright, wide face front, on floor, 2 across, 10" apart
place frame, right of post, 0 from front
place tie across, flat, on frame, flush with left of frame, flush with front of frame
part post of b, length 12"
place post upright, wide face front, on floor, left of tie-stop, 0 from front
part tie-stop of b, length overall width of frame
place tie-stop across, flat, on floor, 50" from left, behind post`);
    expect(worked.faults).toEqual([]);
    // Two legs of 4 and 10 between.
    expect(inch(ifKnown(worked.parts.get("tie")!.length)!.approx)).toBe(18);
    expect(inch(ifKnown(worked.parts.get("tie-stop")!.length)!.approx)).toBe(18);
  });
});
