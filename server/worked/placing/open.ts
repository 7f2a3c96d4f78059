/** Which directions a place line fixes, and which it leaves open. */
import type { Clause } from "../../../grammar/tree";
import type { Value } from "../../plan";
import { AXES, type Axis, axisOfSide } from "./axes";
import { axisNamed, type Pattern } from "./clauses";
import { diagonalClause, faceAxes } from "./diagonal";
import { lengthAxis, lieOf } from "./frame";
import type { Context, Placement, Placing } from "./placing";
import type { Stretch } from "./stretch";

export type Two = Clause & { readonly kind: "between" | "spread" };

export interface BetweenAxis {
  readonly axis: Axis | undefined;
  /** Why the direction is not known: where one of the two things stands is not. */
  readonly lost: Value<never> | undefined;
}

/** The direction in which the two things that a clause names stand apart. */
export const betweenAxis = (placing: Placing, p: Placement, clause: Two): Axis | undefined =>
  betweenFound(placing, p, clause).axis;

export function betweenFound(placing: Placing, p: Placement, clause: Two): BetweenAxis {
  const before = placing.between.get(clause);
  if (before) return before;
  const found = findBetween(placing, p, clause);
  placing.between.set(clause, found);
  return found;
}

function findBetween(placing: Placing, p: Placement, clause: Two): BetweenAxis {
  const open = braceOpen(p) ?? openFor(p, clause);
  const level = [clause.first, clause.second].some((t) => placing.isFloor(t));
  if (level) return { axis: 2, lost: undefined };
  if (open.length === 1) return { axis: open[0], lost: undefined };
  const named = axisNamed([clause.first, clause.second]);
  if (named !== undefined && open.includes(named)) return { axis: named, lost: undefined };
  // Boards are put between things along their length more often than not, so that direction is asked first.
  const first = lengthAxis(lieOf(p.entry.clauses));
  const order =
    first !== undefined && open.includes(first) ? [first, ...open.filter((o) => o !== first)] : open;
  let lost: Value<never> | undefined;
  for (const axis of order) {
    const first = placing.whereabouts(p, clause.first, axis);
    const second = placing.whereabouts(p, clause.second, axis);
    if (first.state === "unknown") lost ??= first;
    else if (second.state === "unknown") lost ??= second;
    else if (first.state === "outside" || second.state === "outside") continue;
    else if (standApart(first.value, second.value)) return { axis, lost: undefined };
  }
  return { axis: undefined, lost };
}

const standApart = (s: Stretch, t: Stretch): boolean =>
  Math.max(s.low.approx - t.high.approx, t.low.approx - s.high.approx) > 0;

/** Why a line does not tell a direction that one of its clauses would, if more were known. */
export function lostFor(placing: Placing, p: Placement): Value<never> | undefined {
  for (const clause of p.entry.clauses) {
    const two = clause.kind === "between" || clause.kind === "spread";
    const lost = two && betweenFound(placing, p, clause).lost;
    if (lost) return lost;
  }
  return undefined;
}

/** For a diagonal the two directions of its face. */
function braceOpen(p: Placement): readonly Axis[] | undefined {
  const diagonal = diagonalClause(p.entry);
  return diagonal && faceAxes(diagonal.face);
}

/** Directions that nothing else on the line tells. */
function openFor(p: Placement, clause: Two): readonly Axis[] {
  const claimed = claimedAxes(p);
  for (const one of p.patterns)
    if (one.axis !== undefined && one.spread && one.spread !== clause) claimed.add(one.axis);
  return AXES.filter((a) => !claimed.has(a));
}

/** Directions that the words of a line's relations tell. */
const claimedAxes = (p: Placement): Set<Axis> => new Set(p.claims.map((c) => c.axis));

export function betweenClause(
  placing: Placing,
  p: Placement,
  axis: Axis,
): (Clause & { kind: "between" }) | undefined {
  if (diagonalClause(p.entry)) return undefined;
  return p.entry.clauses.find(
    (c): c is Clause & { kind: "between" } => c.kind === "between" && betweenAxis(placing, p, c) === axis,
  );
}

export function patternAxis(placing: Placing, p: Placement, pattern: Pattern): Axis | undefined {
  if (pattern.axis !== undefined) return pattern.axis;
  const clause = pattern.spread ?? p.entry.clauses.find((c) => c.kind === "between");
  if (clause?.kind === "spread over") return undefined;
  return clause?.kind === "between" || clause?.kind === "spread"
    ? betweenAxis(placing, p, clause)
    : undefined;
}

/** Directions that are fixed by more than a centring without a direction. */
function fixedAxes(placing: Placing, p: Placement): Set<Axis> {
  const fixed = claimedAxes(p);
  const add = (axis: Axis | undefined) => {
    if (axis !== undefined) fixed.add(axis);
  };
  const diagonal = diagonalClause(p.entry);
  for (const clause of p.entry.clauses) {
    if (clause.kind === "between" && !diagonal) add(betweenAxis(placing, p, clause));
    if (clause.kind === "corners" && clause.target) for (const axis of [0, 1] as const) add(axis);
  }
  for (const pattern of p.patterns) if (pattern.spread) add(patternAxis(placing, p, pattern));
  if (diagonal) for (const axis of AXES) if (axis !== axisOfSide(diagonal.face)) add(axis);
  return fixed;
}

/** Directions in which a centring without a direction counts: those that nothing else fixes. */
export function centredAxes(placing: Placing, p: Placement): Axis[] {
  const fixed = fixedAxes(placing, p);
  return AXES.filter((a) => !fixed.has(a));
}

/** Whether a relation of the line fixes a direction in which corners would else begin at the plan's own start. */
export const isClaimed = (placing: Placing, p: Placement, axis: Axis): boolean =>
  fixedAxes(placing, p).has(axis) || p.entry.clauses.some((c) => c.kind === "centered" && !c.axis);

/** Directions in which nothing says where the thing stands, nor that it is the first that the rest leans on. */
export const openAxes = (placing: Placing, p: Placement): Axis[] =>
  unsaidAxes(placing, p).filter((axis) => !startsAt(placing, p, axis));

/** Whether a line stands at the start of its context without saying so. */
export function startsAt(placing: Placing, p: Placement, axis: Axis): boolean {
  if (axis === 2) return standsOnFloor(placing, p);
  return placing.firstOf(p.context, axis) === p;
}

/** What is placed is an assembly whose own pieces stand on its floor: it stands on the floor where it is placed. */
function standsOnFloor(placing: Placing, p: Placement): boolean {
  if (p.subject.kind !== "assembly" || !unsaidAxes(placing, p).includes(2)) return false;
  const onFloor = (c: Clause): boolean =>
    (c.kind === "touches" && c.relation === "on" && c.target.name.text === "floor" && !c.distance) ||
    (c.kind === "from" && c.datum === "floor");
  return placing.assembly(p.subject).placements.some((inner) => inner.entry.clauses.some(onFloor));
}

/**
 * The line that the rest of its context leans on in a level direction: the first that says nothing there, where no line says
 * a distance from the start, nor makes its own corners.
 */
export function findFirst(context: Context, axis: Axis): Placement | undefined {
  const anchored = context.placements.some(({ entry }) =>
    entry.clauses.some(
      (c) =>
        (c.kind === "from" && c.datum !== "floor" && axisOfSide(c.datum) === axis) ||
        (c.kind === "corners" && !c.target),
    ),
  );
  if (anchored) return undefined;
  return context.placements.find((p) => saysNothing(p, axis));
}

/** Whether the words of a line alone say nothing of a direction: no relation there, and none whose direction must be found. */
function saysNothing(p: Placement, axis: Axis): boolean {
  const found = p.entry.clauses.some(
    (c) =>
      c.kind === "between" ||
      c.kind === "corners" ||
      c.kind === "diagonal" ||
      (c.kind === "spread" && !p.patterns.some((one) => one.spread === c && one.axis !== undefined)) ||
      (c.kind === "centered" && !c.axis),
  );
  const spread = p.patterns.some((one) => one.spread && one.axis === axis);
  return !found && !spread && !claimedAxes(p).has(axis);
}

/** Directions in which no clause says where the thing stands. */
function unsaidAxes(placing: Placing, p: Placement): Axis[] {
  if (p.entry.clauses.some((c) => c.kind === "centered" && !c.axis)) return [];
  const fixed = fixedAxes(placing, p);
  const corners = p.entry.clauses.some((c) => c.kind === "corners");
  return AXES.filter((a) => !fixed.has(a) && !(corners && a !== 2));
}
