/** Plans checked on several cores: this program once more in every thread, which hands back plain data. */
import { availableParallelism } from "node:os";
import { parentPort, type ResourceLimits, Worker, workerData } from "node:worker_threads";
import { type AskedCheck, brokenDown, type Checked, checkedPlan } from "./checking";
import { type Hand, type Heard, inOrder } from "./in-order";

/** A thread has to read the whole program before its first plan, which takes as long as two or three plans. */
const FOR_EACH = 2;
const FEWEST = 4;

/** Of the young things of a thread, in MB: a plan leaves much behind, and with little room it is looked through too often. */
const YOUNG_MB = 64;

/** Every file in turn, whatever the number of threads. */
export const checkedAll = (
  files: readonly string[],
  asked: AskedCheck,
  jobs = availableParallelism(),
): AsyncGenerator<Checked, void, void> =>
  inOrder({
    tasks: files,
    hands: handsFor(files.length, jobs),
    start: (heard) => threadOf(__filename, asked, heard),
    here: (file) => checkedPlan(file, asked),
    lost: brokenDown,
  });

export function handsFor(files: number, jobs: number): number {
  const hands = files < FEWEST ? 1 : Math.min(jobs, Math.ceil(files / FOR_EACH));
  return hands > 1 ? hands : 0;
}

/** `program`: a file that calls `checkInThread` where it is a thread. */
export function threadOf(
  program: string,
  asked: AskedCheck,
  heard: Heard<Checked>,
  limits: ResourceLimits = {},
): Hand<string> {
  const thread = new Worker(program, {
    workerData: asked,
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MB, ...limits },
  });
  let why = "";
  thread.on("message", (said: typeof READY | Checked) => (said === READY ? heard.ready() : heard.did(said)));
  thread.on("error", (error) => {
    why = String(error);
  });
  thread.on("exit", (code) => heard.gone(why || `a thread ended with ${code}`));
  return { post: (file) => thread.postMessage(file), end: () => void thread.terminate() };
}

const READY = "ready";

/** What a thread does until it is ended. */
export function checkInThread(): void {
  const asked = workerData as AskedCheck;
  parentPort!.on("message", (file: string) => parentPort!.postMessage(checkedPlan(file, asked)));
  parentPort!.postMessage(READY);
}
