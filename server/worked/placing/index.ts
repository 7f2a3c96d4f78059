/** Where things stand: place lines worked out, and the pieces they put in space. */
export { AXIS_WORDS, type Axis, SIDES_OF } from "./axes";
export type { BoardIn, Owner } from "./block";
export { boardSolid } from "./board-solid";
export { boardsAt } from "./boards";
export { insideOf, insideProperty, isPlaced, placedProperty } from "./faces";
export { lieOf } from "./frame";
export { openAxes, startsAt } from "./open";
export { type Context, type Placement, Placing } from "./placing";
