/**
 * How loose fill presses on the walls of a box. Depths in millimetres below the fill's surface, densities kg/m3,
 * friction angles in degrees, pressures N/mm2, thrusts newtons for each millimetre of wall. Undefined on numbers that
 * are none or below 0.
 */
import { finite, notNegative, STANDARD_GRAVITY } from "./units";

/** Share of its weight with which fill at rest presses sideways: 1 - sin(phi) (Jaky). For walls that do not give. */
export function atRest(phiDeg: number): number | undefined {
  return angle(phiDeg) ? 1 - Math.sin(radians(phiDeg)) : undefined;
}

/** The same where the wall gives way: tan^2(45 - phi/2) (Rankine, active). */
export function active(phiDeg: number): number | undefined {
  return angle(phiDeg) ? Math.tan(radians(45 - phiDeg / 2)) ** 2 : undefined;
}

/** At rest in fill that was pressed harder once, by so many times: (1 - sin phi) OCR^(sin phi) (Mayne and Kulhawy). */
export function overconsolidated(phiDeg: number, ratio: number): number | undefined {
  const rest = atRest(phiDeg);
  if (rest === undefined || !(ratio >= 1)) return undefined;
  return finite(rest * ratio ** Math.sin(radians(phiDeg)));
}

/** Sideways pressure at a depth: K times density times depth. With K = 1 the pressure of water. */
export function pressureAt(depthMm: number, densityKgM3: number, share: number): number | undefined {
  if (![depthMm, densityKgM3, share].every(notNegative)) return undefined;
  return finite(share * weightOver(depthMm, densityKgM3));
}

/** What a load spread over the whole surface adds at every depth: K times its N/mm2. */
export function surcharge(loadMpa: number, share: number): number | undefined {
  return notNegative(loadMpa) && notNegative(share) ? finite(loadMpa * share) : undefined;
}

export interface Thrust {
  /** For each millimetre of wall along the box. */
  readonly newtonsPerMm: number;
  /** How high above the foot of the fill it acts, mm. */
  readonly heightMm: number;
}

/** All that presses on a wall from the surface to a depth: 1/2 K gamma H^2 at H/3, with a surface load K q H at H/2. */
export function thrust(
  depthMm: number,
  densityKgM3: number,
  share: number,
  surfaceMpa = 0,
): Thrust | undefined {
  const foot = pressureAt(depthMm, densityKgM3, share);
  const even = surcharge(surfaceMpa, share);
  if (foot === undefined || even === undefined) return undefined;
  const wedge = (foot * depthMm) / 2;
  const block = even * depthMm;
  const newtonsPerMm = wedge + block;
  if (!Number.isFinite(newtonsPerMm)) return undefined;
  if (newtonsPerMm === 0) return { newtonsPerMm, heightMm: depthMm / 3 };
  const wedgeShare = wedge / newtonsPerMm;
  return { newtonsPerMm, heightMm: depthMm * (wedgeShare / 3 + (1 - wedgeShare) / 2) };
}

export interface WetPressure {
  readonly water: number;
  readonly soil: number;
  readonly total: number;
}

/**
 * Pressure at a depth in a box whose drain is blocked: water to `waterDepthMm` below the surface (to the surface when
 * left out) presses in full, and the fill with K of what it weighs in it. Fill over the water weighs `moistKgM3` (as
 * saturated when left out). Fill lighter than water floats and adds nothing.
 */
export function blockedDrain(
  depthMm: number,
  saturatedKgM3: number,
  share: number,
  above: { readonly waterDepthMm: number; readonly moistKgM3?: number } = { waterDepthMm: 0 },
): WetPressure | undefined {
  const { waterDepthMm, moistKgM3 = saturatedKgM3 } = above;
  if (![depthMm, saturatedKgM3, share, waterDepthMm, moistKgM3].every(notNegative)) return undefined;
  const under = Math.max(0, depthMm - waterDepthMm);
  const water = weightOver(under, WATER);
  const soil =
    share * (weightOver(depthMm - under, moistKgM3) + weightOver(under, Math.max(0, saturatedKgM3 - WATER)));
  const total = water + soil;
  return Number.isFinite(total) ? { water, soil, total } : undefined;
}

/** kg/m3, near enough from 0 to 30 degrees C. */
const WATER = 1000;

/** N/mm2 under so many millimetres of kg/m3. */
const weightOver = (depthMm: number, densityKgM3: number): number =>
  (depthMm / 1e9) * densityKgM3 * STANDARD_GRAVITY;

const angle = (phiDeg: number): boolean => phiDeg >= 0 && phiDeg < 90;
const radians = (deg: number): number => (deg * Math.PI) / 180;
