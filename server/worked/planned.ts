/** Codes of problems that later versions will name: a plan may already accept them, and they stand under "not checked". */
export const PLANNED_CODES: readonly string[] = [
  "cannot-be-cut",
  "cheaper-with",
  "fastener-rusts",
  "not-enough-on-hand",
  "offcut-wasted",
  "pilot-wrong",
  "screw-splits",
  "will-rot",
];
