// What must hold for every board and sheet job: pieces once each, checked layouts, the same bytes, never below the optimum.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { verifyLayout } from "../../server/cutting/check";
import { type BoardAnswer, type BoardJob, layOut } from "../../server/cutting/job";
import { layOutSheets, type SheetJob } from "../../server/cutting/sheets";
import { verifySheets } from "../../server/cutting/sheets-check";
import { boardJobs, wildBoardJobs } from "./board-jobs";
import { leastCost } from "./board-optimum";

const numRuns = Number(process.env.FC_RUNS ?? 1000);

const sound = boardJobs({ pieces: 40, sold: 6, onHand: 5 }, 1016);
const small = boardJobs({ pieces: 6, sold: 3, onHand: 2 });

describe("board layouts", () => {
  it("hold every piece once, on a board or left over, and the checker finds nothing", () => {
    fc.assert(
      fc.property(sound, (job) => {
        const answer = layOut(job);
        expect(verifyLayout(job, answer)).toEqual([]);
        const ids = [
          ...answer.boards.flatMap(({ cuts }) => cuts.map(({ pieceId }) => pieceId)),
          ...answer.unplaced,
        ];
        expect(ids.sort()).toEqual(job.pieces.map(({ id }) => id).sort());
      }),
      { numRuns },
    );
  });

  it("come from any numbers without a throw, and still can be cut", () => {
    fc.assert(
      fc.property(wildBoardJobs, (job) => {
        expect(verifyLayout(job, layOut(job))).toEqual([]);
      }),
      { numRuns },
    );
  });

  it("are the same bytes each time, and leave the job as it was", () => {
    fc.assert(
      fc.property(sound, (job) => {
        const before = JSON.stringify(job);
        const first = JSON.stringify(layOut(job));
        expect(JSON.stringify(layOut(JSON.parse(before) as BoardJob))).toBe(first);
        expect(JSON.stringify(job)).toBe(before);
      }),
      { numRuns: Math.ceil(numRuns / 4) },
    );
  });

  it("do not change with the order of pieces but for who of equal length lies where, nor with the order sold", () => {
    const shuffled = sound.chain((job) =>
      fc.record({
        job: fc.constant(job),
        pieces: fc.shuffledSubarray([...job.pieces], { minLength: job.pieces.length }),
        sold: fc.shuffledSubarray([...job.sold], { minLength: job.sold.length }),
      }),
    );
    fc.assert(
      fc.property(shuffled, ({ job, pieces, sold }) => {
        const answer = layOut(job);
        expect(nameless(layOut({ ...job, pieces }))).toEqual(nameless(answer));
        expect(layOut({ ...job, sold })).toEqual(answer);
        const equal = { ...job, pieces: job.pieces.map(({ length }) => ({ id: String(length), length })) };
        const equalShuffled = {
          ...job,
          pieces: pieces.map(({ length }) => ({ id: String(length), length })),
        };
        expect(layOut(equalShuffled).boards).toEqual(layOut(equal).boards);
      }),
      { numRuns: Math.ceil(numRuns / 2) },
    );
  });

  it("are refused when any one field is changed", () => {
    fc.assert(
      fc.property(sound, fc.nat(), fc.constantFrom(1, -1, 2032), (job, which, by) => {
        const answer = layOut(job);
        const fields = leaves(answer);
        const path = fields[which % fields.length]!;
        const wrong = changed(answer, path, by);
        expect(verifyLayout(job, wrong), path.join(".")).not.toEqual([]);
      }),
      { numRuns },
    );
  });

  it("are never better than the best there is, found by trying everything, and seldom worse", () => {
    let [asked, equal] = [0, 0];
    fc.assert(
      fc.property(small, (job) => {
        const answer = layOut(job);
        const [unplaced, cost] = leastCost(job);
        const reached = [answer.unplaced.length, answer.cost!];
        expect(reached[0]! > unplaced || (reached[0] === unplaced && reached[1]! >= cost)).toBe(true);
        asked++;
        if (reached[0] === unplaced && reached[1] === cost) equal++;
      }),
      { numRuns },
    );
    console.log(`small board jobs: ${equal} of ${asked} as cheap as the optimum`);
    expect(equal / asked).toBeGreaterThan(0.9);
  });
});

describe("sheet layouts", () => {
  const side = fc.integer({ min: 1, max: 60 });
  const sheet = fc.record({
    length: fc.integer({ min: 20, max: 96 }),
    width: fc.integer({ min: 20, max: 60 }),
    grain: fc.boolean(),
  });
  const sheetJobs: fc.Arbitrary<SheetJob> = fc
    .record({
      pieces: fc.array(
        fc.record({ length: side, width: side, grain: fc.constantFrom("along" as const, "free" as const) }),
        {
          maxLength: 30,
        },
      ),
      sold: fc.array(fc.tuple(sheet, fc.option(fc.integer({ min: 0, max: 5000 }), { freq: 9 })), {
        maxLength: 3,
      }),
      onHand: fc.array(sheet, { maxLength: 3 }),
      kerf: fc.integer({ min: 0, max: 2 }),
    })
    .map((job) => ({
      ...job,
      pieces: job.pieces.map((piece, i) => ({ ...piece, id: `piece ${i}` })),
      sold: job.sold.map(([size, price], i) => ({ ...size, price, id: `sold ${i}` })),
      onHand: job.onHand.map((size, i) => ({ ...size, id: `old ${i}` })),
    }));

  it("hold every piece once, come apart by cuts from edge to edge, and are the same bytes each time", () => {
    fc.assert(
      fc.property(sheetJobs, (job) => {
        const answer = layOutSheets(job);
        expect(verifySheets(job, answer)).toEqual([]);
        const ids = [
          ...answer.sheets.flatMap((s) => s.placements.map(({ pieceId }) => pieceId)),
          ...answer.unplaced,
        ];
        expect(ids.sort()).toEqual(job.pieces.map(({ id }) => id).sort());
        expect(JSON.stringify(layOutSheets(job))).toBe(JSON.stringify(answer));
      }),
      { numRuns: Math.ceil(numRuns / 2) },
    );
  });

  it("are refused when a piece moves onto its neighbour or off the sheet, or a sum is changed", () => {
    fc.assert(
      fc.property(sheetJobs, fc.nat(), (job, which) => {
        const answer = layOutSheets(job);
        const sheets = answer.sheets.filter(({ placements }) => placements.length > 0);
        if (sheets.length === 0) return;
        const wrongSheet = sheets[which % sheets.length]!;
        const at = which % wrongSheet.placements.length;
        const other = wrongSheet.placements[(at + 1) % wrongSheet.placements.length]!;
        const moved = (x: number, y: number) => ({
          ...answer,
          sheets: answer.sheets.map((s) =>
            s === wrongSheet
              ? { ...s, placements: s.placements.map((p, i) => (i === at ? { ...p, x, y } : p)) }
              : s,
          ),
        });
        if (wrongSheet.placements.length > 1)
          expect(verifySheets(job, moved(other.x, other.y))).not.toEqual([]);
        expect(verifySheets(job, moved(wrongSheet.length, 0))).not.toEqual([]);
        expect(verifySheets(job, moved(-1, 0))).not.toEqual([]);
        expect(verifySheets(job, { ...answer, cost: (answer.cost ?? 0) + 1 })).not.toEqual([]);
        expect(verifySheets(job, { ...answer, sheets: answer.sheets.slice(1) })).not.toEqual([]);
      }),
      { numRuns: Math.ceil(numRuns / 2) },
    );
  });
});

function nameless({ boards, unplaced, ...sums }: BoardAnswer) {
  return {
    ...sums,
    unplaced: unplaced.length,
    boards: boards.map(({ cuts, ...board }) => ({ ...board, cuts: cuts.map(({ from, to }) => [from, to]) })),
  };
}

type Path = readonly (string | number)[];

/** Paths of every number, text and null in a value. */
function leaves(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== "object" || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) =>
    leaves(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

/** The answer with one number moved, or one text made another one of its kind. */
function changed(answer: BoardAnswer, path: Path, by: number): BoardAnswer {
  const change = (value: unknown, [key, ...rest]: Path): unknown => {
    if (key === undefined) return other(value, by);
    if (Array.isArray(value)) return value.map((inner, i) => (i === key ? change(inner, rest) : inner));
    return { ...(value as object), [key]: change((value as Record<string, unknown>)[key], rest) };
  };
  return change(answer, path) as BoardAnswer;
}

function other(value: unknown, by: number): unknown {
  if (typeof value === "number") return value + by;
  if (value === null) return by;
  for (const words of [
    ["bought", "on hand"],
    ["trim", "kerf", "bad", "offcut"],
  ]) {
    const at = words.indexOf(String(value));
    if (at >= 0) return words[(at + 1 + (Math.abs(by) % (words.length - 1))) % words.length];
  }
  return `${value}0`;
}
