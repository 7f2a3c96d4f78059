/**
 * Whether what stands on a floor tips over: the outline of its feet, the edges about which it can tip, and the pushes and
 * weights that do it. Millimetres, kilograms for weights and forces alike; pure numbers, no text.
 */

/** Seen from above. */
export type Point = readonly [x: number, y: number];

/** A weight where its middle is. */
export interface Mass {
  readonly kg: number;
  readonly at: readonly [x: number, y: number, z: number];
}

/** An edge of the base; all of the base lies where outward · p is at most `offset`. */
export interface Side {
  /** Unit vector, square to the edge and away from the base. */
  readonly outward: Point;
  readonly offset: number;
  readonly from: Point;
  readonly to: Point;
}

/** The convex outline round some points, counter-clockwise, corners only; fewer than three for points in one line. */
export function hullOf(points: readonly Point[]): Point[] {
  const sorted = points
    .map(([x, y]): Point => [snapped(x), snapped(y)])
    .sort((a, b) => a[0] - b[0] || a[1] - b[1])
    .filter((p, i, all) => i === 0 || p[0] !== all[i - 1]![0] || p[1] !== all[i - 1]![1]);
  const half = (list: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const p of list) {
      while (chain.length >= 2 && turn(chain.at(-2)!, chain.at(-1)!, p) <= CRUMB) chain.pop();
      chain.push(p);
    }
    return chain;
  };
  const lower = half(sorted);
  const upper = half(sorted.reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

/** What arithmetic leaves, in mm and mm2. */
const CRUMB = 1e-6;
/** Points nearer than that are one. */
const snapped = (mm: number): number => Math.round(mm * 1e6) / 1e6 + 0;

/** Twice the area of a triangle; above nothing where it turns to the left. */
const turn = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** The edges of an outline; none of one that has no area. */
export function sidesOf(hull: readonly Point[]): Side[] {
  if (hull.length < 3) return [];
  return hull.map((from, i) => {
    const to = hull[(i + 1) % hull.length]!;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const outward: Point = [(to[1] - from[1]) / length, (from[0] - to[0]) / length];
    return { outward, offset: along(outward, from), from, to };
  });
}

/** How wide an outline is where it is narrowest, in mm; 0 of one that has no area. */
export function narrowest(hull: readonly Point[]): number {
  const sides = sidesOf(hull);
  if (sides.length === 0) return 0;
  return Math.min(...sides.map((side) => Math.max(...hull.map((p) => -beyond(side, p)))));
}

/** How far a point lies outside that edge, in mm; less than nothing inside. */
export const beyond = ({ outward, offset }: Side, p: readonly [number, number, ...number[]]): number =>
  outward[0] * p[0] + outward[1] * p[1] - offset;

const along = (way: Point, p: Point): number => way[0] * p[0] + way[1] * p[1];

/** Some weights as one; undefined where they weigh nothing. */
export function together(masses: readonly Mass[]): Mass | undefined {
  const kg = masses.reduce((sum, m) => sum + m.kg, 0);
  if (!(kg > 0)) return undefined;
  const middle = (k: 0 | 1 | 2): number => masses.reduce((sum, m) => sum + m.kg * m.at[k], 0) / kg;
  return { kg, at: [middle(0), middle(1), middle(2)] };
}

/** The edge about which something happens first, and what it takes. */
export interface Tipped {
  readonly side: Side;
  /** Kilograms that just tip it; nothing or less where it tips by itself. */
  readonly kg: number;
}

/** The edge that the middle of a weight is nearest to, or furthest outside of. Undefined without edges. */
export function nearestSide(sides: readonly Side[], { at }: Mass): Side | undefined {
  let best: Side | undefined;
  for (const side of sides) if (!best || beyond(side, at) > beyond(best, at)) best = side;
  return best;
}

/**
 * The level push, square to an edge and so high above the floor, that just tips a thing over: weight times its arm over the
 * height. Of all edges the easiest. Undefined without edges or height.
 */
export function pushToTip(sides: readonly Side[], mass: Mass, height: number): Tipped | undefined {
  const side = nearestSide(sides, mass);
  return side && height > 0 ? { side, kg: (-beyond(side, mass.at) * mass.kg) / height } : undefined;
}

/**
 * The weight that just tips a thing over where it comes on one of these points, each shortened by `inset` towards the
 * inside. Undefined where no point lies outside the base.
 */
export function weightToTip(
  sides: readonly Side[],
  mass: Mass,
  points: readonly Point[],
  inset: number,
): (Tipped & { readonly over: number }) | undefined {
  let best: (Tipped & { readonly over: number }) | undefined;
  for (const side of sides) {
    const over = Math.max(...points.map((p) => beyond(side, p))) - inset;
    if (!(over > CRUMB)) continue;
    const kg = (-beyond(side, mass.at) * mass.kg) / over;
    if (!best || kg < best.kg) best = { side, kg, over };
  }
  return best;
}

/** A level force, in kilograms, with the unit vector it pushes along and the height of its middle, in mm. */
export interface Force {
  readonly kg: number;
  readonly way: Point;
  readonly height: number;
}

/** How many times over what holds a thing down exceeds such a force, about the worst edge; undefined where it tips about none. */
export function marginAgainst(
  sides: readonly Side[],
  mass: Mass,
  { kg, way, height }: Force,
): { readonly side: Side; readonly margin: number } | undefined {
  let best: { readonly side: Side; readonly margin: number } | undefined;
  for (const side of sides) {
    const overturning = kg * height * along(side.outward, way);
    if (!(overturning > CRUMB)) continue;
    const margin = (-beyond(side, mass.at) * mass.kg) / overturning;
    if (!best || margin < best.margin) best = { side, margin };
  }
  return best;
}
