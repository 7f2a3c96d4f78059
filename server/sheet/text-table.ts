/** A table in columns of letters: what is wide stands behind its row where it fits, else under it. */
import {
  type Cell,
  plainWords,
  type Row,
  runsOf,
  type Table,
  type Words,
  type WriterWords,
} from "./document";
import { oneLine } from "./escape";
import { aligned, columnsOf, hanging, padded, type TextRow, wrapped } from "./text-layout";

export function tableLines(
  { columns, groups, sums }: Table,
  width: number,
  { between }: WriterWords,
): readonly string[] {
  const narrow = columns.flatMap(({ fit }, i) => (fit === "wide" ? [] : [i]));
  const wide = columns.flatMap(({ fit }, i) => (fit === "wide" ? [i] : []));
  const right = narrow.flatMap((i, n) => (columns[i]!.fit === "number" ? [n] : []));
  const first = narrow.findIndex((i) => columns[i]!.fit === "text");
  const shape = { width, indent: 2, right, under: Math.max(0, first) };
  const textRow = ({ cells }: Row): TextRow => ({
    cells: narrow.map((i) => labelled(cellText(cells[i]!, between), columns[i]!.label)),
    detail: wide
      .map((i) => cellText(cells[i]!, between))
      .filter((words) => words !== "")
      .join(between),
  });
  const shown = groups.filter(({ rows }) => rows.length > 0);
  return [
    ...shown.flatMap(({ title, source, rows }, i) => [
      ...(i > 0 && title !== "" ? [""] : []),
      ...(title === "" ? [] : wrapped(title, width)),
      ...(source === "" ? [] : hanging("  ", source, width)),
      ...aligned(rows.map(textRow), shape),
    ]),
    ...sumLines(sums, width),
  ];
}

function sumLines(sums: Table["sums"], width: number): readonly string[] {
  if (sums.length === 0) return [];
  const label = Math.max(...sums.map((sum) => columnsOf(sum.label)));
  const value = Math.max(...sums.map((sum) => columnsOf(oneLine(sum.value))));
  return [
    "",
    ...sums.flatMap((sum) => {
      const lead = `  ${padded(sum.label, label)}  `;
      return value <= 20 ? [lead + padded(oneLine(sum.value), value, true)] : hanging(lead, sum.value, width);
    }),
  ];
}

/** There are no heads over the columns. */
const labelled = (words: string, label = ""): string =>
  words === "" || label === "" ? words : `${label} ${words}`;

function cellText(cell: Cell, between: string): string {
  if ("ticks" in cell) return cell.ticks.length === 0 ? "" : "[ ]";
  return "words" in cell ? inText(cell.words) : cell.lines.map(inText).join(between);
}

/** What is said beside stands in parentheses. */
export const inText = (words: Words): string =>
  runsOf(words)
    .map((run) => (run.style === "small" && !/^\s*\(/.test(run.text) ? `(${run.text})` : plainWords([run])))
    .join("");
