/** What was ticked on the sheets of this device: by plan, in the extension's own storage, the plans ticked last at the end. */
import type { Memento } from "vscode";
import type { KnownTicks } from "./preview/messages";

export interface KeptTicks {
  /** `uri` is the address of a plan's document. */
  readonly of: (uri: string) => KnownTicks;
  /** All that is ticked now; rejects where it cannot be written. */
  readonly set: (uri: string, ids: KnownTicks["ids"]) => Thenable<void>;
  /** A file, or a folder with all its plans, has another address now; rejects as `set` does. */
  readonly move: (from: string, to: string) => Thenable<void>;
}

interface OfPlan {
  readonly plan: string;
  readonly ids: readonly string[];
}

/** Of a plan the ticks set last are kept, and of plans those ticked last. */
export function keptTicks(storage: Memento): KeptTicks {
  const all = (): OfPlan[] => {
    const read = storage.get<unknown>(KEY, []);
    return Array.isArray(read) ? read.filter(isOfPlan) : [];
  };
  return {
    of: (uri) => ({
      ids: all().find(({ plan }) => plan === uri)?.ids ?? [],
      keeps: hasName(uri),
    }),
    set: (uri, ids) => {
      if (!hasName(uri)) return Promise.resolve();
      const own = ids.filter((id) => id.length <= LONGEST_ID).slice(-MOST_OF_A_PLAN);
      const others = all().filter(({ plan }) => plan !== uri);
      return storage.update(KEY, newest(own.length > 0 ? [...others, { plan: uri, ids: own }] : others));
    },
    move: (from, to) => {
      const before = all();
      const moved = before.flatMap(({ plan, ids }) => {
        const now = movedTo(plan, from, to);
        return now === undefined ? [] : [{ from: plan, plan: now, ids }];
      });
      if (moved.length === 0) return Promise.resolve();
      const stale = new Set(moved.flatMap((one) => [one.from, one.plan]));
      const others = before.filter(({ plan }) => !stale.has(plan));
      return storage.update(KEY, [...others, ...moved.map(({ plan, ids }) => ({ plan, ids }))]);
    },
  };
}

/** The address of a plan after a file or a folder moved; undefined where that did not touch it. */
export function movedTo(plan: string, from: string, to: string): string | undefined {
  if (plan !== from && !plan.startsWith(`${from}/`)) return undefined;
  return to + plan.slice(from.length);
}

const KEY = "ticks";
const MOST_PLANS = 300;
const MOST_OF_A_PLAN = 3000;
/** Of all plans together: the storage is read whole when the editor starts. */
const MOST_TICKS = 20_000;
/** Letters of an identity. */
const LONGEST_ID = 300;

function newest(all: readonly OfPlan[]): OfPlan[] {
  const kept: OfPlan[] = [];
  let left = MOST_TICKS;
  for (const one of all.slice(-MOST_PLANS).reverse()) {
    left -= one.ids.length;
    if (left < 0) break;
    kept.unshift(one);
  }
  return kept;
}

/** An unsaved text is called the same as the next one. */
const hasName = (uri: string): boolean => !uri.startsWith("untitled:");

function isOfPlan(value: unknown): value is OfPlan {
  if (typeof value !== "object" || value === null) return false;
  const { plan, ids } = value as Partial<Record<string, unknown>>;
  return typeof plan === "string" && Array.isArray(ids) && ids.every((id) => typeof id === "string");
}
