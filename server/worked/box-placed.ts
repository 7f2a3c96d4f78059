/** What the placed walls and bottom of a box make: its inside, its outline, and the openings in it. */
import { type Declared, ifKnown, lookUp } from "../plan";
import { boundsOf } from "../solid/contact";
import { LENGTH, type Quantity, roughly } from "../units";
import { type BoxRoom, type Opening, openingsOf, roomOf } from "./box-space";
import type { Piece } from "./pieces";
import { insideProperty, type Placing } from "./placing";
import type { Extent3 } from "./settings";

export interface BoxInSpace {
  readonly room: BoxRoom;
  readonly inside: Extent3;
  /** At the bottom, where that differs from the rim. */
  readonly foot: Extent3 | undefined;
  readonly outline: Extent3;
  readonly openings: readonly Opening[];
}

/**
 * Openings up to this are let be, in mm: 5/8" in a bottom, where gaps are how it drains, 1/8" in a wall (common practice:
 * what is wider wants fabric or a board).
 */
export const OPEN_IN_BOTTOM = 15.875;
const LET_BE = { wall: 3.175, bottom: OPEN_IN_BOTTOM } as const;

/** Undefined where its walls do not stand on all four sides. */
export function boxInSpace(
  box: Declared,
  placing: Placing,
  pieces: readonly Piece[],
): BoxInSpace | undefined {
  const { scope } = placing.input;
  const named = (kind: "walls" | "floor"): Piece[] => {
    const names = box.entry.clauses.flatMap((c) =>
      c.kind === kind ? c.things.flatMap((t) => lookUp(scope, t.name.text)?.name ?? []) : [],
    );
    return pieces.filter((p) => names.includes(p.part) || p.owners.some((o) => names.includes(o.name)));
  };
  const walls = named("walls");
  const floor = named("floor");
  const room = walls.length > 0 ? roomOf(walls, floor) : undefined;
  if (!room) return undefined;
  const exact = (property: string, mm: number): Quantity =>
    ifKnown(insideProperty(placing, box, property)) ?? roughly(LENGTH, mm);
  const [x, y] = room.rim;
  const [u, v] = room.foot;
  const sloped = Math.abs(wide(x) - wide(u)) > SAME || Math.abs(wide(y) - wide(v)) > SAME;
  const { least, most } = boundsOf(walls.flatMap((p) => [p.bounds.least, p.bounds.most]));
  return {
    room,
    inside: {
      wide: exact("inside width", wide(x)),
      deep: exact("inside depth", wide(y)),
      high: sameHeight(room, walls)
        ? exact("inside height", room.high - room.low)
        : roughly(LENGTH, room.high - room.low),
    },
    foot: sloped ? { wide: roughly(LENGTH, wide(u)), deep: roughly(LENGTH, wide(v)) } : undefined,
    outline: { wide: roughly(LENGTH, most[0] - least[0]), deep: roughly(LENGTH, most[1] - least[1]) },
    openings: openingsOf(room, walls, floor, pieces, LET_BE),
  };
}

/** The lowest wall is as high as all of them together: the exact height inside holds. */
const sameHeight = ({ high }: BoxRoom, walls: readonly Piece[]): boolean =>
  Math.abs(Math.max(...walls.map((p) => p.bounds.most[2])) - high) < SAME;

const wide = ({ from, to }: { readonly from: number; readonly to: number }): number => to - from;
/** Sides that differ by less, in mm, are straight. */
const SAME = 0.05;
