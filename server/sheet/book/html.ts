/** A book of plans as one HTML file that needs nothing else, each plan on a page of its own where it is printed. */
import { blockHtml } from "../html-blocks";
import { element, htmlFile, type Markup, rawElement } from "../markup";
import { SHEET_STYLE, SHEET_STYLE_HASH } from "../style";
import { drawingSvg } from "../svg";
import type { Book, BookPage } from "./book";

export const bookPage = ({ language, title, under, care, contents, pages, words }: Book): string =>
  htmlFile(
    element(
      "html",
      { lang: language },
      element(
        "head",
        {},
        element("meta", { charset: "utf-8" }),
        element("meta", { "http-equiv": "Content-Security-Policy", content: POLICY }),
        element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
        element("title", {}, title),
        rawElement("style", SHEET_STYLE),
      ),
      element(
        "body",
        { class: "sheet-page" },
        element(
          "main",
          { class: "sheet", lang: language },
          element("header", {}, element("h1", {}, title), element("p", { class: "file" }, under)),
          element("p", {}, care),
          contents ? blockHtml(contents, words) : null,
          pages.map((page) => pageHtml(page, words)),
        ),
      ),
    ),
  );

const POLICY = `default-src 'none'; style-src '${SHEET_STYLE_HASH}'; base-uri 'none'; form-action 'none'`;

const pageHtml = ({ id, title, under, about, drawing, sections }: BookPage, words: Book["words"]): Markup =>
  element(
    "section",
    { class: "plan new-page", id },
    element("h2", {}, title),
    element("p", { class: "file" }, under),
    about === "" ? null : element("p", {}, about),
    drawing ? element("figure", {}, element("div", { class: "paper" }, drawingSvg(drawing.drawing))) : null,
    sections.map(({ heading, blocks }) => [
      element("h3", {}, heading),
      blocks.map((block) => blockHtml(block, words)),
    ]),
  );
