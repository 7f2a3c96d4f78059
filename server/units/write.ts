/** From a value to the text a builder reads. Rounded for display only, by `roundTo`: nearest mark, a tie away from zero. */
import {
  ANGLE,
  AREA,
  COVERAGE,
  DENSITY,
  isNumber,
  LENGTH,
  PRESSURE,
  sameDimension,
  TIME,
  VOLUME,
  WEIGHT,
} from "./dimension";
import type { Quantity } from "./quantity";
import * as R from "./rational";
import { GALLON, INCH, unitNamed } from "./table";

/** How a plan shows its lengths. */
export interface Display {
  readonly system: "inches" | "millimetres";
  /** The finest mark, in mm: 1/16" is 1.5875. */
  readonly mark: R.Rational;
  /** How numbers are written; unsaid, as in English. */
  readonly numbers?: NumberWords;
}

/** How numbers are written in a language. Fractions of an inch are those on the tape in all of them. */
export interface NumberWords {
  readonly decimal: "." | ",";
  /** An amount with two decimals and its currency: `$7.40`. */
  readonly money: (amount: string, currency: string) => string;
  /** A number with its unit: `903 lb`. */
  readonly withUnit: (number: string, unit: WrittenUnit) => string;
  /** A length that no mark shows, to three decimals. */
  readonly about: (length: string) => string;
}

/** Units other than those of a tape, as plans write them. */
export type WrittenUnit =
  | "lb"
  | "kg"
  | "sqft"
  | "m2"
  | "cuft"
  | "L"
  | "psf"
  | "kPa"
  | "lb/cuft"
  | "kg/m3"
  | "sqft per gal"
  | "m2 per L"
  | "h"
  | "min";

export const ENGLISH_NUMBERS: NumberWords = {
  decimal: ".",
  money: (amount, currency) => `${currency}${amount}`,
  withUnit: (number, unit) => `${number} ${unit}`,
  about: (length) => `about ${length}`,
};

const numbersOf = ({ numbers }: Display): NumberWords => numbers ?? ENGLISH_NUMBERS;

/** A number written with a point, as this language writes it. */
const localized = (number: string, display: Display): string =>
  number.replace(".", numbersOf(display).decimal);

export const SIXTEENTHS: Display = { system: "inches", mark: R.divide(INCH, R.rational(16))! };
export const MILLIMETRES: Display = { system: "millimetres", mark: R.ONE };

/** A length to the plan's mark: `83-1/2"` or `2121 mm`. */
export function lengthText(q: Quantity, display: Display): string {
  return lengthExactly(R.roundTo(exactOf(q), display.mark), display);
}

/** A length in both systems: `28-1/2" (724 mm)` or `724 mm (28-1/2")`. */
export function bothLengths(q: Quantity, display: Display): string {
  const inches = lengthText(q, display.system === "inches" ? display : inNumbersOf(display, SIXTEENTHS));
  const metric = lengthText(
    q,
    display.system === "millimetres" ? display : inNumbersOf(display, MILLIMETRES),
  );
  return display.system === "inches" ? `${inches} (${metric})` : `${metric} (${inches})`;
}

/** The other display, with numbers written as in the first. */
export const inNumbersOf = ({ numbers }: Display, other: Display): Display =>
  numbers ? { ...other, numbers } : other;

/** The length as it is, not to a mark: a fraction of an inch to 1/64 or any exact mm, else three decimals with "about". */
export function lengthInFull(q: Quantity, display: Display): string {
  const exact = exactOf(q);
  const about = (length: string): string => numbersOf(display).about(localized(length, display));
  if (display.system === "inches") {
    const inches = R.divide(exact, INCH)!;
    return inches.d <= 64n && (inches.d & (inches.d - 1n)) === 0n
      ? inchText(inches)
      : about(`${R.toDecimal(inches, 3)}"`);
  }
  const places = R.toDecimal(exact, 3);
  return R.compare(R.fromDecimal(places)!, exact) === 0
    ? localized(`${places} mm`, display)
    : about(`${places} mm`);
}

/** Whether the length lies on one of the plan's marks. */
export function onTheMark(q: Quantity, display: Display): boolean {
  return q.exact !== null && R.compare(R.roundTo(q.exact, display.mark), q.exact) === 0;
}

/** Any value, in the plan's system, to the precision a builder uses. */
export function quantityText(q: Quantity, display: Display): string {
  const inches = display.system === "inches";
  const written = (number: string): string => localized(number, display);
  const withUnit = (number: string, unit: WrittenUnit): string =>
    numbersOf(display).withUnit(written(number), unit);
  if (sameDimension(q.dim, LENGTH)) return lengthText(q, display);
  if (sameDimension(q.dim, ANGLE)) return written(`${R.toDecimal(exactOf(q), 2)}°`);
  if (q.dim.money === 1 && q.dim.length === 0 && q.dim.weight === 0) return moneyText(q, display);
  if (sameDimension(q.dim, TIME)) return withUnit(...timeOf(q));
  for (const [dim, imperial, metric, places] of SHOWN) {
    if (!sameDimension(q.dim, dim)) continue;
    const name = inches ? imperial : metric;
    return withUnit(decimalText(q.approx / R.toNumber(unitNamed(name)!.factor), places), name);
  }
  if (sameDimension(q.dim, COVERAGE)) {
    const sqft = R.toNumber(unitNamed("sqft")!.factor);
    return inches
      ? withUnit(decimalText((q.approx * R.toNumber(GALLON)) / sqft, 0), "sqft per gal")
      : withUnit(decimalText(q.approx, 1), "m2 per L");
  }
  if (isNumber(q.dim)) return written(q.exact ? R.toDecimal(q.exact, 3) : decimalText(q.approx, 3));
  return written(decimalText(q.approx, 3));
}

/** A volume as finishes are sold by it: `2.4 qt`, `1.5 gal`, `2.3 L`. */
export function liquidText(q: Quantity, display: Display): string {
  const gallons = q.approx / R.toNumber(GALLON);
  const metric = display.system === "millimetres";
  const [amount, name] = metric
    ? [q.approx / 1e6, "L"]
    : gallons < 1
      ? [gallons * 4, "qt"]
      : [gallons, "gal"];
  const shown = localized(amount > 0 && amount < 0.05 ? "0.1" : decimalText(amount, 1), display);
  return amount > 0 && amount < 0.05 ? `< ${shown} ${name}` : `${shown} ${name}`;
}

/** `$7.40`: two decimals always, the currency first in English. */
export function moneyText(q: Quantity, display: Display = SIXTEENTHS): string {
  const cents = R.toDecimal(R.multiply(exactOf(q), R.rational(100)), 0).padStart(3, "0");
  const minus = cents.startsWith("-");
  const digits = minus ? cents.slice(1).padStart(3, "0") : cents;
  const amount = localized(`${digits.slice(0, -2)}.${digits.slice(-2)}`, display);
  return `${minus ? "-" : ""}${numbersOf(display).money(amount, q.dim.currency)}`;
}

/** The value as an exact fraction; a rounded one is taken to 1/1,000,000 of the base unit. */
export function exactOf(q: Quantity): R.Rational {
  return q.exact ?? R.rational(BigInt(Math.round(q.approx * 1e6)), 1_000_000n);
}

const SHOWN: readonly (readonly [Quantity["dim"], WrittenUnit, WrittenUnit, number])[] = [
  [WEIGHT, "lb", "kg", 1],
  [AREA, "sqft", "m2", 2],
  [VOLUME, "cuft", "L", 2],
  [PRESSURE, "psf", "kPa", 2],
  [DENSITY, "lb/cuft", "kg/m3", 1],
];

/** Of a millimetre: 1/16" is 1.5875 mm, and may be a mark of such a plan too. */
const MARK_PLACES = 4;

function lengthExactly(mm: R.Rational, display: Display): string {
  return display.system === "inches"
    ? inchText(R.divide(mm, INCH)!)
    : localized(`${R.toDecimal(mm, MARK_PLACES)} mm`, display);
}

function inchText(inches: R.Rational): string {
  const negative = inches.n < 0n;
  const top = negative ? -inches.n : inches.n;
  const whole = top / inches.d;
  const rest = top % inches.d;
  const text =
    rest === 0n ? `${whole}` : whole === 0n ? `${rest}/${inches.d}` : `${whole}-${rest}/${inches.d}`;
  return `${negative ? "-" : ""}${text}"`;
}

function timeOf(q: Quantity): [number: string, unit: WrittenUnit] {
  const minutes = exactOf(q);
  const hours = R.divide(minutes, R.rational(60))!;
  return R.toNumber(minutes) >= 60 ? [R.toDecimal(hours, 2), "h"] : [R.toDecimal(minutes, 1), "min"];
}

const decimalText = (value: number, places: number): string => {
  const text = value.toFixed(places);
  return places === 0 ? text : text.replace(/\.?0+$/, "");
};
