/** Marks that differ by less than a hair are one: slats of one row are marked alike. */
import { expect, test } from "vitest";
import { setOutOf } from "../../server/worked";
import { run } from "../checks/plans";

test("all slats of a row are marked alike, each from both its ends", () => {
  const { worked } = run(`part corner of 2x2, length 11"
part ledger of 2x2, length overall width of corners - 2 * width of corner
part slat of 1x4, length overall depth of corners
place corner upright, on floor, at each corner of 30" x 12"
place ledger across, on edge, right of front left corner, flush with front of corners, 1" from floor
  mirrored front to back about corners
place slat front to back, flat, on ledgers, flush with front of corners, between left corners and right corners
  as many as fit, at most 1/2" apart
fasten slat into ledger, 1 #8 x 1-5/8" at each crossing
`);
  const [only, ...more] = setOutOf(worked.joints[0]!, worked.space);
  expect(more).toEqual([]);
  expect(only).toMatchObject({ part: "slat", screws: 2 });
  expect(only?.pieces).toHaveLength(7);
  expect(only?.grids.map((g) => [g.along.which, g.across.which])).toEqual([["each", "either"]]);
});
