/** Which pieces a name means in a context: those its lines put there, and those inside what they put there. */
import type { Thing } from "../../../grammar/tree";
import { chain, type Declared, known, MISTAKE, type Scope, type Value } from "../../plan";
import { partsOf } from "../groups";
import { MOST_PIECES } from "../parts";
import type { Axis } from "./axes";
import type { Inside } from "./block";
import { narrowed, reach } from "./group";
import type { Context, Placement } from "./placing";
import { add, less, remembered, type Stretch } from "./stretch";

/** Pieces of a group, and the line that puts them there. */
interface Member {
  readonly line: Placement;
  readonly inside: Inside;
}

export type StretchesOf = (line: Placement, axis: Axis) => Value<readonly Stretch[]>;

export class Groups {
  private readonly members = new Map<Context, Map<string, readonly Member[]>>();
  private readonly lines = new Map<Context, { bySubject: Map<string, Placement[]>; made: Placement[] }>();
  private readonly reaches = new Map<Context, Map<string, Value<Stretch | undefined>>>();

  constructor(
    private readonly scope: Scope,
    private readonly stretches: StretchesOf,
  ) {}

  /** Everything of that name in a context: pieces, rings, assemblies; for a box, its walls and its bottom. */
  of(declared: Declared, context: Context, except?: Placement): readonly Inside[] {
    return this.namesOf(declared).flatMap((name) =>
      this.named(name, context).flatMap((m) => (m.line === except ? [] : [m.inside])),
    );
  }

  /** From the first to the last of what a thing means there; undefined inside when that is nothing. */
  reach(
    declared: Declared,
    thing: Thing,
    axis: Axis,
    context: Context,
    except?: Placement,
  ): Value<Stretch | undefined> {
    const itself = except && this.namesOf(declared).some((n) => this.holds(except, n));
    const words = [...thing.where.map((w) => w.text), declared.name, axis, itself ? except.key : ""];
    const key = words.join(" ");
    const done = inside(this.reaches, context);
    const before = done.get(key);
    if (before) return before;
    const found = reach(narrowed(this.of(declared, context, itself ? except : undefined), thing), axis);
    if (found.state === "known") done.set(key, found);
    return found;
  }

  private readonly namesOf = (declared: Declared): readonly string[] =>
    declared.kind === "box" ? partsOf(declared, this.scope) : [declared.name];

  private holds(line: Placement, name: string): boolean {
    return this.named(name, line.context).some((m) => m.line === line);
  }

  private named(name: string, context: Context): readonly Member[] {
    const done = inside(this.members, context);
    const before = done.get(name);
    if (before) return before;
    const found = this.find(name, context);
    done.set(name, found);
    return found;
  }

  /** Assemblies inside assemblies can hold more than any plan needs; past the limit nothing is known of the group. */
  private find(name: string, context: Context): readonly Member[] {
    const found: Member[] = [];
    for (const line of this.linesFor(name, context)) {
      for (const inside of this.membersOf(line, name)) found.push({ line, inside });
      if (found.length > MOST_PIECES) return [{ line, inside: TOO_MANY }];
    }
    return found;
  }

  /** Lines that can put something of that name there, in order: those of the name itself, and of what is made of others. */
  private linesFor(name: string, context: Context): readonly Placement[] {
    let lines = this.lines.get(context);
    if (!lines) {
      lines = { bySubject: new Map(), made: [] };
      this.lines.set(context, lines);
      for (const line of context.placements) {
        if (line.subject.kind !== "part") lines.made.push(line);
        else {
          const same = lines.bySubject.get(line.subject.name);
          if (same) same.push(line);
          else lines.bySubject.set(line.subject.name, [line]);
        }
      }
    }
    const [own, made] = [lines.bySubject.get(name), lines.made];
    if (!own) return made;
    return made.length === 0
      ? own
      : context.placements.filter((line) => line.subject.name === name || line.subject.kind !== "part");
  }

  private membersOf(line: Placement, name: string): readonly Inside[] {
    const stretches = (axis: Axis) => this.stretches(line, axis);
    if (line.subject.name === name) return [{ stretches, thin: line.block?.thin ?? (() => false) }];
    if (line.subject.kind === "part" || !line.block) return [];
    return line.block.inside(name).map((inner) => carried(stretches, inner));
  }
}

const TOO_MANY: Inside = { stretches: () => MISTAKE, thin: () => false };

/** A piece inside what a line places, where it then stands. */
function carried(slotsAlong: (axis: Axis) => Value<readonly Stretch[]>, inner: Inside): Inside {
  const put = (slot: Stretch, s: Stretch): Stretch =>
    slot.flipped
      ? { low: less(slot.high, s.high), high: less(slot.high, s.low), flipped: !s.flipped }
      : { low: add(slot.low, s.low), high: add(slot.low, s.high), flipped: s.flipped };
  const stretches = remembered((axis) =>
    chain(slotsAlong(axis), (slots) =>
      chain(inner.stretches(axis), (list) =>
        slots.length * list.length > MOST_PIECES
          ? MISTAKE
          : known(slots.flatMap((slot) => list.map((s) => put(slot, s)))),
      ),
    ),
  );
  return { stretches, thin: inner.thin };
}

function inside<K, V>(maps: Map<K, Map<string, V>>, key: K): Map<string, V> {
  const before = maps.get(key);
  if (before) return before;
  const fresh = new Map<string, V>();
  maps.set(key, fresh);
  return fresh;
}
