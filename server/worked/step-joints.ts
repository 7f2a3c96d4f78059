/** Which joint is driven in which step: each crossing in the first in which all its pieces are there. */
import { ifKnown } from "../plan";
import type { Crossing } from "./crossings";
import type { Joint } from "./joints";

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
  const [a, b] = [stepOf[first], stepOf[into]];
  if (a === undefined || b === undefined) return undefined;
  let last = Math.max(a, b);
  for (const i of through) {
    const c = stepOf[i];
    if (c === undefined) return undefined;
    last = Math.max(last, c);
  }
  return last;
}

/** For each step what is driven in it, in the order of the joints. */
export function jointsByStep(
  joints: readonly Joint[],
  stepOf: readonly (number | undefined)[],
  partStep: ReadonlyMap<string, number>,
  count: number,
): DrivenIn[][] {
  const byStep: DrivenIn[][] = Array.from({ length: count }, () => []);
  if (count === 0) return byStep;
  for (const joint of joints) {
    if (joint.placed) placedIn(joint, joint.placed, stepOf, byStep);
    else {
      const at = joint.parts.map((part) => partStep.get(part));
      if (at.length === 0 || at.some((s) => s === undefined)) continue;
      byStep[Math.max(...at.map((s) => s!))]!.push({
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
