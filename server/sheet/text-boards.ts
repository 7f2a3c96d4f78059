/** Boards and sheets drawn with letters: to scale as far as columns allow, running marks hanging under their saw lines. */
import type { SheetBoard, SheetPanel } from "./data";
import { oneLine } from "./escape";
import { placeFlags } from "./flags";
import { withMark } from "./parts/names";
import { marksOf, restsOf } from "./stretches";
import { columnsOf, hanging, hangingList, padded } from "./text-layout";
import { type DrawingWords, ENGLISH } from "./words";

/**
 * The board with its pieces named inside and its marks below; `longest` in mm takes the whole width in columns, and so
 * does a shorter board when its names need the room. A name that does not fit is a letter, explained under the board.
 */
export function boardLines(
  board: SheetBoard,
  longest: number,
  width: number,
  says: DrawingWords = ENGLISH.drawings,
): readonly string[] {
  const stretches = stretchesOf(board, says);
  const scaled = Math.floor(((width - 1) * board.length.mm) / Math.max(longest, board.length.mm, 1));
  const bars = [scaled, width - 1]
    .map((last) => barsOf(stretches, board.length.mm, last))
    .find((tried, i) => tried && (i > 0 || stretches.every((stretch, n) => fits(stretch, roomOf(tried, n)))));
  if (!bars) return listed(board, width, says);
  const letters = new Map<string, string>();
  const cells = stretches.map((stretch, n): readonly [string, string] => {
    const room = roomOf(bars, n);
    const { fill, words } = stretch;
    if (fill !== " ") return [fill.repeat(room), fill.repeat(room)];
    if (fits(stretch, room)) {
      const shown = words.every((line) => columnsOf(line) <= room) ? words : stretch.plain;
      return [inCell(shown[0], room), inCell(shown[1], room)];
    }
    const name = words.join(" ");
    const letter = letters.get(name) ?? LETTERS[letters.size] ?? "*";
    letters.set(name, letter);
    return [inCell(letter, room), " ".repeat(room)];
  });
  const border = `+${stretches.map((_, n) => "-".repeat(roomOf(bars, n))).join("+")}+`;
  return [
    border,
    ...[0, 1].map((line) => `|${cells.map((cell) => cell[line]).join("|")}|`),
    border,
    ...markLines(marksAt(board, bars, stretches), width, says),
    ...[...letters].flatMap(([name, letter]) => hanging(`  ${letter}  `, name, width)),
  ];
}

/** The sheet with its pieces numbered, and what the numbers are. */
export function panelLines(
  panel: SheetPanel,
  width: number,
  says: DrawingWords = ENGLISH.drawings,
): readonly string[] {
  const [length, across] = [Math.max(panel.length.mm, 1), Math.max(panel.width.mm, 1)];
  const columns = Math.min(width - 1, Math.max(2, Math.round((2 * MOST_ROWS * length) / across)));
  const rows = Math.min(MOST_ROWS, Math.max(2, Math.round((columns * across) / length / 2)));
  const grid = Array.from({ length: rows + 1 }, () => Array.from({ length: columns + 1 }, () => " "));
  const col = (mm: number) => Math.round((Math.min(mm, length) * columns) / length);
  const line = (mm: number) => rows - Math.round((Math.min(mm, across) * rows) / across);
  frame(grid, 0, columns, 0, rows);
  const numbers = panel.cuts.map(({ x, y, length, width: across }, i) => {
    const [left, right, top, bottom] = [col(x), col(x + length.mm), line(y + across.mm), line(y)];
    frame(grid, left, right, top, bottom);
    return { number: String(i + 1), left, right, top, bottom };
  });
  const drawn = numbers.map(({ number, left, right, top, bottom }) => {
    if (right - left - 1 < number.length || bottom - top < 2) return false;
    const [x, y] = [Math.floor((left + right + 1 - number.length) / 2), Math.floor((top + bottom) / 2)];
    [...number].forEach((c, i) => {
      grid[y]![x + i] = c;
    });
    return true;
  });
  const key = panel.cuts.flatMap((cut, i) => {
    const { length, width: across } = cut;
    const label = `${withMark(cut)}, ${says.size(length.text, across.text)}`;
    return hanging(`${padded(String(i + 1), 4, true)}  `, drawn[i] ? label : says.tooSmall(label), width);
  });
  return [...grid.map((cells) => cells.join("").trimEnd()), ...key];
}

/** Lines of the picture of a sheet, which stand twice as far apart as columns. */
const MOST_ROWS = 36;

interface Stretch {
  readonly from: number;
  readonly to: number;
  /** What fills it; a blank for a piece or an offcut to keep. */
  readonly fill: " " | "x" | "/";
  readonly words: readonly [name: string, length: string];
  /** Without the mark, for where it has no room. */
  readonly plain: readonly [name: string, length: string];
}

function stretchesOf(board: SheetBoard, says: DrawingWords): readonly Stretch[] {
  const pieces = board.cuts.map((cut): Stretch => {
    const { from, to, length } = cut;
    return {
      from: from.mm,
      to: to.mm,
      fill: " ",
      words: [oneLine(withMark(cut)), oneLine(length.text)],
      plain: [oneLine(cut.label), oneLine(length.text)],
    };
  });
  const rests = restsOf(board).map(({ from, to, kind, named }): Stretch => {
    const words: Stretch["words"] = named
      ? [oneLine(says.rest(named.name)), oneLine(says.keep(named.length.text))]
      : ["", ""];
    return { from, to, fill: kind === "kept" ? " " : kind === "bad" ? "/" : "x", words, plain: words };
  });
  return [...pieces, ...rests].sort((a, b) => a.from - b.from);
}

/** Each mark under the saw line nearest to it. */
function marksAt(
  board: SheetBoard,
  bars: readonly number[],
  stretches: readonly Stretch[],
): readonly Label[] {
  const labels = marksOf(board).map(({ mm, text, waste }) => {
    const n =
      waste === "left"
        ? stretches.findIndex(({ from }) => Math.abs(from - mm) < NOISE)
        : stretches.findIndex(({ to }) => Math.abs(to - mm) < NOISE) + 1;
    return { x: bars[n]!, words: oneLine(text) };
  });
  return labels.filter(({ words }) => columnsOf(words) > 0).sort((a, b) => a.x - b.x);
}

const NOISE = 0.01;
/** Lines of hanging marks; more are hard to follow. */
const DEEPEST = 7;
const LETTERS = [..."abcdefghijklmnopqrstuvwyz"];

/** Columns of the saw lines from 0, at least two apart so that each stretch shows; null when there are too many. */
function barsOf(stretches: readonly Stretch[], length: number, last: number): readonly number[] | null {
  const n = stretches.length;
  if (n === 0 || 2 * n > last) return null;
  const bars = [0, ...stretches.map(({ to }) => Math.round((to * last) / Math.max(length, 1)))];
  bars[n] = last;
  for (let i = 1; i <= n; i++) bars[i] = Math.max(bars[i]!, bars[i - 1]! + 2);
  for (let i = n, most = last; i > 0; i--, most = bars[i + 1]! - 2) bars[i] = Math.min(bars[i]!, most);
  return bars;
}

function roomOf(bars: readonly number[], n: number): number {
  return bars[n + 1]! - bars[n]! - 1;
}

function fits({ fill, plain }: Stretch, room: number): boolean {
  return fill !== " " || plain.every((line) => columnsOf(line) <= room);
}

/** With a blank before it where there is one to spare. */
function inCell(words: string, room: number): string {
  return padded(columnsOf(words) < room ? ` ${words}` : words, room);
}

interface Label {
  readonly x: number;
  readonly words: string;
}

/** Labels on leaders, `28"|`; in a row of their own words when they crowd. */
function markLines(labels: readonly Label[], width: number, says: DrawingWords): readonly string[] {
  const placed = placeFlags(
    labels.map(({ x, words }) => ({ x, width: columnsOf(words) + 1 })),
    width,
  );
  if (!placed?.every(({ row }) => row < DEEPEST))
    return hangingList(
      `  ${says.marks}`,
      labels.map(({ words }) => words),
      width,
    );
  const count = Math.max(0, ...placed.map(({ row }) => row + 1));
  const grid = Array.from({ length: count }, () => Array.from({ length: width }, () => " "));
  labels.forEach(({ x, words }, i) => {
    const { row, side } = placed[i]!;
    for (let r = 0; r <= row; r++) grid[r]![x] = "|";
    const start = side === "left" ? x - columnsOf(words) : x + 1;
    grid[row]!.splice(start, columnsOf(words), words, ...Array(columnsOf(words) - 1).fill(""));
  });
  return grid.map((cells) => cells.join("").trimEnd());
}

/** Without a picture: each piece with the mark at its end. */
function listed(board: SheetBoard, width: number, says: DrawingWords): readonly string[] {
  const pieces = board.cuts.flatMap((cut) =>
    hanging("  - ", says.piece(withMark(cut), cut.length.text, cut.to.text), width),
  );
  const rests = board.rests.flatMap(({ name, length }) =>
    hanging("  - ", says.restToKeep(name, length.text), width),
  );
  return [...pieces, ...rests];
}

function frame(grid: string[][], left: number, right: number, top: number, bottom: number): void {
  const set = (y: number, x: number, c: "-" | "|") => {
    const old = grid[y]![x]!;
    grid[y]![x] = old === " " || old === c ? c : "+";
  };
  for (let x = left + 1; x < right; x++) for (const y of [top, bottom]) set(y, x, "-");
  for (let y = top + 1; y < bottom; y++) for (const x of [left, right]) set(y, x, "|");
  for (const y of [top, bottom]) for (const x of [left, right]) grid[y]![x] = "+";
}
