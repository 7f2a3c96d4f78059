/** What of a plan can be folded: entries of several lines, notes, the lines that name files, and what stands under a heading. */
import type { Entry, Span, Tree } from "../../grammar/tree";

/** Lines counted from 0, both included; the first stays in sight. */
export interface Fold {
  readonly first: number;
  readonly last: number;
  readonly kind: "entry" | "notes" | "files" | "under a heading";
}

/** In the order in which they begin, the larger first. */
export function foldsOf(tree: Tree): Fold[] {
  const lineOf = lineCounter(tree.text);
  const fold = (kind: Fold["kind"], { start, end }: Span): Fold[] => {
    const [first, last] = [lineOf(start), lineOf(Math.max(start, end - 1))];
    return last > first ? [{ first, last, kind }] : [];
  };
  const entries = tree.entries.flatMap((e): Entry[] => (e.kind === "assembly" ? [e, ...e.body] : [e]));
  const notes = notesIn(tree, lineOf);
  const folds = [
    ...entries.flatMap((e) => fold("entry", e)),
    ...notes.flatMap((n) => fold("notes", n)),
    ...filesIn(tree.entries).flatMap((f) => fold("files", f)),
    ...headed(tree, notes, lineOf),
    ...enclosedIn(tree).flatMap((f) => fold("entry", f)),
  ];
  return folds.sort((a, b) => a.first - b.first || b.last - a.last);
}

/** Notes that stand on lines of their own, those of neighbouring lines together. */
function notesIn({ text, comments }: Tree, lineOf: (at: number) => number): Span[] {
  const own: { start: number; end: number }[] = [];
  for (const { start, end } of comments) {
    if (!/(^|[\r\n\uFEFF])[ \t]*$/.test(text.slice(Math.max(0, start - 200), start))) continue;
    const last = own[own.length - 1];
    if (last && lineOf(start) === lineOf(last.end) + 1) last.end = end;
    else own.push({ start, end });
  }
  return own;
}

/** The texts of other files, each with the line that encloses it. */
function enclosedIn({ text, entries }: Tree): Span[] {
  const starts = entries.filter(({ kind }) => kind === "enclosed").map(({ start }) => start);
  return starts.map((start, i) => {
    const end = starts[i + 1] ?? text.length;
    return { start, end: start + text.slice(start, end).trimEnd().length };
  });
}

/** Runs of `shop` and `bring` lines. */
function filesIn(entries: readonly Entry[]): Span[] {
  const runs: { start: number; end: number }[] = [];
  let before: Entry | undefined;
  for (const entry of entries) {
    if (namesFile(entry)) {
      const last = runs[runs.length - 1];
      if (last && before && namesFile(before)) last.end = entry.end;
      else runs.push({ start: entry.start, end: entry.end });
    }
    before = entry;
  }
  return runs;
}

const namesFile = ({ kind }: Entry): boolean => kind === "shop" || kind === "bring";

/**
 * A note of one line in the first column, with an empty line above and entries below, is a heading: what follows it up
 * to the next empty line folds under it, where that is more than one entry.
 */
function headed({ text, entries }: Tree, notes: readonly Span[], lineOf: (at: number) => number): Fold[] {
  /** The first entry below the note that is looked at. */
  let next = 0;
  return notes.flatMap(({ start, end }): Fold[] => {
    while (next < entries.length && entries[next]!.start < end) next++;
    const heading = lineOf(start);
    if (
      lineOf(end) !== heading ||
      (start > 0 && !/(?:\r\n|\r|\n)[ \t]*(?:\r\n|\r|\n)$/.test(text.slice(Math.max(0, start - 200), start)))
    )
      return [];
    let [last, count] = [heading, 0];
    let entry = entries[next];
    while (entry && lineOf(entry.start) === last + 1) {
      last = lineOf(Math.max(entry.start, entry.end - 1));
      entry = entries[next + ++count];
    }
    return count > 1 ? [{ first: heading, last, kind: "under a heading" }] : [];
  });
}

/** The line of an offset, counted from 0. */
function lineCounter(text: string): (at: number) => number {
  const starts = [0];
  for (const { index, 0: sign } of text.matchAll(/\r\n|\r|\n/g)) starts.push(index + sign.length);
  return (at) => {
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= at) low = middle;
      else high = middle - 1;
    }
    return low;
  };
}
