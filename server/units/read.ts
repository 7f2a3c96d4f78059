/** From the text of a literal to its value. Text that is no literal gives undefined, never a guess. */
import { LENGTH, money, NUMBER } from "./dimension";
import { exactly, type Quantity } from "./quantity";
import * as R from "./rational";
import { INCH, unitNamed } from "./table";

/** Longest literal read: past this a number is a mistake or an attack. */
export const LONGEST_LITERAL = 40;

const GLYPHS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

const TYPED = /[^ -~°]/;

/** Typed primes, curly quotes, × and fraction glyphs as plain characters: `83½″` becomes `83 1/2"`. */
export function plainly(text: string): string {
  if (!TYPED.test(text)) return text;
  return text
    .replace(/[′’‘]/g, "'")
    .replace(/[″“”]/g, '"')
    .replace(/×/g, "x")
    .replace(
      /(\d)?([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])/g,
      (_, d: string | undefined, g: string) => `${d ? `${d} ` : ""}${GLYPHS[g]}`,
    )
    .replace(/⁄/g, "/");
}

/**
 * Reads a length (`83-1/2"`, `6' 11-1/2"`, `36in`, `1.22m`, bare `0` excluded), an angle, a weight, area, volume,
 * pressure, density or time with its unit, an amount of money, a share (`10%`) or a plain number.
 */
export function readLiteral(source: string): Quantity | undefined {
  if (source.length > LONGEST_LITERAL) return undefined;
  const text = plainly(source).trim();
  return feetAndInches(text) ?? moneyOf(text) ?? shareOf(text) ?? withUnit(text);
}

/** Reads `12`, `1.25`, `3/4`, `83-1/2` or `83 1/2`. */
export function readNumber(text: string): R.Rational | undefined {
  const whole = R.fromDecimal(text);
  if (whole) return whole;
  const m = /^(?:(\d+)(?: +|-))?(\d+)\/(\d+)$/.exec(text);
  if (!m || BigInt(m[3]!) === 0n) return undefined;
  const part = R.rational(BigInt(m[2]!), BigInt(m[3]!));
  return m[1] ? R.add(R.rational(BigInt(m[1])), part) : part;
}

function feetAndInches(text: string): Quantity | undefined {
  const m = /^(?:([^'"]+)')?(?:[ -]*([^'"]+)")?$/.exec(text);
  if (!m || (m[1] === undefined && m[2] === undefined)) return undefined;
  const feet = m[1] === undefined ? R.ZERO : readNumber(m[1].trim());
  const inches = m[2] === undefined ? R.ZERO : readNumber(m[2].trim());
  if (!feet || !inches) return undefined;
  return exactly(LENGTH, R.multiply(R.add(R.multiply(feet, R.rational(12)), inches), INCH));
}

function moneyOf(text: string): Quantity | undefined {
  const m = /^([$€£])\s?(\d+(?:\.\d+)?)$/.exec(text);
  return m ? exactly(money(m[1]!), R.fromDecimal(m[2]!)!) : undefined;
}

function shareOf(text: string): Quantity | undefined {
  const m = /^(\d+(?:\.\d+)?)\s?%$/.exec(text);
  return m ? exactly(NUMBER, R.multiply(R.fromDecimal(m[1]!)!, R.rational(1, 100))) : undefined;
}

function withUnit(text: string): Quantity | undefined {
  const bare = readNumber(text);
  if (bare) return exactly(NUMBER, bare);
  const m = /^([\d./ -]*\d)\s*([a-zA-Z°][a-zA-Z0-9/²³]*)$/.exec(text);
  if (!m) return undefined;
  const value = readNumber(m[1]!);
  const unit = unitNamed(m[2]!);
  return value && unit ? exactly(unit.dim, R.multiply(value, unit.factor)) : undefined;
}
