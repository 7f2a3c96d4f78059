/** How an editor asks for a sheet to be shown: in which units, for whom, in which language. */
import { type Evaluated, inUnits } from "../service";
import type { SheetReader } from "../sheet/parts";
import { SHEET_LANGUAGES, type SheetLanguage } from "../sheet/words";
import { textIn } from "./untyped";

export interface SheetChoices {
  /** `plan`: as the plan has them. */
  readonly units: "plan" | "inches" | "millimetres";
  readonly reader: SheetReader;
  readonly language: SheetLanguage;
}

/** What was asked for; in place of what is not known, the plan's units, a builder, English. `language` is a tag such as `pt-br`. */
export function choicesIn(asked: unknown): SheetChoices {
  const one = <T extends string>(name: string, known: readonly [T, ...T[]]): T =>
    known.find((choice) => choice === textIn(asked, name)) ?? known[0];
  return {
    units: one("units", ["plan", "inches", "millimetres"]),
    reader: one("reader", ["builder", "stations", "learners"]),
    language: languageFor(textIn(asked, "language")),
  };
}

/** The plan with its lengths in those units; the plan itself stays as it is. */
export const inChosenUnits = (evaluated: Evaluated, { units }: SheetChoices): Evaluated =>
  units === "plan" ? evaluated : inUnits(evaluated, units);

/** That very language, or it as another country speaks it; else the first there is. */
export function languageFor(tag: string): SheetLanguage {
  const wanted = tag.toLowerCase();
  const spoken = (of: string): string => of.toLowerCase().split("-")[0]!;
  return (
    SHEET_LANGUAGES.find((own) => own.toLowerCase() === wanted) ??
    SHEET_LANGUAGES.find((own) => spoken(own) === spoken(wanted)) ??
    SHEET_LANGUAGES[0]
  );
}
