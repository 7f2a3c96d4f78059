/** The tins that are bought, against every other set of tins. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly, fraction, money, VOLUME } from "../../server/units";
import type { Tin } from "../../server/worked";
import { cheapestTins } from "../../server/worked/tins";

const tin = (litres: number, cents: number | undefined): Tin => ({
  size: exactly(VOLUME, fraction.rational(litres * 1_000_000)),
  text: `${litres} L`,
  price: cents === undefined ? undefined : exactly(money("$"), fraction.rational(cents, 100)),
});
const bought = (tins: readonly Tin[], litres: number) =>
  cheapestTins(tins, litres * 1e6)?.map((b) => [b.count, b.tin.text]);

describe("whole tins", () => {
  const SHOP = [tin(1, 1800), tin(4, 5200)];

  test.each([
    [0.4, [[1, "1 L"]]],
    [1, [[1, "1 L"]]],
    [1.000001, [[2, "1 L"]]],
    [2, [[2, "1 L"]]],
    // Three small ones would cost $54.
    [2.5, [[1, "4 L"]]],
    [4, [[1, "4 L"]]],
    [
      4.5,
      [
        [1, "4 L"],
        [1, "1 L"],
      ],
    ],
    [
      9.5,
      [
        [2, "4 L"],
        [2, "1 L"],
      ],
    ],
  ] as const)("of 1 L at $18 and 4 L at $52, for %d L", (litres, expected) => {
    expect(bought(SHOP, litres)).toEqual(expected);
  });

  test("the same whatever order they are declared in", () => {
    const more = [tin(3, 4000), ...SHOP, tin(2, 3000)];
    expect(bought(more, 7.2)).toEqual(bought([...more].reverse(), 7.2));
  });

  test("without prices the set that holds least", () => {
    expect(bought([tin(1, undefined), tin(4, undefined)], 4.5)).toEqual([
      [1, "4 L"],
      [1, "1 L"],
    ]);
  });

  test("tins without a price, or in another currency, stand back where some have one", () => {
    const euro = { ...tin(9, 1), price: exactly(money("€"), fraction.ONE) };
    expect(bought([tin(1, 1800), tin(4, undefined), euro], 2)).toEqual([[2, "1 L"]]);
  });

  test("none for nothing, and none where none is sold or millions would be needed", () => {
    expect(bought(SHOP, 0)).toEqual([]);
    expect(bought([], 1)).toBeUndefined();
    expect(bought([tin(1, 100)], 5e9)).toBeUndefined();
  });

  test("cost no more than any other set that holds enough", () => {
    const sizes = fc.uniqueArray(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(
        sizes.chain((list) =>
          fc.tuple(...list.map((l) => fc.tuple(fc.constant(l), fc.integer({ min: 100, max: 9000 })))),
        ),
        fc.integer({ min: 1, max: 300 }),
        (offers, tenths) => {
          const tins = offers.map(([l, c]) => tin(l, c));
          const need = tenths / 10;
          const found = cheapestTins(tins, need * 1e6)!;
          const held = found.reduce((sum, b) => sum + b.count * b.tin.size.approx, 0);
          expect(held).toBeGreaterThanOrEqual(need * 1e6 - 1);
          const cost = found.reduce((sum, b) => sum + b.count * Math.round(b.tin.price!.approx * 100), 0);
          // Cheapest cost to hold so many whole litres, by filling a table up from nothing.
          const least = [0];
          for (let l = 1; l <= Math.ceil(need); l++)
            least[l] = Math.min(...offers.map(([size, cents]) => cents + least[Math.max(0, l - size)]!));
          expect(cost).toBe(least[Math.ceil(need)]);
        },
      ),
      { numRuns: Number(process.env.FC_RUNS ?? 300) },
    );
  });
});
