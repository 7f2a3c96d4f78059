/**
 * How much wider wood is when it is wetter. Wood shrinks from fiber saturation down to oven-dry in proportion to the
 * moisture it loses: S = S0 (Mf - M) / Mf (Wood Handbook, chapter 4, shrinkage and moisture; Mf usually 30%, of some woods
 * 22%). Above Mf it neither swells nor shrinks.
 */

/**
 * Percent of its green size that wood has shrunk at a moisture: `whole` percent from green to oven-dry, moistures in
 * percent. Nothing at `saturation` and above; below nothing is taken as nothing.
 */
export function shrunkAt(whole: number, moisture: number, saturation: number): number {
  const below = saturation - Math.min(Math.max(moisture, 0), saturation);
  return (whole * below) / saturation;
}

/**
 * By what share of its size wood grows from one moisture to another, both in percent: 0.02 for 2% wider, less than
 * nothing when it dries. `whole` is less than 100.
 */
export function growth(whole: number, from: number, to: number, saturation: number): number {
  return (100 - shrunkAt(whole, to, saturation)) / (100 - shrunkAt(whole, from, saturation)) - 1;
}
