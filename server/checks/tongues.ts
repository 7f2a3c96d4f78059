/** The languages that problems are told in. */
import { FRENCH_TONGUE } from "./french";
import { PHRASES } from "./phrases";
import type { Language, Tongue } from "./telling";

const ENGLISH: Tongue = {
  and: " and ",
  or: " or ",
  about: "about ",
  isOne: (n) => n === 1,
  phrase: (says) => PHRASES.get(says),
};

export const TONGUES: Readonly<Record<Language, Tongue>> = { en: ENGLISH, fr: FRENCH_TONGUE };
