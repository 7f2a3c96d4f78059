/** The shop sheet as plain text for a terminal: pictures made of letters, no colour codes. */
import type { Block, Group, Item, List, SheetDocument, Terms, WriterWords } from "./document";
import { oneLine } from "./escape";
import { aligned, columnsOf, hanging, padded, wrapped } from "./text-layout";
import { inText, tableLines } from "./text-table";

/** The whole sheet, lines of at most `width` columns (at least 40), a newline at the end. */
export function sheetText({ title, under, sections, words }: SheetDocument, width = 80): string {
  const w = Math.max(40, Math.floor(width));
  const titles = wrapped(title, w);
  const parts = [
    [...titles, "=".repeat(Math.max(...titles.map(columnsOf))), ...wrapped(under, w)],
    ...sections.map(({ heading, blocks }) => {
      const heads = wrapped(heading, w);
      return [...heads, "-".repeat(Math.max(...heads.map(columnsOf))), ...blocksLines(blocks, w, words)];
    }),
  ];
  return `${parts.map((lines) => lines.join("\n")).join("\n\n\n")}\n`;
}

/** Tables, figures and groups stand apart by a line; what reads on does not. */
function blocksLines(blocks: readonly Block[], width: number, words: WriterWords): readonly string[] {
  const made = blocks.map((block) => ({ block, lines: blockLines(block, width, words) }));
  return made
    .filter(({ lines }) => lines.length > 0)
    .flatMap(({ block, lines }, i) => (i > 0 && APART.has(block.kind) ? ["", ...lines] : lines));
}
const APART: ReadonlySet<Block["kind"]> = new Set(["table", "figure", "group"]);

function blockLines(block: Block, width: number, words: WriterWords): readonly string[] {
  switch (block.kind) {
    case "paragraph":
      return block.style === "source"
        ? hanging("  ", inText(block.letters ?? block.words), width)
        : wrapped(inText(block.letters ?? block.words), width);
    case "terms":
      return termLines(block, width);
    case "list":
      return listLines(block, width);
    case "table":
      return tableLines(block, width, words);
    case "figure": {
      const lines = block.letters?.(width) ?? [];
      return lines.length === 0 || block.caption === ""
        ? lines
        : [...wrapped(block.caption, width), ...lines];
    }
    case "group":
      return [...headLines(block, width), ...blocksLines(block.blocks, width, words)];
    case "figures":
      return block.figures.flatMap((figure) => blockLines(figure, width, words));
    case "progress":
      return [];
  }
}

const headLines = ({ ticks = [], heading }: Group, width: number): readonly string[] =>
  ticks.length === 0 ? wrapped(heading, width) : hanging("[ ] ", heading, width);

function termLines({ rows }: Terms, width: number): readonly string[] {
  const label = Math.min(30, Math.max(0, ...rows.map((row) => columnsOf(oneLine(row.label)))));
  return rows.flatMap((row) => hanging(`  ${padded(oneLine(row.label), label)}  `, inText(row.words), width));
}

function listLines({ style, items }: List, width: number): readonly string[] {
  if (style === "marks")
    return aligned(
      items.map(({ lead = "", words }) => ({ cells: [lead, inText(words)], detail: "" })),
      { width, indent: 2, right: [], under: 1 },
    );
  const longest = Math.max(0, ...items.map(({ lead = "" }) => columnsOf(lead)));
  return items.flatMap((item, i) => {
    const lines = itemLines(item, leadOf(item, style, i, longest), width);
    return style === "leads" && i > 0 ? ["", ...lines] : lines;
  });
}

function leadOf({ lead = "", ticks = [] }: Item, style: List["style"], i: number, longest: number): string {
  const box = ticks.length > 0 ? "[ ] " : "";
  if (style === "numbers") return `${padded(String(i + 1), 3, true)}. ${box}`;
  return style === "leads" ? `  ${padded(lead, longest)}  ` : `  ${box === "" ? "- " : box}`;
}

function itemLines({ words, below = [] }: Item, lead: string, width: number): readonly string[] {
  const indent = " ".repeat(columnsOf(lead));
  return [
    ...hanging(lead, inText(words), width),
    ...below.flatMap((more) => hanging(indent, inText(more), width)),
  ];
}
