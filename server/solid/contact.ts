/**
 * Whether two convex solids overlap, touch or stand apart. Overlap is judged by depth along a direction, never by
 * volume; contact by area on a common plane, so that an edge or a corner alone is none. Millimetres.
 */
import { NUMERIC } from "./angle";
import type { Convex, Facet } from "./convex";
import { add, cross, dot, mean, scaled, size, spanAlong, subtract, unit, type Vec3 } from "./vector";

/** Solids nearer than this touch; deeper in each other than this they overlap. */
export const TOUCHING = 0.05;

/** A gap or an overlap up to this, in mm, is none in a shop: 1/64", which no saw and no tape can keep. */
export const HAIRLINE = 25.4 / 64 + NUMERIC;

export interface Bounds {
  readonly least: Vec3;
  readonly most: Vec3;
}

/** A convex solid with what its comparisons need, worked out once. */
export interface Body extends Convex {
  readonly bounds: Bounds;
  /** Directions of its faces and of its edges, each once, either way round. */
  readonly normals: readonly Vec3[];
  readonly edges: readonly Vec3[];
  /** Every face is square to an axis of the world: the bounds are the solid. */
  readonly aligned: boolean;
  /** Of an aligned block the faces that look to the left, right, front, back, bottom and top: places in its facets. */
  readonly looks: readonly number[];
  /** Of each facet, which side of the board it is, and whether it is one between cells. */
  readonly sides: readonly Pick<Facet, "side" | "inner">[];
}

export function bodyOf(solid: Convex): Body {
  const bounds = boundsOf(solid.vertices);
  const aligned =
    solid.facets.length === 6 &&
    solid.facets.every(({ normal }) => normal.filter((n) => Math.abs(n) > SQUARE).length === 1);
  const sides = solid.facets.map(({ side, inner }) => ({ side, inner }));
  if (aligned) return { ...solid, bounds, normals: AXES, edges: AXES, aligned, looks: looksOf(solid), sides };
  const normals: Vec3[] = [];
  const edges: Vec3[] = [];
  for (const { normal, loop } of solid.facets) {
    keep(normals, normal);
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length]!;
      if (a > b) return;
      const along = unit(subtract(solid.vertices[b]!, solid.vertices[a]!));
      if (along) keep(edges, along);
    });
  }
  return { ...solid, bounds, normals, edges, aligned, looks: [], sides };
}

/** The same body elsewhere. Its corners and faces are only worked out when they are asked for: a block's bounds say most. */
export class MovedBody implements Body {
  readonly bounds: Bounds;
  private corners: readonly Vec3[] | undefined;
  private faces: readonly Facet[] | undefined;

  constructor(
    private readonly body: Body,
    private readonly by: Vec3,
  ) {
    this.bounds = { least: add(body.bounds.least, by), most: add(body.bounds.most, by) };
  }

  get vertices(): readonly Vec3[] {
    this.corners ??= this.body.vertices.map((v) => add(v, this.by));
    return this.corners;
  }

  get facets(): readonly Facet[] {
    this.faces ??= this.body.facets.map((f) => ({ ...f, offset: f.offset + dot(f.normal, this.by) }));
    return this.faces;
  }

  get normals(): readonly Vec3[] {
    return this.body.normals;
  }

  get edges(): readonly Vec3[] {
    return this.body.edges;
  }

  get aligned(): boolean {
    return this.body.aligned;
  }

  get looks(): readonly number[] {
    return this.body.looks;
  }

  get sides(): Body["sides"] {
    return this.body.sides;
  }
}

function looksOf({ facets }: Convex): number[] {
  return ([0, 1, 2] as const).flatMap((k) => [
    facets.findIndex((f) => f.normal[k] < -SQUARE),
    facets.findIndex((f) => f.normal[k] > SQUARE),
  ]);
}

export function boundsOf(points: readonly Vec3[]): Bounds {
  const least: [number, number, number] = [Infinity, Infinity, Infinity];
  const most: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const p of points)
    for (const k of [0, 1, 2] as const) {
      if (p[k] < least[k]) least[k] = p[k];
      if (p[k] > most[k]) most[k] = p[k];
    }
  return { least, most };
}

/** The widest gap between bounds along an axis of the world; negative when they overlap in all three. */
export const boundsApart = (a: Bounds, b: Bounds): number =>
  Math.max(
    a.least[0] - b.most[0],
    b.least[0] - a.most[0],
    a.least[1] - b.most[1],
    b.least[1] - a.most[1],
    a.least[2] - b.most[2],
    b.least[2] - a.most[2],
  );

export interface Apart {
  /**
   * How far the solids stand apart along the direction that parts them best, a lower bound of their distance; less than
   * nothing when they overlap: the least way one must be moved to be clear of the other.
   */
  readonly gap: number;
  /** From the first towards the second, unit length. */
  readonly direction: Vec3;
}

/** Separation or depth of two solids, by separating axes. `enough` ends the search: a gap beyond it is only known to be that wide. */
export function apart(a: Body, b: Body, enough = Infinity): Apart {
  if (a.aligned && b.aligned) return blocksApart(a.bounds, b.bounds);
  let best: Apart = { gap: -Infinity, direction: [1, 0, 0] };
  const consider = (axis: Vec3): boolean => {
    const [a0, a1] = along(a, axis);
    const [b0, b1] = along(b, axis);
    if (b0 - a1 > best.gap + NUMERIC) best = { gap: b0 - a1, direction: axis };
    if (a0 - b1 > best.gap + NUMERIC) best = { gap: a0 - b1, direction: [-axis[0], -axis[1], -axis[2]] };
    return best.gap > enough;
  };
  for (const axis of AXES) if (consider(axis)) return best;
  for (const axis of a.aligned ? b.normals : [...a.normals, ...(b.aligned ? [] : b.normals)])
    if (consider(axis)) return best;
  for (const p of a.edges)
    for (const q of b.edges) {
      const axis = cross(p, q);
      const length = size(axis);
      if (length < SQUARE) continue;
      if (consider([axis[0] / length, axis[1] / length, axis[2] / length])) return best;
    }
  return best;
}

export interface Contact {
  /** Square millimetres. */
  readonly area: number;
  /** From the first into the second, unit length. */
  readonly normal: Vec3;
  /** The common patch, counter-clockwise seen from outside the first. */
  readonly patch: readonly Vec3[];
  /** Places in the facets of each. */
  readonly facets: readonly [number, number];
}

/**
 * The patches in which faces of the two lie on each other, no further apart than `tolerance` in the middle of the patch;
 * none where only edges or corners meet. `facing` is the least cosine between a face and the other's turned about.
 */
export function contacts(a: Body, b: Body, tolerance = TOUCHING, facing = FACING): Contact[] {
  if (boundsApart(a.bounds, b.bounds) > tolerance) return [];
  if (a.aligned && b.aligned) return blockContacts(a, b, tolerance);
  const found: Contact[] = [];
  a.facets.forEach((f, i) => {
    if (f.inner) return;
    b.facets.forEach((g, j) => {
      const cosine = dot(f.normal, g.normal);
      if (g.inner || cosine > -facing) return;
      // Faces that are not quite parallel are as far apart as they are where they lie on each other.
      const gapAt = (p: Vec3): number => Math.abs(dot(g.normal, p) - g.offset);
      const tilt = Math.sqrt(Math.max(0, 1 - cosine * cosine));
      if (gapAt(a.vertices[f.loop[0]!]!) > tolerance + tilt * size(subtract(a.bounds.most, a.bounds.least)))
        return;
      const patch = common(a, f, b, g);
      const area = patch.length < 3 ? 0 : polygonArea(patch, f.normal);
      if (area > LEAST_AREA && gapAt(mean(patch)) <= tolerance)
        found.push({ area, normal: f.normal, patch, facets: [i, j] });
    });
  });
  return found;
}

/** The same for two aligned blocks, from their bounds alone. */
function blocksApart(a: Bounds, b: Bounds): Apart {
  let [gap, axis, sign] = [-Infinity, 0, 1];
  for (const k of [0, 1, 2] as const) {
    const [after, before] = [b.least[k] - a.most[k], a.least[k] - b.most[k]];
    if (after > gap + NUMERIC) [gap, axis, sign] = [after, k, 1];
    if (before > gap + NUMERIC) [gap, axis, sign] = [before, k, -1];
  }
  return { gap, direction: (sign > 0 ? AXES : BACK)[axis]! };
}

/** The patches of two aligned blocks, from their bounds alone. */
function blockContacts(a: Body, b: Body, tolerance: number): Contact[] {
  const found: Contact[] = [];
  for (const k of [0, 1, 2] as const)
    for (const far of [0, 1] as const) {
      const [own, other] = [a.looks[2 * k + far]!, b.looks[2 * k + 1 - far]!];
      if (a.sides[own]!.inner || b.sides[other]!.inner) continue;
      const at = far ? a.bounds.most[k] : a.bounds.least[k];
      const gap = far ? b.bounds.least[k] - at : at - b.bounds.most[k];
      if (Math.abs(gap) > tolerance) continue;
      const patch = rectangle(a.bounds, b.bounds, k, at, far === 1);
      const normal: [number, number, number] = [0, 0, 0];
      normal[k] = far ? 1 : -1;
      const area = patch && polygonArea(patch, normal);
      if (area !== undefined && area > LEAST_AREA)
        found.push({ area, normal, patch: patch!, facets: [own, other] });
    }
  return found;
}

/** What two blocks share across an axis, in the plane at that place along it; counter-clockwise seen from its far side, or its near. */
function rectangle(a: Bounds, b: Bounds, axis: 0 | 1 | 2, at: number, far: boolean): Vec3[] | undefined {
  const [u, v] = axis === 0 ? ([1, 2] as const) : axis === 1 ? ([2, 0] as const) : ([0, 1] as const);
  const from = (k: 0 | 1 | 2): number => Math.max(a.least[k], b.least[k]);
  const to = (k: 0 | 1 | 2): number => Math.min(a.most[k], b.most[k]);
  const [u0, u1, v0, v1] = [from(u), to(u), from(v), to(v)];
  if (u1 <= u0 || v1 <= v0) return undefined;
  const corner = (x: number, y: number): Vec3 => {
    const p: [number, number, number] = [0, 0, 0];
    p[axis] = at;
    p[u] = x;
    p[v] = y;
    return p;
  };
  const loop = [corner(u0, v0), corner(u1, v0), corner(u1, v1), corner(u0, v1)];
  return far ? loop : loop.reverse();
}

/** The true distance of two solids that do not overlap, and the two nearest points. */
export function distance(
  a: Convex,
  b: Convex,
): { readonly gap: number; readonly from: Vec3; readonly to: Vec3 } {
  let best = { gap: Infinity, from: a.vertices[0]!, to: b.vertices[0]! };
  const take = (from: Vec3, to: Vec3): void => {
    const d = subtract(to, from);
    const gap = size(d);
    if (gap < best.gap) best = { gap, from, to };
  };
  for (const p of corners(a)) for (const facet of b.facets) take(p, nearestOn(b, facet, p));
  for (const p of corners(b)) for (const facet of a.facets) take(nearestOn(a, facet, p), p);
  for (const [p, q] of sidesOf(a)) for (const [r, s] of sidesOf(b)) take(...nearestOfLines(p, q, r, s));
  return best;
}

/** The directions of the world. */
export const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const BACK: readonly Vec3[] = AXES.map((axis) => scaled(axis, -1));
/** Directions nearer than this (sine) are one. */
const SQUARE = 1e-9;
/** Faces look at each other when the cosine between them is beyond this: within about a twentieth of a degree. */
const FACING = 1 - 4e-7;
/** Square millimetres; less is an edge or a corner. */
const LEAST_AREA = 1;

function keep(list: Vec3[], one: Vec3): void {
  for (const k of list) if (Math.abs(dot(k, one)) > 1 - SQUARE) return;
  list.push(one);
}

function along({ vertices, bounds, aligned }: Body, axis: Vec3): [number, number] {
  if (aligned) {
    let [least, most] = [0, 0];
    for (const k of [0, 1, 2] as const) {
      const up = axis[k] > 0;
      least += axis[k] * (up ? bounds.least[k] : bounds.most[k]);
      most += axis[k] * (up ? bounds.most[k] : bounds.least[k]);
    }
    return [least, most];
  }
  return spanAlong(vertices, axis);
}

/** The polygon of f clipped to the polygon of g, both nearly in one plane. */
function common(a: Convex, f: Facet, b: Convex, g: Facet): Vec3[] {
  let polygon = f.loop.map((i) => a.vertices[i]!);
  for (let i = 0; i < g.loop.length && polygon.length > 0; i++) {
    const p = b.vertices[g.loop[i]!]!;
    const q = b.vertices[g.loop[(i + 1) % g.loop.length]!]!;
    const side = unit(cross(subtract(q, p), g.normal));
    if (!side) continue;
    polygon = clipped(polygon, side, dot(side, p));
  }
  return polygon;
}

/** What of a polygon lies where normal · p ≤ offset. */
export function clipped(polygon: readonly Vec3[], normal: Vec3, offset: number): Vec3[] {
  const kept: Vec3[] = [];
  const high = polygon.map((p) => dot(normal, p) - offset);
  for (let i = 0; i < polygon.length; i++) {
    const next = i + 1 < polygon.length ? i + 1 : 0;
    const [p, q] = [polygon[i]!, polygon[next]!];
    const [hp, hq] = [high[i]!, high[next]!];
    if (hp <= 0) kept.push(p);
    if (hp < 0 !== hq < 0 && hp !== 0 && hq !== 0) {
      const t = hp / (hp - hq);
      kept.push([p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1]), p[2] + t * (q[2] - p[2])]);
    }
  }
  return kept;
}

export function polygonArea(polygon: readonly Vec3[], normal: Vec3): number {
  let twice = 0;
  const [x, y, z] = polygon[0] ?? normal;
  for (let i = 1; i + 1 < polygon.length; i++) {
    // Written out: it is asked for every pair of pieces that touch.
    const [p, q] = [polygon[i]!, polygon[i + 1]!];
    const [ux, uy, uz] = [p[0] - x, p[1] - y, p[2] - z];
    const [vx, vy, vz] = [q[0] - x, q[1] - y, q[2] - z];
    twice +=
      normal[0] * (uy * vz - uz * vy) + normal[1] * (uz * vx - ux * vz) + normal[2] * (ux * vy - uy * vx);
  }
  return Math.abs(twice) / 2;
}

function corners({ facets, vertices }: Convex): Vec3[] {
  return [...new Set(facets.flatMap((f) => f.loop))].map((i) => vertices[i]!);
}

function sidesOf({ facets, vertices }: Convex): [Vec3, Vec3][] {
  return facets.flatMap(({ loop }) =>
    loop.flatMap((a, i): [Vec3, Vec3][] => {
      const b = loop[(i + 1) % loop.length]!;
      return a < b ? [[vertices[a]!, vertices[b]!]] : [];
    }),
  );
}

/** The point of a face nearest to p, if p lies straight over the face; else one of its corners, never nearer than an edge is. */
function nearestOn(solid: Convex, { loop, normal, offset }: Facet, p: Vec3): Vec3 {
  const high = dot(normal, p) - offset;
  const foot: Vec3 = [p[0] - high * normal[0], p[1] - high * normal[1], p[2] - high * normal[2]];
  const over = loop.every((i, n) => {
    const [q, r] = [solid.vertices[i]!, solid.vertices[loop[(n + 1) % loop.length]!]!];
    return dot(cross(subtract(r, q), subtract(foot, q)), normal) >= -NUMERIC;
  });
  return over ? foot : solid.vertices[loop[0]!]!;
}

/** The nearest points of two stretches. */
function nearestOfLines(p: Vec3, q: Vec3, r: Vec3, s: Vec3): [Vec3, Vec3] {
  const [u, v, w] = [subtract(q, p), subtract(s, r), subtract(p, r)];
  const [a, b, c, d, e] = [dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)];
  const det = a * c - b * b;
  const clamp = (x: number): number => Math.min(1, Math.max(0, x));
  let t = det > NUMERIC * a * c ? clamp((b * e - c * d) / det) : 0;
  const o = clamp((b * t + e) / c);
  t = clamp((b * o - d) / a);
  const at = (from: Vec3, by: Vec3, share: number): Vec3 => [
    from[0] + share * by[0],
    from[1] + share * by[1],
    from[2] + share * by[2],
  ];
  return [at(p, u, t), at(r, v, o)];
}
