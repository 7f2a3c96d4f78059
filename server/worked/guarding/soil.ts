/** What boxes are filled with, as a block in space: a foot stands on it, and no finger goes through it. Millimetres. */
import type { Bounds } from "../../solid/contact";
import type { Box } from "../boxes";

export interface Soil {
  readonly box: Box;
  readonly bounds: Bounds;
}

/** The fill of each box whose walls stand on all four sides; none of water, through which both foot and finger go. */
export function soilIn(boxes: readonly Box[]): Soil[] {
  return boxes.flatMap((box): Soil[] => {
    const { placed, fill, fillBelowRim } = box;
    if (!placed || !fill || !fillBelowRim || fill.name === "water") return [];
    const { rim, low, high } = placed.room;
    const top = high - fillBelowRim.approx;
    if (!(top > low)) return [];
    const [x, y] = rim;
    return [{ box, bounds: { least: [x.from, y.from, low], most: [x.to, y.to, top] } }];
  });
}
