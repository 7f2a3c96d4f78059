/** What the checks found, what the builder let stand, and what was not looked at. */
import type { NotChecked, Place, SheetData, SheetProblem } from "../data";
import type { Item, Run, Section, Words } from "../document";
import type { SheetWords } from "../words";
import { list, paragraph, section } from "./blocks";

export function problemSections(data: SheetData, words: SheetWords): Section[] {
  const { problems, accepted, notChecked, file } = data;
  const item = (problem: SheetProblem): Item => problemItem(problem, file, words);
  return [
    ...section("problems", words.headings.problems, [
      problems.length === 0
        ? paragraph("plain", words.noProblems(accepted.length > 0, notChecked.length > 0))
        : list("leads", problems.map(item)),
    ]),
    ...section("accepted", words.headings.accepted, [list("leads", accepted.map(item))]),
    ...section("not-checked", words.headings.notChecked, [
      notChecked.length === 0
        ? paragraph("plain", words.nothingListed)
        : list(
            "bullets",
            notChecked.map((entry) => notCheckedItem(entry, file, words)),
            { columns: 2 },
          ),
    ]),
  ];
}

export function problemItem(problem: SheetProblem, plan: string, words: SheetWords): Item {
  const { place, message, code, cures, assumed, related, accepted } = problem;
  const detail = (label: string, ...said: readonly Run[]): Words =>
    joined({ text: `${label}${words.colon} `, style: "strong" }, ...said);
  const told = inMessages(words);
  const before = (text: string): Run => ({ text: `${text}${words.colon} ` });
  return {
    lead: words.classes[problem.class],
    framed: problem.class === "hazard",
    words: joined(told(message)),
    below: [
      `${placeWords(place, plan, words)}, ${code}`,
      ...cures.map((cure) => detail(words.cure, told(cure))),
      ...assumed.map((what) => detail(words.assumed, told(what))),
      ...related.map((r) => detail(words.see, before(placeWords(r.place, plan, words)), told(r.message))),
      ...(accepted === undefined ? [] : [detail(words.acceptedBecause, { text: accepted })]),
    ],
    ...lineIn(place, plan),
  };
}

export function notCheckedItem({ what, why, place }: NotChecked, plan: string, words: SheetWords): Item {
  const where = place ? ` (${placeWords(place, plan, words)})` : "";
  const told = inMessages(words);
  return {
    words: joined({ ...told(what), style: "strong" }, { text: `${words.colon} ` }, told(why), {
      text: where,
    }),
    ...(place && lineIn(place, plan)),
  };
}

/** Words of the checks, with their language where the sheet is in another. */
const inMessages =
  ({ tag, messages }: SheetWords) =>
  (text: string): Run => ({ text, ...(messages !== tag && { language: messages }) });

/** Runs of one style and language as one; without either, plain words. */
function joined(...runs: readonly Run[]): Words {
  const made: Run[] = [];
  for (const run of runs) {
    const last = made.at(-1);
    if (last && last.style === run.style && last.language === run.language)
      made[made.length - 1] = { ...last, text: last.text + run.text };
    else made.push(run);
  }
  const [only] = made;
  return made.length === 1 && only && !only.style && !only.language ? only.text : made;
}

/** `line 12`, with the file's name when it is not the sheet's own plan. */
const placeWords = (place: Place, plan: string, words: SheetWords): string =>
  place.file === plan ? words.line(place.line) : words.lineOf(place.file, place.line);

/** Where a click leads, if that is in the sheet's own plan. */
export const lineIn = (place: Place, plan: string): { readonly line?: number } =>
  place.file === plan ? { line: place.line } : {};
