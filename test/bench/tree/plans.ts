/** A folder of plans as a group of builders would have: each another one, made without chance from its number. */
import { type Random, randomFrom } from "../layout/random";

/** The shop file that all of them name. */
export const SHOP = `# What the yard of these plans sells.

stock 1x4, species western-redcedar, sold 6' $5.20, 8' $6.95, 10' $8.70
stock 1x6, species western-redcedar, sold 6' $7.90, 8' $10.55, 10' $13.20
stock 2x2, sold 8' $3.10, 12' $4.90
stock 2x4, sold 8' $4.40, 10' $5.85, 12' $7.35, on hand 3 of 41", 1 of 8' bad 30" to 36"
fastener deck-mid, #8 x 1-5/8" screw, box of 100 $8.20
fastener deck-long, #8 x 2" screw, box of 100 $11.40
`;

/** So many lines about benches, racks and troughs beside each other, with what is on them and the steps. */
export function treePlan(number: number, lines = 200): string {
  const random = randomFrom(number);
  const text = head(number, random);
  const steps: string[] = [];
  for (let i = 1, from = 0; ; i++) {
    const width = random.whole(28, 58);
    const thing = random.one([bench, rack, trough])({ i, from, width, random });
    const step = stepOf(i, thing, random);
    if (text.length + steps.length + thing.length + step.length > lines) break;
    text.push(...thing);
    steps.push(...step);
    from += width + 24;
  }
  const rest = Array.from({ length: lines - text.length - steps.length }, (_, i) => `# Remark ${i + 1}.`);
  return `${[...text, ...steps, ...rest].join("\n")}\n`;
}

const stepOf = (i: number, thing: readonly string[], random: Random): string[] => [
  `step Put thing ${i} together, legs and long pieces first`,
  `  uses ${partsOf(thing).join(" and ")}`,
  `  takes ${random.whole(1, 4)} h, 2 people`,
  "",
];

const partsOf = (thing: readonly string[]): string[] =>
  thing.flatMap((line) => /^part (\S+)/.exec(line)?.[1] ?? []);

interface Wanted {
  /** Which thing of the plan it is. */
  readonly i: number;
  /** Where it begins, in inches from the left. */
  readonly from: number;
  readonly width: number;
  readonly random: Random;
}

const head = (number: number, random: Random): string[] => [
  `# Things for yard ${number}, one beside the other.`,
  "",
  `plan Yard ${number}`,
  "  language 1",
  '  units inches to 1/16"',
  "  outdoors",
  "  anchored to the fence behind by two screws each",
  `  floor limit ${random.whole(83, 97)} psf by the yard's own builder`,
  `  budget $${random.whole(3, 12) * 100}`,
  "tools",
  '  kerf 1/8"',
  "",
  "shop yard.sawbuck",
  "",
];

/** A rail at each end, so high on the legs. */
const ends = (i: number, height: string, along = "side"): string[] =>
  ["left", "right"].map(
    (side) =>
      `place end-${i} front to back, on edge, ${side} of leg-${i}, flush with front of ${along}-${i}, ${height} leg-${i}`,
  );

/** Four legs, sides and ends, slats across. */
function bench({ i, from, width, random }: Wanted): string[] {
  const depth = random.whole(13, 19);
  return [
    `# Thing ${i}: a bench.`,
    "# It is made like the others, by whoever is there on that day.",
    "",
    `measure height-${i} = ${random.whole(15, 19)}-${random.one(["1/2", "1/4", "3/8"])}", at least 12", at most 48"`,
    `measure width-${i} = ${width}"`,
    "",
    `part leg-${i} of 2x4, length height-${i} - thickness of 1x4`,
    `part side-${i} of 1x6, length overall width of leg-${i}`,
    `part end-${i} of 1x6, length overall depth of side-${i}`,
    `part slat-${i} of 1x4, length overall depth of side-${i}`,
    "",
    `place leg-${i} upright, wide face front, on floor, ${from}" from left, at each corner of width-${i} x ${depth}"`,
    `place side-${i} across, on edge, in front of leg-${i}, flush with left of leg-${i}, flush with top of leg-${i}`,
    `place side-${i} across, on edge, behind leg-${i}, flush with left of leg-${i}, flush with top of leg-${i}`,
    ...ends(i, "flush with top of"),
    `place slat-${i} front to back, flat, on leg-${i}, flush with front of side-${i}, ${Math.floor(width / 4)} across, 3/8" apart`,
    `  centered left to right on leg-${i}`,
    "",
    `fasten side-${i} into leg-${i}, 2 deck-long at each crossing, pilot 1/8"`,
    `fasten end-${i} into leg-${i}, 2 deck-mid at each crossing, pilot 1/8"`,
    `fasten slat-${i} into side-${i}, 1 deck-mid at each crossing, pilot 1/8"`,
    "",
    `load slat-${i} ${random.whole(80, 240)} lb spread`,
    `must height-${i} at most 20" because children sit on it`,
    "",
  ];
}

/** Four legs, rails at two heights, slats on each. */
function rack({ i, from, width, random }: Wanted): string[] {
  const row = `${Math.floor(width / 5)} across, 1" apart`;
  const sides = (where: string) => [
    `place side-${i} across, on edge, in front of leg-${i}, flush with left of leg-${i}, ${where}`,
    `place side-${i} across, on edge, behind leg-${i}, flush with left of leg-${i}, ${where}`,
  ];
  return [
    `# Thing ${i}: a rack with two shelves.`,
    "# It is made like the others, by whoever is there on that day.",
    "",
    `measure height-${i} = ${random.whole(26, 40)}"`,
    `measure width-${i} = ${width}"`,
    "",
    `part leg-${i} of 2x4, length height-${i}`,
    `part side-${i} of 1x6, length overall width of leg-${i}`,
    `part end-${i} of 1x6, length overall depth of side-${i}`,
    `part slat-${i} of 1x4, length overall depth of side-${i}`,
    "",
    `place leg-${i} upright, wide face front, on floor, ${from}" from left, at each corner of width-${i} x 16"`,
    ...sides(`flush with top of leg-${i}`),
    ...sides(`8" in from bottom of leg-${i}`),
    ...ends(i, "flush with top of"),
    ...ends(i, '8" in from bottom of'),
    `place slat-${i} front to back, flat, on leg-${i}, flush with front of side-${i}, ${row}`,
    `  centered left to right on leg-${i}`,
    `place slat-${i} front to back, flat, on bottom side-${i}, flush with front of bottom side-${i}`,
    `  as many as fit, at most 2" apart, between left leg-${i} and right leg-${i}`,
    "",
    `fasten side-${i} into leg-${i}, 2 deck-long at each crossing, pilot 1/8"`,
    `fasten slat-${i} into side-${i}, 1 deck-mid at each crossing, pilot 1/8"`,
    `fasten end-${i} into leg-${i}, 2 deck-mid at each crossing, pilot 1/8"`,
    "",
    `load slat-${i} ${random.whole(40, 90)} lb spread`,
    "",
  ];
}

/** A floor on four legs with walls around it, filled. */
function trough({ i, from, width, random }: Wanted): string[] {
  return [
    `# Thing ${i}: a trough.`,
    "# It is made like the others, by whoever is there on that day.",
    "",
    `measure height-${i} = ${random.whole(18, 27)}"`,
    `measure width-${i} = ${width}"`,
    "",
    `part leg-${i} of 2x4, length height-${i}`,
    `part bearer-${i} of 2x4, length overall width of leg-${i}`,
    `part floor-${i} of 1x6, length overall width of leg-${i}`,
    `part wall-${i} of 1x6, length overall width of leg-${i}`,
    `part end-${i} of 1x6, length overall depth of wall-${i}`,
    "",
    `place leg-${i} upright, wide face front, on floor, ${from}" from left, at each corner of width-${i} x 9-1/2"`,
    `place bearer-${i} across, on edge, behind front leg-${i}, flush with left of leg-${i}, 8" in from top of leg-${i}`,
    `place bearer-${i} across, on edge, in front of back leg-${i}, flush with left of leg-${i}, 8" in from top of leg-${i}`,
    `place wall-${i} across, on edge, in front of leg-${i}, flush with left of leg-${i}, flush with top of leg-${i}`,
    `place wall-${i} across, on edge, behind leg-${i}, flush with left of leg-${i}, flush with top of leg-${i}`,
    ...ends(i, "flush with top of", "wall"),
    `place floor-${i} across, flat, on bearer-${i}, flush with left of leg-${i}, centered front to back on leg-${i}`,
    "",
    `fasten bearer-${i} into leg-${i}, 2 deck-long at each crossing, pilot 1/8"`,
    `fasten wall-${i} into leg-${i}, 2 deck-long at each crossing, pilot 1/8"`,
    `fasten end-${i} into leg-${i}, 2 deck-mid at each crossing, pilot 1/8"`,
    `fasten floor-${i} into bearer-${i}, 3 deck-mid along it, pilot 1/8"`,
    "",
    `load floor-${i} ${random.whole(30, 60)} lb spread`,
    "",
  ];
}
