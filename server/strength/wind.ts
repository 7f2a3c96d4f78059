/** How hard wind presses. */
import { finite, MPA_PER_PSF, notNegative } from "./units";

/**
 * Pressure of wind on what stands square to it, N/mm2, by its speed in miles an hour: factor times V^2 in psf (velocity
 * pressure of ASCE 7; the factor stands with the trade's tables). Undefined on numbers that are none or below 0.
 */
export function windPressure(mph: number, factor: number): number | undefined {
  return notNegative(mph) && notNegative(factor) ? finite(factor * mph ** 2 * MPA_PER_PSF) : undefined;
}
