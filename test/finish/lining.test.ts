/** Liners, their rolls and the drains they are opened over, against sizes worked by hand beside each: in inches. */
import { describe, expect, test } from "vitest";
import { openingWords } from "../../server/checks/lining-words";
import { ifKnown } from "../../server/plan";
import { SIXTEENTHS } from "../../server/units";
import type { LinerSheet, LiningWork, Worked } from "../../server/worked";
import { evaluated, inch } from "../placing/plans";
import { allProblems, notChecked, sample, taken } from "./plans";

const ROLL = "roll rubber-liner, width 6', price $2.10 per foot\n";
const TUB = 'box tub, inside 40" x 16" x 10", filled with potting-mix to 3" below rim\n';
const worked = (text: string): Worked => evaluated(text).worked;
const lining = (text: string): LiningWork => worked(text).linings[0]!;
const size = ({ length, width }: LinerSheet): [number, number] => [inch(length.approx), inch(width.approx)];
const cuts = (l: LiningWork) => (ifKnown(l.cuts) ?? []).map((c) => [c.what, c.count, ...size(c)]);
const along = (l: LiningWork): number => inch(ifKnown(l.along)!.approx);

describe("the sheet", () => {
  test("is the inside, its height twice and the fold twice, each way", () => {
    const one = lining(`${ROLL}${TUB}line tub with rubber-liner, fold 3"`);
    // 40 + 20 + 6 by 16 + 20 + 6; the roll of 72 takes the long side across.
    expect(size(ifKnown(one.sheet)!)).toEqual([66, 42]);
    expect(cuts(one)).toEqual([["sheet", 1, 42, 66]]);
    expect(along(one)).toBe(42);
    expect(ifKnown(one.along)!.exact).not.toBeNull();
  });

  test("runs along the roll where that is only as wide as its short side", () => {
    const one = lining(`roll rubber-liner, width 4'\n${TUB}line tub with rubber-liner, fold 3"`);
    expect([cuts(one), along(one)]).toEqual([[["sheet", 1, 66, 42]], 66]);
  });

  test("falls into strips side by side on a narrower roll, each over the next", () => {
    const one = lining(`roll rubber-liner, width 30"\n${TUB}line tub with rubber-liner, fold 3", overlap 6"`);
    // Across 42: 30 and 42 - 24 = 18, 66 long each, 132. Across 66: 30, 30 and 66 - 48 = 18, 42 long each, 126.
    expect(cuts(one)).toEqual([
      ["strip", 2, 42, 30],
      ["strip", 1, 42, 18],
    ]);
    expect(along(one)).toBe(126);
  });

  test("takes strips that come out even as they are", () => {
    const one = lining(`roll rubber-liner, width 24"\n${TUB}line tub with rubber-liner, fold 3", overlap 6"`);
    // 42 = 24 + 18: two across 42, 132; four across 66 would take 168.
    expect(cuts(one)).toEqual([["strip", 2, 66, 24]]);
  });

  test("takes 2 past the rim and 6 over each other where the line does not say, and says so", () => {
    const one = lining(`roll rubber-liner, width 2'\n${TUB}line tub with rubber-liner`);
    expect(size(ifKnown(one.sheet)!)).toEqual([64, 40]);
    expect(inch(ifKnown(one.overlap)!.approx)).toBe(6);
    const told = taken(one);
    expect(told).toContain('2" past the rim on every side');
    expect(told).toContain('strips lie 6" over each other');
  });

  test("goes by the larger of rim and bottom where the sides slope, and says so", () => {
    const one = lining(
      `${ROLL}box tub, inside 40" x 16" x 10", tapering to 44" x 12"\nline tub with rubber-liner, fold 1"`,
    );
    // 44 + 22 by 16 + 22.
    expect(size(ifKnown(one.sheet)!)).toEqual([66, 38]);
    expect(taken(one)).toContain("its sides slope");
  });

  test("of the trough, from its placed walls: 46-1/2 by 16-1/2 by 8-3/4 with a fold of 3", () => {
    const { linings, shopping } = sample("salad-trough.sawbuck");
    expect(size(ifKnown(linings[0]!.sheet)!)).toEqual([70, 40]);
    const row = shopping.rows.find((r) => r.aisle === "liner")!;
    // 40" is bought as 4', at $2.10 a foot.
    expect([row.count, inch(row.length!.approx), row.total!.approx]).toEqual([1, 48, 8.4]);
  });
});

describe("staples", () => {
  test("stand every 2 round the rim, as far below it as is usual: 112 take 56", () => {
    const one = lining(`${ROLL}${TUB}line tub with rubber-liner`);
    expect(ifKnown(one.staples)).toBe(56);
    expect(one.staplesApart.map((q) => inch(q.approx))).toEqual([2, 4]);
    expect(inch(one.stapleHeight.approx)).toBe(1);
  });

  test.each([
    ['to 3" below rim', 1],
    ['to 1" below rim', 0.5],
    ['9-1/2" deep', 0.25],
    ["", 0],
  ])("stay above a fill %s: %d below the rim", (level, below) => {
    const tub = `box tub, inside 40" x 16" x 10", filled with potting-mix ${level}\n`;
    expect(inch(lining(`${ROLL}${tub}line tub with rubber-liner`).stapleHeight.approx)).toBe(below);
  });
});

describe("how the drain stays open", () => {
  const opened = (box: string, roll = "rubber-liner") => {
    const one = lining(`${ROLL}roll weed-fabric, width 6'\n${box}\nline tub with ${roll}`);
    return { opening: one.opening, words: openingWords(one.opening, SIXTEENTHS) };
  };
  const INSIDE = 'box tub, inside 40" x 16" x 10"';

  test("a fabric is left whole", () => {
    expect(opened(`${INSIDE}, drains through the gaps`, "weed-fabric").words).toBe(
      "it lets water through, so it is not cut",
    );
  });

  test("so is the liner of a box that is not to drain", () => {
    expect(opened(`${INSIDE}, no drain`).words).toBe("the liner stays whole, since the box is not to drain");
  });

  test("over every drilled hole one as large", () => {
    expect(opened(`${INSIDE}, drains by 12 holes of 1/2"`).words).toBe(
      'over each of the 12 holes of the bottom cut one of 1/2"',
    );
  });

  test("over gaps that are not placed, without a number", () => {
    const { opening, words } = opened(`${INSIDE}, drains through the gaps`);
    expect(opening).toMatchObject({ how: "over gaps", gaps: undefined });
    expect(words).toBe('over every gap between the bottom boards cut holes of 1/2", 6" to 8" apart');
  });

  test("nothing is guessed of a box that does not say how it drains", () => {
    expect(opened(INSIDE).opening).toEqual({ how: "unsaid" });
  });

  test("over the trough's nine gaps of 16-1/2 three holes each, no more than 8 apart", () => {
    const { linings, drainage } = sample("salad-trough.sawbuck");
    expect(drainage[0]!.gaps).toMatchObject({ count: 9 });
    expect([drainage[0]!.gaps!.least, drainage[0]!.gaps!.most].map((q) => inch(q.approx))).toEqual([
      0.5, 0.5,
    ]);
    expect(openingWords(linings[0]!.opening, SIXTEENTHS)).toBe(
      'over each of the 9 gaps between the bottom boards cut 3 holes of 1/2", 6" to 8" apart',
    );
  });

  test("over the herb stand's one gap at the back", () => {
    const { linings } = sample("post-stand.sawbuck");
    expect(linings[0]!.opening).toMatchObject({ how: "over gaps", gaps: 1 });
  });

  test("two lines of one box are each their own", () => {
    const plan = worked(
      `${ROLL}roll weed-fabric, width 6', price $0.30 per yard\n${INSIDE}, drains by 4 holes of 1/4"\nline tub with weed-fabric\nline tub with rubber-liner`,
    );
    expect(plan.linings.map((l) => l.opening.how)).toEqual(["whole", "over holes"]);
    expect(plan.shopping.rows.filter((r) => r.aisle === "liner").map((r) => r.what)).toEqual([
      "weed-fabric",
      "rubber-liner",
    ]);
  });
});

describe("drain holes as typed", () => {
  const grid = (box: string) => {
    const holes = worked(box).drainage[0]!.holes!;
    const { rows, inRow, apartInRow, apartRows } = ifKnown(holes)!.grid!;
    return [rows, inRow, inch(apartInRow.approx), inch(apartRows.approx)];
  };

  test.each([
    // 30 x 15: cells of 5 x 7-1/2 or of 7-1/2 x 5: the first found is kept.
    ['inside 30" x 15" x 10", drains by 8 holes of 1/2"', [2, 4, 7.5, 7.5]],
    ['inside 40" x 10" x 10", drains by 4 holes of 1/2"', [1, 4, 10, 10]],
    ['inside 40" x 10" x 10", drains by 7 holes of 1/2"', [1, 7, 5.714286, 10]],
    ['inside 16" x 16" x 10", drains by 1 holes of 1"', [1, 1, 16, 16]],
  ])("%s", (box, expected) => {
    expect(grid(`box tub, ${box}`)).toEqual(expected);
  });

  test("what is usual is told beside them: four of 1/4 for a small box, one for every 8 by 8 of a large one", () => {
    const advised = (inside: string) => worked(`box tub, inside ${inside}`).drainage[0]!.advised;
    expect([advised('12" x 10" x 8"').count, inch(advised('12" x 10" x 8"').diameter.approx)]).toEqual([
      4, 0.25,
    ]);
    expect([advised('40" x 16" x 10"').count, inch(advised('40" x 16" x 10"').diameter.approx)]).toEqual([
      10, 0.5,
    ]);
  });

  test.each([
    ['box tub, inside 9" x 9" x 9", drains by 0 holes of 1/2"', ["impossible-value"]],
    ['box tub, inside 9" x 9" x 9", drains by 3 holes of 2', ["unit-mismatch"]],
    ['box tub, inside 9" x 9" x 9", weighs 1 lb - 5 lb empty', ["impossible-value"]],
  ])("a mistake in them is told: %s", (text, codes) => {
    expect(allProblems(text).codes).toEqual(codes);
  });
});

describe("what is bought off the roll", () => {
  const rows = (text: string) =>
    worked(text)
      .shopping.rows.filter((r) => r.aisle === "liner")
      .map((r) => [r.what, inch(r.length!.approx), r.total?.approx]);

  test("whole feet for all copies together: 42 for one, 126 for three are 11 ft", () => {
    const text = `${ROLL}${TUB}line tub with rubber-liner, fold 3"`;
    expect(rows(text)).toEqual([["rubber-liner", 48, 8.4]]);
    expect(rows(`plan x\n  make 3\n${text}`)).toEqual([["rubber-liner", 132, 23.1]]);
  });

  test("whole yards or metres where the price is by these", () => {
    expect(rows(`roll r, width 6', price $3 per yard\n${TUB}line tub with r, fold 3"`)).toEqual([
      ["r", 72, 6],
    ]);
    const [metre] = rows(`roll r, width 2m, price €4 per metre\n${TUB}line tub with r, fold 3"`);
    // 42" is 1.07 m: two metres.
    expect([Math.round(Number(metre![1]) * 25.4), metre![2]]).toEqual([2000, 8]);
  });

  test("without a price it is left out of the total, and that is said", () => {
    const plan = worked(`roll r, width 6'\n${TUB}line tub with r`);
    expect(plan.shopping.withoutPrice).toEqual(["r"]);
    expect(plan.shopping.rows).toHaveLength(1);
  });
});

describe("what is not known", () => {
  const listed = (text: string): string[] =>
    notChecked(worked(text))
      .filter((u) => /liner|to buy for/.test(u.what))
      .map((u) => `${u.what}: ${u.why}`);

  test("the width of a roll, of a usual liner too", () => {
    expect(listed(`${TUB}line tub with pond-liner`)).toEqual([
      "how much pond-liner to buy for tub: neither the plan nor the shop says how wide pond-liner is",
    ]);
    expect(listed(`roll r\n${TUB}line tub with r`)).toEqual([
      "how much r to buy for tub: neither the plan nor the shop says how wide r is",
    ]);
  });

  test("a roll no wider than its own overlap", () => {
    expect(listed(`roll r, width 5"\n${TUB}line tub with r`)).toEqual([
      "how much r to buy for tub: r is too narrow for strips that lie over each other so far",
    ]);
  });

  test("drain holes of which the box does not say how many and how wide", () => {
    const holes = (says: string): string[] =>
      notChecked(worked(`box tub, inside 9" x 9" x 9", drains by ${says}`))
        .filter((u) => u.what.startsWith("the drain holes"))
        .map((u) => `${u.what}: ${u.why}`);
    const why = "the drain holes of tub: the plan does not say both how many there are and how wide";
    expect(holes("holes")).toEqual([why]);
    expect(holes("12 holes")).toEqual([why]);
    expect(holes('holes of 1/2"')).toEqual([why]);
    expect(holes('12 holes of 1/2"')).toEqual([]);
    expect(holes('0 holes of 1/2"')).toEqual([]);
    expect(allProblems('box tub, inside 9" x 9" x 9", drains by holes').codes).toEqual([]);
  });

  test("a box whose walls stand nowhere", () => {
    expect(
      listed(`${ROLL}part wall 4 of 1x6, length 9"\nbox tub, walls wall\nline tub with rubber-liner`),
    ).toEqual([expect.stringContaining("how large a liner tub takes: its inside follows from its walls")]);
  });

  test.each([
    [`${ROLL}${TUB}line tub with rubber-liner, fold 3`, ["unit-mismatch"]],
    [`${TUB}line tub with lace`, ["unknown-name"]],
    [`roll r, width 6', price $2 per spoon\n${TUB}line tub with r`, ["unknown-name"]],
    [`roll r, width 6', price $2 - $5 per foot\n${TUB}line tub with r`, ["impossible-value"]],
    [`${ROLL}line tab with rubber-liner`, ["unknown-name"]],
  ])("a mistake is told once, and nothing of it is listed: %s", (text, codes) => {
    const plan = allProblems(text);
    expect(plan.codes).toEqual(codes);
    expect(notChecked(plan).filter((u) => /liner|to buy for/.test(u.what))).toEqual([]);
  });
});
