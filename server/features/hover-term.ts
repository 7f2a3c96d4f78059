/** What a hover teaches of a word of the trade: by itself, or below what it says of the plan's own things. */
import type { Clause, Literal, Span } from "../../grammar/tree";
import type { Language } from "../checks";
import { section } from "../trade";
import { plainly } from "../units";
import type { Standing } from "./at";
import { type Term, termAt, termCalled, termOf } from "./glossary";
import { escaped } from "./markdown";

/** A word of the trade, and what teaches it. */
export function describeTerm({ words, says }: Term, language: Language): string {
  return `**${escaped(words[language][0]!)}**${language === "fr" ? "\u00a0" : ""}: ${escaped(says[language])}`;
}

/** The two sentences below what is said already. */
export const teachTerm = ({ says }: Term, language: Language): string => escaped(says[language]);

/** The term on a stretch that has no meaning of its own, or stands among words to people. */
export const termAround = termAt;

/** The term that belongs below what is told of a spot; undefined where none does. */
export function termBeside(text: string, offset: number, standing: Standing): Term | undefined {
  const term = termOn(text, offset, standing);
  // Screws that are there already have no nails to pull.
  const wood = standing.entry?.kind === "stock" || standing.entry?.kind === "sheet";
  return term?.key === "salvage" && !wood ? undefined : term;
}

function termOn(text: string, offset: number, { spot, clause }: Standing): Term | undefined {
  switch (spot.is) {
    case "declared": {
      if (isSection(spot.span.text)) return termOf("nominal");
      const term = termCalled(spot.span.text);
      return term?.piece ? term : undefined;
    }
    case "use":
      return isSection(spot.span.text) ? termOf("nominal") : undefined;
    case "literal":
      return clause?.kind === "units" ? termOf("mark") : termOfLiteral(spot.span, clause);
    case "screw":
      return spot.span.text.startsWith("#") ? termOf("gauge") : undefined;
    case "entry word":
    case "opening":
    case "property":
      return within(spot.span, termAt(text, offset, "plan") ?? termAt(text, spot.span.start, "plan"));
    case "word":
      return clause?.kind === "coating" ? termOf("coating") : undefined;
    default:
      return undefined;
  }
}

const within = (span: Span, found: ReturnType<typeof termAt>): Term | undefined =>
  found && found.start < span.end && span.start < found.end ? found.term : undefined;

/** A name in inches, which is not the real size; metric ones are. */
const isSection = (name: string): boolean => section(name.replace("×", "x"), "ps20-dry") !== undefined;

/** Of a section its name, of an angle how saws count it, of a figure its unit. */
function termOfLiteral({ form, text }: Literal, clause: Clause | undefined): Term | undefined {
  if (form === "section") return isSection(text) ? termOf("nominal") : undefined;
  if (form === "angle") return clause && SAWN.has(clause.kind) ? termOf("off square") : undefined;
  const unit = /[a-z]+$/i.exec(plainly(text))?.[0];
  return form === "measured" && unit !== undefined ? termCalled(unit) : undefined;
}

/** Clauses whose angle is one of a saw. */
const SAWN: ReadonlySet<Clause["kind"]> = new Set<Clause["kind"]>(["ends", "miters to", "bevels to"]);
