/** The placed pieces of a plan as its drawings take them, and the screws whose heads are seen on them. */
import { lookUp } from "../plan";
import { DisjointSets } from "../solid/disjoint-sets";
import type { Piece, Worked } from "../worked";
import type { Identities } from "./identity";
import type { DrawnPiece, DrawnScrew } from "./piece-drawing";
import type { DrawingWords } from "./words";

/** All pieces in the order of the place lines; of each only what has wood left. */
export function drawnPieces(
  worked: Worked,
  identities: Identities,
  says: DrawingWords,
): readonly DrawnPiece[] {
  const isAssembly = (name: string): boolean => lookUp(worked.scope, name)?.kind === "assembly";
  return worked.pieces.all.flatMap((piece): DrawnPiece[] => {
    if (piece.cells.length === 0) return [];
    const found = identities.ofPlaced(piece.id);
    const hand = found?.row.hand ?? "";
    return [
      {
        id: piece.id,
        mark: found?.row.mark ?? "",
        title: hand === "" ? piece.part : says.handed(piece.part, hand),
        assembly: piece.owners.map(({ name }) => name).filter(isAssembly),
        cells: piece.cells,
        ridges: piece.ridges(),
      },
    ];
  });
}

export function drawnScrews({ joints, space }: Worked): readonly DrawnScrew[] {
  return joints.flatMap(({ placed }) =>
    (placed?.screws ?? []).map(({ start, direction, crossing }) => ({
      start,
      direction,
      piece: space.pieces[crossing.first]!.id,
    })),
  );
}

/** Which pieces stay together when the whole is drawn apart: those of an assembly, which is drawn alone too. */
export function assemblyUnits({ pieces, scope }: Worked): ReadonlyMap<string, string> {
  return new Map(
    pieces.all.flatMap(({ id, owners }) => {
      const own = owners.find(({ name }) => lookUp(scope, name)?.kind === "assembly");
      return own ? [[id, own.id] as const] : [];
    }),
  );
}

/**
 * Which stay together when it would still be too small: those of a ring or of an assembly, and those that joints hold
 * together without holding them to the rest.
 */
export function unitsOf({ pieces, space, joints }: Worked): ReadonlyMap<string, string> {
  const held = new DisjointSets<number>();
  for (const { placed } of joints)
    for (const { first, through, into } of placed?.crossings ?? [])
      for (const other of [...through, into]) held.join(other, first);
  const sizes = new Map<number, number>();
  for (const i of space.pieces.keys()) sizes.set(held.topOf(i), (sizes.get(held.topOf(i)) ?? 0) + 1);
  const largest = [...sizes].reduce((a, b) => (b[1] > a[1] ? b : a), [-1, 0])[0];
  const units = new Map<string, string>();
  pieces.all.forEach(({ id, owners }, i) => {
    const own = owners[0]?.id;
    if (held.topOf(i) !== largest) units.set(id, `${held.topOf(i)}`);
    else if (own !== undefined) units.set(id, own);
  });
  return units;
}

/** The names of the assemblies that stand somewhere, each with the identities of the pieces of its first copy. */
export function firstCopies({ pieces, scope }: Worked): ReadonlyMap<string, ReadonlySet<string>> {
  const copies = new Map<string, { readonly copy: string; readonly ids: Set<string> }>();
  const take = (piece: Piece): void => {
    for (const { name, id } of piece.owners) {
      if (lookUp(scope, name)?.kind !== "assembly") continue;
      const first = copies.get(name) ?? { copy: id, ids: new Set<string>() };
      copies.set(name, first);
      if (first.copy === id) first.ids.add(piece.id);
    }
  };
  pieces.all.forEach(take);
  return new Map([...copies].map(([name, { ids }]) => [name, ids]));
}
