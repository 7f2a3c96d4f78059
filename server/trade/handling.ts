// What hands, brushes and glue ask of the order of work: how much one person lifts, how far an arm reaches, how long glue sets.
import { COMMON_PRACTICE, FROM_MEMORY, type Row, type Span } from "./row";

/** The most that one person lifts in the best posture. */
export const liftingLimit: Row<number> = {
  key: "most that one person lifts",
  value: 51,
  unit: "lb",
  source: {
    document: "NIOSH lifting equation",
    table: "load constant 51 lb (23 kg)",
    via: "osha.gov",
    confidence: "read",
  },
  range: "best posture; reaching and stooping make it less",
};

/** How far into a closed-in place a hand with a driver gets. */
export const armReach: Row<string> = {
  key: "reach of an arm with a driver in its hand",
  value: "24",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** A gap narrower than this lets no brush in. */
export const brushGap: Row<string> = {
  key: "narrowest gap that a brush gets into",
  value: "1/2",
  unit: "in",
  source: COMMON_PRACTICE,
};

/** Wood glue: in clamps before it is worked on, and before it bears anything. */
export const glueSets: Row<Span> = {
  key: "wood glue, hours before it is worked on and before it bears a load",
  value: { low: 1, high: 24 },
  unit: "h",
  source: FROM_MEMORY,
};

export const handlingRows: readonly Row<unknown>[] = [liftingLimit, armReach, brushGap, glueSets];
