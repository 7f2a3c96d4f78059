/** Which drawing stands beside a hover's words: of the built thing, of one piece as it is cut, or of a word of the trade. */
import type { Language } from "../checks";
import type { Standing } from "./at";
import type { Checked } from "./checked";
import type { Term } from "./glossary";
import { namedAt } from "./pieces-at";
import { declaredAs } from "./values";

export type HoverPicture =
  /** The built thing, these pieces pointed out. */
  | { readonly of: "pieces"; readonly title: string; readonly pieces: readonly string[] }
  /** One piece of a part, as it lies on the bench. */
  | { readonly of: "part"; readonly title: string; readonly part: string }
  | { readonly of: "term"; readonly title: string; readonly drawing: string };

interface Titles {
  readonly placed: (name: string) => string;
  readonly cut: (name: string) => string;
}

const TITLES: Readonly<Record<Language, Titles>> = {
  en: { placed: (name) => `${name} in the drawing`, cut: (name) => `${name} as it is cut` },
  fr: { placed: (name) => `${name} dans le dessin`, cut: (name) => `${name} une fois coupé` },
};

/** A part's own line shows the piece, other lines show where it stands; a word shows what it means. */
export function pictureAt(
  plan: Checked,
  offset: number,
  { entry, spot }: Standing,
  term: Term | undefined,
  language: Language,
): HoverPicture | undefined {
  const titles = TITLES[language];
  const { worked } = plan;
  const cut = (name: string): HoverPicture => ({ of: "part", title: titles.cut(name), part: name });
  if (entry?.kind === "part" && (spot.is === "entry word" || spot.is === "declared"))
    return cut(entry.name.text);
  const named = namedAt(plan, offset);
  if (named) return { of: "pieces", title: titles.placed(named.name), pieces: named.pieces };
  const used = spot.is === "use" ? declaredAs(worked, spot.span.text) : undefined;
  if (used?.kind === "part") return cut(used.name);
  return term && { of: "term", title: term.words[language][0]!, drawing: term.drawing };
}
