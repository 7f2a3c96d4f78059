/** Where a child's foot finds hold on what stands beside a guard: tops that are level enough, deep enough and not covered. Millimetres. */
import { NUMERIC } from "../../solid/angle";
import { type Body, type Bounds, boundsApart } from "../../solid/contact";
import { type Convex, cut, type Facet } from "../../solid/convex";
import { cross, dot, scaled, spanAlong, subtract, unit, type Vec3 } from "../../solid/vector";
import type { Box } from "../boxes";
import type { Space } from "../space";
import { FOOTHOLDS, LEDGE, STEEP } from "./sizes";
import type { Soil } from "./soil";
import { gapsIn, type Rectangle, someOpen } from "./uncovered";

export interface Foothold {
  /** Its place among all pieces; undefined for the fill of a box. */
  readonly piece: number | undefined;
  readonly box: Box | undefined;
  /** Heights above the floor between which a foot stands on it, inside of the band: the same for what is level. */
  readonly from: number;
  readonly to: number;
}

/**
 * All footholds between the two heights, those of a part that are as high told once, the lowest first. A top counts where
 * it is open to a foot over a ledge of its least depth, with room for toes above, and a foot comes there: from above or
 * from a side.
 */
export function footholdsIn(space: Space, soils: readonly Soil[]): Foothold[] {
  const found: Foothold[] = [];
  const seen = new Set<string>();
  const take = (top: Top, piece: number | undefined, box: Box | undefined): void => {
    const key = `${piece === undefined ? `in ${box!.name}` : space.pieces[piece]!.part} ${tenths(top.low)} ${tenths(top.high)}`;
    if (seen.has(key) || !isFoothold(top, space, soils)) return;
    seen.add(key);
    found.push({
      piece,
      box,
      from: Math.max(top.low, FOOTHOLDS.low),
      to: Math.min(top.high, FOOTHOLDS.high),
    });
  };
  space.pieces.forEach(({ cells }, i) => {
    for (const cell of cells) for (const top of topsOf(cell)) take(top, i, undefined);
  });
  for (const { box, bounds } of soils) {
    const top = levelTop(bounds, undefined);
    if (isHigh(top)) take(top, undefined, box);
  }
  return found.sort((a, b) => a.from - b.from || a.to - b.to);
}

const tenths = (mm: number): number => Math.round(mm * 10 + 0.3);

/** A face that looks up: its plane, and two directions in it, the first along its longest edge. */
interface Top {
  readonly own: Body | undefined;
  readonly normal: Vec3;
  readonly offset: number;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly whole: Rectangle;
  readonly low: number;
  readonly high: number;
  readonly bounds: Bounds;
}

const UP: Vec3 = [0, 0, 1];
const RIGHT: Vec3 = [1, 0, 0];
const BACK: Vec3 = [0, 1, 0];
/** The least cosine between a face that a foot stands on and the level. */
const LEVEL = 1 / Math.hypot(1, STEEP);

const isHigh = ({ low, high }: Pick<Top, "low" | "high">): boolean =>
  high > FOOTHOLDS.low + NUMERIC && low <= FOOTHOLDS.high + NUMERIC;

function topsOf(cell: Body): Top[] {
  const { least, most } = cell.bounds;
  if (!isHigh({ low: least[2], high: most[2] })) return [];
  if (cell.aligned) {
    const top = levelTop(cell.bounds, cell);
    return isHigh(top) && !cell.sides[cell.looks[5]!]!.inner ? [top] : [];
  }
  return cell.facets.flatMap((facet) => {
    if (facet.inner || facet.normal[2] < LEVEL - NUMERIC) return [];
    const top = topOf(cell, facet);
    return top && isHigh(top) ? [top] : [];
  });
}

const levelTop = ({ least, most }: Bounds, own: Body | undefined): Top => ({
  own,
  normal: UP,
  offset: most[2],
  u: RIGHT,
  v: BACK,
  whole: { u: [least[0], most[0]], v: [least[1], most[1]] },
  low: most[2],
  high: most[2],
  bounds: { least: [least[0], least[1], most[2]], most },
});

function topOf(cell: Body, { normal, offset, loop }: Facet): Top | undefined {
  const corners = loop.map((i) => cell.vertices[i]!);
  const edges = corners.map((p, i) => subtract(corners[(i + 1) % corners.length]!, p));
  const longest = edges.reduce((a, b) => (dot(b, b) > dot(a, a) + NUMERIC ? b : a));
  const u = unit(longest);
  const v = u && unit(cross(normal, u));
  if (!u || !v) return undefined;
  const span = (axis: Vec3) => spanAlong(corners, axis);
  const [x, y, z] = [span(RIGHT), span(BACK), span(UP)];
  return {
    own: cell,
    normal,
    offset,
    u,
    v,
    whole: { u: span(u), v: span(v) },
    low: z[0],
    high: z[1],
    bounds: { least: [x[0], y[0], z[0]], most: [x[1], y[1], z[1]] },
  };
}

const long = ([from, to]: readonly [number, number]): number => to - from;
const holdsFoot = ({ u, v }: Rectangle): boolean => {
  const [a, b] = [long(u) + NUMERIC, long(v) + NUMERIC];
  return (a >= LEDGE.long && b >= LEDGE.deep) || (b >= LEDGE.long && a >= LEDGE.deep);
};

function isFoothold(top: Top, space: Space, soils: readonly Soil[]): boolean {
  if (!holdsFoot(top.whole)) return false;
  const ceiling = space.bounds!.most[2] + LEDGE.clear;
  const above = coversOver(top, space, soils, ceiling - top.low, top.bounds);
  // Straight down from above, or else under something, from a side.
  if (someOpen(top.whole, above, holdsFoot)) return true;
  const close = coversOver(top, space, soils, LEDGE.clear, top.bounds);
  let around: readonly Rectangle[] | undefined;
  return someOpen(top.whole, close, (open) => {
    if (!holdsFoot(open)) return false;
    around ??= coversOver(top, space, soils, LEDGE.clear, space.bounds!);
    return isReached(open, around);
  });
}

/** Whether a way as wide as a foot leads straight out from an open place, between what stands around it. */
function isReached(open: Rectangle, around: readonly Rectangle[]): boolean {
  const out = (along: "u" | "v", far: boolean): boolean => {
    const across = along === "u" ? "v" : "u";
    const [from, to] = open[along];
    const inWay = around.filter((r) => (far ? r[along][1] > to - NUMERIC : r[along][0] < from + NUMERIC));
    const ways = gapsIn(
      open[across],
      inWay.map((r) => r[across]),
    );
    return ways.some((way) => long(way) + NUMERIC >= LEDGE.long);
  };
  return out("u", false) || out("u", true) || out("v", false) || out("v", true);
}

/** What stands within so much over the plane of a top, as rectangles in its directions, as far as it comes near `within`. */
function coversOver(
  top: Top,
  space: Space,
  soils: readonly Soil[],
  high: number,
  within: Bounds,
): Rectangle[] {
  const { least, most } = within;
  const slab: Bounds = {
    least: [least[0], least[1], top.low],
    most: [most[0], most[1], top.high + high],
  };
  const covers: Rectangle[] = [];
  for (const i of space.grid.near(slab, 0))
    for (const cell of space.pieces[i]!.cells) {
      if (cell === top.own || boundsApart(cell.bounds, slab) > -NUMERIC) continue;
      const cover = coverOf(top, cell, high);
      if (cover) covers.push(cover);
    }
  for (const { bounds } of soils) {
    const from = bounds.most[2] - top.low;
    if (from > NUMERIC && bounds.least[2] < top.high + high && boundsApart(bounds, slab) < -NUMERIC)
      covers.push(seen(top, cornersOf(bounds)));
  }
  return covers;
}

function coverOf(top: Top, cell: Body, high: number): Rectangle | undefined {
  const { least, most } = cell.bounds;
  if (top.normal === UP && cell.aligned) {
    if (most[2] < top.offset + NUMERIC || least[2] > top.offset + high - NUMERIC) return undefined;
    return { u: [least[0], most[0]], v: [least[1], most[1]] };
  }
  const { normal, offset } = top;
  const side = "upper face";
  const upper = cut(cell, { normal: scaled(normal, -1), offset: -(offset + NUMERIC), side });
  const part: Convex | undefined = upper && cut(upper, { normal, offset: offset + high, side });
  if (!part) return undefined;
  // A cut leaves corners that no face has any more.
  return seen(
    top,
    part.facets.flatMap((f) => f.loop.map((i) => part.vertices[i]!)),
  );
}

const seen = ({ u, v }: Top, points: readonly Vec3[]): Rectangle => ({
  u: spanAlong(points, u),
  v: spanAlong(points, v),
});

const cornersOf = ({ least, most }: Bounds): Vec3[] =>
  [0, 1, 2, 3, 4, 5, 6, 7].map(
    (i): Vec3 => [(i & 1 ? most : least)[0], (i & 2 ? most : least)[1], (i & 4 ? most : least)[2]],
  );
