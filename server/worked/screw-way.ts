/** A screw on its way: through what wood it goes, how near to a side, and what stands behind its head. Millimetres. */
import { type Body, boundsApart, boundsOf } from "../solid/contact";
import type { BoardSide } from "../solid/convex";
import { way } from "../solid/ray";
import type { Field } from "../solid/setout";
import { add, dot, scaled, size, subtract, type Vec3 } from "../solid/vector";
import type { Crossing } from "./crossings";
import type { Piece } from "./pieces";
import type { Space } from "./space";

/** A stretch of wood on a screw's way; distances in mm from where its head is. */
export interface Passed {
  /** By its place among all pieces. */
  readonly piece: number;
  readonly enters: number;
  readonly leaves: number;
  readonly sides: readonly [into: BoardSide, out: BoardSide];
}

/** How near a screw comes to a side of a piece: wood between its shank and that side, in mm. */
export interface Clearance {
  readonly piece: number;
  readonly side: BoardSide;
  readonly wood: number;
}

export interface PlacedScrew {
  readonly crossing: Crossing;
  /** Where its head is, on the first piece's own surface. */
  readonly start: Vec3;
  readonly direction: Vec3;
  /** All wood in line with it, in order: also beyond its tip. */
  readonly passes: readonly Passed[];
  /** The side it comes nearest to. */
  readonly nearest: Clearance | undefined;
  /** What stands nearest behind its head, and how far, in mm. */
  readonly behind: { readonly piece: number; readonly room: number } | undefined;
}

export interface ScrewSize {
  readonly length: number;
  readonly diameter: number;
}

/**
 * How much room a drill needs behind a screw's head, in mm (common practice): 10" in all, of which the bit is the first
 * 2" and the nose of the drill, 1-1/4" thick, the rest.
 */
export const DRIVER = { length: 254, bit: 50.8, radius: 15.875 } as const;

/** Pieces that any screw of a crossing, or the driver behind it, can come near: by their places among all. */
export function around(
  { pieces, grid }: Space,
  { patch, first }: Crossing,
  direction: Vec3,
  length: number,
): readonly number[] {
  const { least, most } = pieces[first]!.bounds;
  const thick = size(subtract(most, least));
  const back = Math.min(thick, length) + DRIVER.length;
  const { least: low, most: high } = boundsOf(patch);
  const [ahead, behind] = [scaled(direction, length + REACH), scaled(direction, -back)];
  const swept = boundsOf([add(low, ahead), add(low, behind), add(high, ahead), add(high, behind)]);
  return grid.near(swept, DRIVER.radius);
}

/** The screw that goes in at a place of the patch between two pieces; `near` are the pieces that `around` found. */
export function screwAt(
  pieces: readonly Piece[],
  near: readonly number[],
  crossing: Crossing,
  at: Vec3,
  direction: Vec3,
  field: Field,
  { length, diameter }: ScrewSize,
): PlacedScrew {
  const own = intervals(pieces[crossing.first]!, at, direction).find(
    (s) => s.enters < -HAIR && s.leaves > -HAIR,
  );
  const start = add(at, scaled(direction, own?.enters ?? 0));
  const passes: Passed[] = [];
  for (const piece of inLine(pieces, near, start, direction, -HAIR, length + REACH, NOT_BESIDE))
    for (const { enters, leaves, sides } of intervals(pieces[piece]!, start, direction))
      if (leaves > HAIR && enters < length + REACH) insert(passes, { piece, enters, leaves, sides });
  return {
    crossing,
    start,
    direction,
    passes,
    nearest: nearestSide(pieces, passes, start, direction, length, diameter / 2),
    behind: roomBehind(pieces, near, start, direction, field),
  };
}

/** Keeps the list in the order in which a screw goes in and comes out. */
function insert(list: Passed[], one: Passed): void {
  let at = list.length;
  for (; at > 0; at--) {
    const before = list[at - 1]!;
    if (before.enters < one.enters || (before.enters === one.enters && before.leaves <= one.leaves)) break;
    list[at] = before;
  }
  list[at] = one;
}

/** How far beyond the tip wood is looked for, in mm. */
const REACH = 50;
/** Distances nearer than this, in mm, are one. */
const HAIR = 0.05;

interface Interval {
  readonly enters: number;
  readonly leaves: number;
  readonly sides: readonly [BoardSide, BoardSide];
}

/** The stretches of a piece that a line passes, cells that follow on each other as one. */
function intervals({ cells }: Piece, from: Vec3, direction: Vec3): readonly Interval[] {
  const [only] = cells;
  if (cells.length === 1 && only) {
    const interval = through(only, from, direction);
    return interval ? [interval] : NONE;
  }
  const found = cells
    .flatMap((cell) => through(cell, from, direction) ?? [])
    .sort((a, b) => a.enters - b.enters);
  return found.reduce<Interval[]>((list, next) => {
    const last = list.at(-1);
    if (last && next.enters - last.leaves < HAIR)
      list[list.length - 1] = { ...last, leaves: next.leaves, sides: [last.sides[0], next.sides[1]] };
    else list.push(next);
    return list;
  }, []);
}

const NONE: readonly Interval[] = [];

function through(cell: Body, from: Vec3, direction: Vec3): Interval | undefined {
  const w = way(cell, from, direction);
  if (!w) return undefined;
  const [into, out] = w.through;
  return { enters: w.enters, leaves: w.leaves, sides: [cell.sides[into]!.side, cell.sides[out]!.side] };
}

const NOT_BESIDE: Vec3 = [0, 0, 0];

/** Pieces whose bounds a stretch of a line comes within `about` of, which is so much along each axis. */
function inLine(
  pieces: readonly Piece[],
  near: readonly number[],
  from: Vec3,
  direction: Vec3,
  begin: number,
  end: number,
  about: Vec3,
): number[] {
  return near.filter((i) => {
    const { least, most } = pieces[i]!.bounds;
    for (const k of [0, 1, 2] as const) {
      const [a, b] = [from[k] + begin * direction[k], from[k] + end * direction[k]];
      if (Math.max(a, b) < least[k] - about[k] || Math.min(a, b) > most[k] + about[k]) return false;
    }
    return true;
  });
}

function nearestSide(
  pieces: readonly Piece[],
  passes: readonly Passed[],
  start: Vec3,
  direction: Vec3,
  length: number,
  radius: number,
): Clearance | undefined {
  let best: Clearance | undefined;
  for (const { piece, enters, leaves } of passes) {
    if (enters > length - HAIR) continue;
    const ends = [
      add(start, scaled(direction, Math.max(0, enters))),
      add(start, scaled(direction, Math.min(leaves, length))),
    ] as const;
    const { cells } = pieces[piece]!;
    const frame = cells.length > 1 ? boundsOf(ends) : undefined;
    for (const cell of cells) {
      // A side of a cell that the screw does not pass is no nearer than the cell itself.
      const least = frame ? boundsApart(frame, cell.bounds) : -HAIR;
      eachSideways(cell, direction, ends, (side, distance) => {
        if (distance <= -HAIR) return;
        const wood = Math.max(distance, least) - radius;
        if (!best || wood < best.wood - 1e-6) best = { piece, side, wood };
      });
    }
  }
  return best;
}

/** Faces of a cell beside a screw, and how far inside each its two ends lie at least. */
function eachSideways(
  cell: Body,
  direction: Vec3,
  ends: readonly [Vec3, Vec3],
  visit: (side: BoardSide, distance: number) => void,
): void {
  if (!cell.aligned) {
    for (const { normal, offset, inner, side } of cell.facets)
      if (!inner && Math.abs(dot(normal, direction)) <= SIDEWAYS)
        visit(side, offset - Math.max(dot(normal, ends[0]), dot(normal, ends[1])));
    return;
  }
  for (const k of [0, 1, 2] as const) {
    if (Math.abs(direction[k]) > SIDEWAYS) continue;
    const near = cell.sides[cell.looks[2 * k]!]!;
    const far = cell.sides[cell.looks[2 * k + 1]!]!;
    if (!near.inner) visit(near.side, Math.min(ends[0][k], ends[1][k]) - cell.bounds.least[k]);
    if (!far.inner) visit(far.side, cell.bounds.most[k] - Math.max(ends[0][k], ends[1][k]));
  }
}

/** A face is beside a screw, and not before it, up to this cosine between its normal and the screw. */
const SIDEWAYS = 0.5;

/** What stands in the room that a driver needs behind the head. */
function roomBehind(
  pieces: readonly Piece[],
  near: readonly number[],
  start: Vec3,
  direction: Vec3,
  { long, short }: Field,
): PlacedScrew["behind"] {
  const back: Vec3 = scaled(direction, -1);
  // The drill's lines lie this far beside the screw's own, and none before its head.
  const beside = (k: 0 | 1 | 2): number => DRIVER.radius * Math.max(Math.abs(long[k]), Math.abs(short[k]));
  const about: Vec3 = [beside(0), beside(1), beside(2)];
  const there = inLine(pieces, near, start, back, HAIR, DRIVER.length, about);
  if (there.length === 0) return undefined;
  let best: PlacedScrew["behind"];
  // Beside the bit there is room; only the drill behind it is thick.
  const look = (ray: Vec3, from: number): void => {
    for (const i of there)
      for (const { enters, leaves } of intervals(pieces[i]!, ray, back)) {
        if (leaves < from + HAIR || enters > DRIVER.length) continue;
        const room = Math.max(from, enters);
        if (!best || room < best.room) best = { piece: i, room };
      }
  };
  look(start, HAIR);
  for (const side of [long, short])
    for (const by of [DRIVER.radius, -DRIVER.radius]) look(add(start, scaled(side, by)), DRIVER.bit);
  return best;
}
