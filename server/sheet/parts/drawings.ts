/** The drawings, the pieces by their marks, and where a click on them leads. */
import type { SheetData } from "../data";
import type { Figure, Links, Section } from "../document";
import type { SheetDrawing } from "../drawings";
import type { SheetWords } from "../words";
import { list, paragraph, section } from "./blocks";
import { rowsByMark, rowWords } from "./names";
import { lineIn } from "./problems";

/** The size over all and the marks where nothing is drawn; nothing where nothing is placed. */
export function drawingSection(
  data: SheetData,
  drawings: readonly SheetDrawing[],
  words: SheetWords,
): Section[] {
  if (data.overall === null) return [];
  const { width, depth, height } = data.overall;
  const links = linksOf(data);
  const figures = drawings
    .filter(({ kind }) => kind !== "step")
    .map((shown): Figure => {
      const { of, drawing, old } = shown;
      return {
        kind: "figure",
        caption: of === "" ? "" : words.alone(of),
        drawing: () => drawing,
        links,
        ...(old && { old }),
      };
    });
  const marks = rowsByMark(data).map((row) => ({
    lead: row.mark,
    words: rowWords(row, words),
    ...lineIn(row.place, data.file),
  }));
  return section("drawings", words.headings.drawing, [
    paragraph("plain", [{ text: words.overall(width.text, depth.text, height.text), style: "strong" }]),
    figures[0],
    list("marks", marks),
    figures.length > 1 ? { kind: "figures", figures: figures.slice(1) } : undefined,
  ]);
}

/** From a piece to the line that puts it there, from a balloon to the line of its part. */
export function linksOf(data: SheetData): Links {
  const places = new Map<string, number>();
  const parts = new Map<string, number>();
  const partLine = new Map(rowsByMark(data).map((row) => [row.part, lineIn(row.place, data.file).line]));
  for (const { id, part, place } of data.pieces) {
    const [line, of] = [lineIn(place, data.file).line, partLine.get(part)];
    if (line !== undefined) places.set(id, line);
    if (of !== undefined) parts.set(id, of);
  }
  return { places, parts, key: [...places, ...parts].join("\n") };
}
