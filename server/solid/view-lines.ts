/** The ridges of pieces that are seen, and how heavy each stretch of them is: an outline, or a line inside or along a joint. */
import type { Ridge } from "./board";
import { type Bounds, boundsOf } from "./contact";
import type { Steps } from "./steps";
import { dot, size, subtract, type Vec3 } from "./vector";
import { EDGE_ON, type Flat, laid, mayHide, type Point2, type View } from "./view-flat";
import { boundsOfLine, inside, rests, type Stretch, seenStretches } from "./view-hidden";

export interface Line {
  readonly id: string;
  readonly from: Point2;
  readonly to: Point2;
  /** Beyond it lies air, or wood farther away; else it stands between two faces that are both seen and meet there. */
  readonly outline: boolean;
  /** How near to the viewer its middle is, in mm; nearer is more. */
  readonly depth: number;
}

/** A line and the ridge it is a part of: the place of the ridge in its piece. */
export interface RidgeLine extends Line {
  readonly ridge: number;
}

export interface RidgeLines {
  readonly seen: RidgeLine[];
  /** What other wood hides, and what lies behind the piece itself. */
  readonly hidden: RidgeLine[];
}

interface Piece {
  readonly id: string;
  readonly ridges: readonly Ridge[];
}

/** `flats` holds the cells of each piece. One step a piece. O(ridges × solids that share paper with them). */
export function* ridgeLines(
  pieces: readonly Piece[],
  flats: readonly (readonly Flat[])[],
  view: View,
): Steps<RidgeLines> {
  const found: RidgeLines = { seen: [], hidden: [] };
  const cells = flats.flat();
  for (const [i, { id, ridges }] of pieces.entries()) {
    const own = flats[i]!;
    if (own.length === 0) continue;
    const frame = boundsOf(own.flatMap((cell) => [cell.frame.least, cell.frame.most]));
    // A convex piece hides none of its own ridges that face the viewer.
    const alone = own.length === 1 ? own[0] : undefined;
    const before = cells.filter((c) => c !== alone && mayHide(frame, c.frame));
    const bounds = boundsOf(own.flatMap(({ body }) => [body.bounds.least, body.bounds.most]));
    const beside = cells.filter((c) => c !== alone && near(bounds, c.body.bounds));
    ridges.forEach((ridge, place) => {
      const parts = partsOf(ridge, before, beside, view);
      const line = lineOf(id, place, ridge, view);
      found.seen.push(...parts.outline.map((s) => line(s, true)), ...parts.inner.map((s) => line(s, false)));
      found.hidden.push(...parts.hidden.map((s) => line(s, false)));
    });
    yield;
  }
  return found;
}

function lineOf(id: string, ridge: number, { from, to }: Ridge, view: View) {
  const [a, b] = [laid(from, view), laid(to, view)];
  const at = (t: number): Point2 => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
  return ([p, q]: Stretch, outline: boolean): RidgeLine => ({
    id,
    ridge,
    from: at(p),
    to: at(q),
    outline,
    depth: a[2] + ((p + q) / 2) * (b[2] - a[2]),
  });
}

interface Parts {
  readonly outline: readonly Stretch[];
  readonly inner: readonly Stretch[];
  readonly hidden: readonly Stretch[];
}

function partsOf(ridge: Ridge, before: readonly Flat[], beside: readonly Flat[], view: View): Parts {
  const whole: Stretch = [0, 1];
  const away = ridge.normals.filter((n) => dot(n, view.toViewer) <= EDGE_ON);
  if (away.length === ridge.normals.length) return { outline: [], inner: [], hidden: [whole] };
  const seen = seenStretches(ridge.from, ridge.to, before, view);
  const hidden = rests(whole, seen, SLIVER);
  const [turned] = away;
  if (!turned) return { outline: [], inner: seen, hidden };
  const joined = joinedStretches(ridge, turned, beside, view);
  const short = LEAST_OUTLINE / size(subtract(ridge.to, ridge.from));
  const outline = seen.flatMap((s) => rests(s, joined, short));
  return { outline, inner: seen.flatMap((s) => rests(s, outline, SLIVER)), hidden };
}

/** Where wood lies just beyond the ridge and just under it: the face seen there meets the piece's own. */
function joinedStretches({ from, to }: Ridge, away: Vec3, beside: readonly Flat[], view: View): Stretch[] {
  if (beside.length === 0) return [];
  const [x, y] = laid(away, view);
  const long = Math.hypot(x, y);
  if (long < EDGE_ON) return [];
  const step = (k: 0 | 1 | 2): number =>
    BEYOND * ((x / long) * view.right[k] + (y / long) * view.up[k] - view.toViewer[k]);
  const [dx, dy, dz] = [step(0), step(1), step(2)];
  const [p, q]: [Vec3, Vec3] = [
    [from[0] + dx, from[1] + dy, from[2] + dz],
    [to[0] + dx, to[1] + dy, to[2] + dz],
  ];
  const frame = boundsOfLine(p, q);
  const found: Stretch[] = [];
  for (const cell of beside) {
    if (!near(frame, cell.body.bounds)) continue;
    const stretch = inside(p, q, cell);
    if (stretch) found.push(stretch);
  }
  return found;
}

const near = (a: Bounds, b: Bounds): boolean =>
  a.least[0] < b.most[0] + BEYOND &&
  b.least[0] < a.most[0] + BEYOND &&
  a.least[1] < b.most[1] + BEYOND &&
  b.least[1] < a.most[1] + BEYOND &&
  a.least[2] < b.most[2] + BEYOND &&
  b.least[2] < a.most[2] + BEYOND;

/** mm beyond a ridge at which wood is asked for: more than a joint gapes. */
const BEYOND = 0.3;
/** Shares of an edge that are not worth a line. */
const SLIVER = 1e-6;
/** mm; shorter bits of outline beside a joint come from looking beyond the ridge. */
const LEAST_OUTLINE = 1;
