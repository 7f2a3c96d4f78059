/** One word of the trade: its spellings, what teaches it to somebody who never held a saw, and the drawing that shows it. */
import type { Language } from "../../checks";

export interface Term {
  /** Tells it from all others. */
  readonly key: string;
  /** In each language, the first as it is called, then its other spellings. */
  readonly words: Readonly<Record<Language, readonly string[]>>;
  /** Two sentences. */
  readonly says: Readonly<Record<Language, string>>;
  /** Which drawing shows it: a key of `server/sheet/teach/`. */
  readonly drawing: string;
  /** In these languages it is a word of the trade and nothing else: there it is told in comments and in words to people too. */
  readonly prose: readonly Language[];
  /** Something that a plan may call a part by. */
  readonly piece: boolean;
}

interface Written {
  readonly en: string;
  readonly fr: string;
}

type Kind = "prose" | "prose fr" | "piece";

/** A row of the tables: spellings stand in one text, between commas. */
export function term(
  key: string,
  drawing: string,
  words: Written,
  says: Written,
  ...kinds: readonly Kind[]
): Term {
  return {
    key,
    words: { en: words.en.split(", "), fr: words.fr.split(", ") },
    says,
    drawing,
    prose: [
      ...(kinds.includes("prose") ? (["en"] as const) : []),
      ...(kinds.includes("prose fr") ? (["fr"] as const) : []),
    ],
    piece: kinds.includes("piece"),
  };
}
