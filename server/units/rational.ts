/**
 * Exact fractions of whole numbers, reduced, with a positive denominator.
 * Lengths are kept in these until trigonometry is asked for, so that a tape
 * fraction or a millimetre is never a rounded number.
 */
export interface Rational {
  readonly n: bigint;
  readonly d: bigint;
}

/** Builds the reduced fraction n/d. Throws RangeError when d is 0: callers check first. */
export function rational(n: bigint | number, d: bigint | number = 1n): Rational {
  let top = BigInt(n);
  let bottom = BigInt(d);
  if (bottom === 0n) throw new RangeError("a fraction needs a denominator");
  if (bottom < 0n) {
    top = -top;
    bottom = -bottom;
  }
  if (bottom === 1n) return { n: top, d: bottom };
  const g = gcd(top < 0n ? -top : top, bottom);
  return g === 1n ? { n: top, d: bottom } : { n: top / g, d: bottom / g };
}

export const ZERO: Rational = { n: 0n, d: 1n };
export const ONE: Rational = { n: 1n, d: 1n };

export const add = (a: Rational, b: Rational): Rational =>
  a.d === b.d ? rational(a.n + b.n, a.d) : rational(a.n * b.d + b.n * a.d, a.d * b.d);
export const subtract = (a: Rational, b: Rational): Rational => add(a, negate(b));
export const negate = (a: Rational): Rational => ({ n: -a.n, d: a.d });
export const multiply = (a: Rational, b: Rational): Rational => rational(a.n * b.n, a.d * b.d);
/** a/b, or undefined when b is zero. */
export const divide = (a: Rational, b: Rational): Rational | undefined =>
  b.n === 0n ? undefined : rational(a.n * b.d, a.d * b.n);
/** Negative, zero or positive as a is less than, equal to or more than b. */
export function compare(a: Rational, b: Rational): number {
  const left = a.n * b.d;
  const right = b.n * a.d;
  return left < right ? -1 : left > right ? 1 : 0;
}

/** The double nearest to a (to within one unit in the last place). */
export function toNumber(a: Rational): number {
  if (a.d === 1n) return Number(a.n);
  const top = Number(a.n);
  const bottom = Number(a.d);
  if (Number.isSafeInteger(top) && Number.isSafeInteger(bottom)) return top / bottom;
  // Keep 64 bits of quotient so that long fractions do not overflow to infinity over infinity.
  const shift = BigInt(Math.max(0, bits(a.d) - bits(a.n) + 64));
  return Number((a.n << shift) / a.d) / 2 ** Number(shift);
}

/** Reads "12", "-3", "1.25" and "0.131"; undefined for anything else. */
export function fromDecimal(text: string): Rational | undefined {
  const m = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text);
  if (!m) return undefined;
  const places = m[3] ?? "";
  const value = rational(BigInt(`${m[2]}${places}`), 10n ** BigInt(places.length));
  return m[1] ? negate(value) : value;
}

/** The whole multiple of `step` nearest to `a`; a tie goes away from zero. This is the one rounding rule. */
export function roundTo(a: Rational, step: Rational): Rational {
  const q = divide(a, step);
  if (!q) return a;
  const negative = q.n < 0n;
  const top = negative ? -q.n : q.n;
  const whole = (2n * top + q.d) / (2n * q.d);
  return multiply({ n: negative ? -whole : whole, d: 1n }, step);
}

/** The whole number at or below a. */
export function floor(a: Rational): bigint {
  const q = a.n / a.d;
  return a.n < 0n && q * a.d !== a.n ? q - 1n : q;
}

/** A decimal text with at most `places` digits after the point, trailing zeros dropped, rounded by `roundTo`. */
export function toDecimal(a: Rational, places: number): string {
  const scale = 10n ** BigInt(places);
  const rounded = roundTo(a, { n: 1n, d: scale });
  const scaled = (rounded.n * scale) / rounded.d;
  const digits = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, "0");
  const whole = digits.slice(0, digits.length - places);
  const rest = places === 0 ? "" : digits.slice(digits.length - places).replace(/0+$/, "");
  return `${scaled < 0n ? "-" : ""}${whole}${rest ? `.${rest}` : ""}`;
}

function gcd(a: bigint, b: bigint): bigint {
  let x = a;
  let y = b;
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

const bits = (a: bigint): number => (a < 0n ? -a : a).toString(16).length * 4;
