/** What the checks found, what the builder let stand, and what was not looked at. */
import type { NotChecked, Place, SheetData, SheetProblem } from "../data";
import type { Item, Section } from "../document";
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
          ),
    ]),
  ];
}

function problemItem(problem: SheetProblem, plan: string, words: SheetWords): Item {
  const { place, message, code, cures, assumed, related, accepted } = problem;
  const detail = (label: string, value: string) => [
    { text: `${label}: `, style: "strong" as const },
    { text: value },
  ];
  return {
    lead: words.classes[problem.class],
    framed: problem.class === "hazard",
    words: message,
    below: [
      `${placeWords(place, plan, words)}, ${code}`,
      ...cures.map((cure) => detail(words.cure, cure)),
      ...assumed.map((what) => detail(words.assumed, what)),
      ...related.map((r) => detail(words.see, `${placeWords(r.place, plan, words)}: ${r.message}`)),
      ...(accepted === undefined ? [] : [detail(words.acceptedBecause, accepted)]),
    ],
    ...lineIn(place, plan),
  };
}

function notCheckedItem({ what, why, place }: NotChecked, plan: string, words: SheetWords): Item {
  const where = place ? ` (${placeWords(place, plan, words)})` : "";
  return {
    words: [{ text: what, style: "strong" }, { text: `: ${why}${where}` }],
    ...(place && lineIn(place, plan)),
  };
}

/** `line 12`, with the file's name when it is not the sheet's own plan. */
const placeWords = (place: Place, plan: string, words: SheetWords): string =>
  place.file === plan ? words.line(place.line) : words.lineOf(place.file, place.line);

/** Where a click leads, if that is in the sheet's own plan. */
export const lineIn = (place: Place, plan: string): { readonly line?: number } =>
  place.file === plan ? { line: place.line } : {};
