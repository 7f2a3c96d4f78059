/** 4. Applying a cure removes its problem and adds no error and no hazard. */
import { expect, test } from "vitest";
import { textIn } from "./cases";
import { FITS_CASES } from "./cases-fits";
import { FORM_CASES } from "./cases-form";
import { GUARDING_CASES } from "./cases-guarding";
import { HOLDING_CASES } from "./cases-holding";
import { MEANING_CASES } from "./cases-meaning";
import { PLACED_CASES } from "./cases-placed";
import { STEPS_CASES } from "./cases-steps";
import { STOCK_CASES } from "./cases-stock";
import { TIPPING_CASES } from "./cases-tipping";
import { WATER_CASES } from "./cases-water";
import { WEATHER_CASES } from "./cases-weather";
import { WHERE_CASES } from "./cases-where";
import { WORK_CASES } from "./cases-work";
import { applied, countOf, graveAdded } from "./curing";
import { EXAMPLES, MISTAKES, run } from "./plans";

const ALL = [
  FORM_CASES,
  MEANING_CASES,
  WORK_CASES,
  PLACED_CASES,
  HOLDING_CASES,
  WHERE_CASES,
  FITS_CASES,
  STEPS_CASES,
  STOCK_CASES,
  TIPPING_CASES,
  WATER_CASES,
  GUARDING_CASES,
  WEATHER_CASES,
].flatMap((c) => Object.entries(c));
const CASES = ALL.flatMap(([code, cases]) =>
  cases
    .filter((c) => typeof c === "string")
    .flatMap((c, i) => [
      { name: `${code}, case ${i + 1}, inches`, text: textIn(c, "inches") },
      { name: `${code}, case ${i + 1}, millimetres`, text: textIn(c, "millimetres") },
    ]),
);

let cured = 0;
test.each([...EXAMPLES, ...MISTAKES, ...CASES])("$name", ({ text }) => {
  for (const problem of run(text).problems) {
    for (const cure of problem.cures) {
      if (cure.edits.length === 0) continue;
      cured++;
      const after = applied(text, cure.edits);
      expect(countOf(problem.code, after)).toBeLessThan(countOf(problem.code, text));
      expect(graveAdded(text, after)).toEqual([]);
    }
  }
});

test("cures were tried", () => {
  expect(cured).toBeGreaterThan(200);
});
