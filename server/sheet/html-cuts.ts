/** Cut list and layouts. */
import { boardScale, drawBoard } from "./board-drawing";
import type { BoardPlan, CutRow, Marked, PanelPlan, SheetData } from "./data";
import type { Drawing } from "./display";
import { type Column, list, paragraphs, section, table } from "./html-parts";
import { type Child, element, type Markup } from "./markup";
import { drawPanel, panelScale } from "./panel-drawing";
import { drawingSvg } from "./svg";
import { boardWords, HEADINGS, KEYS, layoutWords, lengthWords, measureWords, partWords } from "./wording";

export function cutSections(data: SheetData): Child {
  const boards = boardScale(data.boards.flatMap((plan) => plan.boards));
  const sheets = panelScale(data.panels.flatMap((plan) => plan.sheets));
  const { system } = data.units;
  return [
    data.cutList.length === 0
      ? null
      : section(
          "cut-list",
          HEADINGS.cutList,
          paragraphs("key", [KEYS.cutList]),
          table(
            "cuts",
            CUT_COLUMNS,
            data.cutList.map(({ title, source, rows }) => ({
              title: [title, source === "" ? null : [" ", element("small", {}, source)]],
              rows,
            })),
            ({ place }) => ({ "data-line": place.file === data.file ? place.line : undefined }),
          ),
        ),
    data.boards.length === 0
      ? null
      : section(
          "boards",
          HEADINGS.boards,
          paragraphs("key", [KEYS.boards]),
          data.boards.map((plan) =>
            layout(
              plan,
              plan.boards.map((board) =>
                figure(boardWords(board), drawBoard(board, { scale: boards, system })),
              ),
            ),
          ),
        ),
    data.panels.length === 0
      ? null
      : section(
          "panels",
          HEADINGS.panels,
          paragraphs("key", [KEYS.panels]),
          data.panels.map((plan) =>
            layout(
              plan,
              plan.sheets.map((sheet) => figure(boardWords(sheet), drawPanel(sheet, { scale: sheets }))),
            ),
          ),
        ),
  ];
}

const CUT_COLUMNS: readonly Column<CutRow>[] = [
  { head: "Cut", kind: "tick", cell: () => null },
  { head: "Mark", kind: "mark", cell: ({ mark }) => (mark === "" ? null : strong(mark)) },
  { head: "No.", kind: "count", cell: ({ count }) => String(count) },
  { head: "Part", kind: "name", cell: partWords },
  { head: "Length", kind: "length", cell: (row) => [strong(lengthWords(row)), other(row.length)] },
  {
    head: "Ripped to",
    kind: "rip",
    label: "ripped to",
    cell: ({ ripped, width }) => (ripped && width ? [strong(width.text), other(width)] : null),
  },
  {
    head: "Ends and notes",
    kind: "wide",
    cell: (row) => {
      const words = [measureWords(row), row.ends, ...row.notes].filter((said) => said !== "");
      return words.length === 0 ? null : list(words);
    },
  },
];

function strong(words: string): Markup {
  return element("strong", {}, words);
}

/** The same length in the other system, small beside it. */
function other(length: Marked | null): Child {
  return length ? [" ", element("small", {}, length.other)] : null;
}

function layout(plan: BoardPlan | PanelPlan, figures: readonly Markup[]): Child {
  return element(
    "div",
    { class: "layout" },
    element("h3", {}, plan.title),
    paragraphs("source", layoutWords(plan)),
    figures,
  );
}

function figure(caption: string, drawing: Drawing): Markup {
  return element(
    "figure",
    {},
    element("figcaption", {}, caption),
    element("div", { class: "paper" }, drawingSvg(drawing)),
  );
}
