/** A worker in a browser. */
import type { FromWorker } from "./at-work";
import type { Wiring } from "./worker-host";

/** `program` is the address of in-web-worker.ts as bundled. */
export const webWorkerOf =
  (program: string): Wiring =>
  (hear, gone) => {
    const worker = new Worker(program);
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => hear(data);
    worker.onerror = ({ message }) => gone(message);
    return { post: (message) => worker.postMessage(message), end: () => worker.terminate() };
  };
