// Ripped pieces that share a stretch of board.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { improved } from "../server/cutting/improve";
import { blanksOf, type Ripped } from "../server/worked/blanks";

const ripped = (id: string, length: number, width?: number): Ripped => ({ id, length, width });
const shown = (pieces: readonly Ripped[], width: number, kerf: number): string[] =>
  blanksOf(pieces, width, kerf).map(({ id, length, pieces }) => `${id} ${length}: ${pieces.join(" ")}`);

describe("blanks", () => {
  it("hold ripped pieces of one length side by side, a kerf between, widest first", () => {
    const all = [ripped("a", 22, 20), ripped("b", 22, 20), ripped("c", 22, 20), ripped("d", 22, 10)];
    // floor((44 + 1) / (20 + 1)) = 2 of 20 side by side, and where one is alone there is room for 10.
    expect(shown(all, 44, 1)).toEqual(["a 22: a b", "c 22: c d"]);
    expect(shown(all, 44, 5)).toEqual(["a 22: a d", "b 22: b", "c 22: c"]);
  });

  it("are not shared by pieces of two lengths, nor by one as wide as its board", () => {
    expect(shown([ripped("a", 22, 20), ripped("b", 23, 20), ripped("c", 22)], 44, 1)).toEqual([
      "a 22: a",
      "b 23: b",
      "c 22: c",
    ]);
  });

  it("are of one piece each where the width of the board is not known, or is less than theirs", () => {
    expect(blanksOf([ripped("a", 22, 20), ripped("b", 22, 20)], undefined, 1)).toHaveLength(2);
    expect(shown([ripped("a", 22, 50), ripped("b", 22, 20)], 44, 1)).toEqual(["a 22: a", "b 22: b"]);
  });

  it("are as few as is proven that there can be", () => {
    const some = fc.tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 15, max: 140 }));
    const board = fc.constantFrom(88, 140, 184, 286);
    fc.assert(
      fc.property(fc.array(some, { minLength: 1, maxLength: 4 }), board, (list, width) => {
        const widths = list.flatMap(([n, of]) => new Array<number>(n).fill(Math.min(of, width)));
        const pieces = widths.map((length, i) => ({ id: `p${i}`, length }));
        const sold = [{ id: "blank", length: width, price: 1 }];
        const job = { pieces, sold, onHand: [], kerf: 3, endTrim: 0, salvage: "keep" } as const;
        const { proof } = improved({ kind: "boards", job });
        expect(proof.status).toBe("proven");
        expect(
          blanksOf(
            widths.map((w, i) => ripped(`p${i}`, 22, w)),
            width,
            3,
          ).length,
        ).toBe(proof.cost);
      }),
      { numRuns: 300, seed: 20_280 },
    );
  });

  it("hold every piece once, and no more than the board is wide", () => {
    const piece = fc.tuple(fc.integer({ min: 1, max: 3 }), fc.option(fc.integer({ min: 1, max: 60 })));
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 20 }), fc.integer({ min: 0, max: 4 }), (list, kerf) => {
        const pieces = list.map(([length, width], i) => ripped(`p${i}`, length, width ?? undefined));
        const blanks = blanksOf(pieces, 55, kerf);
        expect(blanks.flatMap((b) => b.pieces).sort()).toEqual(pieces.map(({ id }) => id).sort());
        const of = new Map(pieces.map((p) => [p.id, p]));
        for (const { id, length, pieces } of blanks) {
          expect(pieces[0]).toBe(id);
          expect(pieces.every((p) => of.get(p)!.length === length)).toBe(true);
          const widths = pieces.map((p) => (of.get(p)!.width ?? 55) + kerf);
          if (pieces.length > 1) expect(widths.reduce((a, b) => a + b, -kerf)).toBeLessThanOrEqual(55);
        }
      }),
    );
  });
});
