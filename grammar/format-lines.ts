/**
 * The text of one entry in lines, as the formatter sees it: what stands on each, how far in it begins, and which lines
 * are left exactly as they were typed because something on them could not be read.
 */
import type { IToken } from "chevrotain";
import { HEADS } from "./heads";
import { breaksBetween, opensLine, tokenize } from "./tokens";
import type { Complaint, Entry, Span } from "./tree";

/** A token or a comment; offsets are those of the whole text. */
export interface Item extends Span {
  readonly image: string;
  /** Undefined for a comment. */
  readonly token: IToken | undefined;
}

/** A line on which something stands. */
export interface Line {
  readonly items: readonly Item[];
  /** Blanks before the first item, as typed. */
  readonly typed: string;
  /** Whether an empty line stands before it. */
  readonly parted: boolean;
  /** How far in it begins: each step is two blanks. */
  level: number;
  /** Left exactly as typed. */
  kept: boolean;
}

/** The lines of an entry's own text, which begins at that offset of the whole. */
export function linesOf(text: string, at: number): Line[] {
  const { tokens, comments } = tokenize(text);
  const lines: (Line & { readonly items: Item[] })[] = [];
  let next = 0;
  let end = 0;
  const put = (start: number, image: string, token: IToken | undefined) => {
    const item = { start: at + start, end: at + start + image.length, image, token };
    const line = lines[lines.length - 1];
    if (line && !breaksBetween(text, end, start)) line.items.push(item);
    else {
      const between = text.slice(end, start);
      const typed = /[^\r\n]*$/.exec(between)![0].replace(/^\uFEFF/, "");
      const parted = (between.match(BREAK)?.length ?? 0) > 1;
      lines.push({ items: [item], typed, parted, level: opensLine(text, start) ? 0 : 1, kept: false });
    }
    end = start + image.length;
  };
  const comment = (before: number) => {
    for (let c = comments[next]; c && c.startOffset < before; c = comments[++next])
      put(c.startOffset, c.image.trimEnd(), undefined);
  };
  for (const token of tokens) {
    comment(token.startOffset);
    put(token.startOffset, token.image, token);
  }
  comment(Number.POSITIVE_INFINITY);
  return lines;
}

export const BREAK = /\r\n|\r|\n/g;

/** Whether two texts of one entry say the same in each line: where not, the lines that differ; undefined where there are more or fewer. */
export function differing(a: readonly Line[], b: readonly Line[]): Line[] | undefined {
  if (a.length !== b.length) return undefined;
  return a.filter((line, i) => {
    const other = b[i]!.items;
    return line.items.length !== other.length || !line.items.every((item, n) => sameItem(item, other[n]!));
  });
}

const sameItem = (a: Item, b: Item): boolean =>
  a.image === b.image && a.token?.tokenTypeIdx === b.token?.tokenTypeIdx;

/** Finds out how far in each line begins, and which are kept as typed. */
export function settleLines(
  lines: readonly Line[],
  entries: readonly Entry[],
  complaints: readonly Complaint[],
): void {
  for (const complaint of complaints) keep(lines, complaint);
  for (const entry of entries) settleEntry(lines, entry);
  settleComments(lines);
}

const keep = (lines: readonly Line[], span: Span): void => {
  for (const line of touched(lines, span)) line.kept = true;
};

function settleEntry(lines: readonly Line[], entry: Entry): void {
  // Of a line whose first word opens nothing, nothing was read; else its head alone may be what was not.
  if (entry.kind === "unknown") keep(lines, Object.hasOwn(HEADS, entry.keyword.text) ? entry.keyword : entry);
  for (const clause of entry.clauses) {
    if (clause.kind === "broken") keep(lines, clause);
    // A list that goes on over its line.
    const [first] = touched(lines, clause);
    for (const line of begunIn(lines, clause)) line.level = first!.level + 1;
  }
  if (entry.kind !== "assembly") return;
  const read = new Set<Line>();
  for (const inner of entry.body) {
    for (const line of touched(lines, inner)) read.add(line);
    for (const line of begunIn(lines, inner)) line.level = 2;
    settleEntry(lines, inner);
  }
  for (const line of begunIn(lines, entry)) if (!read.has(line)) line.kept = true;
}

/**
 * A comment on a line of its own is of what follows it. At the end of an entry it is of the next one, but where it was
 * indented and stands right under the entry's own lines.
 */
function settleComments(lines: readonly Line[]): void {
  const first = lines.findIndex((line) => !isComment(line));
  const last = lines.findLastIndex((line) => !isComment(line));
  let below = 0;
  for (let i = lines.length - 1; i >= 0; i--) {
    const line = lines[i]!;
    if (!isComment(line)) below = line.level;
    else {
      line.level = first < i && i < last ? below : 0;
      line.kept = false;
    }
  }
  const above = lines[last];
  if (!above) return;
  const most = above.kept || above.level === 0 ? 1 : above.level;
  for (const line of lines.slice(last + 1)) {
    if (line.parted || line.typed === "") return;
    line.level = columns(line.typed) < columns(above.typed) ? 1 : most;
  }
}

const isComment = (line: Line): boolean => line.items[0]!.token === undefined;

const columns = (blanks: string): number => blanks.replaceAll("\t", "    ").length;

/** The lines of which a span has a part. */
function* touched(lines: readonly Line[], { start, end }: Span): Generator<Line> {
  for (let i = Math.max(0, firstAfter(lines, start) - 1); i < lines.length; i++) {
    const line = lines[i]!;
    if (i > 0 && line.items[0]!.start >= Math.max(end, start + 1)) return;
    yield line;
  }
}

/** The lines that begin inside a span, behind its start. */
function* begunIn(lines: readonly Line[], { start, end }: Span): Generator<Line> {
  for (let i = firstAfter(lines, start); i < lines.length && lines[i]!.items[0]!.start < end; i++)
    yield lines[i]!;
}

/** The first line that begins behind an offset. */
function firstAfter(lines: readonly Line[], offset: number): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lines[middle]!.items[0]!.start > offset) high = middle;
    else low = middle + 1;
  }
  return low;
}

export const endOfLine = (line: Line): number => line.items[line.items.length - 1]!.end;
