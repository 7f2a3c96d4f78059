// Drill bits: those of a usual set, and which of them makes the hole for a screw, a nail or a bolt.
import { COMMON_PRACTICE, FROM_MEMORY, type Row, remembered, type Source } from "./row";
import {
  clearanceBand,
  metricLeastPilotShare,
  metricPilotShare,
  pilotBand,
  screwGauge,
  shankDiameter,
} from "./screws";
import { nearest64th, tapeNumber } from "./tape";

/** A bit as it is sold: inches as tape text ("7/64") or millimetres as a number, as in a row. */
export type Bit =
  | { readonly size: string; readonly unit: "in" }
  | { readonly size: number; readonly unit: "mm" };

export type BitSystem = "inches" | "millimetres";

/** The bit for a hole, and the bits of the set from the least to the largest that the rules allow. */
export interface Hole {
  /** Undefined where the set has none that is thin enough. */
  readonly bit: Bit | undefined;
  readonly least: Bit | undefined;
  readonly most: Bit | undefined;
  /** Between which holes the rules allow any, bits of the set or not. */
  readonly limits: HoleLimits;
  readonly rule: string;
  readonly source: Source;
  /** For strength alone the published rule asks for no hole; the wood may still split. */
  readonly noneForStrength: boolean;
  /** What was taken for want of a table row; empty where nothing was. */
  readonly assumed: string;
}

/** A screw by its gauge, or by its diameter in mm alone. */
export interface Thread {
  readonly gauge: number | undefined;
  /** mm */
  readonly diameter: number;
}

/** Steps between the bits of a set. */
export const inchBitStep: Row<string> = {
  key: "drill bits, steps of an index set",
  value: "1/64",
  unit: "in",
  source: COMMON_PRACTICE,
  range: "from 1/16 in",
};
export const metricBitStep: Row<number> = {
  key: "drill bits, steps of a metric set",
  value: 0.5,
  unit: "mm",
  source: COMMON_PRACTICE,
  range: "from 1 mm",
};

const MM = 25.4;
/** Steps in mm, and how many of them the thinnest bit is thick. */
const SETS = {
  inches: { step: tapeNumber(inchBitStep.value)! * MM, first: 4 },
  millimetres: { step: metricBitStep.value, first: 2 },
} as const;
/** A shank that is a bit's own size, up to arithmetic. */
const SAME = 1e-9;

/** The bit of the set that is nearest to a hole in mm, never under the thinnest. */
export const nearestBit = (mm: number, system: BitSystem): Bit =>
  bitAt(Math.round(stepsOf(mm, system)), system);
/** The thinnest bit of the set that is not thinner than that. */
export const bitAtLeast = (mm: number, system: BitSystem): Bit =>
  bitAt(Math.ceil(stepsOf(mm, system) - SAME), system);
/** The thickest bit of the set that is not thicker than that; undefined where all are. */
export function bitAtMost(mm: number, system: BitSystem): Bit | undefined {
  const steps = Math.floor(stepsOf(mm, system) + SAME);
  return steps < SETS[system].first ? undefined : bitAt(steps, system);
}

const stepsOf = (mm: number, system: BitSystem): number => mm / SETS[system].step;

function bitAt(steps: number, system: BitSystem): Bit {
  const whole = Math.max(SETS[system].first, steps);
  return system === "inches"
    ? { size: nearest64th(whole / 64), unit: "in" }
    : { size: whole * SETS.millimetres.step, unit: "mm" };
}

/** The least and the largest hole that some published rule allows, in mm: none need be a bit of a set. */
export interface HoleLimits {
  readonly least: number;
  readonly most: number;
}

/** For the thread of a screw in wood of that oven-dry gravity: 1/64 in wider each way than the rules. */
export function pilotLimits({ gauge, diameter }: Thread, gravity: number): HoleLimits {
  const band = gauge === undefined ? undefined : pilotBand(gauge, gravity);
  if (band) return { least: band.least * MM, most: band.most * MM };
  return {
    least: diameter * metricLeastPilotShare.value - MM / 64,
    most: diameter * metricPilotShare.value + MM / 64,
  };
}

/** For the shank of a screw in the near piece: below it the thread still bites there, above it the head goes through. */
export const clearanceLimits = ({ gauge, diameter }: Thread, gravity: number): HoleLimits => ({
  least: clearanceBand(gauge ?? gaugeLike(diameter), gravity).least * MM,
  most: headWidth(diameter),
});

/** The gauge number, not always a whole one, of a screw of that diameter in mm. */
const gaugeLike = (diameter: number): number =>
  (diameter / MM - shankDiameter(0)) / (shankDiameter(1) - shankDiameter(0));

/** For a nail where wood would split: any hole thinner than its share, and 1/64 in more. */
export const nailLimits = (diameter: number, gravity: number): HoleLimits => ({
  least: 0,
  most: diameter * nailRow(gravity).value + MM / 64,
});

/** For a bolt: as wide as the bolt itself (`boltTight`), up to the room that NDS gives it and 1/64 in more. */
export const boltLimits = (diameter: number): HoleLimits => ({
  least: diameter + boltTight.value,
  most: diameter + tapeNumber(boltRoom.value.high)! * MM + MM / 64,
});

/**
 * The pilot hole of a screw in wood of that oven-dry gravity. Never "none": where NDS asks for no hole that is about
 * strength, and thin, brittle, end and edge wood splits all the same.
 */
export function pilotHole(screw: Thread, gravity: number, system: BitSystem): Hole {
  const band = screw.gauge === undefined ? undefined : pilotBand(screw.gauge, gravity);
  const limits = pilotLimits(screw, gravity);
  const [least, most] = [bitAtLeast(limits.least, system), bitAtMost(limits.most, system)];
  if (band)
    return {
      bit: nearestBit(band.suggested * MM, system),
      least,
      most,
      limits,
      rule: band.rule.name,
      source: band.rule.source,
      noneForStrength: band.noneForStrength,
      assumed: "",
    };
  const hole = screw.diameter * metricPilotShare.value;
  const why =
    screw.gauge === undefined ? "" : `no table of roots has a #${screw.gauge}: taken by its diameter`;
  return {
    bit: nearestBit(hole, system),
    least,
    most,
    limits,
    rule: `${Math.round(metricPilotShare.value * 100)}% of the screw's diameter`,
    source: metricPilotShare.source,
    noneForStrength: screw.diameter <= THIN_SCREW && gravity < HARD,
    assumed: why,
  };
}

/** mm: screws up to this need no hole in softwood (EN 1995-1-1, 10.4.5, from memory). */
const THIN_SCREW = 6;
/** Oven-dry gravity from which wood counts as hard. */
const HARD = 0.6;

/** The hole for the shank in the near piece: as thick as the shank, to the next bit up, so that the boards pull together. */
export function clearanceHole(screw: Thread, gravity: number, system: BitSystem): Hole {
  const { gauge, diameter } = screw;
  const row = gauge === undefined ? undefined : screwGauge(gauge);
  const band = row && clearanceBand(row.gauge, gravity);
  const limits = band
    ? { least: band.least * MM, most: band.most * MM }
    : { least: diameter, most: diameter + MM / 32 };
  return {
    bit: bitAtLeast(diameter, system),
    least: bitAtLeast(limits.least, system),
    most: bitAtMost(limits.most, system),
    limits,
    rule: clearanceRule.key,
    source: clearanceRule.source,
    noneForStrength: false,
    assumed: "",
  };
}

/** The hole for a nail where wood would split: at most a share of the nail, to the next bit down. */
export function nailHole(diameter: number, gravity: number, system: BitSystem): Hole {
  const row = nailRow(gravity);
  const limits = { least: diameter * row.value - MM / 64, most: diameter * row.value };
  const bit = bitAtMost(limits.most, system);
  return {
    bit,
    least: bit && bitAtMost(limits.least, system),
    most: bit,
    limits,
    rule: row.key,
    source: row.source,
    noneForStrength: true,
    assumed: bit ? "" : NAIL_AS_BIT,
  };
}

const nailRow = (gravity: number): Row<number> => (gravity > HARD ? hardNailHole : softNailHole);

const NAIL_AS_BIT =
  "no bit of a usual set is thin enough: one of the nails with its head cut off drills the hole";

/** The hole for a bolt, through all pieces. */
export function boltHole(diameter: number, system: BitSystem): Hole {
  const { low, high } = boltRoom.value;
  const [least, most] = [low, high].map((room) => diameter + tapeNumber(room)! * MM) as [number, number];
  return {
    bit: bitAtLeast(least, system),
    least: bitAtLeast(least, system),
    most: bitAtMost(most, system),
    limits: { least, most },
    rule: boltRoom.key,
    source: boltRoom.source,
    noneForStrength: false,
    assumed: "",
  };
}

/** About how wide a flat head is, in mm. */
export const headWidth = (diameter: number): number => diameter * flatHead.value;

/** Usual size of a cross-slotted bit for a gauge, or undefined where the table has none. */
export const crossBit = (gauge: number): Row<{ readonly to: number; readonly bit: number }> | undefined =>
  crossBits.find(({ value }) => gauge <= value.to);

export const clearanceRule: Row<number> = {
  key: "hole for the shank, shank diameters",
  value: 1,
  unit: "",
  source: COMMON_PRACTICE,
  range: "to the next bit up",
};

const NAILS: Source = remembered("NDS", "12.1.6, lead holes of nails");
export const softNailHole: Row<number> = {
  key: "hole for a nail, at most 75% of it",
  value: 0.75,
  unit: "",
  source: NAILS,
  range: "gravity to 0.6",
};
export const hardNailHole: Row<number> = {
  key: "hole for a nail in hard wood, at most 90% of it",
  value: 0.9,
  unit: "",
  source: NAILS,
  range: "gravity over 0.6",
};

export const boltRoom: Row<{ readonly low: string; readonly high: string }> = {
  key: "hole for a bolt, wider than it by",
  value: { low: "1/32", high: "1/16" },
  unit: "in",
  source: remembered("NDS", "12.1.3, holes of bolts"),
};

/** Room that a bolt's hole must have, in mm: none, since a hole may be up to 1 mm wider than the bolt. */
export const boltTight: Row<number> = {
  key: "hole for a bolt, at least wider than it by",
  value: 0,
  unit: "mm",
  source: remembered("EN 1995-1-1", "10.4.3, holes of bolts"),
};

export const flatHead: Row<number> = {
  key: "flat head of a wood screw, shank diameters",
  value: 2,
  unit: "",
  source: remembered("ASME B18.6.1", "flat countersunk heads"),
  range: "about",
};

/** Gauges up to `to`, thinnest first. */
export const crossBits: readonly Row<{ readonly to: number; readonly bit: number }>[] = (
  [
    [1, 0],
    [4, 1],
    [9, 2],
    [16, 3],
  ] as const
).map(([to, bit]) => ({
  key: `cross-slotted bit, gauges to #${to}`,
  value: { to, bit },
  unit: "",
  source: FROM_MEMORY,
}));

export const bitRows: readonly Row<unknown>[] = [
  inchBitStep,
  metricBitStep,
  clearanceRule,
  softNailHole,
  hardNailHole,
  boltRoom,
  boltTight,
  flatHead,
  ...crossBits,
];
