/** Days of the calendar, beside those that JavaScript knows, and what is made of days in another order. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { dayInWords, isDay, meantBy } from "../grammar/calendar";

const two = (n: number): string => String(n).padStart(2, "0");

test("every day of four hundred years, and no other", () => {
  let days = 0;
  for (let year = 1800; year < 2200; year++)
    for (let month = 0; month <= 13; month++)
      for (let day = 0; day <= 32; day++) {
        const date = new Date(Date.UTC(year, month - 1, day));
        const is = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
        if (is) days++;
        if (isDay(`${year}-${two(month)}-${two(day)}`) !== is) throw new Error(`${year}-${month}-${day}`);
      }
  // 400 years of 365 days, and 97 leap days.
  expect(days).toBe(146_097);
  for (const text of ["2026-5-9", "26-05-09", "2026/05/09", "2026-05-09 ", "", "today"])
    expect(isDay(text)).toBe(false);
});

test("a day in another order is one or two days, or none", () => {
  const day = fc.date({ min: new Date("2000-01-01"), max: new Date("2099-12-31"), noInvalidDate: true });
  fc.assert(
    fc.property(day, fc.constantFrom("-", "/", "."), (date, mark) => {
      const iso = date.toISOString().slice(0, 10);
      const [year, month, own] = iso.split("-").map(Number) as [number, number, number];
      const apart = own > 12 || own === month;
      for (const order of [
        [own, month, year],
        [month, own, year],
        [own, month, year % 100],
      ]) {
        const { days } = meantBy(order.map((n, i) => (i === 2 ? two(n) : String(n))).join(mark));
        expect(days).toContain(iso);
        expect(days.length).toBe(apart ? 1 : 2);
      }
      expect(meantBy([year, month, own].join(mark)).days).toEqual([iso]);
    }),
  );
  expect(meantBy("30/2/2026")).toEqual({ days: [], inMonth: 28 });
  expect(meantBy("40/13/2026")).toEqual({ days: [] });
});

test("months by their names in both languages, where they can be only one", () => {
  for (const [words, day] of [
    ["9 May 2026", "2026-05-09"],
    ["May 9 2026", "2026-05-09"],
    ["9 mai 2026", "2026-05-09"],
    ["1 août 2026", "2026-08-01"],
    ["3 févr 2026", "2026-02-03"],
    ["3 ju 2026", undefined],
    ["31 June 2026", undefined],
    ["9 May", undefined],
    ["by the class", undefined],
  ] as const)
    expect([words, dayInWords(words.split(" "))]).toEqual([words, day]);
});
