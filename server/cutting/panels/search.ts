/** Packing into given sheets again and again: the order of the pieces and the rule are changed a little each time. */
import type { Dice } from "../dice";
import { PACK_RULES, type Packing, packInto, type Sheet } from "./pack";
import { type Group, isDue, type Meter } from "./question";

/**
 * The packing with the fewest pieces left over, then the least area of them, found before `until` on the meter; ends as
 * soon as no more than `enough` are left.
 */
export function* searchPacking(
  groups: readonly Group[],
  sheets: readonly Sheet[],
  counts: readonly number[],
  enough: number,
  dice: Dice,
  meter: Meter,
  until: number,
): Generator<void, Packing, void> {
  const orders = startOrders(groups, counts);
  let best: Packing | null = null;
  let [now, nowOrder, nowRule] = [null as Packing | null, orders[0]!, 0];
  let [tries, stale] = [0, 0];
  const starts = orders.length * PACK_RULES.length;
  while (true) {
    let [order, rule] = [nowOrder, nowRule];
    if (tries < starts)
      [order, rule] = [orders[Math.floor(tries / PACK_RULES.length)]!, tries % PACK_RULES.length];
    else if (stale > STALE) {
      [order, rule, now, stale] = [
        shuffledGroups(orders[dice(orders.length)]!, dice),
        dice(PACK_RULES.length),
        null,
        0,
      ];
    } else {
      order = changed(nowOrder, now, dice);
      if (dice(8) === 0) rule = dice(PACK_RULES.length);
    }
    const packing = packInto(groups, sheets, order, PACK_RULES[rule]!);
    meter.used += 16 * packing.steps + 100 * order.length;
    tries++;
    stale++;
    if (now === null || !isWorse(packing, now)) {
      if (now === null || isWorse(now, packing)) stale = 0;
      [now, nowOrder, nowRule] = [packing, order, rule];
    }
    if (best === null || isWorse(best, packing)) best = packing;
    if (best.left.length <= enough || meter.used >= until) return best;
    if (isDue(meter)) yield;
  }
}

const STALE = 400;

function isWorse(a: Packing, b: Packing): boolean {
  return a.area > b.area;
}

/** One entry a piece, largest first by area, by length, by width, by the longer and by the shorter side. */
function startOrders(groups: readonly Group[], counts: readonly number[]): readonly (readonly number[])[] {
  const sizes: readonly ((g: Group) => number)[] = [
    (g) => g.length * g.width,
    (g) => g.length,
    (g) => g.width,
    (g) => Math.max(g.length, g.width),
    (g) => Math.min(g.length, g.width),
    (g) => g.length + g.width,
  ];
  return sizes.map((size) =>
    groups
      .map((_, g) => g)
      .sort((a, b) => size(groups[b]!) - size(groups[a]!) || a - b)
      .flatMap((g) => new Array<number>(counts[g]!).fill(g)),
  );
}

function shuffledGroups(order: readonly number[], dice: Dice): readonly number[] {
  let mixed = [...order];
  for (let times = dice(4); times >= 0; times--) mixed = moved(mixed, dice(mixed.length), dice(mixed.length));
  return mixed;
}

/** What was left over comes earlier, or two pieces change places, or one goes elsewhere. */
function changed(order: readonly number[], now: Packing | null, dice: Dice): readonly number[] {
  const n = order.length;
  const left = now?.left ?? [];
  if (left.length > 0 && dice(2) === 0) {
    const from = left[dice(left.length)]!;
    return moved(order, from, dice(from + 1));
  }
  const [i, j] = [dice(n), dice(n)];
  if (dice(2) === 0) return moved(order, i, j);
  const swapped = [...order];
  [swapped[i], swapped[j]] = [order[j]!, order[i]!];
  return swapped;
}

function moved(order: readonly number[], from: number, to: number): number[] {
  const list = [...order];
  const [one] = list.splice(from, 1);
  list.splice(to, 0, one!);
  return list;
}
