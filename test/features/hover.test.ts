/** Every hover of three plans word for word, and what must be true of them whatever the words. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hoverAt } from "../../server/features/hover";
import type { Evaluated } from "../../server/service";
import { atCaret, fixture, worked } from "./plans";

const files = { "shop.sawbuck": fixture("shop") };

/** All hovers of a plan in the order of its text, each place once, told with its line. */
function allHovers(plan: Evaluated): string {
  const { text } = plan;
  const told: string[] = [];
  let last = -1;
  for (let offset = 0; offset < text.length; offset++) {
    const hover = hoverAt(plan, offset);
    if (!hover || hover.range.start === last || offset >= hover.range.end) continue;
    last = hover.range.start;
    const line = text.slice(0, last).split("\n").length;
    told.push(`===== line ${line}: ${text.slice(last, hover.range.end)}\n\n${hover.markdown}\n`);
  }
  return told.join("\n");
}

const told = (marked: string): string => {
  const { plan, offset } = atCaret(marked, files);
  return hoverAt(plan, offset)?.markdown ?? "";
};

describe("every hover", () => {
  test.each(["inches", "metric", "gaps", "placed", "finished"])("of the plan %s", async (name) => {
    const hovers = allHovers(worked(fixture(name), files));
    await expect(hovers).toMatchFileSnapshot(`snapshots/hover-${name}.txt`);
  });

  test("of the shop file opened by itself", async () => {
    await expect(allHovers(worked(fixture("shop")))).toMatchFileSnapshot("snapshots/hover-shop.txt");
  });
});

describe("what a hover tells", () => {
  test('a length follows from others: 30" less 3/4" is 29-1/4"', () => {
    const hover = told(`measure rim-height = 30"
part cap of 1x6, length 4'
part ‸leg 4 of 2x4, length rim-height - thickness of cap`);
    expect(hover).toContain('**29-1/4" (743 mm)**');
    expect(hover).toContain('rim-height - thickness of cap = 30" - 3/4" = 29-1/4"');
  });

  test("45° at both ends take twice the width off the short side (common practice)", () => {
    const hover = told('part ‸cap 2 of 1x4, length 50" long point to long point, ends mitered 45°');
    // A 1x4 is 3-1/2" wide (PS 20-20, dressed dry): 50 - 2 * 3-1/2.
    expect(hover).toContain(
      'Long point to long point 50" (1270 mm), short point to short point 43" (1092 mm)',
    );
  });

  test('a 1-1/4" screw through two 1/2" boards stands 1/4" proud (common practice)', () => {
    const hover = told(`stock thin, actual 1/2" x 4"
part a 1 of thin, length 12"
part b 1 of thin, length 12"
‸fasten a face into b face, 2 #8 x 1-1/4" in all`);
    expect(hover).toContain('its tip comes out 1/4" proud');
  });

  test("a step tells what is new in it, what is driven, how long and by how many", () => {
    const stand = (steps: string): string => `part leg of 2x4, length 20"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
step Stand the legs up
  uses leg
${steps}`;
    const hover = told(stand("step Join ‸them\n  uses rail\n  takes 1.5 h, 2 people\n  wait 10 min"));
    expect(hover).toBe(`**Step 2 of 2**

- New: 2 rail
- Screws: 8, of rail into leg
- Takes 1.5 h, then wait 10 min, 2 people`);
    expect(told(stand("‸step Join them\n  uses rail"))).toContain(
      "- New: 2 rail\n- Screws: 8, of rail into leg",
    );
  });

  test("parentheses are kept where they matter", () => {
    const hover = told('measure a = 9"\nmeasure ‸b = 2 * (a - 1") - (a - (2" - 1")) / 2');
    expect(hover).toContain(
      '2 * (a - 1") - (a - (2" - 1")) / 2 = 2 * (9" - 1") - (9" - (2" - 1")) / 2 = 12"',
    );
  });

  test("a floor's limit is used up, never passed or safe", () => {
    const hover = told(`plan x
  floor limit 58 psf by the engineer of an invented hall
box ‸tub, inside 20" x 10" x 8", outline 24" x 14", filled with potting-mix, weighs 9 lb empty`);
    expect(hover).toMatch(/uses [\d.]+ of the 58 psf you typed/);
    expect(hover).toContain("estimate");
  });

  test("just behind a word still tells of it", () => {
    expect(told('measure rim = 30"\npart leg 4 of 2x4, length rim‸')).toContain("**rim**, a measure");
  });

  test.each([
    ["words to people", 'plan A plan with le‸gs\npart leg 4 of 2x4, length 3"'],
    ["a comment", '# the le‸g\npart leg 4 of 2x4, length 3"'],
    ["an empty line", 'part leg 4 of 2x4, length 3"\n‸\n'],
    ["a reason", 'part leg 4 of 2x4, length 3"\nmust 3" at most 4" because the l‸eg'],
  ])("nothing on %s", (_, text) => {
    expect(told(text)).toBe("");
  });

  test("a plan's own words make no Markdown", () => {
    const hover = told(
      'part leg_a 4 of 2x4, length 3"\n‸must 3" at most 4" because *b* _c_ <i> [x](http://y) `z`',
    );
    expect(hover).toContain("Because \\*b\\* \\_c\\_ \\<i\\> \\[x\\](http\\://y) \\`z\\`");
  });
});

describe("no hover", () => {
  const every = ["inches", "metric", "gaps", "finished", "shop"].map((name) => worked(fixture(name), files));

  test("says what the tool must not say: OK, safe, pass", () => {
    for (const plan of every)
      expect(allHovers(plan)).not.toMatch(/\bOK\b|\b(?:is|are) safe\b|\bpass(?:es|ed)?\b/i);
  });

  test("reaches beyond the text or misses its own offset", () => {
    for (const plan of every) {
      for (let offset = -1; offset <= plan.text.length + 1; offset++) {
        const range = hoverAt(plan, offset)?.range;
        if (!range) continue;
        expect(range.start).toBeGreaterThanOrEqual(0);
        expect(range.end).toBeLessThanOrEqual(plan.text.length);
        expect(range.start <= offset && offset <= range.end).toBe(true);
      }
    }
  });

  test("throws on a plan cut, doubled or scrambled anywhere", () => {
    const text = fixture("inches");
    const at = fc.nat({ max: text.length });
    fc.assert(
      fc.property(at, at, at, fc.string({ maxLength: 6 }), (a, b, offset, junk) => {
        const plan = worked(text.slice(0, a) + junk + text.slice(b), files);
        hoverAt(plan, Math.min(offset, plan.text.length));
        hoverAt(plan, a);
      }),
      { numRuns: Number(process.env.FC_RUNS ?? 200) },
    );
  });
});
