/**
 * A ring of mitred parts in one plane: whether it closes, and how its corners open when it does not.
 *
 * The sides follow each other around the outside, turning the same way at every corner. Millimetres and
 * degrees; angles are off square, positive where the end's long point is on the outside.
 */
import { cos, NUMERIC, radians, sin, tan, usable } from "./angle";

export interface RingSide {
  readonly id: string;
  /** Between the outside corners: long point to long point for positive angles. */
  readonly outsideLength: number;
  readonly width: number;
  readonly startAngle: number;
  readonly endAngle: number;
}

/** The opening (mm) and the misfit (degrees) up to which a ring is said to close. */
export interface RingTolerance {
  readonly length: number;
  readonly degrees: number;
}

export type Point = readonly [x: number, y: number];

export interface RingCorner {
  /** The sides that meet, by their place in the ring: the end of the first, the start of the second. */
  readonly between: readonly [number, number];
  /** The direction change here, from the two end angles. */
  readonly turn: number;
  /** The opening on the outside and on the inside when every corner but the last is pulled tight. */
  readonly heel: number;
  readonly toe: number;
  /** The lengths of the two mitred faces, and by how much they differ: a step on the inside, not a gap. */
  readonly miters: readonly [number, number];
  readonly lengthMismatch: number;
  /** The opening here when the misfit is shared by all corners alike. */
  readonly spread: number;
}

export interface Ring {
  readonly kind: "ring";
  readonly sides: readonly RingSide[];
  readonly tolerance: RingTolerance;
  /** The misfit and the gap are both within the tolerance. Says nothing of mitred faces of unequal length. */
  readonly closes: boolean;
  /** Sum of the turns less 360: negative when the ring opens, positive when it turns too far. */
  readonly misfitDegrees: number;
  /** From where the ring began to where it ended, with the first side along x and the inside on the left. */
  readonly gap: Point;
  readonly opening: number;
  readonly corners: readonly RingCorner[];
  /** The outside corners walked, one more than there are sides. */
  readonly points: readonly Point[];
  /** The direction of each side, from the first. */
  readonly headings: readonly number[];
}

export interface NoRing {
  readonly kind: "no-ring";
  /**
   * Fewer than three sides; not a usable number; a side without length or width; an end angle at 90 or more;
   * a side whose two cuts cross before its inner edge.
   */
  readonly reason: "too-few" | "number" | "length" | "width" | "angle" | "ends-cross";
  /** The side at fault, by its place in the ring; absent for `too-few`. */
  readonly side?: number;
}

/** Walks the ring and measures how it closes, or says why there is no ring to walk. Never throws. */
export function closeRing(sides: readonly RingSide[], tolerance: RingTolerance): Ring | NoRing {
  if (sides.length < 3) return { kind: "no-ring", reason: "too-few" };
  for (const [side, s] of sides.entries()) {
    const reason = faultOf(s);
    if (reason) return { kind: "no-ring", reason, side };
  }
  const n = sides.length;
  const turns = sides.map((s, i) => s.endAngle + sides[(i + 1) % n]!.startAngle);
  const misfitDegrees = turns.reduce((sum, t) => sum + t, 0) - 360;
  const { points, headings } = walk(sides, turns);
  const gap = points[n]!;
  const opening = Math.hypot(...gap);
  const corners = turns.map((turn, i): RingCorner => {
    const next = (i + 1) % n;
    const a = sides[i]!;
    const b = sides[next]!;
    const miters = [a.width / cos(a.endAngle), b.width / cos(b.startAngle)] as const;
    const face = Math.min(...miters);
    const last = next === 0;
    return {
      between: [i, next],
      turn,
      heel: last ? opening : 0,
      toe: last ? insideOpening(gap, headings[i]! + 90 + a.endAngle, 90 - b.startAngle, face) : 0,
      miters,
      lengthMismatch: Math.abs(miters[0] - miters[1]),
      spread: 2 * face * sin(Math.abs(misfitDegrees) / (2 * n)),
    };
  });
  const closes =
    Math.abs(misfitDegrees) <= tolerance.degrees + NUMERIC && opening <= tolerance.length + NUMERIC;
  return { kind: "ring", sides, tolerance, closes, misfitDegrees, gap, opening, corners, points, headings };
}

/**
 * The most misfit and gap (to first order) that rounding alone explains, when every length was rounded to
 * `length` and every end angle to `degrees`: each length is off by up to half a step, each turn by one.
 * A side counts only as far as it runs the way the gap does: the short sides of a frame do not explain a gap
 * between the long ones.
 */
export function roundingExplains(ring: Ring, step: RingTolerance): RingTolerance {
  const end = ring.points.at(-1)!;
  const arms = ring.points.slice(1, -1).map((p) => Math.hypot(end[0] - p[0], end[1] - p[1]));
  const swing = arms.reduce((sum, arm) => sum + arm, 0) * radians(step.degrees);
  const toward = ring.opening > NUMERIC ? Math.atan2(end[1], end[0]) : undefined;
  const share = (heading: number): number =>
    toward === undefined ? 1 : Math.abs(Math.cos(radians(heading) - toward));
  const alongGap = ring.headings.reduce((sum, heading) => sum + share(heading), 0);
  return {
    length: (alongGap * step.length) / 2 + swing,
    degrees: ring.sides.length * step.degrees,
  };
}

function faultOf(side: RingSide): NoRing["reason"] | undefined {
  const { outsideLength, width, startAngle, endAngle } = side;
  if (![outsideLength, width, startAngle, endAngle].every(usable)) return "number";
  if (outsideLength <= 0) return "length";
  if (width <= 0) return "width";
  if (Math.abs(startAngle) >= 90 || Math.abs(endAngle) >= 90) return "angle";
  return outsideLength - width * (tan(startAngle) + tan(endAngle)) < -NUMERIC ? "ends-cross" : undefined;
}

function walk(
  sides: readonly RingSide[],
  turns: readonly number[],
): { points: readonly Point[]; headings: readonly number[] } {
  const points: Point[] = [[0, 0]];
  const headings: number[] = [];
  let heading = 0;
  let [x, y] = [0, 0];
  for (const [i, side] of sides.entries()) {
    headings.push(heading);
    x += side.outsideLength * cos(heading);
    y += side.outsideLength * sin(heading);
    points.push([x, y]);
    heading += turns[i]!;
  }
  return { points, headings };
}

/** The distance between two mitred faces, `face` in from the outside: one starts at the gap, the other at 0. */
function insideOpening(gap: Point, ending: number, starting: number, face: number): number {
  const x = gap[0] + face * (cos(ending) - cos(starting));
  const y = gap[1] + face * (sin(ending) - sin(starting));
  return Math.hypot(x, y);
}
