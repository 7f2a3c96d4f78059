/** The fixed sides from which the built thing is drawn. */
import { type View, viewFrom } from "../../solid/view";

export type Side = "turned" | "front" | "left" | "right" | "above" | "back";

/** Turned and raised, in degrees; a true isometric would let the seams of miters run level and vanish. */
const ANGLES: Readonly<Record<Side, readonly [turn: number, raise: number]>> = {
  turned: [-55, 27],
  front: [0, 0],
  left: [-90, 0],
  right: [90, 0],
  above: [0, 90],
  back: [180, 0],
};

export const viewOf = (side: Side): View => viewFrom(...ANGLES[side]);

/** Height in mm of paper that the object may take. */
export const highest = (side: Side): number => (side === "turned" ? 112 : 80);
