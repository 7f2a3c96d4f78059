// Lag screws by size, how hard the steel of a fastener bends, and what is left of its strength where it is.
import { type Row, remembered } from "./row";
import { tapeNumber } from "./tape";

/** A lag screw by its nominal diameter: inches as tape text. */
export interface Lag {
  readonly diameter: string;
  readonly root: string;
  /** The tapered tip, which holds nothing. */
  readonly tip: string;
}

/** The lag screw of a nominal diameter in inches; undefined when it is not in the table. */
export function lagSize(diameter: number): Row<Lag> | undefined {
  return lags.find(({ value }) => Math.abs(tapeNumber(value.diameter)! - diameter) < 1e-6);
}

/** How much of a lag screw is threaded where its maker says nothing, its length and that in inches. */
export function lagThread(length: number): number {
  const { share, more, most } = lagThreadLength.value;
  return Math.min(length, share * length + more, most);
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

const L2 = remembered("NDS", "Appendix L, Table L2, lag screws");

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
  source: L2,
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

/** Thread of a lag screw, tip included: a share of its length and so much more, inches, up to the most there is. */
export const lagThreadLength: Row<{ readonly share: number; readonly more: number; readonly most: number }> =
  {
    key: "thread of a lag screw",
    value: { share: 0.5, more: 0.5, most: 6 },
    unit: "in",
    source: L2,
    range: "half the length and 1/2 in, at most 6 in",
  };

/** Bite in the main piece, the tip left out, that a lag screw needs to claim a strength, and for its full value across, in shank diameters. */
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
  ...lags,
  ...bendingYield,
  boltYield,
  lagThreadLength,
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
