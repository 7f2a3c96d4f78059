/** Which joint is driven in which step: each crossing in the first in which all its pieces are there. */
import { ifKnown } from "../plan";
import type { Crossing } from "./crossings";
import type { Joint } from "./joints";
import type { Space } from "./space";

/** What of a joint one step drives or glues. */
export interface DrivenIn {
  readonly joint: Joint;
  /** None before placing. */
  readonly crossings: readonly Crossing[];
  /** Places among the joint's screws; none before placing, and none that a glue line has. */
  readonly screws: readonly number[];
  /** How many screws; undefined where that is not known. */
  readonly count: number | undefined;
}

/** The step of a crossing: undefined where a piece of it is used by none. */
export function stepOfCrossing(
  { first, through, into }: Crossing,
  stepOf: readonly (number | undefined)[],
): number | undefined {
  return lastOf([first, into, ...through].map((i) => stepOf[i]));
}

/** The last of some steps; undefined where one of them is, or where there is none. */
function lastOf(steps: readonly (number | undefined)[]): number | undefined {
  let last: number | undefined;
  for (const step of steps) {
    if (step === undefined) return undefined;
    if (last === undefined || step > last) last = step;
  }
  return last;
}

/** For each step what is driven in it, in the order of the joints. */
export function jointsByStep(
  joints: readonly Joint[],
  { named }: Space,
  stepOf: readonly (number | undefined)[],
  partStep: ReadonlyMap<string, number>,
  count: number,
): DrivenIn[][] {
  const byStep: DrivenIn[][] = Array.from({ length: count }, () => []);
  if (count === 0) return byStep;
  for (const joint of joints) {
    if (joint.placed) placedIn(joint, joint.placed, stepOf, byStep);
    else {
      // One whose parts are all placed, and that joins none of them, has a problem of its own.
      if (!joint.parts.some((part) => partStep.has(part))) continue;
      const last = lastOf(
        joint.parts.flatMap((part) => named.get(part)?.map((i) => stepOf[i]) ?? [partStep.get(part)]),
      );
      if (last === undefined) continue;
      byStep[last]!.push({
        joint,
        crossings: [],
        screws: [],
        count: ifKnown(joint.count),
      });
    }
  }
  return byStep;
}

interface Open {
  readonly crossings: Crossing[];
  readonly screws: number[];
}

function placedIn(
  joint: Joint,
  { crossings, screws, tooMany }: NonNullable<Joint["placed"]>,
  stepOf: readonly (number | undefined)[],
  byStep: DrivenIn[][],
): void {
  const open = new Map<number, Open>();
  const at = (n: number): Open => {
    let one = open.get(n);
    if (!one) {
      one = { crossings: [], screws: [] };
      open.set(n, one);
    }
    return one;
  };
  for (const crossing of crossings) {
    const n = stepOfCrossing(crossing, stepOf);
    if (n !== undefined) at(n).crossings.push(crossing);
  }
  screws.forEach(({ crossing }, i) => {
    const n = stepOfCrossing(crossing, stepOf);
    if (n !== undefined) at(n).screws.push(i);
  });
  const known = joint.count.state === "known" && tooMany === undefined;
  for (const [n, { crossings, screws }] of open)
    byStep[n]!.push({ joint, crossings, screws, count: known ? screws.length : undefined });
}
