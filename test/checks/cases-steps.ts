/** Plans whose steps are in the wrong order, leave something out, leave no time, or ask too much of hands and brushes. */
import type { Case } from "./cases";
import { STAND } from "./plans";

const OIL = "finish oil, dries 12 h\ncoat leg and rail with oil\n";
const OUTDOORS = "plan Stand\n  UNITS\n  outdoors\n  foot limit 270 lb by the mason\n";

/** A box of four walls on a bottom of planks. */
const bed = (steps: string): string => `part side of 1x6, length 30"
part end of 1x6, length 10-1/2"
part plank of 1x4, length 28-1/2"
place side across, on edge, on floor, 0 from left, 0 from front
place side across, on edge, on floor, 0 from left, 11-1/4" from front
place end front to back, on edge, on floor, 0 from left, between front side and back side
place end front to back, on edge, on floor, 29-1/4" from left, between front side and back side
place plank across, flat, on floor, between left end and right end, behind front side, 3 deep, tight
box bed, walls side and end, bottom plank
roll liner, width 6'
line bed with liner
${steps}`;

/** Four mitered rails on four legs. */
const CAPPED = `part leg of 4x4, length 20"
part cap-side of 1x4, length 30", long point to long point, ends mitered 45°
ring cap = 4 cap-side
place leg upright, wide face front, on floor, at each corner of 30" x 30"
place cap flat, on legs, flush with left of legs, flush with front of legs
fasten cap-side into leg, 1 #8 x 1-5/8" at each crossing, angled 30°
`;

const beam = (length: string, steps: string): string =>
  `stock beam of 6x6, species douglas-fir, sold 24' $99\npart sill 1 of beam, length ${length}\n${steps}`;

/** A frame of heavy boards on two trestles of posts and a beam, each built by itself. */
const HEAVY = `stock plank of 2x12, species douglas-fir, sold 12' $30
stock 6x6, species douglas-fir, sold 12' $60
part post of 6x6, length 24"
part rail of plank, length 96"
part tie of plank, length 45-1/2"
place post upright, wide face front, on floor, at each corner of 96" x 48-1/2"
place rail across, flat, on posts, flush with left of posts, flush with front of posts
place rail across, flat, on posts, flush with left of posts, flush with back of posts
place tie front to back, on edge, on rails, flush with left of rails, 1-1/2" in from front of rails
place tie front to back, on edge, on rails, flush with right of rails, 1-1/2" in from front of rails
fasten tie edge into rail face, 2 #10 x 3-1/2" at each crossing, angled 20°, pilot 1/8"
fasten rail into post end, 2 #10 x 3-1/2" at each crossing, angled 30°, pilot 1/8"
`;

/** The same, with rails and ties as an assembly. */
const HEAVY_DECK = `stock plank of 2x12, species douglas-fir, sold 12' $30
stock 6x6, species douglas-fir, sold 12' $60
part post of 6x6, length 24"
part rail of plank, length 96"
part tie of plank, length 45-1/2"
assembly deck
  place rail across, flat, on floor, 0 from left, 0 from front
  place rail across, flat, on floor, 0 from left, 37-1/4" from front
  place tie front to back, on edge, on rails, flush with left of rails, 1-1/2" in from front of rails
  place tie front to back, on edge, on rails, flush with right of rails, 1-1/2" in from front of rails
  fasten tie edge into rail face, 2 #10 x 3-1/2" at each crossing, angled 20°, pilot 1/8"
place post upright, wide face front, on floor, at each corner of 96" x 48-1/2"
place deck, on posts, flush with left of posts, flush with front of posts
fasten rail into post end, 2 #10 x 3-1/2" at each crossing, angled 30°, pilot 1/8"
`;

const SLATS = `part batten of 1x2, length 12"
part slat of 1x4, length 30"
place batten front to back, flat, on floor, 0 from left, 0 from front
place batten front to back, flat, on floor, 28-1/2" from left, 0 from front
place slat across, flat, on battens, flush with left of battens, flush with front of battens, 3 deep, 1/4" apart
fasten slat into batten, 2 #8 x 1-1/4" at each crossing, pilot 3/32"
finish oil, dries 12 h
coat slat with oil
`;

/** A bin 40" deep and a foot wide, with cleats at the foot of its walls. */
const bin = (steps: string): string => `sheet ply, plywood 3/4", sold 48" x 96" $60
part side of ply, length 40", width 14"
part end of ply, length 40", width 12"
part cleat of 2x2, length 12"
place side upright, wide face front, on floor, 0 from left, 0 from front
place side upright, wide face front, on floor, 0 from left, 12-3/4" from front
place end upright, wide face left, on floor, 0 from left, between front side and back side
place end upright, wide face left, on floor, 13-1/4" from left, between front side and back side
place cleat front to back, on edge, on floor, right of left end, between front side and back side
box bin, walls side and end
fasten side into end edge, 3 #8 x 2" along it
fasten cleat face into end face, 2 #8 x 2" at each crossing
${steps}`;

/** Two boards that hang on each side of four legs, one above the other. */
const HUNG = `part leg of 2x4, length 30"
part side of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs, 2 high, tight
place side across, on edge, behind legs, flush with left of legs, flush with top of legs, 2 high, tight
fasten side into leg, 2 #8 x 1-5/8" at each crossing
`;

const STEPS = {
  frame: "step Build the frame\n  uses leg and rail\n",
  slats: "step Screw the slats on\n  uses slat\n",
} as const;

export const STEPS_CASES: Readonly<Record<string, readonly Case[]>> = {
  "cannot-reach": [
    `${SLATS}step Screw the slats on\n  uses batten and slat\nstep Oil them\n  coats slat\n`,
    `${SLATS}step Screw the slats on\n  uses batten\n  uses slat\nstep Oil them\n  coats slat\n  uses batten\n`,
    bin("step Screw the bin together\n  uses side and end\nstep Screw a cleat in\n  uses cleat\n"),
  ],
  "finish-after-cover": [
    `${OUTDOORS}${STAND}${OIL}${STEPS.frame}step Oil it\n  coats leg and rail\n  wait 12 h\n${STEPS.slats}`,
    `${OUTDOORS}${STAND}${OIL}${STEPS.frame}step Oil the rails, and screw the slats on when they are dry\n  coats rail\n  uses slat\n`,
  ],
  "heavy-to-lift": [
    beam("12'", "step Lay the sill\n  uses sill\n"),
    beam("24'", "step Carry the sill here\n  uses sill\n  2 people\n"),
    beam("12'", "step Lay the sill\n  uses sill, takes 20 min, 1 person\n").replace("sill 1 of", "sill 2 of"),
    beam("24' 1\"", "step Lay the sill\n  uses sill\n").replace("6x6", "8x8").replace("24' $99", "26' $199"),
    `${HEAVY}step Build the top on the ground\n  uses rail and tie\nstep Set it on the posts\n  uses post\n`,
    `${HEAVY_DECK}step Stand the posts up\n  uses post\n  2 people\nstep Set the deck on them\n  uses deck\n`,
  ],
  "never-assembled": [
    `${STAND}step Build the frame\n  uses leg and front rail\n${STEPS.slats}`,
    `${STAND}step Build the frame\n  uses leg and rail\nstep Begin with the slats on the left\n  uses left slats\n`,
    `${STAND}${STEPS.frame}`,
    `${CAPPED}step Stand the legs up\n  uses leg\n`,
    `${STAND}part peg 4 of 2x2, length 3"\nplace peg upright, wide face front, on slats, flush with left of slats, flush with front of slats\n${STEPS.frame}${STEPS.slats}`,
    `${STAND}step Screw it together\nstep Carry it out\n`,
    `${STAND}`,
    `part leg 4 of 2x4, length 20"\npart rail 2 of 1x6, length 30"\nfasten rail face into leg face, 2 #8 x 1-5/8" at each end\nstep Cut the legs\n  uses leg\n`,
  ],
  "step-uses-later": [
    `${STAND}${STEPS.slats}${STEPS.frame}`,
    `${STAND}step Begin\n  uses leg and slat\nstep Go on\n  uses rail\n`,
    `${STAND}finish oil, dries 12 h\ncoat slat with oil\nstep Begin\n  uses slat\n  coats slat\n  wait 12 h\n${STEPS.frame}`,
    bed("step Line the bed\n  lines bed\nstep Build it\n  uses side and end and plank\n"),
    bed("step Build and line it\n  uses side and end\n  lines bed\nstep Lay the bottom\n  uses plank\n"),
    `${HUNG}step Screw the sides on\n  uses side\nstep Stand the legs up\n  uses leg\n`,
    `${CAPPED}step Stand the legs up and put the cap on\n  uses leg and cap\nstep Straighten the sides\n  uses cap-side\n`,
  ],
  "wait-missing": [
    `${STAND}${OIL}step Oil the frame\n  coats leg and rail\n${STEPS.frame}${STEPS.slats}`,
    `${STAND}${OIL.replace("with oil", "with oil, 2 coats")}step Oil the frame twice\n  coats leg and rail\n  takes 1 h, then wait 12 h\nstep Sweep up\n  takes 30 min\n${STEPS.frame}${STEPS.slats}`,
    `${STAND}${OIL.replace("with oil", "with oil, 2 coats")}step Oil the front\n  coats front legs\n  wait 24 h\nstep Oil the back\n  coats back legs\n  wait 12 h\n${STEPS.frame}${STEPS.slats}`,
    bed(
      "finish oil, dries 12 h\ncoat side and end with oil\nstep Build it\n  uses side and end and plank\nstep Oil it\n  coats bed\nstep Line it\n  lines bed\n",
    ),
    `${STAND.replace('fasten rail into leg, 2 #8 x 1-5/8" at each crossing', "glue rail to leg, with wood-glue")}${STEPS.frame}${STEPS.slats}`,
  ],
};
