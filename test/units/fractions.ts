/**
 * Lengths worked out beside the program, in whole numbers alone. One inch is 25.4 mm exactly, by the international yard and
 * pound agreement of 1959 (Federal Register doc. 59-5442, 1 July 1959; NIST SP 811, 2008, appendix B.6).
 */

export interface Fraction {
  readonly n: bigint;
  /** More than nothing. */
  readonly d: bigint;
}

export const of = (n: bigint | number, d: bigint | number = 1n): Fraction => ({ n: BigInt(n), d: BigInt(d) });
export const plus = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.d + b.n * a.d, d: a.d * b.d });
export const times = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.n, d: a.d * b.d });
export const apart = (a: Fraction, b: Fraction): Fraction => {
  const n = a.n * b.d - b.n * a.d;
  return { n: n < 0n ? -n : n, d: a.d * b.d };
};
export const less = (a: Fraction, b: Fraction): boolean => a.n * b.d < b.n * a.d;
export const same = (a: Fraction, b: Fraction): boolean => a.n * b.d === b.n * a.d;

/** Millimetres. */
export const INCH = of(254, 10);
export const SIXTEENTH = times(INCH, of(1, 16));
export const MM = of(1);

/** A decimal as it is written, `1e-7` too. */
export function decimal(text: string): Fraction {
  const m = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(text);
  if (!m) throw new Error(`no decimal: ${text}`);
  const places = m[3] ?? "";
  const value = of(BigInt(`${m[1]}${m[2]}${places}`), 10n ** BigInt(places.length));
  const power = Number(m[4] ?? 0);
  return times(value, power < 0 ? of(1, 10n ** BigInt(-power)) : of(10n ** BigInt(power)));
}

/** A length as sheets show it, in mm: `83-1/2"`, `-1/16"`, `8'`, `2121 mm`. */
export function shown(text: string): Fraction {
  const m = /^(-?)(?:(?:(\d+)-)?(\d+)\/(\d+)"|(\d+(?:\.\d+)?)("|'| ?mm))$/.exec(text);
  if (!m) throw new Error(`no length: ${text}`);
  const [, minus, whole = "0", top, bottom, number, unit] = m;
  const size = top
    ? times(plus(of(BigInt(whole)), of(BigInt(top), BigInt(bottom!))), INCH)
    : times(decimal(number!), unit === '"' ? INCH : unit === "'" ? times(of(12), INCH) : MM);
  return minus ? times(of(-1), size) : size;
}

/** The multiple of a mark that is nearest, of two as near the one further from nothing: found by stepping, not by dividing. */
export function nearest(a: Fraction, mark: Fraction): Fraction {
  const size = a.n < 0n ? times(of(-1), a) : a;
  // No more than the size, and less than two marks below it.
  let steps = (size.n * mark.d) / (size.d * mark.n);
  const at = (k: bigint): Fraction => times(of(k), mark);
  while (!less(apart(at(steps), size), apart(at(steps + 1n), size))) steps++;
  return a.n < 0n ? times(of(-1), at(steps)) : at(steps);
}
