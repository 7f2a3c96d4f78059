/**
 * What pulls a fastener out along its length: reference values of the NDS, for seasoned wood, side grain, a load of
 * ten years. Diameters are those of the shank (the thread's outside for lags). Gravity is on the oven-dry basis.
 * Newtons for each millimetre of thread (nails: of length) in the main piece; undefined on numbers that are none or not above 0.
 */
import { finite, MM_PER_INCH, NEWTONS_PER_POUND, positive } from "./units";

/** Cut or rolled wood screws: 2850 G^2 D pounds per inch of thread (NDS 12.2-2). */
export function screwWithdrawal(gravity: number, diameterMm: number): number | undefined {
  return perMm(gravity, diameterMm, (g, d) => 2850 * g ** 2 * d);
}

/** Smooth nails: 1380 G^2.5 D pounds per inch in the piece that holds the point (NDS 12.2-3). */
export function nailWithdrawal(gravity: number, diameterMm: number): number | undefined {
  return perMm(gravity, diameterMm, (g, d) => 1380 * g ** 2.5 * d);
}

/** Smooth stainless nails, which pull out sooner: 465 G^1.5 D, and never more than a plain nail (NDS 2018 12.2-4, from memory). */
export function stainlessNailWithdrawal(gravity: number, diameterMm: number): number | undefined {
  return perMm(gravity, diameterMm, (g, d) => Math.min(465 * g ** 1.5, 1380 * g ** 2.5) * d);
}

/** Lag screws: 1800 G^1.5 D^0.75 pounds per inch of thread, the tapered tip left out (NDS 12.2-1). */
export function lagWithdrawal(gravity: number, diameterMm: number): number | undefined {
  return perMm(gravity, diameterMm, (g, d) => 1800 * g ** 1.5 * d ** 0.75);
}

/**
 * Newtons that pull a round head through a side piece so thick (NDS 2018 12.2.5, from memory): 690 pi D G^2 t pounds
 * while t is at most 2.5 D, else 1725 pi D^2 G^2; D of the head, G of the side piece.
 */
export function headPullThrough(
  gravity: number,
  headDiameterMm: number,
  thickMm: number,
): number | undefined {
  if (![gravity, headDiameterMm, thickMm].every(positive)) return undefined;
  const head = headDiameterMm / MM_PER_INCH;
  const thick = Math.min(thickMm / MM_PER_INCH, 2.5 * head);
  return finite(690 * Math.PI * head * gravity ** 2 * thick * NEWTONS_PER_POUND);
}

function perMm(
  gravity: number,
  diameterMm: number,
  poundsPerInch: (gravity: number, diameter: number) => number,
): number | undefined {
  if (!positive(gravity) || !positive(diameterMm)) return undefined;
  return finite((poundsPerInch(gravity, diameterMm / MM_PER_INCH) * NEWTONS_PER_POUND) / MM_PER_INCH);
}
