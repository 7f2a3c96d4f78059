/** From the things a line names to the placed pieces they mean. */
import type { Thing } from "../../grammar/tree";
import { lookUp, type Scope } from "../plan";
import { boundsOf } from "../solid/contact";
import { partsOf } from "./groups";
import type { Piece } from "./pieces";
import { NARROWING } from "./placing/clauses";

/** The pieces of a thing among these, by their places; words before the name choose by the group's middle. */
export function chosen(thing: Thing, among: readonly Piece[], scope: Scope): number[] {
  const declared = lookUp(scope, thing.name.text);
  if (!declared) return [];
  const parts = new Set(declared.kind === "box" ? partsOf(declared, scope) : [declared.name]);
  const group = among.flatMap((p, i) =>
    parts.has(p.part) || p.owners.some((o) => o.name === declared.name) ? [i] : [],
  );
  const words = thing.where.flatMap(({ text }) => NARROWING[text] ?? []);
  if (words.length === 0 || group.length === 0) return group;
  const all = boundsOf(group.flatMap((i) => [among[i]!.bounds.least, among[i]!.bounds.most]));
  return group.filter((i) =>
    words.every(({ axis, far }) => {
      const middle = (all.least[axis] + all.most[axis]) / 2;
      const own = (among[i]!.bounds.least[axis] + among[i]!.bounds.most[axis]) / 2;
      return far ? own > middle + SAME : own < middle - SAME;
    }),
  );
}

/** Middles nearer than this, in mm, are one. */
const SAME = 1e-6;
