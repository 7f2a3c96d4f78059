/** The outline of plans, word for word, and what must be true of every outline. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type PlanSymbol, symbolsOf } from "../../server/features/symbols";
import type { Evaluated } from "../../server/service";
import { anyText, RUNS } from "../property/plans";
import { fixture, worked } from "./plans";

const files = { "shop.sawbuck": fixture("shop") };

const outline = (symbols: readonly PlanSymbol[], depth = 0): string =>
  symbols
    .map((s) => {
      const detail = s.detail ? `  (${s.detail})` : "";
      return `${"  ".repeat(depth)}${s.kind}: ${s.name}${detail}\n${outline(s.children, depth + 1)}`;
    })
    .join("");

test.each(["inches", "metric", "gaps", "shop"])("the outline of the plan %s", async (name) => {
  const told = outline(symbolsOf(worked(fixture(name), name === "shop" ? {} : files)));
  await expect(told).toMatchFileSnapshot(`snapshots/symbols-${name}.txt`);
});

/** What an editor refuses otherwise: a name, a name inside its entry, an entry inside its parent. */
function whole({ text }: Evaluated, symbols: readonly PlanSymbol[], from = 0, to = text.length): void {
  for (const { name, range, selection, children } of symbols) {
    expect(name).not.toBe("");
    expect(from <= range.start && range.start <= selection.start).toBe(true);
    expect(selection.start <= selection.end && selection.end <= range.end && range.end <= to).toBe(true);
    whole({ text } as Evaluated, children, range.start, range.end);
  }
}

test("each symbol has a name and lies inside its parent, in any text", () => {
  let some = 0;
  fc.assert(
    fc.property(anyText, (text) => {
      const plan = worked(text, files);
      const symbols = symbolsOf(plan);
      if (symbols.length > 0) some++;
      whole(plan, symbols);
    }),
    { numRuns: Math.min(RUNS, 1000) },
  );
  expect(some).toBeGreaterThan(0);
});
