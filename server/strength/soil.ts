/**
 * How loose fill presses on the walls of a box. Depths in millimetres below the fill's surface, densities kg/m3,
 * friction angles in degrees, pressures N/mm2. Undefined on numbers that are none or below 0.
 */
import { finite, notNegative, STANDARD_GRAVITY } from "./units";

/** Share of its weight with which fill at rest presses sideways: 1 - sin(phi) (Jaky). For walls that do not give. */
export function atRest(phiDeg: number): number | undefined {
  return angle(phiDeg) ? 1 - Math.sin(radians(phiDeg)) : undefined;
}

/** Sideways pressure at a depth: K times density times depth. With K = 1 the pressure of water. */
export function pressureAt(depthMm: number, densityKgM3: number, share: number): number | undefined {
  if (![depthMm, densityKgM3, share].every(notNegative)) return undefined;
  return finite(share * weightOver(depthMm, densityKgM3));
}

export interface WetPressure {
  readonly water: number;
  readonly soil: number;
  readonly total: number;
}

/**
 * Pressure at a depth in a box whose drain is blocked: water to the fill's surface presses in full, and the fill with K of
 * what it weighs in it. Fill lighter than water floats and adds nothing.
 */
export function blockedDrain(depthMm: number, saturatedKgM3: number, share: number): WetPressure | undefined {
  if (![depthMm, saturatedKgM3, share].every(notNegative)) return undefined;
  const water = weightOver(depthMm, WATER);
  const soil = share * weightOver(depthMm, Math.max(0, saturatedKgM3 - WATER));
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
