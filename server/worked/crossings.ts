/** Where the pieces of a joint cross: a piece of the first things lies, perhaps through others, on a piece of the last. */
import { clipped, polygonArea } from "../solid/contact";
import { cross, dot, mean, subtract, unit, type Vec3 } from "../solid/vector";
import { otherOf, outward, type Space } from "./space";

/** Places among all pieces, and the patch in which a screw may go. */
export interface Crossing {
  readonly first: number;
  readonly through: readonly number[];
  readonly into: number;
  readonly patch: readonly Vec3[];
  /** From the first piece towards the last. */
  readonly normal: Vec3;
  readonly area: number;
}

/** The crossings of these pieces, in the order of the first, then of the last. */
export function crossingsOf(
  space: Space,
  first: readonly number[],
  through: readonly (readonly number[])[],
  into: readonly number[],
): Crossing[] {
  const last = new Set(into);
  const layers = through.map((group) => new Set(group));
  return first.flatMap((piece) => {
    const open: Crossing[] = meetingsFrom(space, piece).map((m) => ({ first: piece, through: [], ...m }));
    return onwards(space, open, layers, last);
  });
}

type Met = Pick<Crossing, "into" | "patch" | "normal" | "area">;

function onwards(
  space: Space,
  open: readonly Crossing[],
  layers: readonly ReadonlySet<number>[],
  last: ReadonlySet<number>,
): Crossing[] {
  const [layer, ...rest] = layers;
  if (!layer) return open.filter((c) => last.has(c.into) && c.into !== c.first);
  const next = open
    .filter((c) => layer.has(c.into))
    .flatMap((c) =>
      meetingsFrom(space, c.into).flatMap((m): Crossing[] => {
        if (dot(m.normal, c.normal) < STRAIGHT || m.into === c.first) return [];
        const patch = overlapOf(c.patch, m.patch, c.normal);
        const area = patch.length < 3 ? 0 : polygonArea(patch, c.normal);
        return area > LEAST_AREA
          ? [{ first: c.first, through: [...c.through, c.into], into: m.into, patch, normal: c.normal, area }]
          : [];
      }),
    );
  return onwards(space, next, rest, last);
}

/** What a piece lies on, each with its largest patch. */
function meetingsFrom(space: Space, piece: number): Met[] {
  return space.meetingsOf[piece]!.map((i) => {
    const meeting = space.meetings[i]!;
    const patch = meeting.patches[0]!;
    return {
      into: otherOf(meeting, piece),
      patch: patch.patch,
      normal: outward(meeting, piece, patch),
      area: patch.area,
    };
  });
}

/** The first patch, where the second lies under it seen along the normal. */
function overlapOf(first: readonly Vec3[], second: readonly Vec3[], normal: Vec3): Vec3[] {
  const middle = mean(second);
  return second.reduce<Vec3[]>(
    (polygon, p, i) => {
      const q = second[(i + 1) % second.length]!;
      const side = unit(cross(subtract(q, p), normal));
      if (!side) return polygon;
      const out: Vec3 = dot(subtract(middle, p), side) > 0 ? [-side[0], -side[1], -side[2]] : side;
      return clipped(polygon, out, dot(out, p));
    },
    [...first],
  );
}

/** Cosine between the ways of two patches that one straight screw can pass. */
const STRAIGHT = 0.999;
/** Square millimetres; less is an edge or a corner. */
const LEAST_AREA = 1;
