/**
 * The sheet as a PDF file, with the fonts read from disk. The library behind it is large, so this is a program of its
 * own, `dist/pdf.js`: `pdf-part.ts` loads it when a PDF is asked for, and never before.
 */
import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { SheetDocument } from "../sheet/document";
import { type Fonts, type Paper, sheetPdf } from "../sheet/pdf";

export type { Paper };

/** The bytes of the file. Throws, with the system's error, only where the fonts that come with the program are gone. */
export async function writePdf(document: SheetDocument, paper: Paper): Promise<Uint8Array> {
  return sheetPdf(document, { paper, fonts: await readFonts() });
}

/** Beside the bundle, or in the package they come from. */
async function readFonts(): Promise<Fonts> {
  const beside = join(__dirname, "fonts");
  const folder = existsSync(beside) ? beside : join(__dirname, "../../node_modules/dejavu-fonts-ttf/ttf");
  const [regular, bold] = await Promise.all(
    ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"].map((name) => readFile(join(folder, name))),
  );
  return { regular: regular!, bold: bold! };
}
