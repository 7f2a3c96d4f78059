/** What stands around the texts of problems in an editor's list, in every language. */
import type { Language } from "../checks";

interface DiagnosticWords {
  readonly hazard: (headline: string) => string;
  readonly cure: (cure: string) => string;
  readonly assumed: (what: string) => string;
  readonly elsewhere: (file: string, line: number, what: string) => string;
  readonly more: (left: number) => string;
}

const ENGLISH: DiagnosticWords = {
  hazard: (headline) => `Hazard: ${headline}`,
  cure: (cure) => `Cure: ${cure}`,
  assumed: (what) => `Taken for granted: ${what}`,
  elsewhere: (file, line, what) => `In ${file}, line ${line}: ${what}`,
  more: (left) =>
    `${left} more ${left === 1 ? "problem is" : "problems are"} not listed here: mend those above first.`,
};

const FRENCH: DiagnosticWords = {
  hazard: (headline) => `Danger\u00a0: ${headline}`,
  cure: (cure) => `Remède\u00a0: ${cure}`,
  assumed: (what) => `Supposé\u00a0: ${what}`,
  elsewhere: (file, line, what) => `Dans ${file}, ligne ${line}\u00a0: ${what}`,
  more: (left) =>
    left === 1
      ? "Un autre problème n’est pas listé ici\u00a0: corrigez d’abord ceux du dessus."
      : `${left} autres problèmes ne sont pas listés ici\u00a0: corrigez d’abord ceux du dessus.`,
};

export const DIAGNOSTIC_WORDS: Readonly<Record<Language, DiagnosticWords>> = { en: ENGLISH, fr: FRENCH };
