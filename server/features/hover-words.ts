/** What a hover says of the language's own words, of problem codes and of the lines that have no name. */
import { type EntryForm, entryForm, type Form } from "../../grammar/forms";
import type { Entry } from "../../grammar/tree";
import { checkOf, type Language, titleOf, uncheckedText } from "../checks";
import { species, weightOf } from "../trade";
import { DENSITY, roughly } from "../units";
import type { Worked } from "../worked";
import { COMPLETION_WORDS } from "./completion-words";
import { formText } from "./form-words";
import { COMMON } from "./hover-texts/common";
import type { Voice } from "./hover-texts/voice";
import { WORDS } from "./hover-texts/words";
import { code, escaped, list, paragraphs, planBlock, strong } from "./markdown";
import { bothTexts, LB_CUFT, valueOr } from "./values";

/** A word that opens an entry, and how such an entry may go on. */
export function describeEntryWord(word: string, language: Language): string | undefined {
  const form = entryForm(word);
  return form && paragraphs(meaning(word, form, language), planBlock(form.example), goesOn(form, language));
}

/** The doc of a form may hold code spans of its own. */
const meaning = (word: string, form: Form | EntryForm, language: Language): string =>
  WORDS[language].meaning(`**${word}**`, formText(form, language));

function goesOn(form: EntryForm, language: Language): string | undefined {
  const openings = form.clauses.map((c) => code(c.opens.length > 0 ? c.opens.join(" ") : c.example));
  return openings.length > 0 ? WORDS[language].goesOn(openings) : undefined;
}

/** The words that open a clause. */
export const describeOpening = (form: Form, language: Language): string =>
  paragraphs(meaning(form.opens.join(" "), form, language), planBlock(form.example));

/** A problem's code, as in `accept over-budget`. */
export function describeCode(name: string, language: Language): string | undefined {
  const check = checkOf(name);
  if (!check) return undefined;
  const says = WORDS[language];
  const kind = COMPLETION_WORDS[language].classes[check.class];
  const first = check.page.split("\n\n")[0]?.replace(/\n/g, " ") ?? "";
  return paragraphs(says.code(strong(name), kind, escaped(titleOf(check, language))), says.page(first));
}

/** The builder's own rule: both sides, and how it comes out. */
export function describeMust(entry: Entry, worked: Worked, voice: Voice): string | undefined {
  const must = worked.musts.find((m) => m.entry === entry);
  if (!must) return undefined;
  const says = WORDS[voice.language];
  const { left, right, holds } = must;
  const rule = says.must(must.entry.comparison, valueOr(right, voice));
  const outcome = holds === undefined ? "unknown" : holds ? "kept" : "broken";
  const state =
    left.state === "known"
      ? says.comesTo(valueOr(left, voice), says.outcome[outcome])
      : `${COMMON[voice.language].comesTo(valueOr(left, voice))}.`;
  return paragraphs(`${rule} ${state}`, must.because && says.because(escaped(must.because)));
}

/** Lines that are read but not worked out by this version say so. */
export function describeUnchecked(entry: Entry, { loaded, unchecked }: Worked, language: Language): string {
  const main = loaded.files[0];
  const first = main?.tree.entries.find((e) => e.kind === entry.kind)?.keyword;
  const told = unchecked.filter(
    ({ at }) => at && first && at.file === main.file && at.start === first.start && at.end === first.end,
  );
  return list(
    told
      .map((u) => uncheckedText(u, language))
      .map(({ what, why }) => escaped(WORDS[language].notChecked(what, why))),
  );
}

/** A species, or a word before a thing. */
export function describeWord(word: string, clause: string | undefined, voice: Voice): string | undefined {
  const { language, display } = voice;
  const says = WORDS[language];
  const wood = clause === "species" ? species(word) : undefined;
  if (wood) {
    const weight = weightOf(wood, 12);
    const dense = weight && bothTexts(roughly(DENSITY, weight.density * LB_CUFT), display);
    return paragraphs(
      says.species(
        strong(word),
        escaped(COMMON[language].wood(wood.name, wood.title)),
        wood.group ? escaped(says.group(wood.group)) : "",
      ),
      dense ? says.density(escaped(dense)) : says.noDensity,
      wood.decay && says.decay(wood.decay.value),
    );
  }
  const { narrows } = COMPLETION_WORDS[language];
  return Object.hasOwn(narrows, word) ? narrows[word] : undefined;
}
