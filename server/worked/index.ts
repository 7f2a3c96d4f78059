/** Working a plan out: from what the text means to pieces, joints, boxes, layouts and cost. */
export * from "./boxes";
export { FUNCTIONS, PROPERTIES } from "./expressions";
export * from "./fasteners";
export * from "./fault";
export { kindWord } from "./groups";
export * from "./joints";
export * from "./layouts";
export type * from "./materials";
export * from "./parts";
export { PLANNED_CODES } from "./planned";
export * from "./ring-changes";
export * from "./rings";
export * from "./screws";
export type { Extent3, Limit, Settings, Tools } from "./settings";
export type { Bought, Shopping } from "./shopping";
export * from "./work";
