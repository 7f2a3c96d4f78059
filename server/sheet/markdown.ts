/** The shop sheet as Markdown: CommonMark with the tables and task lists of GFM. Pictures of boards are made of letters. */
import {
  type Block,
  type Cell,
  type Item,
  type List,
  labelled,
  runsOf,
  type SheetDocument,
  type Table,
  type Terms,
  type Words,
  type WriterWords,
} from "./document";
import { escapeMarkdown, oneLine } from "./escape";

export function sheetMarkdown({ title, under, sections, words }: SheetDocument): string {
  const parts = [
    `# ${escapeMarkdown(title)}`,
    escapeMarkdown(under),
    ...sections.flatMap(({ heading, blocks }) => [
      `## ${escapeMarkdown(heading)}`,
      ...blocks.flatMap((block) => blockParts(block, words)),
    ]),
  ];
  return `${parts.join("\n\n")}\n`;
}

/** Paragraphs, each to stand between empty lines. */
export function blockParts(block: Block, words: WriterWords): readonly string[] {
  switch (block.kind) {
    case "paragraph":
      return [inMarkdown(block.letters ?? block.words)];
    case "terms":
      return [termLines(block, words)];
    case "list":
      return [listLines(block)];
    case "table":
      return [...block.groups.flatMap((group) => groupParts(block, group, words)), ...sumParts(block, words)];
    case "figure": {
      const lines = block.letters?.(WIDTH) ?? [];
      if (lines.length === 0) return [];
      const fence = "`".repeat(Math.max(3, ...lines.map((l) => 1 + longestTicks(l))));
      return [...strong(block.caption), [fence, ...lines, fence].join("\n")];
    }
    case "group": {
      const box = (block.ticks ?? []).length > 0 ? "☐ " : "";
      return [
        `### ${box}${escapeMarkdown(block.heading)}`,
        ...block.blocks.flatMap((b) => blockParts(b, words)),
      ];
    }
    case "figures":
      return block.figures.flatMap((figure) => blockParts(figure, words));
    case "progress":
      return [];
  }
}

/** Columns of a picture made of letters. */
const WIDTH = 96;

const longestTicks = (line: string): number =>
  Math.max(0, ...[...line.matchAll(/`+/g)].map(([ticks]) => ticks.length));

/** Several under one label are a list of their own. */
const termLines = ({ rows }: Terms, { colon }: WriterWords): string =>
  labelled(rows)
    .map(({ label, all }) => {
      const said = all.map(inMarkdown);
      const lead = `- **${escapeMarkdown(label)}${colon}**`;
      return said.length === 1 ? `${lead} ${said[0]}` : [lead, ...said.map((one) => `  - ${one}`)].join("\n");
    })
    .join("\n");

function listLines({ style, items }: List): string {
  return items
    .map((item, i) => {
      const lead = style === "numbers" ? `${i + 1}. ` : "- ";
      const below = (item.below ?? []).map((more) => `\n${" ".repeat(lead.length)}- ${inMarkdown(more)}`);
      return `${lead}${itemWords(item)}${below.join("")}`;
    })
    .join("\n");
}

function itemWords({ ticks = [], lead, words }: Item): string {
  const box = ticks.length > 0 ? "[ ] " : "";
  return `${box}${lead === undefined ? "" : `**${escapeMarkdown(lead)}** `}${inMarkdown(words)}`;
}

function groupParts(
  { columns }: Table,
  { title, source, rows }: Table["groups"][number],
  words: WriterWords,
): readonly string[] {
  if (rows.length === 0) return [];
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  const lines = [
    line(columns.map(({ head }) => escapeMarkdown(head))),
    line(columns.map(({ fit }) => (fit === "number" ? "---:" : "---"))),
    ...rows.map(({ cells }) => line(cells.map((cell) => cellWords(cell, words)))),
  ];
  const heading = [...strong(title), escapeMarkdown(source)].filter((said) => said !== "").join(" ");
  return [...(heading === "" ? [] : [heading]), lines.join("\n")];
}

const strong = (text: string): readonly string[] =>
  oneLine(text) === "" ? [] : [`**${escapeMarkdown(text)}**`];

const sumParts = ({ sums }: Table, { colon }: WriterWords): readonly string[] =>
  sums.length === 0
    ? []
    : [
        sums
          .map(({ label, value }) => `- ${escapeMarkdown(label)}${colon} **${escapeMarkdown(value)}**`)
          .join("\n"),
      ];

function cellWords(cell: Cell, { between }: WriterWords): string {
  if ("ticks" in cell) return boxes(cell.ticks.length);
  return "words" in cell ? inMarkdown(cell.words) : cell.lines.map(inMarkdown).join(between);
}

const boxes = (n: number): string => (n <= MOST_BOXES ? "☐".repeat(n) : `☐ × ${n}`);
const MOST_BOXES = 12;

/** A blank as it is where it holds words together, else a plain one. */
const blankOf = (found: RegExpExecArray | null): string =>
  found === null ? "" : found[0] === "\u00a0" ? found[0] : " ";

const inMarkdown = (words: Words): string =>
  runsOf(words)
    .map(({ text, style, to }) => {
      if (to !== undefined) return `[${escapeMarkdown(text)}](#${to})`;
      if (style === "blank") return "\\_\\_\\_\\_\\_\\_\\_\\_";
      const kept = oneLine(text);
      const [before, after] = [blankOf(/^\s/.exec(text)), blankOf(/\s$/.exec(text))];
      if (kept === "") return before;
      const safe = escapeMarkdown(kept);
      if (style === "small" && !kept.startsWith("(")) return `${before}(${safe})${after}`;
      return `${before}${style === "strong" ? `**${safe}**` : safe}${after}`;
    })
    .join("");

/** What a link on the same page leads to; the id is the program's own. */
export const placeToGo = (id: string): string => `<a id="${id}"></a>`;

/** A picture at an address whose parts are percent-encoded. */
export const pictureOf = (title: string, address: string): string =>
  `![${escapeMarkdown(title)}](<${address.replace(/[<>\\\s]/g, encodeURIComponent)}>)`;
