/**
 * Problems that are new on the line being typed wait a moment, so that a half-typed word is not called wrong; those that
 * vanish are gone at once. Knows nothing of how problems are shown.
 */

/** How long new problems on the line being typed wait, in milliseconds. */
export const HOLD_MS = 200;

/** As much of a problem as tells it from others while the text around it moves. */
export interface Held {
  readonly code?: unknown;
  /** Plain text, or Markdown with its kind. */
  readonly message: unknown;
  readonly range: { readonly start: { readonly line: number }; readonly end: { readonly line: number } };
}

const key = (p: Held): string => JSON.stringify([p.code, p.message]);

/** Splits problems of now into those to show at once and those to hold: on the line typed, and not shown before. */
export function split<P extends Held>(
  now: readonly P[],
  shown: readonly Held[],
  typed: number | undefined,
): { readonly show: P[]; readonly hold: P[] } {
  if (typed === undefined) return { show: [...now], hold: [] };
  const before = new Map<string, number>();
  for (const p of shown) before.set(key(p), (before.get(key(p)) ?? 0) + 1);
  const show: P[] = [];
  const hold: P[] = [];
  for (const p of now) {
    const left = before.get(key(p)) ?? 0;
    if (left > 0) before.set(key(p), left - 1);
    const onLine = p.range.start.line <= typed && typed <= p.range.end.line;
    (onLine && left === 0 ? hold : show).push(p);
  }
  return { show, hold };
}
