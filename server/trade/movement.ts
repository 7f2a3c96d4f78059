// Wood and moisture: how much boards move, and how wet they are where they stand.
import { FROM_MEMORY, type Row, remembered, type Source } from "./row";

/** Change of size per 1% of moisture, as a share of the size. */
export interface MovementCoefficients {
  readonly radial?: number;
  readonly tangential: number;
}

/** Coefficients of a species, by its name in the species table. */
export function movementOf(name: string): Row<MovementCoefficients> | undefined {
  return movement.find(({ key }) => key === name);
}

/** Percent that lumber as sawn has shrunk from green in width or thickness at a moisture from 8 to 19 percent. */
export function sawnShrinkage(side: "width" | "thickness", moisture: number): number {
  const { start, perPercent } = sawnShrinkages[side].value;
  return start - perPercent * moisture;
}

const DIMENSIONAL_CHANGE = "Table 13-5, dimensional change coefficients";
const READ: Source = {
  document: "Wood Handbook FPL-GTR-190",
  table: DIMENSIONAL_CHANGE,
  via: "issuhub.com 5801",
  confidence: "read",
};
const SECONDARY: Source = { ...READ, via: "a flooring maker's web page", confidence: "secondary" };
const MEMORY = remembered("Wood Handbook FPL-GTR-190", DIMENSIONAL_CHANGE);

export const movement: readonly Row<MovementCoefficients>[] = (
  [
    ["white-oak", { radial: 0.0018, tangential: 0.00365 }, READ],
    ["red-oak", { radial: 0.00158, tangential: 0.00369 }, READ],
    ["douglas-fir", { tangential: 0.00267 }, SECONDARY],
    ["southern-pine", { tangential: 0.00265 }, SECONDARY],
    ["western-redcedar", { tangential: 0.00234 }, MEMORY],
    ["eastern-white-pine", { radial: 0.00071, tangential: 0.00212 }, MEMORY],
    ["white-fir", { radial: 0.00112, tangential: 0.00245 }, MEMORY],
  ] as const
).map(([key, value, source]) => ({ key, value, unit: "per 1%", source, range: "6 to 14% moisture" }));

/** Where no coefficient is known: 1% of the size for each 4% of moisture. */
export const movementThumb: Row<number> = {
  key: "movement, rule of thumb",
  value: 0.0025,
  unit: "per 1%",
  source: { document: "AWC FAQ", table: "dimensional change", confidence: "read" },
};

/** Moisture in percent over which wood no longer swells. */
export const fiberSaturation: Row<number> = {
  key: "fiber saturation",
  value: 30,
  unit: "%",
  source: remembered("Wood Handbook", "chapter 4"),
  range: "25 to 30%",
};

/**
 * Moisture in percent at which a wood starts to shrink on its way down, for the straight line of the shrinkage form, by a
 * name of the shrinkage table: `fiberSaturation` but for woods rich in extractives, whose coefficients are those of a line
 * from 22%.
 */
export function shrinksBelow(name: string): Row<number> {
  return earlySaturation.find(({ key }) => key === `${name} shrinks below`) ?? fiberSaturation;
}

export const earlySaturation: readonly Row<number>[] = [
  "western-redcedar",
  "northern-white-cedar",
  "redwood-old-growth",
  "redwood-young-growth",
].map((name) => ({
  key: `${name} shrinks below`,
  value: 22,
  unit: "%",
  source: remembered("Wood Handbook", "chapter 13, moisture in service"),
  range: "agrees with the coefficients of Table 13-5 for western redcedar",
}));

const SAWN: Source = {
  document: "FPL-RP-489",
  table: "abstract",
  via: "scribd.com 393303591",
  confidence: "read",
};

export const sawnShrinkages: Record<
  "width" | "thickness",
  Row<{ readonly start: number; readonly perPercent: number }>
> = {
  width: {
    key: "shrinkage of sawn width from green",
    value: { start: 6.031, perPercent: 0.215 },
    unit: "%",
    source: SAWN,
    range: "8 to 19% moisture, flat and quarter grain mixed",
  },
  thickness: {
    key: "shrinkage of sawn thickness from green",
    value: { start: 5.062, perPercent: 0.181 },
    unit: "%",
    source: SAWN,
    range: "8 to 19% moisture, flat and quarter grain mixed",
  },
};

/** Moisture that wood comes to at 70 °F, by the relative humidity in percent. */
export const equilibrium: readonly Row<number>[] = (
  [
    [30, 6.2],
    [50, 9.2],
    [65, 12],
    [80, 16],
    [90, 20.5],
  ] as const
).map(([humidity, value]) => ({
  key: `moisture at ${humidity}% humidity`,
  value,
  unit: "%",
  source: remembered("Wood Handbook", "Table 4-2"),
  range: "70 °F",
}));

export const usualMoisture: { readonly outdoors: Row<number>; readonly indoors: Row<number> } = {
  outdoors: {
    key: "moisture of sheltered wood outdoors",
    value: 12,
    unit: "%",
    source: FROM_MEMORY,
    range: "much of the US",
  },
  indoors: {
    key: "moisture of wood indoors",
    value: 8,
    unit: "%",
    source: FROM_MEMORY,
    range: "much of the US",
  },
};

/** Lumber standards say from what moisture down a board is dry, in percent. */
export const dryLumber: Row<number> = {
  key: "moisture of dry lumber, at most",
  value: 19,
  unit: "%",
  source: {
    document: "PS 20-20",
    table: "dressed dry sizes",
    via: "engineeringtoolbox.com d_1270",
    confidence: "read",
  },
};

export const movementRows: readonly Row<unknown>[] = [
  ...movement,
  movementThumb,
  fiberSaturation,
  ...earlySaturation,
  sawnShrinkages.width,
  sawnShrinkages.thickness,
  ...equilibrium,
  usualMoisture.outdoors,
  usualMoisture.indoors,
  dryLumber,
];
