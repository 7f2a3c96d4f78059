/**
 * The check that a purchase does not take all pieces, by trying everything in whole numbers. It shares no code with what
 * found that out (`bundles.ts`, `exhaust.ts`).
 */
import type { SheetOnHand } from "../sheets";

export interface CheckedGroup {
  readonly length: number;
  readonly width: number;
  readonly free: boolean;
  readonly count: number;
}

/** Steps that the check may still take. */
export interface Allowed {
  steps: number;
}

/** For each lot, so many pieces of each group as one number: the sides of the rectangles that it can be cut from. */
type Lots = readonly (readonly number[])[];

/** Rectangles for every lot, for sheets with grain and without. */
export interface AllLots {
  readonly grain: Lots;
  readonly plain: Lots;
}

/** Rectangles that waste no more area than `slack`; null when the steps ran out. */
export function* allLots(
  sheets: readonly SheetOnHand[],
  groups: readonly CheckedGroup[],
  kerf: number,
  slack: number,
  allowed: Allowed,
): Generator<void, AllLots | null, void> {
  const [grained, others] = [sheets.filter(({ grain }) => grain), sheets.filter(({ grain }) => !grain)];
  const grain = yield* lotsFor(grained, groups, kerf, slack, allowed);
  const plain = yield* lotsFor(others, groups, kerf, slack, allowed);
  return grain && plain && { grain, plain };
}

/** Area of sheets less that of the pieces, kerfs included: the most that can be wasted. */
export function slackOf(
  sheets: readonly SheetOnHand[],
  groups: readonly CheckedGroup[],
  kerf: number,
): number {
  const area = ({ length, width }: { length: number; width: number }) => (length + kerf) * (width + kerf);
  const pieces = groups.reduce((sum, group) => sum + group.count * area(group), 0);
  return sheets.reduce((sum, sheet) => sum + area(sheet), 0) - pieces;
}

const MOST_LOTS = 1_000_000;
const SLICE = 2_000_000;

function* lotsFor(
  sheets: readonly SheetOnHand[],
  groups: readonly CheckedGroup[],
  kerf: number,
  slack: number,
  allowed: Allowed,
): Generator<void, Lots | null, void> {
  const total = groups.reduce((product, { count }) => product * (count + 1), 1);
  if (sheets.length === 0) return [];
  if (total > MOST_LOTS) return null;
  const units = unitsOf(groups);
  const fits = (x: number, y: number) =>
    sheets.some(({ length, width }) => x <= length + kerf && y <= width + kerf);
  const largest = Math.max(...sheets.map(({ length, width }) => (length + kerf) * (width + kerf)));
  const lots: (readonly number[])[] = [[0, 0]];
  let slice = 0;
  for (let lot = 1; lot < total; lot++) {
    const area = areaOf(lot, units, groups, kerf);
    let pairs: readonly number[] = [];
    const add = (x: number, y: number) => {
      if (x * y > area + slack) return;
      for (let p = 0; p < pairs.length; p += 2) if (pairs[p]! <= x && pairs[p + 1]! <= y) return;
      if (!fits(x, y)) return;
      const kept = pairs.filter((_, p) => pairs[p - (p % 2)]! < x || pairs[p - (p % 2) + 1]! < y);
      pairs = [...kept, x, y];
    };
    groups.forEach(({ length, width, free }, g) => {
      if (units[g] !== lot) return;
      add(length + kerf, width + kerf);
      if (free || !sheets[0]!.grain) add(width + kerf, length + kerf);
    });
    slice += 20 * groups.length;
    for (const part of area <= largest ? partsOf(lot, units, groups) : []) {
      const ones = lots[part]!;
      if (ones.length === 0) continue;
      const others = lots[lot - part]!;
      slice += 2 * ones.length * others.length;
      for (let a = 0; a < ones.length; a += 2)
        for (let b = 0; b < others.length; b += 2) {
          add(ones[a]! + others[b]!, Math.max(ones[a + 1]!, others[b + 1]!));
          add(Math.max(ones[a]!, others[b]!), ones[a + 1]! + others[b + 1]!);
        }
    }
    lots.push(pairs);
    if (slice < SLICE) continue;
    allowed.steps -= slice;
    slice = 0;
    if (allowed.steps <= 0) return null;
    yield;
  }
  return lots;
}

function areaOf(
  lot: number,
  units: readonly number[],
  groups: readonly CheckedGroup[],
  kerf: number,
): number {
  return groups.reduce(
    (sum, { length, width }, g) => sum + amount(lot, g, units, groups) * (length + kerf) * (width + kerf),
    0,
  );
}

function unitsOf(groups: readonly CheckedGroup[]): readonly number[] {
  return groups.map((_, g) => groups.slice(0, g).reduce((product, { count }) => product * (count + 1), 1));
}

/** How many pieces of group g a lot has. */
function amount(lot: number, g: number, units: readonly number[], groups: readonly CheckedGroup[]): number {
  return Math.floor(lot / units[g]!) % (groups[g]!.count + 1);
}

/** Of every way to part a lot in two, the smaller number. */
function* partsOf(
  lot: number,
  units: readonly number[],
  groups: readonly CheckedGroup[],
): Generator<number, void, void> {
  const most = groups.map((_, g) => amount(lot, g, units, groups));
  const now = groups.map(() => 0);
  for (let part = 0, g = 0; g < groups.length; ) {
    if (now[g] === most[g]) {
      part -= now[g]! * units[g]!;
      now[g++] = 0;
      continue;
    }
    now[g]!++;
    part += units[g]!;
    if (2 * part > lot) return;
    g = 0;
    yield part;
  }
}

/** Whether these sheets together cannot take all pieces. False as well when the steps ran out. */
export function* cannotTake(
  sheets: readonly SheetOnHand[],
  groups: readonly CheckedGroup[],
  kerf: number,
  { grain, plain }: AllLots,
  allowed: Allowed,
): Generator<void, boolean, void> {
  const units = unitsOf(groups);
  const area = (lot: number) => areaOf(lot, units, groups, kerf);
  const room = ({ length, width }: SheetOnHand) => (length + kerf) * (width + kerf);
  const taken = sheets.map((sheet) => {
    const lots = sheet.grain ? grain : plain;
    const fitting: { lot: number; area: number }[] = [];
    lots.forEach((pairs, lot) => {
      for (let p = 0; p < pairs.length; p += 2)
        if (pairs[p]! <= sheet.length + kerf && pairs[p + 1]! <= sheet.width + kerf) {
          fitting.push({ lot, area: area(lot) });
          break;
        }
    });
    allowed.steps -= 20 * lots.length;
    return { sheet, fitting: fitting.sort((a, b) => b.area - a.area) };
  });
  taken.sort((a, b) => a.fitting.length - b.fitting.length);
  let missing = new Map([[groups.reduce((lot, { count }, g) => lot + count * units[g]!, 0), 0]]);
  for (const [lot] of missing) missing.set(lot, area(lot));
  for (const [t, { fitting }] of taken.entries()) {
    const after = taken.slice(t + 1).reduce((sum, { sheet }) => sum + room(sheet), 0);
    const left = new Map<number, number>();
    let slice = 0;
    for (const [lot, due] of missing) {
      for (const one of fitting) {
        if (due - one.area > after) break;
        slice += 2 * groups.length;
        const within = groups.every(
          (_, g) => amount(one.lot, g, units, groups) <= amount(lot, g, units, groups),
        );
        if (within) left.set(lot - one.lot, due - one.area);
      }
      if (slice < SLICE) continue;
      allowed.steps -= slice;
      slice = 0;
      if (allowed.steps <= 0) return false;
      yield;
    }
    missing = left;
  }
  return !missing.has(0) && allowed.steps > 0;
}
