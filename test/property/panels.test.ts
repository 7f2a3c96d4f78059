// What must hold for every proof of a sheet job: checked answers, bounds never above the optimum, proven ones equal to it.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetBoundHolds } from "../../server/cutting/panels/certify-sheets";
import { proveSheets, type SheetProgress } from "../../server/cutting/panels/prove";
import { layOutSheets, type SheetJob } from "../../server/cutting/sheets";
import { verifySheets } from "../../server/cutting/sheets-check";
import { sheetOptimum } from "../panel-search";

const numRuns = Number(process.env.FC_RUNS ?? 500);
const EFFORT = 30_000_000;

/** Sound jobs with few pieces on a coarse grid, so that equal sizes and exact fits are common. */
const small: fc.Arbitrary<SheetJob> = (() => {
  const side = (min: number, max: number) => fc.integer({ min, max });
  const grain = fc.constantFrom("along" as const, "free" as const);
  const piece = fc.record({ length: side(1, 12), width: side(1, 9), grain });
  const sheet = fc.record({ length: side(6, 14), width: side(5, 12), grain: fc.boolean() });
  const price = fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 0, max: 30 }) }, fc.constant(null));
  return fc
    .record({
      pieces: fc.array(piece, { maxLength: 3 }),
      again: fc.integer({ min: 0, max: 2 }),
      sold: fc.array(fc.tuple(sheet, price), { minLength: 1, maxLength: 2 }),
      onHand: fc.array(sheet, { maxLength: 2 }),
      kerf: side(0, 2),
    })
    .map(({ pieces, again, sold, onHand, kerf }) => ({
      pieces: [...pieces, ...pieces.slice(0, again)].map((p, i) => ({ ...p, id: `piece ${i}` })),
      sold: sold.map(([s, price], i) => ({ ...s, price, id: `sold ${i}` })),
      onHand: onHand.map((s, i) => ({ ...s, id: `own ${i}` })),
      kerf,
    }));
})();

/** Any numbers at all, prices not known. */
const wild: fc.Arbitrary<SheetJob> = (() => {
  const number = fc.oneof(fc.integer({ min: -3, max: 40 }), fc.constantFrom(2 ** 23, 2 ** 60), fc.double());
  const grain = fc.constantFrom("along" as const, "free" as const);
  const piece = fc.record({ length: number, width: number, grain });
  const sheet = { length: number, width: number, grain: fc.boolean() };
  return fc.record({
    pieces: fc
      .array(piece, { maxLength: 8 })
      .map((pieces) => pieces.map((one, i) => ({ ...one, id: `piece ${i}` }))),
    sold: fc
      .array(fc.record({ ...sheet, price: fc.option(number) }), { maxLength: 3 })
      .map((sheets) => sheets.map((one, i) => ({ ...one, id: `sold ${i}` }))),
    onHand: fc
      .array(fc.record(sheet), { maxLength: 3 })
      .map((sheets) => sheets.map((one, i) => ({ ...one, id: `own ${i}` }))),
    kerf: fc.oneof(
      { weight: 4, arbitrary: fc.integer({ min: 0, max: 5 }) },
      fc.constantFrom(-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 26, 2 ** 60),
    ),
  });
})();

function all(job: SheetJob, effort: number): readonly SheetProgress[] {
  const progress: SheetProgress[] = [];
  const steps = proveSheets(job, effort);
  for (let step = steps.next(); ; step = steps.next()) {
    progress.push(step.value);
    if (step.done) return progress;
  }
}

describe("proofs for sheets", () => {
  it("bound the optimum from below, and are it when they say so", () => {
    let [asked, proven, better] = [0, 0, 0];
    fc.assert(
      fc.property(small, (job) => {
        const [left, weight, area] = sheetOptimum(job);
        const progress = all(job, EFFORT);
        const first = layOutSheets(job);
        for (const { answer, proof } of progress) {
          expect(verifySheets(job, answer)).toEqual([]);
          expect(answer.unplaced.length).toBeLessThanOrEqual(first.unplaced.length);
          expect(proof.bound).toBeLessThanOrEqual(weight);
          expect(proof.money).toBe(job.sold.every(({ price }) => price !== null));
          if (answer.unplaced.length === left) expect(proof.cost).toBeGreaterThanOrEqual(weight);
        }
        const { answer, proof } = progress.at(-1)!;
        asked++;
        if (answer.cost !== first.cost || answer.unplaced.length < first.unplaced.length) better++;
        if (proof.status !== "proven") return;
        proven++;
        const bought = answer.sheets.filter(({ kind }) => kind === "bought");
        const size = bought.reduce((sum, sheet) => sum + sheet.length * sheet.width, 0);
        expect([answer.unplaced.length, proof.cost, size]).toEqual([left, weight, area]);
        expect(proof.bound).toBe(proof.cost);
        expect(sheetBoundHolds(job, proof.certificate!, [weight, area])).toBe(true);
      }),
      { numRuns },
    );
    console.log(`small sheet jobs: ${proven} of ${asked} proven, ${better} better than the first answer`);
  });

  it("come from any numbers without a throw, and still can be cut", () => {
    fc.assert(
      fc.property(wild, (job) => {
        for (const { answer } of all(job, 3_000_000)) expect(verifySheets(job, answer)).toEqual([]);
      }),
      { numRuns },
    );
  });

  it("are the same bytes each time", () => {
    fc.assert(
      fc.property(small, (job) => {
        const once = JSON.stringify(all(job, EFFORT));
        expect(JSON.stringify(all(JSON.parse(JSON.stringify(job)) as SheetJob, EFFORT))).toBe(once);
      }),
      { numRuns: Math.ceil(numRuns / 5) },
    );
  });

  it("rest on certificates that prove nothing false, whatever is written in them", () => {
    const number = fc.oneof({ weight: 9, arbitrary: fc.integer({ min: 0, max: 40 }) }, fc.double());
    const vectors = fc.array(fc.array(number, { maxLength: 5 }), { maxLength: 3 });
    const certificates = fc.record({ worths: vectors, held: vectors, refuted: vectors });
    fc.assert(
      fc.property(small, certificates, fc.nat({ max: 2 }), fc.nat(), (job, made, which, at) => {
        const [, weight, area] = sheetOptimum(job);
        expect(sheetBoundHolds(job, made, [weight, area + 1])).toBe(false);
        expect(sheetBoundHolds(job, made, [weight + 1, 0])).toBe(false);
        const { certificate } = all(job, EFFORT).at(-1)!.proof;
        if (certificate === null) return;
        const raised = structuredClone(certificate) as unknown as Record<string, number[][]>;
        const rows = Object.values(raised)[which]!;
        const row = rows[at % Math.max(1, rows.length)];
        if (row && row.length > 0) row[at % row.length]!++;
        expect(sheetBoundHolds(job, raised as unknown as typeof certificate, [weight, area + 1])).toBe(false);
        expect(sheetBoundHolds(job, raised as unknown as typeof certificate, [weight + 1, 0])).toBe(false);
      }),
      { numRuns },
    );
  });
});
