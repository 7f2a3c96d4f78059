// The parts of a proof, each by itself against something that tries everything.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BoardJob, layOut } from "../server/cutting/job";
import { noneBelow } from "../server/cutting/proof/certify";
import { leastPurchase, type Need, type Ware } from "../server/cutting/proof/least";
import { prove } from "../server/cutting/proof/prove";
import { Simplex } from "../server/cutting/proof/simplex";
import { boardPlan } from "./bench/layout/board-plans";

const INCH = 16256;

const whole = (max: number) => fc.integer({ min: 0, max });
const purchases = fc.integer({ min: 1, max: 3 }).chain((n) =>
  fc.record({
    wares: fc.array(
      fc.record({ weight: fc.integer({ min: 1, max: 9 }), size: fc.integer({ min: 1, max: 9 }) }),
      { minLength: n, maxLength: n },
    ),
    needs: fc.array(
      fc.record({ gives: fc.array(whole(6), { minLength: n, maxLength: n }), least: whole(20) }),
      { minLength: 1, maxLength: 3 },
    ),
  }),
);

/** The least price that meets all needs with at most 20 of each; null where none does. */
function leastByAll(wares: readonly Ware[], needs: readonly Need[]): readonly [number, number] | null {
  let best: readonly [number, number] | null = null;
  const all = (i: number, counts: readonly number[]): void => {
    if (i < wares.length) {
      for (let n = 0; n <= 20; n++) all(i + 1, [...counts, n]);
      return;
    }
    const given = needs.every(
      ({ gives, least }) => counts.reduce((sum, n, w) => sum + n * gives[w]!, 0) >= least,
    );
    if (!given) return;
    const weight = counts.reduce((sum, n, w) => sum + n * wares[w]!.weight, 0);
    const size = counts.reduce((sum, n, w) => sum + n * wares[w]!.size, 0);
    if (best === null || weight < best[0] || (weight === best[0] && size < best[1])) best = [weight, size];
  };
  all(0, []);
  return best;
}

describe("the least purchase", () => {
  it("is that found by trying all, and the checker agrees to it and to nothing above", () => {
    fc.assert(
      fc.property(purchases, ({ wares: some, needs }) => {
        const wares = some.map((ware) => ({ ...ware, supply: 20 }));
        const least = leastByAll(wares, needs);
        const found = leastPurchase(wares, needs, [1000, 1000], [0, 0], { left: 1e7 });
        expect(found === undefined ? "too long" : (found?.price ?? null)).toEqual(least);
        if (least === null) {
          expect(noneBelow(wares, needs, [900, 900])).toBe(true);
          return;
        }
        expect(noneBelow(wares, needs, least)).toBe(true);
        expect(noneBelow(wares, needs, [least[0], least[1] + 1])).toBe(false);
        expect(noneBelow(wares, needs, [least[0] + 1, 0])).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  it("is none of those that are not to be chosen, nor what is within one of them", () => {
    const wares = [{ weight: 3, size: 1, supply: Number.POSITIVE_INFINITY }];
    const needs = [{ gives: [2], least: 5 }];
    const ask = (without: number[][]) =>
      leastPurchase(wares, needs, [99, 99], [0, 0], { left: 1e4 }, without);
    expect(ask([])?.counts).toEqual([3]);
    expect(ask([[3]])?.counts).toEqual([4]);
    expect(ask([[5]])?.counts).toEqual([6]);
  });

  it("is left open when the steps do not suffice", () => {
    const wares = Array.from({ length: 8 }, (_, i) => ({ weight: 50 + i, size: 1, supply: 99 }));
    const needs = [{ gives: wares.map((_, i) => 7 + i), least: 500 }];
    expect(leastPurchase(wares, needs, [1e6, 0], [0, 0], { left: 20 })).toBeUndefined();
  });
});

describe("the checker", () => {
  const wares = [{ weight: 5, size: 2, supply: Number.POSITIVE_INFINITY }];

  it("says no to numbers that are not whole, and to needs of another length", () => {
    expect(noneBelow(wares, [{ gives: [1], least: 3 }], [15, 6])).toBe(true);
    for (const gives of [[1.5], [Number.NaN], [-1], [], [1, 1]])
      expect(noneBelow(wares, [{ gives, least: 3 }], [15, 6])).toBe(false);
    for (const least of [2.5, Number.NaN, 2 ** 60])
      expect(noneBelow(wares, [{ gives: [1], least }], [15, 6])).toBe(false);
    for (const below of [
      [-1, 0],
      [15.5, 0],
      [Number.NaN, 0],
    ] as const)
      expect(noneBelow(wares, [{ gives: [1], least: 3 }], below)).toBe(false);
  });

  it("stays exact where products are beyond whole doubles", () => {
    const large = [{ weight: 2 ** 40, size: 1, supply: Number.POSITIVE_INFINITY }];
    const needs = [{ gives: [2 ** 40 - 1], least: 2 ** 42 }];
    expect(noneBelow(large, needs, [5 * 2 ** 40, 0])).toBe(true);
    expect(noneBelow(large, needs, [5 * 2 ** 40 + 1, 0])).toBe(false);
  });
});

describe("the linear program", () => {
  it("finds a known optimum, takes more columns, and follows changed right-hand sides", () => {
    // Two of a and three of b; a pair (a, b) costs 1.5, either alone 1 (worked out by hand).
    const lp = new Simplex(Float64Array.of(2, 3), [1, 1]);
    expect(lp.objective()).toBe(5);
    const pair = lp.add([0, 1, 1, 1], 1.5);
    expect(lp.improve(100)).toBe(true);
    expect(lp.objective()).toBeCloseTo(4, 12);
    expect(lp.valueOf(pair)).toBeCloseTo(2, 12);
    expect([...lp.duals].reduce((sum, dual, r) => sum + dual * [2, 3][r]!, 0)).toBeCloseTo(4, 12);
    lp.setRhs(1, 1);
    expect(lp.restore(100)).toBe(true);
    expect(lp.objective()).toBeCloseTo(2.5, 12);
  });
});

describe("a proof", () => {
  it("ends when its counted work is done, with what it has, and says no more than it knows", () => {
    const job = boardPlan(22);
    const run = prove(job, 1_000_000);
    let [step, news] = [run.next(), 0];
    for (; !step.done; step = run.next()) news++;
    expect(news).toBeGreaterThan(0);
    expect(step.value.proof).toMatchObject({ status: "bounded", money: true });
    expect(step.value.proof.work).toBeLessThan(20_000_000);
    expect(step.value.proof.bound).toBeLessThan(step.value.proof.cost);
    expect(step.value.proof.cost).toBeLessThanOrEqual(layOut(job).cost!);
  });

  it("counts ticks where a price is missing, and nothing where nothing is bought", () => {
    const job: BoardJob = {
      pieces: [{ id: "a / 1", length: 40 * INCH }],
      sold: [
        { id: "six", length: 72 * INCH, price: null },
        { id: "four", length: 48 * INCH, price: 300 },
      ],
      onHand: [],
      kerf: 0,
      endTrim: 0,
      salvage: "use up",
    };
    expect(proofOf(job)).toMatchObject({ status: "proven", cost: 48 * INCH, bound: 48 * INCH, money: false });
    const pile = { ...job, onHand: [{ id: "old", length: 41 * INCH, bad: [] }] };
    expect(proofOf(pile)).toMatchObject({ status: "proven", cost: 0, bound: 0 });
  });
});

function proofOf(job: BoardJob) {
  const run = prove(job, 1e8);
  for (;;) {
    const { value, done } = run.next();
    if (done) return value.proof;
  }
}
