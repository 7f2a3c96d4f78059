/**
 * Sloped sides built as solids for every row of a printed table of saw settings: placed as a ring, the cut ends of neighbours
 * lie on each other over their whole area, and no side stands in another. The settings are worked out to more places than the
 * table prints: rounded to its 0.01°, ten sides of 30" already miss by more than a hair. That they agree with what is printed
 * is held by ring-saw-table.test.ts, and here again to half a hundredth.
 */
import { describe, expect, test } from "vitest";
import { apart, contacts, TOUCHING } from "../../server/solid/contact";
import { areaOf } from "../../server/solid/convex";
import { hopper } from "../../server/solid/hopper";
import type { Piece } from "../../server/worked/pieces";
import { evaluated } from "../placing/plans";
import { MANUAL } from "./ring-saw-table";

/** Rows of the table with a slope: pitch is from level, a lean from plumb. */
const SLOPED = MANUAL.filter(([pitch]) => pitch > 0 && pitch < 90);

const build = (sides: number, lean: number, miter: number, tilt: number): readonly Piece[] =>
  evaluated(`stock b, actual 3/4" x 4"
part wall of b, length 30", ends mitered ${miter.toFixed(9)}° and beveled ${tilt.toFixed(9)}°
ring bin = ${sides} wall
place bin on edge, leaning ${lean}° out, on floor, 0 from left, 0 from front`).worked.pieces.all;

describe("the compound-miter table of a miter-saw operator's manual, as solids", () => {
  test.each(SLOPED)("pitch %d, %d sides: miter %d, tilt %d", (pitch, sides, miter, tilt) => {
    const cut = hopper(sides, 90 - pitch)!;
    expect(Math.abs(cut.miter - miter)).toBeLessThan(0.006);
    expect(Math.abs(cut.tilt - tilt)).toBeLessThan(0.006);
    const pieces = build(sides, 90 - pitch, cut.miter, cut.tilt);
    expect(pieces).toHaveLength(sides);
    pieces.forEach((piece, i) => {
      const [a, b] = [piece.cells[0]!, pieces[(i + 1) % sides]!.cells[0]!];
      expect(apart(a, b).gap).toBeGreaterThan(-TOUCHING);
      const end = areaOf(a, a.facets.find((f) => f.side === "right end")!);
      const touching = contacts(a, b).reduce((sum, c) => sum + c.area, 0);
      expect(touching / end).toBeGreaterThan(0.998);
      expect(touching / end).toBeLessThan(1.002);
    });
  });

  test("half a degree off on the tilt, and the ends no longer lie on each other", () => {
    const [a, b] = build(4, 15, 14.51, 42.58).map((p) => p.cells[0]!);
    expect(contacts(a!, b!)).toEqual([]);
  });
});
