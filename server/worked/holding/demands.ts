/** What the joints are asked for: the weight that hangs on them, and the push of fill against walls. Newtons. */
import { NEWTONS_PER_POUND } from "../../strength/units";
import { durationFactors, leastScrewLoad } from "../../trade";
import type { Joint } from "../joints";
import type { Worked } from "../work";
import type { Carried } from "./carrying";
import { type Grip, Grips } from "./fastening";
import type { Fixing } from "./fixings";
import type { HeldWall, Holding } from "./index";
import { FLOOR } from "./links";
import { wetIn } from "./wet";

/** Between two pieces, by their places among all: what one hangs on the other, or pushes it off. */
export interface Demand {
  readonly piece: number;
  readonly by: number;
  readonly way: "across" | "pulled";
  readonly from: "weight" | "fill";
  readonly steady: number;
  readonly moving: number;
  readonly fixings: readonly Fixing[];
}

export interface HeldJoint {
  readonly joint: Joint;
  /** The demand of which its screws use the most, and how many of them share it. */
  readonly demand: Demand;
  readonly screws: number;
  /** All of these screws together, for as long as the load lasts; 0 where they claim nothing. */
  readonly holds: number;
  readonly asked: number;
  readonly uses: number;
  /** What its duration takes or leaves of it. */
  readonly duration: number;
  /** One of them, before what the load's duration takes. */
  readonly grip: Grip;
}

/** What is needed to work grips out. */
type Input = Pick<Worked, "space" | "parts" | "settings" | "boxes" | "scope">;

const gripsIn = (input: Input): Grips => new Grips(input.space.pieces, input.parts, wetIn(input));

export function demandsOf(carried: readonly Carried[], walls: readonly HeldWall[]): Demand[] {
  const weights = carried.flatMap(({ links, supports }) =>
    links.flatMap(({ link: { piece, by, how, fixings }, steady, moving }): Demand[] => {
      if (by === FLOOR || how === "glued") return [];
      // What lifts off one of two holders pulls at what fastens it there.
      const lifts = steady < 0 && supports.length === 2;
      if (how === "lies" ? !lifts || fixings.length === 0 : how === "hung" && lifts) return [];
      const way = how === "screwed" ? "across" : "pulled";
      const force = lifts ? { steady: -steady, moving: 0 } : { steady, moving };
      return [{ piece, by, way, from: "weight", ...force, fixings }];
    }),
  );
  const pushes = walls.flatMap(({ work: { piece, holders } }) =>
    holders.flatMap(({ piece: by, how, fixings, force }): Demand[] =>
      how === "outside" || how === "glued" || force <= 0
        ? []
        : [{ piece, by, way: how, from: "fill", steady: force, moving: 0, fixings }],
    ),
  );
  return [...weights, ...pushes];
}

/**
 * Each joint that is asked for something, with the demand that uses the most of it, and those of which that is not known.
 * Glued ones are not judged.
 */
export function jointsHeld(
  demands: readonly Demand[],
  input: Input,
): Pick<Holding, "joints" | "unknownJoints"> {
  const grips = gripsIn(input);
  const worst = new Map<Joint, HeldJoint>();
  const unknown = new Set<Joint>();
  for (const demand of demands) {
    const held = heldOf(demand, grips);
    if (held === "unknown") for (const { joint } of demand.fixings) unknown.add(joint);
    if (typeof held === "string") continue;
    const before = worst.get(held.joint);
    if (!before || held.uses > before.uses) worst.set(held.joint, held);
  }
  const joints = [...worst.values()].sort((a, b) => a.joint.at.start - b.joint.at.start);
  return { joints, unknownJoints: [...unknown] };
}

function heldOf(demand: Demand, grips: Grips): HeldJoint | "unknown" | "not judged" {
  const { piece, by, way, fixings, steady, moving } = demand;
  if (fixings.some(({ joint }) => joint.entry.kind === "glue")) return "not judged";
  let [all, count] = [0, 0];
  let first: { joint: Joint; grip: Grip } | undefined;
  for (const { joint, screws } of fixings)
    for (const screw of screws) {
      const grip = grips.of(joint, screw, piece, by);
      if (!grip) return "unknown";
      first ??= { joint, grip };
      all += grip[way];
      count += 1;
    }
  if (!first) return "unknown";
  // A blocked drain is mended within the year; what hangs there hangs for good.
  const permanent = demand.from === "fill" ? durationFactors.tenYears : durationFactors.permanent;
  const lasting = ratio(steady, all * permanent.value);
  const short = ratio(steady + moving, all * durationFactors.tenYears.value);
  const isLasting = lasting >= short;
  const asked = isLasting ? steady : steady + moving;
  if (asked / count < LEAST) return "not judged";
  const duration = (isLasting ? permanent : durationFactors.tenYears).value;
  return {
    joint: first.joint,
    demand,
    screws: count,
    holds: all * duration,
    duration,
    asked,
    uses: Math.max(lasting, short),
    grip: first.grip,
  };
}

/** How much of it the same demand uses where its joint takes other screws; without end where that is not known. */
export function heldWith(held: HeldJoint, joint: Joint, input: Input): number {
  const fixings = held.demand.fixings.map((f) => (f.joint === held.joint ? { ...f, joint } : f));
  const again = heldOf({ ...held.demand, fixings }, gripsIn(input));
  return typeof again === "string" ? Number.MAX_VALUE : again.uses;
}

/** So many times what is held; a joint that claims nothing is used without end. */
const ratio = (asked: number, holds: number): number =>
  asked <= 0 ? 0 : holds > 0 ? asked / holds : Number.MAX_VALUE;

const LEAST = leastScrewLoad.value * NEWTONS_PER_POUND;
