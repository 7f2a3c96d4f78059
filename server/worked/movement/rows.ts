/** Rows of boards that lie side by side, edge to edge, and what stands at their ends. Millimetres. */
import { isSquare } from "../../solid/block-body";
import { type Body, type Bounds, boundsOf, clipped, TOUCHING } from "../../solid/contact";
import { add, dot, scaled, spanAlong, type Vec3 } from "../../solid/vector";
import type { Piece } from "../pieces";
import type { Space } from "../space";

/** A board, by its place among all pieces, and how far it reaches along the row. */
export interface BoardInRow {
  readonly piece: number;
  readonly from: number;
  readonly to: number;
}

export interface BoardRow {
  /** Unit vector along the row: across the width of its boards. */
  readonly direction: Vec3;
  /** Two or more, in order along that direction. */
  readonly boards: readonly BoardInRow[];
}

/** What holds a row at an end. */
export interface RowEnd {
  readonly piece: number;
  /** From the last board's edge, at the nearest. */
  readonly gap: number;
}

/** Sizes of a piece that its pose does not tell. */
export interface BoardSize {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}
/** Undefined for what is no board. */
export type SizeOf = (piece: Piece) => BoardSize | undefined;

/** Boards further apart than this are no neighbours: 1". */
const FAR = 25.4;
/** Rows climb less steeply than this: sine of 30 degrees. Boards stacked on each other swell upwards, where nothing holds them. */
const STEEP = 0.5;
/** Neighbours lie along each other for this share of the shorter. */
const ALONG = 0.5;

interface Lying extends BoardInRow {
  readonly along: readonly [number, number];
}

/** Rows of equally thick boards in one plane whose edges face each other, level or nearly so. */
export function boardRows({ pieces }: Space, sizeOf: SizeOf): BoardRow[] {
  const planes = new Map<string, { readonly direction: Vec3; readonly boards: Lying[] }>();
  pieces.forEach((piece, i) => {
    const size = sizeOf(piece);
    if (!size) return;
    const { pose } = piece;
    const [direction, thick, along] = [onward(pose.width), onward(pose.thickness), onward(pose.length)];
    if (Math.abs(direction[2]) > STEEP) return;
    const faces = reach(pose.origin, pose.thickness, size.thickness, thick);
    const [from, to] = reach(pose.origin, pose.width, size.width, direction);
    const key = `${turn(direction)} ${turn(thick)} ${tenths(faces[0])} ${tenths(faces[1])}`;
    const board = { piece: i, from, to, along: reach(pose.origin, pose.length, size.length, along) };
    const plane = planes.get(key);
    if (plane) plane.boards.push(board);
    else planes.set(key, { direction, boards: [board] });
  });
  return [...planes.values()].flatMap(({ direction, boards }) =>
    rowsIn(boards).map((row) => ({ direction, boards: row })),
  );
}

/** The boards of one plane, swept along the row: each goes on the row that ends before it and lies along it. */
function rowsIn(boards: readonly Lying[]): Lying[][] {
  const all: Lying[][] = [];
  let open: Lying[][] = [];
  for (const board of [...boards].sort((a, b) => a.from - b.from)) {
    open = open.filter((row) => row.at(-1)!.to >= board.from - FAR);
    const before = open.filter((row) => follows(row.at(-1)!, board));
    const nearest = before.sort((a, b) => b.at(-1)!.to - a.at(-1)!.to)[0];
    if (nearest) nearest.push(board);
    else {
      const row = [board];
      open.push(row);
      all.push(row);
    }
  }
  return all.filter((row) => row.length > 1);
}

function follows(one: Lying, next: Lying): boolean {
  if (next.from < one.to - TOUCHING) return false;
  const common = Math.min(one.along[1], next.along[1]) - Math.max(one.along[0], next.along[0]);
  const shorter = Math.min(one.along[1] - one.along[0], next.along[1] - next.along[0]);
  return common >= ALONG * shorter;
}

/** What reaches less than this over the sides of a board's edge, or less than that along it, holds nothing there. */
const INSET = 1;
const FROM_ENDS = 6;

/** What stands before the first board of a row and after its last, no further than `within`. */
export function rowEnds(
  { boards, direction }: BoardRow,
  space: Space,
  sizeOf: SizeOf,
  within: number,
): readonly [RowEnd | undefined, RowEnd | undefined] {
  const own = new Set(boards.map((b) => b.piece));
  const end = ({ piece }: BoardInRow, out: Vec3): RowEnd | undefined => {
    const size = sizeOf(space.pieces[piece]!);
    return size && nearestTo(edgeOf(space.pieces[piece]!, size, out), own, space, within);
  };
  return [end(boards[0]!, scaled(direction, -1)), end(boards.at(-1)!, direction)];
}

/** The edge of a board that looks that way: a rectangle, a little smaller than it is. */
interface Edge {
  readonly out: Vec3;
  /** How far along that direction it stands. */
  readonly at: number;
  readonly bounds: Bounds;
  /** The axis of the world that it looks along; undefined for a board that lies askew. */
  readonly axis: 0 | 1 | 2 | undefined;
  /** Half-spaces, of which the rectangle is what lies before and behind it. */
  readonly sides: readonly { readonly normal: Vec3; readonly offset: number }[];
}

function edgeOf({ pose }: Piece, size: BoardSize, out: Vec3): Edge {
  const { length, width, thickness, origin } = pose;
  const foot = add(origin, scaled(width, dot(width, out) > 0 ? size.width : 0));
  const ends = Math.min(FROM_ENDS, size.length / 4);
  const faces = Math.min(INSET, size.thickness / 4);
  const [near, far] = [ends, size.length - ends];
  const [low, high] = [faces, size.thickness - faces];
  const corner = (x: number, z: number): Vec3 => add(add(foot, scaled(length, x)), scaled(thickness, z));
  const side = (normal: Vec3, limit: number) => ({ normal, offset: dot(normal, foot) + limit });
  return {
    out,
    at: dot(foot, out),
    bounds: boundsOf([corner(near, low), corner(far, low), corner(near, high), corner(far, high)]),
    axis: isSquare(pose) ? AXES.find((k) => Math.abs(out[k]) > STRAIGHT) : undefined,
    sides: [
      side(length, far),
      side(scaled(length, -1), -near),
      side(thickness, high),
      side(scaled(thickness, -1), -low),
    ],
  };
}

/** The nearest of what stands before an edge. */
function nearestTo(edge: Edge, own: ReadonlySet<number>, space: Space, within: number): RowEnd | undefined {
  let best: RowEnd | undefined;
  for (const piece of space.grid.near(edge.bounds, within)) {
    if (own.has(piece)) continue;
    for (const cell of space.pieces[piece]!.cells) {
      const gap =
        edge.axis !== undefined && cell.aligned ? gapToBlock(edge, edge.axis, cell) : gapTo(edge, cell);
      if (gap > -DEEP && gap <= within && (!best || gap < best.gap)) best = { piece, gap: Math.max(0, gap) };
    }
  }
  return best;
}

/** From an edge to the nearest point before it of the faces of a solid that look at it; Infinity where none does. */
function gapTo({ out, at, sides }: Edge, { facets, vertices }: Body): number {
  let least = Infinity;
  for (const { normal, loop, inner } of facets) {
    if (inner || dot(normal, out) > -FACING) continue;
    let seen = loop.map((i) => vertices[i]!);
    for (const { normal: side, offset } of sides) seen = clipped(seen, side, offset);
    if (seen.length > 2) least = Math.min(least, spanAlong(seen, out)[0] - at);
  }
  return least;
}

/** The same to a block that stands square, from its bounds alone. */
function gapToBlock({ out, at, bounds }: Edge, axis: 0 | 1 | 2, { bounds: { least, most } }: Body): number {
  for (const k of AXES)
    if (k !== axis && (least[k] >= bounds.most[k] || most[k] <= bounds.least[k])) return Infinity;
  return (out[axis] > 0 ? least[axis] : -most[axis]) - at;
}

const AXES = [0, 1, 2] as const;
/** Cosine from which a direction is that of an axis. */
const STRAIGHT = 1 - 1e-9;
/** Cosine from which a face looks at an edge at all. */
const FACING = 0.01;
/** A face further behind the edge than this is the far side of something that overlaps the board. */
const DEEP = 1;

function reach(origin: Vec3, side: Vec3, size: number, direction: Vec3): [number, number] {
  const from = dot(origin, direction);
  const to = from + size * dot(side, direction);
  return from < to ? [from, to] : [to, from];
}

/** The same direction for boards that are turned end for end or upside down. */
function onward(v: Vec3): Vec3 {
  const first = v.find((x) => Math.abs(x) > 1e-6) ?? 1;
  return first < 0 ? [-v[0], -v[1], -v[2]] : v;
}

/** Set a little aside, since many fractions of an inch lie just where rounding turns. */
const tenths = (mm: number): number => Math.round(mm * 10 + 0.3);
const thousandths = (x: number): number => Math.round(x * 1000 + 0.3);
const turn = ([x, y, z]: Vec3): string => `${thousandths(x)},${thousandths(y)},${thousandths(z)}`;
