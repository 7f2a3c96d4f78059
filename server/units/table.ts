/** Units a plan may write, with the exact factor to the base unit. */
import { ANGLE, AREA, DENSITY, type Dimension, LENGTH, PRESSURE, TIME, VOLUME, WEIGHT } from "./dimension";
import { divide, fromDecimal, multiply, type Rational, rational } from "./rational";

export interface Unit {
  readonly names: readonly string[];
  readonly dim: Dimension;
  /** Base units (mm, kg, min, degree) in one of this unit. */
  readonly factor: Rational;
}

const dec = (text: string): Rational => fromDecimal(text)!;
const power = (a: Rational, n: number): Rational => (n === 1 ? a : multiply(a, power(a, n - 1)));
const per = (a: Rational, b: Rational): Rational => divide(a, b)!;

/** The international inch, 25.4 mm exactly (1959 agreement; NIST SP 811 appendix B). */
export const INCH = dec("25.4");
const FOOT = multiply(INCH, rational(12));
/** The avoirdupois pound, 0.45359237 kg exactly (NIST SP 811 appendix B). */
export const POUND = dec("0.45359237");
/** US gallon: 231 cubic inches exactly (NIST Handbook 44 appendix C). */
export const GALLON = multiply(power(INCH, 3), rational(231));
/** Standard gravity, 9.80665 m/s² exactly (NIST SP 811): turns a kilogram's weight into newtons. */
export const GRAVITY = dec("9.80665");
const METRE = rational(1000);
const SQUARE_FOOT = power(FOOT, 2);
const CUBIC_FOOT = power(FOOT, 3);
/** One pascal as kilograms' weight on a square millimetre. */
export const PASCAL = per(per(rational(1), GRAVITY), power(METRE, 2));

const unit = (dim: Dimension, factor: Rational, ...names: string[]): Unit => ({ names, dim, factor });

export const UNITS: readonly Unit[] = [
  unit(LENGTH, INCH, "in", '"'),
  unit(LENGTH, FOOT, "ft", "'"),
  unit(LENGTH, rational(1), "mm"),
  unit(LENGTH, rational(10), "cm"),
  unit(LENGTH, METRE, "m"),
  unit(ANGLE, rational(1), "deg", "°"),
  unit(WEIGHT, POUND, "lb", "lbs"),
  unit(WEIGHT, per(POUND, rational(16)), "oz"),
  unit(WEIGHT, rational(1), "kg"),
  unit(WEIGHT, rational(1, 1000), "g"),
  unit(AREA, SQUARE_FOOT, "sqft"),
  unit(AREA, power(INCH, 2), "sqin"),
  unit(AREA, power(METRE, 2), "m2", "m²"),
  unit(VOLUME, CUBIC_FOOT, "cuft"),
  unit(VOLUME, multiply(CUBIC_FOOT, rational(27)), "cuyd"),
  unit(VOLUME, rational(1_000_000), "L", "l"),
  unit(VOLUME, rational(1000), "mL", "ml"),
  unit(VOLUME, power(METRE, 3), "m3", "m³"),
  unit(VOLUME, GALLON, "gal"),
  unit(VOLUME, per(GALLON, rational(4)), "qt"),
  unit(PRESSURE, per(POUND, SQUARE_FOOT), "psf"),
  unit(PRESSURE, per(POUND, power(INCH, 2)), "psi"),
  unit(PRESSURE, multiply(PASCAL, rational(1000)), "kPa", "kpa"),
  unit(PRESSURE, PASCAL, "Pa"),
  unit(PRESSURE, per(rational(1), power(METRE, 2)), "kg/m2"),
  unit(DENSITY, per(POUND, CUBIC_FOOT), "lb/cuft", "pcf"),
  unit(DENSITY, per(rational(1), power(METRE, 3)), "kg/m3", "kg/m³"),
  unit(TIME, rational(1), "min"),
  unit(TIME, rational(60), "h", "hour", "hours"),
  unit(TIME, rational(1440), "day", "days"),
  unit(TIME, rational(10080), "week", "weeks"),
];

const BY_NAME = new Map(UNITS.flatMap((u) => u.names.map((n) => [n, u] as const)));

/** The unit of that spelling, or undefined. */
export const unitNamed = (name: string): Unit | undefined => BY_NAME.get(name);
