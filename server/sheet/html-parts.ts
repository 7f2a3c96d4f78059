/** Pieces of a page that several sections share: a section with its heading, a table that leaves out empty columns, lists. */
import { type Child, element, type Markup } from "./markup";
import type { Labelled } from "./wording";

/** A section, or nothing when nothing stands in it. */
export function section(name: string, heading: string, ...content: readonly Child[]): Child {
  if (content.flat().every((child) => child === null)) return null;
  return element("section", { class: name }, element("h2", {}, heading), content);
}

export function paragraphs(name: string, texts: readonly string[]): Child {
  return texts.map((words) => element("p", { class: name }, words));
}

export function list(items: readonly string[]): Child {
  return items.length === 0
    ? null
    : element(
        "ul",
        {},
        items.map((words) => element("li", {}, unbroken(words))),
      );
}

/** Terms and what they are, side by side. */
export function terms(name: string, rows: readonly Labelled[]): Child {
  if (rows.length === 0) return null;
  const pairs = rows.map(({ label, value }) =>
    element("div", {}, element("dt", {}, label), element("dd", {}, unbroken(value))),
  );
  return element("dl", { class: name }, pairs);
}

export interface Column<Row> {
  readonly head: string;
  /** A class for its cells: "number", "name", "tick", "wide". */
  readonly kind: string;
  /** What stands in the cell; null when nothing does. */
  readonly cell: (row: Row) => Child;
  /** Said before the cell's text on a narrow screen, where there is no head. */
  readonly label?: string;
}

export interface RowGroup<Row> {
  /** Over its rows; null for none. */
  readonly title: Child;
  readonly rows: readonly Row[];
}

/** A table of row groups, a group's title over it when it has one. Columns with nothing in them are left out. */
export function table<Row>(
  name: string,
  columns: readonly Column<Row>[],
  groups: readonly RowGroup<Row>[],
  attributes: (row: Row) => { readonly "data-line"?: number | undefined } = () => ({}),
  foot: readonly Labelled[] = [],
): Child {
  const rows = groups.flatMap((group) => group.rows);
  if (rows.length === 0 && foot.length === 0) return null;
  const used = columns.filter(({ cell, kind }) => kind === "tick" || rows.some((row) => cell(row) !== null));
  const head = used.map(({ head, kind }) => element("th", { scope: "col", class: kind }, head));
  const row = (data: Row): Markup =>
    element(
      "tr",
      attributes(data),
      used.map(({ kind, label, cell }) =>
        element("td", { class: kind, "data-label": label }, kind === "tick" ? BOX : cell(data)),
      ),
    );
  const title = (words: Child): Child =>
    words === null
      ? null
      : element("tr", { class: "group" }, element("th", { scope: "rowgroup", colspan: used.length }, words));
  const sum = ({ label, value }: Labelled): Markup =>
    element(
      "tr",
      {},
      element("th", { scope: "row", colspan: Math.max(1, used.length - 1) }, label),
      element("td", { class: "number" }, value),
    );
  return element(
    "table",
    { class: name },
    rows.length === 0 ? null : element("thead", {}, element("tr", {}, head)),
    groups.map((group) => element("tbody", {}, title(group.title), group.rows.map(row))),
    foot.length === 0 ? null : element("tbody", { class: "sums" }, foot.map(sum)),
  );
}

/** Text, or nothing for an empty one. */
export function some(words: string | null): string | null {
  return words === null || words === "" ? null : words;
}

/** The text with its lengths kept on one line each: `1-3/4"` is never broken at its hyphen. */
export function unbroken(words: string): Child {
  return words
    .split(/(\d+-\d+\/\d+"?|\d+ mm)/)
    .map((part, i) => (i % 2 === 0 ? part : element("span", { class: "whole" }, part)));
}

/** A square to tick with a pencil. */
const BOX: Markup = element("span", { class: "box", "aria-hidden": "true" });
