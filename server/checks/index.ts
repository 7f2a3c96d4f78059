/** All checks, by code in alphabetical order; running them; what is accepted. */
import type { Display } from "../units";
import type { Worked } from "../worked";
import { type Check, type Problem, problemsOf, type Says, textOf } from "./check";
import { ringOpen } from "./ring-open";
import { screwHoldsLittle } from "./screw-holds-little";
import { screwPokesThrough } from "./screw-pokes-through";
import { unknownName } from "./unknown-name";

export type { Check, Cure, Edit, Problem, ProblemClass, ProblemNumber, Says, Slot } from "./check";

export const CHECKS: readonly Check[] = [ringOpen, screwHoldsLittle, screwPokesThrough, unknownName];

const BY_CODE = new Map(CHECKS.map((c) => [c.code, c]));
export const checkOf = (code: string): Check | undefined => BY_CODE.get(code);

export interface Judged {
  /** Open problems, in the order of the text. */
  readonly problems: readonly Problem[];
  /** Those that an `accept` line lets stand, each with its reason. */
  readonly accepted: readonly { readonly problem: Problem; readonly because: string }[];
}

/** Runs every check, and sets aside what the plan accepts. An error is never accepted. */
export function judge(worked: Worked): Judged {
  const found = CHECKS.flatMap((check) => problemsOf(check, worked));
  const order = new Map(worked.loaded.files.map((f, i) => [f.file, i]));
  found.sort(
    (a, b) =>
      (order.get(a.at.file) ?? 0) - (order.get(b.at.file) ?? 0) ||
      a.at.start - b.at.start ||
      (a.code < b.code ? -1 : a.code > b.code ? 1 : 0),
  );
  const problems: Problem[] = [];
  const accepted: { problem: Problem; because: string }[] = [];
  for (const problem of found) {
    const because = reasonFor(problem, worked);
    if (because) accepted.push({ problem, because });
    else problems.push(problem);
  }
  return { problems, accepted };
}

function reasonFor(problem: Problem, worked: Worked): string | undefined {
  if (problem.class === "error") return undefined;
  const line = worked.accepted.find((a) => accepts(a, problem));
  return line?.because;
}

/** Whether an accept line (with a reason) is about this problem. */
export function accepts(line: Worked["accepted"][number], problem: Pick<Problem, "code" | "about">): boolean {
  if (line.code !== problem.code || line.because === "") return false;
  return (
    line.on === "" ||
    problem.about.some((name) => name === line.on || `${name}s` === line.on || `${name}es` === line.on)
  );
}

/** A problem's own sentence, a cure's title, or any other of its texts, in the plan's units. */
export function problemText(code: string, says: Says, display: Display): string {
  const check = checkOf(code);
  return check ? textOf(check, says, display) : says.says;
}
