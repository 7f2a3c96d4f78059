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
}

export const SIXTEENTHS: Display = { system: "inches", mark: R.divide(INCH, R.rational(16))! };
export const MILLIMETRES: Display = { system: "millimetres", mark: R.ONE };

/** A length to the plan's mark: `83-1/2"` or `2121 mm`. */
export function lengthText(q: Quantity, display: Display): string {
  return lengthExactly(R.roundTo(exactOf(q), display.mark), display.system);
}

/** A length in both systems: `28-1/2" (724 mm)` or `724 mm (28-1/2")`. */
export function bothLengths(q: Quantity, display: Display): string {
  const inches = lengthText(q, display.system === "inches" ? display : SIXTEENTHS);
  const metric = lengthText(q, display.system === "millimetres" ? display : MILLIMETRES);
  return display.system === "inches" ? `${inches} (${metric})` : `${metric} (${inches})`;
}

/** The length as it is, not to a mark: a fraction of an inch to 1/64 or any exact mm, else three decimals with "about". */
export function lengthInFull(q: Quantity, display: Display): string {
  const exact = exactOf(q);
  if (display.system === "inches") {
    const inches = R.divide(exact, INCH)!;
    return inches.d <= 64n && (inches.d & (inches.d - 1n)) === 0n
      ? inchText(inches)
      : `about ${R.toDecimal(inches, 3)}"`;
  }
  const places = R.toDecimal(exact, 3);
  return R.compare(R.fromDecimal(places)!, exact) === 0 ? `${places} mm` : `about ${places} mm`;
}

/** Whether the length lies on one of the plan's marks. */
export function onTheMark(q: Quantity, display: Display): boolean {
  return q.exact !== null && R.compare(R.roundTo(q.exact, display.mark), q.exact) === 0;
}

/** Any value, in the plan's system, to the precision a builder uses. */
export function quantityText(q: Quantity, display: Display): string {
  const inches = display.system === "inches";
  if (sameDimension(q.dim, LENGTH)) return lengthText(q, display);
  if (sameDimension(q.dim, ANGLE)) return `${R.toDecimal(exactOf(q), 2)}°`;
  if (q.dim.money === 1 && q.dim.length === 0 && q.dim.weight === 0) return moneyText(q);
  if (sameDimension(q.dim, TIME)) return timeText(q);
  for (const [dim, imperial, metric, places] of SHOWN) {
    if (!sameDimension(q.dim, dim)) continue;
    const name = inches ? imperial : metric;
    return `${decimalText(q.approx / R.toNumber(unitNamed(name)!.factor), places)} ${name}`;
  }
  if (sameDimension(q.dim, COVERAGE)) {
    const sqft = R.toNumber(unitNamed("sqft")!.factor);
    return inches
      ? `${decimalText((q.approx * R.toNumber(GALLON)) / sqft, 0)} sqft per gal`
      : `${decimalText(q.approx, 1)} m2 per L`;
  }
  if (isNumber(q.dim)) return q.exact ? R.toDecimal(q.exact, 3) : decimalText(q.approx, 3);
  return decimalText(q.approx, 3);
}

/** A volume as finishes are sold by it: `2.4 qt`, `1.5 gal`, `2.3 L`. */
export function liquidText(q: Quantity, { system }: Display): string {
  const gallons = q.approx / R.toNumber(GALLON);
  const [amount, name] =
    system === "millimetres" ? [q.approx / 1e6, "L"] : gallons < 1 ? [gallons * 4, "qt"] : [gallons, "gal"];
  return amount > 0 && amount < 0.05 ? `less than 0.1 ${name}` : `${decimalText(amount, 1)} ${name}`;
}

/** `$7.40`: two decimals always, the currency first. */
export function moneyText(q: Quantity): string {
  const cents = R.toDecimal(R.multiply(exactOf(q), R.rational(100)), 0).padStart(3, "0");
  const minus = cents.startsWith("-");
  const digits = minus ? cents.slice(1).padStart(3, "0") : cents;
  return `${minus ? "-" : ""}${q.dim.currency}${digits.slice(0, -2)}.${digits.slice(-2)}`;
}

/** The value as an exact fraction; a rounded one is taken to 1/1,000,000 of the base unit. */
export function exactOf(q: Quantity): R.Rational {
  return q.exact ?? R.rational(BigInt(Math.round(q.approx * 1e6)), 1_000_000n);
}

const SHOWN: readonly (readonly [Quantity["dim"], string, string, number])[] = [
  [WEIGHT, "lb", "kg", 1],
  [AREA, "sqft", "m2", 2],
  [VOLUME, "cuft", "L", 2],
  [PRESSURE, "psf", "kPa", 2],
  [DENSITY, "lb/cuft", "kg/m3", 1],
];

function lengthExactly(mm: R.Rational, system: Display["system"]): string {
  return system === "inches" ? inchText(R.divide(mm, INCH)!) : `${R.toDecimal(mm, 2)} mm`;
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

function timeText(q: Quantity): string {
  const minutes = exactOf(q);
  const hours = R.divide(minutes, R.rational(60))!;
  return R.toNumber(minutes) >= 60 ? `${R.toDecimal(hours, 2)} h` : `${R.toDecimal(minutes, 1)} min`;
}

const decimalText = (value: number, places: number): string => {
  const text = value.toFixed(places);
  return places === 0 ? text : text.replace(/\.?0+$/, "");
};
