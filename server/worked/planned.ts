/** Codes of problems that later versions will name: a plan may already accept them, and they stand under "not checked". */
export const PLANNED_CODES: readonly string[] = [
  "cannot-be-cut",
  "cheaper-with",
  "climbable-at-guard",
  "fastener-rusts",
  "gap-closes",
  "gap-traps",
  "no-drain",
  "not-enough-on-hand",
  "not-for-food",
  "offcut-wasted",
  "pilot-wrong",
  "screw-splits",
  "tips-over",
  "water-stays",
  "will-rot",
];
