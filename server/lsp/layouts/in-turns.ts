/** A plan with the best layouts there are, found between other work: for one that is looked at only now and then. */
import { EFFORT, type LayoutJob, type LayoutNews } from "../../cutting/improve";
import { type Evaluated, layoutJobs, withLayouts } from "../../service";
import { drive } from "./driving";
import { keptLayouts } from "./kept";

/** So long at a time, other requests wait, in ms. */
const SLICE_MS = 8;

/** Keeps what it has found for the next time that it is asked for. */
export function laidOutInTurns(): (first: Evaluated) => Promise<Evaluated> {
  const layouts = keptLayouts();
  return async (first) => {
    const jobs = layoutJobs(first);
    for (const job of jobs) if (!layouts.has(job)) layouts.keep(job, await found(job));
    layouts.trim(jobs);
    return jobs.length === 0 ? first : withLayouts(first, layouts);
  };
}

/** Null where the search broke down. */
const found = (job: LayoutJob): Promise<LayoutNews | null> =>
  new Promise((resolve) => {
    drive(job, EFFORT, SLICE_MS, (told) => {
      if (told.what === "last") resolve(told.news);
      if (told.what === "left") resolve(null);
    });
  });
