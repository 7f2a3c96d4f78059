/** How far one outline must move on the paper to be clear of another. */
import type { Point2 } from "../../solid/view";

/** How far the second must still go in a direction (unit length or not) until a gap parts them; 0 when it does, Infinity when it never will. */
export function wayToPart(
  first: readonly Point2[],
  second: readonly Point2[],
  direction: Point2,
  gap: number,
): number {
  let least = Infinity;
  const consider = ([x, y]: Point2): boolean => {
    const need = farthest(first, x, y) - nearest(second, x, y) + gap;
    const speed = x * direction[0] + y * direction[1];
    if (need <= ROUNDING) least = 0;
    else if (speed > SLOW) least = Math.min(least, need / speed);
    return least === 0;
  };
  for (const normal of normalsOf(first)) if (consider(normal)) return 0;
  for (const [x, y] of normalsOf(second)) if (consider([-x, -y])) return 0;
  return least;
}

/** Outward normals of a counter-clockwise outline. */
function normalsOf(outline: readonly Point2[]): readonly Point2[] {
  return outline.flatMap(([ax, ay], i): Point2[] => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    const long = Math.hypot(bx - ax, by - ay);
    return long > 0 ? [[(by - ay) / long, (ax - bx) / long]] : [];
  });
}

const farthest = (points: readonly Point2[], x: number, y: number): number =>
  points.reduce((best, [px, py]) => Math.max(best, px * x + py * y), -Infinity);
const nearest = (points: readonly Point2[], x: number, y: number): number =>
  points.reduce((best, [px, py]) => Math.min(best, px * x + py * y), Infinity);

const ROUNDING = 1e-6;
/** A direction nearly along the line between two outlines does not part them in any distance worth drawing. */
const SLOW = 0.05;
