/** A table of the sheet as HTML. On a phone its rows are laid out without their heads. */
import type { Cell, Column, Row, Table, WriterWords } from "./document";
import { ticksHtml, wordsHtml } from "./html-words";
import { type Child, element, type Markup } from "./markup";

export function tableHtml({ name, columns, groups, sums }: Table, words: WriterWords): Markup {
  const head = columns.map((column) => element("th", { scope: "col", class: classOf(column) }, column.head));
  const row = ({ cells, line, goesOn }: Row): Markup =>
    element(
      "tr",
      { class: goesOn && "goes-on", "data-line": line },
      cells.map((cell, i) => {
        const column = columns[i]!;
        return element("td", { class: classOf(column), "data-label": column.label }, cellHtml(cell, words));
      }),
    );
  const group = ({ title, source, rows }: Table["groups"][number]): Markup =>
    element(
      "tbody",
      {},
      title === ""
        ? null
        : element(
            "tr",
            { class: "group" },
            element(
              "th",
              { scope: "rowgroup", colspan: columns.length },
              wordsHtml(title),
              source === "" ? null : [" ", element("small", {}, source)],
            ),
          ),
      rows.map(row),
    );
  const sum = ({ label, value }: Table["sums"][number]): Markup =>
    element(
      "tr",
      {},
      element("th", { scope: "row", colspan: Math.max(1, columns.length - 1) }, label),
      element("td", { class: "number" }, value),
    );
  return element(
    "table",
    { class: name },
    columns.length === 0 ? null : element("thead", {}, element("tr", {}, head)),
    groups.filter(({ rows }) => rows.length > 0).map(group),
    sums.length === 0 ? null : element("tbody", { class: "sums" }, sums.map(sum)),
  );
}

const classOf = ({ name, fit }: Column): string => (name === fit ? name : `${name} ${fit}`);

function cellHtml(cell: Cell, words: WriterWords): Child {
  if ("ticks" in cell) return ticksHtml(cell.ticks, words);
  if ("words" in cell) return wordsHtml(cell.words);
  return cell.lines.length === 0
    ? null
    : element(
        "ul",
        {},
        cell.lines.map((line) => element("li", {}, wordsHtml(line))),
      );
}
