/** A plan with the best layouts there are, found between other work: for one that is looked at only now and then. */
import { EFFORT, type LayoutJob, type LayoutNews } from "../../cutting/improve";
import { type Evaluated, layoutJobs, withLayouts } from "../../service";
import { drive } from "./driving";
import { keptLayouts } from "./kept";

/** So long at a time, other requests wait, and so often it is asked whether anybody still waits, in ms. */
const SLICE_MS = 8;
const ASK_MS = 50;

/** Undefined once nobody waits for it any more. */
export type InTurns = (first: Evaluated, stale: () => boolean) => Promise<Evaluated | undefined>;

/** Keeps what it has found for the next time that it is asked for. */
export function laidOutInTurns(): InTurns {
  const layouts = keptLayouts();
  return async (first, stale) => {
    const jobs = layoutJobs(first);
    for (const job of jobs) {
      if (layouts.has(job)) continue;
      const ended = await found(job, stale);
      if (ended === undefined) return undefined;
      layouts.keep(job, ended);
    }
    layouts.trim(jobs);
    return jobs.length === 0 ? first : withLayouts(first, layouts);
  };
}

/** Null where the search broke down. */
const found = (job: LayoutJob, stale: () => boolean): Promise<LayoutNews | null | undefined> =>
  new Promise((resolve) => {
    const end = (ended: LayoutNews | null | undefined): void => {
      clearInterval(watch);
      resolve(ended);
    };
    const search = drive(job, EFFORT, SLICE_MS, (told) => {
      if (told.what === "last") end(told.news);
      if (told.what === "left") end(null);
    });
    const watch = setInterval(() => {
      if (!stale()) return;
      search.cancel();
      end(undefined);
    }, ASK_MS);
  });
