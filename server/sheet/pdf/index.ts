/** The sheet as a PDF file (ISO 32000-1): text that can be searched and read aloud, drawings as lines at their scale. */
import type { SheetDocument } from "../document";
import { documentFlows } from "./blocks";
import type { Letters } from "./letters";
import { type Line, linesOf } from "./lines";
import { type Page, pagesOf } from "./pages";
import { FOOT, GAP, HEAD, MARGIN, PAPERS, type Paper, SMALL } from "./paper";
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
  const { title, words } = document;
  sectionsOn(pages).forEach((sections, i) => {
    paintPage(pen, pages[i]!, { title, sections, place: words.page(i + 1, pages.length) });
  });
  return pen.end();
}

/** The sections that begin on each page, else the one that goes on there. */
function sectionsOn(pages: readonly Page[]): readonly (readonly string[])[] {
  let last: readonly string[] = [];
  return pages.map((page) => {
    const begun = page.flatMap(({ slab: { begins } }) => begins ?? []);
    if (begun.length > 0) last = begun.slice(-1);
    return begun.length > 0 ? begun : last;
  });
}

interface Foot {
  readonly title: string;
  readonly sections: readonly string[];
  /** Which page of how many it is. */
  readonly place: string;
}

function paintPage(pen: Pen, page: Page, foot: Foot): void {
  pen.page();
  for (const { slab, top, again } of page) slab.paint(pen, HEAD + top, again);
  pen.content(undefined, () => paintFoot(pen, foot));
}

/** The sheet's title at the left; at the right the page, and before it what stands there; as much of them as has room. */
function paintFoot(pen: Pen, { title, sections, place }: Foot): void {
  const { width, height } = pen.doc.page;
  const { letters } = pen;
  const half = (width - 2 * MARGIN) / 2;
  const baseline = height - FOOT;
  const paint = (line: Line | undefined, left: number) => {
    let x = left;
    for (const { text, style, width } of line?.fragments ?? []) {
      pen.text(x, baseline, text, style);
      x += width;
    }
  };
  const [number] = linesOf(place, SMALL, half, letters);
  const edge = width - MARGIN - (number?.width ?? 0);
  const told = cutTo(sections.join(", "), edge - MARGIN - half - 2 * GAP, letters);
  paint(cutTo(title, half - GAP, letters), MARGIN);
  paint(told, edge - 2 * GAP - (told?.width ?? 0));
  paint(number, edge);
}

/** One line, with dots at its end where there is more. */
function cutTo(words: string, width: number, letters: Letters): Line | undefined {
  const lines = linesOf(words, SMALL, width - letters.width("…", SMALL), letters);
  const [first] = lines;
  if (!first || lines.length === 1) return first;
  const kept = first.fragments
    .map(({ text }) => text)
    .join("")
    .trimEnd();
  return linesOf(`${kept}…`, SMALL, width, letters)[0];
}
