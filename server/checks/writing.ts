/** How checks write lists and lengths, in sentences and in edits of the text. */
import { lineStart, lineStop, linesOf, nextLine } from "../../grammar/lines";
import { wordsOf } from "../../grammar/messages";
import { Comma, tokenize } from "../../grammar/tokens";
import type { Entry, Tree } from "../../grammar/tree";
import { type At, toldName } from "../plan";
import {
  type Display,
  exactly,
  exactOf,
  fraction,
  LENGTH,
  lengthText,
  type Quantity,
  sameDimension,
  unitNamed,
} from "../units";
import type { Joint, Worked } from "../worked";
import type { Edit, Slot } from "./check";

/** `a, b and c` */
export const allOf = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;

/** What stands in the text there, on one line and not too long. A sum's own place may leave out parentheses round its ends. */
export function textAt({ loaded }: Worked, at: At): string {
  const text = loaded.files.find((f) => f.file === at.file)?.tree.text ?? "";
  let open = 0;
  let before = 0;
  for (const mark of text.slice(at.start, at.end)) {
    if (mark === "(") open++;
    if (mark === ")" && open-- === 0) {
      open = 0;
      before++;
    }
  }
  return "(".repeat(before) + wordsOf(text, at) + ")".repeat(open);
}

/** A file's own name, without the folders it lies in. */
export const baseName = (file: string): string => toldName(file).split(/[\\/]/).pop()!;

/** Two lengths that differ: to the plan's marks, or in full where the marks would make them look alike. */
export function tellApart(a: Quantity, b: Quantity, display: Display): readonly [Slot, Slot] {
  const marked = [lengthText(a, display), lengthText(b, display)] as const;
  return marked[0] === marked[1] ? [{ full: a }, { full: b }] : marked;
}

/** Two values that differ, as slots: lengths are told apart. */
export const apart = (a: Quantity, b: Quantity, display: Display): readonly [Slot, Slot] =>
  sameDimension(a.dim, LENGTH) && sameDimension(b.dim, LENGTH) ? tellApart(a, b, display) : [a, b];

/** How a joint's screws are set out: `2 at each end`, `along it, 6" on center`. */
export const setOut = ({ pattern, spacing }: Joint, display: Display): string =>
  setOutWords(pattern, spacing ? lengthText(spacing, display) : "");

/** The same from its words; `spacing` is empty where the line gives none. */
export const setOutWords = (pattern: string, spacing: string): string =>
  spacing === "" ? pattern : `${pattern}, ${spacing} on center`;

/** The first of the plan's marks at or above a length, and the last at or below it. */
export const markAbove = (q: Quantity, { mark }: Display): Quantity => {
  const marks = fraction.divide(exactOf(q), mark)!;
  return exactly(q.dim, fraction.multiply(fraction.rational(-fraction.floor(fraction.negate(marks))), mark));
};
export const markBelow = (q: Quantity, { mark }: Display): Quantity =>
  exactly(
    q.dim,
    fraction.multiply(fraction.rational(fraction.floor(fraction.divide(exactOf(q), mark)!)), mark),
  );

/** A length sold, as the yard says it: feet where it is whole feet, else to the mark. */
export function soldLength(q: Quantity, display: Display): string {
  const feet = q.exact && fraction.divide(q.exact, unitNamed("ft")!.factor);
  if (display.system === "inches" && feet && feet.d === 1n) return `${feet.n}'`;
  return lengthText(q, display);
}

/** A length on the plan's marks, as a plan writes it: `28-1/2"`, `724mm`. */
export const writtenLength = (q: Quantity, display: Display): string =>
  lengthText(q, display).replace(" mm", "mm");

export const edit = (at: At, text: string): Edit => ({ file: at.file, start: at.start, end: at.end, text });
/** An edit that adds text just after a place. */
export const editAfter = (at: At, text: string): Edit => edit({ ...at, start: at.end }, text);

const treeIn = (file: string, { loaded }: Worked): Tree | undefined =>
  loaded.files.find((f) => f.file === file)?.tree;

/** The entry of a place, in an assembly the one inside of it. */
export function entryAt(at: At, worked: Worked): Entry | undefined {
  const within = (entries: readonly Entry[]): Entry | undefined => {
    let [low, high] = [0, entries.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (entries[middle]!.start <= at.start) low = middle + 1;
      else high = middle;
    }
    const entry = entries[low - 1];
    if (!entry || entry.end < at.end) return undefined;
    return (entry.kind === "assembly" ? within(entry.body) : undefined) ?? entry;
  };
  return within(treeIn(at.file, worked)?.entries ?? []);
}

/** The edit that takes an entry out of its file, with all its lines; the comments on them stay, each on its own line. */
export function entryOut(file: string, entry: Entry, worked: Worked): Edit {
  const { text = "", comments = [] } = treeIn(file, worked) ?? {};
  const { start, end } = linesOf(text, entry);
  const kept = comments.filter((c) => start <= c.start && c.start < end);
  const lines = kept.map((c) => indentOf(text, c.start) + text.slice(c.start, nextLine(text, c.start)));
  return { file, start, end, text: lines.join("") };
}

const indentOf = (text: string, offset: number): string =>
  /^[ \t]*/.exec(text.slice(lineStart(text, offset), offset))![0];

/** The edits that take a clause out: with a comma beside it on its line, else with the comma above, else with its line. */
export function clauseOut(at: At, worked: Worked): Edit[] {
  const { file, start, end } = at;
  const { text = "" } = treeIn(file, worked) ?? {};
  const out = (from: number, to: number): Edit => ({ file, start: from, end: to, text: "" });
  const line = lineStart(text, start);
  const before = text.slice(line, start).trimEnd();
  if (before.endsWith(",")) return [out(line + before.length - 1, end)];
  const stop = lineStop(text, end);
  const behind = /^[ \t]*,[ \t]*/.exec(text.slice(end, stop));
  if (behind && end + behind[0].length < stop) return [out(start, end + behind[0].length)];
  if (behind && before !== "") return [out(line + before.length, stop)];
  if (before !== "" || line === start) return [];
  if (behind) return [out(line, nextLine(text, end))];
  const comma = commaAbove(at, text, worked);
  if (comma !== undefined && text.slice(comma + 1, start).trim() === "") return [out(comma, end)];
  const rest = text.slice(end, stop);
  if (rest.trim() !== "" && !COMMENT.test(rest)) return [];
  const own =
    rest.trim() === "" ? out(line, nextLine(text, end)) : out(start, stop - rest.trimStart().length);
  return comma === undefined ? [own] : [out(comma, comma + 1), own];
}

const COMMENT = /^[ \t]*#(\s|$)/;

/** The comma that ends what a line above says, of the same entry: none inside of a comment or of words to people. */
function commaAbove(at: At, text: string, worked: Worked): number | undefined {
  const entry = entryAt(at, worked);
  if (!entry) return undefined;
  const from = lineStart(text, entry.start);
  const last = tokenize(text.slice(from, at.start)).tokens.at(-1);
  return last?.tokenType === Comma ? from + last.startOffset : undefined;
}
