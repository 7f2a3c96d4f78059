/** The surface of a board's solid, and how much of it is end grain. Square millimetres. */
import type { Solid } from "./board";
import { areaOf, type BoardSide } from "./convex";

export interface Skin {
  /** All of the outer surface, end grain too. */
  readonly whole: number;
  /** Where the saw went across the grain: both ends, and the ends of notches. */
  readonly ends: number;
}

/** The outer surface; faces that two cells share are inside the wood and none of it. */
export function skinOf(solid: Solid): Skin {
  if (solid.block) {
    const [length, width, thickness] = solid.block;
    const ends = 2 * width * thickness;
    return { whole: ends + 2 * length * (width + thickness), ends };
  }
  let [whole, ends] = [0, 0];
  for (const cell of solid.cells)
    for (const facet of cell.facets) {
      if (facet.inner) continue;
      const area = areaOf(cell, facet);
      whole += area;
      if (isEnd(facet.side)) ends += area;
    }
  return { whole, ends };
}

/** Sides of a board that show end grain. */
export const isEnd = (side: BoardSide): boolean => side === "left end" || side === "right end";
