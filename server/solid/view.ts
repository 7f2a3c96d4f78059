/**
 * Lines of solids as they are seen from one side, hidden ones left out exactly: what a solid hides of an edge is one
 * stretch of it. Parallel projection; millimetres.
 */
import { radians } from "./angle";
import type { Ridge } from "./board";
import { type Body, boundsOf } from "./contact";
import { cross, dot, type Vec3 } from "./vector";

/** Where one looks from. `toViewer`, `right` and `up` have unit length and are square to each other. */
export interface View {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly toViewer: Vec3;
}

/** Turned about the upright, then raised, in degrees: 0, 0 looks at the front; a positive turn brings the right side forward. */
export function viewFrom(turn: number, raise: number): View {
  const [t, r] = [radians(turn), radians(raise)];
  const right: Vec3 = [Math.cos(t), Math.sin(t), 0];
  const toViewer: Vec3 = [Math.sin(t) * Math.cos(r), -Math.cos(t) * Math.cos(r), Math.sin(r)];
  return { right, toViewer, up: cross(toViewer, right) };
}

/** A piece where it stands. */
export interface Seen {
  readonly id: string;
  readonly cells: readonly Body[];
  readonly ridges: readonly Ridge[];
}

export type Point2 = readonly [x: number, y: number];

export interface Line {
  readonly id: string;
  readonly from: Point2;
  readonly to: Point2;
  /** Part of the outline of its piece, or an edge between two faces that are both seen. */
  readonly outline: boolean;
}

export interface Face2 {
  readonly id: string;
  readonly points: readonly Point2[];
  /** Cosine between the face and the line of sight. */
  readonly facing: number;
}

export interface Picture {
  /** Back to front where solids do not pass around each other. */
  readonly faces: readonly Face2[];
  readonly lines: readonly Line[];
}

/** What is seen of the pieces. O(edges × solids in front of them). */
export function pictureOf(pieces: readonly Seen[], view: View): Picture {
  const flats = pieces.map(({ id, cells }) => cells.map((cell) => flatten(id, cell, view)));
  const cells = flats.flat();
  const lines = pieces.flatMap((piece, i) => {
    const own = flats[i]!;
    const frame = boundsOf(own.flatMap(({ frame: { least, most } }) => [least, most]));
    // A single convex cell hides none of its own ridges that face the viewer.
    const near = cells.filter((c) => (own.length > 1 || c !== own[0]) && overlaps(frame, c.frame));
    return piece.ridges.flatMap((ridge) => visible(piece.id, ridge, near, view));
  });
  const faces = inOrder(cells).flatMap((cell) =>
    cell.body.facets.flatMap((facet): Face2[] => {
      const facing = dot(facet.normal, view.toViewer);
      if (facing <= EDGE_ON || facet.inner) return [];
      return [{ id: cell.id, points: facet.loop.map((i) => cell.flat[i]!), facing }];
    }),
  );
  return { faces, lines };
}

interface Frame {
  readonly least: Vec3;
  readonly most: Vec3;
}

interface Flat {
  readonly id: string;
  readonly body: Body;
  /** Each vertex on the paper, and how near it is to the viewer. */
  readonly flat: readonly Point2[];
  readonly depth: readonly number[];
  readonly frame: Frame;
  readonly view: View;
}

function flatten(id: string, body: Body, view: View): Flat {
  const points = body.vertices.map((v): Vec3 => [dot(v, view.right), dot(v, view.up), dot(v, view.toViewer)]);
  const used = [...new Set(body.facets.flatMap((f) => f.loop))].map((i) => points[i]!);
  return {
    id,
    body,
    flat: points.map(([x, y]) => [x, y]),
    depth: points.map(([, , z]) => z),
    frame: boundsOf(used),
    view,
  };
}

/** Whether the second may hide some of the first. */
function overlaps(a: Frame, b: Frame): boolean {
  return (
    a.least[0] < b.most[0] &&
    b.least[0] < a.most[0] &&
    a.least[1] < b.most[1] &&
    b.least[1] < a.most[1] &&
    a.least[2] < b.most[2]
  );
}

function visible(id: string, { from, to, normals }: Ridge, near: readonly Flat[], view: View): Line[] {
  const facing = normals.filter((n) => dot(n, view.toViewer) > EDGE_ON).length;
  if (facing === 0) return [];
  const project = (p: Vec3): Vec3 => [dot(p, view.right), dot(p, view.up), dot(p, view.toViewer)];
  const [a, b] = [project(from), project(to)];
  const frame = boundsOf([a, b]);
  const hidden: [number, number][] = [];
  for (const other of near) {
    if (!crosses(frame, other.frame)) continue;
    const stretch = hiddenStretch(from, to, other);
    if (stretch) hidden.push(stretch);
  }
  const at = (t: number): Point2 => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
  const outline = facing < normals.length;
  return rests(hidden).map(([p, q]) => ({ id, from: at(p), to: at(q), outline }));
}

/** Whether a line, which may have no width, comes into the frame of what may stand before it. */
const crosses = (line: Frame, other: Frame): boolean =>
  line.least[0] <= other.most[0] &&
  line.most[0] >= other.least[0] &&
  line.least[1] <= other.most[1] &&
  line.most[1] >= other.least[1] &&
  line.least[2] < other.most[2];

/** Where along p–q (0 to 1) the other solid stands in front. */
function hiddenStretch(p: Vec3, q: Vec3, { body, view }: Flat): [number, number] | undefined {
  const along: Vec3 = [q[0] - p[0], q[1] - p[1], q[2] - p[2]];
  let [from, to] = [0, 1];
  /** Bounds of how far towards the viewer the solid is met: s ≤ c - a t, and s ≥ c - a t. */
  const upper: [number, number][] = [];
  const lower: [number, number][] = [[SHRINK, 0]];
  const narrow = (a: number, c: number): void => {
    // a t ≤ c
    if (Math.abs(a) < 1e-12) {
      if (c < 0) from = 2;
    } else if (a > 0) to = Math.min(to, c / a);
    else from = Math.max(from, c / a);
  };
  for (const { normal, offset } of body.facets) {
    const a = dot(normal, along);
    const b = dot(normal, view.toViewer);
    const c = offset - SHRINK - dot(normal, p);
    if (b > EDGE_ON) upper.push([c / b, a / b]);
    else if (b < -EDGE_ON) lower.push([c / b, a / b]);
    else narrow(a, c);
    if (from >= to) return undefined;
  }
  for (const [cu, au] of upper)
    for (const [cl, al] of lower) {
      narrow(au - al, cu - cl);
      if (from >= to) return undefined;
    }
  return [from, to];
}

/** What is left of 0 to 1. */
function rests(hidden: [number, number][]): [number, number][] {
  if (hidden.length === 0) return [[0, 1]];
  hidden.sort((a, b) => a[0] - b[0]);
  const left: [number, number][] = [];
  let at = 0;
  for (const [from, to] of hidden) {
    if (from > at + SLIVER) left.push([at, from]);
    at = Math.max(at, to);
  }
  if (at < 1 - SLIVER) left.push([at, 1]);
  return left;
}

/** Faces and lines of sight nearer than this (cosine) are edge-on. */
const EDGE_ON = 1e-9;
/** A solid hides what lies this far behind its surface, in mm: what lies on it is seen. */
const SHRINK = 0.02;
/** Shares of an edge that are not worth a line. */
const SLIVER = 1e-6;

/** Solids from back to front, as far as an order exists. */
function inOrder(cells: readonly Flat[]): Flat[] {
  const behind = cells.map((): number[] => []);
  const waits = cells.map(() => 0);
  cells.forEach((a, i) => {
    for (let j = i + 1; j < cells.length; j++) {
      const b = cells[j]!;
      if (!overlaps(a.frame, b.frame) && !overlaps(b.frame, a.frame)) continue;
      const front = inFront(a, b);
      if (front === 0) continue;
      const [back, fore] = front > 0 ? [i, j] : [j, i];
      behind[back]!.push(fore);
      waits[fore]!++;
    }
  });
  const order: Flat[] = [];
  const done = new Set<number>();
  const ready = cells.map((_, i) => i).filter((i) => waits[i] === 0);
  const finish = (i: number): void => {
    done.add(i);
    order.push(cells[i]!);
    for (const j of behind[i]!) {
      waits[j]!--;
      if (waits[j] === 0 && !done.has(j)) ready.push(j);
    }
  };
  const byDepth = cells
    .map((_, i) => i)
    .sort((a, b) => cells[a]!.frame.most[2] - cells[b]!.frame.most[2] || a - b);
  let rest = 0;
  while (order.length < cells.length) {
    const i = ready.pop();
    if (i !== undefined) {
      if (!done.has(i)) finish(i);
      continue;
    }
    // Solids that pass around each other: the deepest is taken first.
    while (done.has(byDepth[rest]!)) rest++;
    finish(byDepth[rest]!);
  }
  return order;
}

/** 1 when b stands before a, -1 when a stands before b, 0 when it does not matter: told by a face that parts them. */
function inFront(a: Flat, b: Flat): number {
  const parted = (one: Flat, other: Flat): number => {
    for (const { normal, offset } of one.body.facets) {
      const facing = dot(normal, one.view.toViewer);
      if (Math.abs(facing) < EDGE_ON) continue;
      if (other.body.vertices.every((v) => dot(normal, v) >= offset - SHRINK)) return facing > 0 ? 1 : -1;
    }
    return 0;
  };
  return (
    parted(a, b) ||
    -parted(b, a) ||
    Math.sign(b.frame.most[2] + b.frame.least[2] - a.frame.most[2] - a.frame.least[2])
  );
}
