// What is printed of each wood: gravity, decay, shrinkage, stiffness. The tables behind species.ts; lookups are there.
import { type Row, remembered, type Source } from "./row";

export type DecayClass = "exceptional" | "resistant" | "moderate" | "slight";

/** Percent of the green size, green to oven-dry. */
export interface Shrinkage {
  readonly radial: number;
  readonly tangential: number;
  readonly volumetric: number;
}

/** Clear wood at 12% moisture, psi: averages, not design values. */
export interface Stiffness {
  readonly rupture: number;
  readonly elasticity: number;
}

const NDS_G: Source = {
  document: "NDS 2018",
  table: "Table 12.3.3A, specific gravity",
  via: "an open-source structural library (xc)",
  confidence: "read",
};
const NDS_G_REMEMBERED = remembered("NDS 2018", "Table 12.3.3A, specific gravity");

/** Specific gravity on an oven-dry basis, by the name a grade stamp carries. */
export const ndsGravities: readonly Row<number>[] = (
  [
    ["spruce-pine-fir", 0.42, NDS_G],
    ["spruce-pine-fir-south", 0.36, NDS_G],
    ["douglas-fir-larch", 0.5, NDS_G],
    ["hem-fir", 0.43, NDS_G],
    ["southern-pine", 0.55, NDS_G],
    ["western-cedars", 0.36, NDS_G],
    ["northern-white-cedar", 0.31, NDS_G_REMEMBERED],
    ["redwood", 0.37, NDS_G],
    ["eastern-white-pine", 0.36, NDS_G],
    ["white-oak", 0.73, NDS_G],
    ["red-oak", 0.67, NDS_G],
    ["eastern-hemlock-tamarack", 0.41, NDS_G],
  ] as const
).map(([key, value, source]) => ({ key, value, unit: "", source, range: "oven-dry weight and volume" }));

const T43 = "Table 4-3, shrinkage from green to oven-dry";
const SHRINK_READ: Source = {
  document: "Wood Handbook FPL-GTR-190",
  table: T43,
  via: "issuhub.com 5801",
  confidence: "read",
};
const SHRINK_MEMORY = remembered("Wood Handbook FPL-GTR-190", T43);

export const shrinkages: readonly Row<Shrinkage>[] = (
  [
    ["western-redcedar", 2.4, 5.0, 6.8, SHRINK_READ],
    ["northern-white-cedar", 2.2, 4.9, 7.2, SHRINK_READ],
    ["yellow-cedar", 2.8, 6.0, 9.2, SHRINK_READ],
    ["port-orford-cedar", 4.6, 6.9, 10.1, SHRINK_READ],
    ["douglas-fir", 4.8, 7.6, 12.4, SHRINK_READ],
    ["douglas-fir-interior-north", 3.8, 6.9, 10.7, SHRINK_READ],
    ["douglas-fir-interior-west", 4.8, 7.5, 11.8, SHRINK_READ],
    ["balsam-fir", 2.9, 6.9, 11.2, SHRINK_READ],
    ["grand-fir", 3.4, 7.5, 11.0, SHRINK_READ],
    ["white-fir", 3.3, 7.0, 9.8, SHRINK_READ],
    ["subalpine-fir", 2.6, 7.4, 9.4, SHRINK_READ],
    ["white-oak", 5.6, 10.5, 16.3, SHRINK_READ],
    ["eastern-hemlock", 3.0, 6.8, 9.7, SHRINK_MEMORY],
    ["western-hemlock", 4.2, 7.8, 12.4, SHRINK_MEMORY],
    ["western-larch", 4.5, 9.1, 14.0, SHRINK_MEMORY],
    ["eastern-white-pine", 2.1, 6.1, 8.2, SHRINK_MEMORY],
    ["loblolly-pine", 4.8, 7.4, 12.3, SHRINK_MEMORY],
    ["longleaf-pine", 5.1, 7.5, 12.2, SHRINK_MEMORY],
    ["lodgepole-pine", 4.3, 6.7, 11.1, SHRINK_MEMORY],
    ["ponderosa-pine", 3.9, 6.2, 9.7, SHRINK_MEMORY],
    ["redwood-old-growth", 2.6, 4.4, 6.8, SHRINK_MEMORY],
    ["redwood-young-growth", 2.2, 4.9, 7.0, SHRINK_MEMORY],
    ["black-spruce", 4.1, 6.8, 11.3, SHRINK_MEMORY],
    ["engelmann-spruce", 3.8, 7.1, 11.0, SHRINK_MEMORY],
    ["red-spruce", 3.8, 7.8, 11.8, SHRINK_MEMORY],
    ["sitka-spruce", 4.3, 7.5, 11.5, SHRINK_MEMORY],
    ["tamarack", 3.7, 7.4, 13.6, SHRINK_MEMORY],
  ] as const
).map(([key, radial, tangential, volumetric, source]) => ({
  key,
  value: { radial, tangential, volumetric },
  unit: "%",
  source,
  range: "green to oven-dry",
}));

const T53 = "Table 5-3, clear wood at 12% moisture";
const inTable53 = (via: string, confidence: "read" | "secondary" = "read"): Source => ({
  document: "Wood Handbook",
  table: T53,
  via,
  confidence,
});
const OWIC = inTable53("owic.oregonstate.edu");
const ENGDATA = inTable53("engdatabase.com");
const NHLA = inTable53("issuu.com, Wood Handbook page 107");
const T53_MEMORY = remembered("Wood Handbook", T53);
const PSI_PER_MPA = 145.038;

/** Printed in MPa and GPa: brought to psi, three figures. */
const fromMetric = (mpa: number, gpa: number) =>
  [mpa * PSI_PER_MPA, gpa * 1000 * PSI_PER_MPA].map((psi) => Number(psi.toPrecision(3))) as [number, number];

type ClearWood = readonly [string, number, number, number, Source];

/** Name, gravity at 12%, modulus of rupture psi, modulus of elasticity psi. */
const CLEAR_WOOD: readonly ClearWood[] = [
  ["douglas-fir", 0.48, 12_400, 1_950_000, OWIC],
  ["douglas-fir-interior-south", 0.46, ...fromMetric(82, 10.3), ENGDATA],
  ["western-larch", 0.52, 13_000, 1_870_000, OWIC],
  ["engelmann-spruce", 0.35, 9_300, 1_300_000, OWIC],
  ["western-hemlock", 0.45, 11_300, 1_630_000, OWIC],
  ["grand-fir", 0.39, 8_900, 1_570_000, OWIC],
  ["noble-fir", 0.39, 10_700, 1_720_000, OWIC],
  ["pacific-silver-fir", 0.43, 11_000, 1_760_000, OWIC],
  ["northern-white-cedar", 0.31, ...fromMetric(45, 5.5), ENGDATA],
  ["western-redcedar", 0.32, 7_500, 1_110_000, inTable53("timber sellers' pages", "secondary")],
  ["redwood-old-growth", 0.4, ...fromMetric(69, 9.2), NHLA],
  ["redwood-young-growth", 0.35, ...fromMetric(54, 7.6), NHLA],
  ["ponderosa-pine", 0.4, ...fromMetric(65, 8.9), NHLA],
  ["red-pine", 0.46, ...fromMetric(76, 11.2), NHLA],
  ["shortleaf-pine", 0.51, ...fromMetric(90, 12.1), NHLA],
  ["slash-pine", 0.59, ...fromMetric(112, 13.7), NHLA],
  ["eastern-white-pine", 0.35, 8_600, 1_240_000, T53_MEMORY],
  ["lodgepole-pine", 0.41, 9_400, 1_340_000, T53_MEMORY],
  ["loblolly-pine", 0.51, 12_800, 1_790_000, T53_MEMORY],
  ["longleaf-pine", 0.59, 14_500, 1_980_000, T53_MEMORY],
  ["eastern-hemlock", 0.4, 8_900, 1_200_000, T53_MEMORY],
  ["tamarack", 0.53, 11_600, 1_640_000, T53_MEMORY],
  ["balsam-fir", 0.35, 9_200, 1_450_000, T53_MEMORY],
  ["white-spruce", 0.36, 9_400, 1_430_000, T53_MEMORY],
  ["black-spruce", 0.42, 10_800, 1_610_000, T53_MEMORY],
  ["red-spruce", 0.4, 10_800, 1_610_000, T53_MEMORY],
  ["white-oak", 0.68, 15_200, 1_780_000, inTable53("timber sellers' pages", "secondary")],
];

/** Specific gravity from the oven-dry weight and the volume at 12% moisture. */
export const gravitiesAt12: readonly Row<number>[] = CLEAR_WOOD.map(([key, value, , , source]) => ({
  key,
  value,
  unit: "",
  source,
  range: "at 12% moisture",
}));

export const stiffnesses: readonly Row<Stiffness>[] = CLEAR_WOOD.map(
  ([key, , rupture, elasticity, source]) => ({
    key,
    value: { rupture, elasticity },
    unit: "psi",
    source,
    range: "clear wood at 12% moisture, averages",
  }),
);

const DECAY: Source = {
  document: "naval facilities manual MO-312",
  table: "Table 2-1, heartwood decay resistance",
  via: "navalfacilities.tpub.com",
  confidence: "read",
};
const DECAY_MEMORY = remembered("naval facilities manual MO-312", "Table 2-1, heartwood decay resistance");
const YOUNG_REDWOOD: Source = {
  document: "Wood Handbook FPL-GTR-190",
  table: "chapter 2, redwood",
  via: "issuhub.com 5801",
  confidence: "read",
};

const decay = (value: DecayClass, source: Source, ...names: readonly string[]): Row<DecayClass>[] =>
  names.map((key) => ({ key, value, unit: "", source, range: "heartwood only" }));

/** Heartwood only. A name that covers several woods takes the least of them. */
export const decayClasses: readonly Row<DecayClass>[] = [
  ...decay("exceptional", DECAY, "black-locust", "osage-orange", "red-mulberry", "pacific-yew"),
  ...decay(
    "resistant",
    DECAY,
    "western-redcedar",
    "northern-white-cedar",
    "yellow-cedar",
    "port-orford-cedar",
  ),
  ...decay("resistant", DECAY, "western-cedars", "redwood-old-growth", "white-oak", "black-cherry"),
  ...decay("resistant", DECAY, "black-walnut", "catalpa", "sassafras"),
  ...decay("moderate", YOUNG_REDWOOD, "redwood", "redwood-young-growth").map((row) => ({
    ...row,
    range: "heartwood only; young growth is low to moderate, old growth resistant",
  })),
  ...decay("moderate", DECAY, "baldcypress", "douglas-fir", "douglas-fir-interior-north"),
  ...decay("moderate", DECAY, "douglas-fir-interior-west", "douglas-fir-interior-south", "douglas-fir-larch"),
  ...decay(
    "moderate",
    DECAY,
    "western-larch",
    "tamarack",
    "eastern-white-pine",
    "longleaf-pine",
    "slash-pine",
  ),
  ...decay("slight", DECAY, "western-hemlock", "eastern-hemlock", "eastern-hemlock-tamarack"),
  ...decay("slight", DECAY, "engelmann-spruce", "white-spruce", "black-spruce", "red-spruce", "sitka-spruce"),
  ...decay(
    "slight",
    DECAY,
    "ponderosa-pine",
    "red-pine",
    "lodgepole-pine",
    "loblolly-pine",
    "shortleaf-pine",
  ),
  ...decay("slight", DECAY, "southern-pine", "red-oak", "ash", "birch", "maple", "beech", "poplar", "aspen"),
  ...decay("slight", DECAY_MEMORY, "balsam-fir", "grand-fir", "noble-fir", "pacific-silver-fir", "white-fir"),
  ...decay("slight", DECAY_MEMORY, "subalpine-fir", "spruce-pine-fir", "spruce-pine-fir-south", "hem-fir"),
];

/** Bought boards are largely sapwood, which resists as little as the worst. */
export const sapwoodDecay: Row<DecayClass> = {
  key: "sapwood of every species",
  value: "slight",
  unit: "",
  source: DECAY,
};

/** Woods graded under a group's stamp, and the group whose gravity they carry. */
export const groupOf: readonly Row<string>[] = (
  [
    ["western-redcedar", "western-cedars"],
    ["douglas-fir", "douglas-fir-larch"],
    ["douglas-fir-interior-north", "douglas-fir-larch"],
    ["douglas-fir-interior-west", "douglas-fir-larch"],
    ["western-larch", "douglas-fir-larch"],
    ["eastern-hemlock", "eastern-hemlock-tamarack"],
    ["tamarack", "eastern-hemlock-tamarack"],
    ["loblolly-pine", "southern-pine"],
    ["longleaf-pine", "southern-pine"],
    ["shortleaf-pine", "southern-pine"],
    ["slash-pine", "southern-pine"],
  ] as const
).map(([key, value]) => ({ key, value, unit: "", source: remembered("NDS", "species groups") }));

export const woodRows: readonly Row<unknown>[] = [
  ...ndsGravities,
  ...gravitiesAt12,
  ...shrinkages,
  ...stiffnesses,
  ...decayClasses,
  sapwoodDecay,
  ...groupOf,
];
