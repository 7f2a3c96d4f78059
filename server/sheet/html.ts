/**
 * The shop sheet as HTML: a fragment for a preview, and a file of its own that needs nothing else. No scripts, no inline
 * styles, no addresses; what the file may load is nothing, what may style it is `SHEET_STYLE` alone, by its hash.
 */
import type { SheetData } from "./data";
import { cutSections } from "./html-cuts";
import { terms } from "./html-parts";
import { problemSections } from "./html-problems";
import { cautionSection, workSections } from "./html-work";
import { element, htmlFile, type Markup, markupText } from "./markup";
import { SHEET_STYLE, SHEET_STYLE_HASH } from "./style";
import { unitWords } from "./wording";

export { SHEET_STYLE, SHEET_STYLE_HASH };

/** The sheet as one `main` element, to be styled by `SHEET_STYLE`. */
export function sheetBody(data: SheetData): string {
  return markupText(body(data));
}

/** The sheet as a whole file, to be read offline, printed and sent on. */
export function sheetPage(data: SheetData): string {
  return htmlFile(
    element(
      "html",
      { lang: "en" },
      element(
        "head",
        {},
        element("meta", { charset: "utf-8" }),
        element("meta", { "http-equiv": "Content-Security-Policy", content: POLICY }),
        element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
        element("title", {}, data.title),
        element("style", {}, SHEET_STYLE),
      ),
      element("body", { class: "sheet-page" }, body(data)),
    ),
  );
}

const POLICY = `default-src 'none'; style-src '${SHEET_STYLE_HASH}'; base-uri 'none'; form-action 'none'`;

function body(data: SheetData): Markup {
  const { title, file, facts, units } = data;
  return element(
    "main",
    { class: "sheet", lang: "en" },
    element(
      "header",
      {},
      element("h1", {}, title),
      element("p", { class: "file" }, `${file}, ${unitWords(units)}`),
      terms("facts", facts),
    ),
    problemSections(data),
    cautionSection(data),
    cutSections(data),
    workSections(data),
  );
}
