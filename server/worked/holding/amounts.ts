/** How much of forces is shown: no more than is known of them. */

import { STANDARD_GRAVITY } from "../../strength/units";
import { type Display, fraction, POUND, type Quantity, roughly, WEIGHT } from "../../units";

const LB = fraction.toNumber(POUND);

/** Newtons as a weight, to three figures of the unit it is shown in: nothing here is known any better. */
export function shownLoad(newtons: number, { system }: Display): Quantity {
  const unit = system === "inches" ? LB : 1;
  const shown = newtons / STANDARD_GRAVITY / unit;
  const rounded =
    Math.abs(shown) >= 100 ? Number(shown.toPrecision(3)) : Math.abs(shown) >= 10 ? Math.round(shown) : shown;
  return roughly(WEIGHT, rounded * unit);
}

/** A share in whole percent, never 100 for what is over it nor for less more than it: 0.996 is 99, 1.002 is 101. */
export function shownPercent(share: number): number {
  const percent = Math.round(share * 100);
  return share > 1 ? Math.max(101, percent) : share < 1 ? Math.min(99, percent) : 100;
}
