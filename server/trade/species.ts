// Woods by name: gravity on a stated basis, weight at a moisture, decay of the heartwood, and what else is printed.
import type { Row, Source, Span } from "./row";
import { COMMON_PRACTICE, FROM_MEMORY } from "./row";
import {
  type DecayClass,
  decayClasses,
  gravitiesAt12,
  groupOf,
  ndsGravities,
  type Shrinkage,
  type Stiffness,
  sapwoodDecay,
  shrinkages,
  stiffnesses,
  woodRows,
} from "./wood";

/** A wood, or a group of woods that are graded together. What no table prints is absent. */
export interface Species {
  readonly name: string;
  /** As a builder reads it: "western redcedar". */
  readonly title: string;
  /** The group whose grade stamp it carries. */
  readonly group?: string;
  /** Oven-dry basis (NDS), its own or its group's: for fasteners. */
  readonly gravity?: Row<number>;
  /** Volume at 12% moisture (Wood Handbook). */
  readonly gravityAt12?: Row<number>;
  /** Heartwood only. */
  readonly decay?: Row<DecayClass>;
  readonly shrinkage?: Row<Shrinkage>;
  readonly stiffness?: Row<Stiffness>;
}

/** A gravity on the oven-dry basis, with the row it was read or worked out from. */
export interface OvenDry {
  readonly gravity: number;
  readonly from: Row<number>;
}

/** Weight of wood in lb/cuft at a moisture in percent, with the row it was worked out from. */
export interface WoodWeight {
  readonly density: number;
  readonly moisture: number;
  readonly from: Row<number>;
}

/** What is taken for boards of no named species: said as an assumption wherever it is used. */
export interface AssumedSpecies {
  readonly name: string;
  /** Oven-dry basis. */
  readonly gravity: number;
  /** Percent moisture of boards sold dry, and of boards sold green. */
  readonly dryMoisture: number;
  readonly greenMoisture: number;
}

export function species(name: string): Species | undefined {
  return ALL.get(name);
}

/** Every known name, in alphabetical order. */
export function speciesNames(): readonly string[] {
  return NAMES;
}

/** Those called by a word that is no name yet, "pine" or "cedar": first those that lumber is graded and stamped as (NDS). */
export function speciesCalled(word: string): readonly string[] {
  if (word.length < 3) return [];
  const stamped = new Set(ndsGravities.map(({ key }) => key));
  const called = NAMES.filter((name) => name.split("-").some((one) => one.endsWith(word)));
  return [...called.filter((name) => stamped.has(name)), ...called.filter((name) => !stamped.has(name))];
}

/**
 * Weight of wood in lb/cuft: 62.4 [G / (1 + 0.009 G M)] (1 + M/100), with G on the oven-dry basis and M the moisture
 * in percent (NDS form, below fiber saturation).
 */
export function woodDensity(gravity: number, moisture: number): number {
  return WATER * (gravity / (1 + 0.009 * gravity * moisture)) * (1 + moisture / 100);
}

/** Oven-dry gravity from the gravity on the volume at a moisture in percent: the same form turned round. */
export function ovenDryGravity(gravityAtMoisture: number, moisture: number): number {
  return gravityAtMoisture / (1 - 0.009 * gravityAtMoisture * moisture);
}

/** The gravity that fasteners count on: the NDS value where there is one, else the Wood Handbook's brought to oven-dry. */
export function fasteningGravity(wood: Species): OvenDry | undefined {
  if (wood.gravity !== undefined) return { gravity: wood.gravity.value, from: wood.gravity };
  return handbookGravity(wood);
}

/** Weight at a moisture in percent: the heavier of what the tables give, since a light guess is the unsafe one. */
export function weightOf(wood: Species, moisture: number): WoodWeight | undefined {
  const known = [fasteningGravity(wood), handbookGravity(wood)].filter((one) => one !== undefined);
  const [heaviest] = known.sort((a, b) => b.gravity - a.gravity);
  if (heaviest === undefined) return undefined;
  return { density: woodDensity(heaviest.gravity, moisture), moisture, from: heaviest.from };
}

/** Decay class of boards of a wood: sapwood unless they were asked for as heartwood; undefined when not printed. */
export function decayOf(wood: Species, heartwood: boolean): Row<DecayClass> | undefined {
  return heartwood ? wood.decay : sapwoodDecay;
}

const WATER = 62.4;

const DENSITY_FORM: Source = {
  document: "NDS",
  table: "weight of wood, 62.4 [G / (1 + 0.009 G M)] (1 + M/100)",
  via: "engineeringtoolbox.com d_1616",
  confidence: "read",
};

/** The form behind `woodDensity`: its value is the weight of water, lb/cuft. */
export const woodDensityForm: Row<number> = {
  key: "weight of wood",
  value: WATER,
  unit: "lb/cuft",
  source: DENSITY_FORM,
};

export const assumedSpecies: Row<AssumedSpecies> = {
  key: "boards of no named species",
  value: { name: "spruce-pine-fir", gravity: 0.42, dryMoisture: 12, greenMoisture: 19 },
  unit: "",
  source: COMMON_PRACTICE,
  range: "assumed: spruce-pine-fir, specific gravity 0.42, 12% moisture sold dry, 19% sold green",
};

/** What lumber weighs that was treated lately and is still wet, whatever its wood. */
export const treatedWet: Row<Span> = {
  key: "freshly treated lumber, wet",
  value: { low: 45, high: 60 },
  unit: "lb/cuft",
  source: FROM_MEMORY,
};

export const speciesRows: readonly Row<unknown>[] = [
  ...woodRows,
  woodDensityForm,
  assumedSpecies,
  treatedWet,
];

function handbookGravity(wood: Species): OvenDry | undefined {
  const row = wood.gravityAt12;
  return row === undefined ? undefined : { gravity: ovenDryGravity(row.value, 12), from: row };
}

function byKey<V>(rows: readonly Row<V>[]): Map<string, Row<V>> {
  return new Map(rows.map((row) => [row.key, row]));
}

const GRAVITY = byKey(ndsGravities);
const AT_12 = byKey(gravitiesAt12);
const DECAY = byKey(decayClasses);
const SHRINKAGE = byKey(shrinkages);
const STIFFNESS = byKey(stiffnesses);
const GROUP = byKey(groupOf);

const TRADE_SPELLING: readonly (readonly [string, string])[] = [
  ["spruce-pine-fir", "spruce-pine-fir"],
  ["douglas-fir-larch", "Douglas fir-larch"],
  ["douglas-fir", "Douglas-fir"],
  ["hem-fir", "hem-fir"],
  ["eastern-hemlock-tamarack", "eastern hemlock-tamarack"],
  ["northern-white-cedar", "northern white-cedar"],
  ["port-orford-cedar", "Port-Orford-cedar"],
  ["yellow-cedar", "yellow-cedar"],
  ["engelmann-spruce", "Engelmann spruce"],
  ["sitka-spruce", "Sitka spruce"],
  ["osage-orange", "Osage-orange"],
  ["pacific", "Pacific"],
];

const NAMES: readonly string[] = [
  ...new Set([GRAVITY, AT_12, DECAY, SHRINKAGE, STIFFNESS].flatMap((table) => [...table.keys()])),
].sort();

const ALL: ReadonlyMap<string, Species> = new Map(NAMES.map((name) => [name, gathered(name)]));

function gathered(name: string): Species {
  const group = GROUP.get(name)?.value;
  return {
    name,
    title: titleOf(name),
    group,
    gravity: GRAVITY.get(name) ?? GRAVITY.get(group ?? ""),
    gravityAt12: AT_12.get(name),
    decay: DECAY.get(name),
    shrinkage: SHRINKAGE.get(name),
    stiffness: STIFFNESS.get(name),
  };
}

/** Hyphens become blanks, save where the trade writes them; proper names take their capital. */
function titleOf(name: string): string {
  const spelled = TRADE_SPELLING.find(([start]) => name.startsWith(start));
  if (spelled === undefined) return name.replaceAll("-", " ");
  const [start, written] = spelled;
  return written + name.slice(start.length).replaceAll("-", " ");
}
