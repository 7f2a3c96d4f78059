/** Stretches along one direction: exact while their lengths are. */
import type { Value } from "../../plan";
import { NUMERIC } from "../../solid/angle";
import { exactly, fraction, LENGTH, minus, plus, type Quantity, refused, roughly } from "../../units";
import type { Axis } from "./axes";

/** Where something lies along one direction. */
export interface Stretch {
  readonly low: Quantity;
  readonly high: Quantity;
  /** It is the mirror image, in this direction. */
  readonly flipped: boolean;
}

export const NOTHING = exactly(LENGTH, fraction.ZERO);

/** Sums of lengths always have an answer. */
const sure = (o: ReturnType<typeof plus>): Quantity => (refused(o) ? NOTHING : o);
export const add = (a: Quantity, b: Quantity): Quantity => sure(plus(a, b));
export const less = (a: Quantity, b: Quantity): Quantity => sure(minus(a, b));
/** A length times a fraction. */
export function scaled(a: Quantity, n: number, d = 1): Quantity {
  return a.exact
    ? exactly(LENGTH, fraction.multiply(a.exact, fraction.rational(n, d)))
    : roughly(LENGTH, (a.approx * n) / d);
}
export const middle = (a: Quantity, b: Quantity): Quantity => scaled(add(a, b), 1, 2);

/** Negative when a is the smaller; 0 when they differ by no more than arithmetic with doubles explains. */
export function compared(a: Quantity, b: Quantity): number {
  if (a.exact && b.exact) return fraction.compare(a.exact, b.exact);
  const by = a.approx - b.approx;
  return Math.abs(by) < NUMERIC ? 0 : by;
}
export const least = (list: readonly Quantity[]): Quantity =>
  list.reduce((a, b) => (compared(b, a) < 0 ? b : a));
export const most = (list: readonly Quantity[]): Quantity =>
  list.reduce((a, b) => (compared(b, a) > 0 ? b : a));

/** From the first to the last of some stretches. */
export const hull = (list: readonly Stretch[]): Stretch => ({
  low: least(list.map((s) => s.low)),
  high: most(list.map((s) => s.high)),
  flipped: false,
});
export const sizeOf = ({ low, high }: Stretch): Quantity => less(high, low);

/** Stretches along each direction, worked out once: what is not known yet is asked for again. */
export function remembered(
  find: (axis: Axis) => Value<readonly Stretch[]>,
): (axis: Axis) => Value<readonly Stretch[]> {
  const done: [Value<readonly Stretch[]>?, Value<readonly Stretch[]>?, Value<readonly Stretch[]>?] = [];
  return (axis) => {
    const before = done[axis];
    if (before) return before;
    const found = find(axis);
    if (found.state === "known") done[axis] = found;
    return found;
  };
}
