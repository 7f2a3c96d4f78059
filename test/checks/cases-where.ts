/** Plans in which it is not clear where a piece stands, or how many there are of it. */
import type { Case } from "./cases";

const LEGS =
  'part leg of 2x4, length 28"\nplace leg upright, wide face front, on floor, at each corner of 30" x 16"';
const shelf = (clauses: string, length = '30"'): string =>
  `${LEGS}\npart shelf of 1x6, length ${length}\nplace shelf${clauses.startsWith(",") ? "" : " "}${clauses}`;
const rows = (n: number, of = "1x4"): string =>
  `part rail of 2x4, length 30"
part stop of 2x2, length 16"
part slat of ${of}, length 16"
place rail across, on edge, on floor, 0 from left, 0 from front, 2 deep, 13" apart
place stop front to back, flat, on rails, flush with left of rails, flush with front of rails
place stop front to back, flat, on rails, flush with right of rails, flush with front of rails
place slat front to back, flat, on rails, flush with front of rails, ${n} across, spread between left stop and right stop`;

export const WHERE_CASES: Readonly<Record<string, readonly Case[]>> = {
  "place-undecided": [
    // One direction, two, and none said.
    shelf("across, flat, on legs, flush with left of legs"),
    shelf("across, flat, on front legs"),
    'part shelf of 1x6, length 30"\nplace shelf across, flat',
    // How it lies.
    shelf(", on legs, flush with left of legs, flush with front of legs"),
    shelf("across, on legs, flush with left of legs, flush with front of legs"),
    shelf("across, on legs"),
    shelf(", on legs"),
    // Nothing there to lean on, or to join.
    shelf("across, flat, on legs, flush with left of legs, flush with front of legs") +
      '\nfasten shelf into middle leg, 2 #8 x 1-5/8" at each crossing',
    'part leg of 2x4, length 28"\npart shelf 1 of 1x6, length 30"\nplace shelf across, flat, on legs, centered on legs\nplace leg upright, on floor, centered on leg',
    shelf('across, flat, on middle-shelf, centered on legs\npart middle-shelf of 1x6, length 30"'),
    `${LEGS}\npart post of 2x4, length 20"\npart cap of 1x6, length 8"\nplace post upright, on floor, 50" from left, 0 from front\nplace cap across, flat, on front post, centered on post`,
    'part leg of 2x4, length 28"\nplace leg upright, on floor, left of floor, 0 from front',
    // From a side that is nowhere.
    'part leg of 2x4, length 28"\nplace leg upright, on floor, 2" from right, 0 from front',
    'part leg of 2x4, length 28"\nassembly pair\n  place leg upright, on floor, 2" from back, 0 from left\nplace pair, on floor, 0 from left, 0 from front',
    // In no room.
    shelf(
      'across, flat, on legs, flush with left of legs, flush with front of legs, as many as fit, 1" apart',
    ),
  ],
  "place-disputed": [
    shelf('across, flat, behind front legs, flush with left of legs, 14" up, flush with top of legs'),
    shelf('across, flat, on legs, flush with left of legs, 2" from left, flush with front of legs'),
    shelf(
      "across, flat, on legs, flush with left of legs, flush with front of legs, flush with back of legs",
    ),
    shelf(
      "across, flat, on legs, flush with front of legs, flush with left of legs, flush with right of legs",
      '29-7/8"',
    ),
    `${rows(4)}, flush with left of rails`,
  ],
  "no-room": [
    rows(8),
    rows(60, "2x4"),
    `${LEGS}\npart slat of 1x4, length 16"\nplace slat front to back, flat, on legs, flush with front of legs, 2 across, spread between left front leg and left legs`,
    'part stub of 1x2, length 3"\npart brace of 1x4\nplace stub across, flat, on floor, 0 from left, 0 from front\nplace brace, diagonally on front of stub, from bottom left to top right',
    `${LEGS}\npart slat of 1x4, length 16"\nplace slat front to back, flat, on legs, flush with front of legs, as many as fit, at most 1/8" apart, between left legs and right legs`,
  ],
  "in-a-circle": [
    'part leg of 2x4, length 28"\npart rail of 1x4, length 20"\nplace leg upright, on floor, right of rail, 0 from front\nplace rail across, flat, on floor, right of leg, 9" from front',
    'part leg of 2x4, length 28"\nassembly one\n  place two, on floor, 0 from left, 0 from front\nassembly two\n  place one, on floor, 0 from left, 0 from front\n  place leg upright, on floor, 0 from left, 0 from front\nplace one, on floor, 0 from left, 0 from front',
  ],
  "said-twice": [
    'part leg 1 of 2x4, length 28"\nplace leg across, flat, on edge, on floor, 0 from left, 0 from front',
    'part leg 2 of 2x4, length 28"\nplace leg upright, on floor, 0 from left, 0 from front, 2 high, tight, 3 high',
  ],
  "too-many": [
    'part leg of 2x4, length 28"\nplace leg upright, on floor, 0 from left, 0 from front, 200 across, tight, 101 deep, tight',
    'part leg of 2x4, length 30"\npart rail of 1x4, length 30"\nplace leg upright, wide face front, on floor, at each corner of 30" x 12"\nplace rail across, on edge, in front of legs, flush with left of legs, flush with top of legs\nfasten rail face into leg face, 12000 #8 x 1-5/8" at each crossing',
  ],
  "not-understood": [
    'part side of 1x6, length 20"\nplace side across on floor, flat, 0 from left, 0 from front',
  ],
  "impossible-value": [
    'part leg of 2x4, length 28"\nplace leg upright, leaning 5° top, on floor, 0 from left, 0 from front',
    'part leg of 2x4, length 28"\nplace leg upright, leaning 5° out, on floor, 0 from left, 0 from front',
    'part leg of 2x4, length 28"\nplace leg upright, wide face top, on floor, 0 from left, 0 from front',
  ],
  "placed-never-cut": [
    LEGS.replace("part leg", "part leg 3"),
    LEGS.replace("part leg", "part leg 1"),
    'part board 6 of 1x4, length 12", ends mitered 30°\nring seat = 6 board\nplace seat flat, on floor, 0 from left, 0 from front, 2 high, tight',
    LEGS.replace("part leg", "part leg 2").replace('28"', '28", 1 left and 1 right'),
  ],
  "cut-never-placed": [
    'part leg 4 of 2x4, length 28"\npart cap of 1x4, length 30", ends mitered 45°\nplace leg upright, on floor, at each corner of 30" x 16"\nring rim = 4 cap\nassembly gate\n  place leg upright, on floor',
    LEGS.replace("part leg", "part leg 6"),
    'part leg 2 of 2x4, length 28"\nplace leg upright, on floor, 0 from left, 0 from front',
    `${LEGS}\npart wedge 4 of 1x4, length 3"`,
    `${LEGS}\npart shelf 1 of 1x6, length 30"`,
  ],
};
