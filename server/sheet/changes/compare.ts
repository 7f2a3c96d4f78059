/** From two sheets to what differs between them. */
import type {
  Marked,
  NotChecked,
  SheetBoard,
  SheetBuilt,
  SheetData,
  SheetPanel,
  SheetProblem,
} from "../data";
import type { SheetWords } from "../words";
import type { CutOtherwise, SheetChanges } from "./data";
import {
  buyingLines,
  costLines,
  joiningLines,
  moreLines,
  orderOfSteps,
  planLines,
  stepLines,
  toolLines,
} from "./lines";
import { pieceChanges } from "./pieces";
import { type Line, only, paired, toldOtherwise } from "./rows";

/** A side of a comparison: of a plan that was not there, or is gone, the sheet of an empty one. */
export interface Side {
  readonly sheet: SheetData;
  readonly isThere: boolean;
}

/**
 * Both sheets in these words and in the same units, in which `mark` writes a length in mm. `built` finds the building whose
 * plan the new one is, on the sheet of the old.
 */
export function changesOf(
  before: Side,
  after: Side,
  words: SheetWords,
  mark: (mm: number) => Marked,
  built?: (sheet: SheetData) => SheetBuilt | undefined,
): SheetChanges {
  const [old, now] = [before, after].map(({ sheet, isThere }) =>
    isThere ? sheet : { ...sheet, title: "" },
  ) as [SheetData, SheetData];
  const told = (linesOf: (data: SheetData, words: SheetWords) => readonly Line[]) =>
    toldOtherwise(linesOf(old, words), linesOf(now, words));
  const found = {
    plan: told(planLines),
    pieces: pieceChanges(old, now, words, mark),
    cutting: cutOtherwise(old, now),
    buying: told(buyingLines),
    cost: told(costLines),
    joining: told(joiningLines),
    // What a tool is taken up for follows from the rest.
    more: [...told(moreLines), ...told(toolLines).filter((row) => row.old === null || row.new === null)],
    steps: stepChanges(old, now, words),
    problems: only(old.problems, now.problems, problemKey),
    accepted: only(old.accepted, now.accepted, problemKey),
    notChecked: only(old.notChecked, now.notChecked, ({ what, why }: NotChecked) => `${what}\n${why}`),
  };
  const record = built?.(old);
  const plan = ({ sheet: { file, title }, isThere }: Side) => (isThere ? { file, title } : null);
  return {
    format: "sawbuck-changes",
    version: 1,
    plans: { old: plan(before), new: plan(after) },
    built: record ? [record] : [],
    same:
      before.isThere &&
      after.isThere &&
      (record?.changed.length ?? 0) === 0 &&
      Object.values(found).every((list) => sizeOf(list) === 0),
    ...found,
  };
}

const sizeOf = (list: readonly unknown[] | { old: readonly unknown[]; new: readonly unknown[] }): number =>
  "old" in list ? list.old.length + list.new.length : list.length;

/** Where a problem stands is no part of it: lines move. */
const problemKey = ({ code, message, accepted = "" }: SheetProblem): string =>
  `${code}\n${message}\n${accepted}`;

function stepChanges(old: SheetData, now: SheetData, words: SheetWords) {
  const told = toldOtherwise(stepLines(old, words), stepLines(now, words));
  const titles = new Set(old.steps.map(({ title }) => title));
  const both = new Set(now.steps.flatMap(({ title }) => (titles.has(title) ? [title] : [])));
  const order = (data: SheetData): Line[] => {
    const text = orderOfSteps(data, both);
    return text === "" ? [] : [{ what: words.changes.order, text }];
  };
  const orders = toldOtherwise(order(old), order(now)).filter(({ old, new: now }) => old && now);
  return [...told, ...orders];
}

/** Boards and sheets by how each is cut, pieces by their parts and lengths: which of like pieces it is does not matter. */
function cutOtherwise(old: SheetData, now: SheetData): CutOtherwise[] {
  const stocks = (data: SheetData): { stock: string; cut: string[] }[] => [
    ...data.boards.map(({ stock, boards }) => ({ stock, cut: boards.flatMap(boardKeys) })),
    ...data.panels.map(({ stock, sheets }) => ({ stock, cut: sheets.flatMap(panelKeys) })),
  ];
  return paired(stocks(old), stocks(now), ({ stock }) => stock)
    .map((pair) => {
      const [before, after] = [pair.old?.cut ?? [], pair.new?.cut ?? []];
      const { new: other } = only(before, after, (key) => key);
      return {
        stock: (pair.old ?? pair.new)!.stock,
        old: before.length,
        new: after.length,
        same: after.length - other.length,
      };
    })
    .filter(({ old: before, new: after, same }) => before > 0 && after > 0 && before + after > 2 * same);
}

function boardKeys({ kind, length, cuts, count }: SheetBoard): string[] {
  const key = JSON.stringify([kind, length.mm, cuts.map((cut) => [cut.label, cut.from.mm, cut.to.mm])]);
  return Array.from({ length: count }, () => key);
}

function panelKeys({ kind, length, width, cuts, count }: SheetPanel): string[] {
  const at = cuts.map((cut) => [cut.label, cut.x, cut.y, cut.length.mm, cut.width.mm]);
  const key = JSON.stringify([kind, length.mm, width.mm, at]);
  return Array.from({ length: count }, () => key);
}
