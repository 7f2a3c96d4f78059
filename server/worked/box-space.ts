/**
 * A box as its placed walls and bottom make it: the room inside, also where the walls lean, and the openings through
 * which its fill would come out. Millimetres.
 */
import type { Piece } from "./pieces";

type Axis = 0 | 1 | 2;

/** One side of the room: the wall pieces on it, all looking the same way. */
interface Side {
  readonly axis: 0 | 1;
  /** It stands on the far side: right or back. */
  readonly far: boolean;
  readonly pieces: readonly Piece[];
}

export interface BoxRoom {
  /** At the rim: low and high from left to right and from front to back. */
  readonly rim: readonly [Reach, Reach];
  /** At the bottom. */
  readonly foot: readonly [Reach, Reach];
  readonly low: number;
  readonly high: number;
}

export interface Reach {
  readonly from: number;
  readonly to: number;
}

export interface Opening {
  readonly where: "left" | "right" | "front" | "back" | "bottom";
  /** mm, the smaller first. */
  readonly size: readonly [number, number];
  /** What is let be there. */
  readonly limit: number;
  readonly pieces: readonly Piece[];
}

/** The room between these walls over this bottom; undefined where some side has no wall, or a wall stands askew of the other three. */
export function roomOf(walls: readonly Piece[], floor: readonly Piece[]): BoxRoom | undefined {
  if (walls.some(isAskew)) return undefined;
  const sides = sidesOf(walls);
  // What is filled in stands no higher than the lowest wall.
  const high = Math.min(...sides.map((s) => Math.max(...s.pieces.map((p) => p.bounds.most[2]))));
  const low =
    floor.length > 0
      ? Math.max(...floor.map((p) => p.bounds.most[2]))
      : Math.min(...walls.map((p) => p.bounds.least[2]));
  const reach = (axis: 0 | 1, height: number): Reach | undefined => {
    const [near, far] = [false, true].map((f) => sides.find((s) => s.axis === axis && s.far === f));
    if (!near || !far) return undefined;
    const from = Math.max(...near.pieces.map((p) => innerAt(p, axis, false, height)));
    const to = Math.min(...far.pieces.map((p) => innerAt(p, axis, true, height)));
    return to > from ? { from, to } : undefined;
  };
  const [x1, y1, x0, y0] = [reach(0, high), reach(1, high), reach(0, low), reach(1, low)];
  return x1 && y1 && x0 && y0 && high > low ? { rim: [x1, y1], foot: [x0, y0], low, high } : undefined;
}

/** Walls by the side they stand on: by the way they are thin, and which side of the middle they are. */
function sidesOf(walls: readonly Piece[]): Side[] {
  const middle = (axis: Axis): number => {
    const low = Math.min(...walls.map((p) => p.bounds.least[axis]));
    return (low + Math.max(...walls.map((p) => p.bounds.most[axis]))) / 2;
  };
  const mid = [middle(0), middle(1)] as const;
  const groups = new Map<string, { axis: 0 | 1; far: boolean; pieces: Piece[] }>();
  for (const piece of walls) {
    const { thickness } = piece.pose;
    const axis = Math.abs(thickness[0]) > Math.abs(thickness[1]) ? 0 : 1;
    if (Math.abs(thickness[axis]) < UPRIGHT) continue;
    const far = (piece.bounds.least[axis] + piece.bounds.most[axis]) / 2 > mid[axis];
    const key = `${axis} ${far}`;
    const group = groups.get(key);
    if (group) group.pieces.push(piece);
    else groups.set(key, { axis, far, pieces: [piece] });
  }
  return [...groups.values()];
}

/** A wall leans less than 45°. */
const UPRIGHT = Math.SQRT1_2;
/** Seen from above a wall looks along one of the two directions: the sides of a box of six do not. */
const isAskew = ({ pose: { thickness } }: Piece): boolean =>
  Math.min(Math.abs(thickness[0]), Math.abs(thickness[1])) > ASKEW;
/** Sine of a degree. */
const ASKEW = 0.01745;

/** Where a wall's inner face is at that height, along the axis. */
function innerAt(piece: Piece, axis: 0 | 1, far: boolean, height: number): number {
  const { least, most } = piece.bounds;
  const z = Math.min(Math.max(height, least[2]), most[2]);
  const faces = piece.cells.flatMap((cell) =>
    cell.facets.filter(
      (f) => !f.inner && (f.side === "under face" || f.side === "upper face") && f.normal[axis] > 0 !== far,
    ),
  );
  const at = faces.map(({ normal, offset }) => {
    const other = axis === 0 ? 1 : 0;
    const across = (least[other] + most[other]) / 2;
    return (offset - normal[other] * across - normal[2] * z) / normal[axis];
  });
  if (at.length === 0) return far ? least[axis] : most[axis];
  return far ? Math.min(...at) : Math.max(...at);
}

/**
 * Openings in the walls up to the rim, and in the bottom, wider than these. Whatever stands in a wall or in the bottom, or
 * lies on it, closes it: legs and ledgers too, so all pieces are looked at.
 */
export function openingsOf(
  room: BoxRoom,
  walls: readonly Piece[],
  floor: readonly Piece[],
  all: readonly Piece[],
  limits: { readonly wall: number; readonly bottom: number },
): Opening[] {
  const found: Opening[] = [];
  for (const { axis, far, pieces } of sidesOf(walls)) {
    const other = axis === 0 ? 1 : 0;
    if (pieces.some((p) => Math.abs(p.pose.thickness[axis]) < SQUARE)) continue;
    const { from, to } = room.rim[other];
    const where = axis === 0 ? (far ? "right" : "left") : far ? "back" : "front";
    const frame = { u: other, v: 2 as Axis, from: [from, room.low], to: [to, room.high] } as const;
    const hole = largestHole(frame, within(axis, pieces, all));
    if (hole && hole[0] > limits.wall + SAME) found.push({ where, size: hole, limit: limits.wall, pieces });
  }
  if (floor.length > 0) {
    const [x, y] = room.foot;
    const frame = { u: 0 as Axis, v: 1 as Axis, from: [x.from, y.from], to: [x.to, y.to] } as const;
    const hole = largestHole(frame, within(2, floor, all));
    if (hole && hole[0] > limits.bottom + SAME)
      found.push({ where: "bottom", size: hole, limit: limits.bottom, pieces: floor });
  }
  return found;
}

/** Pieces that stand in the slab of these, or lie on it. */
function within(axis: Axis, slab: readonly Piece[], all: readonly Piece[]): Piece[] {
  const low = Math.min(...slab.map((p) => p.bounds.least[axis])) - SAME;
  const high = Math.max(...slab.map((p) => p.bounds.most[axis])) + SAME;
  return all.filter((p) => p.bounds.most[axis] > low && p.bounds.least[axis] < high);
}

/** Cosine from which a wall is taken to stand square. */
const SQUARE = 0.9999;

interface FrameIn {
  readonly u: Axis;
  readonly v: Axis;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** The opening of a rectangle, less what pieces cover of it, whose narrower side is the widest; the narrower side first. */
function largestHole({ u, v, from, to }: FrameIn, pieces: readonly Piece[]): [number, number] | undefined {
  const covers = pieces.flatMap((p) =>
    p.cells.map(({ bounds }) => ({
      u: [bounds.least[u], bounds.most[u]] as const,
      v: [bounds.least[v], bounds.most[v]] as const,
    })),
  );
  const us = cuts(
    covers.map((c) => c.u),
    from[0],
    to[0],
  );
  const vs = cuts(
    covers.map((c) => c.v),
    from[1],
    to[1],
  );
  const open = (i: number, j: number): boolean => {
    const [x, y] = [(us[i]! + us[i + 1]!) / 2, (vs[j]! + vs[j + 1]!) / 2];
    return !covers.some((c) => x > c.u[0] && x < c.u[1] && y > c.v[0] && y < c.v[1]);
  };
  let best: [number, number] | undefined;
  const take = (a: number, b: number): void => {
    const size: [number, number] = a < b ? [a, b] : [b, a];
    if (!best || size[0] > best[0]) best = size;
  };
  for (let i = 0; i + 1 < us.length; i++)
    for (let j = 0; j + 1 < vs.length; j++) {
      if (!open(i, j)) continue;
      // Grown along each direction first: the larger of the two rectangles that begin here.
      let right = i;
      while (right + 2 < us.length && open(right + 1, j)) right++;
      let up = j;
      while (up + 2 < vs.length && rowOpen(i, right, up + 1, open)) up++;
      take(us[right + 1]! - us[i]!, vs[up + 1]! - vs[j]!);
    }
  return best;
}

const rowOpen = (i: number, right: number, j: number, open: (i: number, j: number) => boolean): boolean => {
  for (let k = i; k <= right; k++) if (!open(k, j)) return false;
  return true;
};

/** Where edges of pieces cut a stretch, both its ends included; edges nearer than arithmetic tells apart are one. */
function cuts(edges: readonly (readonly [number, number])[], from: number, to: number): number[] {
  const all = [from, to, ...edges.flat().filter((x) => x > from && x < to)].sort((a, b) => a - b);
  return all.filter((x, i) => i === 0 || x - all[i - 1]! > SAME || x === to);
}

const SAME = 0.05;
