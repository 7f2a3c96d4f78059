/**
 * The sheet's tables as CSV, one file for each: RFC 4180, a row of heads, lines that end with CR LF, numbers in plain
 * decimals, no byte order mark unless asked for. No cell is a formula to a spreadsheet, whatever a plan says.
 */
import { type Cell, type CsvTable, TABLES, tables } from "./csv-tables";
import type { SheetData } from "./data";
import { oneLine } from "./escape";

export { type CsvTable, tables };

export interface CsvOptions {
  /** Begins with a byte order mark: some spreadsheets take a file without one for another alphabet, and show `45Â°`. */
  readonly byteOrderMark?: boolean;
}

/** One table of the sheet. A number that is not known is an empty cell. */
export function sheetCsv(
  data: SheetData,
  table: CsvTable,
  { byteOrderMark = false }: CsvOptions = {},
): string {
  const { heads, rows } = TABLES[table];
  const lines = [heads, ...rows(data)].map((row) => `${row.map(cell).join(",")}\r\n`);
  return `${byteOrderMark ? "\ufeff" : ""}${lines.join("")}`;
}

function cell(value: Cell): string {
  if (value === null) return "";
  const text = typeof value === "number" ? decimal(value) : guarded(oneLine(value));
  return /[",]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * The text with an apostrophe before what a spreadsheet would work out: it opens with = + - or @, perhaps after quotes or
 * blanks, and is no plain number below zero. The same after each semicolon, which some read as the end of a cell.
 * `unguarded` gives the text back.
 */
export function guarded(text: string): string {
  return parts(text, (part) => (isFormula(part) ? `'${part}` : part));
}

/** The text that was guarded. */
export function unguarded(text: string): string {
  return parts(text, (part) => (part.startsWith("'") && isFormula(part.slice(1)) ? part.slice(1) : part));
}

const parts = (text: string, change: (part: string) => string): string =>
  text.split(";").map(change).join(";");

/** The wide letters are read as the narrow ones in some countries; what has no width does not keep a formula from being one. */
const isFormula = (text: string): boolean => FORMULA.test(text) && !BELOW_ZERO.test(text);
const FORMULA = /^["'\s\p{Cf}]*[=+\-@＝＋－＠\t\r]/u;
const BELOW_ZERO = /^\s*-\d+(\.\d+)?\s*$/;

/** All digits of a number and no exponent; nothing for what is none. */
function decimal(value: number): string {
  if (!Number.isFinite(value)) return "";
  const [digits = "", exponent] = String(Math.abs(value)).split("e");
  const sign = value < 0 ? "-" : "";
  if (exponent === undefined) return sign + digits;
  const [whole = "", rest = ""] = digits.split(".");
  const point = whole.length + Number(exponent);
  const all = whole + rest;
  if (point <= 0) return `${sign}0.${"0".repeat(-point)}${all}`;
  return sign + all.padEnd(point, "0");
}
