/** What tests of the PDF share: small sheets, what stands on their pages, and where. */
import { expect } from "vitest";
import type { Block, Cell, Column, SheetDocument, Table } from "../../server/sheet/document";
import { type Paper, sheetPdf } from "../../server/sheet/pdf";
import { made } from "./made-document";
import { FONTS, type Said } from "./read-pdf";

export const PAPERS: readonly Paper[] = ["Letter", "A4"];
export const SIZES = { Letter: [612, 792], A4: [595.28, 841.89] } as const;
export const MM = 72 / 25.4;
export const MARGIN = 15 * MM;

export const pdf = (document: SheetDocument, paper: Paper = "Letter") =>
  sheetPdf(document, { paper, fonts: FONTS });
export const raw = (bytes: Uint8Array): string => Buffer.from(bytes).toString("latin1");
export const letters = (texts: readonly string[]): string => texts.join("").replace(/\s/g, "");
export const tagged = (pages: readonly (readonly Said[])[]): Said[] =>
  pages.flat().filter((said) => said.tagged);

export const sheet = (blocks: readonly Block[], title = "Sheet"): SheetDocument => ({
  ...made,
  title,
  sections: [{ name: "one", heading: "One", blocks }],
});
/** A table of one group. */
export const table = (
  name: string,
  columns: readonly Column[],
  rows: readonly (readonly Cell[])[],
  { title = "", sums = [] }: { readonly title?: string; readonly sums?: Table["sums"] } = {},
): Table => ({
  kind: "table",
  name,
  columns,
  groups: [{ title, source: "", rows: rows.map((cells) => ({ cells })) }],
  sums,
});

export const paragraph = (words: string): Block => ({ kind: "paragraph", style: "plain", words });

/** All that is said on a page, but for blanks between two texts, stands between its margins. Drawings cut off what is wider. */
export function expectInside(page: readonly Said[], paper: Paper): void {
  const [width, height] = SIZES[paper];
  for (const { text, x, y, width: wide, role } of page) {
    if (text.trim() === "" || role === "Figure") continue;
    expect(x, text).toBeGreaterThan(MARGIN - 1);
    expect(x + wide, text).toBeLessThan(width - MARGIN + 1);
    expect(y, text).toBeGreaterThan(role ? MARGIN - 1 : 20);
    expect(y, text).toBeLessThan(height - MARGIN);
  }
}

/** Texts by the height at which they stand. */
export function linesOn(page: readonly Said[]): string[] {
  const lines = new Map<number, string>();
  for (const { text, y } of page) lines.set(y, (lines.get(y) ?? "") + text);
  return [...lines.values()];
}
