/**
 * The shop sheet as HTML: a fragment for a preview, and a file of its own that needs nothing else. No inline styles, no
 * addresses; what the file may load is nothing, what may style it is `SHEET_STYLE` alone, and what may run in it is
 * `PAGE_SCRIPT` alone, each by its hash.
 */
import type { Section, SheetDocument, WriterWords } from "./document";
import { blockHtml } from "./html-blocks";
import { element, htmlFile, type Markup, markupText, rawElement } from "./markup";
import { PAGE_SCRIPT, PAGE_SCRIPT_HASH } from "./page/script";
import { SHEET_STYLE, SHEET_STYLE_HASH } from "./style";

export { SHEET_STYLE, SHEET_STYLE_HASH };

/** The sheet as one `main` element, to be styled by `SHEET_STYLE`. */
export const sheetBody = (document: SheetDocument): string => markupText(body(document));

/** The sheet in its sections, for a page that changes only those that differ: the first is its head. */
export interface SheetParts {
  readonly language: string;
  readonly parts: readonly SheetPart[];
}

export interface SheetPart {
  /** Unique in its sheet, the same for the same section of the plan after a change. */
  readonly name: string;
  /** One element. */
  readonly html: string;
}

export function sheetParts(document: SheetDocument): SheetParts {
  const { language, sections, words } = document;
  const seen = new Map<string, number>();
  const named = (name: string): string => {
    const nth = (seen.get(name) ?? 0) + 1;
    seen.set(name, nth);
    return nth === 1 ? name : `${name} ${nth}`;
  };
  return {
    language,
    parts: [
      { name: named("head"), html: markupText(headHtml(document)) },
      ...sections.map((own) => ({
        name: named(own.name),
        html: markupText(sectionHtml(own, words)),
      })),
    ],
  };
}

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

function body(document: SheetDocument): Markup {
  const { language, plan, sections, words } = document;
  return element(
    "main",
    { class: "sheet", lang: language, "data-plan": plan },
    headHtml(document),
    sections.map((own) => sectionHtml(own, words)),
  );
}

const headHtml = ({ title, under }: SheetDocument): Markup =>
  element("header", {}, element("h1", {}, title), element("p", { class: "file" }, under));

const sectionHtml = ({ name, heading, blocks, newPage, onePage }: Section, words: WriterWords): Markup =>
  element(
    "section",
    { class: [name, newPage && "new-page", onePage && "one-page"].filter(Boolean).join(" ") },
    element("h2", {}, heading),
    blocks.map((block) => blockHtml(block, words)),
  );
