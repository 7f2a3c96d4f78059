/** What the sheet says of the plan as a whole, of its rules, rings and boxes, and of what is measured corner to corner. */
import { cite, type LumberStandard, type Source } from "../../trade";
import type { Box, Wetness } from "../../worked";

const LUMBER: Readonly<Record<LumberStandard, string>> = {
  "ps20-dry": "PS 20, surfaced dry",
  "ps20-green": "PS 20, surfaced green",
  "planed-metric": "planed metric",
};

const DRAINS: Readonly<Record<NonNullable<Box["drains"]>, string>> = {
  gaps: "through the gaps",
  holes: "by drilled holes",
  nothing: "does not drain",
};

export const ENGLISH_PLAN = {
  untitled: "Untitled plan",

  /** What is not on the drawing, and why. */
  undrawn: {
    all: "a drawing",
    unplaced: "no `place` line says where a piece stands",
    unknown: "no `place` line could be worked out",
    some: (parts: string) => `${parts} on the drawing`,
    unknownPlaces: "it is not worked out where they stand",
  },

  facts: {
    writtenBy: "Written by",
    licence: "Licence",
    language: "Language",
    weight: "Weight",
    make: "Make",
    stands: "Stands",
    anchored: "Anchored to",
    space: "Space",
    wayIn: "Way in",
    floorLimit: "Floor limit",
    alsoOnFloor: "Also on the floor",
    footLimit: "Foot limit",
    budget: "Budget",
    lumber: "Lumber sizes",
    sawCut: "Saw cut",
    spares: "Spares",
    shop: "Shop",
    yard: "Timber yard",
    tools: "Tools",
  },
  languageVersion: (version: number) => `version ${version} of the plan language`,
  dryWood: (weight: string) => `${weight} of dry wood`,
  dryWoodEach: (weight: string) => `${weight} of dry wood, each`,
  makes: (n: number) => `${n} of the whole thing`,
  settings: { outdoors: "outdoors", indoors: "indoors" },
  nearChildren: "near children",
  nearGuard: "near a guard",
  sides: {
    wide: (length: string) => `${length} wide`,
    deep: (length: string) => `${length} deep`,
    high: (length: string) => `${length} high`,
  },
  /** `by` is empty where the plan does not say whose limit it is. */
  limit: (limit: string, by: string) => `${limit}${by === "" ? ", not said by whom" : ` by ${by}`}`,
  lumber: LUMBER,
  kerf: (kerf: string, from: "plan" | "tools" | "assumed") =>
    `${kerf} ${from === "assumed" ? "(taken for granted)" : `(from the ${from})`}`,
  sparesIn: (count: number, per: number) => `${count} in ${per}`,

  notChecked: "not checked",
  must: (value: string, holds: boolean) => `it is ${value}${holds ? "" : ": broken"}`,
  closes: "closes to the plan's marks",

  boxes: {
    inside: "Inside",
    holds: "Holds to the rim",
    /** A fill by the name the plan gives. */
    filled: (fill: string) => `Filled with ${fill}`,
    fill: (wetness: Wetness) => `Fill, ${wetness}`,
    weightsFrom: "Weights from",
    /** In full, with who reproduced it. */
    source: (source: Source) => cite(source),
    asSaid: "as the plan says",
    taken: (weight: number) =>
      `taken as ${weight} lb/cuft when saturated, like soil, since the plan does not say`,
    empty: "Box, empty",
    onFloor: "On the floor, saturated",
    limit: "Floor limit you typed",
    uses: (used: string, share: string) => `uses ${used} of the ${share} that is left of it`,
    drains: "Drains",
    drainsBy: DRAINS,
    grows: "Grows",
  },

  square: {
    ring: (name: string, count: number) =>
      `${name}${count > 1 ? `, each of ${count}` : ""}, from outside corner to outside corner`,
    box: (name: string) => `${name}, inside, at the rim`,
    feet: "the feet, from outside corner to outside corner on the floor",
  },
};
