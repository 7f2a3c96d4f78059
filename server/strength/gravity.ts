/** Where the weight of several bodies acts, and what wood weighs by its specific gravity. */
import { finite, KG_M3_PER_LB_FT3, notNegative, positive } from "./units";

export interface Weighted {
  /** Kilograms or newtons, the same for all. */
  readonly weight: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The whole weight, at its centre of gravity. Undefined when nothing weighs anything, or a weight is below 0 or no number. */
export function centreOfGravity(bodies: readonly Weighted[]): Weighted | undefined {
  let [weight, x, y, z] = [0, 0, 0, 0];
  for (const body of bodies) {
    if (!notNegative(body.weight)) return undefined;
    weight += body.weight;
    x += body.weight * body.x;
    y += body.weight * body.y;
    z += body.weight * body.z;
  }
  const centre = { weight, x: x / weight, y: y / weight, z: z / weight };
  return weight > 0 && Object.values(centre).every(Number.isFinite) ? centre : undefined;
}

/**
 * kg/m3 of wood by its oven-dry gravity at a moisture in percent: 62.4 [G / (1 + 0.009 G M)] (1 + M/100) lb/cuft
 * (NDS Supplement 3.1.3). Over 30% the wood no longer swells, so the water only adds.
 */
export function densityOvenDry(gravity: number, moisture: number): number | undefined {
  if (!positive(gravity) || !notNegative(moisture)) return undefined;
  const there = gravity / (1 + 0.009 * gravity * Math.min(moisture, 30));
  return finite(62.4 * there * (1 + moisture / 100) * KG_M3_PER_LB_FT3);
}

/** kg/m3 by the gravity on the volume at that moisture: 1000 G (1 + M/100) (Wood Handbook Eq. 4-12). */
export function densityAtMoisture(gravity: number, moisture: number): number | undefined {
  return positive(gravity) && notNegative(moisture)
    ? finite(1000 * gravity * (1 + moisture / 100))
    : undefined;
}

/**
 * Gravity on the volume at a moisture, from the basic gravity (green volume): G / (1 - 0.265 a G), a = (30 - M) / 30
 * (Wood Handbook Eq. 4-11); from 30% up the basic one. Undefined from a basic gravity of 1.5 up, more than any wood's.
 */
export function gravityAtMoisture(basicGravity: number, moisture: number): number | undefined {
  if (!positive(basicGravity) || basicGravity >= 1.5 || !notNegative(moisture)) return undefined;
  return basicGravity / (1 - 0.265 * basicGravity * ((30 - Math.min(moisture, 30)) / 30));
}
