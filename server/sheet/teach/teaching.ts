/** The form of a drawing that teaches a word: its items anywhere on a page, with its labels in the language asked. */
import type { Item } from "../display";

/** One label in every language. */
export type Say = (en: string, fr: string) => string;

export type Teaching = (say: Say) => readonly Item[];
