/** Rows, corners and mirror images: how many, how far apart, and where the whole block stands. */
import { describe, expect, test } from "vitest";
import { evaluated, faultsOf, plan, type Spans, STOCK, spansOf, where } from "./plans";

type Side = readonly [number, number];
/** The spans of a part's pieces along one direction, in the order of their row. */
const along = (axis: 0 | 1 | 2, lines: string, part = "slat"): Side[] =>
  plan(lines)
    .worked.pieces.all.filter((p) => p.part === part)
    .map((p) => spansOf(p)[axis]);
const from =
  (...starts: readonly number[]): ((size: number) => Side[]) =>
  (size) =>
    starts.map((s) => [s, s + size]);

/** A slat front to back and flat is 4" x 12" x 1". */
const SLAT = "place slat front to back, flat";
const X = ", 0 from left";
const Y = ", 0 from front";
const Z = ", on floor";

describe("a number in a row", () => {
  test.each([
    // Pitches of 4, 4 + 3 and 16.
    ["4 across, tight", 0, [0, 4, 8, 12], 4],
    ['4 across, 3" apart', 0, [0, 7, 14, 21], 4],
    ['4 across, 16" on center', 0, [0, 16, 32, 48], 4],
    ["3 deep, tight", 1, [0, 12, 24], 12],
    ['3 deep, 1" apart', 1, [0, 13, 26], 12],
    ["2 high, tight", 2, [0, 1], 1],
    ['3 high, 5" on center', 2, [0, 5, 10], 1],
    ["tight, 3 high", 2, [0, 1, 2], 1],
  ] as const)("%s", (pattern, axis, starts, size) => {
    expect(along(axis, `${SLAT}${X}${Y}${Z}, ${pattern}`)).toEqual(from(...starts)(size));
  });

  test("the row is placed as one block: four of 4 apart by 3 are 25 long", () => {
    const post = 'place post upright, wide face front, 50" from left, 0 from front, on floor\n';
    // The right side of the last at 54, of the post: so the first begins at 54 - 25.
    expect(along(0, `${post}${SLAT}${Y}${Z}, flush with right of post, 4 across, 3" apart`)).toEqual(
      from(29, 36, 43, 50)(4),
    );
    // The middle of the block at 52.
    expect(along(0, `${post}${SLAT}${Y}${Z}, centered left to right on post, 4 across, 3" apart`)).toEqual(
      from(39.5, 46.5, 53.5, 60.5)(4),
    );
    // Hanging from the top, at 20.
    expect(along(2, `${post}${SLAT}${X}${Y}, flush with top of post, 3 high, tight`)).toEqual(
      from(17, 18, 19)(1),
    );
  });

  test("two rows in one line", () => {
    const pieces = where(`${SLAT}${X}${Y}${Z}, 3 across, 1" apart, 2 high, 4" apart`);
    expect(pieces).toEqual({
      "slat / on floor / 1 / 1": [
        [0, 4],
        [0, 12],
        [0, 1],
      ],
      "slat / on floor / 2 / 1": [
        [5, 9],
        [0, 12],
        [0, 1],
      ],
      "slat / on floor / 3 / 1": [
        [10, 14],
        [0, 12],
        [0, 1],
      ],
      "slat / on floor / 1 / 2": [
        [0, 4],
        [0, 12],
        [5, 6],
      ],
      "slat / on floor / 2 / 2": [
        [5, 9],
        [0, 12],
        [5, 6],
      ],
      "slat / on floor / 3 / 2": [
        [10, 14],
        [0, 12],
        [5, 6],
      ],
    });
  });
});

/** Posts from 0 to 1 and from 49 to 50: 48 between them. */
const TWO = `place post upright, wide face left, 0 from left, 0 from front, on floor
place post upright, wide face left, 49" from left, 0 from front, on floor
`;

describe("spread and as many as fit, over a span of 48 from 1 to 49", () => {
  test.each([
    // 48 - 7 * 4 is 20, in six gaps.
    [
      "7 across, spread between left posts and right posts",
      [0, 1, 2, 3, 4, 5, 6].map((i) => 1 + i * (4 + 20 / 6)),
    ],
    ["2 across, spread between left posts and right posts", [1, 45]],
    ["1 across, spread between left posts and right posts", [23]],
    [
      "12 across, spread between left posts and right posts",
      [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11].map((i) => 1 + 4 * i),
    ],
    // 12 of 4 are 48.
    [
      "as many as fit, tight, between left posts and right posts",
      [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11].map((i) => 1 + 4 * i),
    ],
    // n * 4 + (n - 1) * 3 at most 48: 7 make 46.
    ['as many as fit, 3" apart, between left posts and right posts', [1, 8, 15, 22, 29, 36, 43]],
    // (n - 1) * 16 + 4 at most 48: 3 make 36.
    ['as many as fit, 16" on center, between left posts and right posts', [1, 17, 33]],
    // Gaps of at most 4 take 7 boards, whose gaps are then 20 / 6; 6 would leave 24 / 5.
    [
      'as many as fit, at most 4" apart, spread between left posts and right posts',
      [0, 1, 2, 3, 4, 5, 6].map((i) => 1 + i * (4 + 20 / 6)),
    ],
    [
      'as many as fit, at most 4" apart, between left posts and right posts',
      [0, 1, 2, 3, 4, 5, 6].map((i) => 1 + i * (4 + 20 / 6)),
    ],
    [
      'spread between left posts and right posts, as many as fit, at most 4" apart',
      [0, 1, 2, 3, 4, 5, 6].map((i) => 1 + i * (4 + 20 / 6)),
    ],
  ])("%s", (pattern, starts) => {
    const found = along(0, `${TWO}${SLAT}${Y}${Z}, ${pattern}`);
    expect(found.length).toBe(starts.length);
    found.forEach(([low, high], i) => {
      expect(low).toBeCloseTo(starts[i]!, 6);
      expect(high - low).toBeCloseTo(4, 6);
    });
  });

  test("spread in two directions", () => {
    const floor = `part side of b, length 40"
place side upright, wide face left, 0 from left, 0 from front, on floor
place side upright, wide face left, 0 from left, 48" from front, on floor
`;
    const text = `${floor}place slat front to back, flat, on floor, 5 across, 1" apart, 3 deep, spread between front sides and back sides, 0 from left`;
    // 4 to 48 is 44: 44 - 3 * 12 is 8, in two gaps.
    expect([...new Set(along(1, text).map(([a]) => a))]).toEqual([4, 20, 36]);
    expect([...new Set(along(0, text).map(([a]) => a))]).toEqual([0, 5, 10, 15, 20]);
  });

  test('48" / 7 stays a fraction: eighth starts come back to whole inches', () => {
    const wide = TWO.replace('49"', '61"');
    const { placing } = plan(
      `${wide}${SLAT}${Y}${Z}, 8 across, spread between left posts and right posts`,
    ).worked;
    const line = placing.linesOf("slat")[0]!;
    // 60 less 8 * 4 is 28, in seven gaps of 4: whole. With 7 across 32 in six gaps: 16/3.
    const row = placing.along(line, 0);
    expect(row.state === "known" && row.value.row.gap!.exact).toEqual({ n: 508n, d: 5n });
    const seven = plan(
      `${TWO.replace('49"', '77"')}${SLAT}${Y}${Z}, 8 across, spread between left posts and right posts, 0 from front`,
    ).worked.placing;
    const gap = seven.along(seven.linesOf("slat")[0]!, 0);
    // (76 - 32) / 7 inches is 44/7 of 25.4 mm.
    expect(gap.state === "known" && gap.value.row.gap!.exact).toEqual({ n: 44n * 127n, d: 7n * 5n });
    const last = gap.state === "known" ? gap.value.stretches.at(-1)!.high.exact : null;
    expect(last).toEqual({ n: 77n * 127n, d: 5n });
  });

  test("a row longer than its span", () => {
    const text = `${TWO}${SLAT}${Y}${Z}, 13 across, spread between left posts and right posts`;
    const fault = plan(text).worked.faults.find((f) => f.kind === "no-room")!;
    expect(fault).toMatchObject({ subject: "slat", why: { is: "row", count: 13, fits: { n: 12 } } });
    expect(faultsOf(text)).toEqual(["no-room"]);
  });

  test("as many as fit, and nothing says where", () => {
    expect(faultsOf(`${SLAT}${X}${Y}${Z}, as many as fit, 3" apart`)).toEqual(["room-unsaid"]);
  });
});

describe("corners", () => {
  test("outside to outside, from the plan's own left and front", () => {
    expect(where('place post upright, wide face front, on floor, at each corner of 40" x 20"')).toEqual({
      "post / front left": [
        [0, 4],
        [0, 1],
        [0, 20],
      ],
      "post / front right": [
        [36, 40],
        [0, 1],
        [0, 20],
      ],
      "post / back left": [
        [0, 4],
        [19, 20],
        [0, 20],
      ],
      "post / back right": [
        [36, 40],
        [19, 20],
        [0, 20],
      ],
    });
  });

  test("of a thing", () => {
    const rail = 'place rail across, flat, 5" from left, 6" from front, on floor\n';
    // The rail lies from (5, 6) to (35, 10).
    expect(
      Object.values(
        where(`${rail}place post upright, wide face left, on rail, at each corner of rail`, "post"),
      ),
    ).toEqual([
      [
        [5, 6],
        [6, 10],
        [1, 21],
      ],
      [
        [34, 35],
        [6, 10],
        [1, 21],
      ],
      [
        [5, 6],
        [6, 10],
        [1, 21],
      ],
      [
        [34, 35],
        [6, 10],
        [1, 21],
      ],
    ]);
  });

  test("centered on something, and measured from something", () => {
    const rail = 'place rail across, flat, 5" from left, 6" from front, on floor\n';
    // Middle of the rail (20, 8): corners of 10 x 2 from (15, 7) to (25, 9).
    const line = 'place post upright, wide face left, on rail, at each corner of 10" x 8", centered on rail';
    expect(Object.values(where(rail + line, "post")).map(([x, y]) => [x, y])).toEqual([
      [
        [15, 16],
        [4, 8],
      ],
      [
        [24, 25],
        [4, 8],
      ],
      [
        [15, 16],
        [8, 12],
      ],
      [
        [24, 25],
        [8, 12],
      ],
    ]);
    const offset =
      'place post upright, wide face left, on rail, at each corner of 10" x 8", 3" from left, behind rail';
    expect(Object.values(where(rail + offset, "post")).map(([x, y]) => [x[0], y[0]])).toEqual([
      [3, 10],
      [12, 10],
      [3, 14],
      [12, 14],
    ]);
  });

  test("corners in two storeys, and mirrored, have names of their own", () => {
    const rail = 'place rail across, flat, 50" from left, 6" from front, on floor\n';
    const line = 'place post upright, on floor, at each corner of 40" x 20", 2 high, tight';
    const two = Object.keys(where(line));
    expect(two).toContain("post / front left / 2");
    expect(new Set(two).size).toBe(8);
    const mirrored = plan(`${rail}${line}, mirrored left to right about rail`).worked.pieces.all.filter(
      (p) => p.part === "post",
    );
    expect(new Set(mirrored.map((p) => p.id)).size).toBe(16);
    expect(mirrored.map((p) => p.id)).toContain("post / back right / 1 / mirrored");
  });
});

describe("mirror images", () => {
  const MID = 'place rail upright, wide face front, 20" from left, 20" from front, 20" up\n';
  // The rail is from (20, 20, 20) to (24, 21, 50); its middle is (22, 20.5, 35).
  const spans = (line: string): Spans[] => Object.values(where(MID + line, "slat"));

  test("left to right, front to back, up and down", () => {
    const slat = "place slat across, flat, 0 from left, 0 from front, on floor";
    expect(spans(`${slat}, mirrored left to right about rail`)).toEqual([
      [
        [0, 12],
        [0, 4],
        [0, 1],
      ],
      [
        [32, 44],
        [0, 4],
        [0, 1],
      ],
    ]);
    expect(spans(`${slat}, mirrored front to back about rail`)).toEqual([
      [
        [0, 12],
        [0, 4],
        [0, 1],
      ],
      [
        [0, 12],
        [37, 41],
        [0, 1],
      ],
    ]);
    expect(spans(`${slat}, mirrored up and down about rail`)).toEqual([
      [
        [0, 12],
        [0, 4],
        [0, 1],
      ],
      [
        [0, 12],
        [0, 4],
        [69, 70],
      ],
    ]);
  });

  test("a row of three and its image", () => {
    const line = `place slat front to back, flat, 0 from left, 0 from front, on floor, 3 across, 1" apart, mirrored left to right about rail`;
    expect(where(MID + line, "slat")).toEqual({
      "slat / on floor / 1": [
        [0, 4],
        [0, 12],
        [0, 1],
      ],
      "slat / on floor / 2": [
        [5, 9],
        [0, 12],
        [0, 1],
      ],
      "slat / on floor / 3": [
        [10, 14],
        [0, 12],
        [0, 1],
      ],
      "slat / on floor / 1 / mirrored": [
        [40, 44],
        [0, 12],
        [0, 1],
      ],
      "slat / on floor / 2 / mirrored": [
        [35, 39],
        [0, 12],
        [0, 1],
      ],
      "slat / on floor / 3 / mirrored": [
        [30, 34],
        [0, 12],
        [0, 1],
      ],
    });
  });

  test("in two directions: four of it, each with a name of its own", () => {
    const line = `place slat across, flat, 0 from left, 0 from front, on floor, mirrored left to right about rail, mirrored front to back about rail`;
    expect(Object.entries(where(MID + line, "slat")).map(([id, [x, y]]) => [id, x[0], y[0]])).toEqual([
      ["slat / on floor", 0, 0],
      ["slat / on floor / mirrored left to right", 32, 0],
      ["slat / on floor / mirrored front to back", 0, 37],
      ["slat / on floor / mirrored left to right and front to back", 32, 37],
    ]);
  });

  const hands = (ends: string): { left: number; right: number; mirrored: number } => {
    const text = `${STOCK}part brace of b, length 12", ${ends}\n${MID}place brace across, flat, 0 from left, 0 from front, on floor, mirrored left to right about rail`;
    const { worked } = evaluated(text);
    const { left, right } = worked.parts.get("brace")!;
    return { left, right, mirrored: worked.pieces.all.filter((p) => p.mirrored).length };
  };

  test.each([
    // A square board, and a trapezoid, turned over is its own image.
    ["ends square", 0, 0],
    ["ends mitered 30°", 0, 0],
    ["left end mitered 30°", 0, 0],
    ["ends beveled 30°", 0, 0],
    ["ends mitered 30°, long points on opposite edges", 0, 0],
    ["left end mitered 30° and beveled 10°", 1, 1],
    ["ends mitered 30° and beveled 10°", 0, 0],
    ["left end mitered 30°, right end beveled 10°", 1, 1],
    ['notch 1" x 2" at left end', 0, 0],
    ['left end beveled 20°, notch 1" x 2" at left end', 1, 1],
  ])("%s", (ends, left, right) => {
    expect(hands(ends)).toEqual({ left, right, mirrored: right });
  });
});
