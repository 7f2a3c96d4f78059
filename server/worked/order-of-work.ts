/** What stands already when the screws of a joint are driven: by the steps of a plan, else by the order of its joints. */
import type { Crossing } from "./crossings";
import type { Joint } from "./joints";
import type { Piece } from "./pieces";
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
