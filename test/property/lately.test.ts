/** What was worked out lately changes nothing: after any edits a plan is the one of a process that has just begun. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Reader } from "../../server/plan";
import { evaluate, sheetOf, writeSheet } from "../../server/service";
import { forgetAll, Lately } from "../../server/worked/lately";
import { planOf } from "../bench/plan";
import { FEWER, SAMPLES } from "./plans";

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
    { numRuns: Math.ceil(FEWER / 20) },
  );
});

const SHELF = `plan Shelf in the shed
  indoors
stock 1x6, sold 6' $5.20, 8' $6.95
part leg of 2x4, length 15-1/4"
part slat of 1x6, length 40"
place leg upright, wide face front, on floor, at each corner of 40" x 5-1/2"
place slat across, flat, on legs, flush with left of legs, flush with front of legs
load slat 240 lb anywhere
`;

/** Plans, and what must show that what they are to try was tried: a stand of the plan for the bench tips over. */
const TRIED: readonly (readonly [name: string, plan: string, shows: readonly string[]])[] = [
  [
    "a stand",
    planOf(182).replace(/# thing 0\n[\s\S]*(?=# thing 12\n)/, ""),
    ["tips-over", "wider", "lower", "offcut"],
  ],
  ["a shelf", SHELF, ["too-weak", "cure", "offcut"]],
];

test.each(TRIED)("plans like that of %s, one after the other, are told as each alone", (_, plan, shows) => {
  const count = plan.match(/\d+/g)!.length;
  const changed = (by: number) => Array.from({ length: count }, (_, i) => numberChanged(plan, i, by));
  const texts = [...changed(-1), ...changed(1)];
  forgetAll();
  const warm = texts.map(told);
  for (const word of shows)
    expect(warm.filter((w) => w.includes(`"${word}"`)).length, word).toBeGreaterThan(count / 2);
  texts.forEach((text, i) => {
    forgetAll();
    expect(warm[i] === told(text), text).toBe(true);
  });
});

test("the last ones are kept, once worked out, and the first are forgotten", () => {
  const done: string[] = [];
  const lately = new Lately(2, (of: string): number | undefined => {
    done.push(of);
    return of === "none" ? undefined : of.length;
  });
  for (const of of ["none", "a", "a", "none"]) expect(lately.of(of)).toBe(of === "none" ? undefined : 1);
  expect(done).toEqual(["none", "a"]);
  // What is asked for again outlives what is not.
  for (const of of ["bb", "a", "ccc", "a", "none"]) lately.of(of);
  expect(done).toEqual(["none", "a", "bb", "ccc", "none"]);
  lately.forget();
  expect(lately.of("a")).toBe(1);
  expect(done.at(-1)).toBe("a");
});
