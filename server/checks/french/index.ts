/** All that problems say in French: by code, with the same names of templates as the checks' own. */
import type { Templates, Tongue } from "../telling";
import { FORM } from "./form";
import { MEANING } from "./meaning";
import { FRENCH_PHRASES } from "./phrases";
import { PLACED } from "./placed";
import { SCREWS } from "./screws";
import { STEPS } from "./steps";
import { WORK } from "./work";

export const FRENCH: Readonly<Record<string, Templates>> = {
  ...FORM,
  ...MEANING,
  ...WORK,
  ...PLACED,
  ...SCREWS,
  ...STEPS,
};

const PHRASES = new Map(Object.entries(FRENCH_PHRASES));

export const FRENCH_TONGUE: Tongue = {
  and: " et ",
  or: " ou ",
  about: "environ ",
  isOne: (n) => n < 2,
  article: (word, a) => `${a === "A" ? "U" : "u"}n${FEMININE.test(word) ? "e" : ""}`,
  phrase: (says) => PHRASES.get(says),
  meeting: (text) => text.replace(/\b([dD]|[qQ]u)e (?=environ )/g, "$1’"),
};

/** The words that `{a}` stands before; all others are masculine. */
const FEMININE = /^(?:vis|fixation)(?!\p{L})/u;
