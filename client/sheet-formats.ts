/** The formats a shop sheet can be saved in, and what its file is called. */

export interface SheetFormat {
  /** What the server knows it by. */
  readonly format: string;
  readonly label: string;
  readonly detail: string;
  /** Of the file's name, without its dot. */
  readonly ending: string;
  /** The table it holds, where it is not the whole sheet. */
  readonly of?: string;
  /** Read in another program than the editor, where there is one. */
  readonly outside?: true;
}

/** The tables of a sheet, and what they are called. */
const TABLES = [
  ["cut-list", "cut list"],
  ["layouts", "layouts"],
  ["shopping", "buying trip"],
  ["fasteners", "fasteners"],
  ["pieces", "pieces"],
  ["holds", "what it carries"],
  ["problems", "problems"],
  ["not-checked", "not looked at"],
] as const;

/** One line each; in the order in which they are offered. */
export const SHEET_FORMATS: readonly SheetFormat[] = [
  {
    format: "html",
    label: "Page",
    detail: "to read offline, tick off and print",
    ending: "html",
    outside: true,
  },
  {
    format: "pdf Letter",
    label: "PDF on Letter",
    detail: "to print, drawings to scale",
    ending: "pdf",
    outside: true,
  },
  {
    format: "pdf A4",
    label: "PDF on A4",
    detail: "to print, drawings to scale",
    ending: "pdf",
    outside: true,
  },
  { format: "markdown", label: "Markdown", detail: "to put among other notes", ending: "md" },
  { format: "text", label: "Plain text", detail: "for a terminal or a message", ending: "txt" },
  { format: "json", label: "JSON", detail: "for other programs", ending: "json" },
  ...TABLES.map(
    ([table, label]): SheetFormat => ({
      format: `csv ${table}`,
      label: `CSV: ${label}`,
      detail: "for a spreadsheet",
      ending: "csv",
      of: table,
    }),
  ),
];

/** `salad-trough-sheet.html` for the plan `salad-trough.sawbuck`; a text that is not a plan's file gives `shop-sheet.html`. */
export function sheetFileName(planFile: string, { ending, of = "sheet" }: SheetFormat): string {
  const name = /^(.+)\.sawbuck$/i.exec(planFile)?.[1];
  return name === undefined ? `shop-${of}.${ending}` : `${name}-${of}.${ending}`;
}

/** Whether a file of that name holds a plan, which no sheet is written over. */
export const isPlan = (path: string): boolean => /\.sawbuck$/i.test(path);
