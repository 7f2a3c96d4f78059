// Finishes: how far a gallon goes on one coat, how long to wait, how long it lasts.
import { COMMON_PRACTICE, FROM_MEMORY, type Row, type Source, type Span } from "./row";

/** A usual kind of finish. Coverage is sqft per gallon and coat; recoating is hours between coats. */
export interface Finish {
  readonly name: string;
  readonly title: string;
  readonly smooth: Row<Span>;
  /** On saw-textured or weathered wood. */
  readonly rough?: Row<Span>;
  readonly recoat?: Row<Span>;
}

export function finish(name: string): Finish | undefined {
  return finishes.find((known) => known.name === name);
}

/** Names of the usual finishes, in alphabetical order. */
export function finishNames(): readonly string[] {
  return finishes.map(({ name }) => name).sort();
}

const STAIN: Source = {
  document: "Wood Handbook",
  table: "chapter 16, semitransparent penetrating stain",
  via: "issuhub.com 5801",
  confidence: "read",
};

export const finishes: readonly Finish[] = [
  {
    name: "exterior-paint",
    title: "exterior paint",
    smooth: coverage("exterior paint, smooth", 350, 400, FROM_MEMORY),
    recoat: hours("exterior paint", 4, 16),
  },
  {
    name: "oil-finish",
    title: "oil finish (linseed, tung)",
    smooth: coverage("oil finish, smooth", 200, 400, FROM_MEMORY),
    recoat: hours("oil finish", 12, 48),
  },
  {
    name: "penetrating-stain",
    title: "semitransparent penetrating stain",
    smooth: coverage("penetrating stain, smooth", 200, 400, STAIN),
    rough: coverage("penetrating stain, rough", 100, 200, STAIN),
    recoat: hours("oil stain", 12, 48),
  },
  {
    name: "water-repellent",
    title: "clear water repellent",
    smooth: coverage("water repellent, smooth", 150, 250, FROM_MEMORY),
  },
];

/** End grain drinks this many times what a face does. */
export const endGrainThirst: Row<Span> = {
  key: "finish on end grain, times the face",
  value: { low: 2, high: 3 },
  unit: "",
  source: FROM_MEMORY,
};

/**
 * Rough wood drinks this many times what smooth wood does: semitransparent stain goes 200 to 400 sqft per gal on smooth
 * wood and 100 to 200 on rough, the only finish for which both are printed.
 */
export const roughThirst: Row<number> = {
  key: "finish on rough wood, times smooth wood",
  value: 2,
  unit: "",
  source: STAIN,
  range: "printed for stain; taken for other finishes too",
};

/** Coats where neither the plan nor the tin says. */
export const usualCoats: Row<number> = {
  key: "coats of a finish",
  value: 2,
  unit: "",
  source: COMMON_PRACTICE,
};

/** Years that penetrating stain lasts. */
export const stainService: readonly Row<Span>[] = [
  {
    key: "stain, two coats on rough wood",
    value: { low: 0, high: 10 },
    unit: "years",
    source: STAIN,
    range: "up to",
  },
  { key: "stain, one coat on smooth new wood", value: { low: 2, high: 4 }, unit: "years", source: STAIN },
];

/** Minutes between two coats of penetrating stain laid wet on wet on rough wood. */
export const wetOnWet: Row<Span> = {
  key: "stain on rough wood, second coat wet on wet",
  value: { low: 20, high: 60 },
  unit: "min",
  source: STAIN,
  range: "wipe the excess about 1 h later",
};

/** Weeks that fresh treated lumber dries before it takes a finish. */
export const treatedWait: Row<Span> = {
  key: "treated lumber, wait before a finish",
  value: { low: 2, high: 4 },
  unit: "weeks",
  source: FROM_MEMORY,
  range: "or more: it is ready when sprinkled water soaks in",
};

export const finishRows: readonly Row<unknown>[] = [
  ...finishes.flatMap(({ smooth, rough, recoat }) =>
    [smooth, rough, recoat].filter((row) => row !== undefined),
  ),
  endGrainThirst,
  roughThirst,
  usualCoats,
  ...stainService,
  wetOnWet,
  treatedWait,
];

function coverage(key: string, low: number, high: number, source: Source): Row<Span> {
  return { key: `coverage of ${key}`, value: { low, high }, unit: "sqft/gal", source };
}

function hours(key: string, low: number, high: number): Row<Span> {
  return { key: `${key}, hours between coats`, value: { low, high }, unit: "h", source: FROM_MEMORY };
}
