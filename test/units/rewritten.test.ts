/** A plan typed in millimetres comes to what the same plan typed in inches comes to, and the other way. */
import { basename } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { diskReader } from "../../server/lsp/disk";
import type { Reader } from "../../server/plan";
import { type Evaluated, evaluate, sheetOf, writeSheet } from "../../server/service";
import { madePlan, SAMPLES, SOME } from "../property/plans";
import { ALL } from "../sheet/samples";
import { rewrittenIn, type System } from "./rewritten";

const shop = SAMPLES.find((s) => s.startsWith("# What the yard"))!;
const shopOnly: Reader = (path) =>
  path.includes("shop") ? { file: path, text: shop } : { file: path, refused: "there is no such file" };

const SYSTEMS: readonly System[] = ["inches", "millimetres"];

/** Words of the plan in which some length is typed. */
const TYPED = /[\d½] ?(?:["″'′’]|(?:mm|cm|m|in|ft)(?!\w))/;

/** All that the sheet says but columns of the text, and how lengths are typed where it quotes it. */
function said(plan: Evaluated): unknown {
  const quoted = (words: string): string => (TYPED.test(words) ? "“…”" : words);
  return JSON.parse(
    writeSheet(
      sheetOf(plan, (path) => basename(path)),
      "json",
    ),
    (key, value) => {
      if (key === "column" || key === "endColumn") return undefined;
      if (typeof value !== "string") return value;
      return key === "rule" || key === "source" ? quoted(value) : value.replace(/“[^”]*”/g, quoted);
    },
  );
}

/** Where all its files are typed in that system. */
const typedIn =
  (read: Reader, to: System): Reader =>
  (...asked) => {
    const found = read(...asked);
    return "refused" in found ? found : { ...found, text: rewrittenIn(found.text, to).text };
  };

describe("typed in the other system", () => {
  test.each(SYSTEMS)("every sample and every mistake, in %s", (to) => {
    let changed = 0;
    for (const { name, evaluated } of ALL) {
      const was = evaluated();
      const now = rewrittenIn(was.text, to);
      changed += now.changed;
      expect.soft(said(evaluate(was.file, now.text, typedIn(diskReader, to))), name).toEqual(said(was));
    }
    expect(changed).toBeGreaterThan(to === "inches" ? 20 : 300);
  });

  test.each(SYSTEMS)("plans made at random, in %s", (to) => {
    let changed = 0;
    fc.assert(
      fc.property(madePlan, (text) => {
        const now = rewrittenIn(text, to);
        changed += now.changed;
        const was = said(evaluate("plan.sawbuck", text, shopOnly));
        expect(said(evaluate("plan.sawbuck", now.text, typedIn(shopOnly, to)))).toEqual(was);
      }),
      { numRuns: Math.ceil(SOME / 3) },
    );
    expect(changed).toBeGreaterThan(SOME / 10);
  });
});
