/** Which placed pieces no joint holds. */
import type { Joint } from "./joints";
import { joinedBy } from "./order-of-work";
import { otherOf, type Space } from "./space";

/** A piece that lies on another and is in no joint; both by their places among all pieces. */
export interface LoosePiece {
  readonly piece: number;
  readonly on: number;
}

/**
 * Pieces in no joint at all, each with one that it lies on; none for a plan without joints. Things of several pieces that
 * are joined among themselves and stand loose, a bin or a lid, are meant to be lifted out.
 */
export function loosePieces(space: Space, joints: readonly Joint[]): LoosePiece[] {
  const held = new Set(joints.flatMap((joint) => [...joinedBy(joint)]));
  if (held.size === 0) return [];
  return space.pieces.flatMap((_, piece): LoosePiece[] => {
    const [meeting] = space.meetingsOf[piece]!;
    return held.has(piece) || meeting === undefined
      ? []
      : [{ piece, on: otherOf(space.meetings[meeting]!, piece) }];
  });
}
