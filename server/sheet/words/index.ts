/** The languages a sheet can be written in. */
import { ENGLISH, type SheetWords } from "./english";
import { FRENCH } from "./french";

export type { DrawingWords } from "./english-drawings";
export { ENGLISH, type SheetWords };

/** Tags of RFC 5646, the first being what is taken where nothing is said. */
export const SHEET_LANGUAGES = ["en", "fr"] as const;
export type SheetLanguage = (typeof SHEET_LANGUAGES)[number];

const WORDS: Readonly<Record<SheetLanguage, SheetWords>> = { en: ENGLISH, fr: FRENCH };

export const wordsIn = (language: SheetLanguage): SheetWords => WORDS[language];
