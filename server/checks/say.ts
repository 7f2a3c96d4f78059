/** A problem in words, made once for the editor, the command line and the sheet. */
import type { Display } from "../units";
import type { Problem } from "./check";
import { problemText } from "./index";

export interface Said {
  /** One sentence that stands alone in a list. */
  readonly headline: string;
  readonly assumed: readonly string[];
  readonly cures: readonly string[];
  readonly related: readonly string[];
}

export function sayProblem(problem: Problem, display: Display): Said {
  const say = (what: Problem["assumed"][number]) => problemText(problem.code, what, display);
  return {
    headline: say(problem),
    assumed: problem.assumed.map(say),
    cures: problem.cures.map(say),
    related: problem.related.map(say),
  };
}

/** The whole text on lines: the headline, what was taken for granted, then the ways out. */
export function wholeText({ headline, assumed, cures }: Said): string {
  return [headline, ...assumed.map((a) => `Taken for granted: ${a}`), ...cures.map((c) => `Cure: ${c}`)].join(
    "\n",
  );
}
