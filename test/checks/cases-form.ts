/** Plans with mistakes of form: at least one for each thing the grammar can say. */
import { LONGEST_TEXT } from "../../grammar/parser";
import { type Case, manyOf } from "./cases";

const leg = (rest: string): string => `part leg 4 of 2x4${rest}`;
const joint = (rest: string): string =>
  `part slat 4 of 1x4, length 20"\npart rail 2 of 2x4, length 30"\nfasten slat face into rail face, ${rest}`;

export const FORM_CASES: Readonly<Record<string, readonly Case[]>> = {
  "unknown-entry": [
    'frobnicate leg 4 of 2x4, length 28"',
    'prat leg 4 of 2x4, length 28"',
    'Part leg 4 of 2x4, length 28"',
    '4 legs of 2x4, length 28"',
    'cut leg 4 of 2x4, length 28"',
    'screw deck, #8 x 1-1/4" screw',
    'rim = 30"',
    'leg 4 of 2x4, length 28"',
    'part leg 4 of 2x4\nlength 28"',
    'part leg 4 of 2x4\nlength 28"\nends mitered 45°',
    "// the gate is locked after four",
  ],
  "not-understood": [
    leg(', lenght 28"'),
    'part leg 4 of 2x4, length 28"\nassembly gate\n  frobnicate leg',
    'assembly gate\n  plaec leg upright, on floor\npart leg 4 of 2x4, length 28"',
    'part leg 4 off 2x4, length 28"',
    'part leg of 2x4, length 28"\nplace leg upright, wide face front, on floor, 3 wide, 2" apart',
    `${leg(', length 28"')}\npart top of 1x6, length 30"\nplace leg upright, on floor, at each corner of 30" x 12"\nplace top across, flat, on legs, flush left of legs, flush to front of legs`,
    "plan Yard thing\n  UNITS\n  lumber metric",
    leg(', length 28", colour red'),
    'box trough, inside 20" x 20" x 10", filled with soil\n  drains nowhere',
    'part shelf 1 of 1x8, length 30"\nload shelf 40 lb spread, slowly',
    'part slat 4 of 1x4, length 20"\npart rail 2 of 2x4, length 30"\nfasten slat face in rail face, 2 #8 x 1-5/8" at each end',
    leg(', length 28", ends Mitered 10°'),
    leg(", length"),
    leg(', length 28" 30"'),
    leg(' length 28"'),
    'part leg 4 pieces of 2x4, length 28"',
    leg(', length 28", long point, to long point'),
    leg(', length 28",'),
    `${joint('2 #8 x 1-5/8" at each end')}\nstep Join them\n  uses slat, rail`,
    'part leg 4 2x4, length 28"',
    'measure rim 30"\npart leg 4 of 2x4, length rim',
    leg(', 28"'),
    'measure rim = 2 * (30" + 2"\npart leg 4 of 2x4, length rim',
    'part leg 4 of 2" x 4", length 28"',
    "part leg 4 of 45mm x 95mm, length 700mm",
    'part slat of 1x4, length 20"\nplace slat across, flat, on floor, 3 deep, evenly spaced',
    'part leg of 2x4, length 30"\npart shelf of 1x8, length 30"\nplace leg vertical, on the floor, 4 at each corner of 30" by 12"\nplace shelf horizontal, on top of legs, in the middle of legs',
    'part leg of 2x4, length 30"\npart shelf of 1x8, length 30"\nplace leg upright, facing front, on floor, at corners of 30" x 12"\nplace shelf across, flat, resting on legs, aligned with front of legs, level with left of the legs',
    'part post of 2x4, length 20"\npart slat of 1x4, length 20"\nplace post upright, on floor, at each corner of 20" x 8"\nplace slat across, on edge, in front of posts, flush with left of posts, 3 high, spread along posts',
    'part leg 4 of 1-3/8" x 3-1/4", length 28"',
    'part leg 4 of 2X4, length 28"',
    leg(', length 2 x 14"'),
    `measure rim = 30"\n${leg(', length rim-1"')}`,
  ],
  "stray-character": [
    leg(", length ?"),
    leg(', length @ 28"'),
    'part leg 4 of 2x4; length 28"',
    'measure rim: 30"\npart leg 4 of 2x4, length rim',
    leg(', length "'),
    leg(', length "28'),
    leg(', length "28"'),
    leg(", length 28''"),
    leg(', length 28" #measured twice'),
  ],
  "bad-name": [
    'part 2nd-leg 4 of 2x4, length 28"',
    'part Leg 4 of 2x4, length 28"',
    'part front leg 4 of 2x4, length 28"',
    'part because 4 of 2x4, length 28"',
    'part Front Leg 4 of 2x4, length 28"',
  ],
  "bad-number": [
    leg(", length 1,5 m"),
    leg(", length 28 in"),
    leg(', length 28" 1/2'),
    `stock 2x4, sold 8' 4.20$\n${leg(', length 28"')}`,
    leg(", length 2' 4"),
    joint("2 #8 at each end"),
    joint("2 #8 x 2 at each end"),
    joint("2 #8 x 1-5/8 at each end"),
    joint("2 #8 x 1 5/8 at each end"),
    joint("2 4 x 40 at each end"),
    `stock 2x4, sold 8' $4.20, 10' 5.60\n${leg(', length 28"')}`,
  ],
  "indented-alone": [
    'plan Yard thing\n  UNITS\n  stock 1x6, species western-redcedar\n  box bed, inside 20" x 20" x 10"\n    no drain',
    { text: '  part leg 4 of 2x4, length 28"', bare: true },
    `${leg(', length 28"')}\n  part rail 2 of 2x4, length 40"`,
  ],
  "merge-conflict": [
    `<<<<<<< HEAD\n${leg(', length 28"')}\n=======\n${leg(', length 30"')}\n>>>>>>> taller`,
    `<<<<<<<\n${leg(', length 28"')}\n||||||| before\n${leg(', length 24"')}\n=======\n${leg(', length 30"')}\n>>>>>>>`,
  ],
  "not-text": [
    { text: "note one line\nnote a picture: \0", shown: "note one line\nnote a picture: NUL", bare: true },
  ],
  "too-big": [
    {
      text: manyOf("# a line that is said again and again\n", LONGEST_TEXT + 1),
      shown: "a million characters and some more",
    },
  ],
  "too-deep": [
    `measure rim = ${"(".repeat(41)}30"${")".repeat(41)}\n${leg(", length rim")}`,
    {
      text: `measure rim = 1"${' + 1/8"'.repeat(201)}\n${leg(", length rim")}`,
      shown: "a measure line that adds up 202 lengths",
    },
  ],
};
