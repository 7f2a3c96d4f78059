/** The sheet as a PDF file (ISO 32000-1): text that can be searched and read aloud, drawings as lines at their scale. */
import type { SheetDocument } from "../document";
import { documentFlows } from "./blocks";
import { linesOf } from "./lines";
import { type Page, pagesOf } from "./pages";
import { FOOT, HEAD, MARGIN, PAPERS, type Paper, SMALL } from "./paper";
import { type Fonts, Pen } from "./pen";

export type { Fonts, Paper };

export interface PdfOptions {
  readonly paper: Paper;
  /** TrueType files. */
  readonly fonts: Fonts;
}

/** The bytes of the file: the same for the same document, paper and fonts, wherever and whenever it is written. */
export async function sheetPdf(document: SheetDocument, { paper, fonts }: PdfOptions): Promise<Uint8Array> {
  const [width, height] = PAPERS[paper];
  const pen = new Pen(document.title, document.language, [width, height], fonts);
  const frame = { left: MARGIN, width: width - 2 * MARGIN };
  const room = height - HEAD - MARGIN;
  const pages = pagesOf(documentFlows(document, frame, { pen, words: document.words, room }), room);
  pages.forEach((page, i) => {
    paintPage(pen, page, { ...document, place: document.words.page(i + 1, pages.length) });
  });
  return pen.end();
}

function paintPage(
  pen: Pen,
  page: Page,
  { title, place }: { readonly title: string; readonly place: string },
): void {
  pen.page();
  for (const { slab, top, again } of page) slab.paint(pen, HEAD + top, again);
  pen.content(undefined, () => paintFoot(pen, title, place));
}

/** The sheet's title, as much of it as has room, and which page of how many this is. */
function paintFoot(pen: Pen, title: string, place: string): void {
  const { width, height } = pen.doc.page;
  const { letters } = pen;
  const half = (width - 2 * MARGIN) / 2;
  const baseline = height - FOOT;
  const [number] = linesOf(place, SMALL, half, letters);
  const lines = linesOf(title, SMALL, half - letters.width("…", SMALL), letters);
  let x = MARGIN;
  for (const { text, style, width } of lines[0]?.fragments ?? []) {
    const more = lines.length > 1 ? `${text.trimEnd()}…` : text;
    pen.text(x, baseline, more, style);
    x += width;
  }
  x = width - MARGIN - (number?.width ?? 0);
  for (const fragment of number?.fragments ?? []) {
    pen.text(x, baseline, fragment.text, fragment.style);
    x += fragment.width;
  }
}
