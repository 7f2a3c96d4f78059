/** The side of the worker: it looks for one job at a time, tells how it goes, and hears when it is to leave off. */
import type { LayoutJob } from "../../cutting/improve";
import { drive, type Search, type Told } from "./driving";

/** Jobs are known by numbers, each used once. */
export type ToWorker =
  | { readonly start: number; readonly job: LayoutJob; readonly effort: number }
  | { readonly of: number; readonly what: "cancel" | "hold" | "goOn" };

/** Of job 0 it tells once, when it begins to listen. */
export type FromWorker = { readonly of: number } & Told;

/** Short enough that it is soon heard when it is to leave off, or to hold. */
const SLICE_MS = 8;

/** Gives what is to hear the messages. */
export function atWork(send: (message: FromWorker) => void): (message: ToWorker) => void {
  let current: { readonly of: number; readonly search: Search } | undefined;
  send({ of: 0, what: "alive" });
  return (message) => {
    if ("what" in message) {
      if (current?.of === message.of) current.search[message.what]();
      return;
    }
    const { start: of, job, effort } = message;
    current?.search.cancel();
    send({ of, what: "alive" });
    current = { of, search: drive(job, effort, SLICE_MS, (told) => send({ of, ...told })) };
  };
}
