/** The way of a straight line through a convex solid: a screw, a driver on its way to it, a line of sight. */
import { NUMERIC } from "./angle";
import type { Body } from "./contact";
import type { Convex } from "./convex";
import { dot, type Vec3 } from "./vector";

export interface Way {
  /** Millimetres from the start of the ray (may be less than nothing: the ray starts inside). */
  readonly enters: number;
  readonly leaves: number;
  /** Places in the facets through which it goes in and comes out. */
  readonly through: readonly [number, number];
}

/** Where a ray runs inside the solid; undefined where it misses it, or only grazes a face. The direction has unit length. */
export function way(solid: Convex, from: Vec3, direction: Vec3): Way | undefined {
  if (isBody(solid) && solid.aligned) return wayThroughBlock(solid, from, direction);
  let [enters, leaves] = [-Infinity, Infinity];
  let [into, out] = [-1, -1];
  for (let i = 0; i < solid.facets.length; i++) {
    const { normal, offset } = solid.facets[i]!;
    const speed = dot(normal, direction);
    const high = dot(normal, from) - offset;
    if (Math.abs(speed) < 1e-12) {
      if (high > -NUMERIC) return undefined;
      continue;
    }
    const t = -high / speed;
    if (speed < 0 && t > enters) [enters, into] = [t, i];
    if (speed > 0 && t < leaves) [leaves, out] = [t, i];
  }
  return leaves - enters > NUMERIC ? { enters, leaves, through: [into, out] } : undefined;
}

/** The same for an aligned block, from its bounds alone. */
function wayThroughBlock({ bounds, looks }: Body, from: Vec3, direction: Vec3): Way | undefined {
  let enters = -Infinity;
  let leaves = Infinity;
  let into = -1;
  let out = -1;
  for (const k of [0, 1, 2] as const) {
    const speed = direction[k];
    const low = bounds.least[k] - from[k];
    const high = bounds.most[k] - from[k];
    if (Math.abs(speed) < 1e-12) {
      if (low > -NUMERIC || high < NUMERIC) return undefined;
      continue;
    }
    const up = speed > 0;
    const near = (up ? low : high) / speed;
    const far = (up ? high : low) / speed;
    if (near > enters) {
      enters = near;
      into = 2 * k + (up ? 0 : 1);
    }
    if (far < leaves) {
      leaves = far;
      out = 2 * k + (up ? 1 : 0);
    }
  }
  return leaves - enters > NUMERIC ? { enters, leaves, through: [looks[into]!, looks[out]!] } : undefined;
}

const isBody = (solid: Convex): solid is Body => "aligned" in solid;
