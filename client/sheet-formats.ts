/** The formats a shop sheet can be saved in, and what its file is called. */
import { l10n } from "vscode";

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
const tables = (): readonly (readonly [table: string, label: string])[] => [
  ["cut-list", l10n.t("CSV: cut list")],
  ["layouts", l10n.t("CSV: layouts")],
  ["shopping", l10n.t("CSV: buying trip")],
  ["fasteners", l10n.t("CSV: fasteners")],
  ["pieces", l10n.t("CSV: pieces")],
  ["holds", l10n.t("CSV: what it carries")],
  ["problems", l10n.t("CSV: problems")],
  ["not-checked", l10n.t("CSV: not looked at")],
];

/** One line each; in the order in which they are offered. */
export const sheetFormats = (): readonly SheetFormat[] => [
  {
    format: "html",
    label: l10n.t("Page"),
    detail: l10n.t("to read offline, tick off and print"),
    ending: "html",
    outside: true,
  },
  {
    format: "pdf Letter",
    label: l10n.t("PDF on Letter"),
    detail: l10n.t("to print, drawings to scale"),
    ending: "pdf",
    outside: true,
  },
  {
    format: "pdf A4",
    label: l10n.t("PDF on A4"),
    detail: l10n.t("to print, drawings to scale"),
    ending: "pdf",
    outside: true,
  },
  { format: "markdown", label: "Markdown", detail: l10n.t("to put among other notes"), ending: "md" },
  {
    format: "text",
    label: l10n.t("Plain text"),
    detail: l10n.t("for a terminal or a message"),
    ending: "txt",
  },
  { format: "json", label: "JSON", detail: l10n.t("for other programs"), ending: "json" },
  ...tables().map(
    ([table, label]): SheetFormat => ({
      format: `csv ${table}`,
      label,
      detail: l10n.t("for a spreadsheet"),
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
