/**
 * What a fastener holds across its length, one side piece on one main piece (single shear): the yield equations of
 * NDS 2018 Table 12.3.1A with the reduction terms of Table 12.3.1B and the bearing strengths of Table 12.3.3.
 * Reference values: dry wood, side grain, a load of ten years.
 */
import { finite, MM_PER_INCH, MPA_PER_PSI, NEWTONS_PER_POUND, notNegative, positive } from "./units";

export type YieldMode = "Im" | "Is" | "II" | "IIIm" | "IIIs" | "IV";

export interface LateralJoint {
  /** What the yield equations count on: the root of a threaded fastener, the shank of a nail or a bolt. */
  readonly diameterMm: number;
  readonly sideThickMm: number;
  /** In the main piece, the tip included; of a bolt, the thickness of the main piece. */
  readonly penetrationMm: number;
  /** Oven-dry specific gravity of each piece. */
  readonly gravitySide: number;
  readonly gravityMain: number;
  /** Bending yield strength of the fastener, N/mm2. */
  readonly yieldMpa: number;
  /** The shank, where that is thicker than `diameterMm`: what penetration and bearing count on. */
  readonly fullDiameterMm?: number;
  /** A wood screw when left out. */
  readonly fastener?: "screw" | "nail" | "lag" | "bolt";
  /** Between load and grain, degrees; 90, the weakest, when left out. Counts from 1/4 in of shank up. */
  readonly sideGrainDeg?: number;
  readonly mainGrainDeg?: number;
}

export interface LateralValue {
  readonly newtons: number;
  /** The way it gives: crushing of the main (Im) or side piece (Is), turning (II), bending in one (III) or both (IV). */
  readonly mode: YieldMode;
}

/**
 * Newtons and the way it gives. Undefined where no strength is claimed: less than 6 shank diameters in the main piece
 * (lags 4), or a number that is none or not above 0. From there to 10 diameters (lags 8) the value at 10 is scaled by
 * p/(10 D) (NDS Tables 12L to 12R, footnote; 12J, 12K for lags). A bolt goes through, so no penetration is asked.
 */
export function lateral(joint: LateralJoint): LateralValue | undefined {
  const { diameterMm, sideThickMm, penetrationMm, gravitySide, gravityMain, yieldMpa } = joint;
  const { fullDiameterMm = diameterMm, sideGrainDeg = 90, mainGrainDeg = 90, fastener = "screw" } = joint;
  if (![diameterMm, sideThickMm, penetrationMm, gravitySide, gravityMain, yieldMpa].every(positive))
    return undefined;
  if (!positive(fullDiameterMm) || fullDiameterMm < diameterMm) return undefined;
  if (![sideGrainDeg, mainGrainDeg].every((angle) => notNegative(angle) && angle <= 90)) return undefined;
  const { least, full } = PENETRATION[fastener];
  const reach = penetrationMm / fullDiameterMm;
  if (reach < least - ROUNDING) return undefined;
  const share = full === 0 ? 1 : Math.min(1, reach / full);
  const shank = fullDiameterMm / MM_PER_INCH;
  const modes = yields({
    diameter: diameterMm / MM_PER_INCH,
    main: penetrationMm / share / MM_PER_INCH,
    side: sideThickMm / MM_PER_INCH,
    bearingMain: bearing(gravityMain, shank, mainGrainDeg),
    bearingSide: bearing(gravitySide, shank, sideGrainDeg),
    bending: yieldMpa / MPA_PER_PSI,
    reduction: reductions(diameterMm / MM_PER_INCH, shank, Math.max(sideGrainDeg, mainGrainDeg)),
  });
  let lowest: readonly [YieldMode, number] = modes[0];
  for (const mode of modes) if (mode[1] < lowest[1]) lowest = mode;
  const newtons = modes.some(([, pounds]) => Number.isNaN(pounds))
    ? undefined
    : finite(lowest[1] * share * NEWTONS_PER_POUND);
  return newtons === undefined ? undefined : { newtons, mode: lowest[0] };
}

/**
 * Bearing strength of wood under a fastener, psi: 16,600 G^1.84 below 1/4 in; from there up 11,200 G along the grain
 * and 6,100 G^1.45 / sqrt(D) across it (NDS Table 12.3.3), between them by Hankinson (12.3-11). Inches, degrees.
 */
export function bearing(gravity: number, diameter: number, grainDeg: number): number {
  if (diameter < QUARTER) return 16_600 * gravity ** 1.84;
  const along = 11_200 * gravity;
  const across = (6_100 * gravity ** 1.45) / Math.sqrt(diameter);
  const sin2 = Math.sin((grainDeg * Math.PI) / 180) ** 2;
  return (along * across) / (along * sin2 + across * (1 - sin2));
}

interface Yielding {
  readonly diameter: number;
  readonly main: number;
  readonly side: number;
  readonly bearingMain: number;
  readonly bearingSide: number;
  readonly bending: number;
  readonly reduction: { readonly I: number; readonly II: number; readonly III: number };
}

/** NDS equations 12.3-1 to 12.3-6, pounds. */
function yields(of: Yielding): readonly [Mode, ...Mode[]] {
  const { diameter: d, main, side, bearingMain, bearingSide, bending, reduction } = of;
  const re = bearingMain / bearingSide;
  const rt = main / side;
  const k1 =
    (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) / (1 + re);
  const k2 =
    -1 + Math.sqrt(2 * (1 + re) + (2 * bending * (1 + 2 * re) * d ** 2) / (3 * bearingMain * main ** 2));
  const k3 =
    -1 + Math.sqrt((2 * (1 + re)) / re + (2 * bending * (2 + re) * d ** 2) / (3 * bearingMain * side ** 2));
  return [
    ["Im", (d * main * bearingMain) / reduction.I],
    ["Is", (d * side * bearingSide) / reduction.I],
    ["II", (k1 * d * side * bearingSide) / reduction.II],
    ["IIIm", (k2 * d * main * bearingMain) / ((1 + 2 * re) * reduction.III)],
    ["IIIs", (k3 * d * side * bearingMain) / ((2 + re) * reduction.III)],
    ["IV", (d ** 2 / reduction.III) * Math.sqrt((2 * bearingMain * bending) / (3 * (1 + re)))],
  ];
}

type Mode = readonly [YieldMode, number];

/** NDS Table 12.3.1B: K_D below 1/4 in; from there up 4, 3.6 and 3.2, more across the grain. Inches, degrees. */
function reductions(diameter: number, shank: number, grainDeg: number): Yielding["reduction"] {
  const turned = 1 + 0.25 * (grainDeg / 90);
  if (diameter >= QUARTER) return { I: 4 * turned, II: 3.6 * turned, III: 3.2 * turned };
  const small = diameter <= 0.17 ? 2.2 : 10 * diameter + 0.5;
  const all = shank >= QUARTER ? small * turned : small;
  return { I: all, II: all, III: all };
}

const QUARTER = 0.25;

/** Shank diameters in the main piece: the least that claims a strength, and what the full value takes (NDS 12.1.4 to 12.1.6). */
const PENETRATION = {
  screw: { least: 6, full: 10 },
  nail: { least: 6, full: 10 },
  lag: { least: 4, full: 8 },
  bolt: { least: 0, full: 0 },
} as const;

/** Of a ratio of lengths that came through inches and millimetres. */
const ROUNDING = 1e-9;
