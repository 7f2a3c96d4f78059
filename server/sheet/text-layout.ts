/** Plain text in columns: widths as a terminal counts them, wrapping, hanging paragraphs, aligned rows. */
import { oneLine } from "./escape";

/** Columns a text takes: wide letters two, combining ones none. */
export function columnsOf(words: string): number {
  if (PLAIN.test(words)) return words.length;
  let columns = 0;
  for (const c of words) columns += NO_WIDTH.test(c) ? 0 : WIDE.test(c) ? 2 : 1;
  return columns;
}

/** The text filled up with blanks on one side. */
export function padded(words: string, width: number, right = false): string {
  const blanks = " ".repeat(Math.max(0, width - columnsOf(words)));
  return right ? blanks + words : words + blanks;
}

/** Lines of at most that width, broken at blanks, and inside a word only where it is longer than a line. */
export function wrapped(words: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of oneLine(words).split(" ")) {
    if (line !== "" && columnsOf(line) + 1 + columnsOf(word) <= width) {
      line += ` ${word}`;
      continue;
    }
    if (line !== "") lines.push(line);
    const pieces = cutWord(word, Math.max(2, width));
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? "";
  }
  return [...lines, line];
}

/** A paragraph behind `lead`, its later lines standing under its first word; below the lead when that takes the room. */
export function hanging(lead: string, words: string, width: number): readonly string[] {
  const taken = columnsOf(lead);
  if (taken > width - ROOM_FOR_WORDS) return [...wrapped(lead, width), ...hanging("    ", words, width)];
  const indent = " ".repeat(taken);
  return wrapped(words, width - taken).map((line, i) => ((i === 0 ? lead : indent) + line).trimEnd());
}

/** A list behind `lead`, broken between its items only. */
export function hangingList(lead: string, items: readonly string[], width: number): readonly string[] {
  const lines = [lead];
  items.forEach((item, i) => {
    const word = oneLine(item) + (i < items.length - 1 ? ", " : "");
    const last = lines.length - 1;
    if (columnsOf((lines[last]! + word).trimEnd()) <= width) lines[last] += word;
    else lines.push(...hanging(" ".repeat(columnsOf(lead)), word, width).map((line) => `${line} `));
  });
  return lines.map((line) => line.trimEnd());
}

export interface TextRow {
  readonly cells: readonly string[];
  /** Said after the cells when it fits on their line, else below them. */
  readonly detail: string;
}

export interface TextTable {
  readonly width: number;
  readonly indent: number;
  /** Columns whose text ends on a line, such as counts. */
  readonly right: readonly number[];
  /** The column under which details stand. */
  readonly under: number;
}

/** Rows with their cells under each other. No line is wider than the table: the widest columns give way and wrap. */
export function aligned(
  rows: readonly TextRow[],
  { width, indent, right, under }: TextTable,
): readonly string[] {
  const cells = rows.map((row) => row.cells.map(oneLine));
  const widths = cells.reduce<number[]>(
    (all, row) => row.map((cell, i) => Math.max(all[i] ?? 0, columnsOf(cell))),
    [],
  );
  const gaps = (n: number) => widths.slice(0, n).filter((w) => w > 0).length * GAP.length;
  const total = () => indent + widths.reduce((a, b) => a + b, 0) + gaps(widths.length);
  while (total() > width && Math.max(...widths) > NARROWEST)
    widths[widths.indexOf(Math.max(...widths))]! -= 1;
  const start = " ".repeat(indent);
  const below = start + " ".repeat(widths.slice(0, under).reduce((a, b) => a + b, 0) + gaps(under));
  return rows.flatMap(({ detail }, r) => {
    const columns = cells[r]!.map((cell, i) => wrapped(cell, Math.max(1, widths[i]!)));
    const height = Math.max(...columns.map((lines) => lines.length));
    const lines = Array.from({ length: height }, (_, n) => {
      const row = columns.flatMap((column, i) =>
        widths[i] === 0 ? [] : [padded(column[n] ?? "", widths[i]!, right.includes(i))],
      );
      return start + row.join(GAP);
    });
    const beside = `${lines[0]}${GAP}${oneLine(detail)}`;
    if (oneLine(detail) === "") return lines.map((line) => line.trimEnd());
    if (height === 1 && columnsOf(beside) <= width) return [beside];
    return [...lines.map((line) => line.trimEnd()), ...hanging(below, detail, width)];
  });
}

/** A lead leaves at least so many columns for what stands behind it. */
const ROOM_FOR_WORDS = 8;

const GAP = "  ";
const NARROWEST = 6;

const PLAIN = /^[ -~]*$/;
const NO_WIDTH = /[\p{Mn}\p{Me}\p{Cf}]/u;
const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}\p{Emoji_Presentation}]/u;

function cutWord(word: string, width: number): readonly string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const c of word) {
    if (columnsOf(piece + c) > width) {
      pieces.push(piece);
      piece = "";
    }
    piece += c;
  }
  return [...pieces, piece];
}
