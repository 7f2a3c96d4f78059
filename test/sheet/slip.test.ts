/** Measuring-up slips: which rows, where each is seen, and what somebody may type. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { adapt } from "../../server/exchange";
import { evaluate } from "../../server/service";
import { asMeasured } from "../../server/sheet/slip/measured";
import { slipOf } from "../../server/slips";
import { ANGLE, LENGTH, readLiteral, roughly } from "../../server/units";

const read = (file: string) => ({ file, refused: "there is no such file" });
const HEAD = 'plan Stand\n  language 1\n  units inches to 1/16"\n';

function ofText(text: string) {
  const e = evaluate("stand.sawbuck", text, read);
  const { rows, spans } = slipOf(e, read);
  return { e, rows: rows.map(({ what }) => what), spans };
}

const STAND = `${HEAD}  space 40" wide, 60" high
measure tall = 28", at least 20", at most 36"
measure wide = 30"
measure deep = 16"
measure gap = (wide - 2 * 3-1/2") / 2
measure lean = 12°
measure rails = 2
part leg of 2x4, length tall
part rail of 1x4, length overall width of legs
place leg upright, wide face front, on floor, at each corner of wide x deep
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
`;

describe("the rows", () => {
  test("are what was measured: the place first, then lengths and angles that follow from nothing else", () => {
    const { rows } = ofText(STAND);
    expect(rows).toEqual(["width of space", "height of space", "tall", "wide", "deep", "lean"]);
  });

  test("carry the bounds", () => {
    const [row] = ofText(STAND).e.worked.measures.values();
    expect(row?.bounds.map(({ value }) => value.approx / 25.4)).toEqual([20, 36]);
  });
});

describe("where a measure is seen", () => {
  const { spans } = ofText(STAND);
  const inches = (what: string) => {
    const span = spans.get(what);
    return span && [span.axis, (span.to - span.from) / 25.4];
  };

  test("is between faces that are as far apart, and move apart with it", () => {
    expect(inches("tall")).toEqual([2, expect.closeTo(28, 6)]);
    expect(inches("wide")).toEqual([0, expect.closeTo(30, 6)]);
    expect(inches("deep")).toEqual([1, expect.closeTo(16, 6)]);
  });

  test("is nowhere for what is no distance on the thing, even where some distance is the same by chance", () => {
    expect(inches("lean")).toBeUndefined();
    const { spans: chance } = ofText(STAND.replace("measure rails = 2", 'measure near = 28"'));
    expect(chance.has("near")).toBe(false);
  });

  test("follows any size", () => {
    fc.assert(
      fc.property(fc.integer({ min: 160, max: 640 }), fc.integer({ min: 200, max: 900 }), (tall, wide) => {
        const text = STAND.replace('tall = 28"', `tall = ${tall}/16"`).replace(
          'wide = 30"',
          `wide = ${wide}/16"`,
        );
        const { spans: found } = ofText(text);
        const reach = (what: string) => {
          const { from, to } = found.get(what)!;
          return ((to - from) / 25.4) * 16;
        };
        expect([reach("tall"), reach("wide")]).toEqual([expect.closeTo(tall, 6), expect.closeTo(wide, 6)]);
      }),
      { numRuns: 25 },
    );
  });
});

describe("what is typed", () => {
  const length = roughly(LENGTH, 100);
  test.each([
    ["28", '28"', "28 mm"],
    ["28 1/2", '28-1/2"', "28-1/2 mm"],
    ["28,5", '28.5"', "28.5 mm"],
    [" 28-1/2” ", '28-1/2"', '28-1/2"'],
    ["7′ 3″", "7' 3\"", "7' 3\""],
    ["715 mm", "715 mm", "715 mm"],
    ['2 * 14"', '2 * 14"', '2 * 14"'],
    ["twenty", undefined, undefined],
    ["wide", undefined, undefined],
    ['28"\npart x', undefined, undefined],
    ['28", at least 2"', undefined, undefined],
    ['28" # mine', undefined, undefined],
    ["-", undefined, undefined],
  ])("%j", (typed, inches, millimetres) => {
    expect([asMeasured(typed, length, "inches"), asMeasured(typed, length, "millimetres")]).toEqual([
      inches,
      millimetres,
    ]);
  });

  test("an angle alone is in degrees", () => {
    expect(asMeasured("22.5", roughly(ANGLE, 1), "inches")).toBe("22.5°");
  });

  test("whatever it is, it becomes one value, or none", () => {
    fc.assert(
      fc.property(fc.string(), (typed) => {
        const text = asMeasured(typed, length, "inches");
        if (text === undefined) return;
        const made = adapt("stand.sawbuck", STAND, read, [{ kind: "set", what: "tall", value: text }]);
        expect(made).not.toHaveProperty("refused");
      }),
    );
    expect(readLiteral(asMeasured("28 1/2", length, "inches")!)?.approx).toBeCloseTo(723.9, 9);
  });
});
