/** Sets told pair by pair, against walking from thing to thing along the pairs. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DisjointSets } from "../../server/solid/disjoint-sets";

const MOST = 12;
const pairs = fc.array(fc.tuple(fc.nat({ max: MOST - 1 }), fc.nat({ max: MOST - 1 })), { maxLength: 30 });

/** All that can be walked to from a thing. */
function reached(from: number, ways: readonly (readonly [number, number])[]): ReadonlySet<number> {
  const found = new Set([from]);
  for (const at of found)
    for (const [a, b] of ways)
      if (a === at) found.add(b);
      else if (b === at) found.add(a);
  return found;
}

describe("disjoint sets", () => {
  it("hold together what a walk along the pairs reaches, and nothing else", () => {
    fc.assert(
      fc.property(pairs, (joined) => {
        const sets = new DisjointSets<number>();
        joined.forEach(([a, b], n) => {
          expect(sets.join(a, b)).toBe(!reached(a, joined.slice(0, n)).has(b));
        });
        for (let i = 0; i < MOST; i++) {
          const own = reached(i, joined);
          for (let k = 0; k < MOST; k++) expect(sets.topOf(k) === sets.topOf(i)).toBe(own.has(k));
        }
      }),
    );
  });

  it("make no stack of a long chain", () => {
    const sets = new DisjointSets<number>();
    for (let i = 0; i < 100_000; i++) sets.join(i, i + 1);
    expect(sets.topOf(0)).toBe(sets.topOf(100_000));
  });
});
