/** Better layouts that were found, by the whole of what they answer: the last that were asked for. */
import type { Laid, LayoutJob, LayoutNews, Layouts } from "../../cutting/improve";
import type { BoardAnswer, BoardJob } from "../../cutting/job";
import type { SheetAnswer, SheetJob } from "../../cutting/sheets";

/** How many are kept, and how many letters their jobs may take all together. */
const MOST = 64;
const MOST_LETTERS = 4_000_000;

/** What a job ended with; null where it ended with nothing. */
type Ended = LayoutNews | null;

export interface KeptLayouts extends Layouts {
  readonly keep: (job: LayoutJob, ended: Ended) => void;
  readonly has: (job: LayoutJob) => boolean;
  /** Forgets those asked for longest ago where there are too many, but none of these. */
  readonly trim: (asked: readonly LayoutJob[]) => void;
}

/** `now` tells what is known of a job that is still being looked for. */
export function keptLayouts(now: (key: string) => LayoutNews | undefined = () => undefined): KeptLayouts {
  /** The last asked for is the last. */
  const kept = new Map<string, Ended>();
  const found = (kind: LayoutJob["kind"], job: LayoutJob["job"]): Ended | undefined => {
    const key = keyOf(kind, job);
    const ended = kept.get(key);
    if (ended === undefined) return now(key);
    kept.delete(key);
    kept.set(key, ended);
    return ended;
  };
  return {
    boards: (job: BoardJob) => (found("boards", job) as Laid<BoardAnswer> | null) ?? undefined,
    sheets: (job: SheetJob) => (found("sheets", job) as Laid<SheetAnswer> | null) ?? undefined,
    keep: ({ kind, job }, ended) => kept.set(keyOf(kind, job), ended),
    has: ({ kind, job }) => kept.has(keyOf(kind, job)),
    trim: (asked) => {
      const needed = new Set(asked.map(({ kind, job }) => keyOf(kind, job)));
      let letters = [...kept.keys()].reduce((sum, { length }) => sum + length, 0);
      for (const key of kept.keys()) {
        if (kept.size <= MOST && letters <= MOST_LETTERS) return;
        if (needed.has(key)) continue;
        kept.delete(key);
        letters -= key.length;
      }
    },
  };
}

/** Written once for each job: they are asked about often. */
const KEYS = new WeakMap<LayoutJob["job"], string>();

export function keyOf(kind: LayoutJob["kind"], job: LayoutJob["job"]): string {
  let key = KEYS.get(job);
  if (key === undefined) {
    key = `${kind} ${JSON.stringify(job)}`;
    KEYS.set(job, key);
  }
  return key;
}
