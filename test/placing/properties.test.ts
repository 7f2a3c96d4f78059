/** What must hold of any plan that places things. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type Evaluated, evaluated, inch, plan, type Spans, STOCK, spansOf } from "./plans";

const RUNS = { numRuns: Number(process.env.FC_RUNS ?? 200) };

/** Pieces without their names, in an order of their own. */
const standing = ({ worked }: Evaluated): string[] =>
  worked.pieces.all.map((p) => `${p.part} ${JSON.stringify(spansOf(p))}`).sort();

const TROUGH = `measure rim = 30"
part leg of 2x4, length rim - thickness of cap-side
part side of 1x6, length overall width of legs
part end of 1x6, length overall depth of legs + 2 * thickness of side
part ledger of 2x2, length overall width of legs - 2 * width of leg
part floor-board of 1x4, length overall depth of legs
part cap-side of 1x4, length overall width of ends + 2", ends mitered 45°
part cap-end of 1x4, length overall depth of ends + 2", ends mitered 45°
place leg upright, wide face front, on floor, at each corner of 46-1/2" x 16-1/2"
place side across, on edge, in front of legs, flush with left of legs, flush with top of legs, 2 high, tight
place side across, on edge, behind legs, flush with left of legs, flush with top of legs, 2 high, tight
place end front to back, on edge, left of legs, flush with front of sides, flush with top of legs, 2 high, tight
place end front to back, on edge, right of legs, flush with front of sides, flush with top of legs, 2 high, tight
place ledger across, on edge, behind front sides, right of front left leg, flush with bottom of sides
place ledger across, on edge, in front of back sides, right of front left leg, flush with bottom of sides
place floor-board front to back, flat, on ledgers, flush with front of legs, 10 across, spread between left legs and right legs
ring cap = cap-side and cap-end and cap-side and cap-end
place cap flat, on legs, centered on legs`.split("\n");

test("the order of entries does not matter", () => {
  const wanted = standing(evaluated(TROUGH.join("\n")));
  expect(wanted.length).toBe(4 + 8 + 2 + 10 + 4);
  fc.assert(
    fc.property(fc.shuffledSubarray(TROUGH, { minLength: TROUGH.length }), (lines) => {
      expect(standing(evaluated(lines.join("\n")))).toEqual(wanted);
    }),
    RUNS,
  );
});

/** Sixteenths of an inch. */
const length = (least: number, most: number) => fc.integer({ min: least * 16, max: most * 16 });
const written = (sixteenths: number): string => `${sixteenths}/16"`;

test("moving the one thing that fixes a direction moves the piece by as much", () => {
  const fixes = [
    [0, (d: string) => `${d} right of post`],
    [0, (d: string) => `${d} in from left of post`],
    [0, (d: string) => `${d} past right of post`],
    [0, (d: string) => `${d} from left`],
    [1, (d: string) => `${d} behind post`],
    [1, (d: string) => `${d} in from front of post`],
    [1, (d: string) => `${d} past back of post`],
    [1, (d: string) => `${d} from front`],
    [2, (d: string) => `${d} above post`],
    [2, (d: string) => `${d} up`],
    [2, (d: string) => `${d} past top of post`],
  ] as const;
  const rest = ["0 from left", "0 from front", "on floor"];
  fc.assert(
    fc.property(
      fc.constantFrom(...fixes),
      length(0, 50),
      length(1, 50),
      fc.constantFrom("flat", "on edge"),
      (fix, at, by, how) => {
        const [axis, clause] = fix;
        const others = rest.filter((_, k) => k !== axis).join(", ");
        const stand = (d: number) => {
          const lines = `place post upright, 7" from left, 9" from front, 3" up\nplace slat across, ${how}, ${others}, ${clause(written(d))}`;
          return plan(lines).worked.pieces.all[1]!.bounds;
        };
        const [before, after] = [stand(at), stand(at + by)];
        for (const k of [0, 1, 2] as const)
          for (const end of ["least", "most"] as const)
            expect(after[end][k] - before[end][k]).toBeCloseTo(k === axis ? (by / 16) * 25.4 : 0, 9);
      },
    ),
    RUNS,
  );
});

test("every row has even gaps", () => {
  /** Words, and the gap they ask for, in sixteenths, where they tell it: a slat is 4" wide. */
  const spacing = fc.oneof(
    fc.constant({ how: "tight", gap: 0 }),
    length(0, 6).map((d) => ({ how: `${written(d)} apart`, gap: d })),
    length(4, 9).map((d) => ({ how: `${written(d)} on center`, gap: d - 4 * 16 })),
    fc.constant({ how: "spread between left posts and right posts", gap: undefined }),
    length(1, 6).map((d) => ({
      how: `at most ${written(d)} apart, between left posts and right posts`,
      gap: d,
    })),
  );
  fc.assert(
    fc.property(spacing, fc.integer({ min: 2, max: 12 }), length(60, 90), ({ how, gap: asked }, n, at) => {
      const free = how.startsWith("at most");
      const where = how.includes("between") ? "" : ', 2" from left';
      const lines = `place post upright, wide face left, 0 from left, 0 from front, on floor
place post upright, wide face left, ${written(at)} from left, 0 from front, on floor
place slat front to back, flat, on floor, 0 from front${where}, ${free ? "as many as fit" : `${n} across`}, ${how}`;
      const spans = plan(lines)
        .worked.pieces.all.filter((p) => p.part === "slat")
        .map((p) => p.bounds);
      if (!free) expect(spans.length).toBe(n);
      const gaps = spans.slice(1).map((s, i) => s.least[0] - spans[i]!.most[0]);
      for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0]!, 9);
      if (free) expect(gaps[0]).toBeLessThanOrEqual((asked! / 16) * 25.4 + 1e-9);
      else if (asked !== undefined) expect(gaps[0]).toBeCloseTo((asked / 16) * 25.4, 9);
      if (!how.includes("between")) return;
      expect(spans[0]!.least[0]).toBeCloseTo(25.4, 9);
      expect(spans.at(-1)!.most[0]).toBeCloseTo((at / 16) * 25.4, 9);
    }),
    RUNS,
  );
});

interface Node {
  readonly inner: Node | undefined;
  readonly turn: "front" | "right" | "back" | "left";
  readonly at: readonly [number, number, number];
}

const SIZE = { post: [4, 1, 20], slat: [12, 4, 1] } as const;
type Box = [number, number, number, number, number, number];

const box = (at: readonly number[], size: readonly number[]): Box => [
  at[0]!,
  at[1]!,
  at[2]!,
  at[0]! + size[0]!,
  at[1]! + size[1]!,
  at[2]! + size[2]!,
];
const around = (list: readonly Box[]): Box =>
  [0, 1, 2, 3, 4, 5].map((k) => (k < 3 ? Math.min : Math.max)(...list.map((b) => b[k]!))) as Box;

/** Boxes turned about the vertical and put with their lowest corner there: plain sums, apart from the program's own. */
function put(list: readonly Box[], turn: Node["turn"], at: readonly number[]): Box[] {
  const turned = list.map(([x0, y0, z0, x1, y1, z1]): Box => {
    if (turn === "right") return [-y1, x0, z0, -y0, x1, z1];
    if (turn === "back") return [-x1, -y1, z0, -x0, -y0, z1];
    return turn === "left" ? [y0, -x1, z0, y1, -x0, z1] : [x0, y0, z0, x1, y1, z1];
  });
  const low = around(turned);
  return turned.map((b) => b.map((n, k) => n - low[k % 3]! + at[k % 3]!) as Box);
}

/** The text of a chain of assemblies, and the boxes that come of it. */
function flattened(node: Node, depth = 1): { text: string; boxes: Box[] } {
  const below = node.inner ? flattened(node.inner, depth + 1) : { text: "", boxes: [] };
  const [x, y, z] = node.at;
  const inner = node.inner
    ? `  place level-${depth + 1}, wide face ${node.inner.turn}, ${x}" from left, ${y}" from front, ${z}" up\n`
    : "";
  const text = `${below.text}assembly level-${depth}\n  place post upright, wide face front, 0 from left, 0 from front, on floor\n  place slat across, flat, 6" from left, ${y}" from front, ${z}" up\n${inner}`;
  const own = [box([0, 0, 0], SIZE.post), box([6, y, z], SIZE.slat)];
  return { text, boxes: [...own, ...(node.inner ? put(below.boxes, node.inner.turn, node.at) : [])] };
}

const nodes = fc.letrec<{ node: Node }>((tie) => ({
  node: fc.record({
    inner: fc.option(tie("node"), { nil: undefined, depthSize: "small", maxDepth: 4 }),
    turn: fc.constantFrom("front", "right", "back", "left"),
    at: fc.tuple(...([0, 1, 2] as const).map(() => fc.integer({ min: 0, max: 20 }))) as fc.Arbitrary<
      [number, number, number]
    >,
  }),
})).node;

test("assemblies inside assemblies stand where their pieces would by plain sums", () => {
  fc.assert(
    fc.property(nodes, (node) => {
      const { text, boxes } = flattened(node);
      const wanted = put(boxes, node.turn, [3, 4, 5]);
      const { worked } = evaluated(
        `${STOCK}${text}place level-1, wide face ${node.turn}, 3" from left, 4" from front, 5" up`,
      );
      expect(worked.faults).toEqual([]);
      const found = worked.pieces.all.map((p) => [...p.bounds.least, ...p.bounds.most].map(inch));
      const key = (b: readonly number[]): string => JSON.stringify(b.map((n) => n || 0));
      expect(found.map(key).sort()).toEqual(wanted.map(key).sort());
    }),
    RUNS,
  );
});

/** Two pieces of one plan never have one name. */
test("every piece has a name of its own", () => {
  const clause = fc.constantFrom(
    { says: 'at each corner of 40" x 30", on floor', pieces: 4 },
    { says: "0 from left, 0 from front, on floor, 2 across, tight, 2 high, tight", pieces: 4 },
    { says: '0 from left, 50" from front, on floor, mirrored left to right about rail', pieces: 2 },
    {
      says: '0 from left, 50" from front, on floor, 3 deep, tight, mirrored front to back about rail',
      pieces: 6,
    },
    { says: 'at each corner of 40" x 30", on floor, mirrored up and down about rail', pieces: 8 },
    { says: "on rail, centered on rail", pieces: 1 },
  );
  fc.assert(
    fc.property(fc.array(clause, { maxLength: 6 }), (clauses) => {
      const lines = [
        "place rail across, flat, 0 from left, 0 from front, on floor",
        ...clauses.map((c) => `place post upright, ${c.says}`),
      ];
      const all = plan(lines.join("\n")).worked.pieces.all;
      expect(all.length).toBe(clauses.reduce((sum, c) => sum + c.pieces, 1));
      expect(new Set(all.map((p) => p.id)).size).toBe(all.length);
    }),
    RUNS,
  );
});

test("a chain of four hundred lines that lean each on the one before stands to its end", () => {
  const line = (i: number): string =>
    `place post upright, wide face front, on floor, ${i === 0 ? "0 from left" : `5" right of left post-${i - 1}`}, 0 from front, 5 across, 1" apart`;
  const parts = Array.from({ length: 400 }, (_, i) => `part post-${i} of b, length 20"`).join("\n");
  const lines = Array.from({ length: 400 }, (_, i) => line(i).replace("place post", `place post-${i}`)).join(
    "\n",
  );
  const text = `stock b, actual 1" x 4"\n${parts}\n${lines}\n`;
  const { worked } = evaluated(text);
  expect(worked.pieces.all.length).toBe(2000);
  const from = (left: number): Spans => [
    [left, left + 4],
    [0, 1],
    [0, 20],
  ];
  expect(spansOf(worked.pieces.all[0]!)).toEqual(from(0));
  // The left ones of five are two, 4 + 1 + 4 wide: the next row begins 5 further, at 14. Its last piece stands 20 into it.
  expect(spansOf(worked.pieces.all.at(-1)!)).toEqual(from(399 * 14 + 20));
});
