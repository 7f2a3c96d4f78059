/**
 * Convex solids: a board's block cut by planes. Millimetres; every loop runs counter-clockwise seen from outside. A face
 * keeps the name of the side of the board it belongs to, or of the cut that made it.
 */
import { NUMERIC } from "./angle";
import { cross, dot, subtract, type Vec3 } from "./vector";

/** Sides of a board in its own frame: x along its length, y across its width, z through its thickness. */
export type BoardSide = "left end" | "right end" | "near edge" | "far edge" | "under face" | "upper face";

export interface Facet {
  readonly side: BoardSide;
  /** Unit length, outward. */
  readonly normal: Vec3;
  /** normal · p of every point p of the face. */
  readonly offset: number;
  /** Places in `vertices`. */
  readonly loop: readonly number[];
  /** Shared with another cell of the same board: no surface of the piece. */
  readonly inner: boolean;
}

export interface Convex {
  readonly vertices: readonly Vec3[];
  readonly facets: readonly Facet[];
}

/** The half-space of points with normal · p ≤ offset; the normal has unit length. */
export interface HalfSpace {
  readonly normal: Vec3;
  readonly offset: number;
  readonly side: BoardSide;
  readonly inner?: boolean;
}

/** The block from one corner to the opposite, whose sides are named as a board's. */
export function block(from: Vec3, to: Vec3): Convex {
  const vertices = [0, 1, 2, 3, 4, 5, 6, 7].map(
    (i): Vec3 => [i & 1 ? to[0] : from[0], i & 2 ? to[1] : from[1], i & 4 ? to[2] : from[2]],
  );
  const facet = (side: BoardSide, normal: Vec3, loop: readonly number[]): Facet => ({
    side,
    normal,
    offset: dot(normal, vertices[loop[0]!]!),
    loop,
    inner: false,
  });
  return {
    vertices,
    facets: [
      facet("left end", [-1, 0, 0], [0, 4, 6, 2]),
      facet("right end", [1, 0, 0], [1, 3, 7, 5]),
      facet("near edge", [0, -1, 0], [0, 1, 5, 4]),
      facet("far edge", [0, 1, 0], [2, 6, 7, 3]),
      facet("under face", [0, 0, -1], [0, 2, 3, 1]),
      facet("upper face", [0, 0, 1], [4, 5, 7, 6]),
    ],
  };
}

/** What of the solid lies in the half-space; undefined when nothing thicker than the arithmetic does. */
export function cut(solid: Convex, half: HalfSpace): Convex | undefined {
  const heights = solid.vertices.map((v) => dot(half.normal, v) - half.offset);
  if (heights.every((h) => h <= NUMERIC)) return solid;
  if (heights.every((h) => h >= -NUMERIC)) return undefined;
  const vertices: Vec3[] = [];
  const kept = heights.map((h, i) => (h <= NUMERIC ? vertices.push(solid.vertices[i]!) - 1 : -1));
  const crossings = new Map<number, number>();
  const crossing = (a: number, b: number): number => {
    const key = a < b ? a * 4096 + b : b * 4096 + a;
    let at = crossings.get(key);
    if (at === undefined) {
      const share = heights[a]! / (heights[a]! - heights[b]!);
      const [p, q] = [solid.vertices[a]!, solid.vertices[b]!];
      at =
        vertices.push([
          p[0] + share * (q[0] - p[0]),
          p[1] + share * (q[1] - p[1]),
          p[2] + share * (q[2] - p[2]),
        ]) - 1;
      crossings.set(key, at);
    }
    return at;
  };
  const facets: Facet[] = [];
  /** Edges of the cap: where each face leaves the half-space, to where it comes back. */
  const next = new Map<number, number>();
  for (const facet of solid.facets) {
    const loop: number[] = [];
    let leaves = -1;
    let comes = -1;
    facet.loop.forEach((a, i) => {
      const b = facet.loop[(i + 1) % facet.loop.length]!;
      const [inA, inB] = [kept[a]! >= 0, kept[b]! >= 0];
      if (inA) loop.push(kept[a]!);
      if (inA && !inB) {
        // An edge that touches the plane at its end only leaves there.
        const at = heights[a]! >= -NUMERIC ? kept[a]! : crossing(a, b);
        if (at !== kept[a]) loop.push(at);
        leaves = at;
      }
      if (!inA && inB) {
        const at = heights[b]! >= -NUMERIC ? kept[b]! : crossing(a, b);
        if (at !== kept[b]) loop.push(at);
        comes = at;
      }
    });
    if (loop.length >= 3) facets.push({ ...facet, loop });
    if (leaves >= 0 && comes >= 0 && leaves !== comes) next.set(comes, leaves);
  }
  const cap = chainOf(next);
  if (cap.length >= 3) {
    const { side, normal, offset, inner = false } = half;
    facets.push({ side, normal, offset, loop: cap, inner });
  }
  return { vertices, facets };
}

/** The loop that the steps from point to point make. */
function chainOf(next: ReadonlyMap<number, number>): number[] {
  const [first] = next.keys();
  const loop: number[] = [];
  for (let at = first; at !== undefined && loop.length <= next.size; at = next.get(at)) {
    loop.push(at);
    if (next.get(at) === first) return loop;
  }
  return [];
}

/** Cubic millimetres, and the centre of mass. */
export function massOf(solid: Convex): { readonly volume: number; readonly centroid: Vec3 } {
  const origin = solid.vertices[0]!;
  let six = 0;
  const sum: [number, number, number] = [0, 0, 0];
  for (const { loop } of solid.facets) {
    const a = subtract(solid.vertices[loop[0]!]!, origin);
    for (let i = 1; i + 1 < loop.length; i++) {
      const b = subtract(solid.vertices[loop[i]!]!, origin);
      const c = subtract(solid.vertices[loop[i + 1]!]!, origin);
      const v = dot(a, cross(b, c));
      six += v;
      for (const k of [0, 1, 2] as const) sum[k] += (v * (a[k] + b[k] + c[k])) / 4;
    }
  }
  const at = (k: 0 | 1 | 2): number => origin[k] + sum[k] / six;
  return { volume: six / 6, centroid: [at(0), at(1), at(2)] };
}

/** Square millimetres of a face. */
export function areaOf(solid: Convex, { loop, normal }: Facet): number {
  const [first, ...rest] = loop.map((i) => solid.vertices[i]!);
  let twice = 0;
  for (let i = 0; i + 1 < rest.length; i++)
    twice += dot(normal, cross(subtract(rest[i]!, first!), subtract(rest[i + 1]!, first!)));
  return twice / 2;
}
