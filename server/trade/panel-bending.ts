// What plywood bears in bending, along and across the grain of its faces, by performance category.

import { MM_PER_FOOT, MM_PER_INCH, NEWTONS_PER_POUND } from "./metric";
import { usuallySoldAs } from "./panels";
import { type Row, remembered } from "./row";

/** Of a strip 1 mm wide, dry, under a load of ten years in all. */
export interface PanelCapacity {
  /** Bending it may bear: N mm per mm of width. */
  readonly strength: number;
  /** E I: N mm2 per mm of width. */
  readonly stiffness: number;
}

export interface PanelValues {
  readonly category: string;
  /** The span rating that panels of the category are usually stamped with. */
  readonly rating: string;
  /** Spanning the way the face grain runs, which is the long way of a sheet unless it says otherwise. */
  readonly along: PanelCapacity;
  readonly across: PanelCapacity;
  /** What strength and stiffness are multiplied by at 16% moisture and more. */
  readonly wet: { readonly strength: number; readonly stiffness: number };
}

/**
 * Bending of a rated sheathing panel of a performance category ("23/32", or "3/4" for what is sold as such), taken with
 * the fewest plies that the category is made with; undefined for categories with no row. Strip widths multiply it.
 */
export function panelValues(category: string): Row<PanelValues> | undefined {
  return BY_CATEGORY.get(category) ?? BY_CATEGORY.get(usuallySoldAs(category)?.value ?? "");
}

const WET = remembered("NDS Manual", "wet service of panels");
const PDS = remembered("APA Panel Design Specification, form D510", "Tables 4A and 4B, three-ply plywood");
const RATINGS = remembered("PS 1", "span ratings of sheathing by thickness");

/** lbf in per foot of width, and lbf in2 per foot of width: [strength, stiffness] along, then across the face grain. */
type Capacities = readonly [number, number, number, number];

export const ratedCapacities: readonly Row<Capacities>[] = (
  [
    ["24/0", [250, 66_000, 54, 3_600]],
    ["24/16", [320, 86_000, 64, 5_200]],
    ["32/16", [370, 125_000, 92, 8_100]],
    ["40/20", [625, 250_000, 150, 18_000]],
    ["48/24", [845, 440_000, 225, 29_500]],
  ] as const
).map(([rating, value]) => ({
  key: `panel bending, ${rating}`,
  value,
  unit: "lbf in, lbf in2, per foot of width",
  source: PDS,
  range: "rated sheathing, dry",
}));

/** The lowest rating that a category is usually stamped with. */
export const usualRatings: readonly Row<string>[] = (
  [
    ["3/8", "24/0"],
    ["7/16", "24/16"],
    ["15/32", "32/16"],
    ["1/2", "32/16"],
    ["19/32", "40/20"],
    ["5/8", "40/20"],
    ["23/32", "48/24"],
    ["3/4", "48/24"],
  ] as const
).map(([category, value]) => ({ key: `span rating, ${category}`, value, unit: "", source: RATINGS }));

export const panelWetFactors = {
  strength: { key: "panels, wet service, strength", value: 0.75, unit: "", source: WET },
  stiffness: { key: "panels, wet service, stiffness", value: 0.85, unit: "", source: WET },
} as const;

export const panelBendingRows: readonly Row<unknown>[] = [
  ...ratedCapacities,
  ...usualRatings,
  ...Object.values(panelWetFactors),
];

const BY_CATEGORY: ReadonlyMap<string, Row<PanelValues>> = new Map(
  usualRatings.flatMap(({ key, value: rating }) => {
    const category = key.slice("span rating, ".length);
    const row = ratedCapacities.find((one) => one.key === `panel bending, ${rating}`);
    return row === undefined ? [] : [[category, inMillimetres(category, rating, row)] as const];
  }),
);

function inMillimetres(category: string, rating: string, row: Row<Capacities>): Row<PanelValues> {
  const [alongStrength, alongStiffness, acrossStrength, acrossStiffness] = row.value;
  const of = (strength: number, stiffness: number): PanelCapacity => ({
    strength: (strength * NEWTONS_PER_POUND * MM_PER_INCH) / MM_PER_FOOT,
    stiffness: (stiffness * NEWTONS_PER_POUND * MM_PER_INCH ** 2) / MM_PER_FOOT,
  });
  const wet = { strength: panelWetFactors.strength.value, stiffness: panelWetFactors.stiffness.value };
  const along = of(alongStrength, alongStiffness);
  const across = of(acrossStrength, acrossStiffness);
  return { ...row, key: category, unit: "per mm", value: { category, rating, along, across, wet } };
}
