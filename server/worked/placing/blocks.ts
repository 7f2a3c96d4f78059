/** The block that a place line puts somewhere: a part, a ring or an assembly. */
import { chain, type Declared, known, lookUp, MISTAKE, type Value } from "../../plan";
import { assemblyBlock } from "./assembly-block";
import type { Block } from "./block";
import type { PlaceEntry } from "./clauses";
import { diagonalBlock, diagonalClause } from "./diagonal";
import { leanAngle, leanOf, partBlock } from "./part-block";
import type { Context, Placing } from "./placing";
import { type RingSideShape, type RingStand, ringBlock } from "./ring-block";

export function blockOf(
  placing: Placing,
  subject: Declared,
  entry: PlaceEntry,
  key: string,
  context: Context,
): Block | undefined {
  if (subject.kind === "ring") return ofRing(placing, subject, entry, key, context);
  if (subject.kind === "assembly") return assemblyBlock(placing, subject, entry, context);
  const { worker, shapes } = placing.input;
  if (!diagonalClause(entry)) return partBlock(subject, entry.clauses, context.file, key, worker, shapes);
  return diagonalBlock(placing, subject, key, () => context.placements.find((p) => p.entry === entry)!);
}

function ofRing(
  placing: Placing,
  declared: Declared,
  entry: PlaceEntry,
  key: string,
  context: Context,
): Block {
  const { worker } = placing.input;
  const outward = entry.clauses.find(
    (c) => c.kind === "leaning" && (c.toward === "out" || c.toward === "in"),
  );
  const lean = outward ? undefined : leanOf(entry.clauses, worker, context.file);
  const stand = () => ringStand(placing, declared, entry, context.file);
  const members = placing.input.rings.get(declared.name) ?? [];
  const parts = members.flatMap((m) => Array.from({ length: m.count }, () => m.part));
  return ringBlock(parts, () => ringSides(placing, declared), stand, lean, key);
}

/** The parts of a ring's sides in order, with their shapes. */
function ringSides(placing: Placing, declared: Declared): Value<readonly RingSideShape[]> {
  const { rings, scope, shapes } = placing.input;
  const sides: RingSideShape[] = [];
  for (const member of rings.get(declared.name) ?? []) {
    const part = lookUp(scope, member.part);
    if (!part) return MISTAKE;
    for (let i = 0; i < member.count; i++) sides.push({ part: part.name, shape: shapes.of(part) });
  }
  return sides.length >= 3 ? known(sides) : MISTAKE;
}

/** How a place line stands a ring: as it says, else flat when its ends are mitered and on edge when they are beveled. */
export function ringStand(
  placing: Placing,
  declared: Declared,
  entry: PlaceEntry | undefined,
  file: string,
): Value<RingStand> {
  const clauses = entry?.clauses ?? [];
  const said = clauses.flatMap((c) => (c.kind === "lies" ? [c.lie] : []));
  const leaning = clauses.find((c) => c.kind === "leaning");
  const out =
    leaning?.kind === "leaning" && (leaning.toward === "out" || leaning.toward === "in")
      ? leaning
      : undefined;
  if (out) {
    const sign = out.toward === "out" ? 1 : -1;
    return chain(leanAngle(out, placing.input.worker, file), (a) =>
      known({ lies: "on edge", out: sign * a.approx }),
    );
  }
  if (said.includes("on edge")) return known({ lies: "on edge", out: 0 });
  if (said.includes("flat")) return known({ lies: "flat", out: 0 });
  return chain(ringSides(placing, declared), (sides) => {
    const has = (how: "miter" | "bevel") =>
      sides.some(({ shape }) => shape.leftEnd?.[how] || shape.rightEnd?.[how]);
    return known({ lies: has("miter") || !has("bevel") ? "flat" : "on edge", out: 0 });
  });
}
