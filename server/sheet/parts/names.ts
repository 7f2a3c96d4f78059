/** How pieces and lengths are called all over the sheet. */
import type { CutRow, Marked, SheetData } from "../data";
import type { Words } from "../document";
import type { SheetWords } from "../words";

/** `floor-board, left`. */
export const partWords = ({ part, hand }: CutRow, words: SheetWords): string =>
  hand === "" ? part : `${part}, ${words.hands[hand]}`;

/** A row of the cut list in the identity of a box to tick: unlike its mark, no part before it changes it. */
export const rowId = ({ part, hand }: CutRow): string => (hand === "" ? part : `${part}/${hand}`);

/** `side, 4 pieces`. */
export const rowWords = (row: CutRow, words: SheetWords): string =>
  `${partWords(row, words)}, ${words.pieces(row.count)}`;

/** `B side`: what is written on a piece. */
export const withMark = ({ mark, label }: { readonly mark: string; readonly label: string }): string =>
  mark === "" ? label : `${mark} ${label}`;

/** A length, the same in the other system small beside it. */
export const lengthWords = ({ text, other }: Marked): Words => [
  { text, style: "strong" },
  { text: " " },
  { text: other, style: "small" },
];

/** The rows of the cut list in the order of their marks. */
export function rowsByMark({ cutList }: SheetData): readonly CutRow[] {
  const rows = cutList.flatMap((group) => group.rows).filter(({ mark }) => mark !== "");
  return rows.sort((a, b) => a.mark.length - b.mark.length || (a.mark < b.mark ? -1 : 1));
}

/** A sentence that already ends keeps its end. */
export const sentence = (words: string): string => (/[.!?]$/.test(words) ? words : `${words}.`);
