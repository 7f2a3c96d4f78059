/** The screws of a joint between placed pieces: how many, where on the wood each goes in, and which way. */
import type { JointPlace } from "../../grammar/tree";
import { cos, sin } from "../solid/angle";
import { betweenEnds, countSpaced, type Field, fieldOf, shares, spaced } from "../solid/setout";
import { add, dot, mean, scaled, type Vec3 } from "../solid/vector";
import type { Crossing } from "./crossings";
import type { Piece } from "./pieces";
import { around, type PlacedScrew, type ScrewSize, screwAt } from "./screw-way";
import type { Space } from "./space";

export interface DrivePattern extends ScrewSize {
  readonly count: number;
  readonly place: JointPlace | undefined;
  /** mm from center to center. */
  readonly spacing: number | undefined;
  readonly angle: number;
}

/** How many screws a joint takes. */
export function screwCount(space: Space, crossings: readonly Crossing[], pattern: DrivePattern): number {
  const { spacing } = pattern;
  const used = atEnds(space.pieces, crossings, pattern.place);
  if (spacing === undefined) return sharesOf(used, pattern).reduce((sum, n) => sum + n, 0);
  return used.reduce((sum, crossing) => {
    const field = fieldFor(space.pieces[crossing.first]!, crossing, pattern);
    return sum + countSpaced(field, spacing, marginIn(field));
  }, 0);
}

/** Every screw of a joint, crossing by crossing. */
export function screwsOf(space: Space, crossings: readonly Crossing[], pattern: DrivePattern): PlacedScrew[] {
  const { pieces } = space;
  const used = atEnds(pieces, crossings, pattern.place);
  const each = sharesOf(used, pattern);
  return used.flatMap((crossing, i) => {
    const field = fieldFor(pieces[crossing.first]!, crossing, pattern);
    const straight = squareTo(pieces[crossing.first]!, crossing.normal);
    const direction = add(scaled(straight, cos(pattern.angle)), scaled(field.long, sin(pattern.angle)));
    const near = around(space, crossing, direction, pattern.length);
    return placesOn(field, each[i]!, pattern).map((at) =>
      screwAt(pieces, near, crossing, at, direction, field, pattern),
    );
  });
}

/**
 * The way a straight screw goes: square to the faces that lie on each other. Through a mitered end it goes square to the
 * side of the first piece that looks that way most.
 */
function squareTo({ pose }: Piece, normal: Vec3): Vec3 {
  const along = Math.abs(dot(pose.length, normal));
  if (along < SIDE || along > BUTT) return normal;
  const ways = [pose.width, pose.thickness].flatMap((v): Vec3[] => [v, scaled(v, -1)]);
  return ways.reduce((best, v) => (dot(v, normal) > dot(best, normal) ? v : best));
}

/** Cosines between a face and the length of its board: a side below the one, a square end above the other. */
const SIDE = 0.1;
const BUTT = 0.95;

/** For `at each end`: of every first piece the crossing nearest to each of its ends. */
function atEnds(
  pieces: readonly Piece[],
  crossings: readonly Crossing[],
  place: JointPlace | undefined,
): readonly Crossing[] {
  if (place?.at !== "each end") return crossings;
  const ends = new Map<string, { crossing: Crossing; off: number }>();
  for (const crossing of crossings) {
    const { pose, bounds } = pieces[crossing.first]!;
    const middle: Vec3 = [0, 1, 2].map((k) => (bounds.least[k]! + bounds.most[k]!) / 2) as unknown as Vec3;
    const off = dot(pose.length, mean(crossing.patch)) - dot(pose.length, middle);
    const key = `${crossing.first} ${off < 0 ? "left" : "right"}`;
    const before = ends.get(key);
    if (!before || Math.abs(off) > Math.abs(before.off)) ends.set(key, { crossing, off });
  }
  return [...ends.values()].map((e) => e.crossing);
}

/** How many screws each crossing gets. */
function sharesOf(crossings: readonly Crossing[], { count, place, spacing }: DrivePattern): number[] {
  const dealt = spacing === undefined && (place?.at === "in all" || place?.at === "along it");
  if (!dealt) return crossings.map(() => count);
  // Those of the joint, or of each first piece, are dealt to its crossings; the first get one more where it is not even.
  const groups = new Map<number, number[]>();
  crossings.forEach(({ first }, i) => {
    const key = place.at === "in all" ? 0 : first;
    const group = groups.get(key);
    if (group) group.push(i);
    else groups.set(key, [i]);
  });
  const each = crossings.map(() => 0);
  for (const group of groups.values())
    group.forEach((i, n) => {
      each[i] = Math.floor(count / group.length) + (n < count % group.length ? 1 : 0);
    });
  return each;
}

/** At a spacing screws follow the longer side of the patch: a panel is nailed along every board it lies on. */
function fieldFor(first: Piece, { patch, normal }: Crossing, { place, spacing }: DrivePattern): Field {
  const along = spacing === undefined && place?.at === "along it";
  return fieldOf(patch, normal, along ? first.pose.length : undefined);
}

function placesOn(field: Field, n: number, { place, spacing }: DrivePattern): Vec3[] {
  if (n === 0) return [];
  if (spacing !== undefined) return spaced(field, spacing, marginIn(field));
  return place?.at === "along it" ? betweenEnds(field, n, marginIn(field)) : shares(field, n);
}

const marginIn = ({ halfLong }: Field): number => Math.min(END_MARGIN, halfLong / 2);

/** Screws along a board start this far from its ends, in mm (common practice: 1-1/2"). */
const END_MARGIN = 38.1;
