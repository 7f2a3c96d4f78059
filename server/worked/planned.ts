/** Codes of problems that later versions will name: a plan may already accept them, and they stand under "not checked". */
export const PLANNED_CODES: readonly string[] = [
  "cannot-be-cut",
  "cheaper-with",
  "not-enough-on-hand",
  "offcut-wasted",
];
