/** What a hover says of the language's own words, of problem codes and of the lines that have no name. */
import { type EntryForm, entryForm, type Form } from "../../grammar/forms";
import type { Entry } from "../../grammar/tree";
import { checkOf, uncheckedText } from "../checks";
import { species, weightOf } from "../trade";
import { DENSITY, roughly } from "../units";
import type { Worked } from "../worked";
import { code, escaped, list, paragraphs, planBlock, strong } from "./markdown";
import { bothTexts, LB_CUFT, valueOr } from "./values";

/** A word that opens an entry, and how such an entry may go on. */
export function describeEntryWord(word: string): string | undefined {
  const form = entryForm(word);
  return form && paragraphs(`**${word}**: ${form.doc}`, planBlock(form.example), goesOn(form));
}

function goesOn(form: EntryForm): string | undefined {
  const openings = form.clauses.map((c) => code(c.opens.length > 0 ? c.opens.join(" ") : c.example));
  return openings.length > 0 ? `It may go on with ${openings.join(", ")}.` : undefined;
}

/** The words that open a clause. The doc of a form may hold code spans of its own. */
export const describeOpening = (form: Form): string =>
  paragraphs(`**${form.opens.join(" ")}**: ${form.doc}`, planBlock(form.example));

/** A problem's code, as in `accept over-budget`. */
export function describeCode(name: string): string | undefined {
  const check = checkOf(name);
  const first = check?.page.split("\n\n")[0]?.replace(/\n/g, " ");
  return check && paragraphs(`${strong(name)} (${check.class}): ${escaped(check.title)}`, first);
}

/** The builder's own rule: both sides, and how it comes out. */
export function describeMust(entry: Entry, worked: Worked): string | undefined {
  const must = worked.musts.find((m) => m.entry === entry);
  if (!must) return undefined;
  const { display } = worked.settings;
  const { left, right, holds } = must;
  const rule = `Your own rule: ${must.entry.comparison} ${valueOr(right, display)}.`;
  const outcome = holds === undefined ? "not checked" : holds ? "the rule is kept" : "the rule is broken";
  const state =
    left.state === "known"
      ? `It comes to ${valueOr(left, display)}: ${outcome}.`
      : `What it comes to: ${valueOr(left, display)}.`;
  return paragraphs(`${rule} ${state}`, must.because && `Because ${escaped(must.because)}`);
}

/** Lines that are read but not worked out by this version say so. */
export function describeUnchecked(entry: Entry, { loaded, unchecked }: Worked): string {
  const main = loaded.files[0];
  const first = main?.tree.entries.find((e) => e.kind === entry.kind)?.keyword;
  const told = unchecked.filter(
    ({ at }) => at && first && at.file === main.file && at.start === first.start && at.end === first.end,
  );
  return list(
    told
      .map((u) => uncheckedText(u))
      .map(({ what, why }) => `Not checked: ${escaped(`${what}, since ${why}`)}`),
  );
}

/** A species, or a word before a thing. */
export function describeWord(word: string, clause: string | undefined, worked: Worked): string | undefined {
  const wood = clause === "species" ? species(word) : undefined;
  if (wood) {
    const weight = weightOf(wood, 12);
    const dense = weight && bothTexts(roughly(DENSITY, weight.density * LB_CUFT), worked.settings.display);
    return paragraphs(
      `${strong(word)}, a species: ${escaped(wood.title)}${wood.group ? `, graded with ${escaped(wood.group)}` : ""}`,
      dense ? `${escaped(dense)} at 12% moisture` : "Its weight is in no table",
      wood.decay &&
        `How its heartwood resists decay: ${escaped(wood.decay.value)}; bought boards are largely sapwood`,
    );
  }
  return Object.hasOwn(WORD_DOCS, word) ? WORD_DOCS[word] : undefined;
}

const WORD_DOCS: Readonly<Record<string, string>> = {
  left: "Those left of the middle of the group.",
  right: "Those right of the middle of the group.",
  front: "Those in front of the middle of the group.",
  back: "Those behind the middle of the group.",
  top: "Those above the middle of the group.",
  bottom: "Those below the middle of the group.",
  upper: "Those above the middle of the group.",
  lower: "Those below the middle of the group.",
  middle: "The middle one of the group.",
};
