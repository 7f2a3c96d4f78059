/** The shop sheet as the content of a file, in each format that an editor can save it in. */
import { type SheetOptions, sheetDocument, writeSheet, writeTable } from "../service";
import { tables } from "../sheet/csv";
import type { SheetData } from "../sheet/data";
import type { Paper } from "../sheet/pdf";
import { pdfOf } from "./pdf-part";

/** Text or bytes; in words why there is neither. */
type Written = string | Uint8Array | { readonly refused: string };

interface Format {
  /** Whether it shows drawings, which take the longest. */
  readonly draws: boolean;
  readonly write: (sheet: SheetData, options: SheetOptions) => Written | Promise<Written>;
}

const pdfOn = (paper: Paper): Format => ({
  draws: true,
  write: (sheet, options) => pdfOf(sheetDocument(sheet, options), paper),
});

/** By the names that the editor knows them by: one line each, and one for each table. */
const FORMATS: ReadonlyMap<string, Format> = new Map<string, Format>([
  ["html", { draws: true, write: (sheet, options) => writeSheet(sheet, "html", options) }],
  ["markdown", { draws: false, write: (sheet, options) => writeSheet(sheet, "markdown", options) }],
  ["text", { draws: false, write: (sheet, options) => writeSheet(sheet, "text", options) }],
  ["json", { draws: false, write: (sheet, options) => writeSheet(sheet, "json", options) }],
  ["pdf Letter", pdfOn("Letter")],
  ["pdf A4", pdfOn("A4")],
  ...tables.map((table): [string, Format] => [
    `csv ${table}`,
    { draws: false, write: (sheet) => writeTable(sheet, table) },
  ]),
]);

/** Undefined for a format that is not known. */
export const sheetFormat = (name: string): Format | undefined => FORMATS.get(name);

/** What is sent to the editor: text as it is, bytes in base 64. */
export type FileContent =
  | { readonly text: string }
  | { readonly base64: string }
  | { readonly refused: string };

export function contentOf(written: Written): FileContent {
  if (typeof written === "string") return { text: written };
  return written instanceof Uint8Array ? { base64: base64Of(written) } : written;
}

function base64Of(bytes: Uint8Array): string {
  let letters = "";
  // A call takes only so many arguments.
  for (let at = 0; at < bytes.length; at += CHUNK)
    letters += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return btoa(letters);
}
const CHUNK = 0x2000;
