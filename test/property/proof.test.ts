// What must hold for every proven layout: never above the best there is, never a bound above it, nothing without its checker.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { verifyLayout } from "../../server/cutting/check";
import { EFFORT, improve, improved } from "../../server/cutting/improve";
import type { BoardAnswer, BoardJob } from "../../server/cutting/job";
import { layOut } from "../../server/cutting/job";
import { boundHolds, type Certificate } from "../../server/cutting/proof/certify-boards";
import { boardJobs, wildBoardJobs } from "./board-jobs";
import { leastCost } from "./board-optimum";

const numRuns = Number(process.env.FC_RUNS ?? 1000);
const some = boardJobs({ pieces: 30, sold: 5, onHand: 4 }, 1016);
const small = boardJobs({ pieces: 6, sold: 3, onHand: 2 });

const proven = (job: BoardJob, effort = EFFORT / 20) => {
  const news = improved({ kind: "boards", job }, effort);
  if (news.kind !== "boards") throw new Error("boards were asked for");
  return {
    answer: news.answer,
    proof: { ...news.proof, certificate: news.proof.certificate as Certificate },
  };
};

describe("proven layouts of boards", () => {
  it("can be cut, hold each piece once, and are never dearer than the first answer", () => {
    fc.assert(
      fc.property(some, (job) => {
        const { answer, proof } = proven(job);
        const first = layOut(job);
        expect(verifyLayout(job, answer)).toEqual([]);
        expect(answer.unplaced.length).toBeLessThanOrEqual(first.unplaced.length);
        if (answer.unplaced.length === first.unplaced.length && first.cost !== null)
          expect(proof.cost).toBeLessThanOrEqual(first.cost);
        expect(proof.bound).toBeLessThanOrEqual(proof.cost);
        expect(proof.cost).toBe(answer.cost);
      }),
      { numRuns: Math.ceil(numRuns / 4) },
    );
  });

  it("cost what the cheapest way does, found by trying everything; and nothing is bounded above that", () => {
    let [asked, told] = [0, 0];
    fc.assert(
      fc.property(small, (job) => {
        const { answer, proof } = proven(job);
        const [unplaced, cost] = leastCost(job);
        expect(answer.unplaced.length).toBe(unplaced);
        expect(proof.bound).toBeLessThanOrEqual(cost);
        expect(proof.cost).toBeGreaterThanOrEqual(cost);
        asked++;
        if (proof.status !== "proven") return;
        told++;
        expect(proof.cost).toBe(cost);
      }),
      { numRuns },
    );
    console.log(`small board jobs: ${told} of ${asked} proven`);
    expect(told / asked).toBeGreaterThan(0.99);
  });

  it("come from any numbers without a throw, and still can be cut", () => {
    fc.assert(
      fc.property(wildBoardJobs, (job) => {
        expect(verifyLayout(job, proven(job).answer)).toEqual([]);
      }),
      { numRuns: Math.ceil(numRuns / 2) },
    );
  });

  it("are the same bytes each time, whatever was asked before, and leave the job as it was", () => {
    fc.assert(
      fc.property(some, some, (job, other) => {
        const before = JSON.stringify(job);
        const first = JSON.stringify(proven(job));
        proven({ ...job, pieces: job.pieces.slice(0, -1) });
        proven(other);
        expect(JSON.stringify(proven(JSON.parse(before) as BoardJob))).toBe(first);
        expect(JSON.stringify(job)).toBe(before);
      }),
      { numRuns: Math.ceil(numRuns / 8) },
    );
  });

  it("tell bounds that only rise, and costs that only fall, each accepted by the checker", () => {
    fc.assert(
      fc.property(some, (job) => {
        let [cost, bound] = [Number.POSITIVE_INFINITY, 0];
        for (const news of improve({ kind: "boards", job }, EFFORT / 20)) {
          if (news?.kind !== "boards") continue;
          expect(news.proof.cost).toBeLessThanOrEqual(cost);
          expect(news.proof.bound).toBeGreaterThanOrEqual(bound);
          [cost, bound] = [news.proof.cost, news.proof.bound];
          const out = leftOut(job, news.answer);
          if (bound === 0) continue;
          expect(boundHolds(job, news.proof.certificate as Certificate, out, [bound, 0])).toBe(true);
        }
      }),
      { numRuns: Math.ceil(numRuns / 8) },
    );
  });

  it("stay unproven when a certificate says too little, or nothing that can be read", () => {
    let refused = 0;
    fc.assert(
      fc.property(some, fc.nat(), fc.constantFrom(0.5, Number.NaN, -1, 2 ** 60, 1e6), (job, which, by) => {
        const { answer, proof } = proven(job);
        const out = leftOut(job, answer);
        const least = [proof.cost, answer.length] as const;
        if (proof.status !== "proven" || proof.cost === 0) return;
        const { worths } = proof.certificate;
        expect(boundHolds(job, { worths }, out, least)).toBe(true);
        expect(boundHolds(job, { worths }, out, [least[0] + 1, 0])).toBe(false);
        expect(boundHolds(job, { worths: [] }, out, least)).toBe(false);
        expect(boundHolds(job, { worths: worths.map((w) => w.slice(1)) }, out, least)).toBe(false);
        const v = which % worths.length;
        const g = which % worths[v]!.length;
        const wrong = worths.map((w, i) => (i === v ? w.with(g, by === 1e6 ? w[g]! + by : by) : w));
        if (Number.isSafeInteger(by) && by >= 0) boundHolds(job, { worths: wrong }, out, [least[0] + 1, 0]);
        else refused += boundHolds(job, { worths: wrong.slice(v, v + 1) }, out, least) ? 0 : 1;
        // No worths whatever show more than is true.
        expect(boundHolds(job, { worths: wrong }, out, [least[0] + 1, 0])).toBe(false);
      }),
      { numRuns: Math.ceil(numRuns / 4) },
    );
    expect(refused).toBeGreaterThan(0);
  });
});

/** Per length, longest first, how many pieces are on no board. */
function leftOut(job: BoardJob, { unplaced }: BoardAnswer): number[] {
  const lengths = [...new Set(job.pieces.map(({ length }) => length))].sort((a, b) => b - a);
  const out = new Set(unplaced);
  return lengths.map((l) => job.pieces.filter(({ id, length }) => length === l && out.has(id)).length);
}
