/** From the things a line names to the placed pieces they mean. */
import type { Thing } from "../../grammar/tree";
import { lookUp, type Scope } from "../plan";
import { boundsOf } from "../solid/contact";
import { partsOf } from "./groups";
import { NARROWING } from "./placing/clauses";
import type { Space } from "./space";

/**
 * The pieces of a thing, by their places among all; words before the name choose by the middle of the group. `copy` keeps to
 * the pieces of one copy of an assembly.
 */
export function chosen(
  thing: Thing,
  space: Space,
  scope: Scope,
  copy?: ReadonlySet<number>,
): readonly number[] {
  const declared = lookUp(scope, thing.name.text);
  if (!declared) return [];
  const { pieces: among, named } = space;
  const names = declared.kind === "box" ? partsOf(declared, scope) : [declared.name];
  const everywhere =
    names.length === 1
      ? (named.get(names[0]!) ?? [])
      : names.flatMap((n) => named.get(n) ?? []).sort((a, b) => a - b);
  const group = copy ? everywhere.filter((i) => copy.has(i)) : everywhere;
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
