/** Text of a plan made fit to be set, and how wide it is: what a font cannot show gets a stand-in that can be seen. */
import { cleanText } from "../escape";
import { CONDENSED, type Style } from "./paper";

/** What is asked of a font that is opened: whether it has a character, and the width of a text in points. */
export interface Face {
  has(codePoint: number): boolean;
  width(text: string, size: number): number;
}

/** The character shown for one that the font does not have. */
export const STAND_IN = "\u{fffd}";

/**
 * Cleaned, composed (NFC), with single blanks, one of them at either end where there was any; without what cannot be
 * seen, and with no more than four marks on a letter that it is not composed with.
 */
export function spaced(text: string): string {
  if (PLAIN.test(text)) return text;
  return cleanText(text)
    .normalize("NFC")
    .replace(/\p{Default_Ignorable_Code_Point}/gu, "")
    .replace(/(\p{M}{4})\p{M}+/gu, "$1")
    .replace(/[^\S\u00a0\u202f]+/gu, " ");
}

/** The same, without blanks at its ends. */
export const trimmed = (text: string): string => spaced(text).trim();

/** The letters of the two fonts, each width measured once. */
export class Letters {
  readonly #widths = [new Map<string, number>(), new Map<string, number>()] as const;
  readonly #shown = [new Map<string, string>(), new Map<string, string>()] as const;

  constructor(
    readonly regular: Face,
    readonly bold: Face,
  ) {}

  /** The text with a stand-in for each character that the font does not have: as many characters as before. */
  shown(text: string, bold: boolean): string {
    if (ASCII.test(text)) return text;
    const face = bold ? this.bold : this.regular;
    const known = this.#shown[bold ? 1 : 0];
    return Array.from(text, (c) => {
      const before = known.get(c);
      if (before !== undefined) return before;
      const shown = face.has(c.codePointAt(0) ?? 0) ? c : STAND_IN;
      known.set(c, shown);
      return shown;
    }).join("");
  }

  /** Width of a text as it is set on the page, in points. A long one is counted letter by letter, without kerning. */
  width(text: string, { size, bold }: Style): number {
    return (this.#ofOne(text, bold) * size * CONDENSED) / MEASURED_AT;
  }

  #ofOne(text: string, bold: boolean): number {
    if (text.length > LONG) {
      let width = 0;
      for (const c of text) width += this.#ofOne(c, bold);
      return width;
    }
    const known = this.#widths[bold ? 1 : 0];
    const before = known.get(text);
    if (before !== undefined) return before;
    const width = (bold ? this.bold : this.regular).width(this.shown(text, bold), MEASURED_AT);
    known.set(text, width);
    return width;
  }
}

const MEASURED_AT = 1000;
/** No word of a trade is so long; it will be cut into lines. */
const LONG = 48;

/** Nothing to clean, and no two blanks together. */
const PLAIN = /^(?:[!-~]| (?! ))*$/;
const ASCII = /^[ -~]*$/;
