/** The ways from face to face along which pieces were moved, as thin dash-dot lines. */
import { DisjointSets } from "../../solid/disjoint-sets";
import type { Vec3 } from "../../solid/vector";
import type { View } from "../../solid/view";
import { type Flat, flatten, laid } from "../../solid/view-flat";
import { seenStretches } from "../../solid/view-hidden";
import { type Item, lines, type Point, THIN } from "../display";
import { DASH_DOT, dashed } from "./dashes";
import { type Fit, onPaper } from "./paper";
import type { DrawnPiece } from "./pieces";
import { reach } from "./plane";
import type { Touch } from "./touching";

/** From the middle of a contact on the one piece, along the axes, to its middle on the other. */
export type Trail = readonly Vec3[];

/** As many trails as join all pieces that touch: straight ones before bent ones, short before long. */
export function trailsOf(pairs: readonly Touch[], moves: readonly Vec3[]): readonly Trail[] {
  const ways = pairs
    .map(({ first, second, normal, middle }) => {
      const trail = trailOf(middle, normal, moves[first]!, moves[second]!);
      return { first, second, trail, long: lengthOf(trail) };
    })
    .filter(({ trail }) => trail.length > 1)
    .sort(
      (a, b) =>
        a.trail.length - b.trail.length || a.long - b.long || a.first - b.first || a.second - b.second,
    );
  const joined = new DisjointSets<number>();
  return ways.flatMap(({ first, second, trail }) => (joined.join(first, second) ? [trail] : []));
}

/** First off the face, then along the other axes. */
function trailOf(middle: Vec3, normal: Vec3, from: Vec3, to: Vec3): Trail {
  const at = ([x, y, z]: Vec3): Vec3 => [middle[0] + x, middle[1] + y, middle[2] + z];
  const order = ([2, 1, 0] as const)
    .filter((k) => Math.abs(to[k] - from[k]) > STILL)
    .sort((a, b) => Math.abs(normal[b]) - Math.abs(normal[a]));
  const now: [number, number, number] = [...from];
  const bends = order.map((k) => {
    now[k] = to[k];
    return at(now);
  });
  return [at(from), ...bends];
}

const lengthOf = (trail: Trail): number =>
  trail.slice(1).reduce((sum, p, i) => sum + Math.hypot(...p.map((x, k) => x - trail[i]![k]!)), 0);

/** What is seen of the trails between the pieces; of those that run close beside each other only the first. */
export function trailItems(
  trails: readonly Trail[],
  pieces: readonly DrawnPiece[],
  view: View,
  fit: Fit,
): readonly Item[] {
  const solids = pieces.flatMap(({ cells }, i) => cells.map((cell): Flat => flatten(i, cell, view)));
  const drawn: (readonly Point[])[] = [];
  const strokes = trails.flatMap((trail) => {
    const path = trail.map((p) => onPaper(fit, laid(p, view)));
    if (drawn.some((other) => runsBeside(other, path))) return [];
    drawn.push(path);
    return trail.slice(1).flatMap((to, i) => {
      const [a, b] = [path[i]!, path[i + 1]!];
      const at = (t: number): Point => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
      return seenStretches(trail[i]!, to, solids, view).flatMap(([p, q]) => dashed([at(p), at(q)], DASH_DOT));
    });
  });
  return strokes.length > 0 ? [lines("trail", THIN, strokes)] : [];
}

const runsBeside = (one: readonly Point[], other: readonly Point[]): boolean =>
  one.length === other.length && one.every((p, i) => reach(p, other[i]!) < APART);

/** mm: moves nearer than this are the same. */
const STILL = 1e-6;
/** mm of paper between trails. */
const APART = 4;
