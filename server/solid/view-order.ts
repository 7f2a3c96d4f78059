/** Solids from back to front, for painting one over the other. */
import type { Steps } from "./steps";
import { dot, type Vec3 } from "./vector";
import { EDGE_ON, type Flat, mayHide, type Point2, type View } from "./view-flat";

/** From back to front, as far as an order exists; of solids that pass around each other the deepest comes first. One step a solid. */
export function* backToFront(cells: readonly Flat[], view: View): Steps<Flat[]> {
  const outlines = cells.map(({ points }) => hullOf(points));
  const before = cells.map((): number[] => []);
  const waits = cells.map(() => 0);
  for (let i = 0; i < cells.length; i++) {
    for (let j = i + 1; j < cells.length; j++) {
      const [a, b] = [cells[i]!, cells[j]!];
      if (!mayHide(a.frame, b.frame) && !mayHide(b.frame, a.frame)) continue;
      const spot = commonSpot(outlines[i]!, outlines[j]!);
      if (!spot) continue;
      const [back, front] = depthAt(a, spot, view) < depthAt(b, spot, view) ? [i, j] : [j, i];
      before[back]!.push(front);
      waits[front]!++;
    }
    yield;
  }
  return sorted(before, waits, cells).map((i) => cells[i]!);
}

function sorted(before: readonly number[][], waits: number[], cells: readonly Flat[]): number[] {
  const depth = (i: number): number => cells[i]!.frame.most[2];
  const byDepth = cells.map((_, i) => i).sort((a, b) => depth(a) - depth(b) || a - b);
  const ready = byDepth.filter((i) => waits[i] === 0).reverse();
  const done = new Set<number>();
  let rest = 0;
  while (done.size < cells.length) {
    let i = ready.pop();
    if (i === undefined) {
      while (done.has(byDepth[rest]!)) rest++;
      i = byDepth[rest]!;
    }
    if (done.has(i)) continue;
    done.add(i);
    for (const j of before[i]!) if (--waits[j]! === 0) ready.push(j);
  }
  return [...done];
}

/** The outline of points on the paper, counter-clockwise, no three corners in line. */
export function hullOf(points: readonly (Point2 | Vec3)[]): Point2[] {
  const sortedPoints = points.map(([x, y]): Point2 => [x, y]).sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list: readonly Point2[]): Point2[] => {
    const chain: Point2[] = [];
    for (const p of list) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, p) <= FLAT) chain.pop();
      chain.push(p);
    }
    chain.pop();
    return chain;
  };
  return [...half(sortedPoints), ...half(sortedPoints.reverse())];
}

const turn = (a: Point2, b: Point2, c: Point2): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** A point well inside both outlines; undefined when they share no paper worth painting. */
function commonSpot(a: readonly Point2[], b: readonly Point2[]): Point2 | undefined {
  let polygon = a;
  for (let i = 0; i < b.length && polygon.length > 0; i++)
    polygon = leftOf(polygon, b[i]!, b[(i + 1) % b.length]!);
  if (polygon.length < 3) return undefined;
  let twice = 0;
  for (let i = 1; i + 1 < polygon.length; i++) twice += turn(polygon[0]!, polygon[i]!, polygon[i + 1]!);
  if (twice < 2 * LEAST_SHARED) return undefined;
  const mean = (k: 0 | 1): number => polygon.reduce((sum, p) => sum + p[k], 0) / polygon.length;
  return [mean(0), mean(1)];
}

function leftOf(polygon: readonly Point2[], p: Point2, q: Point2): Point2[] {
  const kept: Point2[] = [];
  let a = polygon.at(-1)!;
  let high = turn(p, q, a);
  for (const b of polygon) {
    const next = turn(p, q, b);
    if (next > 0 !== high > 0) {
      const t = high / (high - next);
      kept.push([a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]);
    }
    if (next > 0) kept.push(b);
    [a, high] = [b, next];
  }
  return kept;
}

/** How near to the viewer the middle of a solid's wood is over a spot of the paper inside its outline. */
function depthAt({ body, facing }: Flat, [x, y]: Point2, { right, up }: View): number {
  let [least, most] = [-Infinity, Infinity];
  for (let i = 0; i < body.facets.length; i++) {
    const { normal, offset } = body.facets[i]!;
    const b = facing[i]!;
    if (Math.abs(b) < EDGE_ON) continue;
    const z = (offset - dot(normal, right) * x - dot(normal, up) * y) / b;
    if (b > 0) most = Math.min(most, z);
    else least = Math.max(least, z);
  }
  return (least + most) / 2;
}

/** Twice the square millimetres of a triangle whose corners are in line but for the arithmetic. */
const FLAT = 1e-6;
/** Square millimetres in which two outlines must overlap for one solid to stand before the other. */
const LEAST_SHARED = 0.01;
