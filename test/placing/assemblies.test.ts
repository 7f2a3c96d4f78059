/** Assemblies: placed once, used many times, turned, mirrored and nested; told apart from outside and from inside. */
import { describe, expect, test } from "vitest";
import { allWhere, evaluated, plan, type Spans, STOCK, where } from "./plans";

/** A post standing at the left of a slat that lies across: 16 wide, 4 deep, 20 high. */
const GATE = `assembly gate
  place post upright, wide face front, 0 from left, 0 from front, on floor
  place slat across, flat, right of post, 0 from front, on floor
`;
const gate = (line: string): Record<string, Spans> =>
  Object.fromEntries(
    Object.entries(where(GATE + line)).map(([id, s]) => [id.replace(/^gate \/ [^/]+ \/ /, ""), s]),
  );

describe("an assembly placed", () => {
  test("as it is", () => {
    expect(where(`${GATE}place gate, 10" from left, 5" from front, on floor`)).toEqual({
      "gate / on floor / post / on floor": [
        [10, 14],
        [5, 6],
        [0, 20],
      ],
      "gate / on floor / slat / right of post": [
        [14, 26],
        [5, 9],
        [0, 1],
      ],
    });
  });

  test.each([
    // Turned so that its front looks to the right: what was its left is in front, what was its back on the left.
    [
      "front to back",
      {
        post: [
          [13, 14],
          [5, 9],
          [0, 20],
        ],
        slat: [
          [10, 14],
          [9, 21],
          [0, 1],
        ],
      },
    ],
    [
      "wide face right",
      {
        post: [
          [13, 14],
          [5, 9],
          [0, 20],
        ],
        slat: [
          [10, 14],
          [9, 21],
          [0, 1],
        ],
      },
    ],
    // To the back: left for right, and front for back.
    [
      "wide face back",
      {
        post: [
          [22, 26],
          [8, 9],
          [0, 20],
        ],
        slat: [
          [10, 22],
          [5, 9],
          [0, 1],
        ],
      },
    ],
    // To the left.
    [
      "wide face left",
      {
        post: [
          [10, 11],
          [17, 21],
          [0, 20],
        ],
        slat: [
          [10, 14],
          [5, 17],
          [0, 1],
        ],
      },
    ],
    [
      "wide face front",
      {
        post: [
          [10, 14],
          [5, 6],
          [0, 20],
        ],
        slat: [
          [14, 26],
          [5, 9],
          [0, 1],
        ],
      },
    ],
  ])("%s", (turn, { post, slat }) => {
    expect(gate(`place gate, ${turn}, 10" from left, 5" from front, on floor`)).toEqual({
      "post / on floor": post,
      "slat / right of post": slat,
    });
  });

  test("mirrored about something, and in a row", () => {
    const rail = 'place rail upright, 48" from left, 0 from front, on floor\n';
    // The rail's middle is at 50: 10 to 26 becomes 74 to 90, its post on the right.
    expect(
      where(
        `${GATE}${rail}place gate, 10" from left, 5" from front, on floor, mirrored left to right about rail`,
        "gate",
      ),
    ).toEqual({
      "gate / on floor / post / on floor": [
        [10, 14],
        [5, 6],
        [0, 20],
      ],
      "gate / on floor / slat / right of post": [
        [14, 26],
        [5, 9],
        [0, 1],
      ],
      "gate / on floor / mirrored / post / on floor": [
        [86, 90],
        [5, 6],
        [0, 20],
      ],
      "gate / on floor / mirrored / slat / right of post": [
        [74, 86],
        [5, 9],
        [0, 1],
      ],
    });
    const row = where(`${GATE}place gate, 0 from left, 0 from front, on floor, 3 across, 4" apart`);
    expect(row["gate / on floor / 3 / post / on floor"]).toEqual([
      [40, 44],
      [0, 1],
      [0, 20],
    ]);
    expect(Object.keys(row).length).toBe(6);
  });
});

describe("nested twice", () => {
  const NESTED = `${GATE}assembly pair
  place gate, 0 from left, 0 from front, on floor
  place gate, wide face back, right of gate, 0 from front, on floor
assembly yard
  place pair, 0 from left, 0 from front, on floor
  place pair, front to back, 0 from left, behind pair, on floor
`;
  test("positions add up", () => {
    // The pair: post 0-4, slat 4-16, then turned: slat 16-28, post 28-32 at the back (3-4).
    const pair = where(`${NESTED}place pair, 0 from left, 0 from front, on floor`);
    expect(Object.values(pair)).toEqual([
      [
        [0, 4],
        [0, 1],
        [0, 20],
      ],
      [
        [4, 16],
        [0, 4],
        [0, 1],
      ],
      [
        [28, 32],
        [3, 4],
        [0, 20],
      ],
      [
        [16, 28],
        [0, 4],
        [0, 1],
      ],
    ]);
    const yard = Object.values(where(`${NESTED}place yard, 100" from left, 0 from front, on floor`));
    // The second pair is turned to the right and stands behind: x = 4 - y, y = 4 + x.
    expect(yard.slice(4)).toEqual([
      [
        [103, 104],
        [4, 8],
        [0, 20],
      ],
      [
        [100, 104],
        [8, 20],
        [0, 1],
      ],
      [
        [100, 101],
        [32, 36],
        [0, 20],
      ],
      [
        [100, 104],
        [20, 32],
        [0, 1],
      ],
    ]);
  });

  test("its pieces are counted, once for each time it is placed", () => {
    const { worked } = plan(`${NESTED}place yard, 0 from left, 0 from front, on floor, 3 across, tight`);
    // Three yards of two pairs of two gates.
    for (const part of ["post", "slat"])
      expect(worked.parts.get(part)!.count).toEqual({ state: "known", value: 12 });
    expect(worked.pieces.all.length).toBe(24);
    expect(new Set(worked.pieces.all.map((p) => p.id)).size).toBe(24);
  });

  test("names from outside reach the pieces inside, narrowed where they then stand", () => {
    const text = `${NESTED}place yard, 100" from left, 0 from front, on floor
place rail across, flat, on posts, flush with left of posts, flush with front of posts
place rail across, flat, on left back post, flush with right of left back post, flush with back of left back post`;
    const rails = Object.values(where(text, "rail"));
    // All posts: from 100 to 132, from 0 to 36. The one at the left behind: 100-101, 32-36.
    expect(rails).toEqual([
      [
        [100, 130],
        [0, 4],
        [20, 21],
      ],
      [
        [71, 101],
        [32, 36],
        [20, 21],
      ],
    ]);
  });
});

describe("names inside mean its own pieces", () => {
  test("a post outside does not count inside, nor one inside for its own", () => {
    const text = `assembly step
  place post upright, 0 from left, 0 from front, on floor
  place slat across, flat, on posts, flush with left of posts, flush with front of posts
place post upright, 90" from left, 0 from front, 50" up
place step, 5" from left, 0 from front, on floor`;
    expect(where(text, "step")).toEqual({
      "step / on floor / post / on floor": [
        [5, 9],
        [0, 1],
        [0, 20],
      ],
      "step / on floor / slat / on posts": [
        [5, 17],
        [0, 4],
        [20, 21],
      ],
    });
  });

  test("a thing that stands only outside stands nowhere inside", () => {
    const text = `assembly step
  place slat across, flat, on post, 0 from left, 0 from front
place post upright, 0 from left, 0 from front, on floor
place step, 50" from left, 0 from front, on floor`;
    expect(plan(text).worked.faults.map((f) => f.kind)).toEqual(["unplaced"]);
  });

  test("its own left, front and floor, wherever they then lie", () => {
    const text = `assembly step
  place post upright, 3" from left, 2" from front, 1" up
  place slat across, flat, 0 from left, 0 from front, on floor
place step, 10" from left, 10" from front, 10" up`;
    expect(where(text, "step")).toEqual({
      "step / from left / post / from left": [
        [13, 17],
        [12, 13],
        [11, 31],
      ],
      "step / from left / slat / on floor": [
        [10, 22],
        [10, 14],
        [10, 11],
      ],
    });
  });
});

describe("past all limits", () => {
  const chain = (n: number, twice: boolean): string => {
    const levels = Array.from({ length: n }, (_, i) => {
      const inner = i === 0 ? "post" : `a${i}`;
      const lies = i === 0 ? " upright" : "";
      const one = `  place ${inner}${lies}, 0 from left, 0 from front, on floor\n`;
      const two = `  place ${inner}${lies}, 10" from left, 0 from front, on floor\n`;
      return `assembly a${i + 1}\n${one}${twice ? two : ""}`;
    });
    return `${STOCK}${levels.join("")}place a${n}, 0 from left, 0 from front, on floor\n`;
  };

  test("assemblies fifty deep work out, four hundred deep are told, and neither hangs", () => {
    expect(Object.values(allWhere(evaluated(chain(50, false))))).toEqual([
      [
        [0, 4],
        [0, 1],
        [0, 20],
      ],
    ]);
    const start = performance.now();
    evaluated(chain(400, false));
    expect(performance.now() - start).toBeLessThan(20_000);
  });

  test("two of two of two … sixty times", () => {
    const start = performance.now();
    const { worked } = evaluated(`${chain(60, true)}place slat across, flat, on posts, centered on posts`);
    expect(performance.now() - start).toBeLessThan(20_000);
    expect(worked.faults.map((f) => f.kind)).toContain("too-many");
    expect(worked.pieces.all).toEqual([]);
  });

  test("an assembly inside itself, through others", () => {
    const text = `${STOCK}assembly one
  place two, 0 from left, 0 from front, on floor
assembly two
  place one, 0 from left, 0 from front, on floor
  place post upright, 0 from left, 0 from front, on floor
place one, 0 from left, 0 from front, on floor`;
    const circles = evaluated(text).worked.faults.filter((f) => f.kind === "circle");
    expect(circles.length).toBe(1);
    expect(circles[0]!.kind === "circle" && circles[0]!.path.map((p) => p.name)).toEqual([
      "two",
      "one",
      "two",
    ]);
  });

  test("twenty thousand pieces, and one more", () => {
    const rows = (n: number) =>
      `${STOCK}place post upright, ${n} across, tight, 0 from left, 0 from front, on floor`;
    expect(evaluated(rows(20_001)).worked.faults.map((f) => f.kind)).toEqual(["too-many"]);
    const block = `${STOCK}place post upright, 200 across, tight, 101 deep, tight, 0 from left, 0 from front, on floor`;
    expect(evaluated(block).worked.faults.map((f) => f.kind)).toEqual(["too-many"]);
  });
});
