/** How many blanks stand between two tokens of a line: one, or none at a comma, inside parentheses and behind a sign. */
import type { IToken } from "chevrotain";
import { Close, Comma, Minus, Open } from "./tokens";
import type { Entry, Span } from "./tree";

/** What stands between two tokens on one line. */
export function blankBetween(a: IToken, b: IToken, at: number, signs: Signs): "" | " " {
  const is = { a: a.tokenType, b: b.tokenType };
  if (is.b === Comma || is.b === Close || is.a === Open) return "";
  if (is.a === Minus && signs.negative.has(at)) return "";
  return is.b === Open && signs.called.has(at) ? "" : " ";
}

/** Two blanks before a comment behind a line: with one, `#` and a word would look like one more thing the line says. */
export const BEFORE_COMMENT = "  ";

/** Where names of functions and signs of negative values begin: `min (a, b)` and `- 1"` need no blank, `round (a)` and `a - 1"` do. */
export interface Signs {
  readonly called: ReadonlySet<number>;
  readonly negative: ReadonlySet<number>;
}

export function signsIn(entries: readonly Entry[]): Signs {
  const called = new Set<number>();
  const negative = new Set<number>();
  const look = (node: Visited): void => {
    if (node.kind === "call") called.add(node.name!.start);
    if (node.kind === "negative") negative.add(node.start!);
    for (const value of Object.values(node)) if (typeof value === "object" && value !== null) look(value);
  };
  for (const entry of entries) look(entry as Visited);
  return { called, negative };
}

interface Visited {
  readonly kind?: string;
  readonly name?: Span;
  readonly start?: number;
}

/** Whether that is a token before or behind which the tree is asked. */
export const isSign = (token: IToken | undefined): boolean =>
  token !== undefined && (token.tokenType === Open || token.tokenType === Minus);
