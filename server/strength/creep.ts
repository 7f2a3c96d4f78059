/** Sag that grows with the years under what never leaves. Millimetres, N/mm2. */

/**
 * How far a beam sags in the long run, mm: the part that stays on it counts `factor` times, what comes and goes once
 * (NDS 3.5.2: factor 1.5 for wood seasoned and kept dry, 2.0 where it is put in green or gets wet).
 * Undefined unless all are finite and the factor is at least 1.
 */
export function longTermSag(permanent: number, short: number, factor: number): number | undefined {
  const sag = factor * permanent + short;
  return factor >= 1 && Number.isFinite(sag) ? sag : undefined;
}
