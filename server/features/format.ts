/** The layout of a plan's text: of all of it, of some of its lines, and of the line that was just ended. */
import { applied, format, notLaidOut, type TextEdit } from "../../grammar/format";
import { indentBelow } from "../../grammar/next-line";
import { parse } from "../../grammar/parser";
import { lineAbove, lineAt, lineBelow } from "../../grammar/text-lines";
import type { Span, Tree } from "../../grammar/tree";
import type { Checked } from "./checked";

const treeOf = ({ worked }: Checked): Tree => worked.loaded.whole;

/** Lays out the whole text. */
export function formatAll(plan: Checked): TextEdit[] {
  return format(treeOf(plan));
}

/** A text laid out, whatever it says; in words why it is left as it is. */
export function laidOut(text: string): { readonly text: string } | { readonly refused: string } {
  const tree = parse(text);
  const code = notLaidOut(tree);
  if (code === undefined) return { text: applied(text, format(tree)) };
  return {
    refused:
      code === "merge-conflict"
        ? "two versions of the same lines stand in it, one of which has to go"
        : "it is no text of a plan",
  };
}

/** Lays out the lines of which the spans have a part; how far in lines begin, in the whole of the entries they touch. */
export function formatLines(plan: Checked, spans: readonly Span[]): TextEdit[] {
  const tree = treeOf(plan);
  const edits = new Map<string, TextEdit>();
  for (const span of spans)
    for (const edit of format(tree, span, entriesIn(tree, span)))
      edits.set(`${edit.start} ${edit.end}`, edit);
  return [...edits.values()].sort((a, b) => a.start - b.start || a.end - b.end);
}

/** From the first to the last entry of which a span touches a line. */
function entriesIn({ text, entries }: Tree, span: Span): Span {
  const [start, end] = [lineAt(text, span.start).start, Math.max(span.start + 1, span.end)];
  const met = entries.filter((e) => e.start < end && e.end > start);
  return {
    start: Math.min(span.start, met[0]?.start ?? span.start),
    end: Math.max(span.end, met[met.length - 1]?.end ?? span.end),
  };
}

/**
 * After a new line was begun at the offset: lays out the line above it, and gives the new one the beginning it should
 * have. An entry that was typed as if it went on from the one above is moved to the left edge. It asks for the text
 * alone, since no key is to wait until the plan is worked out.
 */
export function formatOnNewLine(text: string, offset: number): TextEdit[] {
  const was = parse(text);
  const below = lineAt(text, offset);
  const above = lineAbove(text, below);
  if (!above) return [];
  const moved = read(was, moves(was, above, below));
  const isBare = textAt(was.text, below).trim() === "";
  const [left, begun] = twoLines(moved, above);
  const tree = read(moved, format(moved, left, isBare ? left : { start: left.start, end: begun.end }));
  const [first, second] = twoLines(tree, above).map((line) => textAt(tree.text, line));
  return [
    ...whiteSpace(textAt(was.text, above), first!.trim() === "" ? "" : first!, above.start),
    ...whiteSpace(textAt(was.text, below), isBare ? indentBelow(tree, above.start) : second!, below.start),
  ];
}

const textAt = (text: string, { start, end }: Span): string => text.slice(start, end);

const read = (tree: Tree, edits: readonly TextEdit[]): Tree =>
  edits.length === 0 ? tree : parse(applied(tree.text, edits));

/** The line that begins where one did, and the one below it. */
function twoLines({ text }: Tree, { start }: Span): readonly [Span, Span] {
  const first = lineAt(text, start);
  return [first, lineBelow(text, first) ?? first];
}

/**
 * What brings the two lines to where they are read: an entry that is indented, which nothing below goes on from, out to
 * the left edge; the rest of a line that was broken at the left edge in under it.
 */
function moves(tree: Tree, above: Span, below: Span): TextEdit[] {
  return tree.complaints.flatMap(({ code, says, cure }) => {
    if (!cure || cure.start < above.start || cure.start > below.end) return [];
    if (says === "goes-on") return cure.start === below.start ? [cure] : [];
    if (code !== "indented-alone") return [];
    const moved = parse(applied(tree.text, [cure]));
    const entry = moved.entries.find((e) => e.start === cure.start);
    return entry && entry.end + cure.end - cure.start <= below.end ? [cure] : [];
  });
}

/** The changes from one line to the same in other white space, each as small as can be. */
function whiteSpace(from: string, to: string, at: number): TextEdit[] {
  const edits: TextEdit[] = [];
  let j = 0;
  for (let i = 0; i <= from.length; i++, j++) {
    const [a, b] = [blanksAt(from, i), blanksAt(to, j)];
    if (a !== b) edits.push({ start: at + i, end: at + i + a.length, text: b });
    i += a.length;
    j += b.length;
  }
  return edits;
}

function blanksAt(text: string, at: number): string {
  BLANKS.lastIndex = at;
  return BLANKS.exec(text)![0];
}

const BLANKS = /[\s\uFEFF]*/y;
