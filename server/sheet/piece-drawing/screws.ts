/** Screws as small crosses where their heads are seen. */
import { dot, type Vec3 } from "../../solid/vector";
import type { View } from "../../solid/view";
import { type Flat, flatten, laid } from "../../solid/view-flat";
import { seenStretches } from "../../solid/view-hidden";
import { INNER, type Item, lines, type Point } from "../display";
import { type Fit, onPaper } from "./paper";
import type { DrawnPiece } from "./pieces";
import { reach } from "./plane";

export interface DrawnScrew {
  /** Its head, on the surface of the piece it goes in by, and which way it is driven. */
  readonly start: Vec3;
  readonly direction: Vec3;
  readonly piece: string;
}

/** The crosses of the heads that look towards the viewer with no wood in front; of those that fall together only the first. */
export function screwItems(
  screws: readonly DrawnScrew[],
  pieces: readonly DrawnPiece[],
  view: View,
  fit: Fit,
): readonly Item[] {
  const shown = new Set(pieces.map(({ id }) => id));
  const solids = pieces.flatMap(({ cells }, i) => cells.map((cell): Flat => flatten(i, cell, view)));
  const drawn: Point[] = [];
  const near = new Near();
  for (const { start, direction, piece } of screws) {
    if (!shown.has(piece) || dot(direction, view.toViewer) > -TOWARDS) continue;
    const at = onPaper(fit, laid(start, view));
    if (near.has(at)) continue;
    const [from, to] = [-1, 1].map((s): Vec3 => beside(start, view, s * HALF));
    if (seenStretches(from!, to!, solids, view).length === 0) continue;
    drawn.push(at);
    near.add(at);
  }
  const strokes = drawn.flatMap(([x, y]): Point[][] => [
    [
      [x - ARM, y - ARM],
      [x + ARM, y + ARM],
    ],
    [
      [x - ARM, y + ARM],
      [x + ARM, y - ARM],
    ],
  ]);
  return strokes.length > 0 ? [lines("screw", INNER, strokes)] : [];
}

/** Points of the paper, in squares as wide as two crosses must be apart. */
class Near {
  private readonly squares = new Map<string, Point[]>();

  add(at: Point): void {
    const square = this.squares.get(keyOf(at, 0, 0));
    if (square) square.push(at);
    else this.squares.set(keyOf(at, 0, 0), [at]);
  }

  /** Whether some point is nearer than they must be apart. */
  has(at: Point): boolean {
    for (const across of [-1, 0, 1])
      for (const down of [-1, 0, 1])
        if (this.squares.get(keyOf(at, across, down))?.some((other) => reach(other, at) < APART)) return true;
    return false;
  }
}

const keyOf = ([x, y]: Point, across: number, down: number): string =>
  `${Math.floor(x / APART) + across} ${Math.floor(y / APART) + down}`;

/** A point beside the head on the paper, a little towards the viewer. */
function beside(p: Vec3, { right, toViewer }: View, by: number): Vec3 {
  return [0, 1, 2].map((k) => p[k]! + by * right[k]! + OUT * toViewer[k]!) as unknown as Vec3;
}

/** mm of wood: half of the bit that is looked for, and how far before the surface. */
const HALF = 0.2;
const OUT = 0.1;
/** Cosine between the way to the viewer and the head, from which it is seen. */
const TOWARDS = 0.2;
/** mm of paper: half a cross, and the least from one to the next. */
const ARM = 0.55;
const APART = 0.7;
