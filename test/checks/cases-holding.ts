/** Plans of which something carries more than it holds. */
import type { Case } from "./cases";

const LEGS = (high: string, long: string, deep = '7-1/4"'): string =>
  `part leg of 4x4, length ${high}
place leg upright, wide face front, on floor, at each corner of ${long} x ${deep}`;

const onLegs = (stock: string, long: string, load: string, high = '30"', deep = '7-1/4"'): string =>
  `${LEGS(high, long, deep)}
part slat of ${stock}, length ${long}
place slat across, flat, on legs, flush with left of legs, flush with front of legs${load && `\nload slat ${load}`}`;

const bed = (side: string, long: number, fill: string, screws = '3 #10 x 3"', place = "indoors"): string =>
  `plan Bed along the wall
  UNITS
  ${place}
part post of 4x4, length 5-1/2"
part side of ${side}, length ${long}"
part end of 2x6, length 24"
place post upright, wide face front, on floor, at each corner of (length of side - 3") x length of end
place side across, on edge, in front of posts, centered left to right on posts, flush with top of posts
place side across, on edge, behind posts, centered left to right on posts, flush with top of posts
place end front to back, on edge, left of posts, flush with front of posts, flush with top of posts
place end front to back, on edge, right of posts, flush with front of posts, flush with top of posts
fasten side and end into post, ${screws} at each crossing, pilot 1/8"
box bed, walls side and end
  filled with ${fill}
step Screw the sides and the ends to the posts
  uses post and side and end`;

const rail = (load: string, screws: string, more = ""): string =>
  `part post of 2x4, length 40"
part rail of 2x6, length 36"
place post upright, wide face front, on floor, at each corner of 36" x 6"
place rail across, on edge, in front of posts, flush with left of posts, flush with top of posts
fasten rail into post, ${screws} at each crossing, pilot 1/8"
load rail ${load} spread${more}`;

/** Hooks hang under a board that lies on two posts. */
const under = (screws: string, load: string, face = "face"): string =>
  `part post of 4x4, length 40"
part board of 2x4, length 36"
part strip of 2x4, length 20"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 32-1/2" from left, 0 from front
place board across, flat, on posts, flush with left of posts, flush with front of posts
place strip across, flat, under board, centered left to right on board, flush with front of board
fasten board ${face} into strip face, ${screws}
load strip ${load} spread`;

export const HOLDING_CASES: Readonly<Record<string, readonly Case[]>> = {
  "too-weak": [
    onLegs("1x8", '40"', "", '15-1/4"'),
    onLegs("2x8", '60"', "640 lb middle"),
    onLegs("2x8", '16"', "3600 lb spread"),
    `part spare-board 1 of 2x8, length 20"\nstock 2x8\n  sold 8' $9.10\n${onLegs("1x8", '40"', "140 lb spread")}`,
    `sheet ply, plywood 15/32", sold 48" x 96" $31\n${LEGS('30"', '40"', '12"')}
part shelf of ply, length 40", width 12"
place shelf across, flat, on legs, centered on legs
load shelf 300 lb spread`,
    bed("1x6", 96, 'soil to 1/2" below rim'),
    bed("1x6", 132, 'potting-mix to 1/2" below rim'),
  ],
  "slat-sags": [
    onLegs("1x12", '48"', "60 lb spread", '40"', '11-1/4"'),
    onLegs("1x12", '72"', "22 lb spread", '40"', '11-1/4"'),
    `plan Bench\n  UNITS\n  outdoors\nstock 2x8\n  species redwood\n${onLegs("2x8", '42"', "", '15-1/4"')}`,
  ],
  "side-bows": [bed("1x6", 96, 'soil 3" deep'), bed("1x8", 120, 'soil 3" deep')],
  "screw-overloaded": [
    rail("480 lb", '2 #8 x 2-1/2"'),
    rail("240 lb", '2 #8 x 2-1/2"'),
    rail("200 lb", '2 #8 x 2"'),
    `fastener long-screw, #8 x 2-1/2" screw, box of 50 $12\n${rail("150 lb", '2 #8 x 2"')}`,
    under('2 #8 x 2-1/2"', "260 lb"),
    under('2 #8 x 1-3/4"', "60 lb"),
    `part post of 4x4, length 40"
part hook of 4x4, length 10"
part board of 2x4, length 36"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 32-1/2" from left, 0 from front
place board across, flat, on posts, flush with left of posts, flush with front of posts
place hook upright, wide face front, under board, centered left to right on board, flush with front of board
fasten board face into hook end, 2 #10 x 3-1/2"
load hook 60 lb spread`,
    bed("1x6", 60, 'soil to 1/2" below rim', '1 #8 x 2"'),
    bed("1x6", 48, 'soil to 1/2" below rim', '1 #8 x 1-5/8"'),
  ],
  "load-has-no-path": [
    `part leg of 2x4, length 30"
part side of 1x8, length 30"
part hook-board of 1x4, length 24"
place leg upright, wide face front, on floor, at each corner of 30" x 14"
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs
place hook-board across, on edge, in front of side, centered left to right on side, flush with top of side
fasten side into leg, 3 #8 x 2" at each crossing
load hook-board 12 lb spread`,
    `part post of 4x4, length 40"
part arm of 2x4, length 30"
place post upright, wide face front, on floor, 0 from left, 0 from front
place arm across, on edge, on posts, flush with left of posts, centered front to back on posts
load arm 20 lb spread`,
  ],
  "foot-over-load": [
    `plan Stand\n  UNITS\n  foot limit 143 lb by the shed's own builder\n${onLegs("2x12", '24"', "620 lb spread", '30"', '11-1/4"')}`,
    `plan Stand\n  UNITS\n  foot limit 143 lb\n${onLegs("2x12", '24"', "520 lb spread", '30"', '11-1/4"')}`,
    `plan Bench\n  UNITS\n  foot limit 143 lb by the shed's own builder\n${onLegs("2x12", '24"', "", '15-1/4"', '11-1/4"')}`,
  ],
};
