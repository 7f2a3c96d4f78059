/** How checks write lists and lengths, in sentences and in edits of the text. */
import { linesOf } from "../../grammar/lines";
import { wordsOf } from "../../grammar/messages";
import type { Entry } from "../../grammar/tree";
import type { At } from "../plan";
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
export const baseName = (file: string): string => file.split(/[\\/]/).pop()!;

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

const textIn = (file: string, { loaded }: Worked): string =>
  loaded.files.find((f) => f.file === file)?.tree.text ?? "";

/** The edit that takes an entry out of its file, with all its lines. */
export const entryOut = (file: string, entry: Entry, worked: Worked): Edit => ({
  file,
  ...linesOf(textIn(file, worked), entry),
  text: "",
});

/** The edits that take a clause out: with the comma before it, else with its line or with the comma behind it. */
export function clauseOut({ file, start, end }: At, worked: Worked): Edit[] {
  const text = textIn(file, worked);
  const comma = /,\s*$/.exec(text.slice(0, start));
  if (comma) return [{ file, start: comma.index, end, text: "" }];
  const behind = /^\s*,\s*/.exec(text.slice(end));
  if (behind) return [{ file, start, end: end + behind[0].length, text: "" }];
  const line = /(\r\n|\r|\n)[ \t]+$/.exec(text.slice(0, start));
  const alone = /^[ \t]*(\r|\n|$)/.exec(text.slice(end));
  return line && alone ? [{ file, start: line.index, end, text: "" }] : [];
}
