// Room that roots want: in a container, and in open ground. The two are different things and never compared with each other.
import type { Row, Source, Span } from "./row";

/** Room a crop wants in a container, kept apart from how deep its roots go in open ground. */
export interface Crop {
  readonly name: string;
  /** Gallons for one plant, or for a few small ones. */
  readonly container?: Row<Span>;
  /** Depth of fill in a container, inches. */
  readonly containerDepth?: Row<Span>;
  /** In open ground, inches. */
  readonly rootDepth?: Row<Span>;
}

export function crop(name: string): Crop | undefined {
  return crops.get(name);
}

/** The crop that a plan calls so: by its name, its plural, or as one of the kitchen herbs; undefined for one in no table. */
export function cropCalled(word: string): Crop | undefined {
  const singular = [word, word.replace(/s$/, ""), word.replace(/es$/, "")];
  for (const name of singular) {
    const known = crops.get(name) ?? (HERBS.has(name) ? crops.get("herbs") : undefined);
    if (known) return known;
  }
  return undefined;
}

/** Names of the crops known, in alphabetical order. */
export function cropNames(): readonly string[] {
  return [...crops.keys()].sort();
}

/** Kitchen herbs of one summer, and those that stay small. */
// biome-ignore format: a list of words
const HERBS: ReadonlySet<string> = new Set([
  "herb", "basil", "chervil", "chive", "cilantro", "coriander", "dill", "marjoram", "mint", "oregano", "parsley", "thyme",
]);

const UMD: Source = {
  document: "University of Maryland Extension, growing vegetables in containers",
  edition: "2023",
  via: "extension.umd.edu",
  confidence: "read",
};
const TEXAS: Source = {
  document: "Texas A&M EHT-062, vegetable gardening in containers",
  via: "docslib 12486142",
  confidence: "read",
};
const ROOTS: Source = {
  document: "rooting depths in open ground",
  via: "garden pages that follow extension tables",
  confidence: "secondary",
};

const CONTAINERS: readonly {
  names: readonly string[];
  gallons: Span;
  depth?: Span;
  source?: Source;
}[] = [
  { names: ["tomato", "pepper", "cucumber"], gallons: span(8, 10), depth: span(12, 16) },
  { names: ["summer-squash", "bean", "cabbage", "carrot"], gallons: span(4, 6), depth: span(8, 12) },
  { names: ["lettuce", "spinach", "herbs"], gallons: span(1, 3), depth: span(4, 6) },
  { names: ["eggplant"], gallons: span(5, 5), source: TEXAS },
  { names: ["broccoli"], gallons: span(2, 2), source: TEXAS },
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

export const rootRows: readonly Row<unknown>[] = [...crops.values()].flatMap(
  ({ container, containerDepth, rootDepth }) =>
    [container, containerDepth, rootDepth].filter((row) => row !== undefined),
);

function grown(name: string): Crop {
  const pot = CONTAINERS.find(({ names }) => names.includes(name));
  const ground = GROUND.find(({ names }) => names.includes(name));
  const source = pot?.source ?? UMD;
  return {
    name,
    container: pot && { key: `${name} container`, value: pot.gallons, unit: "gal", source },
    containerDepth: pot?.depth && {
      key: `${name} container depth`,
      value: pot.depth,
      unit: "in",
      source,
    },
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
