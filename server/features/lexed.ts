/**
 * The words and marks of a piece of text, comments among them, each with its sort. Those of pieces asked for lately are
 * kept by their text: a keystroke changes one piece, and splitting a long plan takes longer than colouring it.
 */
import { detached } from "../../grammar/chunks";
import { type Sort, sortOf } from "../../grammar/sorts";
import { tokenize } from "../../grammar/tokens";

export interface Lexeme {
  readonly image: string;
  /** From where the piece begins. */
  readonly start: number;
  readonly sort: Sort | "comment";
}

/** In the order written. The answer depends on the text alone. */
export function lexed(text: string): readonly Lexeme[] {
  const recent = young.get(text);
  if (recent) return recent;
  // What is cut out of a long text would keep all of that alive.
  const own = detached(text);
  const found = old.get(text) ?? split(own);
  if (held > MOST_HELD) {
    old = young;
    young = new Map();
    held = 0;
  }
  young.set(own, found);
  held += text.length;
  return found;
}

let young = new Map<string, readonly Lexeme[]>();
let old = new Map<string, readonly Lexeme[]>();
let held = 0;
/** In characters of text; what was asked for before those is kept as well, up to as much again. */
const MOST_HELD = 200_000;

function split(text: string): readonly Lexeme[] {
  const { tokens, comments } = tokenize(text);
  const all = tokens.map(
    ({ image, startOffset, tokenType }): Lexeme => ({ image, start: startOffset, sort: sortOf(tokenType) }),
  );
  for (const { image, startOffset } of comments) all.push({ image, start: startOffset, sort: "comment" });
  return comments.length > 0 ? all.sort((a, b) => a.start - b.start) : all;
}
