/** The problems of one plan as an editor lists them, with the places they concern. */

import type { Span } from "../../grammar/tree";
import { baseName, type Language, type Problem, type ProblemClass, problemText, type Says } from "../checks";
import { type At, holderOf } from "../plan";
import type { Checked } from "./checked";
import { DIAGNOSTIC_WORDS } from "./diagnostics-words";

export interface Diagnostic {
  readonly range: Span;
  readonly code: string;
  readonly class: ProblemClass;
  /** The headline, then a line for each thing taken for granted, then one for each way out. */
  readonly message: string;
  readonly related: readonly { readonly message: string; readonly at: At }[];
  readonly cures: readonly string[];
}

/** The most problems told of one file; one more then says how many are left. */
export const MOST_DIAGNOSTICS = 1000;

/**
 * The open problems, at their places in the plan's own file. One that lies in another file (its shop, or what it brings)
 * is told at the line that leads there; hints in other files are left to those files.
 */
export function diagnosticsOf(plan: Checked, language: Language = "en"): Diagnostic[] {
  const told = toldOf(plan);
  const list = told.slice(0, MOST_DIAGNOSTICS).map((p) => diagnosticOf(plan, p, language));
  const next = told[MOST_DIAGNOSTICS];
  if (!next) return list;
  const message = DIAGNOSTIC_WORDS[language].more(told.length - MOST_DIAGNOSTICS);
  return [...list, { ...diagnosticOf(plan, next, language), message, related: [], cures: [] }];
}

const isHere = ({ file }: Checked, at: At): boolean => holderOf(at.file) === file;

/** Those of a plan's problems that are told beside its text. */
export const toldOf = (plan: Checked): readonly Problem[] =>
  plan.problems.filter((p) => isHere(plan, p.at) || p.class !== "hint");

/** Where in the plan's own text a problem is told. */
export const placeOf = (plan: Checked, { at }: Problem): Span =>
  isHere(plan, at) ? { start: at.start, end: at.end } : leadingTo(plan, at.file);

function diagnosticOf(plan: Checked, problem: Problem, language: Language): Diagnostic {
  const words = DIAGNOSTIC_WORDS[language];
  const { display } = plan.worked.settings;
  const here = isHere(plan, problem.at);
  const say = (what: Says) => problemText(problem.code, what, display, language);
  const headline = say(problem);
  const cures = problem.cures.map(say);
  const placed = here
    ? headline
    : words.elsewhere(baseName(problem.at.file), lineOf(plan, problem.at), headline);
  const related = problem.related.map((r) => ({ message: say(r), at: r.at }));
  const lines = [
    problem.class === "hazard" ? words.hazard(placed) : placed,
    ...problem.assumed.map((a) => words.assumed(say(a))),
    ...cures.map(words.cure),
  ];
  return {
    range: placeOf(plan, problem),
    code: problem.code,
    class: problem.class,
    message: lines.join("\n"),
    related: here ? related : [{ message: headline, at: problem.at }, ...related],
    cures,
  };
}

function lineOf(plan: Checked, at: At): number {
  const text = plan.worked.loaded.files.find((f) => f.file === at.file)?.tree.text ?? "";
  return text.slice(0, at.start).split(/\r\n|\r|\n/).length;
}

/** The `shop` or `bring` line that a file comes by: the one that names it, else the first of its kind. */
function leadingTo({ worked }: Checked, file: string): Span {
  const [main, ...others] = worked.loaded.files;
  const role = others.find((f) => f.file === file)?.role;
  const paths = (main?.tree.entries ?? []).flatMap((e) =>
    e.kind === "shop" || e.kind === "bring" ? [{ kind: e.kind, path: e.path }] : [],
  );
  const names = (path: string) => file.replaceAll("\\", "/").endsWith(path.replace(/^(\.{0,2}[\\/])+/, ""));
  const found =
    paths.find(({ path }) => path.text !== "" && names(path.text)) ??
    paths.find(({ kind }) => kind === (role === "shop" ? "shop" : "bring")) ??
    paths[0];
  return found ? { start: found.path.start, end: found.path.end } : { start: 0, end: 0 };
}
