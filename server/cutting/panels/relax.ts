/** Whether pieces can fit a purchase as far as fractions of patterns tell, by column generation. */
import { sharesOf } from "./holding";
import { type Column, Master, TINY } from "./master";
import { needOf, type RoomKind, type WorthNeed } from "./needs";
import { bestPattern, type Pattern } from "./pattern";
import type { Meter, PanelQuestion } from "./question";

export type Relaxed =
  /** A need that the purchase fails. */
  | { readonly fits: false; readonly need: WorthNeed }
  /** Patterns and how often each would be cut; null when it could not be told. */
  | {
      readonly fits: true;
      readonly patterns: readonly { column: Column; times: number }[] | null;
      /** Work that it took to price patterns once. */
      readonly work: number;
    };

/** Worths are scaled up to whole numbers so large. */
const SCALE = 2 ** 28;
const MOST_ROUNDS = 300;

/**
 * `counts` is how many are bought of each sheet sold; no pattern uses more pieces of the held groups than there are;
 * `pool` keeps the patterns for the next purchase.
 */
export function* relax(
  question: PanelQuestion,
  kinds: readonly RoomKind[],
  counts: readonly number[],
  held: readonly number[],
  pool: Column[],
  meter: Meter,
  until: number,
): Generator<void, Relaxed, void> {
  const { groups, sellable } = question;
  const supply = kinds.map(({ sold, supply }) => (sold >= 0 ? counts[sold]! : supply));
  const demand = groups.map(({ count }, g) => (sellable.includes(g) ? count : 0));
  const largest = groups.reduce((most, { length, width }) => Math.max(most, length * width), 1);
  const costs = groups.map(({ length, width }) => (length * width) / largest);
  const master = new Master(costs, demand, supply);
  for (const column of pool) if (held.every((g) => column.counts[g]! <= groups[g]!.count)) master.add(column);
  let work = 0;
  for (let round = 0; round < MOST_ROUNDS && meter.used < until; round++) {
    const duals = master.solve(meter);
    if (duals.left < TINY * 100) return { fits: true, patterns: master.used(), work };
    const worths = duals.worths.map((n, g) =>
      sellable.includes(g) ? Math.max(0, Math.floor(n * SCALE + 0.5)) : 0,
    );
    const found: (Pattern | undefined)[] = [];
    let gain = worths.reduce((sum, n, g) => sum + n * demand[g]!, 0);
    let news = 0;
    const before = meter.used;
    for (const [k, { room }] of kinds.entries()) {
      if (supply[k] === 0) continue;
      const pattern = yield* bestPattern(room, groups, worths, held, meter);
      found[k] = pattern;
      gain -= pattern.value * supply[k]!;
      const value = pattern.counts.reduce((sum, n, g) => sum + n * duals.worths[g]!, 0);
      if (value <= duals.sheets[k]! + TINY * 10) continue;
      pool.push({ kind: k, counts: pattern.counts });
      master.add(pool.at(-1)!);
      news++;
    }
    work = Math.max(work, meter.used - before);
    if (gain > 0) return { fits: false, need: yield* needOf(question, kinds, worths, held, found, meter) };
    if (news === 0) break;
  }
  return { fits: true, patterns: null, work };
}

/**
 * The same holding more and more groups, those first whose pieces the patterns take too often, as long as pricing once
 * takes no more than `most` work; a need if one is found.
 */
export function* relaxHolding(
  question: PanelQuestion,
  kinds: readonly RoomKind[],
  counts: readonly number[],
  relaxed: Relaxed,
  most: number,
  pool: Column[],
  meter: Meter,
  until: number,
): Generator<void, WorthNeed | null, void> {
  const { groups } = question;
  const held: number[] = [];
  const work = relaxed.fits ? relaxed.work : 0;
  for (let last = relaxed; ; ) {
    if (!last.fits) return last.need;
    const patterns = last.patterns ?? [];
    const over = groups.map(({ count, length, width }, g) =>
      patterns.reduce(
        (sum, { column, times }) => sum + times * Math.max(0, column.counts[g]! - count) * length * width,
        0,
      ),
    );
    const worst = over.reduce((best, n, g) => (n > over[best]! ? g : best), 0);
    if (!(over[worst]! > TINY) || work * sharesOf(groups, [...held, worst]) > most) return null;
    held.push(worst);
    last = yield* relax(question, kinds, counts, held, pool, meter, until);
  }
}
