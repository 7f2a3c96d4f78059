/** A sheet as lines of one fact each, for programs that compare texts by lines: no marks, no columns, no prices, no places. */
import type { CutRow, SheetData } from "../data";
import { oneLine } from "../escape";
import { partWords, rowsByMark } from "../parts/names";
import type { SheetWords } from "../words";
import { joiningLines, moreLines, planLines, stepLines } from "./lines";

/** A change of one thing changes its own lines alone. A newline at the end of each. */
export function sheetLines(data: SheetData, words: SheetWords): string {
  const { headings } = words.changes;
  const stocks = new Map(data.cutList.flatMap(({ stock, rows }) => rows.map((row) => [row, stock])));
  const facts = [
    ...planLines(data, words).map((line) => told(headings.plan, line.what, line.text)),
    ...rowsByMark(data).map((row) =>
      told(headings.pieces, partWords(row, words), pieceWords(row, stocks.get(row) ?? "", words)),
    ),
    ...data.shopping.rows.map(({ what, unit, count }) =>
      told(words.headings.buying, [what, unit].filter(Boolean).join(", "), String(count)),
    ),
    ...joiningLines(data, words).map((line) => told(headings.joining, line.what, line.text)),
    ...moreLines(data, words).map((line) => told(headings.more, line.what, line.text)),
    ...stepLines(data, words).map((line) => told(headings.steps, line.what, line.text)),
    ...[...data.problems, ...data.accepted].map(({ class: kind, message, code, accepted }) =>
      told(
        headings.problems,
        words.classes[kind],
        `${message} [${code}]${accepted === undefined ? "" : words.because(accepted)}`,
      ),
    ),
  ];
  return facts.map((fact) => `${fact}\n`).join("");

  function told(about: string, what: string, text: string): string {
    return oneLine(words.said(`${about}, ${what}`, text));
  }
}

function pieceWords(row: CutRow, stock: string, words: SheetWords): string {
  const { count, length, measured, width, ripped, ends, notes } = row;
  return [
    `${count} x ${stock}`,
    length?.text ?? words.notKnown,
    measured,
    ripped && width ? words.said(words.width, width.text) : "",
    ends,
    ...notes,
  ]
    .filter(Boolean)
    .join(", ");
}
