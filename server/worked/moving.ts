/** What would become of a plan if the pieces of one of its lines stood a little elsewhere. Millimetres. */
import { lookUp, usesOf } from "../plan";
import { type Bounds, HAIRLINE, MovedBody, TOUCHING } from "../solid/contact";
import { add, type Vec3 } from "../solid/vector";
import { hangingFreely } from "./hanging";
import { carriesAsWell } from "./holding";
import type { LineAt } from "./overlaps";
import type { Piece } from "./pieces";
import type { Placement } from "./placing";
import { type Space, spaceOf } from "./space";
import type { Worked } from "./work";

type Axis = 0 | 1 | 2;
const AXES = [0, 1, 2] as const;

/**
 * The pieces that would hang in the air if those of a line of the plan were moved that far, by their places among all.
 * Undefined where that would spoil something: pieces in each other, other pieces joined, more room taken where the plan says
 * what it must fit, something that tips off what it lies on, or something else worked out from where they stand.
 */
export function movedBy(
  worked: Worked,
  placement: Placement,
  axis: Axis,
  shift: number,
): readonly number[] | undefined {
  const line = worked.pieces.lines.find((l) => l.placement === placement);
  if (!line || placement.subject.kind !== "part" || leansOn(worked, placement)) return undefined;
  const { space } = worked;
  const moved = new Set(line.pieces);
  const after = spaceOf(space.pieces.map((p) => (moved.has(p) ? shifted(p, axis, shift) : p)));
  const one = (i: number): boolean => moved.has(space.pieces[i]!);
  const clear = after.clashes.every((c) => c.depth <= HAIRLINE || !(one(c.a) || one(c.b)));
  const touching = (meetings: Space["meetings"]): string =>
    meetings.flatMap((m) => (one(m.a) !== one(m.b) ? [`${m.a} ${m.b}`] : [])).join();
  const joined = isJoined(worked, placement);
  const same = !joined || touching(after.meetings) === touching(space.meetings);
  const { space: room, wayIn } = worked.settings;
  const fits = !(room || wayIn) || within(after.bounds, space.bounds);
  if (!clear || !same || !fits || !carriesAsWell(worked, after)) return undefined;
  return hangingFreely(after).flat();
}

/** Whether the pieces of a line would be clear of all others if they alone stood that far off; of a line not known, no one can say: true. */
export function clearWhenMoved(worked: Worked, { placement }: LineAt, axis: Axis, shift: number): boolean {
  const line = worked.pieces.lines.find((l) => l.placement === placement);
  if (!line) return true;
  const own = new Set(line.pieces);
  const moved = line.pieces.map((p) => shifted(p, axis, shift));
  const near = worked.space.pieces.filter(
    (p) => !own.has(p) && moved.some((m) => AXES.every((k) => overlaps(m.bounds, p.bounds, k))),
  );
  return spaceOf([...moved, ...near]).clashes.every(
    (c) => c.depth <= HAIRLINE || c.a < moved.length === c.b < moved.length,
  );
}

const overlaps = (a: Bounds, b: Bounds, k: Axis): boolean => a.least[k] < b.most[k] && b.least[k] < a.most[k];

/** Whether something else in the plan is worked out from where the pieces of a line stand. */
export function leansOn({ loaded, scope }: Worked, { entry, subject }: Placement): boolean {
  const joining = new Set(["fasten", "glue", "coat", "line", "step", "accept", "built", "load"]);
  return loaded.files.some(({ tree }) =>
    tree.entries.some((other) => {
      if (other === entry || joining.has(other.kind)) return false;
      const uses = other.kind === "place" ? usesOf(other).slice(1) : usesOf(other);
      return uses.some((u) => lookUp(scope, u.name.text)?.name === subject.name);
    }),
  );
}

/** A joint whose pieces touch others than before has other screws. */
const isJoined = ({ joints, scope }: Worked, { subject }: Placement): boolean =>
  joints.some(({ entry }) => usesOf(entry).some((u) => lookUp(scope, u.name.text)?.name === subject.name));

/** The piece elsewhere, as far as what touches it goes: its pose and its ridges stay. */
function shifted(piece: Piece, axis: Axis, by: number): Piece {
  const way: Vec3 = [axis === 0 ? by : 0, axis === 1 ? by : 0, axis === 2 ? by : 0];
  const { least, most } = piece.bounds;
  return {
    ...piece,
    cells: piece.cells.map((cell) => new MovedBody(cell, way)),
    bounds: { least: add(least, way), most: add(most, way) },
  };
}

const within = (inner: Bounds | undefined, outer: Bounds | undefined): boolean =>
  !inner ||
  !outer ||
  AXES.every((k) => inner.least[k] > outer.least[k] - TOUCHING && inner.most[k] < outer.most[k] + TOUCHING);
