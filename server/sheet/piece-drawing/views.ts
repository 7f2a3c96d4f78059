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

/** Continues "seen …". */
export const SEEN_FROM: Readonly<Record<Side, string>> = {
  turned: "from the left, the front and above",
  front: "from the front",
  left: "from the left",
  right: "from the right",
  above: "from above",
  back: "from the back",
};

/** Height in mm of paper that the object may take. */
export const highest = (side: Side): number => (side === "turned" ? 112 : 80);
