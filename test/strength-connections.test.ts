/** What must hold of fasteners, pulled out and across, and of all numbers of this kind; and sums done by hand. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adjusted } from "../server/strength/fastener";
import { bearing, type LateralJoint, lateral } from "../server/strength/lateral";
import { atRest, blockedDrain, pressureAt } from "../server/strength/soil";
import { windPressure } from "../server/strength/wind";
import {
  headPullThrough,
  lagWithdrawal,
  nailWithdrawal,
  screwWithdrawal,
  stainlessNailWithdrawal,
} from "../server/strength/withdrawal";
import { bendingYieldOf, lagSize, lagThread, toeFactors, wetService } from "../server/trade";
import { odd, real } from "./numbers";

const LB = 4.4482216152605;
const MPA_PER_PSI = LB / 25.4 ** 2;

/** A #8 screw through 3/4 in into 1-1/2 in of spruce-pine-fir. */
const screw = (more: Partial<LateralJoint> = {}): LateralJoint => ({
  diameterMm: 0.131 * 25.4,
  fullDiameterMm: 0.164 * 25.4,
  sideThickMm: 0.75 * 25.4,
  penetrationMm: 1.25 * 25.4,
  gravitySide: 0.42,
  gravityMain: 0.42,
  yieldMpa: 90_000 * MPA_PER_PSI,
  ...more,
});
const holds = (joint: LateralJoint): number => lateral(joint)?.newtons ?? 0;

const wild = fc.oneof(odd, fc.constantFrom(-1e308, 1e308, 1e-308, -5, 90, 100), fc.double({ noNaN: true }));
/** Every number in what was worked out, however deep. */
const numbers = (value: unknown): number[] =>
  typeof value === "number"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(numbers)
      : [];

describe("nothing worked out is NaN or endless, whatever goes in", () => {
  const all: readonly [
    string,
    (a: number, b: number, c: number, d: number, e: number, f: number) => unknown,
  ][] = [
    ["screws pulled", (a, b) => screwWithdrawal(a, b)],
    ["nails pulled", (a, b) => [nailWithdrawal(a, b), stainlessNailWithdrawal(a, b)]],
    ["lags pulled", (a, b) => lagWithdrawal(a, b)],
    ["heads pulled through", (a, b, c) => headPullThrough(a, b, c)],
    [
      "across",
      (a, b, c, d, e, f) =>
        (["screw", "nail", "lag", "bolt"] as const).map((fastener) =>
          lateral({
            ...{ diameterMm: a, sideThickMm: b, penetrationMm: c, gravitySide: d, gravityMain: e },
            ...{ yieldMpa: f, sideGrainDeg: a, mainGrainDeg: b, fastener },
          }),
        ),
    ],
    ["factors", (a, b, c, d, e) => adjusted(a, { duration: b, wet: c, endGrain: d, toe: e })],
    ["soil", (a, b, c) => [atRest(a), pressureAt(a, b, c), blockedDrain(a, b, c)]],
    ["wind", (a, b) => windPressure(a, b)],
  ];

  it.each(all)("%s", (_, work) => {
    fc.assert(
      fc.property(wild, wild, wild, wild, wild, wild, (...given) => {
        expect(numbers(work(...given)).filter((n) => !Number.isFinite(n))).toEqual([]);
      }),
    );
  });
});

describe("what pulls a fastener out", () => {
  const pulls = [screwWithdrawal, nailWithdrawal, stainlessNailWithdrawal, lagWithdrawal];

  it("is the harder to pull, the heavier the wood and the thicker the fastener", () => {
    fc.assert(
      fc.property(real(0.1, 1.2), real(0, 0.5), real(1, 20), real(0, 10), (g, moreG, d, moreD) => {
        for (const pull of pulls) {
          expect(pull(g + moreG, d)!).toBeGreaterThanOrEqual(pull(g, d)!);
          expect(pull(g, d + moreD)!).toBeGreaterThanOrEqual(pull(g, d)!);
        }
        expect(headPullThrough(g + moreG, d, 19)!).toBeGreaterThanOrEqual(headPullThrough(g, d, 19)!);
        expect(headPullThrough(g, d + moreD, 19)!).toBeGreaterThanOrEqual(headPullThrough(g, d, 19)!);
        expect(stainlessNailWithdrawal(g, d)!).toBeLessThanOrEqual(nailWithdrawal(g, d)!);
      }),
    );
  });

  it("by hand: a #8 in spruce-pine-fir holds 2850 x .42^2 x .164 = 82.45 lb for each inch", () => {
    expect(screwWithdrawal(0.42, 0.164 * 25.4)! * 25.4).toBeCloseTo(82.449 * LB, 1);
  });

  it("by hand: a stainless 8d in spruce-pine-fir holds 465 x .2722 x .131 = 16.58 lb for each inch", () => {
    expect((stainlessNailWithdrawal(0.42, 0.131 * 25.4)! * 25.4) / LB).toBeCloseTo(16.58, 1);
  });

  it("by hand: a head of .281 in pulls through 1/2 in of G .42 at 690 pi x .281 x .1764 x .5 = 53.7 lb, and at no more from .7025 in up", () => {
    const through = (thick: number) => headPullThrough(0.42, 0.281 * 25.4, thick * 25.4)! / LB;
    expect(through(0.5)).toBeCloseTo(53.72, 1);
    expect(through(0.7025)).toBeCloseTo(1725 * Math.PI * 0.281 ** 2 * 0.42 ** 2, 6);
    expect(through(3)).toBeCloseTo(through(0.7025), 9);
  });

  it("is not told of what is no wood or no screw", () => {
    for (const wrong of [0, -0.4, Number.NaN, Number.POSITIVE_INFINITY])
      for (const pull of pulls) expect([pull(wrong, 4), pull(0.42, wrong)]).toEqual([undefined, undefined]);
  });
});

describe("what a fastener holds across", () => {
  it("is never less in heavier wood, with more bite or of harder steel", () => {
    fc.assert(
      fc.property(
        real(0.25, 0.9),
        real(0, 0.3),
        real(20, 100),
        real(0, 60),
        real(200, 900),
        real(0, 300),
        (g, moreG, bite, moreBite, steel, harder) => {
          const joint = screw({ gravityMain: g, gravitySide: g, penetrationMm: bite, yieldMpa: steel });
          const before = holds(joint) - 1e-9;
          expect(holds({ ...joint, gravityMain: g + moreG, gravitySide: g + moreG })).toBeGreaterThanOrEqual(
            before,
          );
          expect(holds({ ...joint, penetrationMm: bite + moreBite })).toBeGreaterThanOrEqual(before);
          expect(holds({ ...joint, yieldMpa: steel + harder })).toBeGreaterThanOrEqual(before);
        },
      ),
    );
  });

  it("is never less for a thicker shank of the same steel, under 1/4 in, with 10 diameters of bite", () => {
    fc.assert(
      fc.property(real(2, 6.3), real(2, 6.3), real(10, 40), real(0.3, 0.8), (one, other, side, g) => {
        const [thin, thick] = one < other ? [one, other] : [other, one];
        const joint = (shank: number) =>
          screw({
            ...{ diameterMm: 0.8 * shank, fullDiameterMm: shank, sideThickMm: side, penetrationMm: 64 },
            ...{ gravityMain: g, gravitySide: g },
          });
        expect(holds(joint(thick))).toBeGreaterThanOrEqual(holds(joint(thin)) - 1e-9);
      }),
    );
  });

  it("claims nothing under 6 diameters (.984 in of a #8), and grows in proportion to 10 (1.64)", () => {
    const bite = (inches: number) => holds(screw({ penetrationMm: inches * 25.4 }));
    expect([bite(0.5), bite(0.983)]).toEqual([0, 0]);
    expect(bite(0.984)).toBeGreaterThan(0);
    expect(bite(0.984) / bite(1.64)).toBeCloseTo(0.6, 9);
    expect(bite(1.25) / bite(1.64)).toBeCloseTo(0.762, 3);
    expect(bite(1.64)).toBeCloseTo(bite(1.6400001), 3);
  });

  it("by hand: a #8 through 3/4 into G .42 at full bite gives by bending in the side piece, at 69 lb", () => {
    const fe = 16_600 * 0.42 ** 1.84;
    const k3 = -1 + Math.sqrt(4 + (2 * 90_000 * 3 * 0.131 ** 2) / (3 * fe * 0.75 ** 2));
    const pounds = (k3 * 0.131 * 0.75 * fe) / (3 * 2.2);
    const value = lateral(screw({ penetrationMm: 1.64 * 25.4 }))!;
    expect(value.mode).toBe("IIIs");
    expect(value.newtons / LB).toBeCloseTo(pounds, 6);
    expect(Math.round(pounds)).toBe(69);
  });

  it("by hand: a 1/2 in bolt crushes a thin strap of wood: D t Fe / 4 along the grain, a fifth less across it", () => {
    const strap: LateralJoint = {
      ...{ diameterMm: 12.7, sideThickMm: 6.35, penetrationMm: 300, gravitySide: 0.5, gravityMain: 0.5 },
      ...{ yieldMpa: 1e6, fastener: "bolt", sideGrainDeg: 0, mainGrainDeg: 0 },
    };
    expect(lateral(strap)).toMatchObject({
      mode: "Is",
      newtons: expect.closeTo(((0.5 * 0.25 * 5600) / 4) * LB, 6),
    });
    const across = lateral({ ...strap, sideGrainDeg: 90, mainGrainDeg: 90 })!;
    expect(across.newtons / LB).toBeCloseTo((0.5 * 0.25 * bearing(0.5, 0.5, 90)) / 5, 6);
  });

  it("a lag of 1/4 in is reckoned thin by its root and thick by its shank", () => {
    const { root } = lagSize(0.25)!.value;
    const lag = (deg: number): LateralJoint => ({
      ...{ diameterMm: Number(root) * 25.4, fullDiameterMm: 6.35, sideThickMm: 38.1, penetrationMm: 50.8 },
      ...{ gravitySide: 0.5, gravityMain: 0.5, yieldMpa: bendingYieldOf(0.25)!.value.psi * MPA_PER_PSI },
      ...{ fastener: "lag", sideGrainDeg: deg, mainGrainDeg: deg },
    });
    const kd = 10 * 0.173 + 0.5;
    const along = (0.173 ** 2 / kd) * Math.sqrt((2 * 5600 * 70_000) / 6);
    expect(lateral(lag(0))).toMatchObject({ mode: "IV", newtons: expect.closeTo(along * LB, 6) });
    expect(holds(lag(90))).toBeLessThan(holds(lag(0)) / 1.25);
    expect(lateral({ ...lag(0), penetrationMm: 25.3 })).toBeUndefined();
    expect(holds({ ...lag(0), penetrationMm: 25.4 }) / holds(lag(0))).toBeCloseTo(0.5, 9);
  });

  it("is not told of a shank thinner than its root, or of an angle beyond square", () => {
    expect(lateral(screw({ fullDiameterMm: 3 }))).toBeUndefined();
    expect(lateral(screw({ sideGrainDeg: 91 }))).toBeUndefined();
    expect(lateral(screw({ mainGrainDeg: -1 }))).toBeUndefined();
  });
});

describe("where a fastener is", () => {
  it("takes all factors at once, and never adds to it by one below 1", () => {
    expect(adjusted(100, {})).toBe(100);
    expect(adjusted(100, { duration: 0.9, wet: wetService.lateral.value.wet })).toBeCloseTo(63, 9);
    expect(adjusted(100, { endGrain: 0 })).toBe(0);
    expect(adjusted(100, { toe: toeFactors.withdrawal.value })).toBeCloseTo(67, 9);
    expect(adjusted(-1, {})).toBeUndefined();
  });
});

describe("sizes of fasteners", () => {
  it("are found by their diameter, and bend by their shank", () => {
    expect(lagSize(0.375)?.value).toEqual({ diameter: "3/8", root: "0.265", tip: "7/32" });
    expect(lagSize(0.4)).toBeUndefined();
    expect([0.138, 0.164, 0.19, 0.242, 0.375].map((d) => bendingYieldOf(d)?.value.psi)).toEqual([
      100_000, 90_000, 80_000, 70_000, 45_000,
    ]);
    expect([bendingYieldOf(0.5), bendingYieldOf(0)]).toEqual([undefined, undefined]);
  });

  it("a lag screw is threaded over half its length and 1/2 in, a short one all along, none over more than 6 in", () => {
    expect([0.75, 1, 3, 4, 16].map(lagThread)).toEqual([0.75, 1, 2, 2.5, 6]);
  });
});
