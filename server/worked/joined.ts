/** Which placed pieces no joint holds. */
import type { Joint } from "./joints";
import { joinedBy } from "./order-of-work";
import { type Meeting, otherOf, type Space } from "./space";

/** A piece that touches another and is in no joint; both by their places among all pieces. */
export interface LoosePiece {
  readonly piece: number;
  /** One that it lies on; where it lies on none, one that it touches. */
  readonly on: number;
  /** Where it is, seen from the other. */
  readonly is: "on" | "under" | "beside";
}

/**
 * Pieces in no joint at all, each with one that it touches, one under it before others; none for a plan without joints. Things of several pieces that
 * are joined among themselves and stand loose, a bin or a lid, are meant to be lifted out.
 */
export function loosePieces(space: Space, joints: readonly Joint[]): LoosePiece[] {
  const held = new Set(joints.flatMap((joint) => [...joinedBy(joint)]));
  if (held.size === 0) return [];
  return space.pieces.flatMap((_, piece): LoosePiece[] => {
    if (held.has(piece)) return [];
    const meets = space.meetingsOf[piece]!.map((m) => meetingOf(space.meetings[m]!, piece));
    const best = meets.find((m) => m.is === "on") ?? meets[0];
    return best ? [best] : [];
  });
}

/** How far from level a face may be that something lies on: the cosine of 45°. */
const LEVEL = Math.SQRT1_2;

function meetingOf(meeting: Meeting, piece: number): LoosePiece {
  const up = meeting.patches[0]!.normal[2] * (meeting.a === piece ? 1 : -1);
  return { piece, on: otherOf(meeting, piece), is: up < -LEVEL ? "on" : up > LEVEL ? "under" : "beside" };
}
