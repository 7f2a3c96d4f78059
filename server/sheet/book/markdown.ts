/** A book of plans as Markdown: its drawings are files beside it. */
import { escapeMarkdown } from "../escape";
import { blockParts, pictureOf, placeToGo } from "../markdown";
import type { Book, BookPage } from "./book";

export function bookMarkdown({ title, under, care, contents, pages, words }: Book): string {
  const parts = [
    `# ${escapeMarkdown(title)}`,
    escapeMarkdown(under),
    escapeMarkdown(care),
    ...(contents ? blockParts(contents, words) : []),
    ...pages.flatMap((page) => pageParts(page, words)),
  ];
  return `${parts.join("\n\n")}\n`;
}

const pageParts = (
  { id, title, under, about, address, sections }: BookPage,
  words: Book["words"],
): string[] => [
  placeToGo(id),
  `## ${escapeMarkdown(title)}`,
  escapeMarkdown(under),
  ...(about === "" ? [] : [escapeMarkdown(about)]),
  ...(address === undefined ? [] : [pictureOf(words.drawing(title), address)]),
  ...sections.flatMap(({ heading, blocks }) => [
    `### ${escapeMarkdown(heading)}`,
    ...blocks.flatMap((block) => blockParts(block, words)),
  ]),
];
