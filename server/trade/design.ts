// Reference design values of graded lumber 2 to 4 in thick, and the factors that go with them. Every figure made from
// these is an estimate for small builds.
import { type Row, remembered, type Source } from "./row";

/** No. 2 grade, psi. Where bending goes by width, `bending` is the least of the widths listed. */
export interface DesignValues {
  readonly grade: "No. 2";
  readonly bending: number;
  readonly elasticity: number;
  readonly shear: number;
  /** Compression across the grain. */
  readonly bearing: number;
}

/** Values of a species group by its name in the species table; undefined when none is known. */
export function designValues(group: string): Row<DesignValues> | undefined {
  return references.find(({ key }) => key === group);
}

/** Bending in psi of southern pine No. 2 of a nominal width (4 to 12): size is already in it. */
export function southernPineBending(nominalWidth: number): Row<number> | undefined {
  return southernPineWidths.find(({ key }) => key === `southern-pine 2x${nominalWidth} bending`);
}

/** Size factor on bending for a nominal width in inches; groups other than southern pine. */
export function sizeFactor(nominalWidth: number): Row<number> | undefined {
  return sizeFactors.find(({ key }) => key === `size factor, ${Math.max(4, nominalWidth)} in wide`);
}

/** Flat-use factor on bending for a nominal width in inches, 2 to 3 in thick, laid flat. */
export function flatUseFactor(nominalWidth: number): Row<number> | undefined {
  return flatUseFactors.find(({ key }) => key === `flat use factor, ${Math.min(10, nominalWidth)} in wide`);
}

const T4A: Source = {
  document: "NDS Supplement 2018",
  table: "Table 4A",
  via: "an open-source structural library (xc)",
  confidence: "read",
};
const T4A_MEMORY = remembered("NDS Supplement 2018", "Table 4A");
const T4A_CEDARS: Source = { ...T4A, via: "an open-source set of lumber design values" };
const SOUTHERN_PINE = remembered("NDS Supplement 2018", "Southern Pine, by size");
const FACTORS: Source = { ...T4A, table: "Table 4A, adjustment factors" };
const DURATION: Source = { ...T4A, document: "NDS 2018", table: "Table 2.3.2, load duration" };
const CREEP = remembered("NDS", "3.5.2, long-term deflection");

export const references: readonly Row<DesignValues>[] = (
  [
    ["spruce-pine-fir", 875, 1_400_000, 135, 425, T4A],
    ["douglas-fir-larch", 900, 1_600_000, 180, 625, T4A],
    ["hem-fir", 850, 1_300_000, 150, 405, T4A],
    ["southern-pine", 750, 1_400_000, 175, 565, SOUTHERN_PINE],
    ["western-cedars", 700, 1_000_000, 155, 425, T4A_CEDARS],
    ["redwood", 925, 1_200_000, 160, 650, T4A_MEMORY],
    ["spruce-pine-fir-south", 775, 1_100_000, 135, 335, T4A_MEMORY],
    ["eastern-white-pine", 575, 1_100_000, 135, 350, T4A_MEMORY],
    ["northern-white-cedar", 550, 700_000, 120, 370, T4A_MEMORY],
    ["eastern-hemlock-tamarack", 575, 1_100_000, 170, 555, T4A_MEMORY],
    ["western-woods", 675, 1_000_000, 135, 335, T4A_MEMORY],
    ["yellow-cedar", 800, 1_200_000, 165, 525, T4A_MEMORY],
    ["red-oak", 800, 1_200_000, 170, 820, T4A_MEMORY],
    ["white-oak", 850, 900_000, 220, 800, T4A_MEMORY],
  ] as const
).map(([key, bending, elasticity, shear, bearing, source]) => ({
  key,
  value: { grade: "No. 2", bending, elasticity, shear, bearing },
  unit: "psi",
  source,
  range: "2 to 4 in thick; not for 1x boards",
}));

export const southernPineWidths: readonly Row<number>[] = (
  [
    [4, 1100],
    [6, 1000],
    [8, 925],
    [10, 800],
    [12, 750],
  ] as const
).map(([width, value]) => ({
  key: `southern-pine 2x${width} bending`,
  value,
  unit: "psi",
  source: SOUTHERN_PINE,
  range: "No. 2; size is in it already",
}));

export const sizeFactors: readonly Row<number>[] = (
  [
    [4, 1.5],
    [5, 1.4],
    [6, 1.3],
    [8, 1.2],
    [10, 1.1],
    [12, 1],
  ] as const
).map(([width, value]) => ({
  key: `size factor, ${width} in wide`,
  value,
  unit: "",
  source: FACTORS,
  range: "bending; 4 stands for 2 to 4",
}));

export const flatUseFactors: readonly Row<number>[] = (
  [
    [4, 1.1],
    [6, 1.15],
    [8, 1.15],
    [10, 1.2],
  ] as const
).map(([width, value]) => ({
  key: `flat use factor, ${width} in wide`,
  value,
  unit: "",
  source: FACTORS,
  range: "bending, 2 to 3 in thick; 10 stands for 10 and wider",
}));

export const repetitiveFactor = factor(
  "repetitive members, bending",
  1.15,
  FACTORS,
  "three or more share a load",
);

/** Load duration: on stress and fasteners, not on stiffness or bearing. Soil is permanent. */
export const durationFactors = {
  permanent: factor("duration, permanent", 0.9, DURATION),
  tenYears: factor("duration, ten years", 1, DURATION),
  twoMonths: factor("duration, two months", 1.15, DURATION),
  sevenDays: factor("duration, seven days", 1.25, DURATION),
  tenMinutes: factor("duration, ten minutes", 1.6, DURATION),
  impact: factor("duration, impact", 2, DURATION),
} as const;

/** Over 19% moisture in service. Bending keeps all of its strength where bending x size factor is at most 1150 psi. */
export const wetFactors = {
  bending: factor("wet service, bending", 0.85, FACTORS),
  shear: factor("wet service, shear", 0.97, FACTORS),
  bearing: factor("wet service, bearing", 0.67, FACTORS),
  elasticity: factor("wet service, stiffness", 0.9, FACTORS),
} as const;

export const wetBendingExempt: Row<number> = {
  key: "wet service, bending x size factor that needs no reduction",
  value: 1150,
  unit: "psi",
  source: FACTORS,
};

export const creepFactors = {
  seasonedDry: factor("creep, seasoned and kept dry", 1.5, CREEP),
  wet: factor("creep, unseasoned or wet in service", 2, CREEP),
} as const;

export const designRows: readonly Row<unknown>[] = [
  ...references,
  ...southernPineWidths,
  ...sizeFactors,
  ...flatUseFactors,
  repetitiveFactor,
  ...Object.values(durationFactors),
  ...Object.values(wetFactors),
  wetBendingExempt,
  ...Object.values(creepFactors),
];

function factor(key: string, value: number, source: Source, range?: string): Row<number> {
  return range === undefined ? { key, value, unit: "", source } : { key, value, unit: "", source, range };
}
