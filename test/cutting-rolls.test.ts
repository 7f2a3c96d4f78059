// Pieces off a roll, in bands across it.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { layOutRoll, type RollAnswer, type RollJob } from "../server/cutting/rolls";

const piece = (id: string, along: number, across: number, turns = false) => ({ id, along, across, turns });
const shown = ({ bands }: RollAnswer): string[] =>
  bands.map(({ along, pieces }) => `${along}: ${pieces.map((p) => p.pieceId).join(" ")}`);

describe("a roll", () => {
  it("gives two narrow pieces side by side, and one after the other what is too wide for that", () => {
    expect(layOutRoll({ width: 72, pieces: [piece("a", 50, 30), piece("b", 40, 40)] })).toMatchObject({
      along: 50,
      proven: true,
    });
    expect(shown(layOutRoll({ width: 72, pieces: [piece("a", 50, 40), piece("b", 40, 40)] }))).toEqual([
      "50: a",
      "40: b",
    ]);
  });

  it("turns a piece where that takes less, and only where it may be turned", () => {
    expect(layOutRoll({ width: 72, pieces: [piece("a", 70, 20, true)] }).along).toBe(20);
    expect(layOutRoll({ width: 72, pieces: [piece("a", 70, 20)] }).along).toBe(70);
    // Turned it would take a band of its own.
    const beside = layOutRoll({ width: 72, pieces: [piece("a", 70, 30), piece("b", 70, 40, true)] });
    expect(beside.along).toBe(70);
  });

  it("leaves out what is wider than it, and what is no length", () => {
    const job = { width: 36, pieces: [piece("wide", 50, 40), piece("bad", Number.NaN, 3), piece("b", 9, 9)] };
    expect(layOutRoll(job)).toMatchObject({ unplaced: ["wide", "bad"], along: 9 });
    expect(layOutRoll({ width: -1, pieces: [piece("a", 1, 1)] }).unplaced).toEqual(["a"]);
    expect(layOutRoll({ width: 36, pieces: [] })).toMatchObject({ along: 0, bands: [], proven: true });
  });
});

const jobs: fc.Arbitrary<RollJob> = fc.record({
  width: fc.integer({ min: 8, max: 20 }),
  pieces: fc
    .array(fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 }), fc.boolean()), {
      maxLength: 14,
    })
    .map((list) => list.map(([along, across, turns], i) => piece(`p${i}`, along, across, turns))),
});

describe("any roll", () => {
  it("holds every piece once, no band wider than the roll, and takes no less than its area", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const { bands, along, unplaced, proven } = layOutRoll(job);
        const ids = [...bands.flatMap(({ pieces }) => pieces.map((p) => p.pieceId)), ...unplaced];
        expect(ids.sort()).toEqual(job.pieces.map(({ id }) => id).sort());
        for (const band of bands) {
          expect(band.pieces.reduce((sum, p) => sum + p.across, 0)).toBeLessThanOrEqual(job.width);
          expect(Math.max(...band.pieces.map((p) => p.along))).toBe(band.along);
          for (const p of band.pieces) {
            const asked = job.pieces.find(({ id }) => id === p.pieceId)!;
            const sides = p.turned ? [asked.across, asked.along] : [asked.along, asked.across];
            expect([p.along, p.across]).toEqual(sides);
            expect(p.turned && !asked.turns).toBe(false);
          }
        }
        const placed = job.pieces.filter(({ id }) => !unplaced.includes(id));
        const area = placed.reduce((sum, p) => sum + p.along * p.across, 0);
        expect(along * job.width).toBeGreaterThanOrEqual(area);
        if (placed.length <= 9) expect(proven).toBe(true);
      }),
    );
  });

  it("is the least there is where it says so, found by trying all ways to part the pieces into bands", () => {
    const few = jobs.map((job) => ({ ...job, pieces: job.pieces.slice(0, 5) }));
    fc.assert(
      fc.property(few, (job) => {
        const { along, unplaced } = layOutRoll(job);
        const placed = job.pieces.filter(({ id }) => !unplaced.includes(id));
        expect(along).toBe(leastOf(job.width, placed));
      }),
    );
  });
});

/** Set by set: the cheapest first band for the first piece, and the least for the rest. */
function leastOf(width: number, pieces: RollJob["pieces"]): number {
  if (pieces.length === 0) return 0;
  const [first, ...others] = pieces as [RollJob["pieces"][number], ...RollJob["pieces"]];
  let least = Number.POSITIVE_INFINITY;
  for (let set = 0; set < 2 ** others.length; set++) {
    const band = [first, ...others.filter((_, i) => set & (1 << i))];
    const rest = others.filter((_, i) => !(set & (1 << i)));
    for (let turn = 0; turn < 2 ** band.length; turn++) {
      if (band.some((p, i) => turn & (1 << i) && !p.turns)) continue;
      const sides = band.map(
        (p, i) => (turn & (1 << i) ? [p.across, p.along] : [p.along, p.across]) as [number, number],
      );
      if (sides.reduce((sum, [, across]) => sum + across, 0) > width) continue;
      least = Math.min(least, Math.max(...sides.map(([along]) => along)) + leastOf(width, rest));
    }
  }
  return least;
}
