/** What is left over and worth keeping, by name, and how the shop file then tells of it. */
import type { Marked, SheetData, SheetRest } from "../data";
import type { Section } from "../document";
import type { SheetWords } from "../words";
import { paragraph, section, terms } from "./blocks";

export function offcutSection(data: SheetData, words: SheetWords): Section[] {
  const rests = [
    ...data.boards.flatMap(({ boards }) => boards.flatMap((board) => board.rests)),
    ...data.panels.flatMap(({ sheets }) => sheets.flatMap((sheet) => sheet.rests)),
  ];
  if (rests.length === 0) return [];
  const lines = [...data.boards, ...data.panels].filter(({ onHandAfter }) => onHandAfter !== "");
  return section("offcuts", words.headings.offcuts, [
    paragraph("key", words.nameRests),
    terms(
      rests.map((rest) => ({ label: rest.name, words: sizeOf(rest, words) })),
      { columns: 2 },
    ),
    ...(lines.length > 0 ? [paragraph("key", words.onHandAfter)] : []),
    terms(
      lines.map(({ stock, onHandAfter }) => ({ label: stock, words: onHandAfter })),
      { light: true },
    ),
  ]);
}

/** In both systems. */
function sizeOf({ length, width }: SheetRest, { by }: SheetWords): string {
  const sides = (text: (side: Marked) => string): string =>
    [...(width ? [width] : []), length].map(text).join(by);
  return `${sides(({ text }) => text)} (${sides(({ other }) => other)})`;
}
