/** Solids laid on the paper of a view: each corner to the right, up, and towards the viewer. Millimetres. */
import { radians } from "./angle";
import { type Body, type Bounds, boundsOf } from "./contact";
import { cross, dot, type Vec3 } from "./vector";

/** Where one looks from. `toViewer`, `right` and `up` have unit length and are square to each other. */
export interface View {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly toViewer: Vec3;
}

export type Point2 = readonly [x: number, y: number];

/** Turned about the upright, then raised, in degrees: 0, 0 looks at the front; a positive turn brings the right side forward. */
export function viewFrom(turn: number, raise: number): View {
  const [t, r] = [radians(turn), radians(raise)];
  const right: Vec3 = [Math.cos(t), Math.sin(t), 0];
  const toViewer: Vec3 = [Math.sin(t) * Math.cos(r), -Math.cos(t) * Math.cos(r), Math.sin(r)];
  return { right, toViewer, up: cross(toViewer, right) };
}

/** A point or a direction as the view has it: to the right, up, towards the viewer. */
export const laid = (p: Vec3, { right, up, toViewer }: View): Vec3 => [
  dot(p, right),
  dot(p, up),
  dot(p, toViewer),
];

/** One convex solid on the paper. */
export interface Flat {
  /** Place of its piece in the list of pieces. */
  readonly piece: number;
  readonly body: Body;
  /** Every vertex of the body as the view has it. */
  readonly points: readonly Vec3[];
  readonly frame: Bounds;
  /** Cosine between each facet's outward normal and the direction to the viewer. */
  readonly facing: readonly number[];
}

export function flatten(piece: number, body: Body, view: View): Flat {
  const points = body.vertices.map((v) => laid(v, view));
  const facing = body.facets.map(({ normal }) => dot(normal, view.toViewer));
  return { piece, body, points, frame: boundsOf(points), facing };
}

/** Whether the second may hide some of the first: they share paper, and the second comes nearer to the viewer. */
export const mayHide = (a: Bounds, b: Bounds): boolean =>
  a.least[0] <= b.most[0] &&
  b.least[0] <= a.most[0] &&
  a.least[1] <= b.most[1] &&
  b.least[1] <= a.most[1] &&
  a.least[2] < b.most[2];

/** Faces and lines of sight nearer than this (cosine) are edge-on. */
export const EDGE_ON = 1e-9;
