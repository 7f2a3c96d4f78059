/** Which pieces are wet in use. */
import type { Clause } from "../../../grammar/tree";
import type { Worked } from "../work";

/** Outdoors everything gets wet; elsewhere what wet soil lies against. */
export function wetIn({
  settings,
  boxes,
  space,
}: Pick<Worked, "settings" | "boxes" | "space">): (piece: number) => boolean {
  if (settings.place === "outdoors") return () => true;
  const wet = new Set(boxes.flatMap((b) => (b.fill ? boxParts(b.declared.entry.clauses) : [])));
  return (i) => wet.has(space.pieces[i]!.part);
}

const boxParts = (clauses: readonly Clause[]): string[] =>
  clauses.flatMap((c) => (c.kind === "walls" || c.kind === "floor" ? c.things.map((t) => t.name.text) : []));
