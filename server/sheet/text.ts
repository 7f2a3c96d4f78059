/** The shop sheet as plain text for a terminal: the sections of the page in the same order, no colour codes. */
import type { CutGroup, SheetData, SheetProblem } from "./data";
import { oneLine } from "./escape";
import { boardLines, panelLines } from "./text-boards";
import { aligned, columnsOf, hanging, padded, wrapped } from "./text-layout";
import { workLines } from "./text-work";
import {
  boardWords,
  classWord,
  HEADINGS,
  KEYS,
  layoutWords,
  lengthWords,
  measureWords,
  NOTHING_LISTED,
  noProblems,
  partWords,
  placeWords,
  problemDetails,
  unitWords,
} from "./wording";
import { overallWords, rowsByMark, rowWords } from "./wording-space";

/** The whole sheet, lines of at most `width` columns (at least 40), a newline at the end. */
export function sheetText(data: SheetData, width = 80): string {
  const w = Math.max(40, Math.floor(width));
  const sections = [
    titleLines(data, w),
    headed(HEADINGS.drawing, drawingLines(data, w)),
    ...problemLines(data, w),
    headed(
      HEADINGS.cautions,
      data.cautions.flatMap(({ text, source }) =>
        hanging("  - ", source === "" ? text : `${text} (${source})`, w),
      ),
    ),
    headed(HEADINGS.cutList, cutLines(data.cutList, w)),
    headed(HEADINGS.boards, boardSection(data, w)),
    headed(HEADINGS.panels, panelSection(data, w)),
    ...workLines(data, w).map(({ heading, lines }) => headed(heading, lines)),
  ];
  return `${sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n\n")}\n`;
}

function headed(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [heading, "-".repeat(heading.length), ...lines];
}

function titleLines({ title, file, units, facts }: SheetData, width: number): readonly string[] {
  const titles = wrapped(title, width);
  const label = Math.min(24, Math.max(0, ...facts.map((fact) => columnsOf(oneLine(fact.label)))));
  return [
    ...titles,
    "=".repeat(Math.max(...titles.map(columnsOf))),
    ...wrapped(`${file}, ${unitWords(units)}`, width),
    ...(facts.length > 0 ? [""] : []),
    ...facts.flatMap((fact) => hanging(`  ${padded(oneLine(fact.label), label)}  `, fact.value, width)),
  ];
}

/** The size over all, and the pieces by their marks. */
function drawingLines(data: SheetData, width: number): readonly string[] {
  if (data.overall === null) return [];
  return [
    ...wrapped(overallWords(data.overall), width),
    ...aligned(
      rowsByMark(data).map((row) => ({ cells: [row.mark, rowWords(row)], detail: "" })),
      { width, indent: 2, right: [], under: 1 },
    ),
  ];
}

function problemLines(data: SheetData, width: number): readonly (readonly string[])[] {
  const { problems, accepted, notChecked, file } = data;
  const listed = (all: readonly SheetProblem[]) =>
    all.flatMap((problem, i) => [...(i === 0 ? [] : [""]), ...oneProblem(problem, file, width)]);
  return [
    headed(HEADINGS.problems, problems.length === 0 ? wrapped(noProblems(data), width) : listed(problems)),
    headed(HEADINGS.accepted, listed(accepted)),
    headed(
      HEADINGS.notChecked,
      notChecked.length === 0
        ? wrapped(NOTHING_LISTED, width)
        : notChecked.flatMap(({ what, why, place }) =>
            hanging("  - ", `${what}: ${why}${place ? ` (${placeWords(place, file)})` : ""}`, width),
          ),
    ),
  ];
}

function oneProblem(problem: SheetProblem, plan: string, width: number): readonly string[] {
  const indent = " ".repeat(11);
  return [
    ...hanging(`  ${padded(classWord(problem), 7)}  `, problem.message, width),
    ...hanging(indent, `${placeWords(problem.place, plan)}, ${problem.code}`, width),
    ...problemDetails(problem, plan).flatMap(({ label, value }) =>
      hanging(indent, `${label}: ${value}`, width),
    ),
  ];
}

function cutLines(groups: readonly CutGroup[], width: number): readonly string[] {
  if (groups.length === 0) return [];
  return [
    ...wrapped(KEYS.cutList, width),
    ...groups.flatMap(({ title, source, rows }) => [
      "",
      ...wrapped(title, width),
      ...(source === "" ? [] : hanging("  ", source, width)),
      ...aligned(
        rows.map((row) => {
          const { mark, count, length, ripped, width: across, ends, notes } = row;
          const rip = ripped && across ? `ripped to ${across.text} (${across.other})` : "";
          return {
            cells: [
              "[ ]",
              mark,
              String(count),
              partWords(row),
              lengthWords(row),
              length ? `(${length.other})` : "",
            ],
            detail: [rip, measureWords(row), ends, ...notes].filter((words) => words !== "").join("; "),
          };
        }),
        { width, indent: 2, right: [2, 4], under: 3 },
      ),
    ]),
  ];
}

function boardSection({ boards }: SheetData, width: number): readonly string[] {
  if (boards.length === 0) return [];
  const longest = Math.max(0, ...boards.flatMap((plan) => plan.boards.map((board) => board.length.mm)));
  return [
    ...wrapped(KEYS.boardsInText, width),
    ...boards.flatMap((plan) => [
      "",
      ...wrapped(plan.title, width),
      ...layoutWords(plan).flatMap((words) => hanging("  ", words, width)),
      ...plan.boards.flatMap((board) => [
        "",
        ...wrapped(boardWords(board), width),
        ...boardLines(board, longest, width),
      ]),
    ]),
  ];
}

function panelSection({ panels }: SheetData, width: number): readonly string[] {
  if (panels.length === 0) return [];
  return [
    ...wrapped(KEYS.panelsInText, width),
    ...panels.flatMap((plan) => [
      "",
      ...wrapped(plan.title, width),
      ...layoutWords(plan).flatMap((words) => hanging("  ", words, width)),
      ...plan.sheets.flatMap((sheet) => [
        "",
        ...wrapped(boardWords(sheet), width),
        ...panelLines(sheet, width),
      ]),
    ]),
  ];
}
