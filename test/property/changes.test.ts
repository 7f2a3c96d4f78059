/** A plan compared with itself has no changes, compared the other way round they are turned round, and no text of a plan gets out of a page. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { writeComparisons } from "../../server/exchange";
import { mutantsOf } from "../bench/mistakes/mutants";
import { between, comparing, planOf, reversed, SAMPLES } from "../changes/pairs";
import { readStrictly } from "../sheet/strict-markup";
import { madePlan, SOME } from "./plans";

const texts = readdirSync(SAMPLES)
  .filter((name) => name.endsWith(".sawbuck"))
  .map((name) => readFileSync(join(SAMPLES, name), "utf8"));
const anyPlan = fc.oneof(madePlan, fc.constantFrom(...texts));

/** A sample, and the same with one thing in it changed. */
const changed = fc.tuple(fc.constantFrom(...texts), fc.nat(), fc.nat()).map(([text, seed, which]) => {
  let state = seed;
  const next = (): number => {
    state = (state * 1103515245 + 12345) % 2 ** 31;
    return state / 2 ** 31;
  };
  const mutants = mutantsOf(text, next);
  return [text, mutants[which % mutants.length]?.text ?? text] as const;
});
const runs = { numRuns: Math.ceil(SOME / 3) };

describe("a comparison", () => {
  test("of a plan with itself is empty", () => {
    fc.assert(
      fc.property(anyPlan, (text) => {
        const { same, ...changes } = between(text, text);
        expect(same).toBe(true);
        const lists = Object.values(changes).flatMap((list): readonly unknown[] => {
          if (Array.isArray(list)) return [list];
          const { old, new: now } = list as { readonly old?: unknown; readonly new?: unknown };
          return Array.isArray(old) ? [old, now] : [];
        });
        expect(lists.length).toBe(15);
        expect(lists.flat()).toEqual([]);
      }),
      runs,
    );
  });

  test("the other way round is its own reverse", () => {
    let differed = 0;
    fc.assert(
      fc.property(fc.oneof(changed, fc.tuple(madePlan, madePlan)), ([old, now]) => {
        const [first, second] = [old, now].map((text) => planOf(text).worked.settings.display);
        fc.pre(first!.system === second!.system);
        const there = between(old, now);
        if (!there.same) differed++;
        expect(reversed(there)).toEqual(between(now, old));
      }),
      runs,
    );
    expect(differed).toBeGreaterThan(runs.numRuns / 3);
  });

  test("lets no text of a plan out of its page", () => {
    fc.assert(
      fc.property(changed, fc.constantFrom("<b>&", "</style>", '" onload="', "]]>"), ([old, now], evil) => {
        const say = (text: string): string => `${text.replace(/^plan .*$/m, `plan ${evil}`)}\nnote ${evil}\n`;
        const page = writeComparisons([comparing(old, say(now))], "html");
        expect(readStrictly(page).texts.join("\n")).toContain(evil);
      }),
      { numRuns: Math.ceil(SOME / 20) },
    );
  });
});
