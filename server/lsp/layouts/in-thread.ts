/** The program of a thread of Node's: dist/layouts.js. */
import { parentPort } from "node:worker_threads";
import { atWork } from "./at-work";

const hear = atWork((message) => parentPort?.postMessage(message));
parentPort?.on("message", hear);
