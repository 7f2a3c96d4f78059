/**
 * What a problem is, and how a check is written: one file a code, which says what it finds, in which words, how it can
 * be cured, and its page. A check reads the worked-out plan; it computes no geometry or load of its own.
 */
import type { At, Says } from "../plan";
import type { Display, Quantity } from "../units";
import type { Worked } from "../worked";
import { type Language, type Templates, written } from "./telling";
import { TONGUES } from "./tongues";

export type { Says, Slot, Slots } from "../plan";

/** error: cannot be built; hazard: someone could be hurt; warning: look at it; hint: style. */
export type ProblemClass = "error" | "hazard" | "warning" | "hint";

export interface ProblemNumber {
  readonly name: string;
  readonly value: Quantity;
  readonly source: string;
}

export interface Edit {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A way out. It never raises a limit, lowers a density, removes a load or drops a check. Without edits it is only told. */
export interface Cure extends Says {
  readonly edits: readonly Edit[];
}

export interface Problem extends Says {
  readonly code: string;
  readonly class: ProblemClass;
  readonly at: At;
  /** Names of the things it concerns, for `accept CODE on THING`. */
  readonly about: readonly string[];
  readonly numbers: readonly ProblemNumber[];
  readonly related: readonly (Says & { readonly at: At })[];
  readonly assumed: readonly Says[];
  readonly cures: readonly Cure[];
}

/** What a check's run gives; the code and class are the check's own unless a finding lowers or raises its class. */
export type Finding = Says &
  Pick<Problem, "at"> &
  Partial<Pick<Problem, "class" | "about" | "numbers" | "related" | "assumed" | "cures">>;

export interface Check {
  readonly code: string;
  readonly class: ProblemClass;
  /** The page's headline: "A screw comes out of the far side". */
  readonly title: string;
  /** Markdown: what it means, then a plan that has the problem, then the same mended (two `sawbuck` blocks). */
  readonly page: string;
  readonly templates: Templates;
  /** Reads the plan; `found` is what the checks before it found, for the one that looks at `accept` lines. */
  readonly run: (worked: Worked, found: readonly Problem[]) => readonly Finding[];
}

/** Completes what a check found. */
export function problemsOf(check: Check, worked: Worked, found: readonly Problem[] = []): Problem[] {
  return check.run(worked, found).map((found) => ({
    about: [],
    numbers: [],
    related: [],
    assumed: [],
    cures: [],
    ...found,
    code: check.code,
    class: found.class ?? check.class,
  }));
}

/** The text of a template with its slots, values written to the plan's marks. */
export function textOf(check: Check, what: Says, display: Display, language: Language = "en"): string {
  const tongue = TONGUES[language];
  const template = tongue.problem?.(check.code, what.says) ?? check.templates[what.says] ?? what.says;
  return written(template, what.slots, display, tongue);
}

/** The headline of a problem's page. */
export const titleOf = ({ code, title }: Check, language: Language = "en"): string =>
  TONGUES[language].title?.(code) ?? title;
