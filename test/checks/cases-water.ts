/** Boxes that keep their water, and boards without room to swell. */
import type { Case } from "./cases";

const OUT = "plan Yard thing\n  UNITS\n  outdoors\n";
const IN = "plan Yard thing\n  UNITS\n  indoors\n";
const TUB = 'box tub, inside 40" x 12" x 10", filled with potting-mix';

/** A box so deep inside and 34-1/2" wide, of cedar that is bought dry, on two runners; its boards begin at the front. */
const trough = (deep: string, boards: string, box: string, board = "1x4"): string => `measure deep = ${deep}
stock 1x8, species western-redcedar
stock ${board}, species western-redcedar
part side of 1x8, length 36"
part end of 1x8, length deep
part runner of 2x2, length deep + 1-1/2"
part floor-board of ${board}, length 34-1/2"
place runner front to back, on edge, on floor, 0 from front, 4" from left
place runner front to back, on edge, on floor, 0 from front, 30-1/2" from left
place side across, on edge, on runners, 0 from left, 0 from front
place end front to back, on edge, on runners, 0 from left, 3/4" from front
place end front to back, on edge, on runners, 35-1/4" from left, 3/4" from front
place side across, on edge, on runners, 0 from left, behind ends
place floor-board across, flat, on runners, between left end and right end, 3/4" from front, ${boards}
box trough, walls side and end, bottom floor-board, filled with potting-mix${box}`;

/** The same without runners. */
const onFloor = (text: string): string =>
  text
    .split("\n")
    .filter((line) => !/^(part|place) runner/.test(line))
    .join("\n")
    .replaceAll("on runners", "on floor");

const BENCH = `sheet top-ply, plywood 3/4"
part leg of 2x4, length 20"
part top of top-ply, length 30", width 12"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place top across, flat, on legs, centered on legs`;

/** Boards between two kerbs so far apart. */
const walk = (boards: string, stock: string, second: string): string => `${stock}
part kerb of 2x4, length 60"
part board of 5/4x6, length 60"
place kerb across, on edge, on floor, 0 from left, 0 from front
place kerb across, on edge, on floor, 0 from left, ${second} from front
place board across, flat, on floor, 0 from left, 1-1/2" from front, ${boards}`;

const CEDAR = "stock 5/4x6, species western-redcedar";

export const WATER_CASES: Readonly<Record<string, readonly Case[]>> = {
  "gap-closes": [
    OUT + walk("6 deep, tight", CEDAR, '34-1/2"'),
    OUT + walk('4 deep, 1/16" apart', "tools\n  no ripping", '23-3/4"'),
    OUT + walk("2 deep, tight", "stock 5/4x6, moisture 6%", '12-1/2"'),
    OUT + trough('11-1/8"', '2 deep, 1/8" apart', ", drains through the gaps", "1x6"),
    OUT + walk('4 deep, 1/16" apart', CEDAR, '40"'),
    IN + walk('3 deep, 1/16" apart', "stock 5/4x6, species white-oak, moisture 6%", '40"'),
    OUT + walk("8 deep, tight", CEDAR, '29-1/2"').replaceAll("5/4x6", "1x4"),
    OUT + trough('10-1/2"', "3 deep, tight", ', drains by 6 holes of 1/2"'),
  ],
  "no-drain": [
    `${OUT}${TUB}, no drain`,
    `${IN}${TUB}, grows basil, no drain`,
    `${OUT}${TUB}\nline tub with pond-liner`,
    `${OUT}${trough('11-1/4"', '3 deep, 1/4" apart', "")}\nline trough with pond-liner`,
    OUT + trough('10-1/2"', "3 deep, tight", ""),
    OUT +
      trough('14"', "8 deep, tight", "", "1x2").replace("1x2, species", '1x2, actual 3/4" x 1-3/4", species'),
  ],
  "water-stays": [
    OUT + trough('10-1/2"', "3 deep, tight", ", drains through the gaps"),
    OUT + trough('10-5/8"', '3 deep, 1/16" apart', ", drains through the gaps"),
    OUT +
      trough('14"', "8 deep, tight", ", drains through the gaps", "1x2").replace(
        "1x2, species",
        '1x2, actual 3/4" x 1-3/4", species',
      ),
    `${OUT}${TUB}, drains by 1 holes of 1/2"`,
    `${OUT}${TUB}, drains by 4 holes of 1/8"`,
    `${IN}${TUB}, grows basil, drains by 6 holes of 1/8"`,
    OUT + onFloor(trough('11-1/4"', '3 deep, 1/4" apart', ", drains through the gaps")),
    OUT + onFloor(trough('11-1/4"', '3 deep, 1/4" apart', ', drains by 6 holes of 1/2"')),
    OUT + BENCH,
    `${OUT}${BENCH}, 2 across, spread over legs`
      .replace('length 30", width 12"', 'length 15", width 12"')
      .replace("centered on legs,", "centered front to back on legs,"),
  ],
};
