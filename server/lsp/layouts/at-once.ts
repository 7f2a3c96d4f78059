/** A plan with the best layouts there are, by whoever can wait for them. */
import { EFFORT, improved } from "../../cutting/improve";
import type { Reader } from "../../plan";
import { type Evaluated, type EvaluateOptions, evaluate, layoutJobs, withLayouts } from "../../service";
import { keptLayouts } from "./kept";

/** What an editor ends with after the same effort; with none, what it begins with. */
export function evaluatedBest(
  file: string,
  text: string,
  read: Reader,
  options: Omit<EvaluateOptions, "layouts"> = {},
  effort = EFFORT,
): Evaluated {
  return laidOutBest(evaluate(file, text, read, options), effort);
}

function laidOutBest(first: Evaluated, effort: number): Evaluated {
  const jobs = effort > 0 ? layoutJobs(first) : [];
  if (jobs.length === 0) return first;
  const layouts = keptLayouts();
  for (const job of jobs) layouts.keep(job, improved(job, effort));
  return withLayouts(first, layouts);
}

/**
 * For its problems alone. Unless an effort is asked for, better layouts are looked for only where the first answers lead
 * to a problem that depends on them: else most of the time would go into layouts that nobody sees. What only a better
 * layout would lead to, a hint about a large rest, is not told then.
 */
export function evaluatedForProblems(
  file: string,
  text: string,
  read: Reader,
  options: Omit<EvaluateOptions, "layouts">,
  effort: number | undefined,
): Evaluated {
  if (effort !== undefined) return evaluatedBest(file, text, read, options, effort);
  const first = evaluate(file, text, read, options);
  const told = [...first.problems, ...first.accepted.map(({ problem }) => problem)];
  return told.some(({ code }) => OF_LAYOUTS.has(code)) ? laidOutBest(first, EFFORT) : first;
}

/** Problems that another layout could tell otherwise. */
const OF_LAYOUTS: ReadonlySet<string> = new Set([
  "cheaper-with",
  "not-enough-on-hand",
  "offcut-wasted",
  "over-budget",
]);
