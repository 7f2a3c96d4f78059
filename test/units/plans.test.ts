/** Whole plans in inches read in millimetres, and the other way: each length true to the mark of the tape it is shown on. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Reader } from "../../server/plan";
import { type Evaluated, evaluate, inUnits, sheetOf, writeSheet } from "../../server/service";
import { section, sectionNames } from "../../server/trade";
import { readLiteral } from "../../server/units";
import { madePlan, SAMPLES, SOME } from "../property/plans";
import { ALL } from "../sheet/samples";
import {
  apart,
  decimal,
  type Fraction,
  INCH,
  less,
  MM,
  nearest,
  of,
  plus,
  SIXTEENTH,
  same,
  shown,
  times,
} from "./fractions";

const shop = SAMPLES.find((s) => s.startsWith("# What the yard"))!;
const shopOnly: Reader = (path) =>
  path.includes("shop") ? { file: path, text: shop } : { file: path, refused: "there is no such file" };

type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** What another program reads of the sheet. */
const jsonOf = (plan: Evaluated): { readonly [key: string]: Json } =>
  JSON.parse(writeSheet(sheetOf(plan), "json"), (_, value: Json) =>
    Array.isArray(value) ? value.filter((one) => !(typeof one === "string" && OF_FINISH.test(one))) : value,
  );

/** Told only where two amounts of finish do not look alike, which they may in quarts and not in litres. */
const OF_FINISH = /^or, where the finish goes farther/;

const LENGTH = /(?<![\w.'"/-])-?(?:(?:\d+-)?\d+\/\d+"|\d+(?:\.\d+)?(?:"|'(?![\w])| ?mm\b))/g;
const AMOUNT =
  /-?\d+(?:\.\d+)? (?:lb\/cuft|kg\/m3|lb|kg|sqft per gal|m2 per L|sqft|m2|cuft|L|qt|gal|psf|kPa)(?![\w])/g;
const LEAST = of(1, 1_000_000);

interface Tally {
  lengths: number;
  texts: number;
}

/** What a number of the sheet stands for: as it is written, or to a millionth of a mm where it is no round one. */
const meant = (mm: number): Fraction[] => [decimal(String(mm)), decimal(mm.toFixed(6))];

function trueTo(mm: number, text: string, mark: Fraction, where: string): void {
  const [is, round] = meant(mm) as [Fraction, Fraction];
  const says = shown(text);
  const read = readLiteral(text.replace(/^-/, ""))!.exact!;
  expect(same(of(read.n, read.d), apart(says, of(0))), `${where}: ${text} is read otherwise`).toBe(true);
  const most = plus(times(mark, of(1, 2)), LEAST);
  expect(less(most, apart(says, is)), `${where}: ${text} for ${mm} mm`).toBe(false);
  const right = same(says, nearest(is, mark)) || same(says, nearest(round, mark));
  expect(right, `${where}: ${text} is not the mark nearest to ${mm} mm`).toBe(true);
}

interface Marked {
  readonly mm: number;
  readonly text: string;
  readonly other: string;
}

const isMarked = (a: Json): a is Json & Marked =>
  typeof a === "object" && a !== null && "mm" in a && "other" in a;

/** The sheet in inches against that in millimetres, each to the marks given. */
function compare(inch: Json, metric: Json, marks: Marks, where: string, tally: Tally): void {
  if (isMarked(inch) && isMarked(metric)) {
    tally.lengths++;
    expect(metric.mm, where).toBe(inch.mm);
    if (/\.gaps\.\d+\.\w+$/.test(where)) gap(inch, metric, marks, where);
    else {
      trueTo(inch.mm, inch.text, marks.inch, where);
      trueTo(inch.mm, metric.text, marks.mm, where);
    }
    trueTo(inch.mm, inch.other, MM, where);
    trueTo(inch.mm, metric.other, SIXTEENTH, where);
  } else if (typeof inch === "string" && typeof metric === "string") {
    texts(inch, metric, marks, where, tally);
  } else if (typeof inch === "object" && inch !== null && typeof metric === "object" && metric !== null) {
    expect(Object.keys(metric), where).toEqual(Object.keys(inch));
    for (const key of Object.keys(inch))
      compare((inch as never)[key], (metric as never)[key], marks, `${where}.${key}`, tally);
  } else expect(metric, where).toBe(inch);
}

/** Gaps that change through the year are shown to half a mark, or to be under it. */
function gap(inch: Marked, metric: Marked, marks: Marks, where: string): void {
  for (const [{ mm, text }, mark] of [
    [inch, times(marks.inch, of(1, 2))],
    [metric, times(marks.mm, of(1, 2))],
  ] as const) {
    const under = /^under (.*)$/.exec(text)?.[1];
    if (under === undefined) trueTo(mm, text, mark, where);
    else {
      expect(same(shown(under), mark), `${where}: ${text}`).toBe(true);
      expect(same(nearest(decimal(String(mm)), mark), of(0)), `${where}: ${text}`).toBe(true);
    }
  }
}

interface Marks {
  readonly inch: Fraction;
  readonly mm: Fraction;
}

/** Told where a set of bits has none so thin, which one set may have and the other not. */
const HEADLESS = /a nail without its head|no bit of a usual set is thin enough/;

/** Sentences that say the same, whose lengths are as near to each other as two roundings leave them. */
function texts(inch: string, metric: string, marks: Marks, where: string, tally: Tally): void {
  if (inch === metric || HEADLESS.test(inch) || HEADLESS.test(metric)) return;
  const bare = (text: string) => text.replace(LENGTH, "□").replace(AMOUNT, "◇").replaceAll("about □", "□");
  expect.soft(bare(metric), where).toBe(bare(inch));
  const most = times(plus(marks.inch, marks.mm), of(1, 2));
  const [a, b] = [inch, metric].map((text) => [...text.matchAll(LENGTH)].map(([length]) => shown(length)));
  for (const [i, length] of a!.entries()) {
    tally.texts++;
    const off = b![i] === undefined || less(plus(most, LEAST), apart(length, b![i]!));
    expect.soft(off, `${where}: ${inch} | ${metric}`).toBe(false);
  }
}

function markOf(plan: Evaluated): Fraction {
  const { n, d } = plan.worked.settings.display.mark;
  return of(n, d);
}

function inBoth(plan: Evaluated, where: string, tally: Tally): void {
  const [inch, metric] = [inUnits(plan, "inches"), inUnits(plan, "millimetres")];
  const marks = { inch: markOf(inch), mm: markOf(metric) };
  const { units: a, ...rest } = jsonOf(inch);
  const { units: b, ...other } = jsonOf(metric);
  expect([a, b]).toMatchObject([{ system: "inches" }, { system: "millimetres" }]);
  compare(rest, other, marks, where, tally);
}

describe("the sheet in inches and in millimetres", () => {
  test("of every sample and every mistake", () => {
    const tally = { lengths: 0, texts: 0 };
    for (const { name, evaluated } of ALL) inBoth(evaluated(), name, tally);
    expect(tally.lengths).toBeGreaterThan(1_500);
    expect(tally.texts).toBeGreaterThan(1_500);
  });

  test("of plans made at random", () => {
    const tally = { lengths: 0, texts: 0 };
    fc.assert(
      fc.property(madePlan, (text) => inBoth(evaluate("plan.sawbuck", text, shopOnly), text, tally)),
      { numRuns: Math.ceil(SOME / 3) },
    );
    expect(tally.lengths).toBeGreaterThan(SOME);
  });
});

/** Typed, and what it is: fractions that lie on marks, halfway between two, and on none in either system. */
const length: fc.Arbitrary<{ readonly typed: string; readonly is: Fraction }> = fc
  .tuple(
    fc.integer({ min: 1, max: 90 }),
    fc.constantFrom(1, 2, 3, 7, 16, 32, 64, 127, 256),
    fc.constantFrom({ unit: '"', size: INCH }, { unit: "mm", size: MM }),
  )
  .chain(([most, d, { unit, size }]) =>
    fc.integer({ min: d, max: most * d }).map((n) => ({
      typed: `${n}/${d}${unit}`,
      is: times(of(n, d), size),
    })),
  );
const HALFWAY = { typed: '321/32"', is: times(of(321, 32), INCH) };
const marks = fc.constantFrom(
  { units: 'inches to 1/16"', mark: SIXTEENTH },
  { units: 'inches to 1/8"', mark: times(INCH, of(1, 8)) },
  { units: 'inches to 1/64"', mark: times(INCH, of(1, 64)) },
  { units: "millimetres", mark: MM },
  { units: "millimetres to 0.5mm", mark: of(1, 2) },
  { units: "millimetres to 0.125mm", mark: of(1, 8) },
  { units: 'millimetres to 1/16"', mark: SIXTEENTH },
);

test("a length is cut at the mark nearest to it, at the further one where it is halfway", () => {
  let halfway = 0;
  fc.assert(
    fc.property(length, marks, ({ typed, is }, { units, mark }) => {
      const plan = evaluate(
        "plan.sawbuck",
        `plan A rail\n  units ${units}\npart rail 1 of 2x4, length ${typed}\n`,
        shopOnly,
      );
      const own = markOf(plan);
      expect(same(own, mark)).toBe(true);
      if (same(times(apart(is, nearest(is, mark)), of(2)), mark)) halfway++;
      for (const system of ["inches", "millimetres"] as const) {
        const read = inUnits(plan, system);
        const row = sheetOf(read).cutList[0]!.rows[0]!;
        const text = row.length!.text;
        expect(same(shown(text), nearest(is, markOf(read))), `${typed} as ${text}`).toBe(true);
      }
    }),
    { numRuns: SOME, examples: [[HALFWAY, { units: 'inches to 1/16"', mark: SIXTEENTH }]] },
  );
  expect(halfway).toBeGreaterThan(0);
});

/** Sizes by their tables, which `test/published/trade-sizes.test.ts` holds to what is printed elsewhere. */
describe.each([
  ["dry", "ps20-dry"],
  ["green", "ps20-green"],
  ["planed metric", "planed-metric"],
] as const)("lumber %s", (lumber, standard) => {
  test("each section is as its table says, in both units", () => {
    const names = sectionNames(standard);
    expect(names.length).toBeGreaterThan(10);
    const parts = names.map((name, i) => `part p${i} 1 of ${name}, length 1m`);
    const plan = evaluate(
      "plan.sawbuck",
      `plan All sizes\n  lumber ${lumber}\n${parts.join("\n")}\n`,
      shopOnly,
    );
    for (const system of ["inches", "millimetres"] as const) {
      const groups = sheetOf(inUnits(plan, system)).cutList;
      expect(groups.map(({ stock }) => stock)).toEqual(names);
      for (const { stock, rows } of groups) {
        const row = section(stock, standard)!;
        for (const side of ["thickness", "width"] as const) {
          const value = row[side];
          const is = typeof value === "number" ? decimal(String(value)) : shown(`${value}"`);
          const { mm, text } = rows[0]![side]!;
          expect(mm, `${side} of ${stock}`).toBe(Number(is.n) / Number(is.d));
          const mark = system === "inches" ? SIXTEENTH : MM;
          expect(same(shown(text), nearest(is, mark)), `${side} of ${stock}: ${text}`).toBe(true);
        }
      }
    }
  });
});
