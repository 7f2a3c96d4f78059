/** The ways of a joint's screws through wood: which layers each passes, and how far the screw goes in them. */
import { known, unknown, type Value } from "../plan";
import { type DrivenScrew, driveScrew } from "../solid/screw";
import type { Quantity } from "../units";
import type { Size } from "./fasteners";

export type Face = "face" | "edge" | "end";

/** Wood that a screw meets: of which part, at which of its sides the screw goes in, and how deep it is, square to that side. */
export interface Layer {
  readonly part: string;
  readonly face: Face;
  readonly depth: Quantity;
}

/** One way through a joint: from the first part, perhaps through others, into the last. */
export interface Path {
  readonly first: string;
  readonly into: string;
  readonly layers: readonly Layer[];
  /** Wood that lies tight behind the last layer, in mm, square to the faces; 0 before placing. */
  readonly behind: number;
  readonly driven: Value<DrivenScrew>;
}

/** A screw of that size through these layers, so far off square; unknown where it cannot be driven like that. */
export function drive(size: Size, angle: Quantity, layers: readonly Layer[]): Value<DrivenScrew> {
  const result = driveScrew({
    length: size.length.approx,
    angleOffSquare: angle.approx,
    layers: layers.map((l) => ({ id: l.part, depth: l.depth.approx })),
  });
  return result.kind === "driven" ? known(result) : unknown("mistake", "screw cannot be driven");
}
