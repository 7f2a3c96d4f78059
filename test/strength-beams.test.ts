/** Bending of beams against sums and integrals made here, and what must hold of any beam. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Beam, type BeamLoad, type Bending, bend, worstPlace } from "../server/strength/beam";
import { odd, real } from "./numbers";

/** A place, as a share of the length. */
const share = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);
const newtons = (min: number, max: number) => fc.integer({ min, max });
const perMm = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((hundredths) => hundredths / 100);

/** Supports some way apart on a beam of some mm; loads anywhere, of which some may push up. */
const beamOf = (push: number): fc.Arbitrary<Beam> =>
  fc
    .record({
      length: fc.integer({ min: 200, max: 4000 }),
      gaps: fc.array(real(0.1, 1), { minLength: 3, maxLength: 6 }),
      overhangs: fc.tuple(fc.constantFrom(0, 0.3, 1), fc.constantFrom(0, 0.3, 1)),
      points: fc.array(fc.tuple(share, newtons(-500 * push, 1000)), { maxLength: 3 }),
      stretches: fc.array(fc.tuple(share, share, perMm(-push, 2), perMm(-push, 2)), {
        minLength: 1,
        maxLength: 3,
      }),
    })
    .map(({ length, gaps, overhangs: [left, right], points, stretches }) => {
      const steps = [gaps[0]! * left, ...gaps.slice(1, -1), gaps.at(-1)! * right];
      const whole = steps.reduce((a, b) => a + b);
      let at = 0;
      const supports = steps.slice(0, -1).map((step) => {
        at += (step / whole) * length;
        return Math.min(at, length);
      });
      const loads: BeamLoad[] = [
        ...points.map(([place, force]) => ({ at: place * length, force })),
        ...stretches.map(([a, b, start, end]) => ({
          from: Math.min(a, b) * length,
          to: Math.max(a, b) * length,
          start,
          end,
        })),
      ];
      return { length, supports, loads };
    });

const anyBeam = beamOf(1);
const loadedDown = beamOf(0);

function bent(beam: Beam): Bending {
  const bending = bend(beam);
  if (bending === undefined) throw new Error("this beam cannot stand");
  return bending;
}

const total = (loads: readonly BeamLoad[]): number =>
  loads.reduce(
    (sum, load) => sum + ("at" in load ? load.force : ((load.start + load.end) / 2) * (load.to - load.from)),
    0,
  );
/** What numbers of a beam are compared with: all its loads as if none pushed up. */
const gross = ({ loads }: Beam): number =>
  loads.reduce(
    (sum, load) =>
      sum +
      ("at" in load
        ? Math.abs(load.force)
        : ((Math.abs(load.start) + Math.abs(load.end)) / 2) * (load.to - load.from)),
    1e-6,
  );

/** Moment at a place from all that stands to the left of it: the definition, summed up afresh. */
function momentAt(beam: Beam, reactions: readonly number[], x: number): number {
  let moment = 0;
  beam.supports.forEach((support, i) => {
    if (support < x) moment += reactions[i]! * (x - support);
  });
  for (const load of beam.loads) {
    if ("at" in load) {
      if (load.at < x) moment -= load.force * (x - load.at);
      continue;
    }
    const { from, to, start, end } = load;
    const reach = Math.min(x, to) - from;
    if (reach <= 0 || to === from) continue;
    const atReach = start + ((end - start) * reach) / (to - from);
    const [flat, slant] = [start * reach, ((atReach - start) * reach) / 2];
    moment -= flat * (x - from - reach / 2) + slant * (x - from - (2 * reach) / 3);
  }
  return moment;
}

/** Rise (times stiffness) on a fine grid: the moment integrated twice, held down at the first two supports. */
function integrated(beam: Beam, reactions: readonly number[]) {
  const parts = 6000;
  const h = beam.length / parts;
  const moments = Array.from({ length: parts + 1 }, (_, i) => momentAt(beam, reactions, i * h));
  const rises = [0];
  let slope = 0;
  for (let i = 0; i < parts; i++) {
    const [here, next] = [moments[i]!, moments[i + 1]!];
    rises.push(rises[i]! + slope * h + (here / 3 + next / 6) * h * h);
    slope += ((here + next) / 2) * h;
  }
  const raw = (x: number): number => {
    const i = Math.min(Math.floor(x / h), parts - 1);
    return rises[i]! + (rises[i + 1]! - rises[i]!) * (x / h - i);
  };
  const [first, second] = [beam.supports[0]!, beam.supports[1]!];
  const tilt = (raw(second) - raw(first)) / (second - first);
  const rise = (x: number): number => raw(x) - raw(first) - tilt * (x - first);
  return { moments, h, rise, places: rises.map((_, i) => i * h) };
}

describe("a beam", () => {
  it("counts a load right over a support once, wherever rounding puts the end of its span", () => {
    // From 47.62499999999994 the span is 625.4750000000001 long, and both together are 673.1000000000001.
    const beam = { length: 720.725, supports: [47.62499999999994, 673.1], loads: [{ at: 673.1, force: 1 }] };
    expect(bend(beam)!.reactions).toEqual([0, 1]);
  });

  it("is bent as its moment, integrated twice on a fine grid, bends it", () => {
    fc.assert(
      fc.property(anyBeam, (beam) => {
        const { reactions, moment, shear, sag } = bent(beam);
        const { moments, h, rise, places } = integrated(beam, reactions);
        const force = gross(beam);
        const close = 1e-7 * force * beam.length ** 3;
        // Held down at every support, though only two of them were made use of: that fixes the reactions.
        for (const support of beam.supports) expect(Math.abs(rise(support))).toBeLessThan(close);
        expect(Math.abs(momentAt(beam, reactions, beam.length))).toBeLessThan(1e-9 * force * beam.length);
        const most = Math.max(...moments.map(Math.abs));
        expect(moment.size).toBeGreaterThanOrEqual(most - 1e-9 * force * beam.length);
        // Between two places of the grid it rises by no more than the greatest shear times half of what is between them.
        expect(moment.size - most).toBeLessThan((shear.size * h) / 2 + 1e-9 * force * beam.length);
        expect(Math.abs(momentAt(beam, reactions, moment.at))).toBeCloseTo(moment.size, 3);

        const ends = [0, ...beam.supports, beam.length];
        const spanAt = (x: number): number => {
          const i = Math.max(
            1,
            ends.findIndex((end) => end >= Math.min(x, beam.length) && end > 0),
          );
          const span = ends[i]! - ends[i - 1]!;
          return i === 1 || i === ends.length - 1 ? 2 * span : span;
        };
        expect(Math.abs(Math.max(0, -rise(sag.at)) - sag.timesStiffness)).toBeLessThan(close);
        for (const x of places.filter((_, i) => i % 50 === 0 || i === places.length - 1)) {
          const span = spanAt(x);
          if (span < beam.length / 1000) continue;
          expect(-rise(x) / span).toBeLessThanOrEqual((sag.timesStiffness + close) / sag.span + close / span);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("rests on its supports with all that it bears", () => {
    fc.assert(
      fc.property(anyBeam, (beam) => {
        const sum = bent(beam).reactions.reduce((a, b) => a + b);
        expect(Math.abs(sum - total(beam.loads))).toBeLessThan(1e-8 * gross(beam));
      }),
    );
  });

  it("bears a heavier load with more of everything", () => {
    fc.assert(
      fc.property(loadedDown, real(1, 5), (beam, times) => {
        const heavier = beam.loads.map((load) =>
          "at" in load
            ? { ...load, force: load.force * times }
            : { ...load, start: load.start * times, end: load.end * times },
        );
        const [light, heavy] = [bent(beam), bent({ ...beam, loads: heavier })];
        expect(heavy.moment.size).toBeGreaterThanOrEqual(light.moment.size * (1 - 1e-9));
        expect(heavy.shear.size).toBeGreaterThanOrEqual(light.shear.size * (1 - 1e-9));
        expect(heavy.sag.timesStiffness).toBeGreaterThanOrEqual(light.sag.timesStiffness * (1 - 1e-6));
      }),
    );
  });

  it("between two supports at its ends, another load never lowers moment, sag or a reaction", () => {
    fc.assert(
      fc.property(loadedDown, share, newtons(0, 500), (any, place, force) => {
        const beam = { ...any, supports: [0, any.length] };
        const [before, after] = [
          bent(beam),
          bent({ ...beam, loads: [...beam.loads, { at: place * any.length, force }] }),
        ];
        expect(after.moment.size).toBeGreaterThanOrEqual(before.moment.size * (1 - 1e-9));
        expect(after.sag.timesStiffness).toBeGreaterThanOrEqual(before.sag.timesStiffness * (1 - 1e-9));
        after.reactions.forEach((reaction, i) => {
          expect(reaction).toBeGreaterThanOrEqual(before.reactions[i]! - 1e-9 * gross(beam));
        });
      }),
    );
  });

  it("seen in a mirror is the mirror of itself", () => {
    fc.assert(
      fc.property(anyBeam, (beam) => {
        const { length } = beam;
        const mirrored: Beam = {
          length,
          supports: beam.supports.map((at) => length - at).reverse(),
          loads: beam.loads.map((load) =>
            "at" in load
              ? { at: length - load.at, force: load.force }
              : { from: length - load.to, to: length - load.from, start: load.end, end: load.start },
          ),
        };
        const [one, other] = [bent(beam), bent(mirrored)];
        const force = gross(beam);
        other.reactions.toReversed().forEach((reaction, i) => {
          expect(Math.abs(reaction - one.reactions[i]!)).toBeLessThan(1e-6 * force);
        });
        expect(Math.abs(one.moment.size - other.moment.size)).toBeLessThan(1e-6 * force * length);
        expect(Math.abs(one.shear.size - other.shear.size)).toBeLessThan(1e-6 * force);
        const deep = ({ sag }: Bending): number => sag.timesStiffness / sag.span;
        expect(Math.abs(deep(one) - deep(other))).toBeLessThan(1e-6 * force * length ** 2);
      }),
    );
  });

  it("is the same in inches and pounds as in millimetres and newtons", () => {
    fc.assert(
      fc.property(anyBeam, (beam) => {
        const [mm, n] = [25.4, 4.4482216];
        const metric: Beam = {
          length: beam.length * mm,
          supports: beam.supports.map((at) => at * mm),
          loads: beam.loads.map((load) =>
            "at" in load
              ? { at: load.at * mm, force: load.force * n }
              : {
                  from: load.from * mm,
                  to: load.to * mm,
                  start: (load.start * n) / mm,
                  end: (load.end * n) / mm,
                },
          ),
        };
        const [one, other] = [bent(beam), bent(metric)];
        const force = gross(beam);
        const near = (a: number, b: number, scale: number): void => {
          expect(Math.abs(a - b)).toBeLessThan(1e-7 * scale);
        };
        one.reactions.forEach((reaction, i) => {
          near(other.reactions[i]! / n, reaction, force);
        });
        near(other.moment.size / (n * mm), one.moment.size, force * beam.length);
        near(
          other.sag.timesStiffness / other.sag.span / (n * mm ** 2),
          one.sag.timesStiffness / one.sag.span,
          force * beam.length ** 2,
        );
      }),
    );
  });

  it("with a load right over a support bends nowhere", () => {
    const { reactions, moment, shear, sag } = bent({
      length: 1000,
      supports: [0, 400, 1000],
      loads: [
        { at: 400, force: 300 },
        { at: 0, force: 100 },
        { at: 1000, force: 50 },
      ],
    });
    expect(reactions).toEqual([100, 300, 50]);
    expect([moment.size, shear.size]).toEqual([0, 0]);
    expect(sag.timesStiffness).toBeCloseTo(0, 5);
  });

  it("pulls its far support up where its end is loaded", () => {
    const { reactions, sag } = bent({ length: 1500, supports: [500, 1500], loads: [{ at: 0, force: 100 }] });
    expect(reactions).toEqual([150, -50]);
    expect(sag).toMatchObject({ at: 0, span: 1000 });
  });

  it("sags in its span, however high its bare end rises", () => {
    const { sag } = bent({ length: 1500, supports: [0, 1000], loads: [{ at: 500, force: 100 }] });
    expect(sag).toMatchObject({ at: 500, span: 1000 });
    expect(sag.timesStiffness / ((100 * 1000 ** 3) / 48)).toBeCloseTo(1, 9);
    const lifted = bent({ length: 1000, supports: [0, 1000], loads: [{ at: 500, force: -100 }] });
    expect(lifted.sag.timesStiffness).toBe(0);
    expect(lifted.moment.size).toBeCloseTo(25_000, 6);
  });

  it.each([
    ["one support", { supports: [500] }],
    ["no support", { supports: [] }],
    ["supports out of order", { supports: [900, 100] }],
    ["two supports in one place", { supports: [100, 100, 900] }],
    ["a support off the beam", { supports: [0, 1001] }],
    ["a load off the beam", { loads: [{ at: 1001, force: 1 }] }],
    ["a load the wrong way round", { loads: [{ from: 600, to: 500, start: 1, end: 1 }] }],
    ["a force that is no number", { loads: [{ at: 10, force: Number.NaN }] }],
    ["a length of none", { length: 0 }],
    ["an endless length", { length: Number.POSITIVE_INFINITY }],
  ] as const)("is undefined with %s", (_, wrong) => {
    expect(bend({ length: 1000, supports: [0, 1000], loads: [], ...wrong })).toBeUndefined();
  });

  it("never throws, and never gives a number that is none", () => {
    fc.assert(
      fc.property(
        fc.array(odd, { minLength: 9, maxLength: 9 }),
        fc.constantFrom("left", "both", undefined),
        (n, clamped) => {
          const bending = bend({
            length: n[0]!,
            supports: [n[1]!, n[2]!],
            loads: [
              { at: n[3]!, force: n[4]! },
              { from: n[5]!, to: n[6]!, start: n[7]!, end: n[8]! },
            ],
            ...(clamped && { clamped }),
          });
          if (bending === undefined) return;
          const { reactions, moment, shear, sag } = bending;
          for (const one of [
            ...reactions,
            ...Object.values(moment),
            ...Object.values(shear),
            sag.timesStiffness,
            sag.at,
            sag.span,
          ])
            expect(Number.isFinite(one)).toBe(true);
        },
      ),
    );
  });
});

describe("a load that moves", () => {
  it("does at its worst nearly all that it can do anywhere", () => {
    fc.assert(
      fc.property(loadedDown, newtons(50, 1500), real(20, 200), share, (any, force, width, place) => {
        const beam = { ...any, loads: any.loads.slice(0, 1) };
        const worst = worstPlace(beam, force, width)!;
        const spread = Math.min(width, beam.length);
        const from = place * (beam.length - spread);
        const there = bent({
          ...beam,
          loads: [...beam.loads, { from, to: from + spread, start: force / spread, end: force / spread }],
        });
        expect(there.moment.size).toBeLessThanOrEqual(worst.moment.size * 1.06);
        expect(there.sag.timesStiffness / there.sag.span).toBeLessThanOrEqual(
          (worst.sag.timesStiffness / worst.sag.span) * 1.02,
        );
      }),
    );
  });

  it("is worst in the middle of a plain span: F L / 4 less F w / 8, and F L^3 / 48", () => {
    const beam = { length: 1000, supports: [0, 1000], loads: [] };
    const { moment, sag, shear, places, reactions, leastReactions } = worstPlace(beam, 800, 100)!;
    expect(moment.size).toBeCloseTo((800 * 1000) / 4 - (800 * 100) / 8, 6);
    expect(sag.timesStiffness / ((800 * 1000 ** 3) / 48)).toBeCloseTo(1, 1);
    expect(places).toMatchObject({ moment: 500, sag: 500 });
    expect(shear.size).toBeCloseTo(760, 6);
    expect(reactions[0]).toBeCloseTo(760, 6);
    expect(leastReactions[0]).toBeCloseTo(40, 6);
  });

  it("lifts a support when it stands on the overhang", () => {
    const { leastReactions, moment } = worstPlace(
      { length: 1500, supports: [0, 1000], loads: [] },
      300,
      100,
    )!;
    expect(leastReactions[0]).toBeCloseTo((-300 * 450) / 1000, 6);
    expect(moment.size).toBeCloseTo(300 * 450, 6);
  });

  it("covers the whole of a beam that is shorter, and is undefined where there is none", () => {
    const beam = { length: 300, supports: [0, 300], loads: [] };
    expect(worstPlace(beam, 600, 1000)?.moment.size).toBeCloseTo((600 * 300) / 8, 6);
    for (const wrong of [0, -1, Number.NaN]) {
      expect(worstPlace(beam, wrong, 100)).toBeUndefined();
      expect(worstPlace(beam, 100, wrong)).toBeUndefined();
    }
    expect(worstPlace({ ...beam, supports: [0] }, 100, 100)).toBeUndefined();
  });
});
