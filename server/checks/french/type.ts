/** How French is set: blanks that hold a mark to its word, plurals, lists, numbers. Shared by all French words. */
import type { NumberWords, WrittenUnit } from "../../units";

/** A blank that is no end of a line. */
const HELD = "\u00a0";

/**
 * A French text as it is typed, with straight apostrophes and plain blanks: apostrophes are curved, and the blanks before
 * `:`, `;`, `?`, `!`, `%` and inside « » hold. What is put in stays as it is.
 */
export const fr = (texts: TemplateStringsArray, ...put: readonly (string | number)[]): string =>
  texts.map((text, i) => `${set(text)}${put[i] ?? ""}`).join("");

const set = (text: string): string =>
  text
    .replace(/ ([:;?!%»])/g, `${HELD}$1`)
    .replace(/« /g, `«${HELD}`)
    .replaceAll("'", "’");

/** One of something up to, but without, two. */
export const one = (n: number): boolean => n < 2;

/** `3 pièces`. */
export const many = (n: number, single: string, plural: string): string => `${n} ${one(n) ? single : plural}`;

/** `a, b et c` */
export const et = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} et ${words.at(-1)}`;

const UNITS: Readonly<Record<WrittenUnit, string>> = {
  lb: "lb",
  kg: "kg",
  sqft: "pi²",
  m2: "m²",
  cuft: "pi³",
  L: "L",
  psf: "lb/pi²",
  kPa: "kPa",
  "lb/cuft": "lb/pi³",
  "kg/m3": "kg/m³",
  "sqft per gal": "pi² par gal US",
  "m2 per L": "m² par L",
  h: "h",
  min: "min",
};

export const FRENCH_NUMBERS: NumberWords = {
  decimal: ",",
  money: (amount, currency) => `${amount}${HELD}${currency}`,
  withUnit: (number, unit) => `${number}${HELD}${UNITS[unit]}`,
  about: (length) => `environ ${length}`,
};
