/** What must hold of loads and of what bears them, for stands, shelves and boxes of any size. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Evaluated } from "../../server/service";
import type { Holding } from "../../server/worked";
import { run } from "../checks/plans";
import { anything, boxes, type Made, shelves, sixteenths, stand, write } from "./holding-plans";
import { FEWER } from "./plans";

const SIX = ["too-weak", "slat-sags", "side-bows", "screw-overloaded", "load-has-no-path", "foot-over-load"];
/** What is told in place of another: a board that breaks also bends. */
const INSTEAD: Readonly<Record<string, string>> = { "slat-sags": "too-weak", "side-bows": "too-weak" };

interface Summed {
  readonly codes: readonly string[];
  /** By name, what was worked out, in an order that does not depend on the text. */
  readonly numbers: ReadonlyMap<string, readonly number[]>;
}

const codesIn = ({ problems }: Evaluated): string[] =>
  [...new Set(problems.map((p) => p.code))].filter((c) => SIX.includes(c)).sort();

const summed = (text: string): Summed => sumOf(run(text));

function sumOf(evaluated: Evaluated): Summed {
  const { worked } = evaluated;
  const { holding, space } = worked;
  if (!worked.pieces.complete || space.clashes.length > 0)
    throw new Error(`not worked out:\n${evaluated.text}`);
  const numbers = new Map<string, number[]>();
  const add = (key: string, value: number): void => {
    numbers.set(key, [...(numbers.get(key) ?? []), value]);
  };
  for (const { piece, carried, judged } of holding.pieces) {
    const { part } = space.pieces[piece]!;
    add(`${part} own`, carried.weighs.own);
    add(`${part} fill`, carried.weighs.fill);
    add(`${part} said`, carried.weighs.said);
    add(`${part} passed`, carried.weighs.passed);
    add(`${part} moving`, carried.moving);
    add(`${part} span`, carried.span);
    if (judged) {
      add(`${part} strain`, judged.strain.uses);
      add(`${part} sag`, judged.sag.uses);
    }
  }
  for (const { work: wall, judged } of holding.walls) {
    const { part } = space.pieces[wall.piece]!;
    if (judged) {
      add(`${part} wall strain`, judged.strain.uses);
      add(`${part} bow`, judged.sag.uses);
    }
    for (const h of wall.holders) add(`${part} held`, h.force);
  }
  for (const held of holding.joints) add(`${held.joint.title} uses`, held.uses);
  for (const foot of holding.feet) add("feet", foot.steady + foot.moving);
  for (const none of holding.noPath) add(`${space.pieces[none.piece]!.part} no path`, none.force);
  for (const list of numbers.values()) list.sort((a, b) => a - b);
  return { codes: codesIn(evaluated), numbers };
}

function same(one: Summed, other: Summed, within: number): void {
  expect([...other.numbers.keys()].sort()).toEqual([...one.numbers.keys()].sort());
  for (const [key, list] of one.numbers) {
    const others = other.numbers.get(key)!;
    expect(others).toHaveLength(list.length);
    list.forEach((value, i) => {
      const off = Math.abs(value - others[i]!) / Math.max(1, Math.abs(value));
      if (!(off <= within)) throw new Error(`${key}: ${value} and ${others[i]}`);
    });
  }
  expect(other.codes).toEqual(one.codes);
}

/** Every use of a plan by what uses it; the pieces of both plans are the same. */
function usesOf({ pieces, walls, joints, feet }: Holding): Map<string, number> {
  return new Map([
    ...pieces.flatMap(({ piece, judged }): [string, number][] =>
      judged
        ? [
            [`strain ${piece}`, judged.strain.uses],
            [`sag ${piece}`, judged.sag.uses],
          ]
        : [],
    ),
    ...walls.flatMap(({ work: { piece }, judged }): [string, number][] =>
      judged
        ? [
            [`wall ${piece}`, judged.strain.uses],
            [`bow ${piece}`, judged.sag.uses],
          ]
        : [],
    ),
    ...joints.map((j): [string, number] => [`joint ${j.joint.title}`, j.uses]),
    ...feet.map((f): [string, number] => [`foot ${f.piece}`, f.steady + f.moving]),
  ]);
}

function neverLess(one: Made, more: Made): void {
  const [less, now] = [run(write(one)), run(write(more))];
  const after = usesOf(now.worked.holding);
  for (const [key, value] of usesOf(less.worked.holding))
    if (!((after.get(key) ?? 0) >= value * (1 - 1e-9)))
      throw new Error(`${key}: ${value}, then ${after.get(key)}`);
  const codes = codesIn(now);
  for (const code of codesIn(less)) if (!codes.includes(code)) expect(codes).toContain(INSTEAD[code] ?? code);
}

/** Each run works out two large plans or more. */
const OPTIONS = { numRuns: Math.ceil(FEWER / 10) };

describe("more load", () => {
  test("said lowers no use and takes no problem away", () => {
    const said = fc.oneof(stand, shelves).filter((m) => m.loads.length > 0);
    fc.assert(
      fc.property(said, fc.integer({ min: 1, max: 300 }), (made, more) => {
        neverLess(made, { ...made, loads: made.loads.map((l) => ({ ...l, lb: l.lb + more })) });
      }),
      OPTIONS,
    );
  });

  test("of fill, deeper or heavier, lowers none either", () => {
    fc.assert(
      fc.property(boxes, sixteenths(0, 1), fc.integer({ min: 0, max: 40 }), (made, deeper, heavier) => {
        const box = made.box!;
        neverLess(made, {
          ...made,
          box: { ...box, deep: box.deep + deeper, saturated: box.saturated + heavier },
        });
      }),
      OPTIONS,
    );
  });
});

describe("the same thing", () => {
  test("in millimetres and kilograms comes out as in inches and pounds", () => {
    fc.assert(
      fc.property(anything, (made) => {
        same(summed(write(made)), summed(write(made, { metric: true })), 1e-6);
      }),
      OPTIONS,
    );
  });

  test("mirrored, moved, or written in another order comes out the same", () => {
    fc.assert(
      fc.property(
        anything,
        sixteenths(0, 40),
        sixteenths(0, 40),
        fc.infiniteStream(fc.integer({ min: 0, max: 1_000_000 })),
        (made, x, y, chance) => {
          const one = summed(write(made));
          same(one, summed(write(made, { mirrored: 200 })), 1e-6);
          same(one, summed(write(made, { moved: [x, y] })), 1e-6);
          const dealt = (lines: readonly string[]): string[] =>
            lines
              .map((line) => ({ line, by: chance.next().value as number }))
              .sort((a, b) => a.by - b.by)
              .map(({ line }) => line);
          same(one, summed(write(made, { shuffled: dealt })), 1e-6);
        },
      ),
      OPTIONS,
    );
  });
});

test("all that weighs stands on the feet, and every number is one", () => {
  let [carried, told] = [0, 0];
  fc.assert(
    fc.property(anything, (made) => {
      const evaluated = run(write(made));
      const { holding } = evaluated.worked;
      const put = holding.pieces.reduce(
        (sum, { carried: { weighs: w } }) => sum + w.own + w.fill + w.said,
        0,
      );
      const feet = holding.feet.reduce((sum, f) => sum + f.steady, 0);
      expect(Math.abs(put - feet) / put).toBeLessThan(1e-6);
      for (const [key, list] of sumOf(evaluated).numbers)
        for (const n of list)
          if (!Number.isFinite(n) || (n === Number.MAX_VALUE && !key.endsWith("uses")))
            throw new Error(`${key}: ${n}`);
      for (const { uses, holds } of holding.joints) expect(uses === Number.MAX_VALUE).toBe(holds === 0);
      carried++;
      if (codesIn(evaluated).length > 0) told++;
    }),
    { numRuns: FEWER },
  );
  // Some of these hold, and some do not.
  expect(told).toBeGreaterThan(carried / 20);
  expect(told).toBeLessThan(carried);
});
