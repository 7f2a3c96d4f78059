/** Plans whose pieces do not fit: into each other, onto the floor, into the space, through the door; and their screws. */
import type { Case } from "./cases";

/** Four legs 20" high and a board of that name, laid as said. */
const onLegs = (place: string, more = ""): string =>
  `part leg of 2x4, length 30"\npart top of 1x4, length 33"\nplace leg upright, wide face front, on floor, at each corner of 33" x 12"\nplace top across, flat, ${place}, flush with left of legs, flush with front of legs${more}`;

const RAIL = 'part rail of 2x4, length 30"\nplace rail across, flat, on floor, 0 from left, 0 from front\n';
const slatOn = (screws: string, part = '1x4, length 12"', place = '9" in from left of rail'): string =>
  `${RAIL}part slat of ${part}\nplace slat front to back, flat, on rail, ${place}, flush with front of rail\nfasten slat into rail, ${screws}`;

/** A slat on a batten, with a beam that gap further down in the screws' way. */
const overGap = (gap: string, screw: string): string =>
  `part beam of 2x4, length 20"\npart batten of 1x4, length 12"\npart slat of 1x4, length 12"\npart foot of 2x4, length 6"\nplace beam across, flat, on floor, 0 from left, 0 from front\nplace foot across, flat, on beam, flush with right of beam, flush with front of beam\nplace batten across, flat, ${gap} above beam, left of foot, flush with front of beam\nplace slat across, flat, on batten, flush with left of batten, flush with front of batten\nfasten foot into beam, 2 #8 x 2-1/2" at each crossing, angled 20°\nfasten slat into batten, ${screw}`;

/** A shelf under a top that already is on. */
const underTop = (screws: string, order = ""): string =>
  `${RAIL}part block of 4x4, length 6"\npart slat of 1x4, length 12"\npart top of 1x4, length 30"\nplace block across, flat, on rail, flush with left of rail, flush with front of rail\nplace block across, flat, on rail, flush with right of rail, flush with front of rail\nplace slat across, flat, on rail, 9" in from left of rail, flush with front of rail\nplace top across, flat, on blocks, flush with left of rail, flush with front of rail\nfasten rail into block, 2 #8 x 3" at each crossing\nfasten top into block, 2 #8 x 1-5/8" at each crossing\nfasten slat into rail, ${screws}${order}`;

/** A tray whose bottom is screwed on from below. */
const tray = (screw: string): string =>
  `part wall of 1x6, length 24"\npart end of 1x6, length 10"\npart batten of 1x2, length 10"\nplace wall across, on edge, on floor, 0 from left, 0 from front\nplace wall across, on edge, on floor, 0 from left, 10-3/4" from front\nplace end front to back, on edge, on floor, between front wall and back wall, flush with left of walls\nplace end front to back, on edge, on floor, between front wall and back wall, flush with right of walls\nplace batten front to back, on edge, right of left end, between front wall and back wall, 2" up\nbox tray, walls wall and end\nfasten end into batten, ${screw}`;

const door = (wide: string, high: string): string =>
  `plan A thing\n  UNITS\n  way in ${wide} wide, ${high} high\n`;

export const FITS_CASES: Readonly<Record<string, readonly Case[]>> = {
  "hangs-in-air": [
    onLegs('1/2" above legs'),
    onLegs('1/2" above legs', ', 3 deep, 1" apart'),
    onLegs(
      '1/2" above legs',
      '\npart knob 2 of 2x2, length 3"\nplace knob upright, wide face front, on top, flush with left of top, flush with front of top\nplace knob upright, wide face front, on top, flush with right of top, flush with front of top',
    ),
    `${RAIL}part block of 4x4, length 6"\nplace block across, flat, behind rail, 1-1/2" up, flush with left of rail`,
    `${RAIL}part block of 4x4, length 6"\nplace block across, flat, 1" up, 0 from left, 20" from front`,
    'part shelf of 1x8, length 30"\nplace shelf across, flat, 48" up, 0 from left, 0 from front',
    `${RAIL}part block of 4x4, length 6"\nplace block across, flat, 1" left of rail, 1" up, 10" behind rail`,
  ],
  "no-room-to-drive": [
    underTop('1 #8 x 1-5/8" in all'),
    underTop("3 deck-1 in all", '\nfastener deck-1, #8 x 1-5/8" screw'),
    underTop(
      '1 #8 x 1-5/8" in all',
      "\nstep Put the top on\n  uses rail and block and top\nstep Lay the slat\n  uses slat",
    ),
  ],
  "outside-space": [
    'part post of 4x4, length 40"\nplace post upright, wide face front, (0" - 24") up',
    'part post of 4x4, length 40"\nplace post upright, wide face front, (0" - 12") up, at each corner of 30" x 12"',
    'part slat of 1x4, length 40"\nplace slat across, flat, under floor, 2 deep, 1" apart',
    `plan A rack\n  UNITS\n  space 30" wide, 10" deep, 18" high\n${onLegs("on legs")}`,
    `plan A rack\n  UNITS\n  space 34" wide\n${RAIL}part arm of 1x4, length 12"\nplace arm across, flat, on rail, 8" past left of rail, flush with front of rail`,
  ],
  "pieces-overlap": [
    `${RAIL}place rail across, flat, on floor, 0 from left, 0 from front`,
    'part post of 2x4, length 20"\npart tie of 1x4, length 10"\nplace post upright, wide face front, on floor, 0 from left, 0 from front, 2 across, 9-1/2" apart\nplace tie across, flat, on floor, 3-1/4" from left, 0 from front',
    'part post of 2x4, length 36"\npart rail of 1x4, length 36"\npart brace of 1x4\nplace post upright, wide face front, on floor, 0 from left, 0 from front, 2 across, 29" apart\nplace rail across, on edge, in front of posts, flush with left of posts, flush with top of posts\nplace brace, diagonally on front of posts, from bottom left to top right',
    onLegs('19" up'),
    onLegs('19-3/8" up', ', 2 deep, 1" apart'),
    `plan A rack\n  UNITS\n  space 34" wide, 16" deep, 20-3/4" high\n${onLegs('19-1/2" up')}`,
    onLegs('1" in from top of legs'),
    `${RAIL}part block of 4x4, length 6"\nplace block across, flat, on floor, 1" past left of rail, 1" past front of rail`,
    'part rail of 2x4, length 30"\npart slat of 1x4, length 12"\nplace rail across, on edge, on floor, 0 from left, 0 from front\nplace slat front to back, flat, on rail, flush with left of rail, flush with front of rail, 5 across, 3" on center',
    'part post of 4x4, length 30"\npart brace of 2x4, length 20"\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace brace upright, wide face front, leaning 20° left, on floor, 3" in from left of post, flush with front of post',
    'part post of 2x4, length 30"\nplace post upright, wide face left, leaning 10° left, on floor, 0 from left, 0 from front\nplace post upright, wide face left, leaning 10° left, on floor, 1" from left, 2" from front',
    `${RAIL}part block of 4x4, length 6"\npart knob of 2x2, length 3"\nplace block across, flat, on floor, left of rail, flush with front of rail\nplace knob across, flat, on floor, 8-1/2" past left of rail, flush with front of rail`,
    'part top 1 of 1x10, length 16"\npart side of 1x10, length 10"\nplace side upright, on floor, 1" in from left of top, flush with front of top, mirrored left to right about top\nplace top across, flat, on sides, 0 from front',
    'part top 1 of 1x10, length 16"\npart side of 1x10, length 10"\nplace side upright, on floor, 5" in from right of top, flush with front of top, mirrored left to right about top\nplace top across, flat, on sides, 0 from front',
    'part top 1 of 1x10, length 16"\npart side of 1x10, length 10"\nplace side upright, on floor, 7-1/2" in from right of top, flush with front of top, mirrored left to right about top\nplace top across, flat, on sides, 0 from front',
    'part post of 2x4, length 20"\nplace post upright, wide face left, on floor, at each corner of 12" x 5"',
    'part slat of 1x4, length 12"\nplace slat across, on edge, on floor, 0 from left, 0 from front, mirrored left to right about shelf\npart shelf 1 of 1x4, length 20"\nplace shelf across, flat, 10" up, 0 from left, 0 from front',
    'assembly gate\n  place stile upright, wide face front, on floor, 0 from left, 0 from front\n  place bar across, on edge, 10" up, 3" from left, 0 from front\npart stile of 2x4, length 30"\npart bar of 1x4, length 20"\nplace gate, on floor, 0 from left, 0 from front, 2 across, 30" apart',
  ],
  "screw-in-end-grain": [
    'part post 2 of 4x4, length 30"\npart rail 1 of 2x4, length 40"\nfasten rail face into post end, 2 #8 x 3" at each end',
    'part post of 4x4, length 12"\npart plank of 2x4, length 20"\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace plank across, flat, on post, flush with left of post, flush with front of post\nfasten plank into post, 1 #8 x 3" at each crossing',
    'part post of 4x4, length 12"\npart plank of 2x4, length 20"\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace post upright, wide face front, on floor, 16-1/2" from left, 0 from front\nplace plank across, flat, on posts, flush with left of posts, flush with front of posts\nfasten plank into post, 2 #8 x 3" at each crossing',
  ],
  "screw-misses": [
    'part post of 2x2, length 20"\npart block of 4x4, length 6"\npart slat of 1x2, length 6"\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace block upright, wide face front, in front of post, flush with left of post, on floor\nplace slat upright, wide face front, in front of block, flush with left of post, on floor\nfasten slat through block into post, #8 x 5", angled 60°',
    'part post of 2x2, length 20"\npart block of 4x4, length 6"\npart slat of 1x2, length 6"\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace block upright, wide face front, in front of post, flush with left of post, on floor\nplace slat upright, wide face front, in front of block, flush with left of post, on floor\nfasten slat through block into post, 3 #8 x 5", angled 60°',
    'part rail of 2x4, length 30"\npart slat of 2x4, length 9"\nplace rail across, flat, on floor, 0 from left, 0 from front\nplace slat front to back, flat, on floor, behind rail, 9" in from left of rail\nfasten slat into rail, 2 #8 x 2" at each crossing',
  ],
  "screw-near-edge": [
    slatOn('5 #8 x 1-5/8" at each crossing'),
    slatOn('1 #14 x 1-5/8" at each crossing', '1x2, length 305mm, width 3/4"'),
    slatOn("1 5 x 40mm at each crossing", '1x2, length 12", width 20mm'),
    slatOn('2 #8 x 1-5/8" at each crossing', '1x4, length 12"', '3-1/4" past left of rail'),
  ],
  "screw-pokes-through": [
    slatOn('2 #8 x 2-1/2" at each crossing'),
    overGap('1/4"', '2 #8 x 1-5/8" at each crossing'),
    overGap('1/4"', '2 #8 x 2" at each crossing'),
    tray('2 #8 x 2-1/2" along it'),
    'part back of 1x4, length 30"\nplace back across, flat, on floor, 0 from left, 0 from front\npart rail of 1x4, length 30"\nplace rail across, flat, on back, flush with left of back, flush with front of back\npart slat of 1x4, length 12"\nplace slat front to back, flat, on rail, flush with left of rail, flush with front of rail\nfasten slat into rail, 2 #8 x 2-1/2" at each crossing',
    'part rail of 1x4, length 30"\nplace rail across, on edge, on floor, 0 from left, 0 from front\npart slat of 1x4, length 12"\nplace slat front to back, flat, on rail, flush with left of rail, flush with front of rail\nfasten slat into rail, 2 #8 x 5" at each crossing',
  ],
  "wont-go-in": [
    `${door('10"', '12"')}${onLegs("on legs")}\npart frame-side of 1x4, length 8", ends mitered 45°\nring frame = 4 frame-side\nplace frame flat, on top, flush with left of legs, flush with front of legs`,
    `${door('24"', '30"')}sheet top-ply, plywood 3/4", sold 48" x 96" $60\npart top of top-ply, length 60", width 40"\nplace top across, flat, on floor, 0 from left, 0 from front`,
    `plan A table\n  UNITS\n  way in 3" wide\n${onLegs("on legs")}`,
    `${door('16"', '18"')}part stile of 2x4, length 30"\npart bar of 1x4, length 20"\nassembly gate\n  place stile upright, wide face front, on floor, 0 from left, 0 from front\n  place bar across, on edge, 10" up, behind stile, 0 from left\nplace gate, on floor, 0 from left, 0 from front, 1 across\nplace gate, on floor, 0 from left, 30" from front`,
  ],
};
