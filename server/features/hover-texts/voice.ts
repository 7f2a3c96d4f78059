/** In which language a hover tells, and how it writes values. */
import type { Language } from "../../checks";
import { type Display, ENGLISH_NUMBERS } from "../../units";
import type { Worked } from "../../worked";
import { COMMON } from "./common";

export interface Voice {
  readonly language: Language;
  /** That of the plan: a hover writes numbers and units as problems do, and as plans are written. */
  readonly display: Display;
}

export function voiceIn(language: Language, { settings: { display } }: Worked): Voice {
  const { about } = COMMON[language];
  return { language, display: { ...display, numbers: { ...ENGLISH_NUMBERS, about } } };
}
