/** What must always hold, for any text: properties 1, 7 and 9 of the architecture. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "../../grammar/parser";
import type { Entry, Span } from "../../grammar/tree";
import type { Reader } from "../../server/plan";
import { evaluate, sheetOf } from "../../server/service";
import {
  exactly,
  fraction,
  INCH,
  LENGTH,
  lengthInFull,
  MILLIMETRES,
  readLiteral,
  SIXTEENTHS,
} from "../../server/units";
import { anyText, brokenSample, crossedPlan, madePlan, RUNS, SAMPLES } from "./plans";

const nothing: Reader = (path) => ({ file: path, refused: "there is no such file" });
const shop = SAMPLES.find((s) => s.startsWith("# What the yard"))!;
const shopOnly: Reader = (path) =>
  path.includes("shop") ? { file: path, text: shop } : nothing(path, "", undefined);

function spans(node: unknown, out: Span[] = []): Span[] {
  if (node === null || typeof node !== "object") return out;
  if ("start" in node && "end" in node) out.push(node as Span);
  for (const value of Object.values(node)) spans(value, out);
  return out;
}

function inside(text: string, list: readonly Span[]): void {
  for (const { start, end } of list) {
    if (!(start >= 0 && start <= end && end <= text.length))
      throw new Error(`${start}..${end} of ${text.length}`);
  }
}

describe("any text", () => {
  test("1. is read without throwing, and every range lies inside it", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const tree = parse(text);
        inside(text, spans(tree.entries as readonly Entry[]));
        inside(text, spans(tree.complaints));
        inside(text, spans(tree.comments));
      }),
      { numRuns: RUNS },
    );
  });

  test("1. is worked out, checked and drawn up without throwing, and every problem lies inside it", () => {
    let [worked, standing, total] = [0, 0, 0];
    fc.assert(
      fc.property(fc.oneof(madePlan, brokenSample, crossedPlan, anyText), (text) => {
        const result = evaluate("plan.sawbuck", text, shopOnly);
        const own = result.problems.filter((p) => p.at.file === "plan.sawbuck");
        inside(
          text,
          own.map((p) => p.at),
        );
        sheetOf(result);
        total++;
        if ([...result.worked.parts.values()].some((p) => p.needs.state === "known")) worked++;
        if (result.worked.pieces.all.length > 0) standing++;
      }),
      { numRuns: RUNS },
    );
    const share = (of: number): string => `${Math.round((100 * of) / total)}%`;
    console.log(
      `${total} plans, ${share(worked)} reached a worked-out piece, ${share(standing)} a placed one`,
    );
    expect(worked).toBeGreaterThan(total / 10);
    expect(standing).toBeGreaterThan(total / 5);
  });

  test("the same text gives the same sheet, byte for byte", () => {
    fc.assert(
      fc.property(fc.oneof(madePlan, brokenSample), (text) => {
        const once = JSON.stringify(sheetOf(evaluate("p.sawbuck", text, shopOnly)));
        expect(JSON.stringify(sheetOf(evaluate("p.sawbuck", text, shopOnly)))).toBe(once);
      }),
      { numRuns: Math.ceil(RUNS / 10) },
    );
  });
});

describe("7. lengths survive text -> value -> text", () => {
  test("every tape fraction to 1/64, in inches", () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.constantFrom(1, 2, 4, 8, 16, 32, 64), (top, bottom) => {
        const value = exactly(LENGTH, fraction.multiply(fraction.rational(top, bottom), INCH));
        const text = lengthInFull(value, SIXTEENTHS);
        const back = readLiteral(text)!;
        expect(back.exact).toEqual(value.exact);
        expect(lengthInFull(back, SIXTEENTHS)).toBe(text);
      }),
      { numRuns: RUNS },
    );
  });

  test("every millimetre, and a tenth", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), fc.constantFrom(1, 10), (top, bottom) => {
        const value = exactly(LENGTH, fraction.rational(top, bottom));
        const back = readLiteral(lengthInFull(value, MILLIMETRES))!;
        expect(back.exact).toEqual(value.exact);
      }),
      { numRuns: RUNS },
    );
  });

  test("feet and inches are the same length as inches", () => {
    fc.assert(
      fc.property(
        fc.nat(400),
        fc.integer({ min: 1, max: 11 }),
        fc.integer({ min: 1, max: 15 }),
        (feet, inches, sixteenths) => {
          const long = readLiteral(`${feet}' ${inches}-${sixteenths}/16"`)!;
          const short = readLiteral(`${feet * 12 + inches}-${sixteenths}/16"`)!;
          expect(long.exact).toEqual(short.exact);
        },
      ),
      { numRuns: RUNS },
    );
  });
});

describe("9. a plan of any size ends with a clear problem", () => {
  const codes = (text: string) => evaluate("plan.sawbuck", text, nothing).problems.map((p) => p.code);

  test("five million characters", () => {
    expect(codes(`note ${"x".repeat(5_000_000)}`)).toEqual(["too-big"]);
  });

  test("a million copies", () => {
    expect(codes('plan A\n  make 1000000\npart leg 4 of 2x4, length 9"\n')).toEqual(["too-many"]);
  });

  test("more pieces than are worked with", () => {
    expect(codes('part leg 20001 of 2x4, length 9"\n')).toEqual(["too-many"]);
    expect(codes('plan A\n  make 1000\npart leg 21 of 2x4, length 9"\n')).toEqual(["too-many"]);
  });

  test("parentheses, minus signs and sums without end", () => {
    expect(
      codes(`measure a = ${"(".repeat(5000)}1"${")".repeat(5000)}\npart b 1 of 2x4, length a\n`),
    ).toContain("too-deep");
    expect(codes(`measure a = ${"-".repeat(5000)}1"\npart b 1 of 2x4, length a\n`)).toContain("too-deep");
    expect(codes(`measure a = 1"${' + 1"'.repeat(20_000)}\npart b 1 of 2x4, length a\n`)).toEqual([
      "too-deep",
    ]);
  });

  test("measures that lean on one another a thousand deep", () => {
    const lines = Array.from({ length: 3000 }, (_, i) => `measure m${i} = m${i + 1} + 1"`);
    expect(codes(`${lines.join("\n")}\nmeasure m3000 = 1"\npart b 1 of 2x4, length m0\n`)).toContain(
      "impossible-value",
    );
  });

  test("a file that brings itself, and two that bring each other", () => {
    const read: Reader = (path) => ({
      file: path,
      text: path === "b.sawbuck" ? "bring a.sawbuck\n" : "bring b.sawbuck\n",
    });
    const self = evaluate("a.sawbuck", "bring a.sawbuck\n", read);
    expect(self.problems.map((p) => p.code)).toEqual(["in-a-circle"]);
    const two = evaluate("a.sawbuck", "bring b.sawbuck\n", read);
    expect(two.problems.map((p) => p.code)).toEqual(["in-a-circle"]);
  });
});
