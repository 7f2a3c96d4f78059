/**
 * The check of a bound for sheets, before anyone is told of it. It shares no code with what found the bound, but for
 * `noneBelow`: from the job alone it works out, in whole numbers, what each worth vector says of a purchase.
 */
import { type CheckedNeed, type CheckedWare, noneBelow } from "../proof/certify";
import { LONGEST_SIDE, type SheetJob, type SheetOnHand } from "../sheets";
import { type Allowed, allLots, type CheckedGroup, cannotTake, slackOf } from "./certify-shares";

/**
 * Worths of pieces, each vector by groups: pieces equal in length, width and grain that some sheet sold takes; longest
 * first, then widest, then "along" before "free". Whole numbers from 0 to `MOST_WORTH`.
 */
export interface SheetCertificate {
  readonly worths: readonly (readonly number[])[];
  /** Per vector the places of groups of which a pattern is shown to use no more pieces than there are; [] is no group. */
  readonly held: readonly (readonly number[])[];
  /** Purchases that do not take all pieces, by trying everything: counts of the sheets sold that can be used, in order. */
  readonly refuted: readonly (readonly number[])[];
}

/**
 * Whether no answer that leaves over as few pieces as can be buys for less than this weight (cents; area in square ticks
 * when a price is missing), or for this weight less area. False as well where the certificate is not of its form or the
 * check would take too long.
 */
export function sheetBoundHolds(
  job: SheetJob,
  certificate: SheetCertificate,
  least: readonly [weight: number, area: number],
): boolean {
  const steps = checkingBound(job, certificate, least);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** The same in slices of some milliseconds. */
export function* checkingBound(
  { pieces, sold, onHand, kerf }: SheetJob,
  { worths, held, refuted }: SheetCertificate,
  least: readonly [weight: number, area: number],
): Generator<void, boolean, void> {
  const kinds = usable(sold).filter(
    ({ price }) => price === null || (Number.isSafeInteger(price) && price >= 0),
  );
  const own = usable(onHand);
  const groups = groupsOf(pieces, kinds, kerf);
  const isWorth = (n: number) => Number.isInteger(n) && n >= 0 && n <= MOST_WORTH;
  const isPlace = (g: number, i: number, all: readonly number[]) => g in groups && all.indexOf(g) === i;
  const sound =
    worths.length === held.length &&
    worths.every((vector) => vector.length === groups.length && vector.every(isWorth)) &&
    held.every((places) => places.every(isPlace) && sharings(places, groups).length <= MOST_SHARINGS);
  if (!sound || worths.length > MOST_VECTORS) return false;
  const allowed = { steps: MOST_STEPS };
  const needs: CheckedNeed[] = [];
  for (const [v, vector] of worths.entries()) {
    const values: number[] = [];
    const valued = groups.map((group, g) => ({ ...group, worth: vector[g]!, held: held[v]!.includes(g) }));
    for (const sheet of [...kinds, ...own]) values.push(yield* mostWorth(sheet, kerf, valued, allowed));
    const gained = values.slice(kinds.length).reduce((sum, n) => sum + n, 0);
    const due = valued.reduce((sum, { count, worth }) => sum + worth * count, 0);
    needs.push({ gives: values.slice(0, kinds.length), least: due - gained });
  }
  const priced = kinds.every(({ price }) => price !== null);
  const wares = kinds.map(({ length, width, price }) => ({
    weight: priced ? price! : length * width,
    size: length * width,
    supply: Number.POSITIVE_INFINITY,
  }));
  if (allowed.steps <= 0) return false;
  if (refuted.length === 0) return noneBelow(wares, needs, least);
  const isCount = (n: number) => Number.isInteger(n) && n >= 0 && n <= MOST_SHEETS;
  if (!refuted.every((counts) => counts.length === kinds.length && counts.every(isCount))) return false;
  const sheets = refuted.map((counts) => [
    ...kinds.flatMap((kind, k) => new Array<SheetOnHand>(counts[k]!).fill(kind)),
    ...own,
  ]);
  const slack = Math.max(...sheets.map((some) => slackOf(some, groups, kerf)));
  const lots = yield* allLots([...kinds, ...own], groups, kerf, slack, allowed);
  if (!lots) return false;
  for (const some of sheets) if (!(yield* cannotTake(some, groups, kerf, lots, allowed))) return false;
  return everyoneFails(wares, needs, refuted, least);
}

const MOST_SHEETS = 100;

/** Whether every purchase below the price fails a need or is within a refuted one; false when there are too many. */
function everyoneFails(
  wares: readonly CheckedWare[],
  needs: readonly CheckedNeed[],
  refuted: readonly (readonly number[])[],
  [weight, area]: readonly [number, number],
): boolean {
  const open = [{ counts: [] as readonly number[], weight: 0, area: 0 }];
  let looks = 0;
  for (let one = open.pop(); one; one = open.pop()) {
    const { counts } = one;
    if (++looks > MOST_LOOKS) return false;
    const ware = wares[counts.length];
    if (ware) {
      for (let n = 0; n <= MOST_LOOKS; n++) {
        const more = { weight: one.weight + n * ware.weight, area: one.area + n * ware.size };
        if (more.weight > weight || (more.weight === weight && more.area >= area)) break;
        open.push({ counts: [...counts, n], ...more });
      }
      if (open.length > MOST_LOOKS) return false;
    } else {
      const fails = needs.some(
        ({ gives, least }) => counts.reduce((sum, n, k) => sum + n * gives[k]!, 0) < least,
      );
      if (!fails && !refuted.some((some) => counts.every((n, k) => n <= some[k]!))) return false;
    }
  }
  return true;
}

const MOST_LOOKS = 50_000;

export const MOST_WORTH = 2 ** 30;
export const MOST_VECTORS = 40;
const MOST_STEPS = 400_000_000;
const MOST_SUMS = 1600;
const MOST_PARTS = 800_000;
const MOST_SHARINGS = 1000;

interface ValuedGroup extends CheckedGroup {
  readonly worth: number;
  readonly held: boolean;
}

interface Lying {
  readonly dx: number;
  readonly dy: number;
  readonly group: ValuedGroup;
}

/** Numbers of held pieces that two parts may use, and both together, as one number each. */
type Sharing = readonly [one: number, other: number, both: number];

const isSide = (n: number) => Number.isInteger(n) && n >= 1 && n <= LONGEST_SIDE;

/** The first of each id, if its sides can be. */
function usable<T extends SheetOnHand>(sheets: readonly T[]): readonly T[] {
  const first = sheets.filter(({ id }, i) => sheets.findIndex((other) => other.id === id) === i);
  return first.filter(({ length, width }) => isSide(length) && isSide(width));
}

function groupsOf(
  pieces: SheetJob["pieces"],
  kinds: SheetJob["sold"],
  kerf: number,
): readonly CheckedGroup[] {
  if (!Number.isSafeInteger(kerf) || kerf < 0) return [];
  const sorted = pieces
    .filter(({ length, width }) => isSide(length) && isSide(width))
    .map(({ length, width, grain }) => ({ length, width, free: grain === "free" }))
    .filter((piece) => kinds.some((sheet) => lying(piece, sheet, 0).length > 0))
    .sort((a, b) => b.length - a.length || b.width - a.width || Number(a.free) - Number(b.free));
  const groups: CheckedGroup[] = [];
  for (const piece of sorted) {
    const last = groups.at(-1);
    if (last?.length === piece.length && last.width === piece.width && last.free === piece.free)
      groups[groups.length - 1] = { ...last, count: last.count + 1 };
    else groups.push({ ...piece, count: 1 });
  }
  return groups;
}

/** The sides of a piece along those of the sheet, both ways where both can be. */
function lying(
  { length, width, free }: Pick<CheckedGroup, "length" | "width" | "free">,
  sheet: SheetOnHand,
  kerf: number,
): readonly (readonly [dx: number, dy: number])[] {
  const both = [[length, width] as const, [width, length] as const].slice(0, free || !sheet.grain ? 2 : 1);
  return both
    .filter(([dx, dy]) => dx <= sheet.length && dy <= sheet.width)
    .map(([dx, dy]) => [dx + kerf, dy + kerf] as const);
}

/** At least what any pattern of edge-to-edge cuts with no more pieces than there are is worth. */
function* mostWorth(
  sheet: SheetOnHand,
  kerf: number,
  all: readonly ValuedGroup[],
  allowed: Allowed,
): Generator<void, number, void> {
  const groups = all.filter((group) => group.worth > 0 && lying(group, sheet, kerf).length > 0);
  const held = groups.filter((group) => group.held);
  const sides = groups.flatMap((group) => lying(group, sheet, kerf).flat());
  for (let grid = sides.reduce(commonDivisor, 0); groups.length > 0; grid *= 2) {
    const down = (side: number) => Math.floor(side / grid);
    const lies = groups.flatMap((group) =>
      lying(group, sheet, kerf).map(([dx, dy]): Lying => ({ dx: down(dx!), dy: down(dy!), group })),
    );
    // What has no size on this grid is taken to fit as often as it is wanted.
    const tiny = new Set(lies.filter(({ dx, dy }) => dx * dy === 0).map(({ group }) => group));
    const ways = lies.filter(({ group }) => !tiny.has(group));
    const xs = sums(ways, down(sheet.length + kerf), ({ dx }) => dx);
    const ys = sums(ways, down(sheet.width + kerf), ({ dy }) => dy);
    if (xs.length > MOST_SUMS || ys.length > MOST_SUMS || xs.length * ys.length > MOST_PARTS) continue;
    const more = [...tiny].reduce((sum, { count, worth }) => sum + count * worth, 0);
    const rest = held.filter((group) => !tiny.has(group));
    return more + (yield* bestCuts(xs, ys, ways, rest, allowed));
  }
  return 0;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** Sums up to the end, each piece used once at most; it stops early once there are too many. */
function sums(ways: readonly Lying[], end: number, side: (way: Lying) => number): readonly number[] {
  const found = new Set([0]);
  for (const group of new Set(ways.map((way) => way.group))) {
    const sides = ways.filter((way) => way.group === group).map(side);
    for (let copy = 0; copy < group.count && found.size <= MOST_SUMS; copy++) {
      const before = [...found];
      for (const more of sides) for (const sum of before) if (sum + more <= end) found.add(sum + more);
      if (found.size === before.length) break;
    }
  }
  return [...found].sort((a, b) => a - b);
}

/** All ways to share held pieces; a number counts them in mixed radix, the first group in the lowest place. */
function sharings(places: readonly number[], groups: readonly CheckedGroup[]): readonly Sharing[] {
  let [all, radix]: [readonly Sharing[], number] = [[[0, 0, 0]], 1];
  for (const { count } of places.map((g) => groups[g]!)) {
    const more: Sharing[] = [];
    for (let one = 0; one <= count && more.length <= MOST_SHARINGS; one++)
      for (let other = 0; one + other <= count && more.length <= MOST_SHARINGS; other++)
        for (const [a, b, both] of all)
          more.push([a + one * radix, b + other * radix, both + (one + other) * radix]);
    [all, radix] = [more, radix * (count + 1)];
  }
  return all;
}

/**
 * The best value of each part from corner to corner, for each number of held pieces: one piece, a smaller part, or two
 * parts beside or above each other of which the first cannot itself be had as well by the same kind of cut.
 */
function* bestCuts(
  xs: readonly number[],
  ys: readonly number[],
  ways: readonly Lying[],
  held: readonly ValuedGroup[],
  allowed: Allowed,
): Generator<void, number, void> {
  const shares = sharings([...held.keys()], held);
  const [one, other, both] = [0, 1, 2].map((k) => Uint16Array.from(shares, (share) => share[k]!));
  const states = held.reduce((product, { count }) => product * (count + 1), 1);
  const [leftX, leftY] = [rests(xs), rests(ys)];
  // The part up to xs[i] and ys[j] has its values from (j * n + i) * states on.
  const n = xs.length;
  const best = new Float64Array(n * ys.length * states);
  const join = (most: Float64Array, a: number, b: number) => {
    for (let k = 0; k < shares.length; k++) {
      const sum = best[a * states + one![k]!]! + best[b * states + other![k]!]!;
      if (sum > most[both![k]!]!) most[both![k]!] = sum;
    }
  };
  const alone = onePiece(xs, ys, ways, held, states);
  const nothing = new Float64Array(states);
  const [beside, above] = [new Float64Array(states), new Float64Array(states)];
  const stacks: number[][] = xs.map(() => []);
  let slice = 0;
  for (let j = 1; j < ys.length; j++) {
    const strips: number[] = [];
    const downY = leftY[j]!;
    for (let i = 1; i < n; i++) {
      const at = j * n + i;
      const downX = leftX[i]!;
      const piece = alone.get(at) ?? nothing;
      for (let s = 0; s < states; s++) beside[s] = best[(at - 1) * states + s]!;
      for (let s = 0; s < states; s++) above[s] = best[(at - n) * states + s]!;
      for (const x of strips) join(beside, j * n + x, j * n + downX[x]!);
      for (const y of stacks[i]!) join(above, y * n + i, downY[y]! * n + i);
      let [strip, stack] = [false, false];
      for (let s = 0; s < states; s++) {
        const [p, b, a] = [piece[s]!, beside[s]!, above[s]!];
        strip ||= p > b || a > b;
        stack ||= p > a || b > a;
        best[at * states + s] = Math.max(p, b, a);
      }
      if (strip) strips.push(i);
      if (stack) stacks[i]!.push(j);
      slice += 10 + 4 * states + (strips.length + stacks[i]!.length) * shares.length;
    }
    if (slice < SLICE) continue;
    allowed.steps -= slice;
    slice = 0;
    if (allowed.steps <= 0) return Number.MAX_SAFE_INTEGER;
    yield;
  }
  return best[best.length - 1]!;
}

const SLICE = 2_000_000;

/** By corner, for each number of held pieces: the best single piece that needs all of that part. */
function onePiece(
  xs: readonly number[],
  ys: readonly number[],
  ways: readonly Lying[],
  held: readonly ValuedGroup[],
  states: number,
): ReadonlyMap<number, Float64Array> {
  const corners = new Map<number, Float64Array>();
  for (const { dx, dy, group } of ways) {
    const corner = ys.indexOf(dy) * xs.length + xs.indexOf(dx);
    const most = corners.get(corner) ?? new Float64Array(states);
    corners.set(corner, most);
    const before = group.held ? held.slice(0, held.indexOf(group)) : [];
    const radix = before.reduce((product, { count }) => product * (count + 1), 1);
    for (let s = 0; s < states; s++)
      if (!group.held || Math.floor(s / radix) % (group.count + 1) > 0)
        most[s] = Math.max(most[s]!, group.worth);
  }
  return corners;
}

/** For each point, and each up to it: the place of the last point that is not beyond their distance. */
function rests(points: readonly number[]): readonly Uint16Array[] {
  return points.map((end, i) => {
    const row = new Uint16Array(i + 1);
    let at = i;
    for (let p = 0; p <= i; p++) {
      while (points[at]! > end - points[p]!) at--;
      row[p] = at;
    }
    return row;
  });
}
