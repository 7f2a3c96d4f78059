/** How a board lies: which way its length, width and thickness point. */
import type { Clause, Side } from "../../../grammar/tree";
import type { Pose } from "../../solid/pose";
import type { Vec3 } from "../../solid/vector";
import { type Axis, axisOfSide, isFar } from "./axes";

/** A direction along an axis, forwards or backwards. */
export interface Way {
  readonly axis: Axis;
  readonly sign: 1 | -1;
}

export interface Frame {
  readonly length: Way;
  readonly width: Way;
  readonly thickness: Way;
}

const way = (axis: Axis, sign: 1 | -1 = 1): Way => ({ axis, sign });

const FRAMES = {
  "upright, wide face front": { length: way(2), width: way(0), thickness: way(1) },
  "upright, wide face left": { length: way(2), width: way(1), thickness: way(0, -1) },
  "across, flat": { length: way(0), width: way(1), thickness: way(2) },
  "across, on edge": { length: way(0), width: way(2), thickness: way(1, -1) },
  "front to back, flat": { length: way(1), width: way(0, -1), thickness: way(2) },
  "front to back, on edge": { length: way(1), width: way(2), thickness: way(0) },
} as const satisfies Record<string, Frame>;

type Lie = keyof typeof FRAMES;

/** What is still to be said before it is known how a board lies. */
export type LieMissing = "lie" | "flat or on edge";

/** The words of a place line about how a board lies, as one. */
export function lieOf(clauses: readonly Clause[]): Lie | LieMissing {
  const lies = clauses.flatMap((c) => (c.kind === "lies" ? [c.lie] : []));
  const along = lies.find((lie) => ALONG.includes(lie));
  if (along === "upright") {
    const face = clauses.find((c) => c.kind === "wide face");
    const side = face?.kind === "wide face" ? face.side : "front";
    return axisOfSide(side) === 0 ? "upright, wide face left" : "upright, wide face front";
  }
  if (along !== "across" && along !== "front to back") return "lie";
  const how = lies.find((lie) => lie === "flat" || lie === "on edge");
  return how === "flat" || how === "on edge" ? `${along}, ${how}` : "flat or on edge";
}

/** Words that tell which way a board is long. */
export const ALONG: readonly string[] = ["upright", "across", "front to back"];

/** The direction in which a board that lies so is long. */
export const lengthAxis = (lie: Lie | LieMissing): Axis | undefined =>
  lie in FRAMES ? FRAMES[lie as Lie].length.axis : undefined;

export const frameOf = (lie: Lie): Frame => FRAMES[lie];

const unitOf = ({ axis, sign }: Way): Vec3 => [
  axis === 0 ? sign : 0,
  axis === 1 ? sign : 0,
  axis === 2 ? sign : 0,
];

/** The frame's directions, with the board's own corner at the world's. */
export const poseOf = ({ length, width, thickness }: Frame): Pose => ({
  length: unitOf(length),
  width: unitOf(width),
  thickness: unitOf(thickness),
  origin: [0, 0, 0],
});

const turnedRound = ({ axis, sign }: Way): Way => ({ axis, sign: sign === 1 ? -1 : 1 });

/**
 * The frame with the board's long edge (near edge) or its long face (under face) on these sides. A board is turned about
 * its own directions only, never made into its mirror image: where both an edge and a face are asked for, and turning it
 * takes that, its left end comes to lie on the other side.
 */
export function withLongPoints(frame: Frame, sides: readonly Side[]): Frame {
  let { length, width, thickness } = frame;
  let turns = 0;
  const said = { width: false, thickness: false };
  for (const side of sides) {
    const axis = axisOfSide(side);
    const sign = isFar(side) ? -1 : 1;
    if (axis === width.axis) {
      said.width = true;
      if (sign !== width.sign) [width, turns] = [turnedRound(width), turns + 1];
    } else if (axis === thickness.axis) {
      said.thickness = true;
      if (sign !== thickness.sign) [thickness, turns] = [turnedRound(thickness), turns + 1];
    }
  }
  if (turns % 2 === 0) return { length, width, thickness };
  if (!said.thickness) return { length, width, thickness: turnedRound(thickness) };
  if (!said.width) return { length, width: turnedRound(width), thickness };
  return { length: turnedRound(length), width, thickness };
}
