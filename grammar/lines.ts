/** Lines of a plan's text: where a whole entry begins and ends, and with what its lines are ended. */
import type { Span } from "./tree";

/** How the lines of a text end. */
export const lineEnd = (text: string): string => /\r\n|\r|\n/.exec(text)?.[0] ?? "\n";

/** Where the line begins in which an offset stands. */
export function lineStart(text: string, offset: number): number {
  let at = offset;
  while (at > 0 && !isBreak(text, at - 1)) at--;
  return at;
}

/** Where the text of that line ends, before what ends it. */
export function lineStop(text: string, offset: number): number {
  let at = offset;
  while (at < text.length && !isBreak(text, at)) at++;
  return at;
}

/** Where the next line begins; the end of the text where there is none. */
export function nextLine(text: string, offset: number): number {
  const stop = lineStop(text, offset);
  return stop + (text.startsWith("\r\n", stop) ? 2 : stop < text.length ? 1 : 0);
}

/** The lines of an entry, with the indented ones under it and what ends the last. */
export function linesOf(text: string, entry: Span): Span {
  let end = nextLine(text, Math.max(entry.start, entry.end));
  while (end < text.length && /^[ \t]+[^\s]/.test(text.slice(end, lineStop(text, end))))
    end = nextLine(text, end);
  return { start: lineStart(text, entry.start), end };
}

/** Where the comment lines begin that stand directly above a line; the line itself where there are none. */
export function commentsAbove(text: string, start: number): number {
  let at = start;
  while (at > 0) {
    const above = lineStart(text, at - (text.startsWith("\r\n", at - 2) ? 2 : 1));
    if (!/^#(\s|$)/.test(text.slice(above, lineStop(text, above)))) break;
    at = above;
  }
  return at;
}

/** A line set into a text where another begins, or behind the last of them: what has to be put there. */
export function asLine(text: string, at: number, line: string): string {
  const end = lineEnd(text);
  return at > 0 && !isBreak(text, at - 1) ? `${end}${line}${end}` : `${line}${end}`;
}

const isBreak = (text: string, at: number): boolean => text[at] === "\n" || text[at] === "\r";
