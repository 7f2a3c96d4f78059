/** Which tins to buy: the cheapest whole tins that hold enough. */
import type { Tin } from "./finishes";

export interface TinsBought {
  readonly tin: Tin;
  readonly count: number;
}

/**
 * The cheapest set of whole tins that holds that much, in mm³; of those that cost the same the one of fewest tins, then
 * the one that holds least. Without any price, the set that holds least. None when nothing is needed; undefined when no
 * tin is sold, or it would be more than a million tins. Exact for a few sizes; past a cap on work, the best set found.
 */
export function cheapestTins(tins: readonly Tin[], amount: number): TinsBought[] | undefined {
  const offered = offersOf(tins);
  if (offered.length === 0 || !Number.isFinite(amount)) return undefined;
  if (amount <= 0) return [];
  // By what a measure costs: the first bounds what any other way could cost.
  const sizes = offered.sort((a, b) => a.cost / a.holds - b.cost / b.holds || b.holds - a.holds);
  const [cheap] = sizes;
  const left = { steps: MOST_STEPS };
  let best: Found | undefined;
  const counts = sizes.map(() => 0);
  const take = (cost: number, held: number): void => {
    const found = { counts: [...counts], cost, held, tins: counts.reduce((a, b) => a + b, 0) };
    if (!best || isBetter(found, best)) best = found;
  };
  /** Tries every number of the tins from the dearest a measure down; the cheapest then fills what is left. */
  const tryFrom = (at: number, cost: number, held: number): void => {
    if (left.steps-- <= 0) return;
    const missing = amount - held;
    const least = cost + (Math.max(0, missing) * cheap!.cost) / cheap!.holds;
    if (best && least > best.cost + CRUMB) return;
    const { holds, cost: each } = sizes[at]!;
    const enough = wholeTins(missing, holds);
    if (at === 0) {
      counts[0] = enough;
      take(cost + enough * each, held + enough * holds);
      counts[0] = 0;
      return;
    }
    for (let n = 0; n <= Math.min(enough, MOST_OTHERS); n++) {
      counts[at] = n;
      tryFrom(at - 1, cost + n * each, held + n * holds);
    }
    counts[at] = 0;
  };
  tryFrom(sizes.length - 1, 0, 0);
  if (!best || best.tins > MOST_TINS) return undefined;
  const { counts: bought } = best;
  return sizes
    .flatMap(({ tin }, i) => (bought[i]! > 0 ? [{ tin, count: bought[i]! }] : []))
    .sort((a, b) => b.tin.size.approx - a.tin.size.approx);
}

interface Found {
  readonly counts: readonly number[];
  readonly cost: number;
  readonly held: number;
  readonly tins: number;
}

const isBetter = (a: Found, b: Found): boolean =>
  Math.abs(a.cost - b.cost) > CRUMB
    ? a.cost < b.cost
    : a.tins !== b.tins
      ? a.tins < b.tins
      : a.held < b.held - CRUMB;

interface OfferedTin {
  readonly tin: Tin;
  readonly holds: number;
  /** In cents, or as much as it holds where nothing has a price. */
  readonly cost: number;
}

/** Tins to choose from: those with a price in the first currency, if any has one; of two of a size the cheaper. */
function offersOf(tins: readonly Tin[]): OfferedTin[] {
  const currency = tins.find((t) => t.price)?.price?.dim.currency;
  const offers = tins
    .filter((t) => currency === undefined || t.price?.dim.currency === currency)
    .map((tin): OfferedTin => {
      const holds = tin.size.approx;
      return { tin, holds, cost: Math.round(tin.price ? tin.price.approx * 100 : holds) };
    });
  // What holds no less and costs no more is always taken instead.
  return offers
    .filter(
      (o, i) =>
        !offers.some(
          (p, j) => p.holds >= o.holds && p.cost <= o.cost && (p.holds > o.holds || p.cost < o.cost || j < i),
        ),
    )
    .slice(0, MOST_SIZES);
}

/** How many of that size hold so much; what arithmetic leaves over is no further tin. */
const wholeTins = (amount: number, holds: number): number => Math.max(0, Math.ceil(amount / holds - CRUMB));

const CRUMB = 1e-9;
/** Sizes of one finish that are looked at. */
const MOST_SIZES = 12;
/** Tins of each size that is dear by the measure: more of them would be one larger tin. */
const MOST_OTHERS = 24;
const MOST_STEPS = 20_000;
const MOST_TINS = 1_000_000;
