/** The CSV tables read back, and what of the sheet's data they have to say: for tests. */
import { parse } from "csv-parse/sync";
import { expect } from "vitest";
import { type CsvTable, sheetCsv, tables, unguarded } from "../../server/sheet/csv";
import type { Marked, Place, SheetAmount, SheetData } from "../../server/sheet/data";
import { oneLine } from "../../server/sheet/escape";

export type Row = Readonly<Record<string, string>>;

/** As a strict reader gets it: a row of heads, as many cells in every row, CR LF at every end. */
export function read(data: SheetData, table: CsvTable): Row[] {
  const csv = sheetCsv(data, table);
  expect(csv.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  expect(csv.endsWith("\r\n")).toBe(true);
  return parse(csv, { columns: true, record_delimiter: "\r\n" });
}

/** Every cell of every table. */
export const cellsOf = (data: SheetData): string[] =>
  tables.flatMap((table) => read(data, table).flatMap((row) => Object.values(row)));

/** What opens with one of these, after blanks and quotes, is worked out by one spreadsheet or another. */
export function isNoFormula(cell: string): void {
  for (const part of cell.split(";")) {
    const first = part.replace(/^["\s\u200b\ufeff]+/u, "")[0] ?? "";
    if ("=+@＝＋－＠".includes(first) && first !== "") expect.fail(`${JSON.stringify(cell)} is a formula`);
    if (first === "-") expect(part).toMatch(/^\s*-\d+(\.\d+)?\s*$/);
  }
}

export const text = (cell: string | undefined): string => unguarded(cell ?? "no such column");
const number = (cell: string | undefined): number | null => (cell === "" ? null : Number(cell));
const one = (words: string): string => oneLine(words);
const many = (list: readonly string[]): string => oneLine(list.join("; "));
const marked = (length: Marked | null) => length && [length.mm, one(length.text)];
const told = (amount: SheetAmount | null) => amount && [amount.value, one(amount.text)];
const placed = (place: Place | undefined) =>
  place && [one(place.file), place.line, place.column, place.endLine, place.endColumn];

/** Those fields of the data that a table tells, a list for each row. */
export function asData(data: SheetData, table: CsvTable): unknown {
  switch (table) {
    case "cut-list":
      return data.cutList.flatMap(({ stock, rows }) =>
        rows.map((r) => [
          ...[one(stock), one(r.mark), one(r.part), r.hand, r.count, marked(r.length), one(r.measured)],
          ...[marked(r.shortPoint), marked(r.width), marked(r.thickness), r.ripped, one(r.ends)],
          ...[many(r.notes), many(r.pieces), placed(r.place)],
        ]),
      );
    case "layouts":
      return [
        ...data.boards.flatMap(({ stock, boards, unplaced }) => [
          ...boards.flatMap(({ label, kind, count, length, cuts }, i) =>
            cuts.map((c) => [
              ...[
                one(stock),
                i + 1,
                one(label),
                kind,
                count,
                marked(length),
                null,
                one(c.mark),
                one(c.label),
              ],
              ...[one(c.piece), marked(c.from), marked(c.to), null, null, marked(c.length), null],
            ]),
          ),
          ...unplaced.map((piece) => [one(stock), null, "no wood found", one(piece)]),
        ]),
        ...data.panels.flatMap(({ stock, sheets, unplaced }) => [
          ...sheets.flatMap(({ label, kind, count, length, width, cuts }, i) =>
            cuts.map((c) => [
              ...[one(stock), i + 1, one(label), kind, count, marked(length), marked(width), one(c.mark)],
              ...[one(c.label), one(c.piece), [c.x, ""], [sum(c.x, c.length.mm), ""]],
              ...[c.y, sum(c.y, c.width.mm)],
              ...[marked(c.length), marked(c.width)],
            ]),
          ),
          ...unplaced.map((piece) => [one(stock), null, "no wood found", one(piece)]),
        ]),
      ];
    case "shopping":
      return data.shopping.rows.map((r) => [
        one(r.aisle),
        one(r.what),
        r.count,
        one(r.unit),
        one(r.each ?? ""),
        one(r.total ?? ""),
        one(r.note),
      ]);
    case "fasteners":
      return data.fasteners.map((r) => [one(r.what), r.count, one(r.holes), many(r.joints)]);
    case "pieces":
      return data.pieces.map((p) => [
        one(p.id),
        one(p.part),
        one(p.mark),
        many(p.assemblies),
        p.from,
        p.to,
        placed(p.place),
      ]);
    case "holds":
      return data.holds.map((h) => [
        ...[h.kind, one(h.what), told(h.load), told(h.limit), one((h.load ?? h.limit)?.unit ?? ""), h.uses],
        ...[one(h.state), placed(h.place ?? undefined)],
      ]);
    case "problems":
      return [...data.problems, ...data.accepted].map((p) => [
        ...[one(p.code), p.class, one(p.message), p.accepted === undefined, one(p.accepted ?? "")],
        ...[many(p.cures), many(p.assumed), placed(p.place)],
      ]);
    case "not-checked":
      return data.notChecked.map((n) => [one(n.what), one(n.why), placed(n.place)]);
  }
}

/** The same, read from the table. */
export function readBack(data: SheetData, table: CsvTable): unknown {
  return read(data, table).map(BACK[table]);
}

const length = (r: Row, head: string) =>
  r[`${head} mm`] === "" ? null : [number(r[`${head} mm`]), text(r[head])];
const amount = (r: Row, head: string) =>
  r[`${head} value`] === "" ? null : [number(r[`${head} value`]), text(r[head])];
const place = (r: Row) =>
  r.line === ""
    ? undefined
    : [text(r.file), number(r.line), number(r.column), number(r["end line"]), number(r["end column"])];

const BACK: Readonly<Record<CsvTable, (r: Row) => unknown>> = {
  "cut-list": (r) => [
    ...[text(r.stock), text(r.mark), text(r.part), text(r.hand), number(r.count), length(r, "length")],
    ...[text(r.measured), length(r, "short point"), length(r, "width"), length(r, "thickness")],
    ...[r.ripped === "yes", text(r.ends), text(r.notes), text(r.pieces), place(r)],
  ],
  layouts: (r) =>
    r.board === ""
      ? [text(r.stock), null, text(r.label), text(r.piece)]
      : [
          ...[text(r.stock), number(r.board), text(r.label), text(r.kind), number(r.alike)],
          ...[length(r, "board length"), length(r, "board width"), text(r.mark), text(r.part), text(r.piece)],
          ...[length(r, "from"), length(r, "to"), number(r["up from mm"]), number(r["up to mm"])],
          ...[length(r, "cut length"), length(r, "cut width")],
        ],
  shopping: (r) => [
    ...[
      text(r.aisle),
      text(r.what),
      number(r.count),
      text(r.unit),
      text(r.each),
      text(r.total),
      text(r.note),
    ],
  ],
  fasteners: (r) => [text(r.what), number(r.count), text(r.holes), text(r.joints)],
  pieces: (r) => [
    ...[text(r.piece), text(r.part), text(r.mark), text(r.assemblies)],
    [number(r["from left mm"]), number(r["from front mm"]), number(r["from floor mm"])],
    [number(r["to right mm"]), number(r["to back mm"]), number(r["to top mm"])],
    place(r),
  ],
  holds: (r) => [
    ...[text(r.kind), text(r.what), amount(r, "load"), amount(r, "limit"), text(r.unit), number(r.uses)],
    ...[text(r.state), place(r)],
  ],
  problems: (r) => [
    ...[text(r.code), text(r.class), text(r.message), r.state === "open", text(r["accepted because"])],
    ...[text(r.cures), text(r.assumed), place(r)],
  ],
  "not-checked": (r) => [text(r.what), text(r.why), place(r)],
};

/** To a millionth of a mm, as no more of a sum of doubles is told. */
const sum = (a: number, b: number): number => Number((a + b).toFixed(6));
