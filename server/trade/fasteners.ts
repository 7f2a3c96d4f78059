// Nails, lag screws and bolts by size, how hard the steel of a fastener bends, and what is left of its strength where it is.
import { type Row, remembered, type Source } from "./row";

/** A nail by its penny size: inches as tape text. The shank is what its strength counts on. */
export interface Nail {
  readonly length: string;
  readonly shank: string;
  readonly head: string;
}

/** A lag screw or bolt by its nominal diameter: inches as tape text. */
export interface Lag {
  readonly diameter: string;
  readonly root: string;
  /** The tapered tip, which holds nothing. */
  readonly tip: string;
}

/** The size of a nail: "8d common"; undefined when it is not in the table. */
export function nailSize(name: string): Row<Nail> | undefined {
  return nails.find(({ key }) => key === `${name} nail`);
}

/** The lag screw of a nominal diameter ("3/8"). */
export function lagSize(diameter: string): Row<Lag> | undefined {
  return lags.find(({ value }) => value.diameter === diameter);
}

/**
 * Bending yield strength by the shank's diameter in inches: of screws, nails and lags of plain steel. Undefined for a
 * shank over the table's last (3/8 in), where `boltYield` holds.
 */
export function bendingYieldOf(shank: number): Row<Yield> | undefined {
  return shank > 0 ? bendingYield.find(({ value }) => shank <= value.upTo + 1e-9) : undefined;
}

/** A yield strength in psi, and the thickest shank in inches that it holds for. */
export interface Yield {
  readonly upTo: number;
  readonly psi: number;
}

const L4 = remembered("NDS", "Appendix L, Table L4, nails");
const COPIED: Source = { ...L4, via: "a builders' forum", confidence: "secondary" };
const MAILED: Source = {
  document: "NDS 2005",
  table: "Table 11N",
  via: "seaintarchive 2009c msg00914",
  confidence: "read",
};

export const nails: readonly Row<Nail>[] = (
  [
    ["6d common", "2", "0.113", "0.266", L4],
    ["8d common", "2-1/2", "0.131", "0.281", L4],
    ["10d common", "3", "0.148", "0.312", COPIED],
    ["12d common", "3-1/4", "0.148", "0.312", L4],
    ["16d common", "3-1/2", "0.162", "0.344", MAILED],
    ["20d common", "4", "0.192", "0.406", L4],
    ["6d box", "2", "0.099", "0.266", L4],
    ["8d box", "2-1/2", "0.113", "0.297", L4],
    ["10d box", "3", "0.128", "0.312", COPIED],
    ["16d box", "3-1/2", "0.135", "0.344", L4],
  ] as const
).map(([name, length, shank, head, source]) => ({
  key: `${name} nail`,
  value: { length, shank, head },
  unit: "in",
  source,
  range: "the head from memory",
}));

export const lags: readonly Row<Lag>[] = (
  [
    ["1/4", "0.173", "5/32"],
    ["5/16", "0.227", "3/16"],
    ["3/8", "0.265", "7/32"],
    ["7/16", "0.328", "9/32"],
    ["1/2", "0.371", "5/16"],
    ["5/8", "0.471", "13/32"],
  ] as const
).map(([diameter, root, tip]) => ({
  key: `${diameter} in lag screw`,
  value: { diameter, root, tip },
  unit: "in",
  source: remembered("NDS", "Appendix L, Table L2, lag screws"),
}));

const I1 = remembered("NDS 2018", "Appendix I, Table I1, bending yield strength");

export const bendingYield: readonly Row<Yield>[] = (
  [
    [0.142, 100_000],
    [0.177, 90_000],
    [0.236, 80_000],
    [0.273, 70_000],
    [0.344, 60_000],
    [0.375, 45_000],
  ] as const
).map(([upTo, psi]) => ({
  key: `bending yield, shank to ${upTo} in`,
  value: { upTo, psi },
  unit: "in, psi",
  source: I1,
  range: "nails, wood screws and lag screws of low to medium carbon steel; not hardened ones",
}));

export const boltYield: Row<number> = {
  key: "bending yield, bolts",
  value: 45_000,
  unit: "psi",
  source: I1,
};

/** Bite in the main piece that a lag screw needs to claim a strength, and for its full value across, in shank diameters. */
export const lagPenetration: Row<{ readonly least: number; readonly full: number }> = {
  key: "penetration of a lag screw, least and full",
  value: { least: 4, full: 8 },
  unit: "shank diameters",
  source: {
    document: "NDS 2015",
    table: "Table 12K, lag screws",
    via: "a city's public records (Everett)",
    confidence: "read",
  },
  range: "the full one read, the least one from memory (NDS 12.1.4)",
};

/**
 * What is left over 19% moisture in service (wet), and after boards put together wet have dried (dried). Nails pull
 * out of wood that dries or wets around them; threads do not.
 */
export interface WetService {
  readonly wet: number;
  readonly dried: number;
}

const WET = remembered("NDS 2018", "Table 11.3.3, wet service factors of connections");

export const wetService = {
  lateral: moisture("lateral", { wet: 0.7, dried: 0.7 }, "shanks under 1/4 in; thicker ones that dried: 0.4"),
  threadWithdrawal: moisture("withdrawal of screws and lag screws", { wet: 0.7, dried: 1 }),
  nailWithdrawal: moisture(
    "withdrawal of nails",
    { wet: 0.25, dried: 0.25 },
    "1 where they were driven into wet wood that stays wet",
  ),
} as const;

/** What a fastener driven at a slant keeps. The wet service factor is not taken on its withdrawal. */
export const toeFactors = {
  withdrawal: factor("toe-nail, withdrawal", 0.67),
  lateral: factor("toe-nail, lateral", 0.83),
} as const;

/** What a lag screw keeps in end grain when it is pulled out; screws and nails keep nothing. */
export const lagEndGrainWithdrawal: Row<number> = {
  key: "lag screw in end grain, withdrawal",
  value: 0.75,
  unit: "",
  source: {
    document: "NDS",
    table: "11.2.1, lag screws in end grain",
    via: "a city's public records (Santa Ana)",
    confidence: "read",
  },
};

export const fastenerRows: readonly Row<unknown>[] = [
  ...nails,
  ...lags,
  ...bendingYield,
  boltYield,
  lagPenetration,
  ...Object.values(wetService),
  ...Object.values(toeFactors),
  lagEndGrainWithdrawal,
];

function moisture(what: string, value: WetService, range?: string): Row<WetService> {
  const row = { key: `wet service, ${what}`, value, unit: "", source: WET };
  return range === undefined ? row : { ...row, range };
}

function factor(key: string, value: number): Row<number> {
  return {
    key,
    value,
    unit: "",
    source: remembered("NDS", "toe-nails"),
    range: "NDS speaks of nails; toe screws are practice only",
  };
}
