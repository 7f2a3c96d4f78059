/** Boards with notches and housings: one face stays one face, and what is taken out stands near nothing it is not near. */
import { describe, expect, test } from "vitest";
import { areaOf } from "../../server/solid/convex";
import { evaluated, inch } from "../placing/plans";

const STOCK = `stock b, actual 1" x 4"
stock p, actual 4" x 4"
`;
const screwsOf = (text: string) => evaluated(STOCK + text).worked.joints[0]!.placed!.screws;

describe("a board with a housing 1 wide, 10 from its left", () => {
  const marks = (depth: string, screws: string): number[] =>
    screwsOf(`part board 1 of b, length 36"
  dado 1" x ${depth} at 10" from left
part batten 1 of b, length 36"
place batten across, flat, on floor
place board across, flat, on batten, flush with left of batten, flush with front of batten
fasten batten into board, ${screws}`).map((s) => inch(s.start[0]));

  test("is screwed along all of it: four from 1-1/2 to 34-1/2", () => {
    expect(marks('1/2"', '4 #8 x 1-1/4" along it')).toEqual([1.5, 12.5, 23.5, 34.5]);
  });

  test("is surface only where air is: a housing 3/16 deep, and a notch", () => {
    // 2 (lw + lt + wt), two walls more, less two openings in the edges and twice the notch in the faces.
    const { worked } = evaluated(`stock s, actual 3/4" x 3-1/2"
part shelf 1 of s, length 36"
  dado 3/4" x 3/16" at 6" from left
  notch 1/2" x 1/2" at left end
place shelf across, flat, on floor`);
    const surface = worked.pieces.all[0]!.cells.reduce(
      (sum, cell) => sum + cell.facets.reduce((s, f) => s + (f.inner ? 0 : areaOf(cell, f)), 0),
      0,
    );
    const block = 2 * (36 * 3.5 + 36 * 0.75 + 3.5 * 0.75);
    const dado = 2 * 3.5 * (3 / 16) - 2 * 0.75 * (3 / 16);
    const notch = -2 * 0.5 ** 2;
    expect(surface / 25.4 ** 2).toBeCloseTo(block + dado + notch, 4);
  });
});

test("a panel is nailed along an edge that a housing interrupts, and along every board it lies on", () => {
  const screws = screwsOf(`part side 1 of b, length 30"
  dado 1" x 1/4" at 14" from left
part rail 1 of b, length 20"
part back 1 of b, length 30"
place side upright, wide face left, on floor, 0 from left, 0 from front
place rail across, on edge, right of side, flush with back of side, flush with top of side
place back upright, wide face front, behind side, on floor, flush with left of side
fasten back into side edge, #6 x 1-1/4", 9" on center`);
  expect(screws.map((s) => inch(s.start[2]))).toEqual([1.5, 10.5, 19.5, 28.5]);
});

test("a screw beside the line of a notch, 18 below it, stands near no notch", () => {
  const [screw] = screwsOf(`part post 1 of p, length 40"
  notch 10" x 1-1/2" at right end
part rail 1 of b, length 20", width 3-1/4"
place post upright, wide face front, on floor
place rail across, on edge, in front of post, flush with left of post, 10" up
fasten rail into post, 1 #8 x 2-1/2" at each crossing`);
  // In the middle of a patch 4 wide and 3-1/4 high; 1-5/8 from the rail's own edges.
  expect(inch(screw!.start[0])).toBe(2);
  expect(inch(screw!.nearest!.wood + 0.082 * 25.4)).toBe(1.625);
});

test("boards of which notches leave nothing stand nowhere, however many", () => {
  const { worked } = evaluated(`${STOCK}part gone of b, length 10"
  notch 12" x 5" at left end
part kept of b, length 10"
place gone across, flat, on floor, 2 deep, tight
place kept across, flat, on floor, behind gone, flush with left of gone`);
  expect(worked.pieces.all.map((p) => p.id)).toEqual(["kept / behind gone"]);
  expect(worked.space.bounds!.most.map(inch)).toEqual([10, 12, 1]);
});

test("a mirror image of a board with a housing half as deep as the board is housed in the same face", () => {
  const { worked } = evaluated(`${STOCK}part side of b, length 20"
  dado 1" x 1/2" at 5" from left
part post 1 of p, length 10"
place side across, flat, on floor, 0 from left, 0 from front
  mirrored left to right about post
place post upright, wide face front, on floor, 30" from left, 10" from front`);
  const lowest = worked.pieces.all.map(({ cells }) =>
    cells.reduce((sum, c) => sum + (c.bounds.least[2] < 1 ? c.bounds.most[0] - c.bounds.least[0] : 0), 0),
  );
  // 19 of the 20 inches of the under face are left, of both.
  expect(lowest.slice(0, 2).map(inch)).toEqual([19, 19]);
  expect(worked.pieces.all.map((p) => p.mirrored)).toEqual([false, false, false]);
});
