/** Things that stand on the floor and tip over, in every way that is looked at. */
import type { Case } from "./cases";

/** Two sides and three shelves between them, as high and deep as said. */
const shelves = (high: string, plan = "indoors"): string => `plan Yard thing\n  UNITS\n  ${plan}
part side of 2x12, length ${high}
part far-side of 2x12, length ${high}
part shelf of 2x10, length 36"
part back of 1x6, length 39"
place side upright, wide face left, on floor, 0 from left, 0 from front
place shelf across, flat, 6" up, right of side, 0 from front
place shelf across, flat, 26" up, right of side, 0 from front
place far-side upright, wide face left, on floor, right of bottom shelf, 0 from front
place back across, on edge, behind side, flush with left of side, flush with top of side
place back across, on edge, behind side, flush with left of side, on floor
fasten side and far-side into shelf, 3 #8 x 3-1/2" at each crossing
fasten back into side and far-side, 2 #8 x 2" at each crossing
accept screw-in-end-grain because the shelves are glued as well
`;

/** A screen of boards on two long feet. */
const screen = (feet: string, high: string, wide: string): string => `plan Yard thing\n  UNITS\n  outdoors
part skid of 4x4, length ${feet}
part post of 2x4, length ${high}
part board of 1x6, length ${wide}
place skid front to back, on edge, on floor, 0 from left, 0 from front
place skid front to back, on edge, on floor, (${wide} - width of skid) from left, 0 from front
place post upright, wide face front, on floor, right of left skid, centered front to back on left skid
place post upright, wide face front, on floor, left of right skid, centered front to back on left skid
place board across, on edge, in front of posts, flush with left of skids, 4" up, 8 high, tight
fasten skid into post, 2 #10 x 4-1/2" at each crossing
fasten board into post, 2 #8 x 2" at each crossing
`;

/** A tower of four legs as wide as deep. */
const tower = (wide: string): string => `part leg of 4x4, length 34"
part rail of 2x6, length ${wide}
part tie of 2x6, length ${wide}
place leg upright, wide face front, on floor, at each corner of ${wide} x ${wide}
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
place tie front to back, on edge, right of left legs, between front rail and back rail, flush with top of legs
place tie front to back, on edge, left of right legs, between front rail and back rail, flush with top of legs
fasten rail and tie into leg, 2 #10 x 3" at each crossing
`;

/** A bench of four legs under a top that reaches beyond them. */
const bench = (over: string, lines = "", plan = "outdoors"): string => `plan Yard thing\n  UNITS\n  ${plan}
part leg of 4x4, length 16"
part rail of 2x6, length 36"
part top of 2x12, length 60"
place leg upright, wide face front, on floor, at each corner of 36" x 11-1/4"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
place top across, flat, on legs, ${over} past left of legs, flush with front of legs
fasten rail into leg, 2 #10 x 3" at each crossing
fasten top into leg, 2 #10 x 3" at each crossing
accept screw-in-end-grain because the top lies on the rails
${lines}`;

/** A box on four long legs. */
const trough = (lines: string, plan = "outdoors"): string => `plan Yard thing\n  UNITS\n  ${plan}
part leg of 2x4, length 30"
part side of 2x10, length 44"
part end of 2x10, length overall depth of legs
place leg upright, wide face front, on floor, at each corner of 44" x 15"
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs
place side across, on edge, behind legs, flush with left of legs, flush with top of legs
place end front to back, on edge, left of legs, flush with front of legs, flush with top of legs
place end front to back, on edge, right of legs, flush with front of legs, flush with top of legs
fasten side into leg, 2 #8 x 2-1/2" at each crossing
fasten end into leg, 2 #8 x 3" at each crossing
${lines}`;

/** Two boards that stand on the front edge of a foot. */
const sign = (high: string, foot = "1x6"): string => `part foot of ${foot}, length 12"
part board of 2x4, length ${high}
place foot across, flat, on floor, 0 from left, 0 from front
place board upright, wide face front, on foot, flush with left of foot, flush with front of foot
place board upright, wide face front, on foot, flush with right of foot, flush with front of foot
fasten foot into board, 2 #8 x 2-1/2" at each crossing
accept screw-in-end-grain because the boards are glued as well
`;

/** A tub with that inside, and what grows in it. */
const tub = (inside: string, level: string, grows: string): string =>
  `box tub, inside ${inside}, filled with potting-mix${level}, weighs 16 lb empty\n  grows ${grows}`;

export const TIPPING_CASES: Readonly<Record<string, readonly Case[]>> = {
  "roots-cramped": [
    tub('20" x 20" x 8"', ' to 1" below rim', "tomato and lettuce and carrots"),
    tub('20" x 20" x 16"', ' 10" deep', "peppers"),
    tub('11" x 11" x 13"', "", "cucumber"),
    tub('9" x 9" x 8"', "", "eggplant"),
  ],
  "tips-over": [
    shelves('40"'),
    shelves('40"', "near children"),
    shelves('50"'),
    shelves('62"'),
    screen('40"', '50"', '72"'),
    tower('18"'),
    bench('20"'),
    bench('20"', "load top 300 lb anywhere"),
    bench('54-1/2"'),
    bench('56"'),
    trough("box trough, walls side and end, filled with potting-mix"),
    sign('17"'),
    `plan Yard thing\n  UNITS\n  near children\n${sign('17"')}`,
    sign('66"', "1x4"),
  ],
};
