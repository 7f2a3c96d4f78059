/** What must always hold of finish and liner, whatever is coated and lined. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { ifKnown } from "../../server/plan";
import { exactly, fraction, INCH, LENGTH, type Quantity } from "../../server/units";
import { amountOf, linerCuts, linerSheet } from "../../server/worked";
import { evaluated } from "../placing/plans";
import { FEWER, madePlan } from "./plans";

const OIL = "finish oil, covers 250 sqft per gal";
const finish = evaluated(`${OIL}, 1 coats`).worked.finishes[0]!;
const area = fc.record({
  smooth: fc.double({ min: 0, max: 1e8, noNaN: true }),
  rough: fc.double({ min: 0, max: 1e8, noNaN: true }),
  ends: fc.double({ min: 0, max: 1e7, noNaN: true }),
});

test("more coats and more wood never take less", () => {
  fc.assert(
    fc.property(area, area, fc.integer({ min: 1, max: 20 }), (a, b, coats) => {
      const takes = (of: typeof a, n: number) => ifKnown(amountOf(of, n, finish))!;
      const both = { smooth: a.smooth + b.smooth, rough: a.rough + b.rough, ends: a.ends + b.ends };
      expect(takes(a, coats).least.approx).toBeLessThanOrEqual(takes(a, coats).most.approx);
      expect(takes(a, coats + 1).most.approx).toBeGreaterThanOrEqual(takes(a, coats).most.approx);
      expect(takes(both, coats).most.approx).toBeGreaterThanOrEqual(takes(a, coats).most.approx);
    }),
    { numRuns: FEWER },
  );
});

test("what is seen and what is hidden make the whole, and neither is less than nothing", () => {
  let known = 0;
  fc.assert(
    fc.property(madePlan, (text) => {
      const named = `${text}\nfinish oil-x, covers 250 sqft per gal\ncoat leg and rail with oil-x\ncoat side with oil-x, 3 coats\n`;
      for (const coat of evaluated(named).worked.coats) {
        const exposed = ifKnown(coat.exposed);
        if (!exposed || !coat.hidden || !coat.ends) continue;
        known++;
        expect(exposed.approx).toBeGreaterThanOrEqual(0);
        expect(coat.hidden.approx).toBeGreaterThanOrEqual(0);
        expect(coat.ends.approx).toBeGreaterThanOrEqual(-1e-6);
        expect(coat.ends.approx).toBeLessThanOrEqual(exposed.approx + 1e-6);
      }
    }),
    { numRuns: Math.ceil(FEWER / 2) },
  );
  expect(known).toBeGreaterThan(FEWER / 50);
});

test("inches and millimetres come to the same", () => {
  const size = fc.integer({ min: 1, max: 400 });
  fc.assert(
    fc.property(size, size, size, (long, wide, high) => {
      const plan = (of: (tenths: number) => string) =>
        evaluated(`${OIL}
stock b, actual ${of(10)} x ${of(wide)}
part a of b, length ${of(long)}
place a across, flat, on floor, 0 from left, 0 from front, 3 high, tight
roll r, width ${of(500)}
box t, inside ${of(long)} x ${of(wide)} x ${of(high)}
line t with r, fold ${of(20)}
coat a with oil`).worked;
      const inches = plan((t) => `${Math.floor(t / 10)}-${t % 10}/10"`);
      const metric = plan((t) => `${((t * 254) / 100).toFixed(2)}mm`);
      const values = ({ coats, linings }: typeof inches) => [
        ifKnown(coats[0]!.exposed)!.approx,
        ifKnown(coats[0]!.amount)!.approx,
        ifKnown(linings[0]!.along)!.approx,
        ifKnown(linings[0]!.staples)!,
      ];
      const [a, b] = [values(inches), values(metric)];
      a.forEach((x, i) => {
        expect(Math.abs(x - b[i]!) / x).toBeLessThan(1e-9);
      });
    }),
    { numRuns: Math.ceil(FEWER / 5) },
  );
});

test("strips cover the sheet, lie over each other as asked, and no way across takes less", () => {
  const eighths = (most: number) => fc.integer({ min: 8, max: most * 8 });
  const inch = (n: number): Quantity => exactly(LENGTH, fraction.multiply(INCH, fraction.rational(n, 8)));
  fc.assert(
    fc.property(
      eighths(120),
      eighths(60),
      eighths(40),
      eighths(80),
      fc.integer({ min: 0, max: 60 }),
      (a, b, h, roll, over) => {
        const sheet = linerSheet(inch(a), inch(b), inch(h), inch(16));
        const found = linerCuts(sheet, inch(roll), inch(over));
        const fits = sheet.width.approx <= inch(roll).approx + 1e-9;
        if (!found) {
          expect(over).toBeGreaterThanOrEqual(roll);
          expect(fits).toBe(false);
          return;
        }
        const count = found.cuts.reduce((n, c) => n + c.count, 0);
        const across =
          found.cuts.reduce((sum, c) => sum + c.count * c.width.approx, 0) - (count - 1) * inch(over).approx;
        const [first] = found.cuts;
        const other = first!.length.approx === sheet.length.approx ? sheet.width : sheet.length;
        expect(Math.abs(across - other.approx)).toBeLessThan(1e-6);
        for (const c of found.cuts) expect(c.width.approx).toBeLessThanOrEqual(inch(roll).approx + 1e-6);
        expect(Math.abs(found.along.approx - count * first!.length.approx)).toBeLessThan(1e-6);
        if (fits) expect(first!.what).toBe("sheet");
      },
    ),
    { numRuns: FEWER },
  );
});
