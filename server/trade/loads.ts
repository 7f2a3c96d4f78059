// Loads that are taken where a plan says none, and how far what carries them may bend. All are estimates for small builds.
import { COMMON_PRACTICE, type Row, remembered, type Source } from "./row";

/** Somebody who sits or stands: pounds, on a place so many inches wide, on tops between so many inches high. */
export interface SeatLoad {
  readonly pounds: number;
  readonly foot: number;
  readonly low: number;
  readonly high: number;
}

const DEFLECTION: Source = {
  document: "IRC",
  table: "Table R301.7, deflection",
  via: "scribd 351528533",
  confidence: "read",
};

export const seatLoad: Row<SeatLoad> = {
  key: "somebody on a seat",
  value: { pounds: 300, foot: 4, low: 12, high: 24 },
  unit: "lb, in",
  source: COMMON_PRACTICE,
  range: "a flat top 12 to 24 in high, at the worst place; as stair treads are judged",
};

/** A span divided by this is how far it may bend. */
export const sagLimit: Row<number> = {
  key: "bending of a seat or shelf, part of its span",
  value: 240,
  unit: "",
  source: DEFLECTION,
  range: "all other members; an overhang counts twice its length",
};

export const bowLimit: Row<number> = {
  key: "bowing of a wall, part of its span",
  value: 120,
  unit: "",
  source: remembered("IRC", "Table R301.7, walls with flexible finishes"),
};

/** Less on one screw, in pounds, counts as no load. */
export const leastScrewLoad: Row<number> = {
  key: "load on one screw that counts",
  value: 5,
  unit: "lb",
  source: COMMON_PRACTICE,
};

export const loadRows: readonly Row<unknown>[] = [seatLoad, sagLimit, bowLimit, leastScrewLoad];
