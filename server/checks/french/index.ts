/** All that problems say in French: by code, with the same names of templates as the checks' own. */
import type { Templates, Tongue } from "../telling";
import { elided } from "./elision";
import { FORM } from "./form";
import { GUARDING } from "./guarding";
import { HOLDING } from "./holding";
import { MEANING } from "./meaning";
import { FRENCH_PHRASES } from "./phrases";
import { PLACED } from "./placed";
import { SCREWS } from "./screws";
import { STEPS } from "./steps";
import { STOCK } from "./stock";
import { TIPPING } from "./tipping";
import { TITLES } from "./titles";
import { FRENCH_UNCHECKED } from "./unchecked";
import { WATER } from "./water";
import { WEATHER } from "./weather";
import { WORK } from "./work";

export const FRENCH: Readonly<Record<string, Templates>> = {
  ...FORM,
  ...MEANING,
  ...WORK,
  ...STOCK,
  ...PLACED,
  ...SCREWS,
  ...STEPS,
  ...HOLDING,
  ...TIPPING,
  ...WATER,
  ...GUARDING,
  ...WEATHER,
};

const PHRASES = new Map(Object.entries(FRENCH_PHRASES));
const NOT_CHECKED = new Map(Object.entries(FRENCH_UNCHECKED));

export const FRENCH_TONGUE: Tongue = {
  and: " et ",
  or: " ou ",
  about: "environ ",
  isOne: (n) => n < 2,
  article: (word, a) => `${a === "A" ? "U" : "u"}n${FEMININE.test(word) ? "e" : ""}`,
  phrase: (says) => PHRASES.get(says),
  problem: (code, says) => FRENCH[code]?.[says],
  title: (code) => TITLES[code],
  notChecked: (says) => NOT_CHECKED.get(says),
  meeting: elided,
};

/** The words that `{a}` stands before; all others are masculine. */
const FEMININE = /^(?:vis|fixation)(?!\p{L})/u;
