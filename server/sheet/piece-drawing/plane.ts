/** Points, lengths and crossings on the page, in mm of paper. */
import type { Box, Point } from "../display";

export type Stroke = readonly [from: Point, to: Point];

export const along = ([x, y]: Point, [ux, uy]: Point, by: number): Point => [x + ux * by, y + uy * by];
export const middle = ([ax, ay]: Point, [bx, by]: Point): Point => [(ax + bx) / 2, (ay + by) / 2];
export const reach = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(bx - ax, by - ay);

/** The direction from one point to another; to the right when they are one. */
export function heading(a: Point, b: Point): Point {
  const long = reach(a, b);
  return long > 0 ? [(b[0] - a[0]) / long, (b[1] - a[1]) / long] : [1, 0];
}

export function around(boxes: readonly Box[]): Box {
  return {
    left: Math.min(...boxes.map((b) => b.left)),
    top: Math.min(...boxes.map((b) => b.top)),
    right: Math.max(...boxes.map((b) => b.right)),
    bottom: Math.max(...boxes.map((b) => b.bottom)),
  };
}

/** The four sides of a box. */
export function sidesOf({ left, top, right, bottom }: Box): readonly Stroke[] {
  return [
    [
      [left, top],
      [right, top],
    ],
    [
      [right, top],
      [right, bottom],
    ],
    [
      [right, bottom],
      [left, bottom],
    ],
    [
      [left, bottom],
      [left, top],
    ],
  ];
}

/** Whether two strokes cross, other than in a common end. */
export function cross([a, b]: Stroke, [c, d]: Stroke): boolean {
  const side = (p: Point, q: Point, r: Point): number =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** How far a point lies from a stroke. */
export function distance(p: Point, [a, b]: Stroke): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const long = dx * dx + dy * dy;
  const t = long === 0 ? 0 : ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / long;
  const s = Math.min(1, Math.max(0, t));
  return reach(p, [a[0] + s * dx, a[1] + s * dy]);
}
