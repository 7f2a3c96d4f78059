/**
 * The search for one job's better layouts in slices, with room between them for whatever else is to be heard: the same
 * wherever it runs, beside the typing, in a thread of Node's or in a worker of a browser's.
 */
import { improve, type LayoutJob, type LayoutNews } from "../../cutting/improve";
import { afterwards } from "../turn";

/** What is told of a job that was started, in this order; after `last` or `left` nothing more. */
export type Told =
  /** It is still being looked for. */
  | { readonly what: "alive" }
  /** Better than what was told before. */
  | { readonly what: "news"; readonly news: LayoutNews }
  /** The best that there will be. */
  | { readonly what: "last"; readonly news: LayoutNews }
  /** It ended too early: what was told last stands. */
  | { readonly what: "left"; readonly why: string };

export type Tell = (told: Told) => void;
/** After it nothing more is told of the job. */
export type Cancel = () => void;

/** A search that is under way. */
export interface Search {
  readonly cancel: Cancel;
  /** It takes no more time until it may go on: a key has been pressed. */
  readonly hold: () => void;
  readonly goOn: () => void;
}

/** ms between two pieces of news while they stream in, and between two signs of life. */
export const NEWS_MS = 250;
export const ALIVE_MS = 1000;

/** `slice` is how long it goes on at a time, in ms; a step of the search may take it somewhat further. */
export function drive(
  job: LayoutJob,
  effort: number,
  slice: number,
  tell: Tell,
  improving: typeof improve = improve,
): Search {
  const run = improving(job, effort);
  /** Or ended. */
  let cancelled = false;
  let held = false;
  /** A slice is on its way. */
  let coming = false;
  let told = performance.now();
  let untold: LayoutNews | undefined;

  /** The last news where the search has ended. */
  const step = (): LayoutNews | undefined => {
    const end = performance.now() + slice;
    do {
      const { value, done } = run.next();
      if (done) return value;
      untold = value ?? untold;
    } while (performance.now() < end);
    return undefined;
  };

  const goOn = (): void => {
    coming = false;
    if (cancelled || held) return;
    let last: LayoutNews | undefined;
    try {
      last = step();
    } catch (error) {
      cancelled = true;
      tell({ what: "left", why: String(error) });
      return;
    }
    if (last) {
      cancelled = true;
      tell({ what: "last", news: last });
      return;
    }
    const since = performance.now() - told;
    if (since >= (untold ? NEWS_MS : ALIVE_MS)) {
      told = performance.now();
      tell(untold ? { what: "news", news: untold } : { what: "alive" });
      untold = undefined;
    }
    comeAgain();
  };

  const comeAgain = (): void => {
    if (coming) return;
    coming = true;
    afterwards(goOn);
  };

  comeAgain();
  return {
    cancel: () => {
      cancelled = true;
    },
    hold: () => {
      held = true;
    },
    goOn: () => {
      if (!held || cancelled) return;
      held = false;
      comeAgain();
    },
  };
}
