/** Rings of mitred parts: whether they close, and how many of each part they take. */
import { type At, type Declared, ifKnown, known, MISTAKE, type Scope, type Value } from "../plan";
import { cos, NUMERIC } from "../solid/angle";
import type { CutBoard } from "../solid/ends";
import { type Ring as Closing, closeRing, type NoRing, type RingSide, roundingExplains } from "../solid/ring";
import { curesFor, type RingCure } from "../solid/ring-cures";
import { type Display, fraction } from "../units";
import type { Worker } from "./expressions";
import { declaredThing } from "./groups";
import type { Part } from "./parts";
import { endTurn, type RingStand } from "./placing/ring-block";

/** The most sides a ring may have. */
export const MOST_SIDES = 200;

export interface RingMember {
  readonly part: string;
  readonly count: number;
  readonly at: At;
}

export interface Ring {
  readonly name: string;
  readonly declared: Declared;
  readonly members: readonly RingMember[];
  /** The part of each side, in order round the ring. */
  readonly sides: readonly string[];
  /** Whether the parts lie flat (mitered, the width seen) or stand on edge (beveled, the thickness seen). */
  readonly lies: "flat" | "on edge";
  /** How far its sides lean out from upright, in degrees; less than nothing: in. */
  readonly out: number;
  /** A place line stands it somewhere. */
  readonly placed: boolean;
  readonly closing: Value<Closing | NoRing>;
  /** The opening and misfit that rounding to the plan's marks alone explains. */
  readonly explained: { readonly length: number; readonly degrees: number } | undefined;
  readonly cures: readonly RingCure[];
}

/** The openings up to which a ring is said to close: 1/64", and 0.05° (a saw's stop is good to 0.1; from memory). */
const TOLERANCE = { length: 25.4 / 64, degrees: 0.05 };

/**
 * What is wrong with a ring: its corners do not add up, its sides do not meet by more than rounding explains, or
 * mitered faces that meet differ in length; undefined when nothing is.
 */
export function opensBy(ring: Closing, explained: number): "angles" | "sides" | "faces" | undefined {
  const { length, degrees } = ring.tolerance;
  if (Math.abs(ring.misfitDegrees) > degrees + NUMERIC) return "angles";
  if (ring.opening > Math.max(length, explained) + NUMERIC) return "sides";
  return ring.corners.some((c) => c.lengthMismatch > length + NUMERIC) ? "faces" : undefined;
}

/** The members of a ring entry, with faults for names that are no parts. */
export function ringMembers(declared: Declared, scope: Scope, worker: Worker): RingMember[] {
  const { entry, at } = declared;
  if (entry.kind !== "ring") return [];
  const members = entry.members.flatMap((m): RingMember[] => {
    const found = declaredThing(m.thing, at.file, ["part"], "a part", scope, worker);
    const count = m.count ? ifKnown(worker.wholeNumber(m.count, at.file, "how many sides", MOST_SIDES)) : 1;
    return found && count
      ? [{ part: found.name, count, at: { file: at.file, start: m.start, end: m.end } }]
      : [];
  });
  const sides = members.reduce((sum, m) => sum + m.count, 0);
  if (sides > MOST_SIDES) {
    worker.fault({ kind: "too-many", at, what: "how many sides", found: sides, limit: MOST_SIDES });
    return [];
  }
  return members;
}

export function workRing(
  declared: Declared,
  members: readonly RingMember[],
  parts: ReadonlyMap<string, Part>,
  display: Display,
  stand: Value<RingStand>,
  placed: boolean,
): Ring {
  const sides = members.flatMap((m) => Array.from({ length: m.count }, () => m.part));
  const inOrder = sides.map((name) => parts.get(name));
  const stands = ifKnown(stand) ?? { lies: "flat", out: 0 };
  const complete = declared.entry.kind === "ring" && declared.entry.members.length === members.length;
  const closing = complete ? close(inOrder, stands) : MISTAKE;
  const ring = ifKnown(closing);
  const mark = fraction.toNumber(display.mark);
  return {
    name: declared.name,
    declared,
    members,
    sides,
    lies: stands.lies,
    out: stands.out,
    placed,
    closing,
    explained: ring?.kind === "ring" ? roundingExplains(ring, { length: mark, degrees: 0 }) : undefined,
    cures: ring?.kind === "ring" ? curesFor(ring) : [],
  };
}

function close(parts: readonly (Part | undefined)[], stand: RingStand): Value<Closing | NoRing> {
  const sides: RingSide[] = [];
  const level = (part: Part, cut: CutBoard, end: "left" | "right"): number => {
    if (stand.out !== 0) return endTurn(cut, end, stand);
    const cuts = end === "left" ? part.leftEnd : part.rightEnd;
    const angle = (stand.lies === "flat" ? cuts?.miter : cuts?.bevel)?.approx ?? 0;
    return end === "right" && part.edges === "opposite" ? -angle : angle;
  };
  for (const part of parts) {
    if (!part) return MISTAKE;
    const { cut, width, thickness } = part;
    if (cut.state !== "known") return cut;
    const across = stand.lies === "flat" ? width : thickness;
    if (across.state !== "known") return across;
    sides.push({
      id: part.name,
      // The outside is the edge with the left end's long point; on opposite edges the right end's lies inside.
      outsideLength: cut.value.arrises[0],
      width: across.value.approx / cos(stand.out),
      startAngle: level(part, cut.value, "left"),
      endAngle: level(part, cut.value, "right"),
    });
  }
  return known(closeRing(sides, TOLERANCE));
}
