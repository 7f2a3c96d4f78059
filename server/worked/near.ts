/** Pieces of a joint that stand a little apart where they should lie on each other. */
import { type Body, boundsApart, clipped, distance, polygonArea } from "../solid/contact";
import type { Facet } from "../solid/convex";
import { cross, dot, mean, subtract, unit, type Vec3 } from "../solid/vector";
import type { Piece } from "./pieces";
import { otherOf, type Space } from "./space";

/** Two pieces whose faces look at each other over a gap. */
export interface NearMiss {
  readonly first: number;
  readonly into: number;
  /** mm, and the way from the first to the last. */
  readonly gap: number;
  readonly direction: Vec3;
}

/** Faces further apart than this, in mm, were likely never meant to touch: 1". */
const FAR = 25.4;
/** Faces must look at each other over this much, in square millimetres: a square inch. */
const LOOKING = 645;

/** The gaps between pieces of these two sets that should touch; the nearest of each first piece. */
export function nearMisses(space: Space, first: readonly number[], into: readonly number[]): NearMiss[] {
  return first.flatMap((i): NearMiss[] => {
    const touches = (j: number): boolean =>
      space.meetingsOf[i]!.some((m) => otherOf(space.meetings[m]!, i) === j);
    let best: NearMiss | undefined;
    for (const j of into) {
      const [p, q] = [space.pieces[i]!, space.pieces[j]!];
      if (j === i || boundsApart(p.bounds, q.bounds) > FAR || touches(j)) continue;
      const gap = gapBetween(p, q);
      if (gap && gap.gap <= FAR && (!best || gap.gap < best.gap)) best = { first: i, into: j, ...gap };
    }
    return best ? [best] : [];
  });
}

/** The least gap across which faces of the two look at each other, in the middle of where they do; undefined when none do. */
function gapBetween(p: Piece, q: Piece): Pick<NearMiss, "gap" | "direction"> | undefined {
  let best: Pick<NearMiss, "gap" | "direction"> | undefined;
  for (const a of p.cells)
    for (const b of q.cells)
      for (const f of a.facets) {
        if (f.inner) continue;
        for (const g of b.facets) {
          if (g.inner || dot(f.normal, g.normal) > -PARALLEL) continue;
          const before = lookingAt(a, f, b, g);
          if (before.length < 3 || polygonArea(before, f.normal) <= LOOKING) continue;
          const gap = dot(g.normal, mean(before)) - g.offset;
          if (gap > 0 && (!best || gap < best.gap)) best = { gap, direction: f.normal };
        }
      }
  return best;
}

/** Cosine between two faces that look at each other. */
const PARALLEL = 0.9998;

/** What of a face lies before another, seen along its normal. */
function lookingAt(a: Body, { loop, normal }: Facet, b: Body, other: Facet): Vec3[] {
  let polygon = loop.map((i) => a.vertices[i]!);
  const corners = other.loop.map((i) => b.vertices[i]!);
  corners.forEach((p, i) => {
    const q = corners[(i + 1) % corners.length]!;
    // The other face looks the other way, so its loop runs clockwise seen along this normal.
    const side = unit(cross(normal, subtract(q, p)));
    if (side) polygon = clipped(polygon, side, dot(side, p));
  });
  return polygon;
}

/** The piece nearest to one of a group among all others, with the true distance. */
export function nearestOf(
  space: Space,
  group: readonly number[],
): { readonly from: number; readonly to: number; readonly gap: number; readonly way: Vec3 } | undefined {
  const own = new Set(group);
  let best: { from: number; to: number; gap: number; way: Vec3 } | undefined;
  for (const i of group)
    space.pieces.forEach((q, j) => {
      const p = space.pieces[i]!;
      if (own.has(j) || (best && boundsApart(p.bounds, q.bounds) >= best.gap)) return;
      for (const a of p.cells)
        for (const b of q.cells) {
          const d = distance(a, b);
          if (best && d.gap >= best.gap) continue;
          best = { from: i, to: j, gap: d.gap, way: subtract(d.to, d.from) };
        }
    });
  return best;
}
