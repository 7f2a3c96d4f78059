// Strength of clear wood, green, and how it becomes what a board may be stressed to that no table of graded lumber covers.
import type { BendingFactor } from "./bending";
import { type Row, remembered, type Source } from "./row";

const T53_GREEN = "Table 5-3, clear wood, green";
const T53 = remembered("Wood Handbook FPL-GTR-190", T53_GREEN);
const ENGDATA: Source = {
  document: "Wood Handbook FPL-GTR-190",
  table: T53_GREEN,
  via: "engdatabase.com",
  confidence: "read",
};

/** Average modulus of rupture of clear green wood, psi. */
export const greenRuptures: readonly Row<number>[] = (
  [
    ["douglas-fir", 7_700],
    ["douglas-fir-interior-north", 7_400],
    ["douglas-fir-interior-south", 6_800],
    ["douglas-fir-interior-west", 7_700],
    ["western-larch", 7_700],
    ["western-hemlock", 6_600],
    ["grand-fir", 5_800],
    ["noble-fir", 6_200],
    ["pacific-silver-fir", 6_400],
    ["white-fir", 5_900],
    ["subalpine-fir", 4_900],
    ["balsam-fir", 5_500],
    ["engelmann-spruce", 4_700],
    ["white-spruce", 5_000],
    ["black-spruce", 6_100],
    ["red-spruce", 6_000],
    ["sitka-spruce", 5_700],
    ["lodgepole-pine", 5_500],
    ["ponderosa-pine", 5_100],
    ["red-pine", 5_800],
    ["eastern-white-pine", 4_900],
    ["loblolly-pine", 7_300],
    ["longleaf-pine", 8_500],
    ["shortleaf-pine", 7_400],
    ["slash-pine", 8_700],
    ["western-redcedar", 5_200],
    ["northern-white-cedar", 4_200, ENGDATA],
    ["yellow-cedar", 6_400],
    ["port-orford-cedar", 6_600],
    ["redwood-old-growth", 7_500],
    ["redwood-young-growth", 5_900],
    ["baldcypress", 6_600],
    ["eastern-hemlock", 6_400],
    ["tamarack", 7_200],
    ["white-oak", 8_300],
    ["red-oak", 8_300],
  ] as readonly (readonly [string, number, Source?])[]
).map(([key, value, source = T53]) => ({ key, value, unit: "psi", source, range: "averages" }));

/** Stiffness at 12% moisture of woods that the table of both values has not, psi. */
export const otherElasticities: readonly Row<number>[] = (
  [
    ["douglas-fir-interior-north", 1_790_000],
    ["douglas-fir-interior-west", 1_830_000],
    ["white-fir", 1_500_000],
    ["subalpine-fir", 1_290_000],
    ["sitka-spruce", 1_570_000],
    ["yellow-cedar", 1_420_000],
    ["port-orford-cedar", 1_700_000],
    ["baldcypress", 1_440_000],
    ["red-oak", 1_820_000],
  ] as const
).map(([key, value]) => ({
  key,
  value,
  unit: "psi",
  source: remembered("Wood Handbook FPL-GTR-190", "Table 5-3, clear wood at 12% moisture"),
  range: "averages",
}));

const D245 = remembered("ASTM D245", "allowable properties from clear wood");
const CHAPTER_7 = remembered("Wood Handbook FPL-GTR-190", "chapter 7, stress grades");

/** How an average becomes an allowable stress for bending, factor by factor. */
export const clearWoodReduction = {
  /** Standard deviation of rupture over its average. */
  variation: factor("clear wood, variation of bending strength", 0.16, CHAPTER_7),
  /** Standard deviations below the average, where one piece in twenty lies. */
  exclusion: factor("clear wood, 5% exclusion", 1.645, D245),
  /** Ten years under load, and a margin. */
  divisor: factor("clear wood, bending divided by", 2.1, D245),
  /** What knots and slope of grain leave of the strength in a No. 2 board. */
  strengthRatio: factor("clear wood, strength ratio of No. 2", 0.45, CHAPTER_7),
  /** What drying to 19% adds to green strength; the stress of wet wood does without it. */
  seasoning: factor("clear wood, seasoned to 19%, bending", 1.25, D245),
  /** The power of (2 in / depth) for boards deeper than 2 in. */
  depthPower: factor("clear wood, power of 2 in over the depth", 1 / 9, D245),
} as const;

/**
 * What a sound dry board may be stressed to in bending, from the average strength of clear green wood, in its unit:
 * rupture x (1 - 1.645 x 0.16) / 2.1 x 0.45 x 1.25 x (2 in / depth)^(1/9), the last for boards deeper than 2 in the way
 * they bend. That is the way of ASTM D245 (Wood Handbook chapter 7), with knots taken to be no worse than those of
 * No. 2 lumber. `depth` in mm.
 */
export const clearWoodBending = (rupture: number, depth: number): number =>
  clearWoodFactors(depth).reduce((product, { by }) => product * by, rupture);

/** Each of those factors; that of the size only where it counts. */
export function clearWoodFactors(depth: number): BendingFactor[] {
  const { variation, exclusion, divisor, strengthRatio, seasoning, depthPower } = clearWoodReduction;
  const size = Math.min(1, (TWO_INCHES / depth) ** depthPower.value);
  return [
    { what: "one in twenty", by: 1 - exclusion.value * variation.value },
    { what: "margin", by: 1 / divisor.value },
    { what: "knots", by: strengthRatio.value },
    { what: "dry", by: seasoning.value },
    ...(size < 1 ? [{ what: "size" as const, by: size }] : []),
  ];
}

const TWO_INCHES = 50.8;

export const clearWoodRows: readonly Row<unknown>[] = [
  ...greenRuptures,
  ...otherElasticities,
  ...Object.values(clearWoodReduction),
];

function factor(key: string, value: number, source: Source): Row<number> {
  return { key, value, unit: "", source };
}
