/** Hints as they stand in the text, whole samples and single lines, and what must be true of all of them. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Hint, type HintKinds, hintsOf, WIDEST_HINT } from "../../server/features/hints";
import { hoverAt } from "../../server/features/hover";
import { diskReader } from "../../server/lsp/disk";
import { type Evaluated, evaluate } from "../../server/service";
import { LENGTH, lengthText, readLiteral, sameDimension } from "../../server/units";
import { anyText, SAMPLES, SOME } from "../property/plans";
import { fixture, worked } from "./plans";

const BOTH: HintKinds = { lengths: true, counts: true };
const SHOP = { "shop.sawbuck": fixture("shop") };

/** A text with its hints in it, as an editor shows them. */
function shownIn(text: string, hints: readonly Hint[]): string {
  return hints.toReversed().reduce((all, { offset, text: label }) => {
    return `${all.slice(0, offset)}⟨${label}⟩${all.slice(offset)}`;
  }, text);
}

const all = (plan: Evaluated): Hint[] => hintsOf(plan, { start: 0, end: plan.text.length }, BOTH);
const shown = (text: string): string => {
  const plan = worked(text, SHOP);
  return shownIn(text, all(plan));
};
/** The last line of a plan with its hints. */
const lastLine = (text: string): string => shown(text).trimEnd().split("\n").pop()!;

const sample = (name: string): Evaluated => {
  const file = new URL(`../../samples/${name}.sawbuck`, import.meta.url).pathname;
  return evaluate(file, readFileSync(file, "utf8"), diskReader);
};
const NAMES = [
  "cold-frame",
  "post-stand",
  "potting-bench",
  "reading-shelf",
  "salad-trough",
  "school-gate",
  "slope-planter",
  "tree-seat",
  "yard-measures",
];

describe("every hint", () => {
  test.each(NAMES)("of the sample %s", async (name) => {
    const plan = sample(name);
    await expect(shownIn(plan.text, all(plan))).toMatchFileSnapshot(`snapshots/hints-${name}.txt`);
  });
});

const LEGS = `part leg of 2x4, length 20"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
`;

describe("a hint tells", () => {
  test("what a measure comes to, and nothing of one that is plainly typed", () => {
    expect(shown('measure a = 30"\nmeasure b = (a - 3/4")\nmeasure c = -2"\nmeasure d = a')).toBe(
      'measure a = 30"\nmeasure b = (a - 3/4")⟨= 29-1/4"⟩\nmeasure c = -2"\nmeasure d = a⟨= 30"⟩',
    );
  });

  test("a figure that the plan's marks round, as about that", () => {
    // 48 / 7 is 6.857, which lies nearest to 6-7/8 on a tape of sixteenths.
    expect(lastLine('measure third = 48" / 7')).toBe('measure third = 48" / 7⟨= about 6-7/8"⟩');
    expect(lastLine("plan A\n  units mm\nmeasure a = diagonal(30mm, 40mm)")).toContain("⟨= about 50 mm⟩");
    expect(lastLine("measure few = 1 / 3")).toBe("measure few = 1 / 3⟨= about 0.333⟩");
    expect(lastLine("measure less = 1 - 3")).toBe("measure less = 1 - 3⟨= -2⟩");
    expect(lastLine("measure slope = 60° / 8")).toBe("measure slope = 60° / 8⟨= 7.5°⟩");
  });

  test("how many pieces its places take, and not what is typed", () => {
    expect(shown(LEGS)).toContain("part leg of 2x4⟨4 of them⟩, length");
    expect(shown(LEGS.replace("part leg of", "part leg 4 of"))).not.toContain("⟨");
    expect(lastLine('part board of 1x4, length 12", ends mitered 45°\nring r = board')).not.toContain(
      "of them",
    );
    expect(shown('part board of 1x4, length 12"\nplace board across, flat, on floor')).toContain("⟨just 1⟩");
  });

  test("a count that is worked out", () => {
    expect(lastLine('measure n = 3\npart a (n) of 1x4, length 5"')).toBe('part a (n)⟨= 3⟩ of 1x4, length 5"');
  });

  test("a width that is worked out, and what a piece is cut to before it is fitted", () => {
    const line = `part top 1 of 1x6, length 2 * 1', width 2 * 1-1/2", cut to fit plus 1/2"`;
    expect(lastLine(line)).toBe(
      `part top 1 of 1x6, length 2 * 1'⟨= 24"⟩, width 2 * 1-1/2"⟨= 3"⟩, cut to fit plus 1/2"⟨first cut 24-1/2"⟩`,
    );
    expect(lastLine('part top 1 of 1x6, length 24", cut to fit')).not.toContain("⟨");
  });

  test("which gap a spread row has, and how many fit", () => {
    const slats = `${LEGS}part slat of 1x4, length 12"\nplace slat front to back, flat, on legs, flush with front of legs`;
    // Between the legs there are 23": 30" less twice 3-1/2". Six slats leave 2" for five gaps.
    expect(lastLine(`${slats}, 6 across, spread between left legs and right legs`)).toMatch(
      /right legs⟨3\/8" apart⟩$|right legs⟨about 3\/8" apart⟩$/,
    );
    const fitted = `${slats}, as many as fit, 1/2" apart, between left legs and right legs`;
    expect(lastLine(fitted)).toContain('as many as fit, 1/2" apart⟨5⟩');
    expect(lastLine(`${slats}, flush with left of legs, 3 across, 1/2" apart`)).not.toContain("⟨");
    expect(lastLine(`${slats}, flush with left of legs, 3 across, 5" on center`)).not.toContain("⟨");
    expect(lastLine(`${slats}, flush with left of legs, 3 across, tight`)).not.toContain("⟨");
    expect(lastLine(`${slats}, flush with left of legs, 3 across, (1" / 2) apart`)).toContain('⟨1/2" apart⟩');
  });

  test("how many screws a line takes in all", () => {
    const rail = `${LEGS}part rail of 1x6, length 30"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
fasten rail into leg, `;
    expect(lastLine(`${rail}2 #8 x 1-5/8" at each crossing, pilot 3/32"`)).toBe(
      'fasten rail into leg, 2 #8 x 1-5/8" at each crossing⟨4 in all⟩, pilot 3/32"',
    );
    expect(lastLine(`${rail}8 #8 x 1-5/8" in all`)).not.toContain("⟨");
    expect(lastLine(`${rail}pilot 1/8"`)).not.toContain("⟨");
  });

  test("how much a box holds, and what a rule compares", () => {
    // 24 x 12 x 12 inches are 2 cubic feet.
    expect(lastLine('box tub, inside 24" x 12" x 12"')).toBe(
      'box tub⟨holds about 2 cuft⟩, inside 24" x 12" x 12"',
    );
    expect(lastLine('measure a = 30"\nmust a + 1" at most 2 * 16" because it fits')).toBe(
      'must a + 1"⟨= 31"⟩ at most 2 * 16"⟨= 32"⟩ because it fits',
    );
    expect(lastLine(`${LEGS}load legs 6 * 25 lb`)).toBe("load legs 6 * 25 lb⟨= 150 lb⟩");
  });

  test("the lines of an assembly too", () => {
    const plan = `part a of 1x4, length 10"\nassembly pair\n  place a across, flat, on floor, 2 deep, (1" * 2) apart\nplace pair`;
    expect(shown(plan)).toContain('(1" * 2) apart⟨2" apart⟩');
  });
});

describe("a hint is left out", () => {
  test("where the value is unknown, or a mistake stands in the way", () => {
    expect(shown('measure a = b + 1"\npart x of 1x4, length a\npart y of, length')).not.toContain("⟨");
    expect(lastLine("box tub, walls a and b")).not.toContain("⟨");
    expect(lastLine('part a of 1x4, length 10"\nfasten a into a, 2 #8 x 1" at each crossing')).not.toContain(
      "⟨",
    );
  });

  test("at a name that something else has already", () => {
    expect(shown('measure a = 1" + 1"\nmeasure a = 2" + 2"')).toBe(
      'measure a = 1" + 1"⟨= 2"⟩\nmeasure a = 2" + 2"',
    );
  });

  test("where its kind is not wanted, or its place not asked for", () => {
    const plan = worked(`${LEGS.replace('length 20"', 'length 2 * 10"')}measure a = 1" + 1"\n`);
    const text = (kinds: HintKinds, start = 0, end = plan.text.length) =>
      hintsOf(plan, { start, end }, kinds).map((h) => h.text);
    expect(text(BOTH)).toEqual(["4 of them", '= 20"', '= 2"']);
    expect(text({ lengths: true, counts: false })).toEqual(['= 20"', '= 2"']);
    expect(text({ lengths: false, counts: true })).toEqual(["4 of them"]);
    expect(text({ lengths: false, counts: false })).toEqual([]);
    const last = plan.text.indexOf("measure");
    expect(text(BOTH, last)).toEqual(['= 2"']);
    expect(text(BOTH, 0, last - 1)).toEqual(["4 of them", '= 20"']);
    // In the middle of a line only what stands there.
    expect(text(BOTH, 0, plan.text.indexOf(", length"))).toEqual(["4 of them"]);
  });

  test("where it would be too wide", () => {
    const plan = worked(`measure far = 1234567890123456789012345" * 2`);
    expect(all(plan)).toEqual([]);
  });
});

test("French hints", () => {
  const plan = worked(
    `${LEGS}part board of 1x4, length 48" / 7, cut to fit plus 1"
place board across, flat, on legs, flush with front of legs, flush with left of legs
part slat of 1x4, length 12"
place slat front to back, flat, on legs, flush with front of legs, as many as fit, at most 2" apart
  between left legs and right legs
fasten slat into leg, 2 #8 x 2" at each end
box tub, inside 24" x 12" x 12"
`,
  );
  const hints = hintsOf(plan, { start: 0, end: plan.text.length }, BOTH, "fr");
  expect(hints.map((h) => h.text)).toMatchInlineSnapshot(`
    [
      "4 pièces",
      "une seule",
      "= environ 6-7/8"",
      "d’abord environ 7-7/8"",
      "5 pièces",
      "5, jour 1-3/8"",
      "0 en tout",
      "contient environ 2 cuft",
    ]
  `);
});

describe("all hints", () => {
  test("of any text stand inside it, in order, in a line, and are narrow", () => {
    fc.assert(
      fc.property(anyText, fc.nat(), fc.nat(), (text, from, length) => {
        const plan = worked(text);
        const start = from % (text.length + 1);
        const end = Math.min(text.length, start + length);
        const hints = hintsOf(plan, { start, end }, BOTH, from % 2 === 0 ? "en" : "fr");
        let last = start;
        for (const one of hints) {
          expect(one.offset).toBeGreaterThanOrEqual(last);
          expect(one.offset).toBeLessThanOrEqual(end);
          expect(one.text.length).toBeLessThanOrEqual(WIDEST_HINT);
          expect(one.text).toMatch(/^\S.*\S$|^\S$/);
          last = one.offset;
        }
      }),
      { numRuns: SOME },
    );
  });

  test("of the samples are asked for piece by piece as they are in one", () => {
    const plan = sample("potting-bench");
    const lines = [...plan.text.matchAll(/[^\n]*\n/g)];
    const pieces = lines.flatMap((m) =>
      hintsOf(plan, { start: m.index, end: m.index + m[0].length - 1 }, BOTH),
    );
    expect(pieces).toEqual(all(plan));
    expect(SAMPLES.length).toBeGreaterThanOrEqual(NAMES.length);
  });

  test.each(NAMES)("of the sample %s say what a hover says at the same place", (name) => {
    const plan = sample(name);
    const { display } = plan.worked.settings;
    for (const one of all(plan)) {
      // Without the marks of Markdown. What a hint rounds, a hover may tell in full.
      const hover = hoverAt(plan, one.about)?.markdown.replaceAll("\\", "") ?? "";
      const told = [...hover.matchAll(/-?\d[\d/.-]*(?:"| mm|°| cuft| sqft| L)?/g)].flatMap(([figure]) => {
        const read = readLiteral(figure);
        return read && sameDimension(read.dim, LENGTH) ? [figure, lengthText(read, display)] : [figure];
      });
      const figure = /-?\d[\d/.-]*(?:"| mm|°| cuft| sqft| L)?/.exec(one.text)?.[0];
      expect(told, `${one.text} behind ${plan.text.slice(one.about, one.offset)}`).toContain(figure);
    }
  });
});
