/** Which stretches of a straight line are seen, and along which of them other wood lies beside it. Shares from 0 to 1. */
import type { Bounds } from "./contact";
import { dot, subtract, type Vec3 } from "./vector";
import { EDGE_ON, type Flat, laid, mayHide, type View } from "./view-flat";

export type Stretch = readonly [from: number, to: number];

/**
 * The stretches of p–q that no solid hides, in order. Exact but for 0.02 mm: what lies on a surface is seen. Bits shorter
 * than 0.1 mm on the paper are left out, since light falls so far through the joints of boards that touch.
 */
export function seenStretches(p: Vec3, q: Vec3, solids: readonly Flat[], view: View): Stretch[] {
  const [a, b] = [laid(p, view), laid(q, view)];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length < LEAST_BIT) return [];
  const frame = boundsOfLine(a, b);
  const hidden: Stretch[] = [];
  for (const solid of solids) {
    if (!mayHide(frame, solid.frame)) continue;
    const stretch = hiddenBy(p, q, solid);
    if (stretch) hidden.push(stretch);
  }
  return rests([0, 1], hidden, LEAST_BIT / length);
}

/** The stretch of p–q that lies in the solid. */
export function inside(p: Vec3, q: Vec3, { body }: Flat): Stretch | undefined {
  const along = subtract(q, p);
  let [from, to] = [0, 1];
  for (const { normal, offset } of body.facets) {
    const a = dot(normal, along);
    const c = offset - dot(normal, p);
    if (Math.abs(a) < LEVEL) {
      if (c < 0) return undefined;
    } else if (a > 0) to = Math.min(to, c / a);
    else from = Math.max(from, c / a);
    if (from >= to) return undefined;
  }
  return [from, to];
}

/** What is left of a stretch less others; nothing as short as `least`. */
export function rests(whole: Stretch, taken: readonly Stretch[], least: number): Stretch[] {
  if (taken.length === 0) return [whole];
  const left: Stretch[] = [];
  let at = whole[0];
  for (const [from, to] of [...taken].sort((a, b) => a[0] - b[0])) {
    if (Math.min(from, whole[1]) - at > least) left.push([at, Math.min(from, whole[1])]);
    at = Math.max(at, to);
  }
  if (whole[1] - at > least) left.push([at, whole[1]]);
  return left;
}

export function boundsOfLine(a: Vec3, b: Vec3): Bounds {
  return {
    least: [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.min(a[2], b[2])],
    most: [Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.max(a[2], b[2])],
  };
}

/** mm on the paper. */
const LEAST_BIT = 0.1;
/** A solid hides what lies this far behind its surface, in mm: what lies on it is seen. */
const SHRINK = 0.02;
/** mm by which a line rises against a face; less is level with it. */
const LEVEL = 1e-12;

/**
 * Where along p–q the solid stands in front. A line of sight from the point at t meets the solid at a distance s with
 * s ≤ c - a t for every face seen and s ≥ c - a t for every face turned away; both can hold along one stretch.
 */
function hiddenBy(p: Vec3, q: Vec3, { body, facing }: Flat): Stretch | undefined {
  const along = subtract(q, p);
  let [from, to] = [0, 1];
  const upper: number[] = [];
  const lower: number[] = [SHRINK, 0];
  /** Keeps the t with a t ≤ c. */
  const narrow = (a: number, c: number): boolean => {
    if (Math.abs(a) < LEVEL) return c >= 0;
    if (a > 0) to = Math.min(to, c / a);
    else from = Math.max(from, c / a);
    return from < to;
  };
  for (let i = 0; i < body.facets.length; i++) {
    const { normal, offset, inner } = body.facets[i]!;
    const a = dot(normal, along);
    const b = facing[i]!;
    const c = offset - (inner ? 0 : SHRINK) - dot(normal, p);
    if (b > EDGE_ON) upper.push(c / b, a / b);
    else if (b < -EDGE_ON) lower.push(c / b, a / b);
    else if (!narrow(a, c)) return undefined;
  }
  for (let u = 0; u < upper.length; u += 2)
    for (let l = 0; l < lower.length; l += 2)
      if (!narrow(upper[u + 1]! - lower[l + 1]!, upper[u]! - lower[l]!)) return undefined;
  return [from, to];
}
