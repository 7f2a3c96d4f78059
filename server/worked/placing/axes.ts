/** The three directions, as a plan's words name them. World: x to the right, y to the back, z up. */
import type { Side, Axis as WrittenAxis } from "../../../grammar/tree";

export type Axis = 0 | 1 | 2;
export const AXES = [0, 1, 2] as const;

const OF_SIDE: Readonly<Record<Side, Axis>> = { left: 0, right: 0, front: 1, back: 1, bottom: 2, top: 2 };
export const axisOfSide = (side: Side): Axis => OF_SIDE[side];
/** Whether a side is the one with the larger coordinate. */
export const isFar = (side: Side): boolean => side === "right" || side === "back" || side === "top";

export const AXIS_WORDS: readonly [WrittenAxis, WrittenAxis, WrittenAxis] = [
  "left to right",
  "front to back",
  "up and down",
];
export const axisWritten = (words: WrittenAxis): Axis => AXIS_WORDS.indexOf(words) as Axis;

/** The sides of a direction, the one with the smaller coordinate first. */
export const SIDES_OF: Readonly<Record<Axis, readonly [Side, Side]>> = {
  0: ["left", "right"],
  1: ["front", "back"],
  2: ["bottom", "top"],
};
