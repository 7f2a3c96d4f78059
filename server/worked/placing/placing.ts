/**
 * Where things stand. Every place line, in each of the three directions by itself, is worked out when it is first
 * asked for, so lines lean on each other in any order; a circle is told along its path.
 */
import type { Clause, Entry, Thing } from "../../../grammar/tree";
import {
  type At,
  chain,
  type Declared,
  known,
  lookUp,
  MISTAKE,
  map,
  type PlanFile,
  type Says,
  type Scope,
  say,
  type Value,
} from "../../plan";
import type { Worker } from "../expressions";
import type { RingMember } from "../rings";
import type { Extent3 } from "../settings";
import type { DiagonalCut, Shapes } from "../shapes";
import { type Along, workAlong } from "./along";
import { AXES, AXIS_WORDS, type Axis } from "./axes";
import type { Block, Inside } from "./block";
import { blockOf, ringStand } from "./blocks";
import { type Claim, claimsOf, type Pattern, type PlaceEntry, patternsOf } from "./clauses";
import { Counts } from "./counts";
import { diagonalClause, diagonalCut } from "./diagonal";
import { Groups } from "./groups";
import { type BetweenAxis, findFirst, type Two } from "./open";
import type { RingStand } from "./ring-block";
import { compared, hull, NOTHING, type Stretch } from "./stretch";
import { tellOpen, tellWords } from "./undecided";

/** The place lines of the plan, or of one assembly. */
export interface Context {
  /** The assembly's; empty for the plan. */
  readonly name: string;
  readonly file: string;
  readonly placements: readonly Placement[];
}

/** One place line. */
export interface Placement {
  /** Tells it from all others of the plan: `plan / leg / 1`, the first line that places a leg. */
  readonly key: string;
  readonly entry: PlaceEntry;
  readonly context: Context;
  readonly subject: Declared;
  /** Undefined when how it lies is not said. */
  readonly block: Block | undefined;
  readonly claims: readonly Claim[];
  readonly patterns: readonly Pattern[];
}

export interface PlacingInput {
  readonly files: readonly PlanFile[];
  readonly scope: Scope;
  readonly worker: Worker;
  readonly shapes: Shapes;
  readonly rings: ReadonlyMap<string, readonly RingMember[]>;
  readonly space: () => Extent3 | undefined;
}

export class Placing {
  readonly plan: Context;
  readonly counts = new Counts(this);
  /** The directions that lines with `between` and `spread between` were found to run in. */
  readonly between = new Map<Two, BetweenAxis>();
  /** What is known of each line by axis, found without a name for it. */
  private readonly rows = [0, 1, 2].map(() => new Map<Placement, Value<Along>>());
  private readonly firsts = new Map<string, Placement | undefined>();
  private readonly contexts = new Map<string, Context>();
  private readonly groups: Groups;
  private readonly assemblies: readonly Declared[];
  private readonly lines = new Map<string, Placement[]>();
  private readonly circles = new Set<string>();

  constructor(readonly input: PlacingInput) {
    this.groups = new Groups(input.scope, this.stretches);
    this.assemblies = [...input.scope.declared.values()].filter((d) => d.kind === "assembly");
    const main = input.files[0]!;
    this.plan = this.contextOf("", main.file, main.tree.entries);
  }

  /** The place lines of an assembly. */
  assembly(declared: Declared): Context {
    const before = this.contexts.get(declared.name);
    if (before) return before;
    const body = declared.entry.kind === "assembly" ? declared.entry.body : [];
    const context = this.contextOf(declared.name, declared.at.file, body);
    this.contexts.set(declared.name, context);
    return context;
  }

  /** The context in which an expression stands. */
  contextAt(at: At): Context {
    const around = this.assemblies.find(
      ({ at: { file }, entry }) => file === at.file && entry.start <= at.start && at.end <= entry.end,
    );
    return around ? this.assembly(around) : this.plan;
  }

  private contextOf(name: string, file: string, entries: readonly Entry[]): Context {
    const placements: Placement[] = [];
    const context: Context = { name, file, placements };
    const counts = new Map<string, number>();
    for (const entry of entries) {
      if (entry.kind !== "place") continue;
      const subject = lookUp(this.input.scope, entry.subject.name.text);
      if (!subject || !["part", "ring", "assembly"].includes(subject.kind)) continue;
      if (subject.kind === "assembly" && this.leadsBack(subject, name, entry, file)) continue;
      const nth = (counts.get(subject.name) ?? 0) + 1;
      counts.set(subject.name, nth);
      const key = `${name || "plan"} / ${subject.name} / ${nth}`;
      const claims = claimsOf(entry.clauses);
      const patterns = patternsOf(entry.clauses);
      const block = blockOf(this, subject, entry, key, context);
      placements.push({ key, entry, context, subject, claims, patterns, block });
    }
    return context;
  }

  /** Whether an assembly is put, through others or not, into itself; that is told along its path. */
  private leadsBack(subject: Declared, into: string, { subject: thing }: PlaceEntry, file: string): boolean {
    const path = into ? pathTo(subject, into, this.input.scope, new Set()) : undefined;
    if (!path) return false;
    // Each assembly of the circle comes round to it; it is told where it is first met.
    const round = path
      .map((d) => d.name)
      .sort()
      .join(" ");
    if (this.circles.has(round)) return true;
    this.circles.add(round);
    const at = { file, start: thing.start, end: thing.end };
    const steps = path.map((d) => ({ name: d.name, at: d.at }));
    this.input.worker.fault({ kind: "circle", at, path: [...steps, { name: subject.name, at }] });
    return true;
  }

  /** The row of a line in one direction, and where it stands. */
  along(p: Placement, axis: Axis): Value<Along> {
    const rows = this.rows[axis]!;
    const before = rows.get(p);
    if (before) return before;
    const { start, end } = p.entry.subject;
    const at = { file: p.context.file, start, end };
    const name = say("where stands", { name: p.subject.name, way: WAYS[axis] });
    return this.input.worker.once(PLACES[axis], p.key, name, at, () => {
      const row = workAlong(this, p, axis);
      rows.set(p, row);
      return row;
    });
  }

  stretches = (p: Placement, axis: Axis): Value<readonly Stretch[]> =>
    map(this.along(p, axis), (a) => a.stretches);

  /** A target of a line in one direction, without the pieces of the line itself. */
  target(p: Placement, thing: Thing, axis: Axis): Value<Stretch> {
    return this.reachOf(thing, axis, p.context, p);
  }

  /** As `target`, but without a word where that is not known. */
  whereabouts(p: Placement, thing: Thing, axis: Axis): Value<Stretch> {
    const declared = lookUp(this.input.scope, thing.name.text);
    if (!declared) return MISTAKE;
    return chain(this.groups.reach(declared, thing, axis, p.context, p), (r) => (r ? known(r) : MISTAKE));
  }

  /** The ground, which is a level and no thing: unless the plan has a part of that name. */
  isFloor({ name }: Thing): boolean {
    return name.text === "floor" && !lookUp(this.input.scope, "floor");
  }

  /** The line of a context that begins at its start in a level direction, since none says where that is. */
  firstOf(context: Context, axis: Axis): Placement | undefined {
    const key = `${context.name} ${axis}`;
    if (!this.firsts.has(key)) this.firsts.set(key, findFirst(context, axis));
    return this.firsts.get(key);
  }

  /** From the first to the last of what a thing means, in one direction. */
  reachOf(thing: Thing, axis: Axis, context: Context, except?: Placement): Value<Stretch> {
    const { scope, worker } = this.input;
    const at = { file: context.file, start: thing.start, end: thing.end };
    const declared = lookUp(scope, thing.name.text);
    if (!declared && thing.name.text !== "floor") return MISTAKE;
    if (!declared)
      return axis === 2
        ? known({ low: NOTHING, high: NOTHING, flipped: false })
        : worker.fault({ kind: "unplaced", at, name: "floor", words: "floor", why: "floor" });
    return chain(this.groups.reach(declared, thing, axis, context, except), (r) => {
      if (r) return known(r);
      const others = this.groupOf(declared, context, except).length > 0;
      const any = others || this.groupOf(declared, context).length > 0;
      const why = others ? "narrowed" : any ? "itself" : "nowhere";
      const words = [...thing.where, { text: declared.name }].map((w) => w.text).join(" ");
      return worker.fault({ kind: "unplaced", at, name: declared.name, words, why });
    });
  }

  /** Everything of that name in a context: pieces, rings, assemblies; for a box, its walls and its bottom. */
  groupOf = (declared: Declared, context: Context, except?: Placement): readonly Inside[] =>
    this.groups.of(declared, context, except);

  /** The room between two things: from the far side of the one to the near side of the other. */
  spanBetween(p: Placement, clause: Clause & { kind: "between" | "spread" }, axis: Axis): Value<Stretch> {
    const first = this.target(p, clause.first, axis);
    const second = this.target(p, clause.second, axis);
    if (first.state !== "known") return first;
    if (second.state !== "known") return second;
    const swap = compared(first.value.low, second.value.low) > 0;
    const [a, b] = swap ? [second.value, first.value] : [first.value, second.value];
    return known({ low: a.high, high: b.low, flipped: false });
  }

  /** All lines that place a thing, in the plan and in its assemblies. */
  linesOf(name: string): readonly Placement[] {
    if (this.lines.size === 0)
      for (const context of [this.plan, ...this.assemblies.map((d) => this.assembly(d))])
        for (const p of context.placements) {
          const same = this.lines.get(p.subject.name);
          if (same) same.push(p);
          else this.lines.set(p.subject.name, [p]);
        }
    return this.lines.get(name) ?? [];
  }

  /** What a diagonal place makes of a part's length and ends; undefined when it has no such place. */
  diagonalCut(part: string): Value<DiagonalCut> | undefined {
    const line = this.linesOf(part).find((p) => diagonalClause(p.entry));
    return line && diagonalCut(this, line);
  }

  /** How a ring stands: as the first line that places it says. */
  standOf(ring: Declared): Value<RingStand> {
    const [line] = this.linesOf(ring.name);
    return ringStand(this, ring, line?.entry, line?.context.file ?? ring.at.file);
  }

  /** Works every line out, and tells what each leaves open. */
  settle(): void {
    for (const p of this.plan.placements) this.force(p);
    for (const declared of this.input.scope.declared.values())
      if (declared.kind === "assembly") for (const p of this.assembly(declared).placements) this.force(p);
  }

  private force(p: Placement): void {
    tellWords(this, p);
    tellOpen(this, p);
    for (const axis of AXES) this.along(p, axis);
  }

  /** How many times a line places its subject. */
  countOf(p: Placement): Value<number> {
    let n = 1;
    for (const axis of AXES) {
      const list = this.stretches(p, axis);
      if (list.state !== "known") return list;
      n *= list.value.length;
    }
    return known(n);
  }

  /** From the first to the last of everything a context places. */
  boundsOf(context: Context, axis: Axis): Value<Stretch> {
    const all: Stretch[] = [];
    for (const p of context.placements) {
      const list = this.stretches(p, axis);
      if (list.state !== "known") return list;
      for (const s of list.value) all.push(s);
    }
    return all.length > 0 ? known(hull(all)) : MISTAKE;
  }
}

const WAYS = AXIS_WORDS.map((words) => say(words)) as [Says, Says, Says];
const PLACES = ["place 0", "place 1", "place 2"] as const;

/** Assemblies from one to another through what they place; undefined when it does not lead there. */
function pathTo(from: Declared, to: string, scope: Scope, seen: Set<string>): Declared[] | undefined {
  if (from.name === to) return [from];
  if (seen.has(from.name) || from.entry.kind !== "assembly") return undefined;
  seen.add(from.name);
  for (const entry of from.entry.body) {
    const next = entry.kind === "place" ? lookUp(scope, entry.subject.name.text) : undefined;
    const path = next?.kind === "assembly" ? pathTo(next, to, scope, seen) : undefined;
    if (path) return [from, ...path];
  }
  return undefined;
}
