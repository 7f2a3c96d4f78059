/** The rules of tipping, each just on either side of its limit, by hand. Inches and pounds, as builders say them. */
import { describe, expect, test } from "vitest";
import type { Point } from "../../server/strength/topple";
import { lowerHeight, widerBase } from "../../server/worked/tipping/cures";
import { inOneLine, type Tip, tipOf } from "../../server/worked/tipping/judge";
import { WIND } from "../../server/worked/tipping/limits";
import type { Stance } from "../../server/worked/tipping/stance";

const LB = 0.45359237;
const IN = 25.4;
const rectangle = (wide: number, deep: number): Point[] => [
  [0, 0],
  [wide * IN, 0],
  [wide * IN, deep * IN],
  [0, deep * IN],
];

interface Thing {
  readonly wide?: number;
  readonly deep: number;
  readonly high: number;
  readonly lb: number;
  readonly more?: Partial<Stance>;
}

/** A thing with its weight in the middle of its base. */
function stance({ wide = 60, deep, high, lb, more = {} }: Thing): Stance {
  const at = [(wide * IN) / 2, (deep * IN) / 2, (high * IN) / 2] as const;
  return {
    base: rectangle(wide, deep),
    high: high * IN,
    states: [{ state: "standing", mass: { kg: lb * LB, at } }],
    perches: [],
    gusts: [],
    weighed: true,
    ...more,
  };
}

const by = (thing: Thing, children = false): string | undefined => {
  const tip: Tip | undefined = tipOf(stance(thing), children);
  return tip && `${tip.by} ${tip.class}`;
};

describe("a push of 50 lb at the top", () => {
  // 36" deep and 30" high: the arm is 18", so that W x 18 / 30 >= 75 asks for 125 lb.
  test("wants a margin of 1.5, and of 2 where children are", () => {
    expect(by({ deep: 36, high: 30, lb: 125.1 })).toBeUndefined();
    expect(by({ deep: 36, high: 30, lb: 124.9 })).toBe("push warning");
    // 100 lb asks for 166.67 lb.
    expect(by({ deep: 36, high: 30, lb: 166.8 }, true)).toBeUndefined();
    expect(by({ deep: 36, high: 30, lb: 166.5 }, true)).toBe("push hazard");
  });

  test("is no more than 0.7 of the weight, at which it slides: arm over height decides what is light", () => {
    // 28" deep: the arm of 14" over 20" is 0.7.
    expect(by({ deep: 28.01, high: 20, lb: 40 })).toBeUndefined();
    expect(by({ deep: 27.99, high: 20, lb: 40 })).toBe("push warning");
  });

  test("is not tried on what is no higher than 18 in", () => {
    expect(by({ deep: 10, high: 18, lb: 60 })).toBeUndefined();
    expect(by({ deep: 10, high: 18.01, lb: 60 })).toBe("push warning");
  });

  test("comes no higher than 60 in", () => {
    const tip = tipOf(stance({ deep: 40, high: 70, lb: 100 }), false)!;
    expect(tip.at).toBeCloseTo(60 * IN, 9);
    expect(tip.force / LB).toBeCloseTo((100 * 20) / 60, 9);
  });

  test("is a hazard above twice the base, and where children are", () => {
    expect(by({ deep: 15, high: 30, lb: 60 })).toBe("push warning");
    expect(by({ deep: 14.99, high: 30, lb: 60 })).toBe("push hazard");
    expect(by({ deep: 15, high: 30, lb: 60 }, true)).toBe("push hazard");
  });

  test("is let be on what is squat and weighs less than 30 lb, where its weight is known", () => {
    expect(by({ deep: 15, high: 30, lb: 29.99 })).toBeUndefined();
    expect(by({ deep: 15, high: 30, lb: 30 })).toBe("push warning");
    expect(by({ deep: 15, high: 30, lb: 29.99, more: { weighed: false } })).toBe("push warning");
    expect(by({ deep: 14.9, high: 30, lb: 29.99 })).toBe("push hazard");
  });
});

describe("a lean of 10°", () => {
  // Its middle 9" up, so far from its front edge: 9 x tan 10° = 1.5869".
  const off = (from: number, lb: number, more: Partial<Stance> = {}): Thing => ({
    ...{ deep: 12, high: 18, lb },
    more: {
      states: [{ state: "empty", mass: { kg: lb * LB, at: [30 * IN, from * IN, 9 * IN] } }],
      ...more,
    },
  });

  test("is one that it comes back from", () => {
    expect(by(off(1.587, 40))).toBeUndefined();
    expect(by(off(1.586, 40))).toBe("leaned hazard");
    const tip = tipOf(stance(off(1, 40)), false)!;
    expect((Math.atan(tip.force / tip.weight) * 180) / Math.PI).toBeCloseTo(6.3402, 4);
    expect(tip.side.outward).toEqual([0, -1]);
  });

  test("is a warning of what weighs less than 30 lb where no children are", () => {
    expect(by(off(1.586, 29.9))).toBe("leaned warning");
    expect(by(off(1.586, 29.9), true)).toBe("leaned hazard");
    expect(by(off(1.586, 29.9, { weighed: false }))).toBe("leaned hazard");
  });

  test("is tried without fill and loads", () => {
    const full = off(6, 40).more!.states!.concat({
      state: "dry",
      mass: { kg: 200, at: [30 * IN, 1 * IN, 9 * IN] },
    });
    expect(by(off(6, 40, { states: full }))).toBeUndefined();
  });
});

describe("what is anchored always", () => {
  test("is higher than 4 times its base, or than 60 in, whatever it weighs", () => {
    expect(by({ deep: 10, high: 40, lb: 2000 })).toBeUndefined();
    expect(by({ deep: 10, high: 40.01, lb: 2000 })).toBe("narrow hazard");
    expect(by({ deep: 40, high: 60, lb: 2000 })).toBeUndefined();
    expect(by({ deep: 40, high: 60.01, lb: 2000 })).toBe("tall hazard");
  });

  test("feet in less than 4 in stand in one line", () => {
    expect(inOneLine(stance({ deep: 4, high: 10, lb: 10 }))).toBe(false);
    expect(inOneLine(stance({ deep: 3.99, high: 10, lb: 10 }))).toBe(true);
  });
});

describe("someone of 300 lb on the edge of a top", () => {
  const bench = (over: number, lb: number): Thing => ({
    deep: 12,
    high: 16,
    lb,
    more: {
      perches: [
        {
          is: "seat",
          on: "top",
          kg: 300 * LB,
          points: [[(60 + over) * IN, 0]],
          inset: 2 * IN,
          height: 16 * IN,
        },
      ],
    },
  });

  test("stands 2 in within it, and tips nothing there that is above the feet", () => {
    expect(by(bench(2, 20))).toBeUndefined();
    expect(by(bench(1, 1))).toBeUndefined();
  });

  test("tips by its arm, with the margin", () => {
    // 10" outside, 8" after the inset: 300 x 8 x 1.5 = 3600, against an arm of 30": 120 lb.
    expect(by(bench(10, 120.1))).toBeUndefined();
    expect(by(bench(10, 119.9))).toBe("seat hazard");
    // Twice where children are: 160 lb.
    expect(by(bench(10, 160.1), true)).toBeUndefined();
    expect(by(bench(10, 159.9), true)).toBe("seat hazard");
  });
});

describe("wind", () => {
  test("presses 0.00256 x 60 x 60 x 1.3 = 11.98 psf", () => {
    expect((WIND / LB) * (12 * IN) ** 2).toBeCloseTo(11.98, 2);
  });

  test("tips a screen by the moment about its feet, with the margin", () => {
    // 20 lb at 25" is 500 x 1.5 = 750; the arm is 25", so that it takes 30 lb.
    const screen = (lb: number): Thing => ({
      deep: 50,
      high: 30,
      lb,
      more: { gusts: [{ kg: 20 * LB, way: [0, 1], height: 25 * IN }] },
    });
    expect(by(screen(30.1))).toBeUndefined();
    expect(by(screen(29.9))).toBe("wind hazard");
  });
});

describe("what tips by itself", () => {
  const leaning = (y: number): Thing => ({
    deep: 20,
    high: 12,
    lb: 50,
    more: { states: [{ state: "wet on one side", mass: { kg: 20, at: [30 * IN, y * IN, 6 * IN] } }] },
  });
  test("has its middle outside its feet, or just above their edge", () => {
    // Just inside it does not come back from a lean.
    expect(by(leaning(19.99))).toBe("leaned hazard");
    expect(by(leaning(20))).toBe("itself hazard");
    expect(by(leaning(20.01))).toBe("itself hazard");
  });
});

describe("cures are tried on the thing", () => {
  const bench: Thing = { deep: 20, high: 34, lb: 300 };

  test("feet further apart, until the push is stood", () => {
    const thing = stance(bench);
    const tip = tipOf(thing, false);
    expect(tip).toBeUndefined();
    const light = stance({ ...bench, lb: 200 });
    const wider = widerBase(light, tipOf(light, false)!, false)!;
    // 200 x arm / 34 = 75: an arm of 12.75", a base of 25.5".
    expect(wider.ways).toBe("front to back");
    expect(wider.base / IN).toBeCloseTo(25.5, 4);
    expect(wider.more / IN).toBeCloseTo(5.5, 4);
  });

  test("both ways where one does not do", () => {
    const square = stance({ wide: 20, deep: 20, high: 34, lb: 200 });
    const wider = widerBase(square, tipOf(square, false)!, false)!;
    expect(wider.ways).toBe("both");
    expect(wider.more / IN).toBeCloseTo(5.5, 4);
  });

  test("none that would make it more than three times as wide", () => {
    const thin = stance({ deep: 5, high: 19, lb: 40 });
    expect(widerBase(thin, tipOf(thin, false)!, false)).toBeUndefined();
  });

  test("lower, with less weight, down to half the height", () => {
    // As it gets lower it gets lighter, and takes the same push: it stands once it slides, or is no higher than 18".
    const light = stance({ deep: 20, high: 24, lb: 60 });
    expect(lowerHeight(light, false)! / IN).toBeCloseTo(18, 6);
    const high = stance({ deep: 40, high: 34, lb: 60 });
    expect(lowerHeight(high, false)! / IN).toBeCloseTo(20 / 0.7, 4);
    const tower = stance({ deep: 8, high: 50, lb: 300 });
    expect(lowerHeight(tower, false)).toBeUndefined();
  });
});
