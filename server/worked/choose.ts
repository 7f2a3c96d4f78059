/** From the things a line names to the placed pieces they mean. */
import type { Entry, Thing } from "../../grammar/tree";
import { type Declared, lookUp, type Scope } from "../plan";
import { boundsOf } from "../solid/contact";
import { LENGTH, type Quantity, roughly } from "../units";
import { partsOf } from "./groups";
import type { Piece } from "./pieces";
import type { Axis } from "./placing";
import { choicesOf, isKept } from "./placing/narrowing";
import { compared } from "./placing/stretch";
import { copiesOf, type Space } from "./space";

/**
 * The pieces of a thing, by their places among all, rising; words before the name choose among its copies, by the middle
 * of each and that of them all. `copy` keeps to the pieces of one copy of an assembly. None for a name of nothing.
 */
export function chosen(
  thing: Thing,
  space: Space,
  scope: Scope,
  copy?: ReadonlySet<number>,
): readonly number[] {
  const declared = lookUp(scope, thing.name.text);
  if (!declared) return [];
  const everywhere = namesOf(declared, scope).flatMap((n) => space.named.get(n) ?? []);
  const group = (copy ? everywhere.filter((i) => copy.has(i)) : everywhere).sort((a, b) => a - b);
  if (thing.where.length === 0 || group.length === 0) return group;
  const copies = copiesOf(space, declared.name, group);
  const middles = copies.map((list) => middleOf(list, space.pieces));
  const all = middleOf(group, space.pieces);
  const choices = choicesOf(thing, (axis) =>
    middles.some((middle) => compared(middle(axis), middles[0]!(axis)) !== 0),
  );
  return copies
    .filter((_, n) => choices.every((choice) => isKept(choice, middles[n]!(choice.axis), all(choice.axis))))
    .flat()
    .sort((a, b) => a - b);
}

/** Things of a joint's line whose words choose none of the pieces that stand there. */
export const chooseNothing = (
  { first, through, into }: Entry & { kind: "fasten" | "glue" },
  space: Space,
  scope: Scope,
): Thing[] =>
  [...first, ...through, ...into]
    .map(({ thing }) => thing)
    .filter(
      (thing) =>
        thing.where.length > 0 &&
        chosen(thing, space, scope).length === 0 &&
        chosen({ ...thing, where: [] }, space, scope).length > 0,
    );

/** The placed walls of a box, by their places among all, each once. */
export const wallsOf = (box: Declared, space: Space, scope: Scope): readonly number[] =>
  piecesIn("walls", box, space, scope);

/** The placed pieces that a box's fill stands on, likewise. */
export const floorsOf = (box: Declared, space: Space, scope: Scope): readonly number[] =>
  piecesIn("floor", box, space, scope);

const piecesIn = (what: "walls" | "floor", { entry }: Declared, space: Space, scope: Scope): number[] => [
  ...new Set(
    entry.clauses.flatMap((c) => (c.kind === what ? c.things.flatMap((t) => chosen(t, space, scope)) : [])),
  ),
];

/** The placed walls of a box and its bottom. */
export const boxPieces = (box: Declared, space: Space, scope: Scope): readonly number[] =>
  namesOf(box, scope).flatMap((name) => space.named.get(name) ?? []);

const namesOf = (declared: Declared, scope: Scope): readonly string[] =>
  declared.kind === "box" ? partsOf(declared, scope) : [declared.name];

/** Where the middle of the block round these pieces is, along a direction. */
function middleOf(group: readonly number[], pieces: readonly Piece[]): (axis: Axis) => Quantity {
  const { least, most } = boundsOf(group.flatMap((i) => [pieces[i]!.bounds.least, pieces[i]!.bounds.most]));
  return (axis) => roughly(LENGTH, (least[axis] + most[axis]) / 2);
}
