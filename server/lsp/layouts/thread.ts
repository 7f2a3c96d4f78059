/** A worker in Node: a thread of the same process, with memory of its own. */
import { Worker } from "node:worker_threads";
import type { FromWorker } from "./at-work";
import type { Wiring } from "./worker-host";

/** What a search may take before its thread ends, and it alone. */
const MOST_MB = 512;

/** `program` is the path of in-thread.ts as bundled. */
export const threadOf =
  (program: string): Wiring =>
  (hear, gone) => {
    const thread = new Worker(program, { resourceLimits: { maxOldGenerationSizeMb: MOST_MB } });
    thread.on("message", (message: FromWorker) => hear(message));
    thread.on("error", (error) => gone(String(error)));
    thread.on("exit", (code) => gone(`it ended with ${code}`));
    // The server does not wait for it when it ends.
    thread.unref();
    return { post: (message) => thread.postMessage(message), end: () => void thread.terminate() };
  };
