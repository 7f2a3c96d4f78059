/** The program of a browser's worker: dist/layouts-web.js. */
import { atWork, type ToWorker } from "./at-work";

const hear = atWork((message) => self.postMessage(message));
self.onmessage = ({ data }: MessageEvent<ToWorker>) => hear(data);
