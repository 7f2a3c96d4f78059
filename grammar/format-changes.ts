/** The changes of white space that lay out one entry's own text: between its lines, and between what stands on them. */
import { BEFORE_COMMENT, blankBetween, isSign, signsIn } from "./format-blanks";
import { BREAK, endOfLine, type Line } from "./format-lines";
import type { Complaint, Entry, Span } from "./tree";

/** One change of a text; of a list of them none overlap, and they stand in order. */
export interface TextEdit extends Span {
  readonly text: string;
}

/** One step in. */
export const INDENT = "  ";

/** One entry's own text, with the comments and empty lines below it. */
export interface Piece {
  readonly text: string;
  readonly at: number;
  /** Whether it is the first of its text, and whether it is the last. */
  readonly opens: boolean;
  readonly ends: boolean;
  readonly entries: readonly Entry[];
  readonly complaints: readonly Complaint[];
}

export interface Change extends TextEdit {
  /** Whether it is of how far in a line begins. */
  readonly indents: boolean;
}

/** In the order of the text; each is the least that will do. Lines that are kept as typed change nowhere but in the breaks around them. */
export function* changes(piece: Piece, lines: readonly Line[], eol: string): Generator<Change> {
  const signs = lines.some((l) => l.items.some(({ token }) => isSign(token)))
    ? signsIn(piece.entries)
    : NO_SIGNS;
  const textOf = (start: number, end: number) => piece.text.slice(start - piece.at, end - piece.at);
  let end = piece.at + (piece.opens && piece.text.startsWith("\uFEFF") ? 1 : 0);
  let above: Line | undefined;
  for (const line of lines) {
    const start = line.items[0]!.start;
    yield* between(textOf(end, start), end, above, line, eol);
    let before = line.items[0]!;
    for (const item of line.items.slice(1)) {
      if (!line.kept) {
        const blanks =
          item.token && before.token
            ? blankBetween(before.token, item.token, before.start, signs)
            : BEFORE_COMMENT;
        yield* change(textOf(before.end, item.start), before.end, blanks);
      }
      before = item;
    }
    end = endOfLine(line);
    above = line;
  }
  const rest = textOf(end, piece.at + piece.text.length);
  if (!piece.ends) yield* between(rest, end, above, undefined, eol);
  else {
    const { behind, breaks, before } = parted(rest);
    const blanks = breaks === "" ? before : behind;
    if (above && !above.kept) yield* change(blanks, end, "");
    const from = above ? blanks.length : 0;
    yield* changeBreaks(rest.slice(from), end + from, above ? [eol] : [], eol);
  }
}

const NO_SIGNS = { called: new Set<number>(), negative: new Set<number>() };

/** What stands between two lines; one of them is missing at either end of a piece. */
function* between(
  gap: string,
  at: number,
  above: Line | undefined,
  below: Line | undefined,
  eol: string,
): Generator<Change> {
  const { behind, before } = parted(gap);
  if (above && !above.kept) yield* change(behind, at, "");
  const from = above ? behind.length : 0;
  const own = gap.slice(from, gap.length - before.length);
  // One empty line stays, none at the start of the text.
  const kept = Math.min(own.match(BREAK)?.length ?? 0, above ? 2 : 0);
  yield* changeBreaks(own, at + from, new Array<string>(kept).fill(eol), eol);
  if (below && !below.kept)
    yield* change(before, at + gap.length - before.length, INDENT.repeat(below.level), true);
}

/** White space in three: up to the first line break, from there past the last, and what is left. */
function parted(gap: string): { readonly behind: string; readonly breaks: string; readonly before: string } {
  const [, behind = "", breaks = "", before = gap] =
    /^([^\r\n]*)([\r\n](?:[\s\S]*[\r\n])?)([^\r\n]*)$/.exec(gap) ?? [];
  return { behind, breaks, before };
}

/** The least change from one run of blanks to another. */
function* change(from: string, at: number, to: string, indents = false): Generator<Change> {
  if (from === to) return;
  let head = 0;
  while (head < Math.min(from.length, to.length) && from[head] === to[head]) head++;
  let tail = 0;
  while (
    tail < Math.min(from.length, to.length) - head &&
    from[from.length - 1 - tail] === to[to.length - 1 - tail]
  )
    tail++;
  yield { start: at + head, end: at + from.length - tail, text: to.slice(head, to.length - tail), indents };
}

/** The same of empty lines, from within: neither the line above is touched nor the one below, and no line break is parted. */
function* changeBreaks(from: string, at: number, to: string[], eol: string): Generator<Change> {
  if (from === to.join("")) return;
  const left = [...to];
  let head = 0;
  let tail = from.length;
  while (left.length > (to.length > 1 ? 1 : 0) && isBreak(from, head, eol)) {
    left.pop();
    head += eol.length;
  }
  while (left.length > 0 && tail - eol.length >= head && isBreak(from, tail - eol.length, eol)) {
    left.pop();
    tail -= eol.length;
  }
  yield { start: at + head, end: at + tail, text: left.join(""), indents: false };
}

/** Whether a whole line break of that kind stands there. */
const isBreak = (text: string, at: number, eol: string): boolean =>
  text.startsWith(eol, at) &&
  !(eol === "\r" && text[at + 1] === "\n") &&
  !(eol === "\n" && text[at - 1] === "\r");

/** The line break used most; of those used alike the first of `\n`, `\r\n` and `\r`. */
export function usualBreak(text: string): string {
  const used = new Map([
    ["\n", 0],
    ["\r\n", 0],
    ["\r", 0],
  ]);
  for (const [mark] of text.matchAll(BREAK)) used.set(mark, used.get(mark)! + 1);
  return [...used].reduce((best, one) => (one[1] > best[1] ? one : best))[0];
}
