// Water on wood: what lets it run off, and how wet and how dry boards become where they stand.
import { equilibrium, fiberSaturation, usualMoisture } from "./movement";
import { COMMON_PRACTICE, type Row } from "./row";

/** The least width of a gap that drains: narrower ones swell shut or clog. Inches as tape text. */
export const leastDrainGap: Row<string> = {
  key: "narrowest gap that drains",
  value: "1/8",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** The least fall of a flat top in the rain, as a share of the way the water runs. */
export const runOff: Row<number> = {
  key: "fall of a flat top in the rain",
  value: 1 / 50,
  unit: "",
  source: COMMON_PRACTICE,
  range: "1 in 50 and steeper",
};

/** Where a board stands: in the weather, inside, or beside fill that is watered. */
export type Wetting = "outdoors" | "indoors" | "wet soil";

/** Moisture in percent that boards come to in the wettest and in the driest part of the year. */
export const yearlyMoisture: Readonly<
  Record<Wetting, { readonly wettest: Row<number>; readonly driest: Row<number> }>
> = {
  outdoors: { wettest: atHumidity(90), driest: atHumidity(50) },
  indoors: { wettest: atHumidity(65), driest: atHumidity(30) },
  // A box that was emptied dries like other wood outdoors.
  "wet soil": { wettest: fiberSaturation, driest: usualMoisture.outdoors },
};

function atHumidity(percent: number): Row<number> {
  return equilibrium.find(({ key }) => key === `moisture at ${percent}% humidity`)!;
}

export const waterRows: readonly Row<unknown>[] = [leastDrainGap, runOff];
