/** The lines of a text, without the marks that end them. */
import type { Span } from "./tree";

/** The line on which an offset stands. */
export function lineAt(text: string, offset: number): Span {
  let start = Math.max(0, Math.min(offset, text.length));
  // Between the two marks of one line break it is still the line before them.
  if (text[start] === "\n" && text[start - 1] === "\r") start--;
  let end = start;
  while (start > 0 && !isMark(text[start - 1]!)) start--;
  while (end < text.length && !isMark(text[end]!)) end++;
  return { start, end };
}

/** The line above a line; undefined above the first. */
export const lineAbove = (text: string, { start }: Span): Span | undefined =>
  start === 0 ? undefined : lineAt(text, text.startsWith("\r\n", start - 2) ? start - 2 : start - 1);

/** The line below a line; undefined below the last. */
export const lineBelow = (text: string, { end }: Span): Span | undefined =>
  end >= text.length ? undefined : lineAt(text, text.startsWith("\r\n", end) ? end + 2 : end + 1);

const isMark = (letter: string): boolean => letter === "\n" || letter === "\r";
