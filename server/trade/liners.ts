// Liners and drainage of boxes, and what room plants need in them.
import { FROM_MEMORY, type Row, type Source, type Span } from "./row";

/** A usual kind of liner. */
export interface Liner {
  readonly name: string;
  readonly title: string;
  readonly holdsWater: boolean;
  /** Past each rim, or over the next piece: inches as tape text. */
  readonly overlap: Row<string>;
}

/** Room a crop wants in a container, kept apart from how deep its roots go in open ground. */
export interface Crop {
  readonly name: string;
  /** Gallons per container. */
  readonly container?: Row<Span>;
  /** Least depth of fill in a container, inches. */
  readonly containerDepth?: Row<Span>;
  /** In open ground, inches. */
  readonly rootDepth?: Row<Span>;
}

export function liner(name: string): Liner | undefined {
  return liners.find((known) => known.name === name);
}

/** Names of the usual liners, in alphabetical order. */
export function linerNames(): readonly string[] {
  return liners.map(({ name }) => name).sort();
}

export function crop(name: string): Crop | undefined {
  return crops.get(name);
}

/** Names of the crops known, in alphabetical order. */
export function cropNames(): readonly string[] {
  return [...crops.keys()].sort();
}

const GARDEN: Source = {
  document: "landscape fabric, laying it",
  via: "garden pages",
  confidence: "secondary",
};
const POND: Source = {
  document: "pond liner sizes",
  via: "a pond-keeping magazine",
  confidence: "read",
};
const HOLES: Source = {
  document: "Iowa State, drainage of containers",
  via: "scribd.com 16101997",
  confidence: "read",
};
const UMD: Source = {
  document: "University of Maryland Extension, growing vegetables in containers",
  edition: "2023",
  via: "extension.umd.edu",
  confidence: "read",
};
const ROOTS: Source = {
  document: "rooting depths in open ground",
  via: "garden pages that follow extension tables",
  confidence: "secondary",
};

export const liners: readonly Liner[] = [
  {
    name: "landscape-fabric",
    title: "landscape fabric",
    holdsWater: false,
    overlap: { key: "landscape fabric overlap", value: "6", unit: "in", source: GARDEN },
  },
  {
    name: "pond-liner",
    title: "pond liner",
    holdsWater: true,
    overlap: { key: "pond liner overlap", value: "6", unit: "in", source: POND, range: "past each rim" },
  },
];

/** Inches between staples along the top edge of a liner. */
export const stapleSpacing: Row<Span> = {
  key: "liner staples along the top edge",
  value: { low: 2, high: 4 },
  unit: "in",
  source: FROM_MEMORY,
  range: "little known: taken with doubt",
};

/** Inches a liner stays below the rim. */
export const linerBelowRim: Row<string> = {
  key: "liner below the rim",
  value: "1",
  unit: "in",
  source: FROM_MEMORY,
  range: "little known: taken with doubt",
};

/** Inches of liner past the rim on every side where the plan says nothing of a fold: stapled, then trimmed. */
export const linerFold: Row<string> = {
  key: "liner past the rim of a box",
  value: "2",
  unit: "in",
  source: FROM_MEMORY,
  range: "little known: taken with doubt; what is too much is trimmed",
};

/** Drain holes: at least so many of this diameter around the bottom. */
export const drainHoles: Row<{ readonly count: number; readonly diameter: string }> = {
  key: "drain holes of a container",
  value: { count: 4, diameter: "1/4" },
  unit: "in",
  source: HOLES,
  range: "four or more",
};

/** Drain holes of a larger box: this diameter, so far apart in inches. */
export const drainSpacing: Row<{ readonly diameter: string; readonly apart: Span }> = {
  key: "drain holes of a long box",
  value: { diameter: "1/2", apart: { low: 6, high: 8 } },
  unit: "in",
  source: FROM_MEMORY,
};

const CONTAINERS: readonly { names: readonly string[]; gallons: Span; depth: Span }[] = [
  { names: ["tomato", "pepper", "cucumber"], gallons: span(8, 10), depth: span(12, 16) },
  { names: ["summer-squash", "bean", "cabbage", "carrot"], gallons: span(4, 6), depth: span(8, 12) },
  { names: ["lettuce", "spinach", "herbs"], gallons: span(1, 3), depth: span(4, 6) },
];

const GROUND: readonly { names: readonly string[]; depth: Span; range?: string }[] = [
  { names: ["lettuce", "onion", "radish", "cabbage", "broccoli", "corn", "potato"], depth: span(12, 18) },
  { names: ["bean", "beet", "carrot", "cucumber", "pepper", "chard"], depth: span(18, 24) },
  {
    names: ["tomato", "winter-squash", "parsnip", "asparagus"],
    depth: span(24, 36),
    range: "and deeper",
  },
];

const crops: ReadonlyMap<string, Crop> = new Map(
  [...new Set([...CONTAINERS, ...GROUND].flatMap(({ names }) => names))].map((name) => [name, grown(name)]),
);

export const linerRows: readonly Row<unknown>[] = [
  ...liners.map(({ overlap }) => overlap),
  stapleSpacing,
  linerBelowRim,
  linerFold,
  drainHoles,
  drainSpacing,
  ...[...crops.values()].flatMap(({ container, containerDepth, rootDepth }) =>
    [container, containerDepth, rootDepth].filter((row) => row !== undefined),
  ),
];

function grown(name: string): Crop {
  const pot = CONTAINERS.find(({ names }) => names.includes(name));
  const ground = GROUND.find(({ names }) => names.includes(name));
  return {
    name,
    container: pot && { key: `${name} container`, value: pot.gallons, unit: "gal", source: UMD },
    containerDepth: pot && { key: `${name} container depth`, value: pot.depth, unit: "in", source: UMD },
    rootDepth: ground && {
      key: `${name} roots in open ground`,
      value: ground.depth,
      unit: "in",
      source: ROOTS,
      range: ground.range,
    },
  };
}

function span(low: number, high: number): Span {
  return { low, high };
}
