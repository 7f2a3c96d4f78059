/** What stands already when the screws of a joint are driven: by the steps of a plan, else by the order of its joints. */
import type { Thing } from "../../grammar/tree";
import { lookUp } from "../plan";
import type { Joint } from "./joints";
import type { Piece } from "./pieces";
import type { Worked } from "./work";

/** The places of all pieces that a joint joins. */
export const joinedBy = ({ placed }: Joint): ReadonlySet<number> =>
  new Set(placed?.crossings.flatMap((c) => [c.first, ...c.through, c.into]) ?? []);

/**
 * Whether a piece stands when a joint is driven. Where both are used in different steps, these tell; else a piece
 * stands from the first joint on that joins it, and one that is joined to nothing can be put there last. A joint of an
 * assembly is driven where nothing but that copy of it lies.
 */
export function standsAlready(worked: Worked): (joint: Joint) => (screwed: Piece, other: number) => boolean {
  const { pieces } = worked.space;
  const steps = stepsOf(worked);
  const firsts = firstJoints(worked);
  return (joint) => {
    const own = joinedBy(joint);
    const used = [...own].map((i) => steps(pieces[i]!));
    const driven = used.some((s) => s === undefined) ? undefined : Math.max(...used.map((s) => s!));
    const nth = worked.joints.indexOf(joint);
    return (screwed, other) => {
      const piece = pieces[other]!;
      if (own.has(other)) return false;
      if (joint.within && copyOf(piece, joint.within) !== copyOf(screwed, joint.within)) return false;
      const stands = steps(piece);
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

/** The first step that uses a piece, by its part or by what it belongs to. */
function stepsOf({ loaded, scope }: Worked): (piece: Piece) => number | undefined {
  const first = new Map<string, number>();
  const uses = loaded.files[0]!.tree.entries.filter((e) => e.kind === "step").map((e) =>
    e.clauses.flatMap((c): readonly Thing[] => (c.kind === "uses" ? c.things : [])),
  );
  uses.forEach((things, n) => {
    for (const { name } of things) {
      const declared = lookUp(scope, name.text);
      if (declared && !first.has(declared.name)) first.set(declared.name, n);
    }
  });
  return (piece) => {
    const found = [piece.part, ...piece.owners.map((o) => o.name)].flatMap((n) => first.get(n) ?? []);
    return found.length > 0 ? Math.min(...found) : undefined;
  };
}
