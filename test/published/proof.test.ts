// Proven layouts against figures and programs from outside the project.
import highsLoader from "highs";
import { describe, expect, it } from "vitest";
import type { BoardJob } from "../../server/cutting/job";
import { boundHolds, type Certificate } from "../../server/cutting/proof/certify-boards";
import { prove } from "../../server/cutting/proof/prove";
import { orLibrary, triplets } from "../bench/layout/bins";
import { boardPlan } from "../bench/layout/board-plans";
import { randomFrom } from "../bench/layout/random";

const BENCH = `${import.meta.dirname}/../../../shared/bench`;

function provenOf(job: BoardJob) {
  const run = prove(job, 2e9);
  for (;;) {
    const { value, done } = run.next();
    if (done) return value;
  }
}

describe("bins of one size", () => {
  for (const n of [1, 2, 3, 4]) {
    const instances = orLibrary(n, BENCH);
    const absent = instances ? "" : " (skipped: the file is absent)";
    it.skipIf(!instances)(
      `OR-Library binpack${n} (E. Falkenauer; J. E. Beasley): 20 of 20 proven at the best known count${absent}`,
      () => {
        expect(instances).toHaveLength(20);
        for (const { name, job, best } of instances!) {
          const { answer, proof } = provenOf(job);
          expect([name, proof.status, answer.cost]).toEqual([name, "proven", best]);
        }
      },
      60_000,
    );
  }

  it("triplets of 60 and 120 items, of which three fill a bin (after Falkenauer 1996): n / 3 bins, proven", () => {
    for (const items of [60, 120])
      for (const seed of [1, 2, 3]) {
        const { job, best } = triplets(items, seed);
        const { answer, proof } = provenOf(job);
        expect([proof.status, answer.cost]).toEqual(["proven", best]);
      }
  }, 60_000);
});

describe("HiGHS (a mixed-integer solver, MIT) on the model with every pattern", () => {
  it("finds no cheaper way than those proven, and none as cheap with less wood", async () => {
    const highs = await highsLoader();
    let compared = 0;
    for (let seed = 0; seed < 24; seed++) {
      const job = smallPlan(seed);
      const { answer, proof } = provenOf(job);
      expect(proof.status).toBe("proven");
      if (answer.unplaced.length > 0) continue;
      const cost = solved(highs, job, (s) => s.price!, null);
      expect(proof.cost).toBe(cost);
      expect(answer.length / UNIT).toBe(solved(highs, job, (s) => s.length / UNIT, cost));
      compared++;
    }
    expect(compared).toBeGreaterThan(18);
  }, 60_000);
});

describe("plans of the bench", () => {
  it("are proven with certificates that hold, and that show no more than is true", () => {
    for (let seed = 0; seed < 12; seed++) {
      const job = boardPlan(seed);
      const { answer, proof } = provenOf(job);
      expect(proof.status).toBe("proven");
      const none = [...new Set(job.pieces.map(({ length }) => length))].map(() => 0);
      const certificate = proof.certificate as Certificate;
      const { length } = answer;
      expect(boundHolds(job, certificate, none, [proof.cost, length])).toBe(true);
      expect(boundHolds(job, certificate, none, [proof.cost, length + 1])).toBe(false);
      expect(boundHolds(job, certificate, none, [proof.cost + 1, 0])).toBe(false);
    }
  }, 60_000);
});

const UNIT = 1016;

/** Up to 6 lengths and 3 sold ones, on a coarse grid, with some salvage. */
function smallPlan(seed: number): BoardJob {
  const random = randomFrom(seed);
  const lengths = Array.from({ length: random.whole(2, 6) }, () => random.whole(11, 60));
  return {
    pieces: lengths.flatMap((length, i) =>
      Array.from({ length: random.whole(1, 9) }, (_, n) => ({
        id: `part ${i} / ${n}`,
        length: length * UNIT,
      })),
    ),
    sold: [72, 96, 120].map((length, i) => ({
      id: `sold ${i}`,
      length: length * UNIT,
      price: length * 7 + random.whole(-60, 60),
    })),
    onHand: Array.from({ length: random.whole(0, 2) }, (_, i) => ({
      id: `pile ${i}`,
      length: random.whole(20, 70) * UNIT,
      bad: [],
    })),
    kerf: random.whole(0, 2) * UNIT,
    endTrim: random.whole(0, 2) * UNIT,
    salvage: "use up",
  };
}

/** The least of `of` over all ways to cut, at no more than that cost; the model has a column for every filling. */
function solved(
  highs: Awaited<ReturnType<typeof highsLoader>>,
  job: BoardJob,
  of: (sold: BoardJob["sold"][number]) => number,
  cost: number | null,
): number {
  const counts = new Map<number, number>();
  for (const { length } of job.pieces) counts.set(length, (counts.get(length) ?? 0) + 1);
  const lengths = [...counts.keys()];
  const columns: { readonly name: string; readonly board: number; readonly takes: readonly number[] }[] = [];
  const rooms = [
    ...job.sold.map(({ length }) => length - job.endTrim),
    ...job.onHand.map(({ length }) => length),
  ];
  rooms.forEach((room, board) => {
    const takes = lengths.map(() => 0);
    const fill = (g: number, left: number): void => {
      if (g === lengths.length) {
        if (takes.some((n) => n > 0)) columns.push({ name: `x${columns.length}`, board, takes: [...takes] });
        return;
      }
      const most = Math.min(counts.get(lengths[g]!)!, Math.floor(left / (lengths[g]! + job.kerf)));
      for (takes[g] = 0; takes[g]! <= most; takes[g]!++)
        fill(g + 1, left - takes[g]! * (lengths[g]! + job.kerf));
      takes[g] = 0;
    };
    fill(0, room + job.kerf);
  });
  const sum = (terms: readonly { readonly by: number; readonly name: string }[]) =>
    terms
      .filter(({ by }) => by !== 0)
      .map(({ by, name }) => `+ ${by} ${name}`)
      .join(" ") || "0 x0";
  const bought = columns.filter(({ board }) => board < job.sold.length);
  const weigh = (by: (sold: BoardJob["sold"][number]) => number) =>
    sum(bought.map(({ name, board }) => ({ by: by(job.sold[board]!), name })));
  const rows = [
    ...lengths.map(
      (l, g) => `${sum(columns.map(({ name, takes }) => ({ by: takes[g]!, name })))} >= ${counts.get(l)}`,
    ),
    ...job.onHand.map(
      (_, i) =>
        `${sum(columns.filter(({ board }) => board === job.sold.length + i).map(({ name }) => ({ by: 1, name })))} <= 1`,
    ),
    ...(cost === null ? [] : [`${weigh((s) => s.price!)} <= ${cost}`]),
  ];
  const names = columns.map(({ name }) => name).join(" ");
  const model = `Minimize\n obj: ${weigh(of)}\nSubject To\n${rows.map((row, i) => ` c${i}: ${row}`).join("\n")}\nGeneral\n ${names}\nEnd`;
  const { Status, ObjectiveValue } = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5 });
  expect(Status).toBe("Optimal");
  return Math.round(ObjectiveValue);
}
