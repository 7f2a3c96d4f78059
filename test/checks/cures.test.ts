/** 4. Applying a cure removes its problem and adds no error and no hazard. */
import { expect, test } from "vitest";
import type { Edit } from "../../server/checks";
import { textIn } from "./cases";
import { FITS_CASES } from "./cases-fits";
import { FORM_CASES } from "./cases-form";
import { MEANING_CASES } from "./cases-meaning";
import { PLACED_CASES } from "./cases-placed";
import { WHERE_CASES } from "./cases-where";
import { WORK_CASES } from "./cases-work";
import { EXAMPLES, MISTAKES, run } from "./plans";

const ALL = [FORM_CASES, MEANING_CASES, WORK_CASES, PLACED_CASES, WHERE_CASES, FITS_CASES].flatMap((c) =>
  Object.entries(c),
);
const CASES = ALL.flatMap(([code, cases]) =>
  cases
    .filter((c) => typeof c === "string")
    .flatMap((c, i) => [
      { name: `${code}, case ${i + 1}, inches`, text: textIn(c, "inches") },
      { name: `${code}, case ${i + 1}, millimetres`, text: textIn(c, "millimetres") },
    ]),
);

function apply(text: string, edits: readonly Edit[]): string {
  return [...edits]
    .sort((a, b) => b.start - a.start)
    .reduce((t, e) => t.slice(0, e.start) + e.text + t.slice(e.end), text);
}

const grave = (text: string): string[] =>
  run(text)
    .problems.filter((p) => p.class === "error" || p.class === "hazard")
    .map((p) => p.code)
    .sort();

let cured = 0;
test.each([...EXAMPLES, ...MISTAKES, ...CASES])("$name", ({ text }) => {
  for (const problem of run(text).problems) {
    const before = run(text).problems.filter((p) => p.code === problem.code).length;
    for (const cure of problem.cures) {
      if (cure.edits.length === 0) continue;
      cured++;
      const after = apply(text, cure.edits);
      expect(run(after).problems.filter((p) => p.code === problem.code).length).toBeLessThan(before);
      const added = grave(after).filter((code) => !grave(text).includes(code));
      expect(added).toEqual([]);
    }
  }
});

test("cures were tried", () => {
  expect(cured).toBeGreaterThan(200);
});
