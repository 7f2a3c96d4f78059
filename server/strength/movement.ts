/** How much wood swells and shrinks across the grain between two moistures, and what moisture the air brings it to. */
import { finite, notNegative, positive } from "./units";

/** Moisture in percent over which most wood no longer swells (Wood Handbook, chapter 4). */
export const SATURATION = 30;

/**
 * Percent of the green size that wood has shrunk at a moisture: S0 (30 - M) / 30, nothing over 30% (Wood Handbook
 * Eq. 4-7). Some woods start to shrink at a lower moisture than 30%: `saturation`.
 */
export function shrinkage(
  totalPercent: number,
  moisture: number,
  saturation: number = SATURATION,
): number | undefined {
  if (!shrinks(totalPercent) || !notNegative(moisture) || !positive(saturation)) return undefined;
  return totalPercent * (1 - Math.min(moisture, saturation) / saturation);
}

/**
 * Millimetres by which a board of a size at one moisture grows (above 0) or shrinks (below 0) on its way to another,
 * from its shrinkage green to oven-dry in percent: D (MF - MI) / (30 (100) / S - 30 + MI) (Wood Handbook Eq. 13-2).
 * Any moistures in percent; over `saturation` nothing moves. Undefined on numbers that are none or below 0.
 */
export function change(
  sizeMm: number,
  from: number,
  to: number,
  totalPercent: number,
  saturation: number = SATURATION,
): number | undefined {
  const before = shrinkage(totalPercent, from, saturation);
  const after = shrinkage(totalPercent, to, saturation);
  if (before === undefined || after === undefined || !notNegative(sizeMm)) return undefined;
  return finite(sizeMm * ((before - after) / (100 - before)));
}

export type CoefficientChange =
  | { readonly kind: "change"; readonly mm: number }
  /** A moisture beyond 6 to 14 percent, where the coefficients do not hold. */
  | { readonly kind: "outside" };

/** The same by a coefficient per 1% of moisture, D C (MF - MI), which holds from 6 to 14 percent (Wood Handbook Eq. 13-1). */
export function byCoefficient(
  sizeMm: number,
  coefficient: number,
  from: number,
  to: number,
): CoefficientChange | undefined {
  if (![sizeMm, coefficient, from, to].every(notNegative)) return undefined;
  if (Math.min(from, to) < 6 || Math.max(from, to) > 14) return { kind: "outside" };
  const mm = finite(sizeMm * coefficient * (to - from));
  return mm === undefined ? undefined : { kind: "change", mm };
}

/**
 * Moisture in percent that wood comes to in air of a relative humidity (percent) and temperature (degrees C): the
 * sorption form of Wood Handbook Eq. 4-5, from memory. Undefined outside of 0 to 100% and of its table, -1.1 to 132 degrees.
 */
export function equilibriumMoisture(humidity: number, celsius: number): number | undefined {
  if (!(humidity >= 0 && humidity <= 100 && celsius >= COLDEST && celsius <= HOTTEST)) return undefined;
  const t = celsius;
  const w = 349 + 1.29 * t + 0.0135 * t ** 2;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t ** 2;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2;
  const kh = (k * humidity) / 100;
  const bound = k1 * kh + k1 * k2 * kh ** 2;
  return (1800 / w) * (kh / (1 - kh) + (bound + k1 * k2 * kh ** 2) / (1 + bound));
}

const COLDEST = -1.2;
const HOTTEST = 132.3;

/** Green to oven-dry in percent; no wood shrinks by the half. */
const shrinks = (percent: number): boolean => percent >= 0 && percent <= 50;
