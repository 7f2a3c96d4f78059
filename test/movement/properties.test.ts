/** What holds of every row of boards, whatever its sizes, its wood and its place. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { growth } from "../../server/strength/swelling";
import { shrinkageOf, speciesNames } from "../../server/trade";
import { run } from "../checks/plans";

const runs = { numRuns: Number(process.env.FC_RUNS ?? 100) };
const woods = speciesNames().filter((name) => shrinkageOf(name));

interface Row {
  readonly wood: string;
  readonly moisture: number;
  readonly place: "outdoors" | "indoors";
  readonly boards: number;
  /** Sixteenths of an inch. */
  readonly gap: number;
  readonly room: number;
  readonly kerbs: 0 | 1 | 2;
}

const row: fc.Arbitrary<Row> = fc.record({
  wood: fc.constantFrom(...woods),
  moisture: fc.integer({ min: 0, max: 40 }),
  place: fc.constantFrom("outdoors", "indoors"),
  boards: fc.integer({ min: 2, max: 6 }),
  gap: fc.integer({ min: 0, max: 8 }),
  room: fc.integer({ min: 0, max: 8 }),
  kerbs: fc.constantFrom(0, 1, 2),
});

interface Way {
  readonly along: "across" | "front to back";
  readonly metric?: boolean;
  /** Inches from the plan's left and front. */
  readonly by?: number;
  readonly mirrored?: boolean;
}

function plan(r: Row, { along, metric, by = 0, mirrored = false }: Way): string {
  const length = (sixteenths: number): string => (metric ? `${sixteenths * 1.5875}mm` : `${sixteenths}/16"`);
  const [side, end, deep] = along === "across" ? ["front", "left", "deep"] : ["left", "front", "across"];
  const start = by * 16;
  const row = 88 * r.boards + r.gap * (r.boards - 1);
  const kerbs = [start, start + 24 + r.room + row].slice(0, r.kerbs);
  // Mirrored: the room lies before the first board, and of one kerb the other one stands.
  const first = start + 24 + (mirrored ? r.room : 0);
  const standing = mirrored && r.kerbs === 1 ? [start + 24 + r.room + row] : kerbs;
  return `plan Row
  ${r.place}
stock 1x6, species ${r.wood}, moisture ${r.moisture}%
part slat of 1x6, length ${length(640)}
part kerb of 2x4, length ${length(640)}
${standing.map((at) => `place kerb ${along}, on edge, on floor, ${length(start)} from ${end}, ${length(at)} from ${side}`).join("\n")}
place slat ${along}, flat, on floor, ${length(start)} from ${end}, ${length(first)} from ${side}, ${r.boards} ${deep}, ${length(r.gap)} apart`;
}

const rowOf = (text: string) => run(text).worked.movement.rows[0];
const found = (text: string): string[] =>
  run(text)
    .problems.filter((p) => p.code === "gap-closes")
    .map((p) => p.says);

describe("rows", () => {
  test("wetter never widens a gap, and drier never narrows one", () => {
    fc.assert(
      fc.property(row, (r) => {
        const year = rowOf(plan(r, { along: "across" }))!;
        for (const gap of [...year.gaps, ...year.ends.flatMap((e) => (e ? [e.gap] : []))]) {
          expect(gap.wettest).toBeLessThanOrEqual(gap.built);
          expect(gap.driest).toBeGreaterThanOrEqual(gap.built);
        }
      }),
      runs,
    );
  });

  test("wood that shrinks more, or is built in drier, swells no less", () => {
    const percent = fc.double({ min: 0, max: 20, noNaN: true });
    const moisture = fc.double({ min: 0, max: 45, noNaN: true });
    fc.assert(
      fc.property(percent, percent, moisture, moisture, moisture, (a, b, m, n, to) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const [dry, damp] = [Math.min(m, n), Math.max(m, n)];
        const wet = Math.max(to, damp);
        expect(growth(more, dry, wet, 30)).toBeGreaterThanOrEqual(growth(less, dry, wet, 30) - 1e-12);
        expect(growth(more, dry, wet, 30)).toBeGreaterThanOrEqual(growth(more, damp, wet, 30) - 1e-12);
      }),
      runs,
    );
  });

  test("answer alike in inches and in millimetres, turned, moved and mirrored", () => {
    fc.assert(
      fc.property(row, fc.integer({ min: 1, max: 90 }), (r, by) => {
        const here = found(plan(r, { along: "across" }));
        expect(found(plan(r, { along: "across", metric: true }))).toEqual(here);
        expect(found(plan(r, { along: "front to back" }))).toEqual(here);
        expect(found(plan(r, { along: "across", by }))).toEqual(here);
        expect(found(plan(r, { along: "across", mirrored: true }))).toEqual(here);
      }),
      runs,
    );
  });

  test("give numbers, and only those", () => {
    fc.assert(
      fc.property(row, (r) => {
        const { worked, problems } = run(plan(r, { along: "across" }));
        for (const { swelling, room, gaps } of worked.movement.rows)
          for (const n of [swelling, room, ...gaps.flatMap((g) => [g.built, g.wettest, g.driest])])
            expect(Number.isFinite(n)).toBe(true);
        for (const { numbers } of problems)
          for (const { value } of numbers) expect(Number.isFinite(value.approx)).toBe(true);
      }),
      runs,
    );
  });
});
