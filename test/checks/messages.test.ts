/**
 * What every problem says, whole: headline, other places, what was taken for granted, and ways out, in an inch plan and
 * in a metric one. Between them the plans show every sentence of every check.
 */
import { describe, expect, test } from "vitest";
import { CHECKS, type Problem } from "../../server/checks";
import { CODES } from "../../server/checks/codes";
import { type Case, planOf, type System, shownCase } from "./cases";
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

/** The cases of every code, from all these. */
function together(
  all: readonly Readonly<Record<string, readonly Case[]>>[],
): Readonly<Record<string, readonly Case[]>> {
  const cases: Record<string, Case[]> = {};
  for (const some of all)
    for (const [code, list] of Object.entries(some)) cases[code] = [...(cases[code] ?? []), ...list];
  return cases;
}

const CASES = together([
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
]);
const SYSTEMS: readonly System[] = ["inches", "millimetres"];

describe.each(CODES)("%s", (code) => {
  test.each(SYSTEMS)("in %s", async (system) => {
    const shown = CASES[code]!.map((c) => shownCase(c, planOf(c, system)));
    await expect(`${shown.join("\n\n")}\n`).toMatchFileSnapshot(`snapshots/${code}-${system}.txt`);
  });

  test("every plan shows it", () => {
    const silent = CASES[code]!.filter((c) => !planOf(c, "inches").problems.some((p) => p.code === code));
    expect(silent).toEqual([]);
  });
});

describe("every sentence", () => {
  const seen = new Set<string>();
  const note = (p: Problem): void => {
    for (const said of [p, ...p.related, ...p.assumed, ...p.cures]) seen.add(`${p.code} ${said.says}`);
  };
  for (const c of Object.values(CASES).flat()) planOf(c, "inches").problems.forEach(note);
  const all = CHECKS.flatMap((c) => Object.keys(c.templates).map((says) => `${c.code} ${says}`));
  const ofForm = Object.keys(FORM_CASES);
  const isTitle = (s: string): boolean => TITLES.some((t) => ofForm.some((code) => s === `${code} ${t}`));

  test("that a problem uses is one of its check's templates", () => {
    expect([...seen].filter((s) => !all.includes(s))).toEqual([]);
  });

  test("is shown, but for those that cannot be", () => {
    const hidden = all.filter((s) => !seen.has(s) && !isTitle(s));
    expect(hidden.sort()).toEqual(Object.keys(NOT_SHOWN).sort());
  });

  test("of a cure of form is shown by some check of form", () => {
    const shown = TITLES.filter((title) => ofForm.some((code) => seen.has(`${code} ${title}`)));
    expect(shown).toEqual(TITLES);
  });
});

/** The titles of cures that all checks of form share, whether they use them or not. */
const TITLES: readonly string[] = ["write", "insert", "append", "leave-out", "indent", "outdent"];

/** Sentences no plan shows, each with the reason. */
const NOT_SHOWN: Readonly<Record<string, string>> = {
  "impossible-value no inside": "each side was already found to be more than nothing",
  "impossible-value uncuttable": "lengths, sizes and angles were already found to be usable",
  "ring-open ends-cross": "a piece whose cuts cross is told by ends-cross, and its ring is left alone",
  "ring-open unusable": "lengths, widths and angles were already found to be usable",
  "screw-pokes-through longer": "no screw comes out of more than a foot of wood",
  "unknown-section unknown": "the standards list boards near any name that is a section",
};
