/** Where better layouts are looked for: one job at a time, off the typing wherever that can be. */
import type { improve, LayoutJob } from "../../cutting/improve";
import { type Cancel, drive, type Search, type Tell } from "./driving";

export interface LayoutHost {
  /** What was started before must have ended or been cancelled. Nothing is told before this returns. */
  readonly start: (job: LayoutJob, effort: number, tell: Tell) => Cancel;
  /** What is under way takes no more time until it may go on. */
  readonly hold: () => void;
  readonly goOn: () => void;
  /** Nothing is started after it. */
  readonly end: () => void;
}

/** So long at a time, typing waits. */
const SLICE_MS = 8;

/** Between the keys, where there is no other thread. */
export function inlineHost(improving?: typeof improve): LayoutHost {
  let search: Search | undefined;
  return {
    start: (job, effort, tell) => {
      search = drive(job, effort, SLICE_MS, tell, improving);
      return search.cancel;
    },
    hold: () => search?.hold(),
    goOn: () => search?.goOn(),
    end: () => search?.cancel(),
  };
}
