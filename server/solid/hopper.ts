/**
 * The saw settings where sloped boards meet at a corner: the sides of a hopper, a tapered planter, a roof of
 * few faces. `miter` is off square on the board's face, `tilt` is the blade's, both in degrees.
 *
 * A lean is from vertical: "15 degrees out of plumb" is 15. A pitch from horizontal is 90 less the lean.
 */
import { cos, degrees, radians, sin, tan } from "./angle";
import { cross, dot, subtract, unit, type Vec3 } from "./vector";

export interface SlopedCut {
  readonly miter: number;
  readonly tilt: number;
}

/**
 * For n equal sides that all lean alike, in or out: with A = 180 / n and t the lean,
 * tan(miter) = tan A sin t and sin(tilt) = sin A cos t. Undefined when n is not a whole number of
 * at least 3, or the lean is beyond 90 either way.
 */
export function hopper(n: number, lean: number): SlopedCut | undefined {
  if (!Number.isInteger(n) || n < 3 || !(Math.abs(lean) <= 90)) return undefined;
  const t = Math.abs(lean);
  const a = 180 / n;
  return { miter: degrees(Math.atan(tan(a) * sin(t))), tilt: degrees(Math.asin(sin(a) * cos(t))) };
}

export interface CornerCut {
  /** The miters of the first board's end and of the second's start. */
  readonly miters: readonly [number, number];
  /** The blade's tilt, the same for both: the cut halves the angle between the faces. */
  readonly tilt: number;
}

/** A board at a corner: the outward normal of its outer face, and the direction of its length. */
export interface FacedBoard {
  readonly normal: Vec3;
  readonly along: Vec3;
}

/**
 * The cuts of two boards of one thickness whose outer faces meet: the cut is the plane that bisects them,
 * m = (n1 - n2) / |n1 - n2|; sin(tilt) = |m . n1|; with r = n1 x m, tan(miter1) = |r . e1| / |r . (n1 x e1)|.
 * The directions need not have length 1. Undefined when the faces are one plane or a vector has no length.
 */
export function cornerCut(first: FacedBoard, second: FacedBoard): CornerCut | undefined {
  const n1 = unit(first.normal);
  const n2 = unit(second.normal);
  const m = n1 && n2 && unit(subtract(n1, n2));
  const e1 = unit(first.along);
  const e2 = unit(second.along);
  if (!n1 || !n2 || !m || !e1 || !e2) return undefined;
  return {
    miters: [miterOn(n1, e1, m), miterOn(n2, e2, m)],
    tilt: degrees(Math.asin(Math.min(1, Math.abs(dot(m, n1))))),
  };
}

/**
 * The cuts where two boards with level edges meet at a corner that turns by `turn` seen from above, the
 * first leaning `lean1` from vertical and the second `lean2` (outward positive). Undefined as `cornerCut`.
 */
export function leaningCorner(turn: number, lean1: number, lean2: number): CornerCut | undefined {
  const board = (heading: number, lean: number): FacedBoard => ({
    along: [cos(heading), sin(heading), 0],
    normal: [sin(heading) * cos(lean), -cos(heading) * cos(lean), -sin(lean)],
  });
  return cornerCut(board(0, lean1), board(turn, lean2));
}

/** The angle off square that shows on a board's edge, which is not the tilt: tan(edge) = tan(tilt) / cos(miter). */
export const edgeAngle = ({ miter, tilt }: SlopedCut): number =>
  degrees(Math.atan(Math.tan(radians(tilt)) / cos(miter)));

function miterOn(normal: Vec3, along: Vec3, cutPlane: Vec3): number {
  const r = cross(normal, cutPlane);
  return degrees(Math.atan2(Math.abs(dot(r, along)), Math.abs(dot(r, cross(normal, along)))));
}
