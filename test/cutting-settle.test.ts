// A part added at the end leaves the boards it does not need byte for byte as they were, wherever the cost allows.
import { describe, expect, it } from "vitest";
import { verifyLayout } from "../server/cutting/check";
import { improved } from "../server/cutting/improve";
import type { BoardAnswer, BoardJob, BoardLayout } from "../server/cutting/job";
import { boardPlan } from "./bench/layout/board-plans";
import { randomFrom } from "./bench/layout/random";

const EFFORT = 200_000_000;
const SEEDS = Array.from({ length: 24 }, (_, seed) => seed);

function laid(job: BoardJob): BoardAnswer {
  const news = improved({ kind: "boards", job }, EFFORT);
  if (news.kind !== "boards") throw new Error("boards were asked for");
  expect(verifyLayout(job, news.answer)).toEqual([]);
  return news.answer;
}

/** The first few parts of a plan of the bench. */
function shortPlan(seed: number): BoardJob {
  const job = boardPlan(seed);
  const lengths = [...new Set(job.pieces.map(({ length }) => length))].slice(0, 9);
  return { ...job, pieces: job.pieces.filter(({ length }) => lengths.includes(length)).slice(0, 70) };
}

const withPart = (job: BoardJob, length: number, count: number): BoardJob => ({
  ...job,
  pieces: [...job.pieces, ...Array.from({ length: count }, (_, i) => ({ id: `new / ${i + 1}`, length }))],
});

const bytes = (board: BoardLayout): string => JSON.stringify(board);
const holdsNew = ({ cuts }: BoardLayout): boolean => cuts.some(({ pieceId }) => pieceId.startsWith("new"));

/** Boards of the earlier layout that are in the later one as they were. */
function kept(before: BoardAnswer, after: BoardAnswer): number {
  const later = new Map<string, number>();
  for (const board of after.boards) later.set(bytes(board), (later.get(bytes(board)) ?? 0) + 1);
  return before.boards.filter((board) => {
    const n = later.get(bytes(board)) ?? 0;
    later.set(bytes(board), n - 1);
    return n > 0;
  }).length;
}

describe("a part added at the end", () => {
  it("that fits what a board has left over changes that board alone", () => {
    for (const seed of SEEDS) {
      const job = shortPlan(seed);
      const before = laid(job);
      const rest = Math.max(...before.boards.map(({ offcut }) => offcut));
      if (rest < 2 * 16256) continue;
      const after = laid(withPart(job, Math.floor(rest / 2), 1));
      expect([after.cost, after.length, after.boards.length]).toEqual([
        before.cost,
        before.length,
        before.boards.length,
      ]);
      expect(after.boards.filter(holdsNew)).toHaveLength(1);
      expect(kept(before, after)).toBe(before.boards.length - 1);
    }
  });

  it("that takes a board of its own, where nothing is cheaper, changes no other", () => {
    let asked = 0;
    for (const seed of SEEDS) {
      const job = shortPlan(seed);
      const before = laid(job);
      const longest = Math.max(...job.sold.map(({ length }) => length)) - job.endTrim;
      const sole = { ...job, pieces: [], onHand: [] };
      const after = laid(withPart(job, longest, 2));
      const alone = laid(withPart(sole, longest, 2));
      if (after.cost !== before.cost! + alone.cost!) continue;
      asked++;
      expect(kept(before, after)).toBe(before.boards.length);
    }
    expect(asked).toBeGreaterThan(SEEDS.length / 2);
  });

  it("of any length keeps most boards where the same lengths are bought; the share is printed", () => {
    let [all, same] = [0, 0];
    for (const seed of SEEDS) {
      const job = shortPlan(seed);
      const random = randomFrom(seed);
      const before = laid(job);
      const after = laid(withPart(job, random.whole(6, 60) * 16256, random.whole(1, 4)));
      const counts = (answer: BoardAnswer) => new Map(answer.buy.map(({ id, count }) => [id, count]));
      const more = counts(after);
      if ([...counts(before)].some(([id, count]) => (more.get(id) ?? 0) < count)) continue;
      all += before.boards.length;
      same += kept(before, after);
    }
    console.log(`a part added: ${same} of ${all} boards byte for byte as before`);
    expect(same / all).toBeGreaterThan(0.8);
  });
});

describe("the same part elsewhere in the text", () => {
  it("costs the same", () => {
    for (const seed of SEEDS.slice(0, 8)) {
      const job = withPart(shortPlan(seed), 20 * 16256, 2);
      const { pieces } = job;
      const first = { ...job, pieces: [...pieces.slice(-2), ...pieces.slice(0, -2)] };
      expect([laid(first).cost, laid(first).length]).toEqual([laid(job).cost, laid(job).length]);
    }
  });
});
