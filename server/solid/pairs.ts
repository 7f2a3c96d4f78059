/** Which solids come near each other: a sweep along the axis in which they are spread the most. */
import { type Bounds, boundsApart } from "./contact";

/** Places of all pairs whose bounds are no further apart than `within`, the lower place first, in order. O(n log n + near pairs along one axis). */
export function nearPairs(bounds: readonly Bounds[], within: number): [number, number][] {
  const axis = widest(bounds);
  const order = bounds
    .map((_, i) => i)
    .sort((a, b) => bounds[a]!.least[axis] - bounds[b]!.least[axis] || a - b);
  const found: [number, number][] = [];
  for (let i = 0; i < order.length; i++) {
    const a = bounds[order[i]!]!;
    for (let j = i + 1; j < order.length; j++) {
      const b = bounds[order[j]!]!;
      if (b.least[axis] > a.most[axis] + within) break;
      if (boundsApart(a, b) <= within)
        found.push(order[i]! < order[j]! ? [order[i]!, order[j]!] : [order[j]!, order[i]!]);
    }
  }
  return found.sort((p, q) => p[0] - q[0] || p[1] - q[1]);
}

function widest(bounds: readonly Bounds[]): 0 | 1 | 2 {
  const spread = ([0, 1, 2] as const).map((k) => {
    const mids = bounds.map((b) => (b.least[k] + b.most[k]) / 2);
    const mean = mids.reduce((a, b) => a + b, 0) / (mids.length || 1);
    return mids.reduce((sum, m) => sum + (m - mean) ** 2, 0);
  });
  return spread.indexOf(Math.max(...spread)) as 0 | 1 | 2;
}
