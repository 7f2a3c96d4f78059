/** Plans with better layouts than the first answers. */
import { improved, type LayoutNews, type Layouts } from "../server/cutting/improve";
import { type Evaluated, layoutJobs } from "../server/service";

/** What so much counted work finds for the layouts of a plan. */
export function layoutsOf(first: Evaluated, effort?: number): Layouts {
  const found = new Map<string, LayoutNews>(
    layoutJobs(first).map((job) => [JSON.stringify(job.job), improved(job, effort)]),
  );
  return {
    boards: (job) => {
      const news = found.get(JSON.stringify(job));
      return news?.kind === "boards" ? news : undefined;
    },
    sheets: (job) => {
      const news = found.get(JSON.stringify(job));
      return news?.kind === "sheets" ? news : undefined;
    },
  };
}
