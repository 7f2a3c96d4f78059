/** Holes for screws, nails and bolts: those that are missing where wood splits, and those of a size that no rule gives. */
export * from "./pilots";
export * from "./splits";
