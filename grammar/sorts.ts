/** What sort of word or mark each token is, as colours tell them apart. Whatever colours a plan's text is held to this. */
import type { TokenType } from "chevrotain";
import {
  AtLeast,
  AtMost,
  By,
  CommaNumber,
  Day,
  Equals,
  Gauge,
  K,
  Less,
  Literal,
  Minus,
  More,
  Plus,
  Slash,
  Star,
  VOCABULARY,
  Word,
  Words,
} from "./tokens";

export type Sort =
  | "word"
  /** A word that some rule asks for; it may be a name all the same. */
  | "keyword"
  | "because"
  | "number"
  | "sign"
  | "words to people"
  | "none";

/** The sort of a token's type. */
export const sortOf = (type: TokenType): Sort => SORTS.get(type) ?? "none";

const SIGNS: ReadonlySet<TokenType> = new Set([
  By,
  Plus,
  Minus,
  Star,
  Slash,
  AtMost,
  AtLeast,
  Less,
  More,
  Equals,
]);

function sorted(type: TokenType): Sort {
  if (type === Word) return "word";
  if (type === K.because) return "because";
  if (type === Words) return "words to people";
  if (type.CATEGORIES?.includes(Word)) return "keyword";
  if (type === Gauge || type === CommaNumber || type === Day || type.CATEGORIES?.includes(Literal))
    return "number";
  return SIGNS.has(type) ? "sign" : "none";
}

const SORTS: ReadonlyMap<TokenType, Sort> = new Map(VOCABULARY.map((type) => [type, sorted(type)]));
