/** What a place line still leaves open, and what could be meant: clauses that say it, pieces to lean on, words that choose some of them. */
import type { Thing } from "../../grammar/tree";
import { type Declared, holderOf, lookUp, pluralOf } from "../plan";
import {
  AXIS_WORDS,
  type Axis,
  type Context,
  chosen,
  copiesOf,
  lieOf,
  openAxes,
  type Placement,
  partsOf,
  SIDES_OF,
  startsAt,
} from "../worked";
import { type Asking, type Offer, offer, RANK } from "./completion-offer";
import { COMPLETION_WORDS } from "./completion-words";
import { thingText } from "./values";

/** The place line that is typed, and those beside it. */
interface Line {
  readonly context: Context;
  /** Undefined while the line cannot be read, or its subject is nothing. */
  readonly placement: Placement | undefined;
}

/** Worked out once for each time that is asked: every name wants to know. */
function once<T>(work: (asking: Asking) => T): (asking: Asking) => T {
  const known = new WeakMap<Asking, { readonly found: T }>();
  return (asking) => {
    const before = known.get(asking);
    if (before) return before.found;
    const found = work(asking);
    known.set(asking, { found });
    return found;
  };
}

const lineAt = once(({ plan, typed }): Line | undefined => {
  if (!typed) return undefined;
  const { placing } = plan.worked;
  const context = placing.contextAt({ file: plan.file, start: typed.at, end: typed.at });
  const placement = context.placements.find(
    (p) => holderOf(context.file) === plan.file && p.entry.start === typed.at,
  );
  return { context, placement };
});

/** Whether anything stands at all. */
export const standsNow = ({ plan }: Asking): boolean => plan.worked.space.pieces.length > 0;

/** Whether some of a name's pieces, and not all, are those that the words before it mean. */
export function standsWithWords(d: Declared, where: readonly string[], { plan }: Asking): boolean {
  const { space, scope } = plan.worked;
  const nowhere = { start: 0, end: 0 };
  const name = { text: d.name, ...nowhere };
  const thing = { where: where.map((text) => ({ text, ...nowhere })), name, ...nowhere };
  const some = chosen(thing, space, scope).length;
  return some > 0 && some < chosen({ ...thing, where: [] }, space, scope).length;
}

/** Whether the words choose some pieces of anything that is placed. */
export const narrowsGroup = (asking: Asking, where: readonly string[]): boolean =>
  [...asking.plan.worked.space.named].some(([name, pieces]) => {
    const declared = pieces.length > 1 ? asking.plan.worked.scope.declared.get(name) : undefined;
    return declared !== undefined && standsWithWords(declared, where, asking);
  });

/** Whether a thing is still to be placed: by no line but the one that is typed, and not as a piece of what is placed. */
export function subjectRank(d: Declared, asking: Asking): boolean {
  // A box stands where its walls do.
  if (d.kind === "box" && d.entry.clauses.some((c) => c.kind === "walls")) return false;
  return !standing(asking).has(d.name);
}

/** What stands by another line than the one that is typed; the parts of a ring stand where the ring does. */
const standing = once((asking): ReadonlySet<string> => {
  const { placing, scope, rings } = asking.plan.worked;
  const own = lineAt(asking)?.placement;
  const others = placing.plan.placements.filter((p) => p !== own);
  return new Set([
    ...others.flatMap(({ subject }) => [subject.name, ...partsOf(subject, scope)]),
    ...rings.flatMap((r) => r.sides.filter((side) => side !== r.name)),
  ]);
});

/** Where a name stands among what a line may lean on; undefined for what it cannot lean on: itself. */
export function targetRank(name: string, asking: Asking): number | undefined {
  if (asking.typed?.entry !== "place") return RANK.name;
  const line = lineAt(asking);
  if (!line) return RANK.name;
  const own = line.placement?.subject.name ?? asking.typed.head[0]?.image;
  const { placed, said, nearest, before } = besides(asking);
  if (name === own && !placed.has(name)) return undefined;
  if (said.has(name)) return RANK.open;
  const last = nearest.get(name) ?? -1;
  const later = name === own || last < 0 ? 0.3 : 0;
  if (placed.has(name)) return RANK.name + later + (before - last) / 10_000;
  const inside = line.context.name === "" && asking.plan.worked.space.named.has(name);
  return inside ? RANK.name + 0.5 : RANK.other;
}

/** What the lines beside the typed one place, and what that one has named so far. */
const besides = once((asking) => {
  const line = lineAt(asking);
  const { scope } = asking.plan.worked;
  const others = (line?.context.placements ?? []).filter((p) => p !== line?.placement);
  const before = others.filter((p) => p.entry.start < asking.typed!.at);
  return {
    placed: new Set(others.map((p) => p.subject.name)),
    said: new Set(saidThings(asking).map(({ name: n }) => lookUp(scope, n.text)?.name ?? n.text)),
    /** Which of the lines before the typed one places a thing last, and how many those lines are. */
    nearest: new Map(before.map((p, i) => [p.subject.name, i])),
    before: before.length,
  };
});

/** Things that the line has named so far, after its subject. */
const saidThings = (asking: Asking): Thing[] =>
  (lineAt(asking)?.placement?.entry.clauses ?? []).flatMap((c) =>
    c.kind === "between" || c.kind === "spread"
      ? [c.first, c.second]
      : "target" in c && c.target
        ? [c.target]
        : [],
  );

/** What the line leaves open. */
export interface Open {
  readonly axes: readonly Axis[];
  /** Those too in which the line stands at the start of the plan without saying so. */
  readonly unsaid: readonly Axis[];
  readonly lie: "lie" | "flat or on edge" | undefined;
}

export function openIn(asking: Asking): Open | undefined {
  if (asking.typed?.entry !== "place") return undefined;
  const placement = lineAt(asking)?.placement;
  if (!placement) return undefined;
  const lie = lieOf(placement.entry.clauses);
  const part = placement.subject.kind === "part" && !placement.block;
  const { placing } = asking.plan.worked;
  const axes = openAxes(placing, placement);
  return {
    axes,
    unsaid: ([0, 1, 2] as const).filter((a) => axes.includes(a) || startsAt(placing, placement, a)),
    lie: part && (lie === "lie" || lie === "flat or on edge") ? lie : undefined,
  };
}

/** Which directions a clause tells, by its opening; undefined for one that tells none. */
const TELLS: Readonly<Record<string, readonly Axis[]>> = {
  on: [2],
  under: [2],
  "left of": [0],
  "right of": [0],
  "in front of": [1],
  behind: [1],
  "at each corner of": [0, 1],
  "flush with": [0, 1, 2],
  between: [0, 1, 2],
  centered: [0, 1, 2],
  "": [0, 1, 2],
};
const LIES = ["upright", "across", "front to back", "flat", "on edge"];

/** The rank of a clause by what the line leaves open; as it was where that speaks neither for it nor against it. */
export function clauseRank(opening: string, rank: number, open: Open): number {
  const lie = LIES.indexOf(opening);
  if (lie >= 0) {
    if (open.lie === "lie") return lie < 3 ? RANK.open + lie / 100 : RANK.word;
    return open.lie === "flat or on edge" && lie >= 3 ? RANK.open + lie / 100 : rank;
  }
  const tells = TELLS[opening];
  if (!tells) return rank;
  if (tells.some((a) => open.axes.includes(a))) return open.lie ? RANK.name : RANK.open + 0.5;
  if (tells.every((a) => open.unsaid.includes(a))) return RANK.name;
  return open.lie || open.axes.length > 0 ? RANK.last : rank + 0.5;
}

/** The rank of a face behind `flush with`: those that tell what is open first. */
export function faceRank(face: string, { axes }: Open): number {
  const axis = ([0, 1, 2] as const).find((a) => (SIDES_OF[a] as readonly string[]).includes(face));
  return axis !== undefined && axes.includes(axis) ? RANK.open : RANK.word;
}

/** Whole clauses that would say what is open: one direction at a time, the lowest of the open ones first told. */
export function openClauses(asking: Asking, open: Open): Offer[] {
  const placement = lineAt(asking)?.placement;
  if (!placement || open.lie) return [];
  const words = COMPLETION_WORDS[asking.language];
  const on = leanedOn(asking, placement);
  const told = [...open.axes].sort((a, b) => PRESSING[a] - PRESSING[b]);
  return told.flatMap((axis, i) =>
    clausesFor(axis, on, asking).map((text, n) =>
      offer(text, "clause", RANK.likely + i / 10 + n / 100, { detail: words.decides[axis] }),
    ),
  );
}

/** What a line may be measured from, to be told with a number. */
export const measuredFrom = (asking: Asking): string | undefined => {
  const placement = lineAt(asking)?.placement;
  return placement && leanedOn(asking, placement);
};

/** How high comes first: most things are put on something. */
const PRESSING: Readonly<Record<Axis, number>> = { 2: 0, 0: 1, 1: 2 };

function clausesFor(axis: Axis, on: string | undefined, asking: Asking): string[] {
  const [near, far] = SIDES_OF[axis];
  if (axis === 2) {
    if (!on) return ["on floor"];
    const { said } = asking.typed!;
    const floor = saidThings(asking).length === 0 ? ["on floor"] : [];
    const high = [`on ${on}`, `flush with top of ${on}`];
    return said.has("upright") ? [...floor, ...high] : [...high, ...floor];
  }
  if (!on) return [`0 from ${near}`];
  const touching = axis === 1 ? [`in front of ${on}`, `behind ${on}`] : [];
  return [
    `flush with ${near} of ${on}`,
    `centered ${AXIS_WORDS[axis]} on ${on}`,
    ...touching,
    `flush with ${far} of ${on}`,
  ];
}

/** What the line names already, else the thing placed last before it: several pieces by their plural. */
function leanedOn(asking: Asking, placement: Placement): string | undefined {
  const { scope, space } = asking.plan.worked;
  const { placements } = placement.context;
  const said = saidThings(asking).find((t) => t.name.text !== "floor");
  if (said) return thingText(said);
  const before = placements.slice(0, placements.indexOf(placement)).map((p) => p.subject);
  const name = before.findLast((s) => s !== placement.subject)?.name;
  if (name === undefined) return undefined;
  const many = copiesOf(space, name).length > 1;
  const plural = pluralOf(name);
  return many && !scope.declared.has(plural) ? plural : name;
}
