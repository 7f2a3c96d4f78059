/** Rings: flat, on edge, leaning as a whole, and with sides that lean out or in; their cut faces meet all over. */
import { describe, expect, test } from "vitest";
import { apart, contacts } from "../../server/solid/contact";
import type { Convex } from "../../server/solid/convex";
import { hopper } from "../../server/solid/hopper";
import { cross, dot, subtract, type Vec3 } from "../../server/solid/vector";
import type { Piece } from "../../server/worked/pieces";
import { evaluated, spansOf } from "./plans";

const STOCK = 'stock b, actual 1" x 4"\n';

/** Area of a face of a solid, in square millimetres. */
function area({ vertices }: Convex, loop: readonly number[]): number {
  const [first, ...rest] = loop.map((i) => vertices[i]!);
  let sum: Vec3 = [0, 0, 0];
  for (let i = 0; i + 1 < rest.length; i++) {
    const c = cross(subtract(rest[i]!, first!), subtract(rest[i + 1]!, first!));
    sum = [sum[0] + c[0], sum[1] + c[1], sum[2] + c[2]];
  }
  return Math.sqrt(dot(sum, sum)) / 2;
}

const endArea = ({ cells }: Piece, end: "left end" | "right end"): number =>
  area(cells[0]!, cells[0]!.facets.find((f) => f.side === end)!.loop);

/** Neighbours touch all over their cut faces, and nothing overlaps. */
function closes(pieces: readonly Piece[]): void {
  pieces.forEach((a, i) => {
    pieces.forEach((b, j) => {
      if (j <= i) return;
      const next = j === i + 1 || (i === 0 && j === pieces.length - 1);
      expect(apart(a.cells[0]!, b.cells[0]!).gap, `${a.id} and ${b.id}`).toBeGreaterThan(-1e-6);
      if (!next) return;
      const touching = contacts(a.cells[0]!, b.cells[0]!).reduce((sum, c) => sum + c.area, 0);
      expect(touching, `${a.id} and ${b.id}`).toBeCloseTo(endArea(a, "right end"), 3);
      expect(touching).toBeCloseTo(endArea(b, "left end"), 3);
    });
  });
}

const piecesOf = (text: string): readonly Piece[] => {
  const { worked } = evaluated(STOCK + text);
  expect(worked.faults).toEqual([]);
  return worked.pieces.all;
};

describe("flat", () => {
  test("four sides: 48 by 20 outside", () => {
    const pieces = piecesOf(`part long of b, length 48", ends mitered 45°
part short of b, length 20", ends mitered 45°
ring top = long and short and long and short
place top flat, 10" from left, 5" from front, 30" up`);
    expect(pieces.map(spansOf)).toEqual([
      [
        [10, 58],
        [5, 9],
        [30, 31],
      ],
      [
        [54, 58],
        [5, 25],
        [30, 31],
      ],
      [
        [10, 58],
        [21, 25],
        [30, 31],
      ],
      [
        [10, 14],
        [5, 25],
        [30, 31],
      ],
    ]);
    expect(pieces.map((p) => p.id)).toEqual([1, 2, 3, 4].map((n) => `top / from left / ${n}`));
    expect(pieces.map((p) => p.owners.map((o) => o.name))).toEqual([["top"], ["top"], ["top"], ["top"]]);
    closes(pieces);
  });

  test("six sides of 12: as wide as 24, as deep as 12 times the root of 3", () => {
    const pieces = piecesOf(`part side of b, length 12", ends mitered 30°
ring seat = 6 side
place seat flat, 0 from left, 0 from front, on floor`);
    const all = pieces.map(spansOf);
    expect(Math.max(...all.map(([x]) => x[1]))).toBeCloseTo(24, 5);
    expect(Math.max(...all.map(([, y]) => y[1]))).toBeCloseTo(12 * Math.sqrt(3), 5);
    expect(Math.max(...all.map(([, , z]) => z[1]))).toBe(1);
    closes(pieces);
  });

  test("a whole ring leaning, as a sash does", () => {
    const slope = 20;
    const [s, c] = [Math.sin((slope * Math.PI) / 180), Math.cos((slope * Math.PI) / 180)];
    const pieces = piecesOf(`part long of b, length 48", ends mitered 45°
part short of b, length 20", ends mitered 45°
ring sash = long and short and long and short
place sash flat, sloping ${slope}° down to the front, 0 from left, 0 from front, on floor`);
    const all = pieces.map(spansOf);
    expect(Math.max(...all.map(([x]) => x[1]))).toBeCloseTo(48, 5);
    expect(Math.max(...all.map(([, y]) => y[1]))).toBeCloseTo(20 * c + s, 5);
    expect(Math.max(...all.map(([, , z]) => z[1]))).toBeCloseTo(20 * s + c, 5);
    closes(pieces);
  });
});

describe("on edge", () => {
  test("four beveled sides: 48 by 20 outside, 4 high", () => {
    const pieces = piecesOf(`part long of b, length 48", ends beveled 45°
part short of b, length 20", ends beveled 45°
ring skirt = long and short and long and short
place skirt, 0 from left, 0 from front, on floor`);
    expect(pieces.map(spansOf)).toEqual([
      [
        [0, 48],
        [0, 1],
        [0, 4],
      ],
      [
        [47, 48],
        [0, 20],
        [0, 4],
      ],
      [
        [0, 48],
        [19, 20],
        [0, 4],
      ],
      [
        [0, 1],
        [0, 20],
        [0, 4],
      ],
    ]);
    closes(pieces);
  });
});

describe("sides that lean, cut by the published angles of such boxes", () => {
  const cases = [4, 5, 6, 8].flatMap((n) => [10, 15, 30].map((lean) => [n, lean] as const));
  for (const way of ["out", "in"] as const)
    test.each(cases)(`%i sides leaning %i° ${way}`, (n, lean) => {
      const { miter, tilt } = hopper(n, lean)!;
      const text = `part side of b, length 20", ends mitered ${miter.toFixed(12)}° and beveled ${tilt.toFixed(12)}°
ring tub = ${n} side
place tub on edge, leaning ${lean}° ${way}, 0 from left, 0 from front, on floor`;
      const pieces = piecesOf(text);
      expect(pieces.length).toBe(n);
      closes(pieces);
      // 4 wide and 1 thick, leaning.
      const [s, c] = [Math.sin((lean * Math.PI) / 180), Math.cos((lean * Math.PI) / 180)];
      const top = Math.max(...pieces.map((p) => spansOf(p)[2][1]));
      expect(top).toBeCloseTo(4 * c + s, 4);
      // The long edges, 20 apart, are on top when it leans out and below when it leans in.
      const front = pieces[0]!;
      const tips = front.cells[0]!.vertices.filter((v) => Math.abs(v[0] - front.bounds.most[0]) < 1e-6);
      const z = tips[0]![2] / 25.4;
      if (way === "out") expect(z).toBeGreaterThan(2);
      else expect(z).toBeLessThan(2);
    });
});

test("a mirrored ring of unlike sides has mirrored pieces where they are not their own image", () => {
  const pieces = piecesOf(`part long of b, length 48", ends mitered 45°
part short of b, length 20", ends mitered 45°
part post of b, length 10"
ring top = long and short and long and short
place post upright, 100" from left, 0 from front, on floor
place top flat, 0 from left, 0 from front, on floor, mirrored left to right about post`);
  expect(pieces.some((p) => p.mirrored)).toBe(false);
  expect(Math.max(...pieces.map((p) => spansOf(p)[0][1]))).toBeCloseTo(204, 6);
  closes(pieces.filter((p) => p.id.includes("mirrored")).reverse());
});

test("a ring of square corners that leans takes the room it leans over", () => {
  const pieces = piecesOf(`part side of b, length 20", ends mitered 45°
part post of b, length 10"
ring r = 4 side
place r flat, on floor, leaning 30° back, 0 from left, 0 from front
place post across, flat, on floor, behind r, flush with left of r`);
  const post = pieces.find((p) => p.part === "post")!;
  // 20 cos 30 and 1 sin 30.
  expect(post.bounds.least[1] / 25.4).toBeCloseTo(20 * Math.cos(Math.PI / 6) + 0.5, 6);
});

test("a ring in an assembly that leans can be leaned on", () => {
  const pieces = piecesOf(`part side of b, length 20", ends mitered 45°
part post of b, length 10"
ring r = 4 side
assembly seat
  place r flat, on floor
place seat, on floor, leaning 10° back
place post across, flat, on r, flush with left of r, flush with front of r`);
  const post = pieces.find((p) => p.part === "post")!;
  const [s, c] = [Math.sin(Math.PI / 18), Math.cos(Math.PI / 18)];
  expect(post.bounds.least[2] / 25.4).toBeCloseTo(20 * s + c, 6);
});
