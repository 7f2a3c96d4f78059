/** What comes of a plan once what was measured stands in it: cost and problems before and after, and then what changed. */
import { costOf, inShort, problemsOf } from "../book/book";
import type { SheetChanges } from "../changes/data";
import { changesDocument } from "../changes/document";
import type { SheetData } from "../data";
import type { Section } from "../document";
import { paragraph, section, terms } from "../parts/blocks";
import type { SheetWords } from "../words";

/** `after` is unsaid while nothing is filled in. */
export function outcomeSections(
  before: SheetData,
  after: { readonly data: SheetData; readonly changes: SheetChanges } | undefined,
  words: SheetWords,
): Section[] {
  const { slip: says, changes: told } = words;
  const [was, is] = [before, after?.data ?? before].map((data) =>
    inShort({ data, about: "", drawing: undefined, address: undefined }, words),
  ) as [ReturnType<typeof inShort>, ReturnType<typeof inShort>];
  const both = (old: string, now: string): string => (old === now ? now : told.was(old, now));
  const head = section("outcome", says.headingOutcome, [
    ...(after ? [] : [paragraph("plain", says.empty)]),
    terms(
      [
        { label: says.cost, words: both(costOf(was, words), costOf(is, words)) },
        { label: says.problems, words: both(problemsOf(was, words), problemsOf(is, words)) },
      ].filter((row) => row.words !== ""),
    ),
  ]);
  if (!after) return head;
  const sections = changesDocument([{ changes: after.changes }], words).sections;
  const urgent = (one: Section): boolean => one.name === "problems";
  return [...head, ...sections.filter(urgent), ...sections.filter((one) => !urgent(one))];
}
