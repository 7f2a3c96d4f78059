/** Plans whose wood rots, whose fasteners rust, and whose holes for screws are missing or of a wrong size. */
import type { Case } from "./cases";

const OUTDOORS = "plan A thing\n  UNITS\n  outdoors\n";
const ON_SLABS = "plan A thing\n  UNITS\n  outdoors\n  foot limit 270 lb by the mason\n";

/** Two legs and a seat on them. */
const stool = (leg: string, stock = "", plan = OUTDOORS): string =>
  `${plan}${stock}part leg of ${leg}, length 17"\npart seat of 1x6, length 24"\nplace leg upright, wide face front, on floor, 0 from left, 0 from front, 2 across, 16" apart\nplace seat across, flat, on legs, flush with left of legs, flush with front of legs`;
/** A board on the floor. */
const sill = (of: string, stock = "", plan = OUTDOORS): string =>
  `${plan}${stock}part sill of ${of}, length 40"\nplace sill across, flat, on floor, 0 from left, 0 from front`;
/** A box of boards on the floor, with a stake in its soil; `more` stands after its line. */
const bed = (box: string, stock = "", more = ""): string =>
  `${stock}part side of 1x6, length 30"\npart end of 1x6, length 10-1/2"\npart plank of 1x4, length 28-1/2"\npart stake of 2x2, length 12"\nplace side across, on edge, on floor, 0 from left, 0 from front\nplace side across, on edge, on floor, 0 from left, 11-1/4" from front\nplace end front to back, on edge, on floor, between front side and back side, flush with left of sides\nplace end front to back, on edge, on floor, between front side and back side, flush with right of sides\nplace plank across, flat, on floor, right of left end, behind front side, 3 deep, tight\nplace stake upright, on planks, right of left end, behind front side\nbox bed, walls side and end, bottom plank\n  ${box}${more}`;
const CEDAR = "stock 1x6, species western-redcedar\nstock 1x4, species western-redcedar\n";
const HEART = `stock heart-6 of 1x6, species western-redcedar, heartwood, sold 8' $17\nstock heart-4 of 1x4, species western-redcedar, heartwood, sold 8' $11\n`;

/** A slat on two rails, its ends flush with them. */
const slat = (screws: string, of = "1x4", rail = "2x4", stock = ""): string =>
  `${stock}part rail of ${rail}, length 30"\npart slat of ${of}, length 12"\nplace rail across, on edge, on floor, 0 from left, 0 from front\nplace rail across, on edge, on floor, 0 from left, 10-1/2" from front\nplace slat front to back, flat, on rails, 4" in from left of rails, flush with front of rails\nfasten slat into rail, ${screws}`;
const joint = (screws: string, stock = "", of = "2x4"): string =>
  `${stock}part post 2 of 4x4, length 30"\npart rail 2 of ${of}, length 40"\nfasten rail face into post face, ${screws}`;

export const WEATHER_CASES: Readonly<Record<string, readonly Case[]>> = {
  "will-rot": [
    stool("2x4"),
    stool("2x4", "stock 2x4, species spruce-pine-fir\nstock ground-2x4 of 2x4, treated, sold 8' $6.40\n"),
    stool("2x4", "stock 2x4, species douglas-fir, heartwood\n"),
    stool("2x4", "stock 2x4, species hem-fir, heartwood\n"),
    sill("4x4"),
    sill("4x4", "", ON_SLABS),
    stool(
      "2x4",
      "",
      `${ON_SLABS}finish yard-oil, covers 250 sqft per gal, 2 coats\ncoat seat with yard-oil\n`,
    ),
    bed("filled with soil\n  drains through the gaps\n  grows beans", CEDAR),
    bed("filled with soil\n  drains through the gaps\n  grows beans", `${CEDAR}${HEART}`),
    bed(
      "filled with soil\n  drains through the gaps",
      CEDAR,
      "\nroll bed-foil, width 6'\nroll bed-fabric, width 3'\nline bed with bed-fabric",
    ),
    `${OUTDOORS}part side of 2x8, length 40"\npart end of 2x8, length 20"\nplace side across, on edge, on floor, 0 from left, 0 from front, 2 deep, 20" apart\nplace end front to back, on edge, on floor, between front side and back side, flush with left of sides\nplace end front to back, on edge, on floor, between front side and back side, flush with right of sides\nbox bed, walls side and end\n  filled with soil`,
  ],
  "fastener-rusts": [
    `plan A thing\n  UNITS\n  indoors\nfastener bright, #8 x 1-5/8" screw, coating plain\npart side 2 of 1x6, length 30"\npart post 4 of 2x4, length 5"\nfasten side face into post face, 2 bright at each end\nbox tank, inside 30" x 10" x 5", walls side\n  filled with water, no drain`,
    `${OUTDOORS}${joint("2 bright at each end", 'fastener bright, #8 x 3" screw, coating plain\n')}`,
    `${OUTDOORS}${joint("2 bright at each end", 'fastener bright, #8 x 3" screw, coating plain, box of 100 $4.90\nfastener deck, #8 x 3" screw, coating coated, box of 100 $7.90\nfastener steel, #8 x 3" screw, coating stainless, box of 100 $19\n')}\nfasten post face into rail face, 2 bright at each end`,
    `${OUTDOORS}${joint("2 bright at each end", 'stock 2x4, treated\nfastener bright, #8 x 3" screw, coating plain\n')}`,
    `${OUTDOORS}${joint("2 zinc at each end", 'stock 2x4, species western-redcedar\nfastener zinc, nail 0.131" x 2-1/2", coating galvanized\n')}`,
    `plan A thing\n  UNITS\n  indoors\nfastener bright, #8 x 1-5/8" screw, coating plain\npart side 2 of 1x6, length 30"\npart post 4 of 2x4, length 5"\nfasten side face into post face, 2 bright at each end\nbox bed, inside 30" x 10" x 5", walls side\n  filled with soil\n  grows beans\nline bed with pond-liner`,
  ],
  "screw-splits": [
    slat('1 #8 x 2" at each crossing'),
    slat('2 #10 x 2-1/2" at each crossing', "1x4", "4x4", "stock 1x4, species western-redcedar\n").replace(
      '10-1/2" from front',
      '8-1/2" from front',
    ),
    'part post of 2x4, length 30"\npart board of 1x4, length 30"\nplace post upright, wide face front, on floor, 0 from left, 0 from front\nplace board upright, wide face front, in front of post, flush with left of post, on floor\nfasten board into post, #8 x 1-5/8", 1-1/4" on center',
    joint('2 #8 x 3" at each end', "stock 2x4, species white-oak\n"),
    joint('2 #6 x 2" at each end', 'stock lath of 1x4, actual 3/8" x 3-1/2"\n', "lath"),
    'part post 2 of 4x4, length 30"\npart rail 1 of 2x4, length 40"\nfasten rail face into post end, 2 #8 x 3" at each end\naccept screw-in-end-grain on post because it only keeps the rail from sliding',
  ],
  "pilot-wrong": [
    joint('2 #8 x 3" at each end, pilot 9/64"'),
    joint(
      '2 #8 x 3" at each end, pilot 3/16"',
      "stock 2x4, species white-oak\nstock 4x4, species douglas-fir\n",
    ),
    joint('2 #10 x 3" at each end, pilot 1/16"'),
    joint("2 5 x 70mm at each end, pilot 4.5mm"),
    joint('2 #8 x 3" at each end, pilot 3/32", clearance 1/8"'),
    joint('2 #8 x 3" at each end, pilot 3/32", clearance 3/8"'),
    joint('2 pin at each end, pilot 1/8"', 'fastener pin, nail 0.131" x 2-1/2"\n'),
    joint('1 long at each end, pilot 3/16"', 'fastener long, bolt 1/4" x 6"\n'),
    joint('1 long at each end, clearance 7/16"', 'fastener long, bolt 1/4" x 6"\n'),
  ],
};
