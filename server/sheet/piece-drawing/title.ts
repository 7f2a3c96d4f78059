/** What a drawing says in words. */
import type { DrawingWords } from "../words";
import type { DrawnPiece } from "./pieces";

/** `A leg, 4 pieces; B rail`: every mark with the name of its row and how many pieces bear it. */
export function marksInWords(pieces: readonly DrawnPiece[], says: DrawingWords): string {
  const rows = new Map<string, { name: string; count: number }>();
  for (const { mark, title } of pieces) {
    const row = rows.get(mark);
    if (row) row.count++;
    else rows.set(mark, { name: title.split(" / ")[0]!, count: 1 });
  }
  return [...rows].map(([mark, { name, count }]) => says.marked(mark, name, count)).join(says.between);
}

/** The words broken at spaces into lines that `fits` takes; a word that does not fit stands alone. */
export function brokenInto(words: string, fits: (line: string) => boolean): readonly string[] {
  const broken: string[] = [];
  for (const word of words.split(" ")) {
    const last = broken.at(-1);
    if (last !== undefined && fits(`${last} ${word}`)) broken[broken.length - 1] = `${last} ${word}`;
    else broken.push(word);
  }
  return broken;
}
