/** The problems of one plan as an editor lists them, with the places they concern. */

import type { Span } from "../../grammar/tree";
import type { ProblemClass } from "../checks";
import { sayProblem, wholeText } from "../checks/say";
import type { At } from "../plan";
import type { Checked } from "./checked";

export interface Diagnostic {
  readonly range: Span;
  readonly code: string;
  readonly class: ProblemClass;
  readonly message: string;
  readonly related: readonly { readonly message: string; readonly at: At }[];
  readonly cures: readonly string[];
}

/**
 * All open problems, at their places in the plan's own file. One that lies in another file (its shop, or what it brings)
 * is told at the line that leads there; hints in other files are left to those files.
 */
export function diagnosticsOf(plan: Checked): Diagnostic[] {
  const { display } = plan.worked.settings;
  return plan.problems.flatMap((problem): Diagnostic[] => {
    const here = problem.at.file === plan.file;
    if (!here && problem.class === "hint") return [];
    const said = sayProblem(problem, display);
    const hazard = problem.class === "hazard" ? "Hazard: " : "";
    const where = here ? "" : `In ${problem.at.file}, ${lineOf(plan, problem.at)}: `;
    const related = problem.related.map((r, i) => ({ message: said.related[i]!, at: r.at }));
    return [
      {
        range: here ? { start: problem.at.start, end: problem.at.end } : leadingTo(plan, problem.at.file),
        code: problem.code,
        class: problem.class,
        message: hazard + where + wholeText(said),
        related: here ? related : [{ message: said.headline, at: problem.at }, ...related],
        cures: said.cures,
      },
    ];
  });
}

function lineOf(plan: Checked, at: At): string {
  const text = plan.worked.loaded.files.find((f) => f.file === at.file)?.tree.text ?? "";
  return `line ${text.slice(0, at.start).split(/\r\n|\r|\n/).length}`;
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
