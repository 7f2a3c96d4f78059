/** What was worked out lately changes nothing: after any edits a plan is the one of a process that has just begun. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Reader } from "../../server/plan";
import { evaluate, sheetOf, writeSheet } from "../../server/service";
import { forgetAll, Lately } from "../../server/worked/lately";
import { planOf } from "../bench/plan";
import { RUNS, SAMPLES } from "./plans";

const shop = SAMPLES.find((s) => s.startsWith("# What the yard"))!;
const shopOnly: Reader = (path) =>
  path.includes("shop") ? { file: path, text: shop } : { file: path, refused: "there is no such file" };

/** Everything that is told of a plan. */
function told(text: string): string {
  const result = evaluate("plan.sawbuck", text, shopOnly);
  const problems = JSON.stringify(result.problems, (_, v) => (typeof v === "bigint" ? `${v}` : v));
  return problems + writeSheet(sheetOf(result), "json");
}

/** One number of a plan made a little more or less: a length, a count, a price, a size of a screw or of a board. */
const numberChanged = (text: string, which: number, by: number): string => {
  const numbers = [...text.matchAll(/\d+/g)];
  const { index, 0: old } = numbers[which % numbers.length]!;
  return text.slice(0, index) + Math.max(0, Number(old) + by) + text.slice(index + old.length);
};

const many = fc.array(fc.tuple(fc.nat(), fc.integer({ min: -3, max: 3 })), { minLength: 1, maxLength: 6 });

test("a warm run equals a fresh one", () => {
  fc.assert(
    fc.property(fc.constantFrom(...SAMPLES, planOf(39)), many, (start, edits) => {
      const texts = [start];
      for (const [which, by] of edits) texts.push(numberChanged(texts.at(-1)!, which, by));
      const warm = texts.map(told);
      texts.forEach((text, i) => {
        forgetAll();
        expect(warm[i]).toBe(told(text));
      });
    }),
    { numRuns: Math.ceil(RUNS / 20) },
  );
});

/** One stand of the plan for the bench: it tips over. */
const STAND = planOf(182).replace(/# thing 0\n[\s\S]*(?=# thing 12\n)/, "");

test("plans that differ in one number, one after the other, are told as each alone", () => {
  const count = STAND.match(/\d+/g)!.length;
  const texts = Array.from({ length: count }, (_, i) =>
    [-1, 1].map((by) => numberChanged(STAND, i, by)),
  ).flat();
  forgetAll();
  const warm = texts.map(told);
  for (const word of ["tips-over", "wider", "lower", "offcut"])
    expect(warm.filter((w) => w.includes(`"${word}"`)).length, word).toBeGreaterThan(count / 2);
  texts.forEach((text, i) => {
    forgetAll();
    expect(warm[i] === told(text), text).toBe(true);
  });
});

test("the last ones are kept, once worked out, and the first are forgotten", () => {
  const lately = new Lately<number | undefined>(2);
  const done: string[] = [];
  const of = (key: string): number | undefined =>
    lately.of(key, () => {
      done.push(key);
      return key === "none" ? undefined : key.length;
    });
  for (const key of ["none", "a", "a", "none"]) expect(of(key)).toBe(key === "none" ? undefined : 1);
  expect(done).toEqual(["none", "a"]);
  // What is asked for again outlives what is not.
  for (const key of ["bb", "a", "ccc", "a", "none"]) of(key);
  expect(done).toEqual(["none", "a", "bb", "ccc", "none"]);
  lately.forget();
  expect(of("a")).toBe(1);
  expect(done.at(-1)).toBe("a");
});
