/**
 * The last word on "no cheaper way exists": an exhaustive search through all purchases that would be cheaper, or as cheap
 * with less wood, in whole numbers only. It shares no code with what looks for the cheapest way. Every one of them must
 * fail some need; the needs themselves are worked out anew by whoever calls this (`certify-boards.ts`, and its like for
 * sheets).
 */

/** What a purchase must give: `sum gives[w] * count[w] >= least`. */
export interface CheckedNeed {
  readonly gives: readonly number[];
  readonly least: number;
}

export interface CheckedWare {
  readonly weight: number;
  readonly size: number;
  readonly supply: number;
}

/**
 * Whether no purchase of less weight, and none of that weight and less size, meets all needs. False as well where any
 * number is not whole or too large to be exact, or where the search takes more than `MOST_NODES`.
 */
export function noneBelow(
  wares: readonly CheckedWare[],
  needs: readonly CheckedNeed[],
  [weight, size]: readonly [weight: number, size: number],
): boolean {
  const whole = (n: number) => Number.isSafeInteger(n) && n >= 0;
  const sound =
    wares.every(
      (w) => whole(w.weight) && whole(w.size) && (whole(w.supply) || w.supply === Number.POSITIVE_INFINITY),
    ) &&
    needs.every(
      (n) => Number.isSafeInteger(n.least) && n.gives.every(whole) && n.gives.length === wares.length,
    );
  if (!sound || !whole(weight) || !whole(size)) return false;
  const search: Search = { wares, needs, nodes: 0 };
  return (
    !canMeet(search, [weight - 1, Number.POSITIVE_INFINITY]) &&
    !canMeet(search, [weight, size - 1]) &&
    search.nodes <= MOST_NODES
  );
}

const MOST_NODES = 3_000_000;

interface Search {
  readonly wares: readonly CheckedWare[];
  readonly needs: readonly CheckedNeed[];
  nodes: number;
}

/** Whether some counts of the wares from i on meet what is missing within the weight and size left. */
function canMeet(
  search: Search,
  [weight, size]: readonly [number, number],
  i = 0,
  missing: readonly number[] = search.needs.map(({ least }) => least),
): boolean {
  const { wares, needs } = search;
  if (++search.nodes > MOST_NODES || weight < 0 || size < 0) return search.nodes > MOST_NODES;
  let [open, wanted] = [false, 0];
  for (let k = 0; k < needs.length; k++) {
    const lack = missing[k]!;
    if (lack <= 0) continue;
    open = true;
    // Each need alone must be within reach: all the money left, and all the size left, spent on what gives most for it.
    const { gives } = needs[k]!;
    let [byWeight, bySize] = [false, false];
    for (let j = i; j < wares.length; j++) {
      byWeight ||= atLeast(gives[j]!, weight, lack, wares[j]!.weight);
      bySize ||= atLeast(gives[j]!, size, lack, wares[j]!.size);
    }
    if (!byWeight || !bySize) return false;
    if (gives[i]! > 0) wanted = Math.max(wanted, Math.ceil(lack / gives[i]!));
  }
  if (!open) return true;
  const ware = wares[i]!;
  // The last ware has to make up for all that is missing.
  const fewest = i === wares.length - 1 ? wanted : 0;
  for (let count = Math.min(ware.supply, wanted); count >= fewest; count--) {
    const left = missing.map((lack, k) => lack - count * needs[k]!.gives[i]!);
    if (canMeet(search, [weight - count * ware.weight, size - count * ware.size], i + 1, left)) return true;
  }
  return false;
}

/** a * b >= c * d, and a > 0: BigInt where a product may not be exact. */
function atLeast(a: number, b: number, c: number, d: number): boolean {
  if (a === 0 || b === Number.POSITIVE_INFINITY) return a > 0;
  const [left, right] = [a * b, c * d];
  if (left <= Number.MAX_SAFE_INTEGER && right <= Number.MAX_SAFE_INTEGER) return left >= right;
  return BigInt(a) * BigInt(b) >= BigInt(c) * BigInt(d);
}
