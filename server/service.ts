/**
 * The one door: everything outside (language server, command line) comes in here. Text goes in, with a reader for the
 * files it names; the worked-out plan with its problems comes out, the same for the same text whatever came before.
 */
import { CHECKS, type Judged, judge } from "./checks";
import { type LoadOptions, load, type Reader } from "./plan";
import type { SheetData } from "./sheet/data";
import { gather } from "./sheet/gather";
import { sheetPage } from "./sheet/html";
import { sheetJson } from "./sheet/json";
import { sheetText } from "./sheet/text";
import { type Worked, work } from "./worked";

export interface Evaluated extends Judged {
  readonly file: string;
  readonly text: string;
  readonly worked: Worked;
}

/** Reads, works out and checks one plan. Never throws on any text. */
export function evaluate(file: string, text: string, read: Reader, options: LoadOptions = {}): Evaluated {
  const worked = work(load(file, text, read, options));
  return { file, text, worked, ...judge(worked) };
}

/** The shop sheet of an evaluated plan, as plain data. `named` tells how files are named on it; unsaid, as they were read. */
export const sheetOf = (e: Evaluated, named = (file: string): string => file): SheetData =>
  gather(e.worked, e, named);

/** A sheet in one of its formats. */
export function writeSheet(sheet: SheetData, format: "html" | "json" | "text"): string {
  if (format === "html") return sheetPage(sheet);
  return format === "json" ? sheetJson(sheet) : sheetText(sheet);
}

/** The page of every problem: code, headline and Markdown. */
export const problemPages = (): { code: string; title: string; class: string; markdown: string }[] =>
  CHECKS.map(({ code, title, class: kind, page }) => ({
    code,
    title,
    class: kind,
    markdown: `# ${title}\n\n\`${code}\` (${kind})\n\n${page}\n`,
  }));
