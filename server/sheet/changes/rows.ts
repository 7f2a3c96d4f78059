/** Finds what differs between two lists whose rows are known by a key, the same from whichever side one looks. */
import type { Told } from "./data";

/** A row of each list; one of them at least. */
export interface Pair<T> {
  readonly key: string;
  readonly old: T | undefined;
  readonly new: T | undefined;
}

/** Every row with its like in the other list, in the order of the lists. Of rows with one key the first goes with the first. */
export function paired<T>(old: readonly T[], now: readonly T[], keyOf: (row: T) => string): Pair<T>[] {
  const [before, after] = [numbered(old, keyOf), numbered(now, keyOf)];
  const rank = (key: string): number =>
    Math.min(before.get(key)?.at ?? Number.POSITIVE_INFINITY, after.get(key)?.at ?? Number.POSITIVE_INFINITY);
  return [...new Set([...before.keys(), ...after.keys()])]
    .sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1))
    .map((key) => ({ key, old: before.get(key)?.row, new: after.get(key)?.row }));
}

function numbered<T>(rows: readonly T[], keyOf: (row: T) => string): Map<string, { row: T; at: number }> {
  const seen = new Map<string, number>();
  return new Map(
    rows.map((row, at) => {
      const key = keyOf(row);
      const nth = seen.get(key) ?? 0;
      seen.set(key, nth + 1);
      return [nth === 0 ? key : `${key}\n${nth}`, { row, at }];
    }),
  );
}

/** A row as it is told. */
export interface Line {
  readonly what: string;
  readonly text: string;
}

/** The rows that are told otherwise, or on one side only. */
export const toldOtherwise = (old: readonly Line[], now: readonly Line[]): Told[] =>
  paired(old, now, ({ what }) => what)
    .filter((pair) => pair.old?.text !== pair.new?.text)
    .map((pair) => ({
      what: (pair.old ?? pair.new)!.what,
      old: pair.old?.text ?? null,
      new: pair.new?.text ?? null,
    }));

/** The rows of each list that have no like in the other. */
export function only<T>(
  old: readonly T[],
  now: readonly T[],
  keyOf: (row: T) => string,
): { readonly old: T[]; readonly new: T[] } {
  const pairs = paired(old, now, keyOf);
  return {
    old: pairs.flatMap((pair) => (pair.old !== undefined && pair.new === undefined ? [pair.old] : [])),
    new: pairs.flatMap((pair) => (pair.new !== undefined && pair.old === undefined ? [pair.new] : [])),
  };
}
