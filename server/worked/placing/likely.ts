/** What a line that leaves a direction open likely means: a clause to add. */
import type { Clause, Thing } from "../../../grammar/tree";
import { lookUp, type Scope } from "../../plan";
import { type Axis, SIDES_OF } from "./axes";
import { lieOf } from "./frame";
import type { Placement } from "./placing";

export interface Likely {
  /** Clauses that would say it, in the order of the directions; empty when nothing is likely. */
  readonly offers: readonly string[];
  /** How the board lies is what is missing. */
  readonly lie: "lie" | "flat or on edge" | undefined;
}

/**
 * The clause most likely meant for each open direction: level with what the line already names and that does not lean on it in
 * turn, else at the plan's own start.
 */
export function likely(scope: Scope, p: Placement, open: readonly Axis[]): Likely {
  const lie = p.subject.kind === "part" && !p.block ? lieOf(p.entry.clauses) : undefined;
  const missing = lie === "lie" || lie === "flat or on edge" ? lie : undefined;
  const back = leaningOn(scope, p);
  const target = p.entry.clauses
    .map(targetOf)
    .find((t) => t && t.name.text !== "floor" && !back.has(meant(scope, t)));
  const words = target && [...target.where.map((w) => w.text), target.name.text].join(" ");
  const offers = open.map((axis) => {
    const [near] = SIDES_OF[axis];
    if (words) return `flush with ${near} of ${words}`;
    return axis === 2 ? "on floor" : `0 from ${near}`;
  });
  return { offers, lie: missing };
}

/** The names of what leans on a line, straight or through others: what it would go round in a circle with. */
function leaningOn(scope: Scope, p: Placement): ReadonlySet<string> {
  const names = new Set([p.subject.name]);
  for (let before = -1; before !== names.size; ) {
    before = names.size;
    for (const other of p.context.placements) {
      const leans = other.entry.clauses.some((c) => thingsOf(c).some((t) => names.has(meant(scope, t))));
      if (leans) names.add(other.subject.name);
    }
  }
  return names;
}

/** The name that a thing is declared by: leg, for legs. */
const meant = (scope: Scope, { name }: Thing): string => lookUp(scope, name.text)?.name ?? name.text;

function thingsOf(clause: Clause): readonly Thing[] {
  if (clause.kind === "between" || clause.kind === "spread") return [clause.first, clause.second];
  return "target" in clause && clause.target ? [clause.target] : [];
}

function targetOf(clause: Clause): Thing | undefined {
  if (clause.kind === "between" || clause.kind === "spread") return clause.first;
  return "target" in clause ? clause.target : undefined;
}
