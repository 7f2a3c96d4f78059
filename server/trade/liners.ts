// Liners and drainage of boxes.
import { FROM_MEMORY, type Row, type Source, type Span } from "./row";

/** A usual kind of liner. */
export interface Liner {
  readonly name: string;
  readonly title: string;
  readonly holdsWater: boolean;
  /** Past each rim, or over the next piece: inches as tape text. */
  readonly overlap: Row<string>;
}

export function liner(name: string): Liner | undefined {
  return liners.find((known) => known.name === name);
}

/** Names of the usual liners, in alphabetical order. */
export function linerNames(): readonly string[] {
  return liners.map(({ name }) => name).sort();
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

export const linerRows: readonly Row<unknown>[] = [
  ...liners.map(({ overlap }) => overlap),
  stapleSpacing,
  linerBelowRim,
  linerFold,
  drainHoles,
  drainSpacing,
];
