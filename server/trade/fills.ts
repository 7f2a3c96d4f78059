// What goes into a box, and what it weighs: dry, moist and saturated. Loads are judged saturated.
import { FROM_MEMORY, type Row, remembered, type Source } from "./row";

/**
 * A built-in fill, lb/cuft. `dry` is the light end of what is published (light is worse for tipping) and `saturated`
 * the heavy end (heavy is worse for floors, bottoms and walls); `moist` lies between and may be unknown.
 */
export interface Fill {
  readonly name: string;
  readonly title: string;
  readonly dry: Row<number>;
  readonly moist?: Row<number>;
  readonly saturated: Row<number>;
}

/** The built-in fill of a kebab name; undefined when there is none. */
export function fill(name: string): Fill | undefined {
  return fills.find((known) => known.name === name);
}

/** Names of the built-in fills, in alphabetical order. */
export function fillNames(): readonly string[] {
  return fills.map(({ name }) => name).sort();
}

type Weight = readonly [value: number, source: Source, range?: string];

const EARTH: Source = {
  document: "engineeringtoolbox.com d_1349",
  table: "densities, loose and rammed earth",
  confidence: "read",
};
const ENGINEER: Source = {
  document: "an engineer's advice, 2003",
  via: "seaintarchive 2003c msg00515",
  confidence: "read",
};
const HUD: Source = {
  document: "HUD Residential Structural Design Guide",
  table: "Table 3.5, guide soils",
  via: "1library.net",
  confidence: "read",
};
const POTTING: Source = {
  document: "densities of retail potting mix",
  via: "garden pages",
  confidence: "secondary",
};
const CLAY: Source = { document: "densities of soils", via: "web pages", confidence: "secondary" };
const ASCE = remembered("ASCE 7", "Table C3, weights of materials");
const WATER: Weight = [62.4, FROM_MEMORY];

export const fills: readonly Fill[] = [
  made("soil", "soil", {
    dry: [75, EARTH, "loose earth; rammed 100"],
    moist: [100, ENGINEER],
    saturated: [125, ENGINEER, "soaked"],
  }),
  made("topsoil", "topsoil", {
    dry: [70, FROM_MEMORY, "70 to 80"],
    moist: [100, ENGINEER, "90 to 100"],
    saturated: [125, ENGINEER, "110 to 125"],
  }),
  made("potting-mix", "potting mix", {
    dry: [12, POTTING, "12 to 30"],
    moist: [50, POTTING, "40 to 60"],
    saturated: [75, POTTING, "60 to 75"],
  }),
  made("compost", "compost", {
    dry: [25, FROM_MEMORY, "25 to 40"],
    moist: [48, FROM_MEMORY, "40 to 55"],
    saturated: [65, FROM_MEMORY, "55 to 65"],
  }),
  made("raised-bed-mix", "raised-bed mix, half topsoil and half compost", {
    dry: [55, FROM_MEMORY],
    moist: [75, FROM_MEMORY, "70 to 80"],
    saturated: [100, FROM_MEMORY, "90 to 100"],
  }),
  made("sand", "sand", {
    dry: [90, FROM_MEMORY, "90 to 100"],
    moist: [115, HUD, "sand and gravel"],
    saturated: [130, FROM_MEMORY, "120 to 130"],
  }),
  made("gravel", "gravel", {
    dry: [100, FROM_MEMORY, "100 to 105"],
    moist: [115, HUD, "sand and gravel"],
    saturated: [120, FROM_MEMORY],
  }),
  made("clay", "clay", {
    dry: [63, CLAY, "63 to 100"],
    moist: [100, HUD],
    saturated: [110, ASCE],
  }),
  made("water", "water", { dry: WATER, moist: WATER, saturated: WATER }),
];

export const fillRows: readonly Row<unknown>[] = fills.flatMap(({ dry, moist, saturated }) =>
  moist === undefined ? [dry, saturated] : [dry, moist, saturated],
);

function made(
  name: string,
  title: string,
  weights: { dry: Weight; moist?: Weight; saturated: Weight },
): Fill {
  const row = (state: string, [value, source, range]: Weight): Row<number> => ({
    key: `${name} ${state}`,
    value,
    unit: "lb/cuft",
    source,
    range,
  });
  return {
    name,
    title,
    dry: row("dry", weights.dry),
    moist: weights.moist === undefined ? undefined : row("moist", weights.moist),
    saturated: row("saturated", weights.saturated),
  };
}
