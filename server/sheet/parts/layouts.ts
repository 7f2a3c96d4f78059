/** Which piece is cut from which board or sheet, drawn to scale. */
import { boardScale, drawBoard } from "../board-drawing";
import type { BoardPlan, PanelPlan, SheetBoard, SheetData, SheetPanel } from "../data";
import type { Figure, Group, Paragraph, Section } from "../document";
import { drawPanel, panelScale } from "../panel-drawing";
import { boardLines, panelLines } from "../text-boards";
import type { SheetWords } from "../words";
import { paragraph, section } from "./blocks";

export function layoutSections(data: SheetData, words: SheetWords): Section[] {
  const { system } = data.units;
  const boards = data.boards.flatMap((plan) => plan.boards);
  const scale = boardScale(boards);
  const longest = Math.max(0, ...boards.map(({ length }) => length.mm));
  const sheets = panelScale(data.panels.flatMap((plan) => plan.sheets));
  const board = (shown: SheetBoard): Figure => ({
    kind: "figure",
    caption: captionOf(shown, words),
    drawing: () => drawBoard(shown, { scale, system, says: words.drawings }),
    toScale: true,
    letters: (width) => boardLines(shown, longest, width, words.drawings),
  });
  const panel = (shown: SheetPanel): Figure => ({
    kind: "figure",
    caption: captionOf(shown, words),
    drawing: () => drawPanel(shown, { scale: sheets, says: words.drawings }),
    toScale: true,
    letters: (width) => panelLines(shown, width, words.drawings),
  });
  return [
    ...(data.boards.length === 0
      ? []
      : section("boards", words.headings.boards, [
          paragraph("key", words.keys.boards, words.keys.boardsInText),
          ...allowed(shared(data.boards, words), words),
          ...data.boards.map((plan) => layout(plan, plan.boards.map(board), data.boards, words)),
        ])),
    ...(data.panels.length === 0
      ? []
      : section("panels", words.headings.panels, [
          paragraph("key", words.keys.panels, words.keys.panelsInText),
          ...allowed(shared(data.panels, words), words),
          ...data.panels.map((plan) => layout(plan, plan.sheets.map(panel), data.panels, words)),
        ])),
  ];
}

const captionOf = ({ label, count }: SheetBoard | SheetPanel, words: SheetWords): string =>
  count > 1 ? words.cutAlike(label, count) : label;

type Plans = readonly (BoardPlan | PanelPlan)[];

/** What holds for several of them is said once, and for which, where not for all. */
function shared(plans: Plans, words: SheetWords): readonly string[] {
  const all = new Set(plans.flatMap(({ assumed }) => assumed));
  return [...all].flatMap((said) => {
    const of = plans.filter(({ assumed }) => assumed.includes(said));
    if (!isShared(said, plans)) return [];
    return of.length === plans.length ? [said] : [words.said(of.map(({ stock }) => stock).join(", "), said)];
  });
}

/** Of several, with stocks that are told apart by their names, unless it is of all. */
function isShared(said: string, plans: Plans): boolean {
  const count = plans.filter(({ assumed }) => assumed.includes(said)).length;
  const named = new Set(plans.map(({ stock }) => stock)).size === plans.length;
  return count > 1 && (named || count === plans.length);
}

const allowed = (assumed: readonly string[], words: SheetWords): Paragraph[] =>
  assumed.length > 0 ? [paragraph("source", words.allowedFor(assumed.join(words.between)))] : [];

function layout(
  plan: BoardPlan | PanelPlan,
  figures: readonly Figure[],
  all: Plans,
  words: SheetWords,
): Group {
  const { assumed, unplaced, title } = plan;
  return {
    kind: "group",
    name: "layout",
    loose: true,
    heading: title,
    blocks: [
      ...allowed(
        assumed.filter((said) => !isShared(said, all)),
        words,
      ),
      ...(unplaced.length > 0
        ? [paragraph("source", words.noWoodFor(unplaced.map(words.piece).join(", ")))]
        : []),
      ...("stops" in plan ? stopsOf(plan, words) : []),
      ...figures,
    ],
  };
}

/** Lengths to set a stop for. */
function stopsOf({ stops }: BoardPlan, words: SheetWords): Paragraph[] {
  const told = stops.map(({ length, count, marks, boards }) =>
    words.stop(
      length.text,
      count,
      marks,
      boards.reduce((sum, board) => sum + board.count, 0),
    ),
  );
  return told.length > 0 ? [paragraph("plain", words.stops(told))] : [];
}
