/** Patches of contact as they are in wood: a face that is cut into cells for its notches is still one face. Millimetres. */
import { type Contact, polygonArea, TOUCHING } from "./contact";
import { cross, dot, subtract, unit, type Vec3 } from "./vector";
import { hullOf } from "./view-order";

/**
 * The patches, those that together all but fill one convex patch of a plane put together; the largest first. `area` counts
 * only what lies on each other; places of facets stay those of the first. O(n³) in patches of one pair of pieces.
 */
export function joinedPatches(patches: readonly Contact[]): Contact[] {
  const list = [...patches];
  for (let i = 0; i < list.length; i++)
    for (let j = i + 1; j < list.length; j++) {
      const both = together(list[i]!, list[j]!);
      if (!both) continue;
      list[i] = both;
      list.splice(j, 1);
      // What it has become may now fill one with any other.
      i = -1;
      break;
    }
  return list.sort((a, b) => b.area - a.area);
}

/** Two patches as one; undefined where they are not in one plane or leave too much between them. */
function together(a: Contact, b: Contact): Contact | undefined {
  const { normal } = a;
  if (dot(normal, b.normal) < 1 - ONE_WAY) return undefined;
  const high = dot(normal, a.patch[0]!);
  if (Math.abs(dot(normal, b.patch[0]!) - high) > TOUCHING) return undefined;
  const right = unit(subtract(a.patch[1]!, a.patch[0]!));
  if (!right) return undefined;
  const up = cross(normal, right);
  const patch = hullOf([...a.patch, ...b.patch].map((p): Vec3 => [dot(p, right), dot(p, up), 0])).map(
    ([x, y]): Vec3 => [
      x * right[0] + y * up[0] + high * normal[0],
      x * right[1] + y * up[1] + high * normal[1],
      x * right[2] + y * up[2] + high * normal[2],
    ],
  );
  const area = a.area + b.area;
  return area > FILLED * polygonArea(patch, normal) ? { ...a, area, patch } : undefined;
}

/** One less the cosine between normals of one plane. */
const ONE_WAY = 1e-9;
/** The share of a patch that must lie on wood: a housing across a board interrupts its edge, and does not end it. */
const FILLED = 0.9;
