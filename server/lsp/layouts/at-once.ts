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
  const first = evaluate(file, text, read, options);
  const jobs = effort > 0 ? layoutJobs(first) : [];
  if (jobs.length === 0) return first;
  const layouts = keptLayouts();
  for (const job of jobs) layouts.keep(job, improved(job, effort));
  return withLayouts(first, layouts);
}
