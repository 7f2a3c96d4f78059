/** The drawing of the built thing. */
export { type DrawingOptions, drawView } from "./draw";
export { drawExploded } from "./exploded";
export { drawMeasured, type ToMeasure } from "./measured";
export { type DrawnPiece, ofAssembly } from "./pieces";
export { standardScale } from "./scale";
export type { DrawnScrew } from "./screws";
export { drawSmall, type Small, seenSmall } from "./small";
export { drawStep } from "./step";
export { highest, type Side } from "./views";
