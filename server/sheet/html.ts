/**
 * The shop sheet as HTML: a fragment for a preview, and a file of its own that needs nothing else. No inline styles, no
 * addresses; what the file may load is nothing, what may style it is `SHEET_STYLE` alone, and what may run in it is
 * `PAGE_SCRIPT` alone, each by its hash.
 */
import type { SheetDocument } from "./document";
import { blockHtml } from "./html-blocks";
import { element, htmlFile, type Markup, markupText, rawElement } from "./markup";
import { PAGE_SCRIPT, PAGE_SCRIPT_HASH } from "./page/script";
import { SHEET_STYLE, SHEET_STYLE_HASH } from "./style";

export { SHEET_STYLE, SHEET_STYLE_HASH };

/** The sheet as one `main` element, to be styled by `SHEET_STYLE`. */
export const sheetBody = (document: SheetDocument): string => markupText(body(document));

/** The sheet as a whole file, to be read offline, ticked off, printed and sent on. */
export function sheetPage(document: SheetDocument): string {
  return htmlFile(
    element(
      "html",
      { lang: document.language },
      element(
        "head",
        {},
        element("meta", { charset: "utf-8" }),
        element("meta", { "http-equiv": "Content-Security-Policy", content: POLICY }),
        element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
        element("title", {}, document.title),
        rawElement("style", SHEET_STYLE),
      ),
      element("body", { class: "sheet-page" }, body(document), rawElement("script", PAGE_SCRIPT)),
    ),
  );
}

const POLICY = `default-src 'none'; style-src '${SHEET_STYLE_HASH}'; script-src '${PAGE_SCRIPT_HASH}'; base-uri 'none'; form-action 'none'`;

function body({ language, title, plan, under, sections, words }: SheetDocument): Markup {
  return element(
    "main",
    { class: "sheet", lang: language, "data-plan": plan },
    element("header", {}, element("h1", {}, title), element("p", { class: "file" }, under)),
    sections.map(({ name, heading, blocks, newPage }) =>
      element(
        "section",
        { class: newPage ? `${name} new-page` : name },
        element("h2", {}, heading),
        blocks.map((block) => blockHtml(block, words)),
      ),
    ),
  );
}
