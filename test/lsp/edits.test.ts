/** Property 2: after any sequence of edits, the problems shown equal those of a fresh run on the final text. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Diagnostic } from "vscode-languageserver/node";
import { anyText, brokenSample, madePlan, RUNS, SAMPLES } from "../property/plans";
import { type Editor, editor } from "./editor";

const edits = fc.array(
  fc.tuple(
    fc.nat(),
    fc.nat(60),
    fc.oneof(
      fc.constantFrom("", "\n", "\r\n", "  ", ",", '"', "(", "rim", "2x4", 'part leg 4 of 2x4, length 9"\n'),
      // Letters of two units, of two code points, and joined ones: columns are counted in UTF-16.
      fc.constantFrom("😀", "e\u0301", "👩‍🔧", "# 🪵 e\u0301\n", "\u2028"),
      fc.string({ maxLength: 8 }),
      madePlan,
    ),
  ),
  { maxLength: 12 },
);
const start = fc.oneof(fc.constantFrom(...SAMPLES), brokenSample, madePlan, anyText);

const FILE = "/yard/plan.sawbuck";
/** 2,000 sequences of edits in CI, half of them pushed and half asked for. */
const SEQUENCES = Math.ceil(RUNS / 2);

test.each(["push", "pull"] as const)("problems after edits are those of the final text (%s)", async (how) => {
  const capabilities = how === "pull" ? { textDocument: { diagnostic: {} } } : {};
  const [typed, fresh] = await Promise.all([editor({ capabilities }), editor({ capabilities })]);
  let withProblems = 0;
  let runs = 0;
  const shown = async (e: Editor, version: number): Promise<readonly Diagnostic[]> => {
    if (how === "pull") return e.pull(FILE);
    await e.until(() => e.pushes.some((p) => p.version === version));
    return e.pushed(FILE) ?? [];
  };
  await fc.assert(
    fc.asyncProperty(start, edits, async (text, list) => {
      await typed.open(FILE, text);
      for (const [at, length, insert] of list) {
        const from = at % (typed.textOf(FILE).length + 1);
        await typed.edit(FILE, from, Math.min(from + length, typed.textOf(FILE).length), insert);
      }
      // What is held for the line being typed is let go by replacing the text with itself.
      await typed.replace(FILE, typed.textOf(FILE));
      await fresh.open(FILE, typed.textOf(FILE));
      const a = await shown(typed, list.length + 2);
      const b = await shown(fresh, 1);
      expect(a).toEqual(b);
      runs++;
      if (b.length > 0) withProblems++;
      for (const e of [typed, fresh]) {
        await e.close(FILE);
        e.pushes.length = 0;
      }
    }),
    { numRuns: SEQUENCES },
  );
  expect(withProblems).toBeGreaterThan(runs / 4);
  expect(typed.logged).toEqual([]);
  typed.end();
  fresh.end();
});
