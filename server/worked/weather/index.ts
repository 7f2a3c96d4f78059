/** What weather and wet soil do to a plan: which wood rots, and which fasteners rust. */
export * from "./other-stock";
export * from "./resistance";
export * from "./rot";
export * from "./rust";
