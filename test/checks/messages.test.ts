/**
 * What every problem says, whole: headline, other places, what was taken for granted, and ways out, in an inch plan and
 * in a metric one. Between them the plans show every sentence of every check.
 */
import { describe, expect, test } from "vitest";
import { CHECKS, type Problem } from "../../server/checks";
import { CODES } from "../../server/checks/codes";
import { type Case, readerOf, type System, shownCase, textIn } from "./cases";
import { FORM_CASES } from "./cases-form";
import { MEANING_CASES } from "./cases-meaning";
import { WORK_CASES } from "./cases-work";
import { run } from "./plans";

const CASES: Readonly<Record<string, readonly Case[]>> = { ...FORM_CASES, ...MEANING_CASES, ...WORK_CASES };
const SYSTEMS: readonly System[] = ["inches", "millimetres"];

const evaluated = (c: Case, system: System) => run(textIn(c, system), readerOf(c));

describe.each(CODES)("%s", (code) => {
  test.each(SYSTEMS)("in %s", async (system) => {
    const shown = CASES[code]!.map((c) => shownCase(c, evaluated(c, system)));
    await expect(`${shown.join("\n\n")}\n`).toMatchFileSnapshot(`snapshots/${code}-${system}.txt`);
  });

  test("every plan shows it", () => {
    const silent = CASES[code]!.filter((c) => !evaluated(c, "inches").problems.some((p) => p.code === code));
    expect(silent).toEqual([]);
  });
});

describe("every sentence", () => {
  const seen = new Set<string>();
  const note = (p: Problem): void => {
    for (const said of [p, ...p.related, ...p.assumed, ...p.cures]) seen.add(`${p.code} ${said.says}`);
  };
  for (const c of Object.values(CASES).flat()) evaluated(c, "inches").problems.forEach(note);
  const all = CHECKS.flatMap((c) => Object.keys(c.templates).map((says) => `${c.code} ${says}`));

  test("that a problem uses is one of its check's templates", () => {
    expect([...seen].filter((s) => !all.includes(s))).toEqual([]);
  });

  test("is shown, but for those that cannot be", () => {
    expect(all.filter((s) => !seen.has(s)).sort()).toEqual(Object.keys(NOT_SHOWN).sort());
  });
});

/** Sentences no plan shows, each with the reason. */
const NOT_SHOWN: Readonly<Record<string, string>> = {};
