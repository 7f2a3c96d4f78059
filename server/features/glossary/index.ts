/** The words of the trade that hovers teach: all of them, and which one stands at a place in a text. */

import { lineStart } from "../../../grammar/lines";
import type { Span } from "../../../grammar/tree";
import type { Language } from "../../checks";
import { CUTS } from "./cuts";
import { LOADS } from "./loads";
import { PIECES } from "./pieces";
import { PLACING } from "./placing";
import { SCREWS } from "./screws";
import type { Term } from "./term";
import { WET } from "./wet";
import { WOOD } from "./wood";

export type { Term } from "./term";

export const TERMS: readonly Term[] = [...CUTS, ...WOOD, ...PIECES, ...PLACING, ...SCREWS, ...WET, ...LOADS];

const BY_KEY: ReadonlyMap<string, Term> = new Map(TERMS.map((term) => [term.key, term]));

export const termOf = (key: string): Term | undefined => BY_KEY.get(key);

interface Found extends Span {
  readonly term: Term;
}

/** A spelling as its words, in small letters. */
interface Spelling {
  readonly words: readonly string[];
  readonly language: Language;
  readonly term: Term;
}

const apart = (text: string): string[] => text.toLowerCase().replaceAll("'", "’").match(WORD) ?? [];

/** Letters, with what holds a word together; `2-1/2` and `cap-side` are one word each, `d’onglet` is two. */
const WORD = /[\p{L}\p{N}_]+(?:-[\p{L}\p{N}_]+)*’?/gu;

const BY_FIRST = new Map<string, Spelling[]>();
for (const term of TERMS)
  for (const language of ["en", "fr"] as const)
    for (const spelled of term.words[language]) {
      const words = apart(spelled);
      const list = BY_FIRST.get(words[0]!) ?? [];
      BY_FIRST.set(words[0]!, list);
      list.push({ words, language, term });
    }

/** The term of exactly these words of the language of plans. */
export const termCalled = (name: string): Term | undefined => {
  const words = apart(name);
  return BY_FIRST.get(words[0] ?? "")?.find(
    (s) => s.language === "en" && s.words.length === words.length && s.words.every((w, i) => w === words[i]),
  )?.term;
};

/** The longest term that covers an offset, or ends there; among people's words only those that are nothing else. */
export function termAt(text: string, offset: number, among: "plan" | "people"): Found | undefined {
  const words = wordsAround(text, offset);
  let best: Found | undefined;
  words.forEach(({ said }, i) => {
    for (const spelling of BY_FIRST.get(said) ?? []) {
      const last = words[i + spelling.words.length - 1];
      const fits =
        last !== undefined &&
        (among === "plan" ? spelling.language === "en" : spelling.term.prose.includes(spelling.language)) &&
        spelling.words.every((word, n) => word === words[i + n]!.said && (n === 0 || words[i + n]!.joins));
      if (!fits) continue;
      const found = { start: words[i]!.start, end: last.end, term: spelling.term };
      if (covers(found, offset) && isBetter(found, best, offset)) best = found;
    }
  });
  return best;
}

const covers = ({ start, end }: Span, offset: number): boolean => start <= offset && offset <= end;

/** Truly on it goes before just behind it, then the longer one. */
function isBetter(found: Found, than: Found | undefined, offset: number): boolean {
  if (!than) return true;
  const [on, was] = [offset < found.end, offset < than.end];
  return on === was ? found.end - found.start > than.end - than.start : on;
}

interface Around extends Span {
  readonly said: string;
  /** Only blanks lie between it and the word before. */
  readonly joins: boolean;
}

/** The words of the line near an offset, with those that a term of several words may take in. */
function wordsAround(text: string, offset: number): Around[] {
  const from = Math.max(lineStart(text, offset), offset - NEAR);
  const near = text.slice(from, offset + NEAR);
  const stop = near.slice(offset - from).search(/[\r\n]/);
  const line = (stop < 0 ? near : near.slice(0, offset - from + stop)).replaceAll("'", "’");
  let end = 0;
  return [...line.matchAll(WORD)].map((match) => {
    const start = match.index;
    const joins = /^[ \t\u00a0]*$/.test(line.slice(end, start));
    end = start + match[0].length;
    return { start: from + start, end: from + end, said: match[0].toLowerCase(), joins };
  });
}

/** Letters to either side: more than any term is long. */
const NEAR = 60;
