/** Moving a whole plan, or mirroring it, changes nothing of what is climbed and of which openings catch. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { load } from "../../server/plan";
import { work } from "../../server/worked";
import { nothing } from "../checks/plans";
import { FEWER } from "./plans";

const LIES = {
  "across, flat": [0, 1, 2],
  "across, on edge": [0, 2, 1],
  "upright, wide face front": [1, 2, 0],
  "upright, wide face left": [2, 1, 0],
  "front to back, flat": [1, 0, 2],
  "front to back, on edge": [2, 0, 1],
} as const;
type Lie = keyof typeof LIES;

interface Board {
  readonly lie: Lie;
  /** Length, width and thickness, in quarters of an inch. */
  readonly sizes: readonly [number, number, number];
  /** From left, front and floor, in sixteenths. */
  readonly at: readonly [number, number, number];
}

const board: fc.Arbitrary<Board> = fc.record({
  lie: fc.constantFrom<Lie[]>(...(Object.keys(LIES) as Lie[])),
  sizes: fc.tuple(
    fc.integer({ min: 20, max: 160 }),
    fc.integer({ min: 6, max: 40 }),
    fc.integer({ min: 2, max: 6 }),
  ),
  at: fc.tuple(
    fc.integer({ min: 0, max: 400 }),
    fc.integer({ min: 0, max: 300 }),
    fc.integer({ min: 0, max: 500 }),
  ),
});

/** Room on both sides of everything, in sixteenths. */
const WIDE = 1600;

/** How much of an axis a board takes, in sixteenths. */
const extent = ({ lie, sizes }: Board, axis: 0 | 1 | 2): number => 4 * sizes[LIES[lie][axis]]!;

function plan(boards: readonly Board[], place: (b: Board) => readonly [number, number, number]): string {
  const lines = boards.map((b, i) => {
    const [length, width, thick] = b.sizes.map((q) => `${q}/4"`);
    const [x, y, z] = place(b).map((s) => `${s}/16"`);
    return `stock wood-b${i}x, actual ${thick} x ${width}
part b${i}x of wood-b${i}x, length ${length}
place b${i}x ${b.lie}, ${x} from left, ${y} from front, ${z} from floor`;
  });
  return `plan Boards\n  near a guard\n  near children\n${lines.join("\n")}\n`;
}

function answer(text: string) {
  const worked = work(load("plan.sawbuck", text, nothing));
  const { climb, traps } = worked.guarding;
  const part = (i: number): string => worked.space.pieces[i]!.part;
  return {
    pieces: worked.space.pieces.length,
    climb: climb && [tenths(climb.lowest.from), tenths(climb.highest.to), [...climb.things].sort()],
    traps: traps
      .map(({ catches, opening: { first, second, gap, long }, more }) =>
        [catches, tenths(gap), tenths(long), more, ...[part(first), part(second)].sort()].join(" "),
      )
      .sort(),
  };
}
/** Set a little aside: sixteenths of an inch end in halves of what is rounded to. */
const tenths = (mm: number): number => Math.round(mm * 10 + 0.21);

const some = fc.array(board, { minLength: 1, maxLength: 7 });
let [climbed, caught] = [0, 0];

test("moving", () => {
  fc.assert(
    fc.property(
      some,
      fc.integer({ min: 0, max: 999 }),
      fc.integer({ min: 0, max: 999 }),
      (boards, right, back) => {
        const here = answer(plan(boards, (b) => b.at));
        expect(here.pieces).toBe(boards.length);
        if (here.climb) climbed++;
        caught += here.traps.length;
        expect(answer(plan(boards, ({ at: [x, y, z] }) => [x + right, y + back, z]))).toEqual(here);
      },
    ),
    { numRuns: FEWER },
  );
});

test("mirroring left to right, and front to back", () => {
  fc.assert(
    fc.property(some, (boards) => {
      const here = answer(plan(boards, (b) => b.at));
      expect(answer(plan(boards, (b) => [WIDE - b.at[0] - extent(b, 0), b.at[1], b.at[2]]))).toEqual(here);
      expect(answer(plan(boards, (b) => [b.at[0], WIDE - b.at[1] - extent(b, 1), b.at[2]]))).toEqual(here);
    }),
    { numRuns: FEWER },
  );
});

test("boards were climbed, and openings found", () => {
  expect(climbed).toBeGreaterThan(0);
  expect(caught).toBeGreaterThan(0);
});
