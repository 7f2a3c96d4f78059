/**
 * What must be lifted in each step: pieces that are new, and units that were joined before. Kilograms of wood, without
 * screws, finish or fill.
 */
import { ifKnown } from "../plan";
import { liftingLimit } from "../trade";
import { fraction, POUND } from "../units";
import type { Joint } from "./joints";
import type { Part } from "./parts";
import { otherOf, type Space } from "./space";
import type { DrivenIn } from "./step-joints";

/** Kilograms that one person lifts at most. */
export const LIFTS = liftingLimit.value * fraction.toNumber(POUND);

/** How many people it takes to lift that, if four would do. */
export function handsFor(kg: number): number | undefined {
  const n = Math.ceil(kg / LIFTS - 1e-9);
  return n <= MOST_HANDS ? Math.max(1, n) : undefined;
}

/** More people get in each other's way. */
const MOST_HANDS = 4;

export interface Lift {
  readonly kg: number;
  /** Places among all pieces; none of a part that is placed nowhere. */
  readonly pieces: readonly number[];
  /** The part of the first of them. */
  readonly part: string;
  /** One piece, what was joined before, or an assembly that is put together in this step and then set in its place. */
  readonly is: "piece" | "unit" | "assembly";
}

interface Unit {
  /** Undefined where that of some piece is. */
  kg: number | undefined;
  /** mm: how high its lowest piece begins. */
  low: number;
  /** The last step that added to it. */
  built: number;
  readonly pieces: number[];
}

/** mm: what begins no higher than this is stood up or levered up, and not lifted: 6" (common practice). */
const LEVERED = 152.4;

/**
 * The heaviest lift of each step: a new piece; a new assembly, set in its place as a whole; what was joined before, where
 * new pieces join it to what stands, or where what it lies on comes after it. A unit that stands on the floor is not lifted.
 */
export function liftsOf(
  space: Space,
  parts: ReadonlyMap<string, Part>,
  joints: readonly Joint[],
  stepOf: readonly (number | undefined)[],
  taken: readonly { readonly fresh: readonly number[]; readonly unplaced: readonly string[] }[],
  driven: readonly (readonly DrivenIn[])[],
): (Lift | undefined)[] {
  const { pieces } = space;
  const weights = new Map([...parts.values()].map((p) => [p.name, ifKnown(p.weight)?.approx]));
  const unitOf: Unit[] = pieces.map((p, i) => ({
    kg: weights.get(p.part),
    low: p.bounds.least[2],
    built: stepOf[i] ?? 0,
    pieces: [i],
  }));
  const inner = new Set(joints.filter((j) => j.placed).map((j) => j.within));
  const lifts = taken.map(({ fresh, unplaced }, n): Lift | undefined => {
    let best: Lift | undefined;
    const take = (is: Lift["is"], kg: number | undefined, list: readonly number[], part?: string): void => {
      if (kg !== undefined && (!best || kg > best.kg))
        best = { is, kg, pieces: list, part: part ?? pieces[list[0]!]!.part };
    };
    for (const part of unplaced) take("piece", weights.get(part), [], part);
    for (const i of fresh) take("piece", unitOf[i]!.kg, [i]);
    for (const copy of assemblies(space, fresh, inner)) {
      if (copy.some((i) => unitOf[i]!.low <= LEVERED)) continue;
      const kg = copy.reduce<number | undefined>((sum, i) => plus(sum, unitOf[i]!.kg), 0);
      take("assembly", kg, copy);
    }
    for (const unit of joinedIn(driven[n]!, unitOf, n)) take("unit", unit.kg, unit.pieces);
    return best;
  });
  for (const { unit, step } of setDown(space, unitOf, stepOf)) {
    const before = lifts[step];
    if (unit.kg !== undefined && (!before || unit.kg > before.kg))
      lifts[step] = { is: "unit", kg: unit.kg, pieces: unit.pieces, part: pieces[unit.pieces[0]!]!.part };
  }
  return lifts;
}

const plus = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : a + b;

/** Copies of assemblies with joints of their own that are new, each as its pieces. */
function assemblies({ pieces }: Space, fresh: readonly number[], inner: ReadonlySet<string>): number[][] {
  const copies = new Map<string, number[]>();
  for (const i of fresh) {
    const owner = pieces[i]!.owners.find((o) => inner.has(o.name));
    if (!owner) continue;
    const copy = copies.get(owner.id);
    if (copy) copy.push(i);
    else copies.set(owner.id, [i]);
  }
  return [...copies.values()].filter((c) => c.length > 1);
}

/**
 * Joins what a step drives, and gives the units of before that are lifted for it: those that do not stand on the floor
 * themselves. Where nothing of it stands there, the heaviest stays as it is.
 */
function joinedIn(driven: readonly DrivenIn[], unitOf: Unit[], n: number): Unit[] {
  const pairs = driven.flatMap(({ crossings }) =>
    crossings.flatMap(({ first, through, into }) => [...through, into].map((i) => [first, i] as const)),
  );
  const olds = new Map<Unit, Unit>();
  for (const pair of pairs)
    for (const i of pair) {
      const unit = unitOf[i]!;
      const isOld = unit.built < n && unit.pieces.length > 1;
      if (isOld && !olds.has(unit)) olds.set(unit, { ...unit, pieces: [...unit.pieces] });
    }
  for (const [a, b] of pairs) if (unitOf[a] !== unitOf[b]) merge(unitOf[a]!, unitOf[b]!, unitOf, n);
  const together = new Map<Unit, Unit[]>();
  for (const old of olds.values()) {
    const now = unitOf[old.pieces[0]!]!;
    together.set(now, [...(together.get(now) ?? []), old]);
  }
  return [...together].flatMap(([now, all]) => {
    const heaviest = all.reduce((x, y) => ((y.kg ?? 0) > (x.kg ?? 0) ? y : x));
    return all.filter((u) => u.low > LEVERED && (now.low <= LEVERED || u !== heaviest));
  });
}

/** The two as one; the pieces of the smaller are moved to the larger. */
function merge(a: Unit, b: Unit, unitOf: Unit[], n: number): void {
  const [into, from] = a.pieces.length >= b.pieces.length ? [a, b] : [b, a];
  into.kg = plus(a.kg, b.kg);
  into.low = Math.min(a.low, b.low);
  into.built = n;
  for (const i of from.pieces) {
    into.pieces.push(i);
    unitOf[i] = into;
  }
}

/** Units of several pieces that are joined to nothing else, and were built before what they stand on was there. */
function setDown(
  space: Space,
  unitOf: readonly Unit[],
  stepOf: readonly (number | undefined)[],
): { unit: Unit; step: number }[] {
  return [...new Set(unitOf)].flatMap((unit) => {
    if (unit.low <= LEVERED || unit.pieces.length < 2) return [];
    let step = -1;
    for (const i of unit.pieces)
      for (const m of space.meetingsOf[i]!) {
        const meeting = space.meetings[m]!;
        const up = meeting.patches[0]!.normal[2] * (meeting.a === i ? 1 : -1);
        const under = otherOf(meeting, i);
        if (up < -Math.SQRT1_2 && unitOf[under] !== unit) step = Math.max(step, stepOf[under] ?? -1);
      }
    return step > unit.built ? [{ unit, step }] : [];
  });
}
