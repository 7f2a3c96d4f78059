// Wood screws: diameters by gauge, the holes to drill for them, and what holds them in wood.
import { COMMON_PRACTICE, FROM_MEMORY, type Row, remembered, type Source } from "./row";
import { nearest64th } from "./tape";

/** A gauge of the table: every size in it is inches as tape text ("0.164"). */
export interface ScrewGauge {
  readonly gauge: number;
  readonly shank: Row<string>;
  readonly root: Row<string>;
  readonly threadsPerInch: Row<number>;
}

/** One published rule for the hole in the second piece: a share of the root diameter, and the hole in inches. */
export interface PilotRule {
  readonly name: string;
  readonly share: number;
  readonly diameter: number;
  readonly source: Source;
}

/**
 * The holes that some published rule allows, in inches. A hole from `least` to `most` is within the widest band
 * (1/64 in wider each way than the rules). `suggested` follows `rule` and is never "none": where NDS asks for no hole
 * (`noneForStrength`) that is about strength, and the wood may still split.
 */
export interface PilotBand {
  readonly least: number;
  readonly most: number;
  readonly suggested: number;
  /** `suggested` to the nearest 1/64 in, as tape text. */
  readonly suggestedText: string;
  readonly rule: PilotRule;
  readonly rules: readonly PilotRule[];
  readonly noneForStrength: boolean;
}

export function screwGauge(gauge: number): ScrewGauge | undefined {
  return screwGauges.find((row) => row.gauge === gauge);
}

/** Shank diameter in inches of any gauge number: 0.060 + 0.013 n. */
export function shankDiameter(gauge: number): number {
  return (60 + 13 * gauge) / 1000;
}

/** Pilot holes for a gauge in wood of oven-dry specific gravity G; undefined when the gauge is not in the table. */
export function pilotBand(gauge: number, gravity: number): PilotBand | undefined {
  const row = screwGauge(gauge);
  if (row === undefined) return undefined;
  const root = Number(row.root.value);
  const rules = PILOT_RULES.filter(({ holds }) => holds(gravity)).map(({ name, share, source }) => ({
    name,
    share,
    diameter: root * share,
    source,
  }));
  const [rule] = rules;
  if (rule === undefined) return undefined;
  const holes = rules.map(({ diameter }) => diameter);
  return {
    least: Math.min(...holes) - 1 / 64,
    most: Math.max(...holes) + 1 / 64,
    suggested: rule.diameter,
    suggestedText: nearest64th(rule.diameter),
    rule,
    rules,
    noneForStrength: gravity <= leadHoleOver.value,
  };
}

/** The hole in the near piece, in inches: NDS allows 7/8 of the shank in soft wood; a full shank lets boards pull together. */
export function clearanceBand(
  gauge: number,
  gravity: number,
): { least: number; most: number; source: Source } {
  const shank = shankDiameter(gauge);
  const least = gravity > 0.6 ? shank : (shank * 7) / 8;
  return { least: least - 1 / 64, most: shank + 1 / 32, source: NDS_LATERAL };
}

/** Thread length of a screw that does not declare one, as a share of its length. */
export const threadShare: Row<number> = {
  key: "thread length, share of the screw",
  value: 2 / 3,
  unit: "",
  source: {
    document: "digest of NDS",
    table: "wood screws",
    via: "civilengineeringx.com",
    confidence: "read",
  },
  range: "about; deck and construction screws differ, so a plan may declare it",
};

/** Usual lengths on the shelf, in inches as tape text; undefined for a gauge without a row. */
export function usualScrewLengths(gauge: number): readonly string[] | undefined {
  return usualLengths.find(({ key }) => key === `#${gauge} lengths`)?.value;
}

/** Wood that stays over the tip of a screw, inches. */
export const woodOverTip: Row<string> = practice("wood over a screw's tip", "1/8", "in");
/** Least length of screw in the second piece, inches; at least `leastBiteShare` of the screw as well. */
export const leastBite: Row<string> = practice("least bite in the second piece", "1/2", "in");
export const leastBiteShare: Row<number> = practice("least share of the screw in the second piece", 0.5, "");

const ROOT_TABLE = remembered("NDS", "Appendix L, Table L3, root diameters");
const TPI = remembered("wood screw threads per inch");
const DIAMETERS: Source = {
  document: "ASME B18.6.1, D = 0.060 + 0.013 n",
  via: "a screw seller's web page",
  confidence: "secondary",
};
const NDS_WITHDRAWAL: Source = {
  document: "NDS 12.1.5",
  table: "lead holes, withdrawal",
  via: "civilengineeringx.com",
  confidence: "read",
};
const NDS_LATERAL: Source = { ...NDS_WITHDRAWAL, table: "lead holes, lateral load" };
const OLDER: Source = {
  document: "NDS commentary",
  table: "lead holes before 1962",
  via: "studylib.net 12742619",
  confidence: "read",
};
const NDS_PLACING = remembered("NDS Commentary C12.1.5.7", "wood screws, wood side");
const NDS_PENETRATION: Source = {
  document: "NDS 12.1.5.6",
  via: "an open-source structural library (xc)",
  confidence: "read",
};

/** Rules that hold at an oven-dry gravity, the one to suggest first. Hard wood is taken as G 0.6 and over. */
const PILOT_RULES: readonly {
  name: string;
  share: number;
  holds: (gravity: number) => boolean;
  source: Source;
}[] = [
  { name: "NDS withdrawal, 90% of root", share: 0.9, holds: (g) => g >= 0.6, source: NDS_WITHDRAWAL },
  {
    name: "NDS withdrawal, 70% of root",
    share: 0.7,
    holds: (g) => g > 0.5 && g < 0.6,
    source: NDS_WITHDRAWAL,
  },
  { name: "older rule for softwood, 70% of root", share: 0.7, holds: (g) => g < 0.6, source: OLDER },
  { name: "older rule for hardwood, 90% of root", share: 0.9, holds: (g) => g >= 0.6, source: OLDER },
  { name: "NDS lateral, 7/8 of root", share: 7 / 8, holds: (g) => g <= 0.6, source: NDS_LATERAL },
  { name: "NDS lateral, full root", share: 1, holds: (g) => g > 0.6, source: NDS_LATERAL },
  { name: "softwood, 85% of root", share: 0.85, holds: (g) => g < 0.6, source: COMMON_PRACTICE },
  { name: "hardwood, full root", share: 1, holds: (g) => g >= 0.6, source: COMMON_PRACTICE },
];

const ROOT_SECONDARY: Source = { ...ROOT_TABLE, via: "a fastener seller's table", confidence: "secondary" };
const ROOT_READ: Source = {
  ...ROOT_TABLE,
  via: "an open-source structural library (xc)",
  confidence: "read",
};

/** The gauges, thinnest first. Web tables of roots differ by 10% or more; these follow NDS. */
export const screwGauges: readonly ScrewGauge[] = (
  [
    [4, "0.084", ROOT_SECONDARY, 22],
    [6, "0.113", ROOT_TABLE, 18],
    [7, "0.122", ROOT_TABLE, 16],
    [8, "0.131", ROOT_SECONDARY, 15],
    [9, "0.142", ROOT_TABLE, 14],
    [10, "0.152", ROOT_READ, 13],
    [12, "0.171", ROOT_TABLE, 11],
    [14, "0.196", ROOT_TABLE, 10],
  ] as const
).map(([gauge, root, rootSource, threads]) => ({
  gauge,
  shank: {
    key: `#${gauge} shank diameter`,
    value: shankDiameter(gauge).toFixed(3),
    unit: "in",
    source: DIAMETERS,
  },
  root: { key: `#${gauge} root diameter`, value: root, unit: "in", source: rootSource },
  threadsPerInch: { key: `#${gauge} threads per inch`, value: threads, unit: "1/in", source: TPI },
}));

/** Metric wood screws: diameters sold, and the gauge each is near. */
export const metricDiameters: readonly Row<number>[] = [3, 3.5, 4, 4.5, 5, 6].map((value) => ({
  key: `${value}mm screw`,
  value,
  unit: "mm",
  source: remembered("metric wood screw diameters"),
}));

/** Millimetres that a gauge is near. */
export const gaugesInMetric: readonly Row<number>[] = (
  [
    [6, 3.5],
    [8, 4.2],
    [10, 4.8],
    [12, 5.5],
  ] as const
).map(([gauge, value]) => ({
  key: `#${gauge} in metric`,
  value,
  unit: "mm",
  source: remembered("gauges and millimetres"),
  range: "about",
}));

/** Hole for the thread of a metric screw, as a share of its diameter; at 6 mm and less softwood needs none for strength. */
export const metricPilotShare: Row<number> = {
  key: "pilot of a metric screw, share of its diameter",
  value: 0.7,
  unit: "",
  source: remembered("EN 1995-1-1", "10.4.5"),
};

/** Root of a metric wood screw's thread, as a share of its diameter. */
export const metricRoot: Row<number> = {
  key: "root of a metric screw, share of its diameter",
  value: 0.65,
  unit: "",
  source: remembered("metric wood screw threads"),
  range: "about 0.6 to 0.7",
};

/** The least hole that common practice drills for a metric screw, as a share of its diameter: the other end of the band. */
export const metricLeastPilotShare: Row<number> = {
  key: "least pilot of a metric screw, share of its diameter",
  value: 0.5,
  unit: "",
  source: COMMON_PRACTICE,
  range: "in softwood",
};

const usualLengths: readonly Row<readonly string[]>[] = [
  practice("#6 lengths", ["3/4", "1", "1-1/4", "1-5/8", "2"], "in"),
  practice("#8 lengths", ["3/4", "1", "1-1/4", "1-1/2", "1-5/8", "2", "2-1/2", "3"], "in"),
  practice("#10 lengths", ["1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4"], "in"),
];

/** Bite in the second piece, in shank diameters, tip included. */
export const leastPenetration: Row<number> = {
  key: "least penetration to claim a strength",
  value: 6,
  unit: "shank diameters",
  source: NDS_PENETRATION,
};
export const fullPenetration: Row<number> = {
  key: "penetration for the full lateral value",
  value: 10,
  unit: "shank diameters",
  source: remembered("NDS", "Table 12L, footnote"),
};

/** Distances that keep wood from splitting, in shank diameters: with a pilot hole, and without. */
export const placing: readonly Row<{ readonly bored: number; readonly unbored: number }>[] = (
  [
    ["edge distance", 2.5, 2.5],
    ["end distance, pulled toward the end", 10, 15],
    ["end distance, pushed away from the end", 5, 10],
    ["spacing along the grain", 10, 15],
    ["spacing across the grain", 5, 10],
    ["spacing of rows", 3, 5],
  ] as const
).map(([key, bored, unbored]) => ({
  key: `screw ${key}`,
  value: { bored, unbored },
  unit: "shank diameters",
  source: NDS_PLACING,
}));

/** Words in the names of woods that split where others do not. */
export const brittleWoods: Row<readonly string[]> = {
  key: "woods that split easily",
  value: ["cedar", "oak", "redwood"],
  unit: "",
  source: FROM_MEMORY,
};
/** Whether a wood of that name splits easily. */
export const isBrittle = (wood: string): boolean => brittleWoods.value.some((word) => wood.includes(word));

/** Oven-dry gravity over which a wood screw wants a lead hole wherever it goes in. */
export const leadHoleOver: Row<number> = {
  key: "gravity over which a screw wants a lead hole",
  value: 0.5,
  unit: "",
  source: NDS_WITHDRAWAL,
};

/** Boards thinner than this split at any screw without a hole, in inches. */
export const thinBoard: Row<string> = practice("boards that any screw splits, thinner than", "1/2", "in");

/** What a fastener keeps of its strength in these services. */
export const endGrainLateral = factor("end grain, lateral", 0.67, remembered("NDS", "end grain factor"));
export const endGrainWithdrawal = factor("end grain, withdrawal", 0, {
  document: "issuhub.com document 4884",
  table: "Eq 6.37, page 189",
  confidence: "read",
});
export const wetScrew = factor(
  "screw in wet service",
  0.7,
  remembered("NDS", "wet service factors of fasteners"),
);
/** Bearing angles: a toe screw leans this far from the face and starts this share of its length from the joint. */
export const toeAngle: Row<number> = {
  key: "toe angle off the face",
  value: 30,
  unit: "deg",
  source: remembered("NDS", "toe-nails"),
  range: "NDS speaks of nails; toe screws are practice only",
};
export const toeStart = factor("toe start, share of the length", 1 / 3, remembered("NDS", "toe-nails"));

/** Which metal lasts: what the fastener should be made of, by what it goes into. */
export const coatings: readonly Row<string>[] = [
  { key: "copper-treated wood", value: "hot-dip galvanized or stainless", unit: "", source: FROM_MEMORY },
  { key: "cedar, redwood, oak", value: "stainless, to avoid black stain", unit: "", source: FROM_MEMORY },
];

/** Pounds per inch of thread in side grain are 2850 G^2 D. */
export const withdrawalFactor: Row<number> = {
  key: "withdrawal, lb per inch of thread: factor on G^2 D",
  value: 2850,
  unit: "lb/in",
  source: { document: "NDS 12.2-2", via: "engineeringtoolbox.com d_1815", confidence: "read" },
};
export const screwRows: readonly Row<unknown>[] = [
  ...screwGauges.flatMap(({ shank, root, threadsPerInch }) => [shank, root, threadsPerInch]),
  ...PILOT_RULES.map(({ name, share, source }) => ({
    key: `pilot: ${name}`,
    value: share,
    unit: "",
    source,
  })),
  ...metricDiameters,
  ...gaugesInMetric,
  metricPilotShare,
  metricRoot,
  metricLeastPilotShare,
  ...usualLengths,
  ...[threadShare, woodOverTip, leastBite, leastBiteShare, leastPenetration, fullPenetration],
  ...placing,
  ...[brittleWoods, leadHoleOver, thinBoard],
  ...[endGrainLateral, endGrainWithdrawal, wetScrew, toeAngle, toeStart],
  ...coatings,
  withdrawalFactor,
];

function practice<V>(key: string, value: V, unit: string): Row<V> {
  return { key, value, unit, source: COMMON_PRACTICE };
}

function factor(key: string, value: number, source: Source): Row<number> {
  return { key, value, unit: "", source };
}
