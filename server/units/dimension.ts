/**
 * What kind of thing a value measures, as whole powers of five base units:
 * millimetre, kilogram (as a weight), minute, degree, and a currency.
 */
export interface Dimension {
  readonly length: number;
  readonly weight: number;
  readonly time: number;
  readonly angle: number;
  readonly money: number;
  /** "$", "€" or "£" while money is not 0; else "". */
  readonly currency: string;
}

const of = (part: Partial<Dimension>): Dimension => ({
  length: 0,
  weight: 0,
  time: 0,
  angle: 0,
  money: 0,
  currency: "",
  ...part,
});

export const NUMBER = of({});
export const LENGTH = of({ length: 1 });
export const AREA = of({ length: 2 });
export const VOLUME = of({ length: 3 });
export const ANGLE = of({ angle: 1 });
export const WEIGHT = of({ weight: 1 });
export const TIME = of({ time: 1 });
/** Weight over area; as a force it is that weight under standard gravity. */
export const PRESSURE = of({ weight: 1, length: -2 });
export const DENSITY = of({ weight: 1, length: -3 });
export const money = (currency: string): Dimension => of({ money: 1, currency });
/** How far a finish goes: area over volume. */
export const COVERAGE = of({ length: -1 });

export const isNumber = (a: Dimension): boolean => sameDimension(a, NUMBER);

export function sameDimension(a: Dimension, b: Dimension): boolean {
  return (
    a === b ||
    (a.length === b.length &&
      a.weight === b.weight &&
      a.time === b.time &&
      a.angle === b.angle &&
      a.money === b.money &&
      a.currency === b.currency)
  );
}

/** The dimension of a product (sign 1) or quotient (sign -1); undefined when two currencies meet. */
export function combine(a: Dimension, b: Dimension, sign: 1 | -1): Dimension | undefined {
  if (a.currency && b.currency && a.currency !== b.currency) return undefined;
  const amount = a.money + sign * b.money;
  return {
    length: a.length + sign * b.length,
    weight: a.weight + sign * b.weight,
    time: a.time + sign * b.time,
    angle: a.angle + sign * b.angle,
    money: amount,
    currency: amount === 0 ? "" : a.currency || b.currency,
  };
}

/** Halves every power, for a square root; undefined when one is odd. */
export function halve(a: Dimension): Dimension | undefined {
  const powers = [a.length, a.weight, a.time, a.angle, a.money];
  if (powers.some((p) => p % 2 !== 0)) return undefined;
  return {
    length: a.length / 2,
    weight: a.weight / 2,
    time: a.time / 2,
    angle: a.angle / 2,
    money: a.money / 2,
    currency: a.currency,
  };
}

/** "a length", "an area", … as a sentence needs it. */
export function nameOf(a: Dimension): string {
  const named = NAMED.find(([d]) => sameDimension(d, a));
  if (named) return named[1];
  if (a.money === 1 && sameDimension({ ...a, money: 0, currency: "" }, NUMBER)) return "an amount of money";
  if (a.money === 1) return "a price by measure";
  return "a value of no everyday kind";
}

const NAMED: readonly (readonly [Dimension, string])[] = [
  [NUMBER, "a plain number"],
  [LENGTH, "a length"],
  [AREA, "an area"],
  [VOLUME, "a volume"],
  [ANGLE, "an angle"],
  [WEIGHT, "a weight"],
  [TIME, "a time"],
  [PRESSURE, "a pressure"],
  [DENSITY, "a density"],
];
