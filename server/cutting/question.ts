/**
 * A board job boiled down to integers for the packing rules: equal lengths grouped, one kerf added to every piece and
 * to every room, so that pieces fit exactly when their sizes add up to no more than the room
 * (l1 + k + l2 + k <= L - trim + k: no kerf is lost after a piece that ends at the board's end).
 */
import { type BoardForSale, type BoardJob, type BoardOnHand, MOST } from "./job";

/** A sold length. */
export interface Kind {
  readonly board: BoardForSale;
  /** Length less end trim, plus a kerf. */
  readonly room: number;
  /** What it costs in the ranking: cents, or ticks when a price is missing among the boards sold. */
  readonly weight: number;
}

/** A usable stretch of a board on hand. */
export interface Span {
  readonly board: BoardOnHand;
  readonly from: number;
  readonly to: number;
  /** Its length plus a kerf. */
  readonly room: number;
}

export interface Question {
  readonly kerf: number;
  /** Per group of equal pieces, longest first: length plus a kerf, and how many. */
  readonly sizes: Int32Array;
  readonly counts: Int32Array;
  /** Per group: places in `job.pieces`, in order. */
  readonly members: readonly (readonly number[])[];
  /** By room, then weight, then id. */
  readonly kinds: readonly Kind[];
  /** For kinds from i on: the one of least weight, then least length; and the one of least weight for its room. */
  readonly cheapestFrom: readonly number[];
  readonly densestFrom: readonly number[];
  /** In the order of the boards on hand, and along each board. */
  readonly spans: readonly Span[];
  /** Groups before this one are too long for any board sold. */
  readonly tooLong: number;
}

/** Reads any job, leaving out what cannot be used. O(n log n) for n pieces and boards. */
export function readJob(job: BoardJob): Question {
  const { kerf, endTrim } = job;
  const usable = isAmount(kerf);
  const groups = new Map<number, number[]>();
  job.pieces.forEach(({ length }, i) => {
    if (!usable || !isAmount(length) || length === 0) return;
    const group = groups.get(length);
    if (group) group.push(i);
    else groups.set(length, [i]);
  });
  const lengths = [...groups.keys()].sort((a, b) => b - a);
  const sizes = Int32Array.from(lengths, (length) => length + kerf);
  const kinds = usable && isAmount(endTrim) ? kindsOf(job.sold, kerf, endTrim) : [];
  const longest = kinds.at(-1)?.room ?? 0;
  const tooLong = sizes.findIndex((size) => size <= longest);
  return {
    kerf,
    sizes,
    counts: Int32Array.from(lengths, (length) => groups.get(length)!.length),
    members: lengths.map((length) => groups.get(length)!),
    kinds,
    cheapestFrom: bestFrom(kinds, (a, b) => a.weight - b.weight || a.board.length - b.board.length),
    densestFrom: bestFrom(kinds, (a, b) => a.weight * b.room - b.weight * a.room || b.room - a.room),
    spans: usable ? firstOfEachId(job.onHand).flatMap((board) => spansOf(board, kerf)) : [],
    tooLong: tooLong < 0 ? sizes.length : tooLong,
  };
}

/** The first kind with that much room, or `kinds.length`. */
export function firstTaking({ kinds }: Question, size: number): number {
  let [low, high] = [0, kinds.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (kinds[middle]!.room < size) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Bad stretches cut to the board, in order, those that touch made one; null when one of them is no stretch. */
export function badStretches({ length, bad }: BoardOnHand): readonly { from: number; to: number }[] | null {
  if (!bad.every(({ from, to }) => Number.isSafeInteger(from) && Number.isSafeInteger(to) && from <= to))
    return null;
  const merged: { from: number; to: number }[] = [];
  const inOrder = bad
    .filter(({ from, to }) => to >= 0 && from <= length)
    .map(({ from, to }) => ({ from: Math.max(0, from), to: Math.min(length, to) }))
    .sort((a, b) => a.from - b.from || a.to - b.to);
  for (const stretch of inOrder) {
    const last = merged.at(-1);
    if (last && stretch.from <= last.to) last.to = Math.max(last.to, stretch.to);
    else merged.push(stretch);
  }
  return merged;
}

/** The lengths a board on hand can give whole, along the board: what lies between its bad stretches and their saw cuts. */
export function clearLengths(board: BoardOnHand, kerf: number): readonly number[] {
  return isAmount(kerf) ? spansOf(board, kerf).map(({ from, to }) => to - from) : [];
}

export function firstOfEachId<T extends { readonly id: string }>(boards: readonly T[]): readonly T[] {
  const seen = new Set<string>();
  return boards.filter(({ id }) => !seen.has(id) && seen.add(id));
}

/** A whole number from 0 to `MOST`. */
export function isAmount(n: number): boolean {
  return Number.isInteger(n) && n >= 0 && n <= MOST;
}

export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function kindsOf(sold: BoardJob["sold"], kerf: number, endTrim: number): readonly Kind[] {
  const usable = firstOfEachId(sold).filter(
    ({ length, price }) => isAmount(length) && length > endTrim && (price === null || isAmount(price)),
  );
  const priced = usable.every(({ price }) => price !== null);
  return usable
    .map((board) => ({
      board,
      room: board.length - endTrim + kerf,
      weight: priced ? (board.price ?? 0) : board.length,
    }))
    .sort((a, b) => a.room - b.room || a.weight - b.weight || byText(a.board.id, b.board.id));
}

function bestFrom(kinds: readonly Kind[], order: (a: Kind, b: Kind) => number): readonly number[] {
  const best: number[] = [];
  for (let i = kinds.length - 1; i >= 0; i--) {
    const next = best[i + 1];
    best[i] = next === undefined || order(kinds[i]!, kinds[next]!) <= 0 ? i : next;
  }
  return best;
}

/**
 * The stretches between bad ones. Wood right of a bad stretch begins where one kerf from the stretch's own beginning
 * has passed: inside the stretch when that is as wide as the kerf, else beside it. A stretch at the end needs no cut.
 */
function spansOf(board: BoardOnHand, kerf: number): readonly Span[] {
  const bad = isAmount(board.length) ? badStretches(board) : null;
  if (bad === null) return [];
  const spans: Span[] = [];
  let from = 0;
  for (const stretch of [...bad, { from: board.length, to: board.length }]) {
    if (stretch.from > from) spans.push({ board, from, to: stretch.from, room: stretch.from - from + kerf });
    from = stretch.from === 0 ? stretch.to : Math.max(stretch.to, stretch.from + kerf);
  }
  return spans;
}
