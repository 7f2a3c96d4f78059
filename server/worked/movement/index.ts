/** Wood that swells and shrinks across its width through the year: rows of boards, and the room they have. */
export { gapThatStays, mostWidth, oneFewer, type Respaced, tried } from "./cures";
export type { Moistures, Movement } from "./moistures";
export { movementUnchecked } from "./unchecked";
export {
  closes,
  type GapOfYear,
  gapsThroughTheYear,
  type HeldEnd,
  type MovementWork,
  type RowOfYear,
  type RowTrouble,
  rowTrouble,
} from "./year";
