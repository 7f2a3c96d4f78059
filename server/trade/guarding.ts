// What lowers a guard for a child, and which openings catch a finger or a head. Guards and playgrounds are for local
// code to judge; these numbers only find what is worth a second look.
import { COMMON_PRACTICE, FROM_MEMORY, type Row, remembered } from "./row";

/** From one of these to the other, as tape text. */
export interface Between {
  readonly low: string;
  readonly high: string;
}

const CLIMBING = remembered("National Building Code of Canada", "9.8.8.6, what makes a guard easy to climb");
const OPENINGS = remembered("playground guidance of the CPSC, Handbook for Public Playground Safety");

/** Heights above the floor, in inches, between which a foothold beside a guard lowers it. */
export const footholdBand: Row<Between> = {
  key: "foothold beside a guard",
  value: { low: "5", high: "36" },
  unit: "in",
  source: CLIMBING,
  range: "printed as 140 to 900 mm, taken a little wider",
};

/** How deep a ledge is, in mm, on which a foot finds hold. */
export const ledgeDepth: Row<number> = {
  key: "depth of a foothold",
  value: 15,
  unit: "mm",
  source: CLIMBING,
};

/** Clear height, in mm, that toes need over a ledge. */
export const toeRoom: Row<number> = {
  key: "clear height over a foothold",
  value: 20,
  unit: "mm",
  source: CLIMBING,
};

/** Rise over run from which a top is too steep to stand on. */
export const steepTop: Row<number> = {
  key: "steepest foothold, rise over run",
  value: 0.5,
  unit: "",
  source: CLIMBING,
};

/** How wide a small foot is, in inches. */
export const footWidth: Row<string> = {
  key: "width of a small foot",
  value: "1-1/2",
  unit: "in",
  source: FROM_MEMORY,
};

/** The least height of a guard, in inches: of a house, and of other buildings. */
export const houseGuard: Row<string> = {
  key: "least height of a guard, house",
  value: "36",
  unit: "in",
  source: remembered("IRC", "R312.1.2"),
};
export const tallGuard: Row<string> = {
  key: "least height of a guard, other buildings",
  value: "42",
  unit: "in",
  source: remembered("IBC", "1015.3"),
};

/** How far from a guard, in inches, what can be climbed no longer lowers it. */
export const clearOfGuard: Row<string> = {
  key: "clear of a guard",
  value: "48",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** Openings, in inches, that a finger goes into and sticks in. */
export const fingerBand: Row<Between> = {
  key: "openings that catch a finger",
  value: { low: "5/16", high: "1" },
  unit: "in",
  source: remembered("ASTM F1148, home playground equipment"),
};

/** Openings, in inches, that a child's body passes through and its head does not; both ends are let be. */
export const headBand: Row<Between> = {
  key: "openings that catch a head",
  value: { low: "3-1/2", high: "9" },
  unit: "in",
  source: OPENINGS,
};

/** The other way an opening must be at least this, in inches, for a small child's body to slip through. */
export const bodyWidth: Row<string> = {
  key: "width of a small child's body",
  value: "6.2",
  unit: "in",
  source: OPENINGS,
};

/** How high, in inches, a small child's hand and head come. */
export const childReach: Row<string> = {
  key: "how high a small child reaches",
  value: "60",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** How near behind a gap, in inches, something solid keeps a finger out. */
export const fingerStop: Row<string> = {
  key: "room behind a gap that a finger needs",
  value: "1/2",
  unit: "in",
  source: COMMON_PRACTICE,
};

export const guardingRows: readonly Row<unknown>[] = [
  footholdBand,
  ledgeDepth,
  toeRoom,
  steepTop,
  footWidth,
  houseGuard,
  tallGuard,
  clearOfGuard,
  fingerBand,
  headBand,
  bodyWidth,
  childReach,
  fingerStop,
];
