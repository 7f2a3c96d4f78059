/** What is finished, against areas worked by hand beside each: in square inches unless it says otherwise. */
import { describe, expect, test } from "vitest";
import { ifKnown, type Value } from "../../server/plan";
import { cite } from "../../server/trade";
import type { Quantity } from "../../server/units";
import type { CoatWork } from "../../server/worked";
import { evaluated } from "../placing/plans";
import { allProblems, notChecked, sample, taken } from "./plans";

const SQIN = 25.4 ** 2;
const sqin = (q: Quantity | undefined): number => Number((q!.approx / SQIN).toFixed(6));
const area = (v: Value<Quantity>): number => sqin(ifKnown(v));
const OIL = "finish oil, covers 250 sqft per gal, 2 coats, tin of 1 qt $18\n";
const coats = (text: string): readonly CoatWork[] => evaluated(OIL + text).worked.coats;
const coat = (text: string): CoatWork => coats(text)[0]!;

const CUBE = 'stock c, actual 4" x 4"\npart cube of c, length 4"\n';
const BOARD = 'stock b, actual 1" x 4"\npart low of b, length 10"\npart high of b, length 6"\n';

describe("what is seen of pieces", () => {
  test("a lone cube of 4: six faces of 16, two of them end grain, and all of it with the floor under it", () => {
    const work = coat(
      `${CUBE}place cube across, flat, on floor, 0 from left, 0 from front\ncoat cube with oil`,
    );
    expect(area(work.exposed)).toBe(96);
    expect([sqin(work.hidden), sqin(work.ends)]).toEqual([0, 32]);
    expect(work.pieces).toEqual(["cube / on floor"]);
    expect(work.loose).toEqual([]);
    // Nothing is hidden, so the area stays an exact fraction of a square millimetre.
    expect(ifKnown(work.exposed)!.exact).not.toBeNull();
  });

  // 10 x 4 x 1: 2 (40 + 10 + 4) = 108. 6 x 4 x 1: 2 (24 + 6 + 4) = 68. They share 6 x 4.
  const FACED = `${BOARD}place low across, flat, on floor, 0 from left, 0 from front
place high across, flat, on low, flush with left of low, flush with front of low\n`;

  test("two boards face to face lose the common face on both", () => {
    const work = coat(`${FACED}coat low and high with oil`);
    expect([area(work.exposed), sqin(work.hidden), sqin(work.ends)]).toEqual([108 + 68 - 48, 48, 16]);
  });

  test("the other board need not be finished to hide a face", () => {
    expect(area(coat(`${FACED}coat high with oil`).exposed)).toBe(68 - 24);
  });

  test("a piece named twice is counted once", () => {
    const work = coat(`${FACED}coat low and low and high with oil`);
    expect([area(work.exposed), work.pieces]).toEqual([128, ["low / on floor", "high / on low"]]);
  });

  test("an end that stands on a face is hidden end grain", () => {
    const work = coat(`${BOARD}place low across, flat, on floor, 0 from left, 0 from front
place high upright, wide face front, on low, flush with left of low, flush with front of low
coat high with oil`);
    // It stands on its 4 x 1 end.
    expect([area(work.exposed), sqin(work.hidden), sqin(work.ends)]).toEqual([64, 4, 4]);
  });

  test("a notch takes off both edges of its faces and gives its own walls", () => {
    const work = coat(`stock b, actual 1" x 4"
part n 1 of b, length 10", notch 2" x 1" at left end
coat n with oil`);
    // 108 less two faces of 2 x 1; its floor of 2 x 1 and its end wall of 1 x 1 stand for as much of edge and end.
    expect([area(work.exposed), sqin(work.ends)]).toEqual([104, 8]);
  });

  test("a dado in the middle adds both its walls", () => {
    const work = coat(`stock b, actual 1" x 4"
part n 1 of b, length 10", dado 2" x 1/2" at 4" from left
coat n with oil`);
    // 108 less two edges of 2 x 1/2, and two walls of 4 x 1/2 more, which are end grain.
    expect([area(work.exposed), sqin(work.ends)]).toEqual([110, 12]);
  });

  test("mitered ends are longer: 4 wide at 45° is 4√2", () => {
    const work = coat(`stock b, actual 1" x 4"
part m 1 of b, length 20", ends mitered 45°, long point to long point
coat m with oil`);
    // Faces 20 and 12 long on average 16 x 4, edges 20 x 1 and 12 x 1, ends 4√2 x 1.
    const ends = 2 * 4 * Math.SQRT2;
    expect(area(work.exposed)).toBeCloseTo(2 * 16 * 4 + 20 + 12 + ends, 5);
    expect(sqin(work.ends)).toBeCloseTo(ends, 5);
  });
});

describe("which pieces a line means", () => {
  const LEGS = `stock b, actual 2" x 2"
part leg of b, length 10"
place leg upright, wide face front, on floor, at each corner of 20" x 20"\n`;

  test("all of a name, or those that words before it choose", () => {
    expect(coat(`${LEGS}coat legs with oil`).pieces).toHaveLength(4);
    const front = coat(`${LEGS}coat front legs with oil`);
    expect([front.title, front.pieces]).toEqual(["front legs", ["leg / front left", "leg / front right"]]);
    // Each 2 (4 + 20 + 20).
    expect(area(front.exposed)).toBe(2 * 88);
  });

  test("words that choose nothing are told as not checked", () => {
    const { worked } = evaluated(`${OIL}${LEGS}coat middle front leg with oil`);
    expect(worked.coats[0]!.exposed.state).toBe("unknown");
    expect(notChecked(worked).map((u) => u.why)).toContain(
      "“middle front leg” chooses none of the pieces that stand there",
    );
  });

  test("a ring, whose corners touch, and an assembly, all copies of it", () => {
    const cap = coat(`stock b, actual 1" x 4"
part s of b, length 20", ends mitered 45°
ring cap = 4 s
place cap flat, on floor, 0 from left, 0 from front
coat cap with oil`);
    // 4 of 2 * 64 + 32, the 8 mitered ends hidden.
    expect(area(cap.exposed)).toBeCloseTo(4 * 160, 4);
    expect(sqin(cap.ends)).toBeCloseTo(0, 4);
    const pair = coat(`stock b, actual 1" x 4"
part p of b, length 10"
assembly two
  place p across, flat, on floor, 2 high, tight
place two on floor, 0 from left, 0 from front
place two on floor, 40" from left, 0 from front
coat two with oil`);
    expect(pair.pieces).toHaveLength(4);
    expect(area(pair.exposed)).toBe(2 * (216 - 80));
  });

  test("a mirror image is as large as what it mirrors", () => {
    const cut = `stock b, actual 1" x 4"
part m 2 of b, length 20", left end mitered 30° and beveled 20°, long point to long point
coat m with oil\n`;
    const { worked } = evaluated(`${OIL}${cut}part post of b, length 10"
place post upright, wide face front, on floor, 40" from left, 0 from front
place m across, flat, long points back, on floor, 0 from left, 0 from front, mirrored left to right about post`);
    expect(worked.pieces.all.filter((p) => p.part === "m").map((p) => p.mirrored)).toEqual([false, true]);
    expect(area(worked.coats[0]!.exposed)).toBeCloseTo(area(coat(cut).exposed), 5);
  });

  test("a box stands for its walls and bottom", () => {
    const work = coat(`stock b, actual 1" x 4"
part wall 4 of b, length 10"
part base 1 of b, length 10"
box tub, walls wall, bottom base, inside 8" x 8" x 4"
coat tub with oil`);
    expect(work.loose).toEqual([
      { part: "wall", count: 4 },
      { part: "base", count: 1 },
    ]);
    expect(area(work.exposed)).toBe(5 * 108);
  });

  test("pieces that stand nowhere are counted whole, and that is said", () => {
    const work = coat('stock b, actual 1" x 4"\npart low 3 of b, length 10"\ncoat low with oil');
    expect([area(work.exposed), work.pieces, work.loose]).toEqual([324, [], [{ part: "low", count: 3 }]]);
    expect(taken(work)).toContain("the whole of every piece of low is counted");
    expect(ifKnown(work.exposed)!.exact).not.toBeNull();
  });

  test("a ring no line places counts its members whole", () => {
    const work = coat(`stock b, actual 1" x 4"
part s of b, length 20", ends mitered 45°
ring cap = 4 s
coat cap with oil`);
    expect(work.loose).toEqual([{ part: "s", count: 4 }]);
  });

  test("two rings of one part count the members of both, and the part besides adds nothing", () => {
    const rings = `stock b, actual 1" x 4"
part s 10 of b, length 20", ends mitered 45°
ring low = 4 s
ring high = 6 s
`;
    const loose = (things: string) => coat(`${rings}coat ${things} with oil`).loose;
    expect(loose("low and high")).toEqual([{ part: "s", count: 10 }]);
    expect(loose("low and low")).toEqual([{ part: "s", count: 4 }]);
    expect(loose("s and low and high")).toEqual([{ part: "s", count: 10 }]);
    expect(loose("low and s")).toEqual([{ part: "s", count: 10 }]);
  });
});

describe("what is not known", () => {
  test.each([
    [
      "a part without a count",
      'part low of 2x4, length 10"\ncoat low with oil',
      "neither its line nor a place",
    ],
    [
      "narrowed pieces that no line places",
      'part low 2 of 2x4, length 10"\ncoat front low with oil',
      "which “front low” are follows from where they stand",
    ],
    [
      "an assembly that no line places",
      'part low of 2x4, length 10"\nassembly a\n  place low across, flat, on floor\ncoat a with oil',
      "a is placed nowhere",
    ],
  ])("%s has its cause on the not-checked list", (_, text, why) => {
    const { worked } = evaluated(OIL + text);
    const told = notChecked(worked).filter((u) => u.what.startsWith("how much there is to finish"));
    expect(told.map((u) => u.why)).toEqual([expect.stringContaining(why)]);
  });

  test("how far it goes, where nothing says it", () => {
    const { worked } = evaluated('finish brew, 2 coats\npart a 1 of 2x4, length 10"\ncoat a with brew');
    expect(worked.coats[0]!.exposed.state).toBe("known");
    expect(notChecked(worked).map((u) => `${u.what}: ${u.why}`)).toContain(
      "how much brew a takes: neither the plan nor the shop says how far brew goes",
    );
    expect(worked.shopping.rows.filter((r) => r.aisle === "finish")).toEqual([]);
  });

  test.each([
    ['part a 1 of 2x4, length 10"\ncoat a with jam', ["unknown-name"]],
    ['part a 1 of 2x4, length 10"\ncoat ghost with oil-finish', ["unknown-name"]],
    ["finish oil, covers 250 sqft per spoon", ["unknown-name"]],
    ["finish oil, covers 250 per gal", ["unit-mismatch"]],
    ["finish oil, dries 1 h - 4 h", ["impossible-value"]],
    ["finish oil, covers 0 sqft per gal", ["impossible-value"]],
    ['finish oil, covers 9 sqft per gal, tin of 3" $4', ["unit-mismatch"]],
    ['part a 1 of 2x4, length 10"\ncoat a with oil-finish, 0 coats', ["impossible-value"]],
  ])("a mistake is told once, and nothing of it is listed: %s", (text, codes) => {
    const plan = allProblems(text);
    expect(plan.codes.filter((c) => c !== "never-used")).toEqual(codes);
    expect(notChecked(plan).filter((u) => /takes|to finish/.test(u.what))).toEqual([]);
  });
});

describe("usual finishes need no line", () => {
  const usual = (name: string) => coat(`part a 1 of 2x4, length 10"\ncoat a with ${name}`);

  test("penetrating stain goes by the lesser of 200 to 400 sqft, and dries the most of its hours", () => {
    const work = usual("penetrating-stain");
    const { covers } = work.finish!;
    const perGal = (q: Quantity): number => (q.approx * 231 * 25.4 ** 3) / (144 * SQIN);
    expect(perGal(ifKnown(covers)!.least)).toBeCloseTo(200, 9);
    expect(perGal(ifKnown(covers)!.most)).toBeCloseTo(400, 9);
    expect(work.dries!.approx).toBe(48 * 60);
    expect(taken(work)).toContain("what to buy is reckoned with the lesser");
    expect(cite(work.finish!.from!)).toContain("Wood Handbook");
    expect([work.coatsFrom, ifKnown(work.coats)]).toEqual(["assumed", 2]);
  });

  test("what a declared one leaves unsaid is taken from the row of its name", () => {
    const { worked } = evaluated(
      'finish oil-finish, tin of 1 qt $18\npart a 1 of 2x4, length 10"\ncoat a with oil-finish',
    );
    expect(worked.coats[0]!.amount.state).toBe("known");
    expect(worked.coats[0]!.dries!.approx).toBe(48 * 60);
    expect(taken(worked.coats[0]!)).toContain("a coat is taken to dry 48 h, the most of 12 to 48");
    expect(worked.shopping.rows.find((r) => r.aisle === "finish")?.tin?.text).toBe("1 qt");
  });

  test("one that nobody sells is left out of the total, and that is said", () => {
    const { worked } = evaluated('part a 1 of 2x4, length 10"\ncoat a with oil-finish');
    expect(worked.shopping.withoutPrice).toEqual(["oil-finish"]);
  });
});

describe("how much it takes", () => {
  test("rough and painted stock drink twice", () => {
    const on = (how: string) =>
      coat(`stock b, actual 1" x 4"${how}\npart a 1 of b, length 10"\ncoat a with oil`);
    const faces = (100 / 144 / 250) * 2;
    const ends = ((8 * 3) / 144 / 250) * 2;
    const gal = ({ amount }: CoatWork): number => ifKnown(amount)!.approx / (231 * 25.4 ** 3);
    expect(gal(on(""))).toBeCloseTo(faces + ends, 9);
    expect(gal(on(", rough"))).toBeCloseTo(2 * faces + ends, 9);
    expect(gal(on(", painted"))).toBeCloseTo(2 * faces + ends, 9);
    expect([on("").rough, on(", rough").rough]).toEqual([false, true]);
    expect(taken(on(", rough"))).toContain("rough wood is taken to drink 2 times");
  });

  test("the line's own number of coats goes before that of its finish", () => {
    const text = 'part a 1 of 2x4, length 10"\ncoat a with oil';
    expect([coat(text).coatsFrom, ifKnown(coat(text).coats)]).toEqual(["finish", 2]);
    const three = coat(`${text}, 3 coats`);
    expect([three.coatsFrom, ifKnown(three.coats)]).toEqual(["line", 3]);
  });
});

describe("the samples whole", () => {
  test("the trough: 4 sides, 4 ends, 4 legs and the cap", () => {
    const { coats: [work] = [], shopping } = sample("salad-trough.sawbuck");
    expect(work!.pieces).toHaveLength(16);
    // Sides 46-1/2, ends 18, of 3/4 x 5-1/2; legs 29-1/4 of 1-1/2 x 3-1/2; the cap 50 and 20 to its long points, of 3/4 x 3-1/2.
    const block = (l: number, w: number, t: number): number => 2 * (l * w + l * t + w * t);
    const cap = (l: number): number => 2 * 3.5 * (l - 3.5) + 0.75 * (2 * l - 7) + 2 * 3.5 * Math.SQRT2 * 0.75;
    const whole =
      4 * block(46.5, 5.5, 0.75) +
      4 * block(18, 5.5, 0.75) +
      4 * block(29.25, 3.5, 1.5) +
      2 * cap(50) +
      2 * cap(20);
    expect(area(work!.exposed) + sqin(work!.hidden)).toBeCloseTo(whole, 3);
    expect(ifKnown(work!.coats)).toBe(2);
    const bought = shopping.rows.filter((r) => r.aisle === "finish");
    expect(bought.map((r) => [r.what, r.count, r.tin?.text])).toEqual([["outdoor-oil", 1, "1 qt"]]);
  });

  test("two tree seats share their tin", () => {
    const { shopping, settings } = sample("tree-seat.sawbuck");
    expect(settings.make).toBe(2);
    // 1.3 qt for one, 2.6 for two: three quarts would cost $54, a gallon $52.
    const bought = shopping.rows.filter((r) => r.aisle === "finish");
    expect(bought.map((r) => [r.count, r.tin?.text])).toEqual([[1, "1 gal"]]);
    expect(shopping.finishes.map((f) => f.complete)).toEqual([true]);
  });

  test.each(["salad-trough", "post-stand", "school-gate", "slope-planter", "tree-seat"])(
    "%s leaves neither finish nor liner unchecked",
    (name) => {
      const told = notChecked(sample(`${name}.sawbuck`));
      expect(told.filter((u) => /finish|liner|to buy for/.test(u.what))).toEqual([]);
    },
  );
});
