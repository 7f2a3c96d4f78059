/**
 * The one layout of a plan: white space alone is changed, and never what the lines say. Line breaks stay where the
 * writer put them, nothing is aligned in columns, and a line that could not be read is left exactly as it is.
 */
import { piecesOf, Shelf } from "./chunks";
import { type Change, changes, type Piece, type TextEdit, usualBreak } from "./format-changes";
import { differing, linesOf, settleLines } from "./format-lines";
import { sameMeaning } from "./format-same";
import { parse } from "./parser";
import { lineAbove, lineAt } from "./text-lines";
import type { Complaint, Entry, Span, Tree } from "./tree";

export type { TextEdit } from "./format-changes";

/**
 * What would lay a text out: of its lines, those that have a part in `lines`, and the beginnings of those that have one
 * in `indents`. Nothing where that would change what is said, or while a merge is not settled.
 */
export function format(tree: Tree, lines: Span = ALL, indents: Span = lines): TextEdit[] {
  if (notLaidOut(tree)) return [];
  const { text } = tree;
  const wanted = { lines: wholeLines(text, lines), indents: wholeLines(text, indents) };
  const eol = usualBreak(text);
  return piecesIn(tree, wanted).flatMap((piece) =>
    laidOut(piece, eol, wanted).map(({ start, end, text }) => ({ start, end, text })),
  );
}

/**
 * A text with its edits made, whose offsets count from `from`. They do not overlap; of those at one place the one that
 * only adds comes first, and else they come in the order given.
 */
export function applied(text: string, edits: readonly TextEdit[], from = 0): string {
  const parts: string[] = [];
  let at = 0;
  for (const edit of [...edits].sort((a, b) => a.start - b.start || a.end - b.end)) {
    parts.push(text.slice(at, edit.start - from), edit.text);
    at = edit.end - from;
  }
  return parts.join("") + text.slice(at);
}

/** The problem for which a text is left as it is. */
export const notLaidOut = ({ complaints }: Pick<Tree, "complaints">): Complaint["code"] | undefined =>
  complaints.find(({ code }) => NOT_LAID_OUT.has(code))?.code;

/** What is no plan, and what has two versions of some lines: which lines belong together is not known. */
const NOT_LAID_OUT: ReadonlySet<Complaint["code"]> = new Set(["not-text", "too-big", "merge-conflict"]);

const ALL: Span = { start: 0, end: Number.POSITIVE_INFINITY };

interface Wanted {
  readonly lines: Span;
  readonly indents: Span;
}

function piecesIn({ text, entries, complaints }: Tree, { lines, indents }: Wanted): Piece[] {
  const starts = piecesOf(text);
  const pieceAt = (offset: number): number => {
    let [low, high] = [0, starts.length];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle;
    }
    return low;
  };
  const first = pieceAt(Math.min(lines.start, indents.start));
  const last = pieceAt(Math.max(lines.end, indents.end));
  const pieces = starts.slice(first, last + 1).map((at, i) => ({
    text: text.slice(at, starts[first + i + 1] ?? text.length),
    at,
    opens: at === 0,
    ends: first + i + 1 === starts.length,
    entries: [] as Entry[],
    complaints: [] as Complaint[],
  }));
  for (const entry of entries) pieces[pieceAt(entry.start) - first]?.entries.push(entry);
  for (const complaint of complaints) pieces[pieceAt(complaint.start) - first]?.complaints.push(complaint);
  return pieces;
}

/**
 * The edits of one piece. A line in which fewer or more blanks would make other words is kept as typed; a piece that
 * would then still say something else is left alone.
 */
function laidOut(piece: Piece, eol: string, wanted: Wanted): Change[] {
  const lines = linesOf(piece.text, piece.at);
  settleLines(lines, piece.entries, piece.complaints);
  const make = () => {
    const edits = [...changes(piece, lines, eol)].filter((change) => isWanted(change, wanted));
    return { edits, text: applied(piece.text, edits, piece.at) };
  };
  let made = make();
  if (made.edits.length === 0) return [];
  const wrong = differing(lines, linesOf(made.text, 0)) ?? lines;
  if (wrong.length > 0) {
    for (const line of wrong) line.kept = true;
    made = make();
    if (differing(lines, linesOf(made.text, 0))?.length !== 0) return [];
  }
  return saysTheSame(piece, made.text) ? made.edits : [];
}

/** The tree is compared too, and what is complained about. What is wrong with a line may be told by the entry above it, so it is read anew. */
function saysTheSame({ text, entries, complaints }: Piece, better: string): boolean {
  const now = parse(better, compared);
  const was = complaints.length === 0 ? { entries, complaints } : parse(text, compared);
  return sameMeaning(was, now);
}

/** Apart from the shelf of whole texts, which goes by how long they are. */
const compared = new Shelf();

const isWanted = ({ start, end, indents }: Change, wanted: Wanted): boolean =>
  within(start, end, wanted.lines) || (indents && within(start, end, wanted.indents));

const within = (start: number, end: number, span: Span): boolean => span.start <= start && end <= span.end;

/** All of the lines of which a span has a part; a span that ends where a line begins has none of that. */
function wholeLines(text: string, { start, end }: Span): Span {
  const from = lineAt(text, start).start;
  if (end >= text.length) return { start: from, end: Number.POSITIVE_INFINITY };
  const line = lineAt(text, end);
  return { start: from, end: line.start === end && end > start ? lineAbove(text, line)!.end : line.end };
}
