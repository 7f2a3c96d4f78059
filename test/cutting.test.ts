// Laying pieces out on boards and sheets: each rule on a small case, and answers that the checkers must refuse.
import { describe, expect, it } from "vitest";
import { verifyLayout } from "../server/cutting/check";
import { type BoardAnswer, type BoardJob, type BoardPiece, layOut, MOST } from "../server/cutting/job";
import { type Bin, packDecreasing } from "../server/cutting/pack";

const INCH = 16256;
const KERF = INCH / 8;

/** Pieces `a / 1`, `a / 2` … of so many inches each. */
function pieces(...rows: readonly (readonly [name: string, count: number, inches: number])[]): BoardPiece[] {
  return rows.flatMap(([name, count, inches]) =>
    Array.from({ length: count }, (_, i) => ({ id: `${name} / ${i + 1}`, length: inches * INCH })),
  );
}

function job(parts: Partial<BoardJob>): BoardJob {
  return { pieces: [], sold: [], onHand: [], kerf: KERF, endTrim: 0, salvage: "use up", ...parts };
}

const sold = (inches: number, price: number | null = null) => ({
  id: `${inches}"`,
  length: inches * INCH,
  price,
});
const onHand = (id: string, inches: number, ...bad: readonly (readonly [from: number, to: number])[]) => ({
  id,
  length: inches * INCH,
  bad: bad.map(([from, to]) => ({ from: from * INCH, to: to * INCH })),
});

/** The answer, checked; its boards as "board: piece from-to …" in inches. */
function shown(asked: BoardJob): readonly string[] {
  const answer = layOut(asked);
  expect(verifyLayout(asked, answer)).toEqual([]);
  return answer.boards.map(
    ({ boardId, cuts }) =>
      `${boardId}: ${cuts.map(({ pieceId, from, to }) => `${pieceId} ${from / INCH}-${to / INCH}`).join(", ")}`,
  );
}

const waste = (answer: BoardAnswer, board = 0) =>
  answer.boards[board]!.waste.map(({ from, to, why }) => `${why} ${from / INCH}-${to / INCH}`);

describe("the saw's kerf", () => {
  it("lies between pieces, and none after a piece that ends at the board's end", () => {
    const asked = job({ pieces: pieces(["a", 2, 47.9375]), sold: [sold(96, 700)] });
    expect(shown(asked)).toEqual([`96": a / 1 0-47.9375, a / 2 48.0625-96`]);
    expect(waste(layOut(asked))).toEqual(["kerf 47.9375-48.0625"]);
    expect(layOut(asked).boards[0]?.offcut).toBe(0);
  });

  it("keeps a piece off the board that would fit without it", () => {
    expect(layOut(job({ pieces: pieces(["a", 2, 48]), sold: [sold(96, 700)] })).boards).toHaveLength(2);
  });

  it("is lost once more only where an offcut remains, and takes a rest that is thinner", () => {
    const offcut = layOut(job({ pieces: pieces(["a", 1, 40]), sold: [sold(96, 700)] }));
    expect(waste(offcut)).toEqual(["kerf 40-40.125", "offcut 40.125-96"]);
    expect(offcut.boards[0]?.offcut).toBe(55.875 * INCH);
    const sliver = layOut(job({ pieces: pieces(["a", 1, 95.9375]), sold: [sold(96, 700)] }));
    expect(waste(sliver)).toEqual(["kerf 95.9375-96"]);
    expect(sliver.boards[0]?.offcut).toBe(0);
  });

  it("may be wider than the board when one piece is all that is cut", () => {
    expect(shown(job({ pieces: pieces(["a", 1, 10]), sold: [sold(12, 100)], kerf: 50 * INCH }))).toEqual([
      `12": a / 1 0-10`,
    ]);
  });
});

describe("the end trim", () => {
  it("comes once off the marked end of a bought board, its saw cut included", () => {
    const asked = job({ pieces: pieces(["a", 2, 47.6875]), sold: [sold(96, 700)], endTrim: INCH / 2 });
    expect(shown(asked)).toEqual([`96": a / 1 0.5-48.1875, a / 2 48.3125-96`]);
    expect(waste(layOut(asked))[0]).toBe("trim 0-0.5");
  });

  it("leaves boards on hand alone", () => {
    const asked = job({ pieces: pieces(["a", 1, 41]), onHand: [onHand("old", 41)], endTrim: INCH / 2 });
    expect(shown(asked)).toEqual(["old: a / 1 0-41"]);
  });

  it("leaves nothing of a board that is no longer", () => {
    const asked = job({ pieces: pieces(["a", 1, 0.25]), sold: [sold(0.5, 10)], endTrim: INCH / 2 });
    expect(layOut(asked).unplaced).toEqual(["a / 1"]);
  });
});

describe("bad stretches of a board on hand", () => {
  it("hold the kerf when they are wide enough", () => {
    const asked = job({ pieces: pieces(["a", 1, 20], ["b", 1, 15]), onHand: [onHand("old", 36, [20, 21])] });
    expect(shown(asked)).toEqual(["old: a / 1 0-20, b / 1 21-36"]);
    expect(waste(layOut(asked))).toEqual(["bad 20-21"]);
  });

  it("lose the rest of the kerf beside them when they are thinner than the saw", () => {
    const thin = [20, 20.0625] as const;
    const asked = job({
      pieces: pieces(["a", 1, 20], ["b", 1, 15.875]),
      onHand: [onHand("old", 36, thin)],
    });
    expect(shown(asked)).toEqual(["old: a / 1 0-20, b / 1 20.125-36"]);
    expect(waste(layOut(asked))).toEqual(["bad 20-20.0625", "kerf 20.0625-20.125"]);
    const wider = job({ pieces: pieces(["a", 1, 20], ["b", 1, 15.9375]), onHand: [onHand("old", 36, thin)] });
    expect(layOut(wider).unplaced).toEqual(["b / 1"]);
  });

  it("need no cut at the board's ends, may overlap, lie off the board, or be a mark without width", () => {
    const ends = job({
      pieces: pieces(["a", 1, 34.9375]),
      onHand: [onHand("old", 36, [0, 0.0625], [35, 99], [35.5, 36], [-4, -1], [80, 90])],
    });
    expect(shown(ends)).toEqual(["old: a / 1 0.0625-35"]);
    const mark = job({ pieces: pieces(["a", 2, 10]), onHand: [onHand("old", 36, [10, 10])] });
    expect(shown(mark)).toEqual(["old: a / 1 0-10, a / 2 10.125-20.125"]);
  });

  it("count the largest stretch between them as the offcut", () => {
    const asked = job({ pieces: pieces(["a", 1, 4]), onHand: [onHand("old", 60, [5, 7], [30, 31])] });
    expect(shown(asked)).toEqual(["old: a / 1 0-4"]);
    expect(layOut(asked).boards[0]?.offcut).toBe(29 * INCH);
  });

  it("that are no stretches leave the board unused", () => {
    const turned = onHand("old", 36, [20, 10]);
    const asked = job({
      pieces: pieces(["a", 1, 5]),
      onHand: [turned, onHand("older", 36, [Number.NaN, 3])],
    });
    expect(layOut(asked).unplaced).toEqual(["a / 1"]);
  });
});

describe("salvage", () => {
  const asked = job({
    pieces: pieces(["long", 1, 100], ["short", 2, 20]),
    sold: [sold(48, 300)],
    onHand: [onHand("beam", 130), onHand("stub", 21)],
  });

  it("is used first when it is to be used up", () => {
    expect(layOut(asked)).toMatchObject({ buy: [], cost: 0, length: 0, unplaced: [] });
    expect(shown(asked)).toEqual(["beam: long / 1 0-100, short / 1 100.125-120.125", "stub: short / 2 0-20"]);
  });

  it("serves only what nothing sold can take when it is kept", () => {
    expect(shown({ ...asked, salvage: "keep" })).toEqual([
      "beam: long / 1 0-100",
      `48": short / 1 0-20, short / 2 20.125-40.125`,
    ]);
  });

  it("is all there is when nothing is sold, and what it cannot take is left over", () => {
    const few = { ...asked, sold: [], onHand: [onHand("stub", 21)] };
    expect(shown(few)).toEqual(["stub: short / 1 0-20"]);
    expect(layOut(few).unplaced).toEqual(["long / 1", "short / 2"]);
  });

  it("is filled as full as it goes, where longest first would waste it", () => {
    const fill = job({
      pieces: pieces(["a", 1, 50], ["b", 2, 47]),
      onHand: [onHand("old", 95)],
      sold: [sold(51, 400)],
    });
    expect(layOut(fill)).toMatchObject({ cost: 400 });
  });
});

describe("which boards are bought", () => {
  it("the cheapest that holds what is cut, even when it is longer", () => {
    const asked = job({ pieces: pieces(["a", 1, 60]), sold: [sold(72, 500), sold(96, 450), sold(120, 800)] });
    expect(layOut(asked).buy).toEqual([{ id: '96"', count: 1, price: 450 }]);
  });

  it("several short ones instead of a long one, or the other way about, by price", () => {
    const parts = pieces(["a", 2, 47]);
    expect(layOut(job({ pieces: parts, sold: [sold(48, 300), sold(96, 700)] })).cost).toBe(600);
    expect(layOut(job({ pieces: parts, sold: [sold(48, 400), sold(96, 700)] })).cost).toBe(700);
  });

  it("a shorter last one", () => {
    const asked = job({ pieces: pieces(["a", 5, 31]), sold: [sold(96, 800), sold(72, 650)] });
    expect(layOut(asked).buy).toEqual([
      { id: '72"', count: 1, price: 650 },
      { id: '96"', count: 1, price: 800 },
    ]);
  });

  it("the fullest fillings, where first fit and best fit need one board more", () => {
    const lengths = Int32Array.of(50, 40, 35, 30, 25, 20);
    for (const fit of ["first", "best"] as const) {
      const bins: Bin[] = [];
      const open = (): Bin => ({ wood: 0, bought: true, room: 100, runs: [] });
      packDecreasing(fit, lengths, Int32Array.of(1, 1, 1, 1, 1, 1), [0, 6], bins, open);
      expect(bins.map(({ room }) => room)).toEqual([10, 10, 80]);
    }
    const parts = [...lengths].map((length) => ({ id: String(length), length }));
    const answer = layOut(job({ pieces: parts, sold: [{ id: "a", length: 100, price: 900 }], kerf: 0 }));
    expect(answer.boards.map(({ cuts }) => cuts.map(({ pieceId }) => pieceId))).toEqual([
      ["50", "30", "20"],
      ["40", "35", "25"],
    ]);
  });

  it("the least length when a price is not known, and the cost is then not known", () => {
    const one = job({ pieces: pieces(["a", 1, 40]), sold: [sold(50), sold(48, 1000)] });
    expect(layOut(one)).toMatchObject({ cost: 1000, length: 48 * INCH });
    const asked = job({ pieces: pieces(["a", 3, 40]) });
    expect(layOut({ ...asked, sold: [sold(96), sold(144, 1)] })).toMatchObject({
      cost: 1,
      length: 144 * INCH,
    });
    expect(layOut({ ...asked, sold: [sold(96)] })).toMatchObject({
      buy: [{ id: '96"', count: 2, price: null }],
      cost: null,
      length: 192 * INCH,
    });
  });

  it("at one price the least length, and at one length the largest single offcut", () => {
    const parts = pieces(["a", 1, 40]);
    expect(layOut(job({ pieces: parts, sold: [sold(96, 500), sold(72, 500)] })).length).toBe(72 * INCH);
    const three = job({ pieces: pieces(["a", 2, 60], ["b", 2, 15]), sold: [sold(96, 500)] });
    expect(layOut(three).boards.map(({ offcut }) => offcut / INCH)).toEqual([5.625, 35.875]);
  });
});

describe("the order of the answer", () => {
  it("fullest board first, longest piece first, equal boards together, names in the order given", () => {
    const asked = job({
      pieces: pieces(["short", 3, 10], ["long", 3, 60], ["mid", 3, 25]),
      sold: [sold(96, 500)],
    });
    const boards = shown(asked).map((line) => line.replaceAll(/ [\d.]+-[\d.]+/g, ""));
    expect(boards).toEqual([
      `96": long / 1, mid / 1, short / 1`,
      `96": long / 2, mid / 2, short / 2`,
      `96": long / 3, mid / 3, short / 3`,
    ]);
    const mixed = layOut({ ...asked, pieces: [...pieces(["odd", 1, 70]), ...asked.pieces] });
    expect(mixed.boards.map(({ cuts }) => cuts[0]!.pieceId)).toEqual([
      "long / 1",
      "long / 2",
      "odd / 1",
      "long / 3",
    ]);
  });

  it("does not depend on where in the list another length stands", () => {
    const parts = pieces(["a", 4, 30], ["b", 5, 22.5], ["c", 3, 7]);
    const asked = job({ pieces: parts, sold: [sold(96, 500), sold(72, 420)] });
    const other = [...parts.slice(9), ...parts.slice(0, 9)];
    expect(shown({ ...asked, pieces: other })).toEqual(shown(asked));
  });
});

describe("input that cannot be used", () => {
  const good = job({ pieces: pieces(["a", 2, 20]), sold: [sold(96, 500)], onHand: [onHand("old", 21)] });

  it.each([0, -5, 0.5, Number.NaN, Number.POSITIVE_INFINITY, MOST + 1, 2 ** 60])(
    "a piece of %d ticks is left over",
    (length) => {
      const asked = { ...good, pieces: [{ id: "odd", length }, ...good.pieces] };
      expect(layOut(asked).unplaced).toEqual(["odd"]);
      expect(verifyLayout(asked, layOut(asked))).toEqual([]);
    },
  );

  it.each([-1, 0.5, Number.NaN, Number.NEGATIVE_INFINITY, MOST + 1])(
    "a kerf of %d leaves all over",
    (kerf) => {
      expect(layOut({ ...good, kerf })).toEqual({
        boards: [],
        unplaced: ["a / 1", "a / 2"],
        buy: [],
        cost: 0,
        length: 0,
      });
    },
  );

  it.each([-1, Number.NaN, 96 * INCH])("an end trim of %d leaves boards on hand usable", (endTrim) => {
    expect(shown({ ...good, endTrim })).toEqual(["old: a / 1 0-20"]);
  });

  it("boards with lengths or prices that are none are left alone; of equal ids the first counts", () => {
    const odd = [
      sold(-96, 5),
      sold(0, 5),
      sold(95, Number.NaN),
      sold(94, -1),
      { ...sold(96, 500), price: 1 },
    ];
    const asked = { ...good, sold: [sold(96, 500), ...odd], onHand: [onHand("old", 21), onHand("old", 99)] };
    expect(layOut(asked)).toMatchObject({ cost: 500, unplaced: [] });
    expect(verifyLayout(asked, layOut(asked))).toEqual([]);
  });

  it("nothing asked gives nothing", () => {
    expect(layOut(job({}))).toEqual({ boards: [], unplaced: [], buy: [], cost: 0, length: 0 });
  });
});

describe("large jobs end", () => {
  const lengths = {
    "20,000 different lengths": (i: number) => 4 * INCH + ((i * 7919) % (80 * INCH)),
    "20,000 slivers": (i: number) => 1 + i,
    "20,000 of one length": () => 31 * INCH,
  };
  const boards = [72, 96, 120, 144, 192].map((inches) => sold(inches, inches * 8 + 5));
  it.each(Object.entries(lengths))("%s", (_, lengthOf) => {
    const parts = Array.from({ length: 20_000 }, (_, i) => ({ id: String(i), length: lengthOf(i) }));
    const old = Array.from({ length: 1000 }, (_, i) => onHand(`old ${i}`, 20 + (i % 60), [5, 6]));
    const asked = job({ pieces: parts, sold: boards, onHand: old });
    const answer = layOut(asked);
    expect(answer.unplaced).toEqual([]);
    expect(verifyLayout(asked, answer)).toEqual([]);
  });
});

describe("the checker of boards refuses", () => {
  const asked = job({
    pieces: pieces(["a", 2, 30], ["b", 1, 30]),
    sold: [sold(96, 500)],
    onHand: [onHand("old", 40, [10, 11])],
    endTrim: INCH / 2,
  });
  const answer = layOut(asked);
  const board = answer.boards[0]!;
  const withBoard = (parts: Partial<typeof board>) => ({
    ...answer,
    boards: [{ ...board, ...parts }, ...answer.boards.slice(1)],
  });
  it.each<readonly [string, BoardAnswer]>([
    ["a piece twice", { ...answer, unplaced: ["a / 1"] }],
    ["a piece missing", withBoard({ cuts: board.cuts.slice(1) })],
    [
      "a piece left out that a sold board takes",
      { ...answer, boards: [], buy: [], cost: 0, length: 0, unplaced: ["a / 1", "a / 2", "b / 1"] },
    ],
    ["a board nobody sells", withBoard({ boardId: "other" })],
    ["a board of another length", withBoard({ length: board.length + 1 })],
    ["a total that is off", { ...answer, cost: answer.cost! - 1 }],
    ["a length that is off", { ...answer, length: answer.length - 1 }],
    ["an offcut that is not there", withBoard({ offcut: board.offcut + 1 })],
    ["waste that hides the trim", withBoard({ waste: board.waste.slice(1) })],
    [
      "pieces without a kerf between",
      withBoard({ cuts: board.cuts.map((c, i) => (i ? { ...c, from: c.from - 1, to: c.to - 1 } : c)) }),
    ],
  ])("%s", (_, wrong) => {
    expect(verifyLayout(asked, answer)).toEqual([]);
    expect(verifyLayout(asked, wrong)).not.toEqual([]);
  });

  it("a piece in a bad stretch, and a board on hand used twice", () => {
    const small = { ...asked, pieces: pieces(["a", 1, 9]) };
    const right = layOut(small);
    const [first] = right.boards;
    const cuts = [{ pieceId: "a / 1", from: 5 * INCH, to: 14 * INCH }];
    expect(verifyLayout(small, right)).toEqual([]);
    expect(verifyLayout(small, { ...right, boards: [{ ...first!, cuts }] })).toContain(
      "board old: a piece lies in a bad stretch",
    );
    expect(verifyLayout(small, { ...right, boards: [first!, first!] })).toContain(
      "a board on hand is used twice",
    );
  });
});
