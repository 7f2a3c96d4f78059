/**
 * Which things to buy: the cheapest counts, and of these the ones with the least wood, that meet every need known so
 * far. A need says that what is bought, together, gives at least so much of something: wood, boards for long pieces, or
 * any other worth that pieces can be given (`need.ts`).
 */

/** One thing that is sold. */
export interface Ware {
  /** What it costs in the ranking, at least 0. */
  readonly weight: number;
  /** Wood in it; decides between purchases that cost the same. */
  readonly size: number;
  /** The most that can be had of it. */
  readonly supply: number;
}

/** `sum gives[w] * count[w] >= least`, in whole numbers, `gives` at least 0. */
export interface Need {
  readonly gives: readonly number[];
  readonly least: number;
}

/** Weight, then size. */
export type Price = readonly [weight: number, size: number];

export interface Purchase {
  readonly counts: readonly number[];
  readonly price: Price;
}

/** Steps still allowed. */
export interface Steps {
  left: number;
}

export const isLess = (a: Price, b: Price): boolean => a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]);

/**
 * The least purchase below `below` that meets all needs, the first found among equals; null when there is none; undefined
 * when the steps did not suffice to tell. `known` is a price below which there is none: reaching it ends the search.
 * None of `without`, nor what is within one of them, is chosen.
 */
export function leastPurchase(
  wares: readonly Ware[],
  needs: readonly Need[],
  below: Price,
  known: Price,
  steps: Steps,
  without: readonly (readonly number[])[] = [],
): Purchase | null | undefined {
  const order = wares.map((_, i) => i).sort((a, b) => wares[b]!.size - wares[a]!.size || a - b);
  const n = order.length;
  const weights = order.map((i) => wares[i]!.weight);
  const sizes = order.map((i) => wares[i]!.size);
  const gives = needs.map((need) => order.map((i) => need.gives[i]!));
  // For what is still needed of k, the wares from i on cost at least so much for each unit of it.
  const cheapest = gives.map((of) => ratiosFrom(of, weights));
  const smallest = gives.map((of) => ratiosFrom(of, sizes));
  const counts = new Array<number>(n).fill(0);
  let best: Purchase | null = null;
  let limit = below;
  const missing = needs.map(({ least }) => least);

  /** More of it than is needed, where what is just enough is not to be chosen. */
  const affordable = (limit: Price, weight: number, size: number, i: number): number => {
    if (i === n) return 0;
    const [money, wood] = [limit[0] - weight, limit[1] - size];
    return weights[i]! > 0
      ? Math.floor(money / weights[i]!)
      : sizes[i]! > 0
        ? Math.floor(wood / sizes[i]!)
        : 0;
  };

  const search = (i: number, weight: number, size: number): void => {
    if (steps.left-- <= 0 || (best !== null && !isLess(known, best.price))) return;
    let [leastWeight, leastSize, most] = [weight, size, 0];
    for (let k = 0; k < missing.length; k++) {
      const lack = missing[k]!;
      if (lack <= 0) continue;
      if (i === n) return;
      leastWeight = Math.max(leastWeight, weight + Math.ceil(lack * cheapest[k]![i]! * SURE));
      leastSize = Math.max(leastSize, size + Math.ceil(lack * smallest[k]![i]! * SURE));
      const each = gives[k]![i]!;
      if (each > 0) most = Math.max(most, Math.ceil(lack / each));
    }
    const needed = most;
    if (!isLess([leastWeight, leastSize], limit)) return;
    if (without.length > 0) most = Math.max(most, affordable(limit, weight, size, i));
    if (i === n) {
      if (without.some((others) => order.every((w, k) => counts[k]! <= others[w]!))) return;
      best = { counts: wares.map((_, w) => counts[order.indexOf(w)]!), price: [weight, size] };
      limit = best.price;
      return;
    }
    // The last one makes up for all that is missing.
    const first = Math.min(most, wares[order[i]!]!.supply);
    const last = i === n - 1 ? needed : 0;
    for (let count = first; count >= last && steps.left > 0; count--) {
      counts[i] = count;
      for (let k = 0; k < missing.length; k++) missing[k]! -= count * gives[k]![i]!;
      search(i + 1, weight + count * weights[i]!, size + count * sizes[i]!);
      for (let k = 0; k < missing.length; k++) missing[k]! += count * gives[k]![i]!;
    }
    counts[i] = 0;
  };
  search(0, 0, 0);
  return steps.left > 0 ? best : undefined;
}

/** Keeps a rounded quotient from passing the whole number it stands for. */
const SURE = 1 - 1e-12;

/** Cost for each unit given, the least of all from i on; infinite where none gives any. */
function ratiosFrom(gives: readonly number[], costs: readonly number[]): readonly number[] {
  const ratios = new Array<number>(gives.length + 1).fill(Number.POSITIVE_INFINITY);
  for (let i = gives.length - 1; i >= 0; i--)
    ratios[i] = gives[i]! > 0 ? Math.min(ratios[i + 1]!, costs[i]! / gives[i]!) : ratios[i + 1]!;
  return ratios;
}
