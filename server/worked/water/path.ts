/** The way of water through each box: in by rain or watering, through liner and fabric, out by gaps or holes, and away below. */
import { type At, ifKnown } from "../../plan";
import { HAIRLINE, TOUCHING } from "../../solid/contact";
import { drainHoles, drainSpacing, leastDrainGap } from "../../trade";
import type { Box } from "../boxes";
import { floorsOf } from "../choose";
import { bottomGaps, bottomOf, type Drainage, type DrainHoles } from "../drainage";
import type { LiningWork } from "../lining";
import { size } from "../materials";
import type { Worked } from "../work";
import { type FlatTop, flatTopsOf } from "./flat-tops";

export type WaterInput = Pick<
  Worked,
  "boxes" | "drainage" | "linings" | "settings" | "space" | "scope" | "parts"
>;

export interface WaterWork {
  /** One for each box, in the order of the plan. */
  readonly boxes: readonly WaterPath[];
  /** Plywood that lies level in the rain. */
  readonly flatTops: readonly FlatTop[];
}

export interface WaterPath {
  readonly box: Box;
  /** Where the box says how it drains, else its name. */
  readonly at: At;
  /** What brings the water; undefined for a box without fill, one that holds water, and one that stays dry or may do so. */
  readonly water: "rain" | "watering" | undefined;
  /** It is filled, but the plan says neither where it stands nor that anything grows in it. */
  readonly unsaid: boolean;
  /** Its fill is wet at times. */
  readonly wet: boolean;
  /** Liners and fabrics between the fill and the wood, in the order of their lines. */
  readonly layers: readonly WaterLayer[];
  readonly out: "gaps" | "holes" | "nothing" | "unsaid";
  /** mm: the widest gap of the placed bottom, 0 where its boards are tight; undefined where none is placed between walls. */
  readonly widestGap: number | undefined;
  /** That is wide enough to drain; undefined likewise. */
  readonly gapsDrain: boolean | undefined;
  /** Undefined where it does not drain by holes, or does not say how many and how wide. */
  readonly holes: DrainHoles | undefined;
  /** Its placed bottom lies flat on the floor. */
  readonly onFloor: boolean;
  /** What keeps the water in, the first on its way; undefined where nothing was found, or no water comes. */
  readonly stop: WaterStop | undefined;
  /** Why it could not be looked at: the name of a text of the not-checked list. */
  readonly notSeen: string | undefined;
}

export interface WaterLayer {
  readonly roll: string;
  readonly holdsWater: boolean;
  /** The plan says how the box drains, so that the sheet tells where this is cut open. */
  readonly opened: boolean;
}

export type WaterStop =
  /** No way out at all. */
  | { readonly is: "no drain" }
  | { readonly is: "liner whole"; readonly roll: string }
  /** It does not say how it drains, and has no gap of that width (mm). */
  | { readonly is: "bottom tight"; readonly least: number }
  /** It is to drain through gaps, the widest of which (mm) is narrower than that. */
  | { readonly is: "gaps narrow"; readonly widest: number; readonly least: number }
  /** In a bottom so long, where they may be so far apart at the most; drilled so wide at the least. mm. */
  | {
      readonly is: "holes few";
      readonly count: number;
      readonly needed: number;
      readonly long: number;
      readonly apart: number;
      readonly diameter: number;
    }
  /** mm. */
  | { readonly is: "holes small"; readonly count: number; readonly diameter: number; readonly least: number }
  | { readonly is: "on the floor" };

/** mm. */
const LEAST_GAP = size(leastDrainGap.value, "in").approx;
const LEAST_HOLE = size(drainHoles.value.diameter, "in").approx;
/** mm from hole to hole along the longer side of a bottom, at the most. */
const HOLES_APART = size(drainSpacing.value.apart.high, "in").approx;

/**
 * The water path of every box, and what rain stands on. Millimetres. What is not placed, or not said, is left undefined
 * and goes to the not-checked list; a mistake of the plan makes no entry of its own.
 */
export function waterPathOf(input: WaterInput): WaterWork {
  return {
    boxes: input.drainage.map((drainage) => pathOf(drainage, input)),
    flatTops: flatTopsOf(input),
  };
}

function pathOf(drainage: Drainage, input: WaterInput): WaterPath {
  const { settings, linings, scope, space } = input;
  const { box, at, how } = drainage;
  const holdsSoil = box.fill !== undefined && box.fill.name !== "water";
  const grows = box.grows.length > 0;
  const outdoors = settings.place === "outdoors";
  const water = !holdsSoil ? undefined : outdoors ? "rain" : grows ? "watering" : undefined;
  const widths = bottomGaps(box, scope, space, TOUCHING)?.widths;
  const widestGap = widths && Math.max(0, ...widths);
  const found = {
    box,
    at,
    water,
    unsaid: holdsSoil && !grows && settings.place === undefined,
    wet: water !== undefined || box.fill?.name === "water",
    layers: linings.filter((l) => l.box === box).flatMap(layerOf),
    out: how ?? "unsaid",
    widestGap,
    gapsDrain: widestGap === undefined ? undefined : widestGap >= LEAST_GAP - TOUCHING,
    holes: drainage.holes && ifKnown(drainage.holes),
    onFloor: outdoors && liesOnFloor(floorsOf(box.declared, space, scope), input),
  } as const;
  const stop = water && stopOf(found);
  return { ...found, stop, notSeen: water && !stop ? notSeen(found) : undefined };
}

function layerOf({ roll, opening }: LiningWork): WaterLayer[] {
  if (!roll) return [];
  return [{ roll: roll.name, holdsWater: roll.holdsWater, opened: opening.how.startsWith("over") }];
}

function liesOnFloor(bottom: readonly number[], { space }: WaterInput): boolean {
  const flat = (i: number): boolean => {
    const { bounds, pose } = space.pieces[i]!;
    return bounds.least[2] <= HAIRLINE && Math.abs(pose.thickness[2]) > LEVEL;
  };
  return bottom.length > 0 && bottom.every(flat);
}

/** Cosine of what still lies flat: a little under half a degree. */
const LEVEL = 0.99997;

type Found = Omit<WaterPath, "stop" | "notSeen">;

/** The first thing on its way out that keeps the water in. */
function stopOf({ box, layers, out, widestGap, gapsDrain, holes, onFloor }: Found): WaterStop | undefined {
  if (out === "nothing") return { is: "no drain" };
  const whole = layers.find(({ holdsWater, opened }) => holdsWater && !opened);
  if (whole) return { is: "liner whole", roll: whole.roll };
  if (out === "unsaid" && gapsDrain === false) return { is: "bottom tight", least: LEAST_GAP };
  if (out === "gaps" && widestGap !== undefined && !gapsDrain)
    return { is: "gaps narrow", widest: widestGap, least: LEAST_GAP };
  if (out === "holes" && holes) {
    const long = bottomOf(box)?.[0] ?? 0;
    const needed = Math.max(drainHoles.value.count, Math.ceil(long / HOLES_APART - 1e-9));
    const diameter = holes.diameter.approx;
    if (holes.count < needed)
      return {
        is: "holes few",
        count: holes.count,
        needed,
        long,
        apart: HOLES_APART,
        diameter: Math.max(diameter, LEAST_HOLE),
      };
    // A drill of the other system is let be: 6 mm for 1/4".
    if (diameter < LEAST_HOLE - HAIRLINE)
      return { is: "holes small", count: holes.count, diameter, least: LEAST_HOLE };
  }
  return onFloor && (out !== "unsaid" || gapsDrain) ? { is: "on the floor" } : undefined;
}

function notSeen({ out, widestGap }: Found): string | undefined {
  if (out === "holes" || widestGap !== undefined) return undefined;
  return out === "gaps" ? "bottom not between walls" : "unsaid drain and bottom";
}
