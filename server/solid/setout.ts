/**
 * Where screws go on a patch where two boards lie on each other: in a row along its longer side, clear of its edges.
 * Millimetres.
 */
import { clipped, polygonArea } from "./contact";
import { add, cross, dot, scaled, size, spanAlong, subtract, unit, type Vec3 } from "./vector";

/** A patch with its own directions: `long` along its longest side, `short` square to it. */
export interface Field {
  readonly centre: Vec3;
  readonly long: Vec3;
  readonly short: Vec3;
  /** Half its extent each way. */
  readonly halfLong: number;
  readonly halfShort: number;
  readonly polygon: readonly Vec3[];
  readonly normal: Vec3;
  /** The patch is a rectangle along those directions: every strip across it is as wide, and in the middle. */
  readonly even: boolean;
}

/** The field of a patch, long in the direction given, as that lies in the patch's plane; else, or where it is square to it, along the longest side. */
export function fieldOf(polygon: readonly Vec3[], normal: Vec3, along?: Vec3): Field {
  const inPlane = along && subtract(along, scaled(normal, dot(along, normal)));
  const wanted = inPlane && size(inPlane) > SQUARE ? unit(inPlane) : undefined;
  const long = wanted ?? longestSide(polygon) ?? anyIn(normal);
  const short = cross(normal, long);
  const [l0, l1] = spanAlong(polygon, long);
  const [s0, s1] = spanAlong(polygon, short);
  const at = polygon[0]!;
  const high = dot(at, normal);
  const centre = add(scaled(normal, high), add(scaled(long, (l0 + l1) / 2), scaled(short, (s0 + s1) / 2)));
  const [halfLong, halfShort] = [(l1 - l0) / 2, (s1 - s0) / 2];
  const even = polygonArea(polygon, normal) > 4 * halfLong * halfShort * (1 - EVEN);
  return { centre, long, short, halfLong, halfShort, polygon, normal, even };
}

/** `n` places in a row along the field, each in the middle of its own share. */
export function shares(field: Field, n: number): Vec3[] {
  const places: Vec3[] = [];
  for (let i = 0; i < n; i++) places.push(onField(field, (2 * (i + 0.5)) / n - 1));
  return places;
}

/** `n` places evenly from `margin` inside one end of the field to `margin` inside the other. */
export function betweenEnds(field: Field, n: number, margin: number): Vec3[] {
  if (n === 1) return [onField(field, 0)];
  const reach = Math.max(0, 1 - margin / field.halfLong);
  return Array.from({ length: n }, (_, i) => onField(field, reach * ((2 * i) / (n - 1) - 1)));
}

/** As many as stand no further apart than `spacing`, from `margin` inside one end to `margin` inside the other. */
export const spaced = (field: Field, spacing: number, margin: number): Vec3[] =>
  betweenEnds(field, countSpaced(field, spacing, margin), margin);

/** How many those are. */
export function countSpaced({ halfLong }: Field, spacing: number, margin: number): number {
  const run = Math.max(0, 2 * (halfLong - margin));
  return Math.ceil(run / spacing - 1e-9) + 1;
}

/** A place on the field's middle line, -1 at its one end and 1 at its other; in the middle of what the patch has there. */
function onField(field: Field, share: number): Vec3 {
  const at = add(field.centre, scaled(field.long, share * field.halfLong));
  if (field.even) return at;
  const here = strip(field, dot(at, field.long));
  if (!here) return at;
  const [from, to] = here;
  const middle = (from + to) / 2 - dot(at, field.short);
  return add(at, scaled(field.short, middle));
}

/** What the patch has square to its long direction at that place along it. */
function strip({ polygon, long, short }: Field, at: number): [number, number] | undefined {
  const upper = clipped(polygon, long, at + HAIR);
  const band = clipped(upper, [-long[0], -long[1], -long[2]], -(at - HAIR));
  return band.length > 0 ? spanAlong(band, short) : undefined;
}

/** A direction (of unit length) that lies less than this in a plane is square to it: what is left is crumbs of arithmetic. */
const SQUARE = 1e-6;
/** The share of the block round a patch that a rectangle may leave free: crumbs of arithmetic. */
const EVEN = 1e-9;
/** Half the width of the band that stands for a line, in mm. */
const HAIR = 1e-4;

function longestSide(polygon: readonly Vec3[]): Vec3 | undefined {
  let best: Vec3 | undefined;
  let length = 0;
  polygon.forEach((p, i) => {
    const side = subtract(polygon[(i + 1) % polygon.length]!, p);
    const long = size(side);
    // Sides of one length differ by crumbs; the first of them counts.
    if (long > length + 1e-6) [best, length] = [unit(side), long];
  });
  return best;
}

const anyIn = (normal: Vec3): Vec3 =>
  unit(cross(normal, Math.abs(normal[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0])) ?? [1, 0, 0];
