/** From the things a line names to the parts they mean: a ring or a box stands for its parts. */
import type { Thing } from "../../grammar/tree";
import { type Declared, type DeclaredKind, lookUp, nearNames, type Scope, type Told } from "../plan";
import type { Worker } from "./expressions";

const KIND_WORDS: Readonly<Record<DeclaredKind, string>> = {
  measure: "a measure",
  stock: "a stock",
  sheet: "a sheet",
  roll: "a roll",
  fastener: "a fastener",
  finish: "a finish",
  fill: "a fill",
  part: "a part",
  assembly: "an assembly",
  ring: "a ring",
  box: "a box",
};
export const kindWord = (kind: DeclaredKind): string => KIND_WORDS[kind];

/** The declaration a thing means, if it is of one of these kinds; else a fault. */
export function declaredThing(
  thing: Thing,
  file: string,
  kinds: readonly DeclaredKind[],
  wants: Told,
  scope: Scope,
  worker: Worker,
): Declared | undefined {
  const at = { file, start: thing.name.start, end: thing.name.end };
  const found = lookUp(scope, thing.name.text);
  if (!found) {
    const near = nearNames(scope, thing.name.text, kinds);
    worker.fault({ kind: "unknown-name", at, name: thing.name.text, near, wants });
    return undefined;
  }
  if (kinds.includes(found.kind)) return found;
  worker.fault({ kind: "wrong-kind", at, name: thing.name.text, found: found.kind, wants });
  return undefined;
}

/**
 * Names of the parts a declared thing is made of, each once: itself, a ring's members, a box's walls and bottom, or what
 * an assembly places, through others too.
 */
export function partsOf(declared: Declared, scope: Scope): string[] {
  const seen = new Set([declared]);
  for (const { entry } of seen)
    for (const thing of thingsIn(entry)) {
      const found = lookUp(scope, thing.name.text);
      if (found) seen.add(found);
    }
  return [...seen].flatMap((d) => (d.kind === "part" ? [d.name] : []));
}

function thingsIn(entry: Declared["entry"]): readonly Thing[] {
  if (entry.kind === "ring") return entry.members.map((m) => m.thing);
  if (entry.kind === "assembly") return entry.body.flatMap((e) => (e.kind === "place" ? [e.subject] : []));
  return entry.clauses.flatMap((c) => (c.kind === "walls" || c.kind === "floor" ? c.things : []));
}
