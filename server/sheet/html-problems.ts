/** What the checks found, what the builder let stand, and what was not looked at. */
import type { NotChecked, SheetData, SheetProblem } from "./data";
import { paragraphs, section } from "./html-parts";
import { type Child, element, type Markup } from "./markup";
import { classWord, HEADINGS, NOTHING_LISTED, noProblems, placeWords, problemDetails } from "./wording";

export function problemSections(data: SheetData): Child {
  return [
    section(
      "problems",
      HEADINGS.problems,
      data.problems.length === 0
        ? paragraphs("none", [noProblems(data)])
        : problemList(data.problems, data.file),
    ),
    data.accepted.length === 0
      ? null
      : section("accepted", HEADINGS.accepted, problemList(data.accepted, data.file)),
    section(
      "not-checked",
      HEADINGS.notChecked,
      data.notChecked.length === 0
        ? paragraphs("none", [NOTHING_LISTED])
        : element(
            "ul",
            {},
            data.notChecked.map((entry) => notChecked(entry, data.file)),
          ),
    ),
  ];
}

function problemList(problems: readonly SheetProblem[], plan: string): Markup {
  return element(
    "ul",
    { class: "problem-list" },
    problems.map((problem) => problemItem(problem, plan)),
  );
}

function problemItem(problem: SheetProblem, plan: string): Markup {
  const { place, message, code } = problem;
  const details = problemDetails(problem, plan);
  return element(
    "li",
    { class: `problem ${problem.class}`, "data-line": place.file === plan ? place.line : undefined },
    element("p", {}, element("strong", { class: "class" }, classWord(problem)), " ", message),
    element("p", { class: "where" }, `${placeWords(place, plan)}, ${code}`),
    details.map(({ label, value }) =>
      element("p", { class: "detail" }, element("strong", {}, `${label}: `), value),
    ),
  );
}

function notChecked({ what, why, place }: NotChecked, plan: string): Markup {
  const where = place ? ` (${placeWords(place, plan)})` : "";
  const line = place && place.file === plan ? place.line : undefined;
  return element("li", { "data-line": line }, element("strong", {}, what), `: ${why}${where}`);
}
