/**
 * The shop sheet as HTML: a fragment for a preview, and a file of its own that needs nothing else. No scripts, no inline
 * styles, no addresses; what the file may load is nothing, what may style it is `SHEET_STYLE` alone, by its hash.
 */
import type { SheetData } from "./data";
import type { SheetDrawing } from "./drawings";
import { cutSections } from "./html-cuts";
import { drawingSection } from "./html-drawing";
import { section, terms } from "./html-parts";
import { problemSections } from "./html-problems";
import { cautionSection, workSections } from "./html-work";
import { element, htmlFile, type Markup, markupText } from "./markup";
import { SHEET_STYLE, SHEET_STYLE_HASH } from "./style";
import { HEADINGS, unitWords } from "./wording";

export { SHEET_STYLE, SHEET_STYLE_HASH };

/** The sheet as one `main` element, to be styled by `SHEET_STYLE`. */
export function sheetBody(data: SheetData, drawings: readonly SheetDrawing[] = []): string {
  return markupText(body(data, drawings));
}

/** The sheet as a whole file, to be read offline, printed and sent on. */
export function sheetPage(data: SheetData, drawings: readonly SheetDrawing[] = []): string {
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
      element("body", { class: "sheet-page" }, body(data, drawings)),
    ),
  );
}

const POLICY = `default-src 'none'; style-src '${SHEET_STYLE_HASH}'; base-uri 'none'; form-action 'none'`;

function body(data: SheetData, drawings: readonly SheetDrawing[]): Markup {
  const { title, file, facts, units } = data;
  const drawn = drawings.length > 0;
  return element(
    "main",
    { class: "sheet", lang: "en" },
    element(
      "header",
      {},
      element("h1", {}, title),
      element("p", { class: "file" }, `${file}, ${unitWords(units)}`),
      drawn ? null : terms("facts", facts),
    ),
    drawingSection(data, drawings),
    drawn && facts.length > 0 ? section("about", HEADINGS.about, terms("facts", facts)) : null,
    problemSections(data),
    cautionSection(data),
    cutSections(data),
    workSections(data),
  );
}
