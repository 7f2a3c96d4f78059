/** The steps as sittings: work that goes on until a wait ends it, then what is waited for. Never reordered. */
import type { WorkStep } from "./steps";

export interface Sitting {
  readonly steps: readonly WorkStep[];
  /** Minutes of work; undefined where some step does not say how long it takes. */
  readonly minutes: number | undefined;
  /** What ends it; undefined for the last where nothing is waited for. */
  readonly wait: SittingWait | undefined;
}

export interface SittingWait {
  readonly minutes: number;
  /** The step it follows. */
  readonly after: WorkStep;
  /** Stop here: it lasts overnight. */
  readonly overnight: boolean;
  /** The steps that come next and touch nothing of what waits: they fill the wait. None of a wait overnight. */
  readonly meanwhile: readonly WorkStep[];
}

/** A wait up to this, in minutes, is a pause. */
const PAUSE = 60;
/** A wait from this on, in minutes, lasts overnight. */
const OVERNIGHT = 8 * 60;

export function timePlanOf(steps: readonly WorkStep[]): Sitting[] {
  const sittings: Sitting[] = [];
  let open: WorkStep[] = [];
  steps.forEach((step, n) => {
    open.push(step);
    const minutes = step.wait?.approx ?? 0;
    const last = n === steps.length - 1;
    if (minutes <= PAUSE && !last) return;
    const overnight = minutes >= OVERNIGHT;
    const meanwhile = overnight ? [] : apartFrom(step, steps.slice(n + 1));
    const wait = minutes > PAUSE ? { minutes, after: step, overnight, meanwhile } : undefined;
    sittings.push({ steps: open, minutes: workOf(open), wait });
    open = [];
  });
  return sittings;
}

function workOf(steps: readonly WorkStep[]): number | undefined {
  return steps.reduce<number | undefined>(
    (sum, { takes }) => (sum === undefined || !takes ? undefined : sum + takes.approx),
    0,
  );
}

/** The next steps up to the first that touches what a step has worked on. */
function apartFrom(step: WorkStep, next: readonly WorkStep[]): WorkStep[] {
  const own = touched(step);
  if (own.size === 0) return [];
  const end = next.findIndex((s) => {
    const theirs = touched(s);
    return theirs.size === 0 || s.lines.length > 0 || [...theirs].some((t) => own.has(t));
  });
  return next.slice(0, end < 0 ? next.length : end);
}

/** Pieces and parts that a step works on. */
function touched({ fresh, again, standing, parts, coats }: WorkStep): ReadonlySet<number | string> {
  const coated = coats.flatMap((c): (number | string)[] => [...c.pieces, ...c.parts]);
  return new Set([...fresh, ...again, ...standing, ...parts, ...coated]);
}
