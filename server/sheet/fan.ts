/**
 * Places along a line for labels that all take the same room: in order, at least `pitch` apart, between `from` and `to`,
 * as near to where they belong as that allows (least sum of squared distances, by pooling neighbours that push each
 * other). Null when there is no room for so many. `xs` rise; units are the caller's.
 */
export function fanOut(
  xs: readonly number[],
  pitch: number,
  from: number,
  to: number,
): readonly number[] | null {
  const most = to - (xs.length - 1) * pitch;
  if (most < from) return null;
  const pools: { sum: number; count: number }[] = [];
  xs.forEach((x, i) => {
    pools.push({ sum: x - i * pitch, count: 1 });
    for (let last = pools.length - 1; last > 0 && meanOf(pools[last - 1]!) > meanOf(pools[last]!); last--) {
      const pushed = pools.pop()!;
      pools[last - 1] = {
        sum: pools[last - 1]!.sum + pushed.sum,
        count: pools[last - 1]!.count + pushed.count,
      };
    }
  });
  return pools
    .flatMap((pool) => Array.from({ length: pool.count }, () => Math.min(most, Math.max(from, meanOf(pool)))))
    .map((place, i) => place + i * pitch);
}

function meanOf({ sum, count }: { readonly sum: number; readonly count: number }): number {
  return sum / count;
}
