/** What steps use before it can be of use: pieces whose joints all wait for a later step, boxes lined before their walls are up. */
import { lookUp } from "../plan";
import { HAIRLINE } from "../solid/contact";
import { boxPieces } from "./choose";
import type { Joint } from "./joints";
import { otherOf, type Space } from "./space";
import { stepOfCrossing } from "./step-joints";
import type { StepThing } from "./step-lines";
import type { WorkStep } from "./steps";
import type { Worked } from "./work";

export interface UsedEarly {
  readonly step: WorkStep;
  readonly thing: StepThing;
  /** A piece it is joined to, by its place among all. */
  readonly needs: number;
  /** The step that brings it. */
  readonly later: WorkStep;
}

/**
 * Things that a step uses though all they are joined to comes later, and that neither stand on the floor nor lie on
 * something that is there. What a later step names again was only cut, marked or tried before.
 */
export function usedEarly({ steps: { steps, stepOf }, joints, space }: Worked): UsedEarly[] {
  if (steps.length < 2) return [];
  const joined = crossingSteps(joints, stepOf, space);
  const named = new Map(steps.flatMap((s, n) => s.again.map((i) => [i, n] as const)));
  return steps.flatMap((step, n) =>
    step.uses.flatMap((thing): UsedEarly[] => {
      const fresh = thing.pieces.filter((i) => stepOf[i] === n);
      const own = new Set(fresh);
      if (fresh.length === 0 || fresh.some((i) => canStand(i, n, stepOf, space, own))) return [];
      const later = fresh.map((i) => joined[i]);
      if (later.some((l) => !l || l.step <= n)) return [];
      const again = fresh.some((i) => (named.get(i) ?? 0) > n);
      const first = later.reduce((a, b) => (b!.step < a!.step ? b : a))!;
      return again ? [] : [{ step, thing, needs: first.needs, later: steps[first.step]! }];
    }),
  );
}

/** The first step in which something is joined to each piece, and what that is; none where a crossing is never driven. */
function crossingSteps(
  joints: readonly Joint[],
  stepOf: readonly (number | undefined)[],
  { pieces }: Space,
): ({ readonly step: number; readonly needs: number } | undefined)[] {
  const found: ({ step: number; needs: number } | undefined)[] = pieces.map(() => undefined);
  const lost = new Set<number>();
  for (const { placed } of joints)
    for (const crossing of placed?.crossings ?? []) {
      const step = stepOfCrossing(crossing, stepOf);
      const all = [crossing.first, ...crossing.through, crossing.into];
      for (const i of all) {
        if (step === undefined) lost.add(i);
        else if (!found[i] || step < found[i]!.step)
          found[i] = { step, needs: all.find((j) => j !== i && stepOf[j] === step) ?? i };
      }
    }
  for (const i of lost) found[i] = undefined;
  return found;
}

/** Whether a piece stands on the floor, or lies on something that is there by the end of a step, and is not of its own. */
function canStand(
  i: number,
  n: number,
  stepOf: readonly (number | undefined)[],
  space: Space,
  own: ReadonlySet<number>,
): boolean {
  if (space.pieces[i]!.bounds.least[2] <= HAIRLINE) return true;
  return space.meetingsOf[i]!.some((m) => {
    const meeting = space.meetings[m]!;
    const up = meeting.patches[0]!.normal[2] * (meeting.a === i ? 1 : -1);
    const under = otherOf(meeting, i);
    return up < -Math.SQRT1_2 && stepOf[under] !== undefined && stepOf[under] <= n && !own.has(under);
  });
}

export interface LinedEarly {
  readonly step: WorkStep;
  readonly thing: StepThing;
  /** A wall or a board of the bottom that is not there yet. */
  readonly needs: number;
  readonly later: WorkStep;
}

/** Boxes that a step lines before all their walls and their bottom are there. */
export function linedEarly({ steps: { steps, stepOf }, scope, space }: Worked): LinedEarly[] {
  return steps.flatMap((step, n) =>
    step.lines.flatMap((thing): LinedEarly[] => {
      const box = lookUp(scope, thing.name);
      const pieces = box ? boxPieces(box, space, scope) : [];
      const open = pieces.filter((i) => (stepOf[i] ?? 0) > n);
      if (open.length === 0) return [];
      const last = open.reduce((a, b) => (stepOf[b]! > stepOf[a]! ? b : a));
      return [{ step, thing, needs: last, later: steps[stepOf[last]!]! }];
    }),
  );
}

export interface TakenBefore {
  readonly step: WorkStep;
  readonly thing: StepThing;
  readonly ring: string;
  readonly before: WorkStep;
}

/** Members of a ring that a step uses after one before used the whole ring, and joins to nothing. */
export function takenBefore({ steps: { steps, stepOf }, rings }: Worked): TakenBefore[] {
  return steps.flatMap((step, n) =>
    step.uses.flatMap((thing): TakenBefore[] => {
      if (thing.pieces.length === 0) return [];
      const own = new Set(thing.pieces);
      const used = stepOf[thing.pieces[0]!];
      if (used === undefined || used >= n || thing.pieces.some((i) => stepOf[i] !== used)) return [];
      const before = steps[used]!;
      const ring = rings.find(
        ({ name, members }) =>
          members.some((m) => m.part === thing.name) && before.uses.some((t) => t.name === name),
      );
      if (!ring) return [];
      const worked = [...step.joints, ...step.glues].some(({ crossings }) =>
        crossings.some((c) => [c.first, ...c.through, c.into].some((i) => own.has(i))),
      );
      return worked ? [] : [{ step, thing, ring: ring.name, before }];
    }),
  );
}
