/**
 * Where a board stands: which way its length, width and thickness point, and where its own corner (0, 0, 0) is. World:
 * x to the right, y to the back, z up, millimetres.
 */
import type { Convex } from "./convex";
import { cross, dot, type Vec3 } from "./vector";

export interface Pose {
  /** Unit vectors at right angles; left-handed for a mirrored piece. */
  readonly length: Vec3;
  readonly width: Vec3;
  readonly thickness: Vec3;
  readonly origin: Vec3;
}

export const isMirrored = ({ length, width, thickness }: Pose): boolean =>
  dot(cross(length, width), thickness) < 0;

/** A direction of the board's own, in the world. */
export const turned = ({ length, width, thickness }: Pose, [x, y, z]: Vec3): Vec3 => [
  x * length[0] + y * width[0] + z * thickness[0],
  x * length[1] + y * width[1] + z * thickness[1],
  x * length[2] + y * width[2] + z * thickness[2],
];

export function placedAt(pose: Pose, p: Vec3): Vec3 {
  const [x, y, z] = turned(pose, p);
  return [x + pose.origin[0], y + pose.origin[1], z + pose.origin[2]];
}

/** A point of the world, in the board's own frame. */
export function seenFrom(pose: Pose, [x, y, z]: Vec3): Vec3 {
  const from: Vec3 = [x - pose.origin[0], y - pose.origin[1], z - pose.origin[2]];
  return [dot(from, pose.length), dot(from, pose.width), dot(from, pose.thickness)];
}

/** The solid where the board stands. */
export function placed(solid: Convex, pose: Pose): Convex {
  const flip = isMirrored(pose);
  return {
    vertices: solid.vertices.map((v) => placedAt(pose, v)),
    facets: solid.facets.map((facet) => {
      const normal = turned(pose, facet.normal);
      const loop = flip ? [...facet.loop].reverse() : facet.loop;
      return { ...facet, normal, offset: facet.offset + dot(normal, pose.origin), loop };
    }),
  };
}

/** One pose inside another: first `inner`, then `outer`. */
export const within = (outer: Pose, inner: Pose): Pose => ({
  length: turned(outer, inner.length),
  width: turned(outer, inner.width),
  thickness: turned(outer, inner.thickness),
  origin: placedAt(outer, inner.origin),
});
