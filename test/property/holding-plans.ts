/** Stands, shelves and boxes of any size as text, to be written in other units, mirrored, moved, or in another order. */
import fc from "fast-check";

/** A piece by its own corner, in inches. */
interface Item {
  readonly part: string;
  readonly lie: string;
  readonly at: readonly [x: number, y: number, z: number];
  /** How far it reaches from left to right. */
  readonly wide: number;
}

export interface Made {
  readonly head: readonly string[];
  /** Name, board, length. */
  readonly parts: readonly (readonly [string, string, number])[];
  readonly items: readonly Item[];
  readonly joints: readonly string[];
  /** What is said to stand on a part, pounds. */
  readonly loads: readonly { readonly part: string; readonly lb: number; readonly how: string }[];
  readonly box: { readonly line: string; readonly deep: number; readonly saturated: number } | undefined;
}

interface Written {
  readonly metric?: boolean;
  /** About a plane so far from the left. */
  readonly mirrored?: number;
  readonly moved?: readonly [number, number];
  readonly shuffled?: (lines: readonly string[]) => readonly string[];
}

export function write(
  made: Made,
  { metric = false, mirrored, moved = [0, 0], shuffled = (l) => l }: Written = {},
): string {
  const length = (inches: number): string => (metric ? `${(inches * 25.4).toFixed(4)}mm` : `${inches}"`);
  const weight = (lb: number): string => (metric ? `${(lb * 0.45359237).toFixed(8)} kg` : `${lb} lb`);
  const density = (of: number): string =>
    metric ? `${(of * 16.018463373960142).toFixed(8)} kg/m3` : `${of} lb/cuft`;
  const entries = [
    ...made.parts.map(([name, board, long]) => `part ${name} of ${board}, length ${length(long)}`),
    ...made.items.map(({ part, lie, at: [x, y, z], wide }) => {
      const left = (mirrored === undefined ? x : mirrored - x - wide) + moved[0];
      return `place ${part} ${lie}, ${length(left)} from left, ${length(y + moved[1])} from front, ${length(z)} up`;
    }),
    ...made.joints.map((j) => `fasten ${j}`),
    ...made.loads.map(({ part, lb, how }) => `load ${part} ${weight(lb)} ${how}`),
    ...(made.box
      ? [
          `fill mix, moist ${density(made.box.saturated * 0.8)}, saturated ${density(made.box.saturated)}`,
          `${made.box.line}\n  filled with mix ${length(made.box.deep)} deep`,
        ]
      : []),
  ];
  return [["plan Made", ...made.head].join("\n  "), ...shuffled(entries)].join("\n").concat("\n");
}

export const sixteenths = (from: number, to: number): fc.Arbitrary<number> =>
  fc.integer({ min: from * 16, max: to * 16 }).map((n) => n / 16);
const head = fc.constantFrom(
  ["outdoors"],
  ["indoors"],
  ["indoors", "foot limit 217 lb by the yard's own builder"],
);
const how = fc.constantFrom("spread", "middle", "anywhere");

/** Four posts, a rail before and behind them by screws, slats across on the rails, which may reach past the posts. */
export const stand: fc.Arbitrary<Made> = fc
  .record({
    head,
    wide: sixteenths(16, 70),
    deep: sixteenths(8, 24),
    high: sixteenths(8, 30),
    over: sixteenths(0, 5),
    rail: fc.constantFrom(["2x4", 3.5] as const, ["2x6", 5.5] as const),
    slat: fc.constantFrom(["1x4", 3.5] as const, ["2x4", 3.5] as const, ["1x6", 5.5] as const),
    screws: fc.constantFrom('2 #8 x 2-1/2"', '3 #10 x 3"', '1 #10 x 2-1/2"'),
    lb: fc.integer({ min: 1, max: 900 }),
    how,
    said: fc.boolean(),
  })
  .map(({ head: first, wide, deep, high, over, rail, slat, screws, lb, how: stands, said }) => {
    const long = wide + 2 * over;
    const count = Math.max(1, Math.floor((long + 0.5) / (slat[1] + 0.5)));
    const gap = count > 1 ? Math.floor(((long - count * slat[1]) / (count - 1)) * 16) / 16 : 0;
    const post = (x: number, y: number): Item => ({
      part: "post",
      lie: "upright, wide face front",
      at: [x, y, 0],
      wide: 3.5,
    });
    const low = high - rail[1];
    return {
      head: first,
      parts: [
        ["post", "2x4", high],
        ["rail", rail[0], long],
        ["slat", slat[0], deep + 3],
      ],
      items: [
        ...[0, wide - 3.5].flatMap((x) => [post(over + x, 1.5), post(over + x, deep)]),
        ...[0, deep + 1.5].map(
          (y): Item => ({ part: "rail", lie: "across, on edge", at: [0, y, low], wide: long }),
        ),
        ...Array.from(
          { length: count },
          (_, i): Item => ({
            part: "slat",
            lie: "front to back, flat",
            at: [i * (slat[1] + gap), 0, high],
            wide: slat[1],
          }),
        ),
      ],
      joints: [
        `rail into post, ${screws} at each crossing`,
        'slat into rail edge, 1 #8 x 2-1/2" at each crossing',
      ],
      loads: said ? [{ part: "slat", lb, how: stands }] : [],
      box: undefined,
    };
  });

/** Two uprights with shelves on cleats between. */
export const shelves: fc.Arbitrary<Made> = fc
  .record({
    head,
    wide: sixteenths(16, 60),
    count: fc.integer({ min: 1, max: 4 }),
    apart: sixteenths(8, 14),
    board: fc.constantFrom(["1x12", 0.75] as const, ["2x12", 1.5] as const),
    lb: fc.integer({ min: 1, max: 400 }),
    how,
  })
  .map(({ head: first, wide, count, apart, board, lb, how: stands }) => {
    const levels = Array.from({ length: count }, (_, i) => 3 + i * apart);
    return {
      head: first,
      parts: [
        ["upright", "2x12", 3 + count * apart],
        ["cleat", "1x2", 11.25],
        ["shelf", board[0], wide],
      ],
      items: [
        { part: "upright", lie: "upright, wide face left", at: [0, 0, 0], wide: 1.5 },
        { part: "upright", lie: "upright, wide face left", at: [wide + 1.5, 0, 0], wide: 1.5 },
        ...levels.flatMap((z): Item[] => [
          { part: "cleat", lie: "front to back, on edge", at: [1.5, 0, z - 1.5], wide: 0.75 },
          { part: "cleat", lie: "front to back, on edge", at: [wide + 0.75, 0, z - 1.5], wide: 0.75 },
          { part: "shelf", lie: "across, flat", at: [1.5, 0, z], wide },
        ]),
      ],
      joints: [
        'cleat face into upright face, 2 #8 x 1-5/8" along it',
        'shelf into cleat edge, 2 #8 x 2" at each crossing',
      ],
      loads: [{ part: "shelf", lb, how: stands }],
      box: undefined,
    };
  });

/** Legs, walls round them, ledgers inside of the walls, boards on the ledgers, and something in it. */
export const boxes: fc.Arbitrary<Made> = fc
  .record({
    head,
    wide: sixteenths(24, 72),
    deep: sixteenths(12, 24),
    high: sixteenths(8, 30),
    wall: fc.constantFrom(["1x8", 0.75] as const, ["2x8", 1.5] as const),
    level: sixteenths(1, 4),
    saturated: fc.integer({ min: 40, max: 130 }),
    screws: fc.constantFrom('2 #8 x 2"', '3 #10 x 3"'),
  })
  .map(({ head: first, wide, deep, high, wall, level, saturated, screws }) => {
    const board = wall[0];
    const thick = wall[1];
    const low = high - 7.25;
    const leg = (x: number, y: number): Item => ({
      part: "leg",
      lie: "upright, wide face front",
      at: [x, y, 0],
      wide: 3.5,
    });
    const count = Math.floor(((wide - 7) / 4) * 1);
    const gap = count > 1 ? Math.floor(((wide - 7 - count * 3.5) / (count - 1)) * 16) / 16 : 0;
    return {
      head: first,
      parts: [
        ["leg", "2x4", high],
        ["side", board, wide],
        ["end", board, deep],
        ["ledger", "2x2", wide - 7],
        ["plank", "1x4", deep],
      ],
      items: [
        ...[0, wide - 3.5].flatMap((x) => [leg(thick + x, thick), leg(thick + x, thick + deep - 1.5)]),
        { part: "side", lie: "across, on edge", at: [thick, 0, low], wide },
        { part: "side", lie: "across, on edge", at: [thick, thick + deep, low], wide },
        { part: "end", lie: "front to back, on edge", at: [0, thick, low], wide: thick },
        { part: "end", lie: "front to back, on edge", at: [thick + wide, thick, low], wide: thick },
        { part: "ledger", lie: "across, flat", at: [thick + 3.5, thick, low], wide: wide - 7 },
        { part: "ledger", lie: "across, flat", at: [thick + 3.5, thick + deep - 1.5, low], wide: wide - 7 },
        ...Array.from(
          { length: count },
          (_, i): Item => ({
            part: "plank",
            lie: "front to back, flat",
            at: [thick + 3.5 + i * (3.5 + gap), thick, low + 1.5],
            wide: 3.5,
          }),
        ),
      ],
      joints: [
        `side and end into leg, ${screws} at each crossing`,
        'side face into ledger, 5 #8 x 2" along it',
        'plank into ledger, 1 #8 x 1-5/8" at each crossing',
      ],
      loads: [],
      box: {
        line: "box tub, walls side and end, bottom plank, drains through the gaps",
        deep: level,
        saturated,
      },
    };
  });

export const anything = fc.oneof(stand, shelves, boxes);
