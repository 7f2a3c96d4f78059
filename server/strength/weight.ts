/** The weight of wood. */

/**
 * Kilograms of wood of so many cubic millimetres, as cut (actual sizes, never nominal ones), at the density
 * in kg/m3 that it has at its moisture; undefined unless the volume is a number not below 0 and the density
 * one above 0.
 */
export function woodWeight(volumeMm3: number, densityKgPerM3: number): number | undefined {
  const kg = (volumeMm3 / 1e9) * densityKgPerM3;
  return volumeMm3 >= 0 && densityKgPerM3 > 0 && Number.isFinite(kg) ? kg : undefined;
}
