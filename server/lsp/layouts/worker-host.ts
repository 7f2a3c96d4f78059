/**
 * Better layouts from a worker. One that gives no sign of life for too long is ended, and its job left as it was last
 * told; so is the job of one that breaks down. Where none can be started at all, another host takes over.
 */
import type { LayoutJob } from "../../cutting/improve";
import { afterwards } from "../turn";
import type { FromWorker, ToWorker } from "./at-work";
import type { Cancel, Tell, Told } from "./driving";
import type { LayoutHost } from "./host";

/** A worker that has been started. */
export interface Wire {
  readonly post: (message: ToWorker) => void;
  readonly end: () => void;
}

/** Starts a worker; throws where it cannot. `gone` is told when it ended by itself, and why. */
export type Wiring = (hear: (message: FromWorker) => void, gone: (why: string) => void) => Wire;

export interface WorkerChoices {
  /** In place of a worker that cannot be started. */
  readonly otherwise: LayoutHost;
  readonly log: (what: string) => void;
}

/** ms without a sign of life after which a worker is ended. */
const OVERDUE = 20_000;
/** ms that a worker may need to leave off a job that was cancelled. */
const LEAVING = 2000;

interface Current {
  readonly of: number;
  readonly job: LayoutJob;
  readonly effort: number;
  readonly tell: Tell;
  timer: ReturnType<typeof setTimeout> | undefined;
  /** The worker was at another job before, and may still be. */
  waits: boolean;
}

interface Started {
  readonly wire: Wire;
  /** It has been heard of. */
  alive: boolean;
  used: boolean;
}

/** ms with nothing to do after which a worker is ended: it takes some 30 MB. */
const IDLE = 10_000;

/** Workers lost one after another, without a job ended between, after which there are no more. */
const MOST_LOST = 3;

export function workerHost(wiring: Wiring, { otherwise, log }: WorkerChoices): LayoutHost {
  let worker: Started | undefined;
  let current: Current | undefined;
  let last = 0;
  let lost = 0;
  let instead: Cancel | undefined;
  let cannotStart = false;
  let idle: ReturnType<typeof setTimeout> | undefined;

  const rest = (): void => {
    clearTimeout(idle);
    idle = setTimeout(() => {
      worker?.wire.end();
      worker = undefined;
    }, IDLE);
  };

  const settle = (told: Told): void => {
    const settled = current;
    clearTimeout(settled?.timer);
    current = undefined;
    rest();
    settled?.tell(told);
  };

  const lose = (why: string): void => {
    worker = undefined;
    lost++;
    if (current) log(`The search for better layouts ended before it was done: ${why}`);
    settle({ what: "left", why });
  };

  const takeOver = (why: string): void => {
    worker = undefined;
    cannotStart = true;
    log(`Better layouts are looked for between the keys, since no worker starts: ${why}`);
    if (!current) return;
    const { job, effort, tell, timer } = current;
    clearTimeout(timer);
    current = undefined;
    instead = otherwise.start(job, effort, tell);
  };

  const watch = (one: Current): void => {
    clearTimeout(one.timer);
    const patience = one.waits ? LEAVING : OVERDUE;
    one.timer = setTimeout(() => {
      worker?.wire.end();
      worker = undefined;
      // While it waited for its turn, it is not to blame.
      if (one.waits) post(one);
      else lose(`nothing was heard of it for ${patience / 1000} s`);
    }, patience);
  };

  const hear = ({ of, ...told }: FromWorker): void => {
    if (current?.of !== of) return;
    current.waits = false;
    if (told.what === "last") lost = 0;
    if (told.what === "last" || told.what === "left") {
      settle(told);
      return;
    }
    watch(current);
    if (told.what === "news") current.tell(told);
  };

  const start = (): Started | undefined => {
    let own: Started | undefined;
    const isOwn = (): boolean => own !== undefined && worker === own;
    try {
      const wire = wiring(
        (message) => {
          if (!isOwn()) return;
          own!.alive = true;
          hear(message);
        },
        (why) => {
          if (isOwn()) (own!.alive ? lose : takeOver)(why);
        },
      );
      own = { wire, alive: false, used: false };
    } catch (error) {
      takeOver(String(error));
    }
    return own;
  };

  const post = (one: Current): void => {
    worker ??= start();
    if (!worker) return;
    clearTimeout(idle);
    one.waits = worker.used;
    worker.used = true;
    watch(one);
    worker.wire.post({ start: one.of, job: one.job, effort: one.effort });
  };

  return {
    start: (job, effort, tell) => {
      if (cannotStart) return otherwise.start(job, effort, tell);
      const one: Current = { of: ++last, job, effort, tell, timer: undefined, waits: false };
      current = one;
      if (lost < MOST_LOST) post(one);
      else afterwards(() => current === one && settle({ what: "left", why: "workers break down" }));
      return () => {
        instead?.();
        if (current !== one) return;
        clearTimeout(one.timer);
        current = undefined;
        worker?.wire.post({ of: one.of, what: "cancel" });
        rest();
      };
    },
    hold: () => {
      if (cannotStart) otherwise.hold();
      if (!current || !worker) return;
      clearTimeout(current.timer);
      worker.wire.post({ of: current.of, what: "hold" });
    },
    goOn: () => {
      if (cannotStart) otherwise.goOn();
      if (!current || !worker) return;
      worker.wire.post({ of: current.of, what: "goOn" });
      watch(current);
    },
    end: () => {
      clearTimeout(idle);
      clearTimeout(current?.timer);
      current = undefined;
      worker?.wire.end();
      worker = undefined;
      otherwise.end();
    },
  };
}
