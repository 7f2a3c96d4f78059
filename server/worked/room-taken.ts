/** How much room everything placed takes: in its space, and on its way in. Millimetres. */
import { HAIRLINE, TOUCHING } from "../solid/contact";
import { dot, type Vec3 } from "../solid/vector";
import type { Piece } from "./pieces";
import type { Worked } from "./work";

type Axis = 0 | 1 | 2;

/** How far everything reaches in a direction, and the piece that sticks out furthest where that is more than a limit. */
export function reachBeyond(
  { space }: Worked,
  axis: Axis,
  limit: number,
): { readonly reach: number; readonly piece: Piece } | undefined {
  if (!space.bounds) return undefined;
  const { least, most } = space.bounds;
  const reach = most[axis] - least[axis];
  if (reach <= limit + HAIRLINE) return undefined;
  const before = -least[axis] > most[axis] - limit;
  const piece = space.pieces.find((p) =>
    before ? p.bounds.least[axis] <= least[axis] + TOUCHING : p.bounds.most[axis] >= most[axis] - TOUCHING,
  )!;
  return { reach, piece };
}

/** Sides of a block, the smallest first. */
export type Sides = readonly [number, number, number];

/** Whether a block can be carried straight through an opening, turned on any of its sides; both smallest first. */
export const goesThrough = (sides: Sides, opening: readonly number[]): boolean =>
  opening.every((side, i) => sides[i]! <= side + HAIRLINE);

/** Everything as it stands. */
export const builtSides = ({ space }: Worked): Sides | undefined =>
  space.bounds && sidesOf([space.bounds.least, space.bounds.most], WORLD);

/** Each kind of piece by its part, and each assembly and ring, put together: the largest of each. */
export function loads(worked: Worked): {
  readonly pieces: readonly { readonly piece: Piece; readonly sides: Sides }[];
  readonly groups: readonly { readonly name: string; readonly sides: Sides }[];
} {
  const pieces = new Map<string, { piece: Piece; sides: Sides }>();
  const copies = new Map<string, { name: string; points: Vec3[] }>();
  for (const piece of worked.space.pieces) {
    const { length, width, thickness } = piece.pose;
    const sides = sidesOf(
      piece.cells.flatMap((c) => c.vertices),
      [length, width, thickness],
    );
    const before = pieces.get(piece.part);
    if (!before || larger(sides, before.sides)) pieces.set(piece.part, { piece, sides });
    for (const { name, id } of piece.owners) {
      const copy = copies.get(id) ?? { name, points: [] };
      copy.points.push(piece.bounds.least, piece.bounds.most);
      copies.set(id, copy);
    }
  }
  const groups = new Map<string, { name: string; sides: Sides }>();
  for (const { name, points } of copies.values()) {
    const sides = sidesOf(points, WORLD);
    const before = groups.get(name);
    if (!before || larger(sides, before.sides)) groups.set(name, { name, sides });
  }
  return { pieces: [...pieces.values()], groups: [...groups.values()] };
}

const WORLD: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const larger = (a: Sides, b: Sides): boolean => a[1] > b[1] + TOUCHING || a[0] > b[0] + TOUCHING;

function sidesOf(points: readonly Vec3[], axes: readonly Vec3[]): Sides {
  const [a, b, c] = axes
    .map((axis) => {
      const at = points.map((p) => dot(p, axis));
      return at.length > 0 ? Math.max(...at) - Math.min(...at) : 0;
    })
    .sort((x, y) => x - y);
  return [a!, b!, c!];
}
