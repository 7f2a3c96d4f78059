/** What hints say between their figures, in every language. Short: they stand in the text of the plan. */
import type { Language } from "../checks";

interface HintWords {
  /** Before a figure that is rounded where it is shown. */
  readonly about: (figure: string) => string;
  /** How many of a part there are, behind what it is cut from. */
  readonly pieces: (count: number) => string;
  /** What a part whose line gives no length comes to, tip to tip. */
  readonly long: (length: string) => string;
  /** What a piece is cut to before it is fitted. */
  readonly cutFirst: (length: string) => string;
  /** How many are in a row, and the gap between them. */
  readonly row: (count: number) => string;
  readonly apart: (gap: string) => string;
  readonly tight: string;
  /** How many screws a line takes. */
  readonly inAll: (count: number) => string;
  /** What goes into a box, up to its rim. */
  readonly holds: (volume: string) => string;
}

const ENGLISH: HintWords = {
  about: (figure) => `about ${figure}`,
  pieces: (count) => (count === 1 ? "just 1" : `${count} of them`),
  long: (length) => `${length} long`,
  cutFirst: (length) => `first cut ${length}`,
  row: (count) => (count === 1 ? "just 1" : String(count)),
  apart: (gap) => `${gap} apart`,
  tight: "tight",
  inAll: (count) => `${count} in all`,
  holds: (volume) => `holds ${volume}`,
};

const FRENCH: HintWords = {
  about: (figure) => `environ ${figure}`,
  pieces: (count) => (count === 1 ? "une seule" : `${count} pièces`),
  long: (length) => `${length} de long`,
  cutFirst: (length) => `d’abord ${length}`,
  row: (count) => (count === 1 ? "1 seule" : String(count)),
  apart: (gap) => `jour ${gap}`,
  tight: "jointives",
  inAll: (count) => `${count} en tout`,
  holds: (volume) => `contient ${volume}`,
};

export const HINT_WORDS: Readonly<Record<Language, HintWords>> = { en: ENGLISH, fr: FRENCH };
