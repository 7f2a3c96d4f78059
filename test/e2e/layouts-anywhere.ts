/** The same jobs, wherever layouts are looked for: this runs in Node and in a page. */
import { improved, type LayoutJob } from "../../server/cutting/improve";
import { inlineHost, type LayoutHost } from "../../server/lsp/layouts/host";
import { webWorkerOf } from "../../server/lsp/layouts/web-worker";
import { workerHost } from "../../server/lsp/layouts/worker-host";
import { boardPlan } from "../bench/layout/board-plans";
import { panelPlan } from "../bench/layout/panel-plans";

const JOBS: readonly LayoutJob[] = [
  ...[1, 2, 3, 22, 97, 201].map((seed): LayoutJob => ({ kind: "boards", job: boardPlan(seed) })),
  ...[1, 2, 3, 4].map((seed): LayoutJob => ({ kind: "sheets", job: panelPlan(seed) })),
];
/** Enough to prove most of them, and not all. */
const EFFORT = 100_000_000;

/** What each ends with, as text. */
export const atOnce = (): string[] => JOBS.map((job) => JSON.stringify(improved(job, EFFORT)));

/** The same in a page: from a worker, and between other things. */
export async function inPage(program: string): Promise<{ worker: string[]; inline: string[] }> {
  const fails = (why: string): never => {
    throw new Error(why);
  };
  const worker = workerHost(webWorkerOf(program), {
    otherwise: { start: () => fails("no worker"), hold: () => {}, goOn: () => {}, end: () => {} },
    log: fails,
  });
  return { worker: await all(worker), inline: await all(inlineHost()) };
}

async function all(host: LayoutHost): Promise<string[]> {
  const ends: string[] = [];
  for (const job of JOBS)
    ends.push(
      await new Promise((resolve) => {
        host.start(job, EFFORT, (told) => {
          if (told.what === "last") resolve(JSON.stringify(told.news));
          if (told.what === "left") resolve(told.why);
        });
      }),
    );
  host.end();
  return ends;
}
