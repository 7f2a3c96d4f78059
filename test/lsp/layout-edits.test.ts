/**
 * Property 2 with better layouts: after any edits, at any pace, once nothing more is looked for, the problems shown are
 * those of a fresh run on the final text with the best layouts there are.
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics";
import { evaluatedBest } from "../../server/lsp/layouts/at-once";
import { inlineHost } from "../../server/lsp/layouts/host";
import { PAUSE_MS } from "../../server/lsp/layouts/looking";
import { planText } from "../bench/layout/plan-text";
import { RUNS } from "../property/plans";
import { editor, wait } from "./editor";

const FILE = "/yard/plan.sawbuck";
/** Its problem about the budget tells what the boards cost. */
const TEXT = `${planText([97])}sheet ply, plywood 1/2", sold 48" x 96" $38.00, 24" x 48" $14.50
part shelf 5 of ply, length 30", width 11-1/2"
part back 2 of ply, length 22", width 19"
`;

/** Often in a number, so that what is asked for is another. */
const edit = fc.record({
  at: fc.oneof(
    fc.nat(TEXT.length),
    fc.constantFrom(...[...TEXT.matchAll(/\d(?=[\d.]*"|\d* of)/g)].map(({ index }) => index)),
  ),
  length: fc.nat(2),
  insert: fc.oneof(
    fc.integer({ min: 1, max: 9 }).map(String),
    fc.constantFrom("", "\n", "# ", '"', ", use up", 'part leg 3 of lot-97, length 41"\n'),
  ),
  pause: fc.constantFrom(0, PAUSE_MS / 3, PAUSE_MS + 20, PAUSE_MS + 80),
});

test("problems in the end are those of the final text with the best layouts", async () => {
  const e = await editor({ layoutHost: inlineHost() });
  let version = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(edit, { maxLength: 8 }), async (edits) => {
      e.pushes.length = 0;
      e.layouts.length = 0;
      await e.open(FILE, TEXT);
      version = 1;
      for (const { at, length, insert, pause } of edits) {
        const from = Math.min(at, e.textOf(FILE).length);
        await e.edit(FILE, from, Math.min(from + length, e.textOf(FILE).length), insert);
        version++;
        await wait(pause);
      }
      // What is held for the line being typed is let go by replacing the text with itself.
      await e.replace(FILE, e.textOf(FILE));
      version++;
      await e.until(() => e.layouts.some((told) => told.version === version && told.state !== "looking"));
      const best = evaluatedBest(FILE, e.textOf(FILE), (file) => ({
        file,
        refused: "there is no such file",
      }));
      expect(e.pushed(FILE)?.map(({ code, message }) => ({ code, message }))).toEqual(
        diagnosticsOf(best).map(({ code, message }) => ({ code, message })),
      );
      await e.close(FILE);
    }),
    { numRuns: Math.min(Math.ceil(RUNS / 10), 60) },
  );
  expect(e.logged).toEqual([]);
  e.end();
});
