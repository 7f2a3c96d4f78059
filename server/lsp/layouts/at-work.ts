/** The side of the worker: it looks for one job at a time, tells how it goes, and hears when it is to leave off. */
import type { LayoutJob } from "../../cutting/improve";
import { type Cancel, drive, type Told } from "./driving";

/** Jobs are known by numbers, each used once. */
export type ToWorker =
  | { readonly start: number; readonly job: LayoutJob; readonly effort: number }
  | { readonly cancel: number };

/** Of job 0 it tells once, when it begins to listen. */
export type FromWorker = { readonly of: number } & Told;

/** Short enough that a cancel is soon heard. */
const SLICE_MS = 25;

/** Gives what is to hear the messages. */
export function atWork(send: (message: FromWorker) => void): (message: ToWorker) => void {
  let current: { readonly of: number; readonly cancel: Cancel } | undefined;
  send({ of: 0, what: "alive" });
  return (message) => {
    if ("cancel" in message) {
      if (current?.of === message.cancel) current.cancel();
      return;
    }
    const { start: of, job, effort } = message;
    current?.cancel();
    send({ of, what: "alive" });
    current = { of, cancel: drive(job, effort, SLICE_MS, (told) => send({ of, ...told })) };
  };
}
