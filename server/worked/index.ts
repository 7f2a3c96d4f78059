/** Working a plan out: from what the text means to pieces, joints, boxes, layouts and cost. */

export { HAIRLINE, TOUCHING } from "../solid/contact";
export * from "./aisle";
export type * from "./as-built";
export { type Assumption, assumedWords } from "./assumptions";
export * from "./bits-needed";
export * from "./boxes";
export * from "./care";
export * from "./cautions";
export { chooseNothing, chosen } from "./choose";
export { type CoatedArea, type Loose, wordsOf } from "./coated";
export * from "./coating";
export * from "./drainage";
export { FUNCTIONS, PROPERTIES } from "./expressions";
export * from "./fasteners";
export * from "./fault";
export type { Coverage, Finish, Tin } from "./finishes";
export * from "./fitting-screws";
export { kindWord, partsOf } from "./groups";
export * from "./guarding";
export * from "./hanging";
export * from "./holding";
export * from "./holes";
export type { LoosePiece } from "./joined";
export * from "./joint-words";
export * from "./joints";
export * from "./layouts";
export * from "./liner-cuts";
export * from "./lining";
export type { Difference, Likeness, Meant } from "./matching";
export type * from "./materials";
export * from "./movement";
export * from "./moving";
export type { NearMiss } from "./near";
export type { Notch } from "./notches";
export { isSlanted, sortOf } from "./operations";
export { hasOrder } from "./order-of-work";
export * from "./overlaps";
export * from "./parts";
export type * from "./paths";
export type { Piece, Pieces, PlacedLine } from "./pieces";
export * from "./pile";
export {
  AXIS_WORDS,
  type Axis,
  type Context,
  lieOf,
  openAxes,
  type Placement,
  type Placing,
  SIDES_OF,
  startsAt,
} from "./placing";
export * from "./proving";
export { type Frame, STIFF } from "./racking";
export * from "./rests";
export * from "./ring-changes";
export type { RingCornerInSpace } from "./ring-space";
export * from "./rings";
export type { Roll } from "./rolls";
export * from "./room-taken";
export { type RootRoom, rootRoom, type Wanted } from "./roots";
export { EVEN, type UnevenRow } from "./rows";
export * from "./savings";
export { type Blocked, blockedScrews, intoEnds, missingScrews, type TipOut, tipOut } from "./screw-facts";
export * from "./screw-sides";
export { DRIVER } from "./screw-way";
export * from "./screws";
export * from "./set-out";
export { type Extent3, type Limit, type Settings, shownIn, type Tools } from "./settings";
export * from "./shapes";
export { SHOP_ENGLISH, type ShopWords } from "./shop-words";
export type { Bought, Shopping } from "./shopping";
export * from "./shortage";
export { type Clash, copiesOf, type Meeting, otherOf, type Space } from "./space";
export { type SquareCheck, squareChecks } from "./square";
export * from "./step-finish";
export { handsFor, LIFTS } from "./step-lift";
export * from "./step-order";
export * from "./step-reach";
export type { DrivenIn, Lift, StepCoat, StepsWork, StepThing, WorkStep } from "./steps";
export type { FinishNeed, LinerNeed } from "./supplies";
export * from "./time-plan";
export * from "./tipping";
export * from "./tools-needed";
export { countNotChecked, undrawn } from "./undrawn";
export * from "./water";
export * from "./weather";
export * from "./weight";
export * from "./work";
