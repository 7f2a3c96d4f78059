/**
 * A value with a dimension, in base units (millimetre, kilogram, minute, degree, one of a currency).
 * `exact` is kept through + − × ÷; it is null once trigonometry or a square root was asked for.
 */

import { ANGLE, combine, type Dimension, halve, isNumber, NUMBER, sameDimension } from "./dimension";
import * as R from "./rational";

export interface Quantity {
  readonly dim: Dimension;
  readonly exact: R.Rational | null;
  /** The double nearest to the value: the one crossing point from exact to rounded. */
  readonly approx: number;
}

export const exactly = (dim: Dimension, exact: R.Rational): Quantity => ({
  dim,
  exact,
  approx: R.toNumber(exact),
});
export const roughly = (dim: Dimension, approx: number): Quantity => ({ dim, exact: null, approx });
export const count = (n: number): Quantity =>
  Number.isSafeInteger(n) ? exactly(NUMBER, R.rational(n)) : roughly(NUMBER, n);

/** Why an operation has no answer. "kinds": the dimensions do not fit; "zero": division by zero; "range": no such value. */
export type Refusal = "kinds" | "zero" | "range";
export type Outcome = Quantity | Refusal;
export const refused = (o: Outcome): o is Refusal => typeof o === "string";

/** Zero needs no unit: it fits beside any kind. */
const bareZero = (q: Quantity): boolean => isNumber(q.dim) && q.exact !== null && q.exact.n === 0n;

/** The dimension two values share for adding and comparing, or undefined. */
export function shared(a: Quantity, b: Quantity): Dimension | undefined {
  if (sameDimension(a.dim, b.dim)) return a.dim;
  if (bareZero(a)) return b.dim;
  if (bareZero(b)) return a.dim;
  return undefined;
}

export function plus(a: Quantity, b: Quantity): Outcome {
  const dim = shared(a, b);
  if (!dim) return "kinds";
  return a.exact && b.exact ? exactly(dim, R.add(a.exact, b.exact)) : finite(dim, a.approx + b.approx);
}

export function minus(a: Quantity, b: Quantity): Outcome {
  return plus(a, negated(b));
}

export const negated = (a: Quantity): Quantity =>
  a.exact ? exactly(a.dim, R.negate(a.exact)) : roughly(a.dim, -a.approx);

export function times(a: Quantity, b: Quantity): Outcome {
  const dim = combine(a.dim, b.dim, 1);
  if (!dim) return "kinds";
  return a.exact && b.exact ? exactly(dim, R.multiply(a.exact, b.exact)) : finite(dim, a.approx * b.approx);
}

export function over(a: Quantity, b: Quantity): Outcome {
  const dim = combine(a.dim, b.dim, -1);
  if (!dim) return "kinds";
  if (b.approx === 0) return "zero";
  if (a.exact && b.exact) {
    const q = R.divide(a.exact, b.exact);
    return q ? exactly(dim, q) : "zero";
  }
  return finite(dim, a.approx / b.approx);
}

/** Negative, zero, positive; "kinds" when the two cannot be compared. */
export function order(a: Quantity, b: Quantity): number | "kinds" {
  if (!shared(a, b)) return "kinds";
  if (a.exact && b.exact) return R.compare(a.exact, b.exact);
  // Trigonometry leaves crumbs in the last digits: 20" * sin(30°) is 10".
  const crumbs = 1e-9 * Math.max(Math.abs(a.approx), Math.abs(b.approx));
  return Math.abs(a.approx - b.approx) <= crumbs ? 0 : Math.sign(a.approx - b.approx);
}

/** The multiple of `step` nearest to a (ties away from zero). */
export function rounded(a: Quantity, step: Quantity): Outcome {
  if (!shared(a, step)) return "kinds";
  if (step.approx === 0) return "zero";
  if (a.exact && step.exact) return exactly(a.dim, R.roundTo(a.exact, step.exact));
  const steps = Math.round(a.approx / step.approx);
  // A value from trigonometry is exact again once it lies on a mark.
  if (step.exact && Number.isSafeInteger(steps))
    return exactly(a.dim, R.multiply(step.exact, R.rational(steps)));
  return finite(a.dim, Math.round(a.approx / step.approx) * step.approx);
}

export function squareRoot(a: Quantity): Outcome {
  const dim = halve(a.dim);
  if (!dim) return "kinds";
  if (a.approx < 0) return "range";
  return finite(dim, Math.sqrt(a.approx));
}

/** The long side over two square ones: √(a² + b²). */
export function diagonal(a: Quantity, b: Quantity): Outcome {
  const dim = shared(a, b);
  return dim ? finite(dim, Math.hypot(a.approx, b.approx)) : "kinds";
}

const RADIANS = Math.PI / 180;
const TRIG: Readonly<Record<string, (x: number) => number>> = {
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
};
const INVERSE: Readonly<Record<string, (x: number) => number>> = {
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
};

/** sin, cos, tan of an angle; asin, acos, atan of a plain number. */
export function trigonometric(name: string, a: Quantity): Outcome {
  const forward = TRIG[name];
  if (forward) {
    if (!sameDimension(a.dim, ANGLE)) return "kinds";
    if (name === "tan" && Math.abs(Math.cos(a.approx * RADIANS)) < 1e-12) return "range";
    return finite(NUMBER, forward(a.approx * RADIANS));
  }
  const back = INVERSE[name];
  if (!back) return "range";
  return isNumber(a.dim) ? finite(ANGLE, back(a.approx) / RADIANS) : "kinds";
}

function finite(dim: Dimension, value: number): Outcome {
  return Number.isFinite(value) ? roughly(dim, value) : "range";
}
