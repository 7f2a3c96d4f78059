/** Plans that a child climbs beside a guard, whose gaps catch a finger or a head, and whose soil lies against what is not fit for food. */
import type { Case } from "./cases";
import { STAND } from "./plans";

const GUARD = "plan Stand\n  UNITS\n  near a guard\n";
const CHILDREN = "plan Panel\n  UNITS\n  near children\n";

const BED = `part side of 2x12, length 36"
part end of 2x12, length 15"
place side across, on edge, on floor, 0 from left, 0 from front
place side across, on edge, on floor, 0 from left, 16-1/2" from front
place end front to back, on edge, on floor, 0 from left, between front side and back side
place end front to back, on edge, on floor, 34-1/2" from left, between front side and back side
`;

/** Pickets on two rails. */
const panel = (picket: string, row: string): string => `part rail of 2x4, length 32"
part picket ${picket}of 1x4, length 36"
place picket upright, wide face front, on floor, ${row}
place rail across, on edge, behind pickets, 4" in from bottom of pickets, 4" in from top of pickets, 2 high
fasten picket into rail, 2 #8 x 1-5/8" at each crossing
`;

/** Slats on two battens. */
const slats = (row: string): string => `part batten of 2x2, length 20"
part slat of 1x4, length 30"
place batten front to back, flat, on floor, 0 from left, 0 from front
place batten front to back, flat, on floor, 28-1/2" from left, 0 from front
place slat across, flat, on battens, flush with left of battens, flush with front of battens, ${row}
fasten slat into batten, 2 #8 x 1-5/8" at each crossing
`;

const grown = (
  stock: string,
  more = "",
  grows = "lettuce and spinach",
): string => `stock old-board of 1x6, ${stock}
part side 2 of old-board, length 30"
part end 2 of old-board, length 12"
box bed, walls side and end, inside 30" x 10-1/2" x 5-1/2"
  filled with soil
  grows ${grows}
${more}`;

export const GUARDING_CASES: Readonly<Record<string, readonly Case[]>> = {
  "climbable-at-guard": [
    `${GUARD}part curb of 2x6, length 48"\nplace curb across, on edge, on floor`,
    GUARD + STAND,
    `${GUARD}${BED}box bed, walls side and end, filled with soil to 1" below rim`,
    // Under a top, a shelf is reached from the side.
    `${GUARD}part side of 1x12, length 30"
part board of 1x12, length 30"
place side upright, wide face left, on floor, 0 from left, 0 from front
place side upright, wide face left, on floor, 30-3/4" from left, 0 from front
place board across, flat, 9" from floor, between left side and right side, flush with front of left side
place board across, flat, 28" from floor, between left side and right side, flush with front of left side`,
  ],
  "gap-traps": [
    CHILDREN + panel("", "4 across, spread over rails"),
    CHILDREN + panel("4 ", "4 across, spread over rails"),
    `${CHILDREN}part post of 4x4, length 36"
part rail of 2x4, length 32"
part picket of 1x4, length 36"
place post upright, wide face front, on floor, 0 from left, 0 from front, 2 across, 32" apart
place picket upright, wide face front, on floor, flush with front of posts
  as many as fit, at most 8" apart, spread between left post and right post
place rail across, on edge, behind pickets, between left post and right post, 4" in from bottom of posts
place rail across, on edge, behind pickets, between left post and right post, 4" in from top of posts`,
    CHILDREN + slats('4 deep, 1/2" apart'),
    CHILDREN + slats('4 deep, 4" on center'),
    // Two lines, and one that two others lean on.
    `${CHILDREN}part post of 4x4, length 30"
part board of 2x6, length 30"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 33-1/2" from left, 0 from front
place board across, flat, 8" from floor, between left post and right post, flush with front of left post
place board across, flat, 17" from floor, between left post and right post, flush with front of left post`,
  ],
  "not-for-food": [
    grown('painted, on hand 4 of 40"'),
    grown('measured 7/8" x 5-3/8", painted, on hand 4 of 40"', "", "tomatoes"),
    grown('on hand 4 of 40"', `roll pond-liner, width 6', food safe\n`),
    grown(
      'on hand 4 of 40"',
      `roll pond-liner, width 6', food safe\nroll felt, width 6', food safe\nline bed with felt\n`,
    ),
    grown('treated, on hand 4 of 40"', "", "peas"),
    grown(
      'untreated, on hand 4 of 40"',
      "roll tarp, width 6', not food safe\nroll pond-liner, width 6', food safe\nline bed with tarp\n",
    ),
    grown(
      'untreated, on hand 4 of 40"',
      "roll weed-felt, width 6', not food safe\nline bed with weed-felt\n",
    ),
  ],
};
