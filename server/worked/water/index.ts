/** Water in boxes and on flat tops: whether it can leave, worked out from what the plan says and places. */
export type { FlatTop } from "./flat-tops";
export { type WaterLayer, type WaterPath, type WaterStop, type WaterWork, waterPathOf } from "./path";
export { waterUnchecked } from "./unchecked";
