/** How much of the surface of pieces is seen once they stand, and how much lies on other wood. */
import { ifKnown } from "../plan";
import { HAIRLINE } from "../solid/contact";
import { isEnd, skinOf } from "../solid/skin";
import { dot } from "../solid/vector";
import { AREA, count, exactly, fraction, type Quantity, refused, roughly, times } from "../units";
import type { Part } from "./parts";
import { boardSolid } from "./placing";
import { type Meeting, outward, type Space } from "./space";

/** Surface of one piece of a part, whole: after its end cuts and notches. */
export interface PieceSurface {
  /** Exact where the piece is a plain block of exact sizes. */
  readonly whole: Quantity;
  /** End grain, mm². */
  readonly ends: number;
}

/** Surfaces of parts, each worked out once. */
export class Surfaces {
  private readonly done = new Map<Part, PieceSurface | undefined>();

  /** Undefined where a size of the part is not known, or its notches leave nothing. */
  of(part: Part): PieceSurface | undefined {
    if (!this.done.has(part)) this.done.set(part, surfaceOf(part));
    return this.done.get(part);
  }
}

function surfaceOf(part: Part): PieceSurface | undefined {
  const solid = boardSolid(part);
  if (!solid) return undefined;
  const { whole, ends } = skinOf(solid);
  return { whole: (solid.block && blockSurface(part)) ?? roughly(AREA, whole), ends };
}

/** Twice the three faces of a plain block; undefined where a size is not exact. */
function blockSurface(part: Part): Quantity | undefined {
  const [l, w, t] = [part.length, part.width, part.thickness].map((v) => ifKnown(v)?.exact);
  if (!l || !w || !t) return undefined;
  const { add, multiply, rational } = fraction;
  const half = add(add(multiply(l, w), multiply(l, t)), multiply(w, t));
  return exactly(AREA, multiply(half, rational(2)));
}

/** What of a placed piece lies on other wood, in mm²; faces that only come near each other, up to a hairline, are hidden too. */
export interface Touching {
  readonly faces: number;
  readonly ends: number;
}

/** By its place among all pieces. */
export function touching(space: Space, piece: number): Touching {
  let [faces, ends] = [0, 0];
  for (const m of space.meetingsOf[piece]!) {
    const meeting = space.meetings[m]!;
    for (const patch of meeting.patches)
      if (liesOnEnd(space, meeting, piece, patch)) ends += patch.area;
      else faces += patch.area;
  }
  return { faces, ends };
}

type Patch = Meeting["patches"][number];

/** Whether a patch is part of an end of the piece. */
function liesOnEnd(space: Space, meeting: Meeting, piece: number, patch: Patch): boolean {
  const { cells } = space.pieces[piece]!;
  const [only, more] = cells;
  if (only && !more) return isEnd(only.sides[patch.facets[meeting.a === piece ? 0 : 1]]!.side);
  // Which cell a patch is of is not kept: its face is found by where it lies.
  const normal = outward(meeting, piece, patch);
  const high = dot(normal, patch.patch[0]!);
  return cells.some((cell) =>
    cell.facets.some(
      (f) =>
        !f.inner &&
        isEnd(f.side) &&
        dot(f.normal, normal) > ONE_WAY &&
        Math.abs(f.offset - high) < 2 * HAIRLINE,
    ),
  );
}

/** Cosine from which two directions are one. */
const ONE_WAY = 1 - 1e-6;

/** So many of an area, exact where it is. */
export function areaTimes(area: Quantity, n: number): Quantity {
  const product = times(area, count(n));
  return refused(product) ? roughly(AREA, area.approx * n) : product;
}
