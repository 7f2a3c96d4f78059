/** Boards that lean or slope, the side that the long edge lies on, and diagonals. */
import { describe, expect, test } from "vitest";
import type { Vec3 } from "../../server/solid/vector";
import type { Piece } from "../../server/worked/pieces";
import { cornersOf, evaluated, plan, type Spans, STOCK, spansOf, whereIs } from "./plans";

const sin = (d: number): number => Math.sin((d * Math.PI) / 180);
const cos = (d: number): number => Math.cos((d * Math.PI) / 180);
const close = (found: Spans | undefined, wanted: readonly (readonly number[])[]): void => {
  expect(found?.flat().length).toBe(6);
  for (const [i, span] of found!.entries())
    for (const j of [0, 1] as const) expect(span[j], `direction ${i}`).toBeCloseTo(wanted[i]![j]!, 5);
};

const pieceOf = (text: string, part: string): Piece =>
  evaluated(text).worked.pieces.all.find((p) => p.part === part)!;

describe("leaning: a board 20 long, 4 wide and 1 thick, tipped by 20°", () => {
  const [s, c] = [sin(20), cos(20)];
  const AT = "0 from left, 0 from front, on floor";
  test.each([
    // Seen from the side: as deep as 20 sin + 1 cos, as high as 20 cos + 1 sin.
    ["upright, wide face front, leaning 20° back", [4, 20 * s + c, 20 * c + s], [0, 1, 0]],
    ["upright, wide face front, leaning 20° front", [4, 20 * s + c, 20 * c + s], [0, -1, 0]],
    // Tipped along its width: 20 sin + 4 cos, 20 cos + 4 sin.
    ["upright, wide face front, leaning 20° left", [20 * s + 4 * c, 1, 20 * c + 4 * s], [-1, 0, 0]],
    ["upright, wide face front, leaning 20° right", [20 * s + 4 * c, 1, 20 * c + 4 * s], [1, 0, 0]],
    ["upright, wide face left, leaning 20° right", [20 * s + c, 4, 20 * c + s], [1, 0, 0]],
    ["across, on edge, leaning 20° back", [20, 4 * s + c, 4 * c + s], undefined],
  ] as const)("%s", (words, [x, y, z], toward) => {
    const text = `place post ${words}, ${AT}`;
    close(whereIs("post", text), [
      [0, x],
      [0, y],
      [0, z],
    ]);
    const piece = pieceOf(STOCK + text, "post");
    const up = piece.pose.length;
    if (!toward) return;
    for (const k of [0, 1] as const) expect(up[k]).toBeCloseTo(toward[k] * s, 9);
    expect(up[2]).toBeCloseTo(c, 9);
  });

  test.each([
    ["across, flat, sloping 20° down to the right", 0, -1],
    ["across, flat, sloping 20° down to the left", 0, 1],
    ["front to back, flat, sloping 20° down to the front", 1, 1],
    ["front to back, flat, sloping 20° down to the back", 1, -1],
  ] as const)("%s", (words, axis, rise) => {
    const text = `place post ${words}, ${AT}`;
    const size = [4, 4, 20 * s + c];
    size[axis] = 20 * c + s;
    close(whereIs("post", text), [
      [0, size[0]!],
      [0, size[1]!],
      [0, size[2]!],
    ]);
    // Along its length it climbs towards the high end.
    const { length } = pieceOf(STOCK + text, "post").pose;
    expect(length[axis]! * length[2]).toBeCloseTo(rise * s * c, 9);
  });

  test("faces of a leaning board are those of the block round it", () => {
    const text = `place post upright, wide face front, leaning 20° back, ${AT}
place slat across, flat, on post, 0 from left, behind post`;
    const [, y, z] = whereIs("slat", text)!;
    expect(y[0]).toBeCloseTo(20 * s + c, 5);
    expect(z[0]).toBeCloseTo(20 * c + s, 5);
  });

  test("an assembly leans as a whole", () => {
    const text = `${STOCK}assembly gate
  place post upright, wide face front, on floor, 0 from left, 0 from front
  place post upright, wide face front, on floor, 10" from left, 0 from front
place gate, leaning 20° back, 5" from left, 0 from front, on floor
place slat across, flat, on right posts, flush with left of right posts, behind right posts`;
    const { worked } = evaluated(text);
    const posts = worked.pieces.all.filter((p) => p.part === "post").map(spansOf);
    close(posts[0], [
      [5, 9],
      [0, 20 * s + c],
      [0, 20 * c + s],
    ]);
    close(posts[1], [
      [15, 19],
      [0, 20 * s + c],
      [0, 20 * c + s],
    ]);
    const slat = spansOf(worked.pieces.all.find((p) => p.part === "slat")!);
    expect(slat[0][0]).toBeCloseTo(15, 5);
    expect(slat[1][0]).toBeCloseTo(20 * s + c, 5);
  });
});

describe("the side that the long edge lies on: 12 long with 45° ends, 4 wide, so 4 on its short edge", () => {
  /** Corners of the piece at its greatest length: where the long edge is. */
  const longEdge = (words: string, ends = "ends mitered 45°"): number[] => {
    const text = `${STOCK}part trim of b, length 12", ${ends}\nplace trim ${words}, 0 from left, 0 from front, on floor`;
    const { worked } = evaluated(text);
    expect(worked.faults).toEqual([]);
    const piece = worked.pieces.all[0]!;
    expect(piece.mirrored).toBe(false);
    const corners = cornersOf(piece);
    const along = ([0, 1, 2] as const).find((k) => Math.abs(piece.pose.length[k]) > 0.9)!;
    const tips = corners.filter((p) => p[along] < 1e-6 || p[along] > 12 - 1e-6);
    expect(tips.length).toBe(4);
    return ([0, 1, 2] as const).map((k) => tips.reduce((sum, p) => sum + p[k], 0) / 4);
  };
  test.each([
    ["across, flat, long points front", [6, 0, 0.5]],
    ["across, flat, long points back", [6, 4, 0.5]],
    ["across, flat", [6, 0, 0.5]],
    ["across, on edge, long points bottom", [6, 0.5, 0]],
    ["across, on edge, long points top", [6, 0.5, 4]],
    ["front to back, flat, long points left", [0, 6, 0.5]],
    ["front to back, flat, long points right", [4, 6, 0.5]],
    ["front to back, on edge, long points bottom", [0.5, 6, 0]],
    ["front to back, on edge, long points top", [0.5, 6, 4]],
    ["upright, wide face front, long points left", [0, 0.5, 6]],
    ["upright, wide face front, long points right", [4, 0.5, 6]],
    ["upright, wide face left, long points front", [0.5, 0, 6]],
    ["upright, wide face left, long points back", [0.5, 4, 6]],
  ])("%s", (words, middle) => {
    expect(longEdge(words)).toEqual(middle);
  });

  test.each([
    ["across, flat, long points top", [6, 2, 1]],
    ["across, flat, long points bottom", [6, 2, 0]],
    ["across, on edge, long points front", [6, 0, 2]],
    ["across, on edge, long points back", [6, 1, 2]],
    ["upright, wide face front, long points back", [2, 1, 6]],
    ["upright, wide face front, long points front", [2, 0, 6]],
  ])("the long face of beveled ends: %s", (words, middle) => {
    expect(longEdge(words, "ends beveled 45°")).toEqual(middle);
  });

  test("an edge and a face together take no mirror image", () => {
    for (const face of ["top", "bottom"])
      for (const edge of ["front", "back"]) {
        const text = `${STOCK}part trim of b, length 12", left end mitered 45° and beveled 20°\nplace trim across, flat, long points ${edge}, long points ${face}, 0 from left, 0 from front, on floor`;
        const piece = pieceOf(text, "trim");
        expect(piece.mirrored).toBe(false);
        // The long point is the corner of that edge and that face, at one of the two ends.
        const tips = cornersOf(piece).filter(
          (p) =>
            Math.abs(p[1] - (edge === "front" ? 0 : 4)) < 1e-6 &&
            Math.abs(p[2] - (face === "bottom" ? 0 : 1)) < 1e-6,
        );
        expect(Math.max(...tips.map((p) => p[0])) - Math.min(...tips.map((p) => p[0]))).toBeCloseTo(12, 5);
      }
  });
});

describe("a diagonal", () => {
  /** A block, with a face to every side. */
  const box = `part block of big, length 30"
stock big, actual 40" x 20"
place block upright, wide face front, 5" from left, 6" from front, 7" up
`;
  // The block is 20" wide (its thickness of 40 runs front to back): from (5, 6, 7) to (25, 46, 37).
  const SPAN = [
    [5, 25],
    [6, 46],
    [7, 37],
  ] as const;
  const faces = [
    ["front", ["left", "right"], ["bottom", "top"]],
    ["back", ["left", "right"], ["bottom", "top"]],
    ["left", ["front", "back"], ["bottom", "top"]],
    ["right", ["front", "back"], ["bottom", "top"]],
    ["top", ["left", "right"], ["front", "back"]],
    ["bottom", ["left", "right"], ["front", "back"]],
  ] as const;
  const AXIS = { left: 0, right: 0, front: 1, back: 1, bottom: 2, top: 2 } as const;
  const far = (side: string): boolean => ["right", "back", "top"].includes(side);

  const cases = faces.flatMap(([face, [u0, u1], [v0, v1]]) => [
    [face, `${v0} ${u0}`, `${v1} ${u1}`, [u0, v0]] as const,
    [face, `${v0} ${u1}`, `${v1} ${u0}`, [u1, v0]] as const,
    [face, `${u1} ${v1}`, `${u0} ${v0}`, [u1, v1]] as const,
  ]);
  test.each(cases)("on %s, from %s to %s", (face, from, to, start) => {
    const text = `${STOCK}${box}part brace of b\nplace brace, diagonally on ${face} of block, from ${from} to ${to}`;
    const { worked } = evaluated(text);
    expect(worked.faults).toEqual([]);
    const piece = worked.pieces.all.find((p) => p.part === "brace")!;
    expect(piece.mirrored).toBe(false);
    const spans = spansOf(piece);
    const normal = AXIS[face];
    // It fills the rectangle of the face, and lies on it by its wide face.
    for (const k of [0, 1, 2] as const) {
      const [low, high] = SPAN[k];
      const wanted = k !== normal ? [low, high] : far(face) ? [high, high + 1] : [low - 1, low];
      expect(spans[k][0]).toBeCloseTo(wanted[0]!, 5);
      expect(spans[k][1]).toBeCloseTo(wanted[1]!, 5);
    }
    // Two of its corners are those of the rectangle that it is said to run between.
    const corner: number[] = [];
    const other: number[] = [];
    for (const side of start) {
      corner[AXIS[side]] = SPAN[AXIS[side]][far(side) ? 1 : 0];
      other[AXIS[side]] = SPAN[AXIS[side]][far(side) ? 0 : 1];
    }
    const has = (at: number[]): boolean =>
      cornersOf(piece).some((p) => at.every((n, k) => k === normal || Math.abs(p[k as 0]! - n) < 1e-5));
    expect(has(corner)).toBe(true);
    expect(has(other)).toBe(true);
  });

  test("between two rails its ends are cut level, between two posts plumb; its corners lie on them", () => {
    const frame = `${STOCK}part brace of b
part beam of b, length 60"
place beam across, on edge, 0 from left, 0 from front, on floor
place beam across, on edge, 0 from left, 0 from front, 24" up
`;
    const text = `${frame}place brace, diagonally on front of beams, from bottom left to top right, between lower beam and upper beam`;
    const { worked } = evaluated(text);
    const piece = worked.pieces.all.find((p) => p.part === "brace")!;
    // Between 4 and 24 up, over all 60 of the beams: wider than high, and yet cut level.
    close(spansOf(piece), [
      [0, 60],
      [-1, 0],
      [4, 24],
    ]);
    const ends = cornersOf(piece).filter((p) => Math.abs(p[2] - 4) < 1e-5);
    expect(ends.length).toBe(4);
    // Each level end takes 4 / sin(rise) of the beam.
    const rise = Math.atan2(20, 60) + Math.asin(4 / Math.hypot(20, 60));
    const xs = ends.map((p: Vec3) => p[0]);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(4 / Math.sin(rise), 4);
    const part = worked.parts.get("brace")!;
    expect(part.length.state === "known" && part.length.value.approx / 25.4).toBeCloseTo(
      20 / Math.sin(rise) + 4 / Math.tan(rise),
      6,
    );
    expect(part.leftEnd!.miter!.approx).toBeCloseTo(90 - (rise * 180) / Math.PI, 9);
  });

  test("between two posts its ends are cut plumb", () => {
    const frame = `${STOCK}part brace of b
place post upright, wide face left, 0 from left, 0 from front, on floor
place post upright, wide face left, 13" from left, 0 from front, on floor
place brace, diagonally on front of posts, from top left to bottom right, between left post and right post`;
    const { worked } = evaluated(frame);
    const piece = worked.pieces.all.find((p) => p.part === "brace")!;
    // 12 between the posts and 20 high: steeper than wide, and yet cut plumb.
    close(spansOf(piece), [
      [1, 13],
      [-1, 0],
      [0, 20],
    ]);
    const rise = Math.atan2(20, 12) - Math.asin(4 / Math.hypot(20, 12));
    const zs = cornersOf(piece)
      .filter((p) => Math.abs(p[0] - 1) < 1e-5)
      .map((p) => p[2]);
    expect(zs.length).toBe(4);
    expect(Math.max(...zs) - Math.min(...zs)).toBeCloseTo(4 / Math.cos(rise), 4);
  });

  test("a rectangle with no room for the board", () => {
    // The face is 3 by 1, and the board 4 wide.
    const frame = `${STOCK}part brace of b
part stub of b, length 3"
place stub across, flat, 0 from left, 0 from front, on floor
place brace, diagonally on front of stub, from bottom left to top right`;
    const [fault] = evaluated(frame).worked.faults.filter((f) => f.kind === "no-room");
    expect(fault).toMatchObject({ subject: "brace", why: { is: "diagonal" } });
  });
});

test("angles that a place cannot take", () => {
  const why = (line: string) =>
    plan(line).worked.faults.flatMap((f) => (f.kind === "impossible" ? [f.why] : [f.kind]));
  expect(why("place post upright, leaning 10° top, 0 from left, 0 from front, on floor")).toEqual(["lean"]);
  expect(why("place post upright, leaning 10° out, 0 from left, 0 from front, on floor")).toEqual(["lean"]);
  expect(why("place post upright, wide face top, 0 from left, 0 from front, on floor")).toEqual([
    "wide face",
  ]);
});

describe("a lean that asks how much room it takes", () => {
  test.each([
    "upright, wide face front, on floor, sloping overall depth of leg down to the right",
    "upright, wide face front, on floor, leaning overall height of leg back",
  ])("%s leads back to itself, and says so", (words) => {
    const { worked } = evaluated(`part leg 4 of 2x4, length 28"\nplace leg ${words}\n`);
    expect(worked.faults.map(({ kind }) => kind)).toContain("circle");
  });

  test("and so does a ring whose sides lean out", () => {
    const { worked } = evaluated(
      'part board 4 of 1x4, length 12", ends mitered 45°\nring hop = 4 board\nplace hop on edge, on floor, leaning overall height of hop out\n',
    );
    expect(worked.faults.map(({ kind }) => kind)).toContain("circle");
  });
});
