/** What stands already when the screws of a joint are driven: by the steps of a plan, else by the order of its joints. */
import { HAIRLINE } from "../solid/contact";
import type { Crossing } from "./crossings";
import type { Joint } from "./joints";
import type { Piece } from "./pieces";
import { otherOf, outward } from "./space";
import { stepOfCrossing } from "./step-joints";
import type { Worked } from "./work";

/** The places of all pieces that a joint joins. */
export function joinedBy({ placed }: Joint): ReadonlySet<number> {
  const joined = new Set<number>();
  for (const { first, through, into } of placed?.crossings ?? []) {
    joined.add(first);
    for (const i of through) joined.add(i);
    joined.add(into);
  }
  return joined;
}

/**
 * Whether there is an order of work to speak of: two steps at least that hold pieces together. Two lines that do, one of them
 * with something that lies on other parts, are enough; else it takes the proposal to tell.
 */
export function hasOrder({ joints, space, steps }: Worked): boolean {
  const holding = joints.filter(({ placed }) => placed !== undefined && placed.crossings.length > 0);
  const lies = (i: number): boolean =>
    space.pieces[i]!.bounds.least[2] > HAIRLINE &&
    space.meetingsOf[i]!.some((m) => {
      const meeting = space.meetings[m]!;
      const other = space.pieces[otherOf(meeting, i)]!;
      if (other.part === space.pieces[i]!.part) return false;
      return meeting.patches.some((patch) => outward(meeting, i, patch)[2] < -Math.SQRT1_2);
    });
  return (
    (holding.length > 1 &&
      holding.some(({ placed }) => placed!.crossings.some(({ first }) => lies(first)))) ||
    steps.steps.filter((s) => s.joints.length + s.glues.length > 0).length > 1
  );
}

/**
 * Whether a piece stands when a screw of a joint is driven. Where the plan's steps drive the one and use the other in
 * different steps, these tell; else a piece stands from the first joint on that joins it, and one that is joined to nothing
 * can be put there last. A joint of an assembly is driven where nothing but that copy of it lies.
 */
export function standsAlready(
  worked: Worked,
): (joint: Joint) => (screwed: Crossing, other: number) => boolean {
  const { pieces } = worked.space;
  // A proposal tells nothing, and takes long to make.
  const told = worked.steps.proposed || worked.steps.steps.length === 0 ? undefined : worked.steps.stepOf;
  const firsts = firstJoints(worked);
  return (joint) => {
    const own = joinedBy(joint);
    const nth = worked.joints.indexOf(joint);
    return (crossing, other) => {
      const piece = pieces[other]!;
      const screwed = pieces[crossing.first]!;
      if (own.has(other)) return false;
      if (joint.within && copyOf(piece, joint.within) !== copyOf(screwed, joint.within)) return false;
      const driven = told && stepOfCrossing(crossing, told);
      const stands = told?.[other];
      if (driven !== undefined && stands !== undefined && driven !== stands) return stands < driven;
      const first = firsts.get(keyOf(joint, piece));
      return first !== undefined && first < nth;
    };
  };
}

const copyOf = (piece: Piece, within: string): string | undefined =>
  piece.owners.find((o) => o.name === within)?.id;

/** In the plan what is carried in one, the outermost assembly or ring that a piece belongs to, stands as one. */
const keyOf = ({ within }: Joint, piece: Piece): string =>
  within ? `${within}\n${piece.id}` : `\n${piece.owners[0]?.id ?? piece.id}`;

/** The first joint, among those of the plan or of one assembly, that joins each piece. */
function firstJoints({ joints, space }: Worked): ReadonlyMap<string, number> {
  const firsts = new Map<string, number>();
  joints.forEach((joint, n) => {
    for (const i of joinedBy(joint)) {
      const piece = space.pieces[i]!;
      const key = keyOf(joint, piece);
      if (!firsts.has(key)) firsts.set(key, n);
    }
  });
  return firsts;
}
