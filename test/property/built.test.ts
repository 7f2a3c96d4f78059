/** What was built changes nothing of the plan: not a problem, a piece, a board or a cent of it. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { problemText } from "../../server/checks";
import { usesOf } from "../../server/plan";
import { type Evaluated, laidOut, sheetOf } from "../../server/service";
import { planOf } from "../changes/pairs";
import { builtLine, crossedPlan, FEWER, madePlan, SAMPLES, SOME } from "./plans";

const anyPlan = fc.oneof(madePlan, crossedPlan, fc.constantFrom(...SAMPLES));

/** All problems of the plan itself, but that nothing uses what the record names. */
const problemsOf = (e: Evaluated, end: number, named: ReadonlySet<string>): string[] =>
  [...e.problems, ...e.accepted.map(({ problem }) => problem)]
    .filter(({ at }) => at.start < end || at.file !== e.file)
    .filter(({ code, about }) => code !== "never-used" || !about.some((name) => named.has(name)))
    .map((p) => `${p.code} ${p.at.start} ${problemText(p.code, p, e.worked.settings.display)}`);

test("a plan with a record of how it was built is the same plan", () => {
  let differed = 0;
  fc.assert(
    fc.property(anyPlan, builtLine, (text, line) => {
      const whole = text.endsWith("\n") ? text : `${text}\n`;
      const [without, with_] = [planOf(whole), planOf(`${whole}${line}\n`)];
      const entry = with_.worked.loaded.files[0]!.tree.entries.at(-1);
      fc.pre(entry?.kind === "built");
      if (entry.clauses.length > 0) differed++;
      const named = new Set(
        [without, with_].flatMap(({ worked }) =>
          worked.loaded.files.flatMap(({ tree }) =>
            tree.entries.flatMap((e) =>
              e.kind === "built"
                ? usesOf(e).flatMap(({ name }) => [name.text, name.text.replace(/s$/, "")])
                : [],
            ),
          ),
        ),
      );
      expect(problemsOf(with_, whole.length, named)).toEqual(problemsOf(without, whole.length, named));
      const sheet = (e: Evaluated) => {
        const { built, problems, accepted, ...rest } = sheetOf(e);
        return rest;
      };
      expect(sheet(with_)).toEqual(sheet(without));
    }),
    { numRuns: Math.ceil(SOME / 2) },
  );
  expect(differed).toBeGreaterThan(SOME / 8);
});

test("it is laid out in one way, and says the same after that", () => {
  fc.assert(
    fc.property(builtLine, (line) => {
      const untidy = line.replaceAll("  ", "     ").replaceAll(" = ", "=");
      const tidy = `${line}\n`;
      expect(laidOut(untidy)).toEqual({ text: tidy });
      expect(laidOut(tidy)).toEqual({ text: tidy });
    }),
    { numRuns: FEWER },
  );
});
