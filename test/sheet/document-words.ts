/** The words of a sheet's document in the order in which they are read, and documents made of hostile texts. */
import type { Block, Cell, Row, SheetDocument, Table, Words } from "../../server/sheet/document";
import { runsOf } from "../../server/sheet/document";

/** Without what is drawn and not written: boxes to tick and lines to write on. */
export function wordsOf({ title, under, sections }: SheetDocument): string[] {
  return [title, under, ...sections.flatMap(({ heading, blocks }) => [heading, ...blocks.flatMap(ofBlock)])];
}

const said = (words: Words): string =>
  runsOf(words)
    .map(({ text, style }) => (style === "blank" ? "" : text))
    .join("");

function ofBlock(block: Block): string[] {
  switch (block.kind) {
    case "paragraph":
      return [said(block.words)];
    case "terms":
      return block.rows.flatMap(({ label, words }) => [label, said(words)]);
    case "list":
      return block.items.flatMap(({ lead, words, below = [] }, i) => {
        const plain = { bullets: "•", numbers: `${i + 1}.`, ticks: "", marks: "", leads: "" }[block.style];
        return [lead ?? plain, said(words), ...below.map(said)];
      });
    case "table":
      return ofTable(block);
    case "figure":
      return [
        block.caption,
        ...block.drawing().items.flatMap((item) => (item.kind === "text" ? [item.text] : [])),
      ];
    case "group":
      return [block.heading, ...block.blocks.flatMap(ofBlock)];
    case "figures":
      return block.figures.flatMap(ofBlock);
    case "progress":
      return [];
  }
}

function ofTable({ columns, groups, sums }: Table): string[] {
  const rows = groups.flatMap((group) => group.rows);
  const used = columns.filter((_, i) => rows.some(({ cells }) => isFull(cells[i]!)));
  return [
    ...used.map(({ head }) => head),
    ...groups.flatMap(({ title, source, rows }) => [title, source, ...rows.flatMap(ofRow)]),
    ...sums.flatMap(({ label, value }) => [label, value]),
  ];
}

const ofRow = ({ cells }: Row): string[] =>
  cells.flatMap((cell) =>
    "ticks" in cell ? [] : "lines" in cell ? cell.lines.map(said) : [said(cell.words)],
  );

const isFull = (cell: Cell): boolean =>
  "ticks" in cell ? cell.ticks.length > 0 : "lines" in cell ? cell.lines.length > 0 : said(cell.words) !== "";

/** Words of the types, never of a plan. */
const FIXED = new Set(["kind", "style", "fit", "name", "id"]);

/** The document with each of its texts taken in turn from some others, those of its drawings as well. */
export function withTexts(document: SheetDocument, pool: readonly string[]): SheetDocument {
  let n = 0;
  const next = () => pool[n++ % pool.length]!;
  const walk = (value: unknown, key: string): unknown => {
    if (typeof value === "string") return FIXED.has(key) ? value : next();
    if (typeof value === "function") {
      if (key !== "drawing") return value;
      const drawing = value() as { title: string; items: object[] };
      const title = next();
      const items = drawing.items.map((item) => ("text" in item ? { ...item, text: next() } : item));
      return () => ({ ...drawing, title, items });
    }
    if (Array.isArray(value)) return value.map((one) => walk(one, key));
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, walk(one, name)]));
  };
  return { ...(walk({ ...document, words: undefined }, "") as SheetDocument), words: document.words };
}

/** Its tables, those of groups too. */
export const tablesIn = ({ sections }: SheetDocument): Table[] => {
  const inBlock = (block: Block): Table[] =>
    block.kind === "table" ? [block] : block.kind === "group" ? block.blocks.flatMap(inBlock) : [];
  return sections.flatMap(({ blocks }) => blocks.flatMap(inBlock));
};
