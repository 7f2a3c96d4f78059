/** Long and short points against exact geometry; inches turned to millimetres. */
import { describe, expect, it } from "vitest";
import { type BoardEnds, type CutBoard, lengths } from "../../server/solid/ends";

const INCH = 25.4;
const square = { miter: 0, bevel: 0 };
const mitered = (miter: number) => ({ miter, bevel: 0 });

function cut(board: Partial<BoardEnds> & { length: number; width: number }): CutBoard {
  const result = lengths({
    measured: "long-long",
    thickness: 0.75 * INCH,
    left: square,
    right: square,
    edges: "one",
    ...board,
    length: board.length * INCH,
    width: board.width * INCH,
  });
  if (result.kind !== "cut") throw new Error(`impossible: ${result.reason}`);
  return result;
}

describe("long point to short point is the width times the tangent, at each end (exact geometry)", () => {
  it.each([
    [45, 7.0],
    [22.5, 2.899],
  ])("both ends of a 3-1/2 wide board at %d: %d shorter", (miter, shorter) => {
    const board = cut({ length: 36, width: 3.5, left: mitered(miter), right: mitered(miter) });
    expect((board.longPoint - board.shortPoint) / INCH).toBeCloseTo(shorter, 3);
    expect((board.longEdge - board.shortEdge) / INCH).toBeCloseTo(shorter, 3);
  });

  it("a 48 x 20 frame of 5-1/2 boards leaves a 37 x 9 opening", () => {
    const side = (length: number) => cut({ length, width: 5.5, left: mitered(45), right: mitered(45) });
    expect(side(48).shortEdge / INCH).toBeCloseTo(37, 9);
    expect(side(20).shortEdge / INCH).toBeCloseTo(9, 9);
  });

  it("stated short to short, the same board comes back", () => {
    const board = cut({
      measured: "short-short",
      length: 37,
      width: 5.5,
      left: mitered(45),
      right: mitered(45),
    });
    expect(board.overall / INCH).toBeCloseTo(48, 9);
  });
});

describe("volumes (exact geometry)", () => {
  it("a trapezoid is its mean length times its section: (36 + 29) / 2 x 3.5 x 0.75 cubic inches", () => {
    const board = cut({ length: 36, width: 3.5, left: mitered(45), right: mitered(45) });
    expect(board.volume / INCH ** 3).toBeCloseTo(85.3125, 9);
    expect(board.centroid[0] / INCH).toBeCloseTo(18, 9);
    // Centroid of a trapezoid above its long side: h (a + 2 b) / (3 (a + b)).
    expect(board.centroid[1] / INCH).toBeCloseTo((3.5 * (36 + 2 * 29)) / (3 * (36 + 29)), 9);
  });

  it("a right triangle's centroid lies a third in from its legs", () => {
    const board = cut({ length: 3.5, width: 3.5, right: mitered(45) });
    expect(board.shortEdge).toBeCloseTo(0, 9);
    expect(board.volume / INCH ** 3).toBeCloseTo((3.5 * 3.5 * 0.75) / 2, 9);
    expect(board.centroid[0] / INCH).toBeCloseTo(3.5 / 3, 9);
    expect(board.centroid[1] / INCH).toBeCloseTo(3.5 / 3, 9);
  });

  it("a parallelogram holds its edge length, its middle at half the overall", () => {
    const ends = { left: mitered(30), right: mitered(30), edges: "opposite" } as const;
    const board = cut({ length: 20, width: 3.5, ...ends });
    const edge = 20 - 3.5 / Math.sqrt(3);
    expect(board.longEdge / INCH).toBeCloseTo(edge, 9);
    expect(board.shortEdge / INCH).toBeCloseTo(edge, 9);
    expect(board.volume / INCH ** 3).toBeCloseTo(edge * 3.5 * 0.75, 9);
    expect(board.centroid[0] / INCH).toBeCloseTo(10, 9);
  });
});
