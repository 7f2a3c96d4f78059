/** What is measured corner to corner before it is screwed tight: four-sided rings, boxes, and where four feet stand. Lengths from the solids, in mm. */
import type { At } from "../plan";
import { TOUCHING } from "../solid/contact";
import { cross, dot, subtract, unit, type Vec3 } from "../solid/vector";
import { wallsOf } from "./choose";
import type { Piece } from "./pieces";
import { copiesOf } from "./space";
import type { Worked } from "./work";

export interface SquareCheck {
  readonly of: "ring" | "box" | "feet";
  /** The ring's or the box's; empty for feet. */
  readonly name: string;
  /** The same from both pairs of corners. */
  readonly diagonal: number;
  /** What stands between neighbouring corners: the longer first. */
  readonly sides: readonly [number, number];
  /** How many copies there are alike. */
  readonly count: number;
  readonly at: At | undefined;
  /** All that it measures, by their places among all pieces. */
  readonly pieces: readonly number[];
}

/** What squares are read off. */
type ForSquares = Pick<Worked, "rings" | "boxes" | "space" | "scope">;

type Measured = Pick<SquareCheck, "diagonal" | "sides">;

/** The checks of a plan, in the order of its rings and boxes, the feet last. What is meant to be out of square has none. */
export function squareChecks(worked: ForSquares): SquareCheck[] {
  return [...ringChecks(worked), ...boxChecks(worked), ...feetCheck(worked)];
}

function ringChecks({ rings, space }: ForSquares): SquareCheck[] {
  return rings.flatMap((ring) => {
    if (ring.sides.length !== 4) return [];
    const copies = copiesOf(space, ring.name);
    const measured = ofRing((copies[0] ?? []).map((i) => space.pieces[i]!));
    if (!measured) return [];
    return [
      {
        of: "ring",
        name: ring.name,
        ...measured,
        count: copies.length,
        at: ring.declared.at,
        pieces: copies.flat(),
      } as const,
    ];
  });
}

/** The outside corners of four sides, in their own plane. */
function ofRing(sides: readonly Piece[]): Measured | undefined {
  const [a, b] = sides;
  const normal = a && b && sides.length === 4 && unit(cross(a.pose.length, b.pose.length));
  if (!normal) return undefined;
  const along = a.pose.length;
  const aside = cross(normal, along);
  const points = sides.flatMap((p) => p.cells.flatMap((c) => c.vertices));
  if (points.length === 0) return undefined;
  const corner = (u: 1 | -1, v: 1 | -1): Vec3 => {
    const far = (p: Vec3): number => u * dot(p, along) + v * dot(p, aside);
    return points.reduce((best, p) => (far(p) > far(best) + TOUCHING ? p : best));
  };
  const flat = (p: Vec3): Vec3 => [dot(p, along), dot(p, aside), 0];
  return rectangle([corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)].map(flat));
}

/** What a rectangle's corners, in order, measure; undefined for any other figure. */
function rectangle([a, b, c, d]: readonly Vec3[]): Measured | undefined {
  if (!a || !b || !c || !d) return undefined;
  const long = (p: Vec3, q: Vec3): number => Math.hypot(...subtract(p, q));
  const [one, other] = [long(a, c), long(b, d)];
  const [x, y] = [long(a, b), long(b, c)];
  const alike = Math.abs(x - long(c, d)) < SAME && Math.abs(y - long(d, a)) < SAME;
  if (!alike || Math.abs(one - other) > SAME || Math.min(x, y) < SAME) return undefined;
  return { diagonal: (one + other) / 2, sides: [Math.max(x, y), Math.min(x, y)] };
}

/** mm: lengths that differ by less are the same. */
const SAME = 0.1;

function boxChecks({ boxes, space, scope }: ForSquares): SquareCheck[] {
  return boxes.flatMap(({ name, declared, placed }) => {
    if (!placed) return [];
    const [wide, deep] = placed.room.rim.map(({ from, to }) => to - from) as [number, number];
    const sides = [Math.max(wide, deep), Math.min(wide, deep)] as const;
    const diagonal = Math.hypot(wide, deep);
    const pieces = wallsOf(declared, space, scope);
    return [{ of: "box", name, diagonal, sides, count: 1, at: declared.at, pieces } as const];
  });
}

/** Where a different piece stands on the floor at each corner of the outline of all that stand there. */
function feetCheck({ space }: ForSquares): SquareCheck[] {
  const onFloor = space.pieces.flatMap((piece, i) => {
    const points = piece.cells.flatMap((c) => c.vertices.filter((v) => Math.abs(v[2]) < TOUCHING));
    return points.length > 2 ? [{ i, points }] : [];
  });
  const all = onFloor.flatMap(({ points }) => points);
  if (all.length === 0) return [];
  const ends = ([0, 1] as const).map((k) => [
    Math.min(...all.map((p) => p[k])),
    Math.max(...all.map((p) => p[k])),
  ]) as [[number, number], [number, number]];
  const feet = ends[0].flatMap((x) =>
    ends[1].map((y) => onFloor.find((f) => f.points.some((p) => Math.hypot(p[0] - x, p[1] - y) < SAME))?.i),
  );
  if (feet.includes(undefined) || new Set(feet).size < 4) return [];
  const [wide, deep] = ends.map(([low, high]) => high - low) as [number, number];
  const sides = [Math.max(wide, deep), Math.min(wide, deep)] as const;
  const diagonal = Math.hypot(wide, deep);
  const pieces = feet.map((i) => i!);
  return [{ of: "feet", name: "", diagonal, sides, count: 1, at: undefined, pieces }];
}
