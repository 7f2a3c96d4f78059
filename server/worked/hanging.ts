/** What hangs in the air, and what it is nearest to. Millimetres. */
import { type Bounds, HAIRLINE, TOUCHING } from "../solid/contact";
import type { Vec3 } from "../solid/vector";
import { nearestOf } from "./near";
import type { Piece } from "./pieces";
import type { Space } from "./space";
import type { Worked } from "./work";

/** A group of pieces that no contact leads from to the floor. */
export interface Hanging {
  /** The one nearest to something. */
  readonly piece: Piece;
  /** What it is nearest to: another piece, or the floor. */
  readonly to: Piece | "floor";
  readonly gap: number;
  /** From the piece towards that. */
  readonly way: Vec3;
  /** All that hold on to each other, itself among them. */
  readonly group: readonly Piece[];
}

/** Groups that hang; one of which a piece is inside another has a mistake of its own. */
export function hangingFreely({ hanging, clashes }: Space): (readonly number[])[] {
  const inside = new Set(clashes.flatMap((c) => (c.depth > HAIRLINE ? [c.a, c.b] : [])));
  return hanging.filter((group) => !group.some((i) => inside.has(i)));
}

/** Every group that hangs, with what it is nearest to. */
export function hangingGroups({ space }: Worked): Hanging[] {
  // What hangs itself holds nothing: the nearest is looked for among the pieces that stand.
  const loose = new Set(space.hanging.flat());
  const standing = space.pieces.map((p, i) => (loose.has(i) ? { ...p, bounds: NOWHERE, cells: [] } : p));
  return hangingFreely(space).flatMap((group): Hanging[] => {
    const lowest = group.reduce((a, b) =>
      space.pieces[b]!.bounds.least[2] < space.pieces[a]!.bounds.least[2] - TOUCHING ? b : a,
    );
    const height = space.pieces[lowest]!.bounds.least[2];
    const all = group.map((i) => space.pieces[i]!);
    const pieces = [...standing];
    for (const i of group) pieces[i] = space.pieces[i]!;
    const near = nearestOf({ ...space, pieces }, group);
    if (!near || near.gap > height)
      return [{ piece: space.pieces[lowest]!, to: "floor", gap: height, way: [0, 0, -1], group: all }];
    const { from, to, gap, way } = near;
    return [{ piece: space.pieces[from]!, to: space.pieces[to]!, gap, way, group: all }];
  });
}

const NOWHERE: Bounds = { least: [Infinity, Infinity, Infinity], most: [Infinity, Infinity, Infinity] };

/** Whether some piece stands on the floor, or in the ground. */
export const standsSomewhere = ({ space }: Worked): boolean =>
  space.pieces.some((p) => p.bounds.least[2] <= TOUCHING);
