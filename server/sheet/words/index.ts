/** The languages a sheet can be written in. */
import { ENGLISH, type SheetWords } from "./english";

export type { SheetWords };

/** Tags of RFC 5646, the first being what is taken where nothing is said. */
export const SHEET_LANGUAGES = ["en"] as const;
export type SheetLanguage = (typeof SHEET_LANGUAGES)[number];

const WORDS: Readonly<Record<SheetLanguage, SheetWords>> = { en: ENGLISH };

export const wordsIn = (language: SheetLanguage): SheetWords => WORDS[language];
