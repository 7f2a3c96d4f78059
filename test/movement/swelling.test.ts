/** How much wood grows and shrinks: the pure working, and the woods it is asked for. */
import { describe, expect, test } from "vitest";
import { growth, shrunkAt } from "../../server/strength/swelling";
import {
  earlySaturation,
  movementOf,
  shrinkageOf,
  shrinksBelow,
  soldTogether,
  speciesNames,
} from "../../server/trade";

describe("shrinkage in proportion to the moisture lost under 30%, or 22", () => {
  // S = S0 (30 - M) / 30 by hand.
  test.each([
    [5, 30, 0],
    [5, 12, 3],
    [5, 0, 5],
    [7.8, 19, 2.86],
    [10.5, 6, 8.4],
    [5, 45, 0],
    [5, -3, 5],
  ])("of %f%% at %f%%: %f%%", (whole, moisture, percent) => {
    expect(shrunkAt(whole, moisture, 30)).toBeCloseTo(percent, 12);
  });

  // (1 - S at the end) / (1 - S at the beginning) - 1 by hand.
  test.each([
    [5, 12, 30, 1 / 0.97 - 1],
    [5, 12, 20.5, (1 - 0.0158333333333333) / 0.97 - 1],
    [7.8, 12, 30, 1 / 0.9532 - 1],
    [5, 30, 12, -0.03],
    [5, 12, 12, 0],
    [5, 30, 40, 0],
  ])("%f%% from %f to %f%% moisture", (whole, from, to, share) => {
    expect(growth(whole, from, to, 30)).toBeCloseTo(share, 12);
  });

  // Of cedar, which shrinks from 22% down, by hand: S0 (22 - M) / 22.
  test.each([
    [5, 22, 0],
    [5, 30, 0],
    [5, 20.5, 0.340909],
    [5, 12, 2.272727],
  ])("of %f%% at %f%% where it starts at 22%%: %f%%", (whole, moisture, percent) => {
    expect(shrunkAt(whole, moisture, 22)).toBeCloseTo(percent, 6);
  });

  test("cedar from 12 to 20.5% agrees with its printed coefficient: .00234 x 8.5 = 1.989%", () => {
    // By hand: (1 - 0.05 x 1.5/22) / (1 - 0.05 x 10/22) - 1 = 1.9767%.
    const made = growth(5, 12, 20.5, 22);
    expect(made).toBeCloseTo(0.019767, 6);
    expect(Math.abs(made / (8.5 * 0.00234) - 1)).toBeLessThan(0.01);
  });

  // Wood Handbook, Table 13-5: change for 1% of moisture, tangential, from 6 to 14%; shrinkage from Table 4-3.
  test.each(["white-oak", "douglas-fir", "white-fir", "eastern-white-pine", "western-redcedar"])(
    "is within 6%% of the published coefficient of %s",
    (name) => {
      const made = growth(shrinkageOf(name)!.row.value.tangential, 6, 14, shrinksBelow(name).value);
      expect(Math.abs(made / (8 * movementOf(name)!.value.tangential) - 1)).toBeLessThan(0.06);
    },
  );

  test("a published rule: about 1% of the width for 4% of moisture", () => {
    // AWC FAQ, dimensional change.
    for (const whole of [6.7, 7.5]) expect(Math.abs(growth(whole, 12, 16, 30) - 0.01)).toBeLessThan(0.001);
  });
});

describe("the shrinkage of a wood", () => {
  test.each([
    ["western-redcedar", 5, undefined],
    ["white-oak", 10.5, undefined],
    ["spruce-pine-fir", 7.8, "red-spruce"],
    ["hem-fir", 7.8, "western-hemlock"],
    ["douglas-fir-larch", 9.1, "western-larch"],
    ["southern-pine", 7.5, "longleaf-pine"],
    ["western-cedars", 6.9, "port-orford-cedar"],
    ["redwood", 4.9, "redwood-young-growth"],
    ["eastern-hemlock-tamarack", 7.4, "tamarack"],
  ])("%s", (name, tangential, member) => {
    const found = shrinkageOf(name);
    expect(found?.row.value.tangential).toBe(tangential);
    expect(found?.member).toBe(member);
  });

  test("starts at 22% in western redcedar, northern white-cedar and redwood, at 30% in all other woods", () => {
    const early = ["western-redcedar", "northern-white-cedar", "redwood-old-growth", "redwood-young-growth"];
    const below = (name: string): number => shrinksBelow(shrinkageOf(name)!.row.key).value;
    expect(earlySaturation).toHaveLength(early.length);
    expect([...early, "redwood"].map(below)).toEqual([22, 22, 22, 22, 22]);
    // Of several cedars the one is taken that moves most, Port Orford cedar.
    expect(["western-cedars", "port-orford-cedar", "yellow-cedar", "douglas-fir"].map(below)).toEqual([
      30, 30, 30, 30,
    ]);
  });

  test("is not made up where no table prints it", () => {
    expect(shrinkageOf("ash")).toBeUndefined();
    expect(shrinkageOf("red-pine")).toBeUndefined();
    expect(shrinkageOf("nothing")).toBeUndefined();
  });

  test("names of several woods name woods that are known", () => {
    for (const { key, value } of soldTogether)
      expect([key, ...value].filter((name) => !speciesNames().includes(name))).toEqual([]);
  });
});
