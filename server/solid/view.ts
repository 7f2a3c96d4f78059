/**
 * Solids as they are seen from one side: faces to paint one over the other, and lines with what is hidden left out
 * exactly. Parallel projection; millimetres.
 */
import type { Ridge } from "./board";
import type { Body } from "./contact";
import { finished, type Steps } from "./steps";
import type { Vec3 } from "./vector";
import { EDGE_ON, flatten, laid, type Point2, type View } from "./view-flat";
import { type Line, ridgeLines } from "./view-lines";
import { merged } from "./view-merge";
import { backToFront } from "./view-order";

export { type Point2, type View, viewFrom } from "./view-flat";
export type { Line } from "./view-lines";
export { lightened } from "./view-merge";

/** A piece where it stands. */
export interface Seen {
  readonly id: string;
  readonly cells: readonly Body[];
  readonly ridges: readonly Ridge[];
}

export interface Face2 {
  readonly id: string;
  readonly points: readonly Point2[];
  /** Outward, unit length: to the right, up, and towards the viewer, which is above 0. */
  readonly normal: Vec3;
  /** How near to the viewer the first point is, in mm; nearer is more. */
  readonly depth: number;
}

export interface Picture {
  /** Back to front where solids do not pass around each other. */
  readonly faces: readonly Face2[];
  readonly lines: readonly Line[];
  /** Lines that other wood hides; none unless asked for. */
  readonly hidden: readonly Line[];
}

export interface PictureOptions {
  /** Lines along each other are drawn once when no further apart than this, in mm. */
  readonly within?: number;
  readonly hidden?: boolean;
}

/** What is seen of the pieces. O(ridges × solids that share paper with them + pairs of solids). */
export function pictureOf(
  pieces: readonly Seen[],
  view: View,
  { within = ONE_LINE, hidden = false }: PictureOptions = {},
): Picture {
  return finished(finished(picturesOf(pieces, view, hidden))(within));
}

/** The same in steps, and for several ways of drawing lines along each other as one: what is seen is found once. */
export function* picturesOf(
  pieces: readonly Seen[],
  view: View,
  hidden: boolean,
): Steps<(within: number) => Steps<Picture>> {
  const flats = pieces.map(({ cells }, i) => cells.map((cell) => flatten(i, cell, view)));
  yield;
  const found = yield* ridgeLines(pieces, flats, view);
  const sorted = yield* backToFront(flats.flat(), view);
  yield;
  const faces = sorted.flatMap(({ piece, body, points, facing }) =>
    body.facets.flatMap(({ inner, loop, normal }, i): Face2[] => {
      if (facing[i]! <= EDGE_ON || inner) return [];
      const corners = loop.map((v): Point2 => [points[v]![0], points[v]![1]]);
      const depth = points[loop[0]!]![2];
      return [{ id: pieces[piece]!.id, points: corners, normal: laid(normal, view), depth }];
    }),
  );
  yield;
  return function* (within) {
    const lines = yield* merged(found.seen, within);
    return { faces, lines, hidden: hidden ? yield* merged(found.hidden, within, lines) : [] };
  };
}

/** mm: what lies closer is one line but for the play of joints. */
const ONE_LINE = 0.05;
