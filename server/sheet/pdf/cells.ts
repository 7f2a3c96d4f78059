/** What stands in the cells of a table, and where its columns stand for it. */
import { type Cell, type Column, plainWords, type Row, type Words } from "../document";
import type { Setting } from "./blocks";
import { fewestLines, type Need, widthsOfColumns } from "./columns";
import type { Letters } from "./letters";
import { boxesWidth, boxLines, type Line, linesOf, widthsOf } from "./lines";
import { BODY, GAP, SMALL } from "./paper";
import type { Frame } from "./slab";

/** A column where it stands: beside the others, or its cells under their rows. */
export interface Laid extends Frame {
  readonly column: Column;
  readonly place: number;
  readonly under: boolean;
}

/** Something stands in it. */
export const isFull = (cell: Cell | undefined): boolean => {
  if (!cell) return false;
  if ("ticks" in cell) return cell.ticks.length > 0;
  return "lines" in cell ? cell.lines.length > 0 : plainWords(cell.words) !== "";
};

function needOf({ fit, head }: Column, cells: readonly (Cell | undefined)[], letters: Letters): Need {
  const heads = widthsOf(head, SMALL, letters);
  let [most, least] = [fit === "text" ? heads.most : heads.least, heads.least];
  for (const cell of cells) {
    if (!cell) continue;
    if ("ticks" in cell) {
      const width = boxesWidth(Math.min(cell.ticks.length, cell.ticks.length > MANY ? MOST : FEW));
      most = Math.max(most, width);
      least = Math.max(least, width);
    } else
      for (const words of wordsIn(cell)) {
        const widths = widthsOf(words, BODY, letters);
        most = Math.max(most, widths.most);
        least = Math.max(least, widths.least);
      }
  }
  return { fit, most, least };
}

const wordsIn = (cell: Exclude<Cell, { ticks: unknown }>): readonly Words[] =>
  "lines" in cell ? cell.lines : [cell.words];

/** The columns that are shown, by their places in the table, with the room that their cells ask for. */
export function layOut(
  columns: readonly Column[],
  places: readonly number[],
  rows: readonly Row[],
  frame: Frame,
  letters: Letters,
): readonly Laid[] {
  const cells = places.map((place) => rows.map((row) => row.cells[place]));
  const needs = places.map((place, i) => needOf(columns[place]!, cells[i]!, letters));
  const first = widthsOfColumns(needs, frame.width);
  const widths =
    rows.length > MOST_ROWS
      ? first
      : fewestLines(first, needs, (column, width) => linesIn(cells[column]!, width, letters));
  const right = frame.left + frame.width;
  let left = frame.left;
  const beside = places.map((place, i) => {
    const width = widths[i];
    const at = left;
    if (width !== undefined) left += width + GAP;
    return { column: columns[place]!, place, left: at, width: width ?? 0, under: width === undefined };
  });
  // What goes under a row stands under its first words.
  const words = beside.find(({ column, under }) => !under && column.fit === "text");
  const start = words?.left ?? frame.left;
  return beside.map((laid) => (laid.under ? { ...laid, left: start, width: right - start } : laid));
}

/** Longer tables are not tried with other widths, which takes time. */
const MOST_ROWS = 60;

/** How many lines each cell of a column takes in a width. */
function linesIn(cells: readonly (Cell | undefined)[], width: number, letters: Letters): readonly number[] {
  return cells.map((cell) => {
    if (!cell || "ticks" in cell) return 0;
    return wordsIn(cell).reduce((sum, words) => sum + linesOf(words, BODY, width, letters).length, 0);
  });
}

/** Where its stacks stand; numbers end on one line. */
export const placeOf = ({ left, width, column }: Laid) => ({
  left,
  width,
  ...(column.fit === "number" && { align: "right" as const }),
});

/** The cell's lines; under a row it says what it is. */
export function cellLines(
  cell: Cell | undefined,
  { column, width, under }: Laid,
  setting: Setting,
): readonly Line[] {
  const { letters } = setting.pen;
  if (!cell || !isFull(cell)) return [];
  if ("ticks" in cell) return boxLines(cell.ticks, width, setting.words);
  const label = column.label ?? column.head;
  const lead = under && label !== "" ? [{ text: `${label}: `, style: "small" as const }] : [];
  return wordsIn(cell).flatMap((words, i) => {
    const runs = typeof words === "string" ? [{ text: words }] : words;
    return linesOf(i === 0 ? [...lead, ...runs] : runs, BODY, width, letters);
  });
}

/** Boxes on a line of a cell, of a few and of many; more wrap. */
const FEW = 5;
const MOST = 8;
const MANY = 10;
