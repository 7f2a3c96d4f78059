/** Holes that a joint's line gives, and no published rule does: for the thread, for the shank, for a nail or a bolt. */
import type { Clause } from "../../../grammar/tree";
import type { At } from "../../plan";
import {
  type Bit,
  bitAtLeast,
  bitAtMost,
  boltHole,
  boltLimits,
  clearanceHole,
  clearanceLimits,
  flatHead,
  type HoleLimits,
  headWidth,
  nailLimits,
  nearestBit,
  pilotHole,
  pilotLimits,
  type Source,
  softNailHole,
} from "../../trade";
import type { Quantity } from "../../units";
import type { Joint } from "../joints";
import { isNail } from "../operations";
import type { Part } from "../parts";
import { isBolt } from "../screws";
import { gravityOf, lastParts, nearParts } from "../splitting";
import type { Worked } from "../work";

/**
 * thread-wide: the thread holds little; no-hold: it holds nothing, the hole is as wide as the screw or nail; thread-narrow:
 * the wood splits or the screw snaps; shank-narrow: the near piece is held off; head-through: the head goes through.
 */
export type WrongWay =
  | "thread-wide"
  | "no-hold"
  | "thread-narrow"
  | "nail-wide"
  | "shank-narrow"
  | "head-through"
  | "bolt-narrow"
  | "bolt-wide";

export interface WrongHole {
  readonly joint: Joint;
  readonly is: WrongWay;
  readonly hole: "pilot" | "clearance";
  readonly typed: Quantity;
  /** Of the size alone. */
  readonly at: At;
  /** The largest or the least bit of a usual set that the rules allow; undefined where the set has none so thin. */
  readonly limit: Bit | undefined;
  /** The bit to take. */
  readonly bit: Bit | undefined;
  readonly source: Source;
  /** Parts of which the wood was taken for granted. */
  readonly assumed: readonly Part[];
}

/** What is wrong with the holes of a joint's line: its pilot, then its clearance. */
export function wrongHoles(joint: Joint, worked: Worked): WrongHole[] {
  return (["pilot", "clearance"] as const).flatMap((hole) => {
    const typed = joint[hole];
    const clause = joint.entry.clauses.find((c): c is Hole => c.kind === hole);
    if (!typed || !clause || !joint.size) return [];
    const { start, end } = clause.value;
    const found = isBolt(joint)
      ? boltIn(joint, typed, worked)
      : hole === "clearance"
        ? shankIn(joint, typed, worked)
        : isNail(joint)
          ? nailIn(joint, typed, worked)
          : threadIn(joint, typed, worked);
    return found ? [{ joint, hole, typed, at: { file: joint.at.file, start, end }, ...found }] : [];
  });
}

type Hole = Extract<Clause, { kind: "pilot" | "clearance" | "angled" }>;
type Found = Pick<WrongHole, "is" | "limit" | "bit" | "source" | "assumed">;

/** mm: up to arithmetic. */
const SAME = 1e-6;

/** The woods of these parts, and the limits that hold in some of them: a line of several is let its widest band. */
function woodsOf(parts: readonly Part[], limitsIn: (gravity: number) => HoleLimits) {
  const woods = parts.flatMap((part) => (part.material ? [{ part, ...part.material.wood }] : []));
  const gravities = woods.map((w) => gravityOf(w.name));
  const limits = gravities.map(limitsIn);
  return {
    known: woods.length > 0,
    gravity: Math.max(...gravities),
    least: Math.min(...limits.map((l) => l.least)),
    most: Math.max(...limits.map((l) => l.most)),
    assumed: [...new Set(woods.filter((w) => w.assumed !== "").map((w) => w.part))],
  };
}

function threadIn(joint: Joint, typed: Quantity, worked: Worked): Found | undefined {
  const { system } = worked.settings.display;
  const screw = threadOf(joint);
  // It is drilled through the near piece as well.
  const bored = [...nearParts(joint, worked), ...lastParts(joint, worked)];
  const { known, gravity, least, most, assumed } = woodsOf(bored, (g) => pilotLimits(screw, g));
  if (!known || within(typed, least, most)) return undefined;
  const { bit, source } = pilotHole(screw, gravity, system);
  const narrow = typed.approx < least;
  const is = narrow ? "thread-narrow" : typed.approx < screw.diameter - SAME ? "thread-wide" : "no-hold";
  const limit = narrow ? bitAtLeast(least, system) : bitAtMost(most, system);
  return { is, limit, bit, source, assumed };
}

function nailIn(joint: Joint, typed: Quantity, worked: Worked): Found | undefined {
  const { system } = worked.settings.display;
  const { diameter } = threadOf(joint);
  const bored = [...nearParts(joint, worked), ...lastParts(joint, worked)];
  const { known, most, assumed } = woodsOf(bored, (g) => nailLimits(diameter, g));
  if (!known || within(typed, 0, most)) return undefined;
  const limit = bitAtMost(most, system);
  const is = typed.approx < diameter - SAME ? "nail-wide" : "no-hold";
  return { is, limit, bit: limit, source: softNailHole.source, assumed };
}

function shankIn(joint: Joint, typed: Quantity, worked: Worked): Found | undefined {
  const { system } = worked.settings.display;
  const screw = threadOf(joint);
  const { known, gravity, least, most, assumed } = woodsOf(nearParts(joint, worked), (g) =>
    clearanceLimits(screw, g),
  );
  if (!known || within(typed, least, most - 2 * SAME)) return undefined;
  const { bit, source } = clearanceHole(screw, gravity, system);
  const narrow = typed.approx < least;
  const limit = narrow ? bitAtLeast(least, system) : nearestBit(headWidth(screw.diameter), system);
  return narrow
    ? { is: "shank-narrow", limit, bit, source, assumed }
    : { is: "head-through", limit, bit, source: flatHead.source, assumed: [] };
}

function boltIn(joint: Joint, typed: Quantity, worked: Worked): Found | undefined {
  const { system } = worked.settings.display;
  const { diameter } = threadOf(joint);
  const { least, most } = boltLimits(diameter);
  if (within(typed, least, most)) return undefined;
  const { bit, source } = boltHole(diameter, system);
  const narrow = typed.approx < least;
  const limit = narrow ? bitAtLeast(least, system) : bitAtMost(most, system);
  return { is: narrow ? "bolt-narrow" : "bolt-wide", limit, bit, source, assumed: [] };
}

const threadOf = ({ size }: Joint) => ({ gauge: size!.gauge, diameter: size!.diameter.approx });

const within = ({ approx }: Quantity, least: number, most: number): boolean =>
  approx >= least - SAME && approx <= most + SAME;
