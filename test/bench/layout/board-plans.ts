/**
 * Seeded board jobs as plans give them. Five lengths are sold at prices with cents that do not go evenly by the foot;
 * pieces lie on sixteenths of an inch, most of them shorter than 4 ft; some salvage lies about, some of it with a bad
 * stretch; four plans in ten have end trims.
 */
import type { BoardJob } from "../../../server/cutting/job";
import { type Random, randomFrom } from "./random";

export const PLANS = {
  lengths: [5, 60],
  pieces: [20, 400],
  soldFeet: [6, 8, 10, 12, 16],
  centsPerFoot: [45, 160],
  /** A length costs up to so much more or less than its feet do. */
  priceOffPercent: 12,
  salvage: [0, 15],
  salvageInches: [14, 110],
  badPercent: 20,
  kerfs: [1 / 16, 3 / 32, 1 / 8],
  trimPercent: 40,
  trims: [1 / 4, 1 / 2, 1],
  useUpPercent: 75,
} as const;

const INCH = 16256;

export function boardPlan(seed: number): BoardJob {
  const random = randomFrom(seed);
  const lengths = random.whole(...PLANS.lengths);
  const pieces = random.whole(Math.max(PLANS.pieces[0], lengths), PLANS.pieces[1]);
  const counts = Array.from({ length: lengths }, () => 1);
  for (let n = lengths; n < pieces; n++) counts[random.whole(0, lengths - 1)]!++;
  const perFoot = random.whole(...PLANS.centsPerFoot);
  return {
    pieces: counts.flatMap((count, i) => {
      const length = pieceLength(random);
      return Array.from({ length: count }, (_, n) => ({ id: `part-${i + 1} / ${n + 1}`, length }));
    }),
    sold: PLANS.soldFeet.map((feet) => ({
      id: `sold ${feet}`,
      length: feet * 12 * INCH,
      price: Math.round(
        (feet * perFoot * (100 + random.whole(-PLANS.priceOffPercent, PLANS.priceOffPercent))) / 100,
      ),
    })),
    onHand: Array.from({ length: random.whole(...PLANS.salvage) }, (_, i) => onHand(random, i)),
    kerf: random.one(PLANS.kerfs) * INCH,
    endTrim: random.chance(PLANS.trimPercent) ? random.one(PLANS.trims) * INCH : 0,
    salvage: random.chance(PLANS.useUpPercent) ? "use up" : "keep",
  };
}

/** Half of them 4 to 24 in, four in ten up to 48 in, the rest up to 90 in. */
function pieceLength(random: Random): number {
  const [low, high] = random.chance(50) ? [4, 24] : random.chance(80) ? [24, 48] : [48, 90];
  return random.whole(low * 16, high * 16) * (INCH / 16);
}

function onHand(random: Random, i: number): BoardJob["onHand"][number] {
  const inches = random.whole(...PLANS.salvageInches);
  const from = random.whole(0, inches - 2);
  const bad = random.chance(PLANS.badPercent)
    ? [{ from: from * INCH, to: (from + random.whole(1, 6)) * INCH }]
    : [];
  return { id: `pile ${i + 1}`, length: inches * INCH, bad };
}
