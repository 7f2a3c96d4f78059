/**
 * An independent check of what is said about the least cost of a board job. It is given worths of pieces and nothing
 * else, works out in whole numbers what the best filling of each board is worth by them, and asks `certify.ts` whether
 * any purchase below could suffice. It shares no code with what looks for the cheapest way.
 */
import { type BoardJob, MOST } from "../job";
import { type CheckedNeed, noneBelow } from "./certify";

export interface Certificate {
  /**
   * Each a worth per length of the job's usable pieces, longest length first, in whole numbers: all pieces together are
   * worth no more than the best fillings of the boards they are cut from.
   */
  readonly worths: readonly (readonly number[])[];
}

/**
 * Whether every way to cut the job that leaves out no more pieces than `leftOut` (per length, longest first) costs at
 * least `weight` (cents; ticks where a price is missing), and, where it costs just that, takes at least `size` ticks of
 * bought boards. False where that does not follow, or where numbers are too large to tell.
 */
export function boundHolds(
  job: BoardJob,
  certificate: Certificate,
  leftOut: readonly number[],
  least: readonly [weight: number, size: number],
): boolean {
  const steps = checkingBound(job, certificate, leftOut, least);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** The same in slices of some milliseconds. */
export function* checkingBound(
  job: BoardJob,
  { worths }: Certificate,
  leftOut: readonly number[],
  [weight, size]: readonly [weight: number, size: number],
): Generator<undefined, boolean, void> {
  const { kerf, endTrim } = job;
  if (![kerf, endTrim].every(isAmount)) return false;
  const counted = new Map<number, number>();
  for (const { length } of job.pieces)
    if (isAmount(length) && length > 0) counted.set(length, (counted.get(length) ?? 0) + 1);
  const lengths = [...counted.keys()].sort((a, b) => b - a);
  const sold = job.sold
    .filter(({ id }, i) => job.sold.findIndex((other) => other.id === id) === i)
    .filter((s) => isAmount(s.length) && s.length > endTrim && (s.price === null || isAmount(s.price)));
  const priced = sold.every(({ price }) => price !== null);
  const wood = sold.map(({ length, price }) => ({
    weight: priced ? price! : length,
    size: length,
    supply: Number.POSITIVE_INFINITY,
  }));
  const rooms = sold.map(({ length }) => length - endTrim);
  const spans = job.onHand
    .filter(({ id }, i) => job.onHand.findIndex((other) => other.id === id) === i)
    .flatMap((board) => stretches(board, kerf));
  const bought = Math.max(0, ...rooms);
  const inReach = Math.max(bought, ...spans);
  // Pieces that nothing could take are in no way to cut it.
  const due = lengths.map((length) => (length <= inReach ? counted.get(length)! : 0));
  const onlyOnHand = lengths.flatMap((length, g) => (length > bought && due[g]! > 0 ? [g] : []));
  const missing = onlyOnHand.some((g) => leftOut[g]! > 0) ? onlyOnHand : [];
  const alone = (length: number) =>
    Math.min(...wood.filter((_, s) => rooms[s]! >= length).map((w) => w.weight), Number.MAX_SAFE_INTEGER);
  // More than all pieces cost with a board for each of them.
  const lack = lengths.reduce((sum, l) => sum + (l <= bought ? alone(l) * counted.get(l)! : 0), 1);
  const needs: CheckedNeed[] = [];
  for (const worth of worths) {
    const sound = worth.length === lengths.length && worth.every((w) => Number.isSafeInteger(w) && w >= 0);
    if (!sound) return false;
    const most = yield* fillings(lengths, due, worth, kerf, Math.max(0, ...rooms, ...spans));
    const few = worth.map((w, g) => (job.salvage === "use up" || lengths[g]! > bought ? w : 0));
    const onHand = yield* fillings(lengths, due, few, kerf, Math.max(0, ...spans));
    needs.push({
      gives: [...rooms.map(most), ...missing.map((g) => worth[g]!)],
      least:
        lengths.reduce((sum, _, g) => sum + due[g]! * worth[g]!, 0) -
        spans.reduce((sum, room) => sum + onHand(room), 0),
    });
  }
  const wares = [...wood, ...missing.map((g) => ({ weight: lack, size: 0, supply: due[g]! }))];
  const left = missing.reduce((sum, g) => sum + leftOut[g]!, 0);
  return noneBelow(wares, needs, [weight + left * lack, size]);
}

const isAmount = (n: number): boolean => Number.isInteger(n) && n >= 0 && n <= MOST;

/** Cells of the table of fillings; on a coarser grid pieces are rounded down, and fillings are worth rather more. */
const MOST_CELLS = 2 ** 18;
/** For all pieces together. */
const MOST_UPDATES = 2 ** 26;
/** Updates between two pauses. */
const PAUSE = 2 ** 20;

/** What the best filling of a room is worth, for rooms up to the longest. */
function* fillings(
  lengths: readonly number[],
  due: readonly number[],
  worth: readonly number[],
  kerf: number,
  longest: number,
): Generator<undefined, (room: number) => number, void> {
  const common = lengths.reduce((a, length) => divisor(a, length + kerf), 0) || 1;
  const pieces = due.reduce((sum, n) => sum + n, 1);
  const most = Math.min(MOST_CELLS, Math.ceil(MOST_UPDATES / pieces));
  const cell = Math.max(common, Math.ceil((longest + kerf) / most));
  const cells = Math.floor((longest + kerf) / cell);
  const best = new Float64Array(cells + 1);
  let since = 0;
  for (const [g, length] of lengths.entries()) {
    const size = Math.floor((length + kerf) / cell);
    const copies = worth[g]! > 0 ? Math.min(due[g]!, size > 0 ? Math.floor(cells / size) : due[g]!) : 0;
    for (let n = 0; n < copies; n++) {
      for (let at = cells; at >= size; at--) best[at] = Math.max(best[at]!, best[at - size]! + worth[g]!);
      since += cells;
      if (since < PAUSE) continue;
      since = 0;
      yield;
    }
  }
  return (room) => best[Math.floor((room + kerf) / cell)]!;
}

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/** Lengths of good wood on a board on hand: from the end of each bad stretch, and of the cut beside it, to the next. */
function stretches({ length, bad }: BoardJob["onHand"][number], kerf: number): readonly number[] {
  const whole = bad.every(
    ({ from, to }) => Number.isSafeInteger(from) && Number.isSafeInteger(to) && from <= to,
  );
  if (!isAmount(length) || !whole) return [];
  const lengths: number[] = [];
  let [from, end] = [0, 0];
  for (const b of [...bad].sort((x, y) => x.from - y.from || x.to - y.to)) {
    if (b.to < 0 || b.from > length) continue;
    const begins = Math.max(0, b.from);
    if (begins > end) {
      if (begins > from) lengths.push(begins - from);
      from = begins + kerf;
    }
    end = Math.max(end, Math.min(b.to, length));
    from = Math.max(from, end);
  }
  if (length > from) lengths.push(length - from);
  return lengths;
}
