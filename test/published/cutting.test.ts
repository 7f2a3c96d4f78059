// Board layouts against figures from outside the project.
import { describe, expect, it } from "vitest";
import { verifyLayout } from "../../server/cutting/check";
import { type BoardJob, layOut } from "../../server/cutting/job";
import { orLibrary } from "../bench/layout/bins";

const INCH = 16256;

function stick(count: number, piece: number, length: number, kerf: number): BoardJob {
  return {
    pieces: Array.from({ length: count }, (_, i) => ({ id: `part / ${i + 1}`, length: piece })),
    sold: [{ id: "stick", length, price: 100 }],
    onHand: [],
    kerf,
    endTrim: 0,
    salvage: "keep",
  };
}

describe("parts from one stick", () => {
  it("a 96 in stick gives four parts of 20.5 in and a 13.5 in offcut after 4 cuts of 1/8 in (arithmetic of the trade)", () => {
    const four = layOut(stick(4, 20.5 * INCH, 96 * INCH, INCH / 8));
    expect(four.boards.map(({ cuts, offcut }) => [cuts.length, offcut / INCH])).toEqual([[4, 13.5]]);
    expect(four.boards[0]?.waste.filter(({ why }) => why === "kerf")).toHaveLength(4);
    expect(layOut(stick(5, 20.5 * INCH, 96 * INCH, INCH / 8)).boards).toHaveLength(2);
  });

  it("floor((L + k) / (p + k)) parts per stick (common practice: no kerf after the last piece)", () => {
    for (const kerf of [0, INCH / 16, (3 * INCH) / 32, INCH / 8])
      for (const length of [72, 92.625, 96, 120, 144].map((inches) => inches * INCH))
        for (const piece of [3.5, 11.9375, 15.875, 20.5, 31, 47.9375, 48].map((inches) => inches * INCH)) {
          const most = Math.floor((length + kerf) / (piece + kerf));
          expect(layOut(stick(most, piece, length, kerf)).boards).toHaveLength(1);
          expect(layOut(stick(most + 1, piece, length, kerf)).boards).toHaveLength(2);
        }
  });
});

const BENCH = `${import.meta.dirname}/../../../shared/bench`;
const binpack1 = orLibrary(1, BENCH);
const absent = binpack1 ? "" : " (skipped: ../shared/bench/orlib/binpack1.txt is absent)";

describe(`first answers for OR-Library binpack1, u120 (E. Falkenauer; J. E. Beasley)${absent}`, () => {
  it.skipIf(!binpack1)(
    "20 instances within 2% of the best known bins together, none more than one bin over",
    () => {
      expect(binpack1).toHaveLength(20);
      let [bins, best] = [0, 0];
      for (const instance of binpack1!) {
        const answer = layOut(instance.job);
        expect(verifyLayout(instance.job, answer)).toEqual([]);
        const count = answer.boards.length;
        expect(answer.cost).toBe(count);
        expect(count).toBeGreaterThanOrEqual(instance.best);
        expect(count).toBeLessThanOrEqual(instance.best + 1);
        bins += count;
        best += instance.best;
      }
      console.log(
        `binpack1: ${bins} bins, best known ${best}, ${((bins / best - 1) * 100).toFixed(2)}% over`,
      );
      expect(bins / best).toBeLessThanOrEqual(1.02);
    },
  );
});
