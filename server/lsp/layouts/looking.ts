/**
 * Better layouts for the open plans, looked for while nobody types: what is found is kept, and a plan that shows less
 * than what is known is to be worked out anew. What is looked for is a function of the texts alone, and so is what is
 * known in the end.
 */
import { EFFORT, type LayoutJob, type LayoutNews, type Layouts, type Proof } from "../../cutting/improve";
import { type LayoutsKnown, layoutsKnown } from "../../features/layouts-known";
import { type Evaluated, layoutJobs } from "../../service";
import { afterwards } from "../turn";
import { type Cancel, NEWS_MS, type Told } from "./driving";
import type { LayoutHost } from "./host";
import { keptLayouts, keyOf } from "./kept";

/** So long after a change, in ms, nothing is begun, so that fast typing begins nothing. */
export const PAUSE_MS = 100;

/** So many times as long as it took to show plans anew, none is while news streams in: large ones leave room for typing. */
const SPARING = 10;

/** How the layouts of a plan stand, as the editor is told it. */
export interface Standing extends Omit<LayoutsKnown, "jobs" | "proven"> {
  /** `none`: there is nothing to lay out. */
  readonly state: "looking" | "proven" | "bounded" | "none";
  /** How many stocks are still looked at. */
  readonly looking: number;
}

export interface Looking {
  /** What is known, for whoever works a plan out. */
  readonly layouts: Layouts;
  /** A key has been pressed: nothing is to take time before its problems are out. */
  readonly typed: () => void;
  /** A version of a plan has been worked out; its problems are on their way. */
  readonly worked: (uri: string, version: number, evaluated: Evaluated) => void;
  readonly closed: (uri: string) => void;
  readonly end: () => void;
}

export interface LookingFor {
  readonly host: LayoutHost;
  /** More is known than these plans show: they are to be worked out and shown anew. */
  readonly again: (uris: readonly string[]) => void;
  /** How a plan stands has changed, or its version has. */
  readonly tell: (uri: string, version: number, standing: Standing) => void;
  readonly effort?: number;
}

interface Plan {
  readonly version: number;
  readonly jobs: readonly LayoutJob[];
  /** What it shows of each job. */
  readonly shown: readonly (Proof | null)[];
  readonly known: LayoutsKnown;
  told: string;
}

export function looking({ host, again, tell, effort = EFFORT }: LookingFor): Looking {
  const plans = new Map<string, Plan>();
  let current: { readonly key: string; readonly cancel: Cancel; news: LayoutNews | undefined } | undefined;
  const layouts = keptLayouts((key) => (current?.key === key ? current.news : undefined));
  let pause: ReturnType<typeof setTimeout> | undefined;
  let showing: ReturnType<typeof setTimeout> | undefined;
  /** When plans were asked to be shown anew, until one is; and from when they may be asked again. */
  let askedAt: number | undefined;
  let mayShow = 0;

  const asked = (): LayoutJob[] => [...plans.values()].flatMap(({ jobs }) => jobs);
  const isOpen = (job: LayoutJob): boolean => !layouts.has(job);
  const showsLess = ({ shown }: Plan, job: LayoutJob, i: number): boolean =>
    shown[i] !== proofIn(layouts, job);

  /** Leaves off what no plan asks for any more. */
  const leaveOff = (): void => {
    if (!current || asked().some(({ kind, job }) => keyOf(kind, job) === current?.key)) return;
    current.cancel();
    current = undefined;
  };

  const hear = (job: LayoutJob, told: Told): void => {
    if (told.what === "news" && current) current.news = told.news;
    if (told.what === "last" || told.what === "left") {
      layouts.keep(job, told.what === "last" ? told.news : (current?.news ?? null));
      layouts.trim(asked());
      current = undefined;
      goOn();
    }
    show();
  };

  const standingOf = (plan: Plan): Standing => {
    const { jobs, proven, ...known } = plan.known;
    const looked = plan.jobs.filter((job, i) => isOpen(job) || showsLess(plan, job, i));
    const looking = looked.filter(({ job }) => jobs.includes(job)).length;
    const state = jobs.length === 0 ? "none" : looking > 0 ? "looking" : proven ? "proven" : "bounded";
    return { state, looking, ...known };
  };

  const goOn = (): void => {
    if (pause !== undefined) return;
    for (const [uri, plan] of plans) {
      const standing = standingOf(plan);
      const told = JSON.stringify(standing);
      if (told === plan.told) continue;
      plan.told = told;
      tell(uri, plan.version, standing);
    }
    const next = current ? undefined : asked().find(isOpen);
    if (!next) return;
    const cancel = host.start(next, effort, (told) => hear(next, told));
    current = { key: keyOf(next.kind, next.job), cancel, news: undefined };
  };

  /** Once nobody types; at once where nothing more is to come, else so that there is room between. */
  const show = (): void => {
    if (pause !== undefined) return;
    const wait = current ? mayShow - performance.now() : 0;
    clearTimeout(showing);
    showing = setTimeout(() => {
      const less = [...plans].filter(([, plan]) => plan.jobs.some((job, i) => showsLess(plan, job, i)));
      if (less.length === 0) return;
      again(less.map(([uri]) => uri));
      askedAt = performance.now();
      mayShow = askedAt + NEWS_MS;
    }, wait);
  };

  const worked = (uri: string, version: number, evaluated: Evaluated): void => {
    const before = plans.get(uri);
    const { boards, sheets } = evaluated.worked;
    const same = before?.version === version;
    plans.set(uri, {
      version,
      jobs: layoutJobs(evaluated),
      shown: [...boards, ...sheets].map(({ proof }) => proof),
      known: layoutsKnown(evaluated),
      told: same ? before.told : "",
    });
    afterwards(leaveOff);
    if (same) {
      const now = performance.now();
      mayShow = Math.max(mayShow, now + SPARING * (now - (askedAt ?? now)));
      askedAt = undefined;
      afterwards(goOn);
      return;
    }
    typed();
  };

  const typed = (): void => {
    if (pause === undefined) host.hold();
    clearTimeout(showing);
    clearTimeout(pause);
    pause = setTimeout(() => {
      pause = undefined;
      host.goOn();
      goOn();
      show();
    }, PAUSE_MS);
  };

  return {
    layouts,
    typed,
    worked,
    closed: (uri) => {
      plans.delete(uri);
      leaveOff();
      goOn();
    },
    end: () => {
      clearTimeout(pause);
      clearTimeout(showing);
      plans.clear();
      leaveOff();
      host.end();
    },
  };
}

const proofIn = (layouts: Layouts, asked: LayoutJob): Proof | null =>
  (asked.kind === "boards" ? layouts.boards(asked.job) : layouts.sheets(asked.job))?.proof ?? null;
