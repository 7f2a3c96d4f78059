/** What finish and liner take, against printed figures: the Wood Handbook's coverage of stain, a pond-keeping magazine's liner. */
import { describe, expect, it } from "vitest";
import { ifKnown } from "../../server/plan";
import { AREA, exactly, fraction, GALLON, INCH, LENGTH, type Quantity, unitNamed } from "../../server/units";
import { amountOf, linerCuts, linerSheet } from "../../server/worked";
import { evaluated } from "../placing/plans";

const SQFT = fraction.toNumber(unitNamed("sqft")!.factor);
const gallons = (q: Quantity): number => q.approx / fraction.toNumber(GALLON);
const feet = (n: number): Quantity => exactly(LENGTH, fraction.multiply(INCH, fraction.rational(n * 12)));
const inFeet = (q: Quantity): number => Number((q.approx / 304.8).toFixed(9));

const stain = evaluated('part a 1 of 2x4, length 10"\ncoat a with penetrating-stain').worked.finishes[0]!;

describe("Wood Handbook, chapter 16: semitransparent stain", () => {
  it.each([
    ["smooth, 200 to 400 sqft per gal", { smooth: 300 * SQFT, rough: 0, ends: 0 }, [1.5, 3]],
    ["rough, 100 to 200 sqft per gal", { smooth: 0, rough: 300 * SQFT, ends: 0 }, [3, 6]],
  ] as const)("300 sqft, two coats, %s", (_, area, expected) => {
    const amount = ifKnown(amountOf(area, 2, stain))!;
    expect([gallons(amount.least), gallons(amount.most)].map((g) => Number(g.toFixed(9)))).toEqual([
      ...expected,
    ]);
  });

  it("the same for a plan of rough boards: 300 sqft of faces, and what its ends take besides", () => {
    // 12 ft of 12" x 1": 26 sqft of faces and edges, 1/6 sqft of ends.
    const { worked } = evaluated(
      `stock wide, actual 1" x 12", rough\npart plank 12 of wide, length 12'\ncoat plank with penetrating-stain`,
    );
    const [coat] = worked.coats;
    const [faces, ends] = [12 * 26, 12 / 6];
    expect(ifKnown(coat!.exposed)).toEqual(
      exactly(AREA, fraction.multiply(unitNamed("sqft")!.factor, fraction.rational(faces + ends))),
    );
    expect(gallons(ifKnown(coat!.amount)!)).toBeCloseTo((2 * faces) / 100 + (2 * ends * 3) / 200, 9);
    expect(gallons(coat!.least!)).toBeCloseTo((2 * faces) / 200 + (2 * ends * 2) / 400, 9);
  });
});

describe("a pond-keeping magazine's worked size", () => {
  const sheet = linerSheet(
    feet(10),
    feet(8),
    feet(6),
    exactly(LENGTH, fraction.multiply(INCH, fraction.rational(6))),
  );

  it("a pond of 10 by 8 ft, 6 ft deep, with 6 in past each rim wants 23 by 21 ft", () => {
    expect([inFeet(sheet.length), inFeet(sheet.width)]).toEqual([23, 21]);
  });

  it("is 21 ft of a roll of 25, 23 ft of one of 22, and two strips of one of 12", () => {
    const along = (roll: number) => inFeet(linerCuts(sheet, feet(roll), feet(1))!.along);
    // 12 + 12 - 1 = 23: two strips across the long side, 21 ft each.
    expect([along(25), along(22), along(12)]).toEqual([21, 23, 42]);
  });
});

describe("a roll priced, a tin priced", () => {
  it("the whole of a plan: 4 ft at $2.10 and a quart at $18", () => {
    const { worked } = evaluated(`roll liner, width 6', price $2.10 per foot
finish oil, covers 250 sqft per gal, 1 coats, tin of 1 qt $18
part side 4 of 1x6, length 40"
box tub, inside 40" x 16" x 10"
line tub with liner, fold 3"
coat side with oil`);
    expect(worked.shopping.subtotal!.approx).toBeCloseTo(26.4, 9);
  });
});
