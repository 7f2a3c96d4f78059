/** What writes on the pages: the one file that knows the library. Places are points from a page's upper left corner. */
import PDFDocument from "pdfkit";
import { cleanText } from "../escape";
import { aboutXml, bytesOf } from "./file";
import { type Face, Letters, trimmed } from "./letters";
import { BOX, BOX_LINE, CONDENSED, type Style } from "./paper";

export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** An element of the structure that tells a screen reader what stands on the pages. */
export interface Tag {
  readonly type: string;
  readonly element: PDFKit.PDFStructureElement;
}

export interface TagOptions {
  /** Said in place of what is drawn. */
  readonly alt?: string;
  /** The columns it goes over, and what it is the head of. */
  readonly span?: number;
  readonly scope?: "Column" | "Row";
}

export class Pen {
  readonly doc: PDFKit.PDFDocument;
  readonly letters: Letters;
  readonly #bytes: Promise<Uint8Array>;
  readonly #root: Tag;

  /** Fonts are TrueType files. */
  constructor(title: string, language: string, [width, height]: readonly [number, number], fonts: Fonts) {
    const words = shortened(title, LONGEST_TITLE);
    this.doc = new PDFDocument({
      pdfVersion: "1.7",
      size: [width, height],
      margin: 0,
      autoFirstPage: false,
      font: NO_FONT,
      tagged: true,
      lang: shortened(language, LONGEST_TAG),
      displayTitle: true,
      info: { Title: words, Producer: "Sawbuck", Creator: "Sawbuck", CreationDate: new Date(0) },
    });
    // The same sheet gives the same bytes: it has no date. The library would write the title into XML as it is.
    delete this.doc.info.CreationDate;
    inside(this.doc)._addInfo = () => this.doc.appendXML(aboutXml(words));
    this.#bytes = bytesOf(this.doc);
    this.doc
      .registerFont(REGULAR, fonts.regular as unknown as string)
      .registerFont(BOLD, fonts.bold as unknown as string);
    this.letters = new Letters(this.#face(REGULAR), this.#face(BOLD));
    this.#root = { type: "Document", element: this.doc.struct("Document") };
    this.doc.addStructure(this.#root.element);
  }

  /** An element inside another, after those it has. */
  tag(type: string, parent: Tag = this.#root, { alt, span, scope }: TagOptions = {}): Tag {
    const element = this.doc.struct(type, alt === undefined ? {} : { alt: cleanText(alt) });
    if (span !== undefined || scope !== undefined)
      inside(element).dictionary.data.A = { O: "Table", ColSpan: span, Scope: scope };
    parent.element.add(element);
    return { type, element };
  }

  /** What is drawn is the content of an element; of none, it is there for the eye alone. */
  content(tag: Tag | undefined, draw: () => void): void {
    if (tag) {
      const content = this.doc.markStructureContent(tag.type);
      draw();
      this.doc.endMarkedContent();
      tag.element.add(content);
    } else {
      this.doc.markContent("Artifact", { type: "Layout" });
      draw();
      this.doc.endMarkedContent();
    }
  }

  page(): void {
    this.doc.addPage();
  }

  /** Where a figure stands on this page. */
  bounds(tag: Tag, left: number, top: number, width: number, height: number): void {
    const foot = this.doc.page.height - top - height;
    const box = [left, foot, left + width, foot + height];
    inside(tag.element).dictionary.data.A = { O: "Layout", Placement: "Block", BBox: box };
  }

  /** A line of type from x on; letters that the font does not have are still what a reader is told. */
  text(x: number, baseline: number, text: string, { size, bold }: Style, stretch = CONDENSED): void {
    const shown = this.letters.shown(text, bold);
    if (shown !== text) this.doc.markContent("Span", { actual: text });
    this.doc.save().translate(x, baseline).scale(stretch, 1);
    this.doc.font(bold ? BOLD : REGULAR).fontSize(size);
    this.doc.text(shown, 0, 0, { lineBreak: false, baseline: "alphabetic" });
    this.doc.restore();
    if (shown !== text) this.doc.endMarkedContent();
  }

  /** The outlines of the same letters, to be stroked or filled, with the beginning of their baseline at the origin. */
  outlines(text: string, { size, bold }: Style): readonly Outline[] {
    const { font } = inside(this.doc.font(bold ? BOLD : REGULAR))._font;
    const { glyphs, positions } = font.layout(this.letters.shown(text, bold));
    const scale = size / font.unitsPerEm;
    let x = 0;
    return glyphs.map(({ path }, i) => {
      const { xAdvance, xOffset, yOffset } = positions[i]!;
      const left = x + xOffset;
      x += xAdvance;
      return path.commands.map(({ command, args }) => ({
        command,
        args: args.map((value, n) => (n % 2 === 0 ? (value + left) * scale : -(value + yOffset) * scale)),
      }));
    });
  }

  rule(left: number, y: number, right: number, weight: number, colour = "#000000"): void {
    this.doc.save().lineWidth(weight).moveTo(left, y).lineTo(right, y).stroke(colour).restore();
  }

  upright(x: number, top: number, bottom: number, weight: number): void {
    this.doc.save().lineWidth(weight).moveTo(x, top).lineTo(x, bottom).stroke("#000000").restore();
  }

  frame(left: number, top: number, width: number, height: number, weight: number): void {
    this.doc.save().lineWidth(weight).rect(left, top, width, height).stroke("#000000").restore();
  }

  /** A square to tick. */
  box(left: number, top: number): void {
    this.frame(left + BOX_LINE / 2, top + BOX_LINE / 2, BOX - BOX_LINE, BOX - BOX_LINE, BOX_LINE);
  }

  /** A line of the list of contents that leads to a place on this page. */
  bookmark(title: string, top: number): void {
    const words = shortened(title, LONGEST_TITLE);
    // The library counts `left` from the right edge.
    const place = { top, left: this.doc.page.width } as object;
    this.doc.outline.addItem(words, place);
  }

  /** The file. Nothing can be written after it. */
  end(): Promise<Uint8Array> {
    this.doc.end();
    return this.#bytes;
  }

  #face(name: string): Face {
    const { _font } = inside(this.doc.font(name));
    return {
      has: (codePoint) => _font.font.hasGlyphForCodePoint(codePoint),
      width: (text, size) => _font.widthOfString(text, size),
    };
  }
}

/** One letter's outline: moveTo, lineTo, quadraticCurveTo, bezierCurveTo and closePath with their points. */
export type Outline = readonly { readonly command: string; readonly args: readonly number[] }[];

const [REGULAR, BOLD] = ["regular", "bold"];
/** The library opens a font of its own unless it is told that there is none. */
const NO_FONT = null as unknown as string;
const LONGEST_TITLE = 200;
const LONGEST_TAG = 35;
/** Whole characters of it, at most so many. */
const shortened = (text: string, most: number): string =>
  [...trimmed(text.slice(0, 4 * most))].slice(0, most).join("");

/** What the library's types do not tell of its fonts, elements and metadata. */
interface Inside {
  _font: {
    widthOfString(text: string, size: number): number;
    font: {
      readonly unitsPerEm: number;
      hasGlyphForCodePoint(codePoint: number): boolean;
      layout(text: string): {
        readonly glyphs: readonly { readonly path: { readonly commands: Outline } }[];
        readonly positions: readonly { xAdvance: number; xOffset: number; yOffset: number }[];
      };
    };
  };
  dictionary: { data: Record<string, unknown> };
  _addInfo(): void;
}

const inside = (of: object): Inside => of as Inside;
