/** PDF files as a reader sees them: words in order, structure, bookmarks, pictures of the pages. */
import { readFileSync } from "node:fs";
import { createCanvas } from "@napi-rs/canvas";
import { getDocument, type PDFDocumentProxy } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Fonts } from "../../server/sheet/pdf";

const FOLDER = "node_modules/dejavu-fonts-ttf/ttf";
const font = (name: string): Uint8Array => new Uint8Array(readFileSync(`${FOLDER}/${name}.ttf`));

export const FONTS: Fonts = { regular: font("DejaVuSans"), bold: font("DejaVuSans-Bold") };

export const open = (bytes: Uint8Array): Promise<PDFDocumentProxy> =>
  getDocument({ data: bytes.slice(), verbosity: 0, isEvalSupported: false }).promise;

export interface Said {
  readonly text: string;
  /** Points from the lower left corner of the page, where its baseline begins. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** What it is for a screen reader: `TD`. */
  readonly role: string | undefined;
  /** Read by a screen reader; else it is there for the eye alone. */
  readonly tagged: boolean;
}

/** The texts of each page in the order they are written. */
export async function textsOf(bytes: Uint8Array): Promise<readonly (readonly Said[])[]> {
  const pdf = await open(bytes);
  const pages: Said[][] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const said: Said[] = [];
    const marks: (string | undefined)[] = [];
    for (const item of items) {
      if ("str" in item) {
        const role = marks.find((mark) => mark !== undefined);
        const [, , , , x, y] = item.transform;
        if (item.str !== "")
          said.push({ text: item.str, x, y, width: item.width, role, tagged: role !== undefined });
      } else if (item.type === "endMarkedContent") marks.pop();
      else marks.push(item.id ? (item as { tag?: string }).tag : undefined);
    }
    pages.push(said);
  }
  await pdf.destroy();
  return pages;
}

/** Every page as a PNG, so many dots to a point. */
export async function picturesOf(bytes: Uint8Array, dots = 1.6): Promise<readonly Buffer[]> {
  const pdf = await open(bytes);
  const pictures: Buffer[] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const viewport = page.getViewport({ scale: dots });
    const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
    const canvasContext = canvas.getContext("2d") as unknown as CanvasRenderingContext2D;
    await page.render({ canvas: null, canvasContext, viewport, background: "#ffffff" }).promise;
    pictures.push(canvas.toBuffer("image/png"));
  }
  await pdf.destroy();
  return pictures;
}
