/** Plans whose pieces are placed, with mistakes that only their solids show. */
import type { Case } from "./cases";

const FRAME = `part leg of 2x4, length 30"
part rail of 1x4, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"`;
const STOOL = `part leg of 2x4, length 30"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing`;

const POSTS = `part post of 2x4, length 36"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 32-1/2" from left, 0 from front`;

const bed = (between: string, boards: string, box = "filled with soil, drains through the gaps"): string =>
  `stock 1x6, species western-redcedar, heartwood
stock 1x4, species western-redcedar, heartwood
part side of 1x6, length 30"
part end of 1x6, length 10-1/2"
part plank of 1x4, length 28-1/2"
place side across, on edge, on floor, 0 from left, 0 from front
place side across, on edge, on floor, 0 from left, 11-1/4" from front
place end front to back, on edge, on floor, 0 from left, ${between}
place end front to back, on edge, on floor, 29-1/4" from left, behind front side
place plank across, flat, on floor, between left end and right end, behind front side, ${boards}
box bed, walls side and end, bottom plank, ${box}`;

const hopper = (cuts: string, lean: string): string =>
  `part wall of 1x6, length 24", long point to long point, ends ${cuts}
ring bin = 4 wall
place bin, on floor, 0 from left, 0 from front, leaning ${lean}`;

export const PLACED_CASES: Readonly<Record<string, readonly Case[]>> = {
  "box-open": [
    bed("behind front side", "2 deep, tight"),
    bed('1/4" behind front side', "3 deep, tight"),
    bed("behind front side", "3 deep, tight", 'inside 28-1/2" x 10-1/2" x 5", filled with soil, no drain'),
    bed("behind front side", "3 deep, tight", 'inside 28" x 10-1/2" x 4-3/4", filled with soil, no drain'),
  ],
  "brace-short": [
    `${POSTS}\npart brace of 1x4, length 40"\nplace brace, diagonally on front of posts, from bottom left to top right`,
    `${POSTS}\npart brace of 1x4, length 60"\nplace brace, diagonally on front of posts, from bottom left to top right`,
    `${POSTS}\npart brace of 1x4, length 4' 4-13/16", ends mitered 45°, long points on opposite edges\nplace brace, diagonally on front of posts, from bottom left to top right`,
    `${POSTS}\npart brace of 1x4, ends mitered 45°, long points on opposite edges\nplace brace, diagonally on front of posts, from bottom left to top right`,
  ],
  "gap-uneven": [
    `part slat of 1x4, length 20"
place slat across, flat, on floor, 0 from left, 0 from front
place slat across, flat, on floor, 0 from left, 4-1/2" from front
place slat across, flat, on floor, 0 from left, 9-1/4" from front`,
  ],
  "joint-unfastened": [
    `${STOOL}
part lid of 1x6, length 30"
place lid across, flat, on legs, flush with left of legs, flush with front of rail`,
    `${STOOL}
part lid of 1x6, length 30"
place lid across, flat, on legs, flush with left of legs, flush with front of rail, 2 deep, tight`,
  ],
  "not-touching": [
    `${FRAME}
place rail across, on edge, 1/8" in front of legs, flush with left of legs, on floor
fasten rail into leg, 2 #8 x 1-5/8" at each crossing`,
    `${FRAME}
place rail across, on edge, 1/8" in front of legs, flush with left of legs, on floor
place rail across, on edge, 1/4" behind legs, flush with left of legs, on floor
fasten rail into leg, 2 #8 x 1-5/8" at each crossing`,
    `${FRAME}
place rail across, flat, on floor, 6" right of legs, 0 from front
fasten rail into leg, 2 #8 x 2" at each crossing`,
    `${FRAME}
part tie of 1x4, length 22-3/4"
place tie across, flat, between left legs and right legs, flush with front of legs, on floor`.replace(
      'part rail of 1x4, length 30"\n',
      "",
    ),
  ],
  racks: [
    `${FRAME}
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing`,
    `${FRAME}
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
fasten rail into leg, 1 #8 x 1-5/8" at each crossing`,
    `${FRAME}
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
glue rail to leg`,
  ],
  "ring-open": [
    `part rail of 2x4, length 24", long point to long point, ends mitered 45° and beveled 10°
ring frame = 4 rail
place frame, flat, on floor, 0 from left, 0 from front`,
    `part rail of 4x4, length 24", long point to long point, ends mitered 45° and beveled 0.3°
ring frame = 4 rail
place frame, flat, on floor, 0 from left, 0 from front`,
    hopper("mitered 12° and beveled 43.08°", "15° out"),
    hopper("mitered 14.51° and beveled 43.08°", "10° out"),
    hopper("mitered 14.51° and beveled 43.08°", "15° in").replace("43.08", "42"),
    `part rail of 1x3, length 20", ends mitered 45°
ring rim = 4 rail
place rim, on edge, on floor, 0 from left, 0 from front`,
    `part rail of 1x3, length 20", ends beveled 45°
ring rim = 4 rail
place rim, flat, on floor, 0 from left, 0 from front`,
  ],
};
