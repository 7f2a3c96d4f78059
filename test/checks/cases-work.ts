/** Plans that cannot be built, or should be looked at: boards, ends, rings, screws, boxes, tools, money. */
import type { Case } from "./cases";

const trough = (limit: string, more = ""): string =>
  `plan A trough\n  UNITS\n  floor limit ${limit} by the porch's builder${more}\n`;

/** Boards of given thickness joined face to face. */
const joined = (first: string, second: string, screws: string, faces = "slat face into rail face"): string =>
  `stock slat-board, actual ${first} x 3-1/2"\nstock rail-board, actual ${second} x 3-1/2"\npart slat 4 of slat-board, length 20"\npart rail 2 of rail-board, length 30"\nfasten ${faces}, ${screws}`;

const frame = (long: string, width = "1x6", last = long): string =>
  `part rail-a 1 of 1x6, length ${long}, ends mitered 45°\npart rail-b 1 of ${width}, length 20", ends mitered 45°\npart rail-c 1 of 1x6, length ${last}, ends mitered 45°\npart rail-d 1 of ${width}, length 20", ends mitered 45°\nring top = rail-a and rail-b and rail-c and rail-d`;

export const WORK_CASES: Readonly<Record<string, readonly Case[]>> = {
  "box-over-load": [
    `${trough("57 psf", "\n  of which people 40 psf")}box trough, inside 46" x 15" x 12", filled with potting-mix, weighs 47 lb empty`,
    `${trough("73 psf")}box trough, inside 46" x 15" x 12", outline 48" x 17", filled with potting-mix\n  weighs 47 lb empty`,
    `${trough("69 psf")}box trough, inside 46" x 15" x 12", filled with potting-mix`,
    `${trough("57 psf")}fill yard-mix, dry 30 lb/cuft\npart side 4 of 1x6, length 46"\nbox trough, walls side, inside 46" x 15" x 12", filled with yard-mix`,
    `${trough("57 psf")}box trough, inside 46" x 15" x 12", tapering to 40" x 12", filled with soil`,
    `${trough("57 psf", "\n  of which people 57 psf")}box trough, inside 46" x 15" x 12", filled with soil, weighs 47 lb empty`,
    'plan A trough\n  UNITS\n  floor limit 57 psf\nbox trough, inside 46" x 15" x 12", filled with soil, weighs 47 lb empty',
  ],
  "built-unclear": [
    `measure rim = 30"\npart leg 4 of 2x4, length rim\nbuilt 2026-05-09\n  wear 2025-04-01 One leg is soft at its foot`,
    `part leg of 2x4\nplace leg diagonally on front of rail\npart rail 1 of 1x6, length 20"\nplace rail across, on edge, on floor, 0 from left, 0 from front\nbuilt 2026-05-09\n  measured length of leg = 3"`,
    `part leg 4 of 2x4, length 28"\nbuilt 2026-05-09\n  measured width of leg = 3"\n  measured length of front leg = 3"`,
    `part leg 4 of 2x4, length 28"\nbuilt 2026-05-09\n  used 2x6 instead of 1x4`,
    `part leg 4 of 2x4, length 28"\nbuilt 2026-05-09\n  used 2x4 instead of 2x4 because it is what there was`,
  ],
  "ends-cross": ['part block 2 of 1x6, length 8", long point to long point, ends mitered 45°'],
  "no-tool-for-cut": [
    'tools\n  miters to 47°\n  bevels to 45°\npart brace 2 of 2x4, length 20", left end mitered 50°, right end beveled 46°',
    'tools\n  no ripping\npart slat 2 of 1x6, length 20", width 3"',
  ],
  "over-budget": [
    "plan A rail\n  UNITS\n  budget $5\nstock 2x4, sold 8' $4.20\npart rail 2 of 2x4, length 60\"",
    "plan A rail\n  UNITS\n  budget $5\nstock 2x4, sold 8' $6.20\nstock 1x4, sold 8'\npart rail 1 of 2x4, length 60\"\npart slat 1 of 1x4, length 30\"",
    'plan A rail\n  UNITS\n  budget $5\nfastener deck-2, #8 x 2" screw\nstock 2x4, sold 8\' $4.20\npart rail 2 of 2x4, length 60"\npart leg 4 of 2x4, length 12"\nfasten leg face into rail face, 2 deck-2 at each crossing\nfasten leg face into rail face, 1 deck-2 in all',
    "plan A rail\n  UNITS\n  budget €5\nstock 2x4, sold 8' $4.20\npart rail 2 of 2x4, length 60\"",
    "plan A rail\n  UNITS\n  budget $5\nstock 2x4, sold 8' $4.20\nfinish brew, tin of 1 qt $18\npart rail 2 of 2x4, length 60\"\ncoat rail with brew",
  ],
  "ring-open": [
    'part board of 1x4, length 12", ends mitered 29.5°\nring seat = 6 board',
    'part board of 1x4, length 12", ends mitered 31°\nring seat = 6 board',
    'part board of 1x4, length 12"\nring seat = 4 board',
    frame('48-1/8"', "1x6", '48"'),
    'part rail of 1x6, length 48", ends mitered 45°\npart end of 1x6, length 20", ends mitered 45°\npart odd of 1x6, length 21", ends mitered 44°\nring top = rail and end and rail and odd',
    'part rail 2 of 1x6, length 40", short point to short point, ends mitered 45°\npart end of 1x6, length 20", ends mitered 45°\npart odd of 1x6, length 21", ends mitered 45°\nring top = rail and end and rail and odd',
    `measure front = 48-1/8"\n${frame("front", "1x6", '48"')}`,
    frame('48"', "1x4"),
    'part board 2 of 1x4, length 12", ends mitered 45°\nring seat = 2 board',
    'part board 1 of 1x4, length 12", ends mitered 45°\nring seat = 1 board',
    'part long of 1x6, length 30", long point to long point, left end mitered 45°, right end mitered 45°\npart slim of 1x6, length 12", long point to short point, ends mitered 60°, long points on opposite edges\nring seat = long and slim and long',
    'part board of 1x4, length 12", ends beveled 29°\nring skirt = 6 board',
  ],
  "screw-holds-little": [
    joined('1/2"', '1/2"', '2 #8 x 3/4" at each end'),
    'part post 2 of 4x4, length 20"\npart plank 4 of 2x4, length 20"\npart rail 2 of 2x4, length 30"\nfasten post face and plank face into rail face, 2 #8 x 1" at each end',
    joined('3/4"', '1-1/2"', '2 #8 x 3/4" at each end'),
    joined('3/4"', '1-1/2"', '2 #8 x 1-3/8" at each end'),
    joined('3/4"', '1-1/2"', '2 #8 x 1" at each end', "slat into rail"),
    `fastener deck-1, #8 x 1" screw\nfastener deck-15, #8 x 1-5/8" screw\n${joined('3/4"', '1-1/2"', "2 deck-1 at each end")}`,
    joined('3/4"', '1-1/2"', '2 #7 x 1" at each end'),
    'part post 2 of 4x4, length 40"\npart rail 2 of 2x4, length 60"\nfasten post edge into rail end, 2 #10 x 3" at each end',
    joined('3/4"', '1-1/2"', '2 #8 x 1-5/8" at each end, angled 50°'),
    joined('3/4"', '3/4"', '2 #8 x 1-1/4" at each end, angled 60°'),
    joined("18mm", "18mm", "2 4 x 20mm at each end"),
    joined("19mm", "38mm", "2 4 x 25mm at each end"),
    'part slat 4 of 1x4, length 20"\npart plank 4 of 2x4, length 20"\npart rail 2 of 2x4, length 30"\nfasten slat face and plank face into rail face, 2 #8 x 1" at each end',
    'part slat 4 of 1x4, length 20"\npart thin 4 of 1x4, length 20"\npart rail 2 of 2x4, length 30"\nfasten slat face and thin edge into rail face, 2 #8 x 1" at each end',
    'part slat 4 of 1x4, length 20"\npart rail 2 of 2x4, length 30"\npart batten 2 of 1x4, length 30"\nfasten slat face into rail face and batten face, 2 #8 x 1-1/8" at each end',
    'part peg 6 of 2x2, length 5"\npart rail 1 of 1x4, length 30"\nfasten peg end into rail face, #8 x 2" in all',
  ],
  "screw-pokes-through": [
    joined('3/4"', '3/4"', '2 #8 x 2" at each end'),
    joined('3/4"', '3/4"', '2 #8 x 1-7/16" at each end'),
    joined('1/2"', '3/4"', '2 #8 x 1-1/4" at each end'),
    `fastener deck-2, #8 x 2" screw\nfastener deck-1, #8 x 1-1/4" screw\n${joined('3/4"', '3/4"', "2 deck-2 at each end")}`,
    joined('1/2"', '1/2"', '2 #8 x 1-1/4" at each end'),
    joined('3/4"', '3/4"', '2 #8 x 2-1/4" at each end, angled 10°', "slat into rail"),
    joined('1/4"', '1/4"', '2 #8 x 1-1/4" at each end'),
    joined('3/4"', '1-1/2"', '2 #8 x 2-1/2" at each end'),
    joined("18mm", "18mm", "2 4 x 40mm at each end"),
    joined("18mm", "45mm", "2 8 x 80mm at each end"),
    `fastener long-nail, nail 0.131" x 2-1/2"\n${joined('3/4"', '3/4"', "2 long-nail at each end")}`,
    joined('5/8"', '5/8"', '2 #8 x 1-1/4" at each end, angled 5°'),
    joined('1/2"', '3/8"', '2 #8 x 1-1/4" at each end, angled 35°'),
    'part slat 4 of 1x4, length 20"\npart rail 2 of 1x4, length 30"\npart post 2 of 2x4, length 30"\nfasten slat face into rail face and post face, 2 #8 x 2-1/2" at each end',
    'part slat 4 of 1x4, length 20"\npart rail 2 of 1x4, length 30"\npart batten 2 of 1x2, length 30"\nfasten slat face into rail face and batten face, 2 #8 x 1-7/16" at each end',
    'part slat 4 of 1x4, length 20"\npart rail 2 of 1x4, length 30"\npart post 2 of 4x4, length 30"\nfasten slat face and post face into rail face, 2 #8 x 4" at each end',
  ],
  "too-long-for-stock": [
    "stock 2x4, sold 6' $3.10, 8' $4.20\npart rail 2 of 2x4, length 100\"",
    "stock 2x4, sold 6' $3.10\npart rail 2 of 2x4, length 85\"",
    'stock 2x4, on hand 1 of 8\' bad 30" to 36"\npart rail 1 of 2x4, length 61"',
    'sheet shelf-ply, plywood 1/2", sold 48" x 96" $38\npart shelf 1 of shelf-ply, length 100", width 10"',
  ],
  "too-wide-for-stock": [
    'part panel 2 of 1x6, length 20", width 6"',
    'sheet shelf-ply, plywood 1/2", sold 48" x 96" $38\npart shelf 1 of shelf-ply, length 60", width 50"',
  ],
};
