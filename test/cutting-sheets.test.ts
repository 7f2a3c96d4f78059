/** Layouts on sheets: rows of edge-to-edge cuts, and the checker that refuses a wrong one. */
import { describe, expect, it } from "vitest";
import { layOutSheets, type SheetJob } from "../server/cutting/sheets";
import { verifySheets } from "../server/cutting/sheets-check";

const INCH = 16256;
const KERF = INCH / 8;

describe("sheets", () => {
  const ply = { id: "ply", length: 96 * INCH, width: 48 * INCH, price: 4200, grain: true };
  const panel = (id: string, length: number, width: number, grain: "along" | "free" = "along") => ({
    id,
    length: length * INCH,
    width: width * INCH,
    grain,
  });
  const ask = (parts: Partial<SheetJob>): SheetJob => ({
    pieces: [],
    sold: [ply],
    onHand: [],
    kerf: KERF,
    ...parts,
  });
  const places = (asked: SheetJob) => {
    const answer = layOutSheets(asked);
    expect(verifySheets(asked, answer)).toEqual([]);
    return answer.sheets.map(({ sheetId, placements }) => {
      const all = placements.map(
        ({ pieceId, x, y, turned }) => `${pieceId} ${x / INCH},${y / INCH}${turned ? " turned" : ""}`,
      );
      return `${sheetId}: ${all.join("; ")}`;
    });
  };

  it("lays rows with a kerf between them and between their pieces", () => {
    const four = [1, 2, 3, 4].map((i) => panel(`p${i}`, 47.9375, 23.9375));
    expect(places(ask({ pieces: four }))).toEqual([
      "ply: p1 0,0; p2 48.0625,0; p3 0,24.0625; p4 48.0625,24.0625",
    ]);
    expect(layOutSheets(ask({ pieces: four.map((p) => ({ ...p, length: 48 * INCH })) })).sheets).toHaveLength(
      2,
    );
  });

  it("turns a piece only when it is free or the sheet has no grain", () => {
    const tall = panel("door", 40, 90);
    expect(layOutSheets(ask({ pieces: [tall] })).unplaced).toEqual(["door"]);
    expect(places(ask({ pieces: [{ ...tall, grain: "free" }] }))).toEqual(["ply: door 0,0 turned"]);
    expect(places(ask({ pieces: [tall], sold: [{ ...ply, grain: false }] }))).toEqual([
      "ply: door 0,0 turned",
    ]);
  });

  it("stacks low pieces in a row beside a high one", () => {
    const parts = [panel("side", 60, 48), panel("shelf 1", 30, 23), panel("shelf 2", 30, 23)];
    expect(places(ask({ pieces: parts }))).toEqual([
      "ply: side 0,0; shelf 1 60.125,0; shelf 2 60.125,23.125",
    ]);
  });

  it("uses sheets on hand first and buys the cheapest that holds the rest", () => {
    const half = { ...ply, id: "half", length: 48 * INCH, price: 2500 };
    const rest = { id: "rest", length: 30 * INCH, width: 30 * INCH, grain: true };
    const asked = ask({
      pieces: [panel("a", 45, 40), panel("b", 28, 28)],
      sold: [ply, half],
      onHand: [rest],
    });
    expect(places(asked)).toEqual(["rest: b 0,0", "half: a 0,0"]);
    expect(layOutSheets(asked)).toMatchObject({ buy: [{ id: "half", count: 1, price: 2500 }], cost: 2500 });
  });

  it("does not know the cost when a bought sheet has no price", () => {
    const asked = ask({ pieces: [panel("a", 45, 40)], sold: [{ ...ply, price: null }] });
    expect(layOutSheets(asked)).toMatchObject({ buy: [{ id: "ply", count: 1, price: null }], cost: null });
  });

  it.each([0, -1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 40])(
    "leaves over what measures %d",
    (odd) => {
      const asked = ask({
        pieces: [
          { ...panel("a", 4, 4), length: odd },
          { ...panel("b", 4, 4), width: odd },
        ],
      });
      expect(layOutSheets(asked)).toEqual({ sheets: [], unplaced: ["a", "b"], buy: [], cost: 0 });
      const sheet = ask({ pieces: [panel("a", 4, 4)], sold: [{ ...ply, width: odd }] });
      expect(layOutSheets(sheet).unplaced).toEqual(["a"]);
    },
  );

  it("ends with 20,000 pieces", () => {
    const parts = Array.from({ length: 20_000 }, (_, i) =>
      panel(`p${i}`, 3 + (i % 640) / 16, 2 + ((i * 7) % 320) / 16, "free"),
    );
    const asked = ask({ pieces: parts });
    const answer = layOutSheets(asked);
    expect(answer.unplaced).toEqual([]);
    expect(verifySheets(asked, answer)).toEqual([]);
  });

  it("are refused by the checker when pieces overlap, lie off the sheet or do not come apart", () => {
    const pinwheel = [panel("a", 30, 10), panel("b", 10, 30), panel("c", 30, 10), panel("d", 10, 30)];
    const asked = ask({ pieces: pinwheel, kerf: 0 });
    const at = [
      [0, 0],
      [30, 0],
      [10, 30],
      [0, 10],
    ] as const;
    const placements = pinwheel.map(({ id, length, width }, i) => ({
      pieceId: id,
      x: at[i]![0] * INCH,
      y: at[i]![1] * INCH,
      length,
      width,
      turned: false,
    }));
    const answer = layOutSheets(asked);
    const wrong = { ...answer, sheets: [{ ...answer.sheets[0]!, placements }] };
    expect(verifySheets(asked, wrong)).toEqual(["sheet ply does not come apart by cuts from edge to edge"]);
    const off = placements.map((p) => ({ ...p, x: p.x + 60 * INCH }));
    expect(
      verifySheets(asked, { ...answer, sheets: [{ ...answer.sheets[0]!, placements: off }] }),
    ).not.toEqual([]);
  });
});
