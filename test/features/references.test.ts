/** Where else a name stands, marked in its own text. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { declaredAt, highlightsAt, mentionsIn, sizesMeant } from "../../server/features/references";
import { anyText, SOME } from "../property/plans";
import { atCaret, PLAN, unmarked, withMarks, worked } from "./plans";

const FILES = {
  "shop.sawbuck": `stock 2x4, sold 8' $4
fastener deck-mid, #8 x 1-5/8" screw, box of 100 $8
`,
  "yard.sawbuck": 'measure rim = 30"\npart rail 2 of 2x4, length rim\n',
};

/** The text with all that is marked while the cursor is where it stands. */
function marked(text: string): string {
  const { plan, offset } = atCaret(text, FILES);
  return withMarks(plan.text, highlightsAt(plan, offset));
}

describe("marked in the text", () => {
  test("a part with its plurals, in every clause that names it, but no words to people", () => {
    expect(
      marked(`part le‸g 4 of 2x4, length 20"
part rail 2 of 2x4, length width of legs + length of leg
place leg upright, on floor, at each corner of 20" x 20"
place rail across, on front legs, flush with left of front left leg
fasten rail into leg, 2 #8 x 2" at each crossing # the leg
step Stand the legs up
  uses leg and rails
`),
    ).toMatchInlineSnapshot(`
      "part ⟦leg⟧ 4 of 2x4, length 20"
      part rail 2 of 2x4, length width of ⟦legs⟧ + length of ⟦leg⟧
      place ⟦leg⟧ upright, on floor, at each corner of 20" x 20"
      place rail across, on front ⟦legs⟧, flush with left of front left ⟦leg⟧
      fasten rail into ⟦leg⟧, 2 #8 x 2" at each crossing # the leg
      step Stand the legs up
        uses ⟦leg⟧ and rails
      "
    `);
  });

  test("a shelf with its shelves", () => {
    expect(marked('part shelf 2 of 1x6, length 20"\nstep Do\n  uses sh‸elves\n')).toMatchInlineSnapshot(`
      "part ⟦shelf⟧ 2 of 1x6, length 20"
      step Do
        uses ⟦shelves⟧
      "
    `);
  });

  test("a section, however its sign is written", () => {
    expect(
      marked('shop shop.sawbuck\npart leg of 2‸x4, length thickness of 2×4\npart rail of 2x4, length 5"\n'),
    ).toMatchInlineSnapshot(`
      "shop shop.sawbuck
      part leg of ⟦2x4⟧, length thickness of ⟦2×4⟧
      part rail of ⟦2x4⟧, length 5"
      "
    `);
  });

  test("a section that no line declares, and a fill that is built in", () => {
    expect(marked('part leg of 2x‸6, length 9"\npart rail of 2x6, length 9"\n')).toMatchInlineSnapshot(`
      "part leg of ⟦2x6⟧, length 9"
      part rail of ⟦2x6⟧, length 9"
      "
    `);
    expect(
      marked(`box a, inside 9" x 9" x 9", filled with pot‸ting-mix
box b, inside 9" x 9" x 9", filled with potting-mix
box c, inside 9" x 9" x 9", filled with soil
`),
    ).toMatchInlineSnapshot(`
      "box a, inside 9" x 9" x 9", filled with ⟦potting-mix⟧
      box b, inside 9" x 9" x 9", filled with ⟦potting-mix⟧
      box c, inside 9" x 9" x 9", filled with soil
      "
    `);
  });

  test("a fastener, also where a joint gives its size instead", () => {
    expect(
      marked(`shop shop.sawbuck
part leg 4 of 2x4, length 20"
part rail 2 of 2x4, length 20"
fasten rail into leg, 2 deck‸-mid at each crossing
fasten leg into rail, 2 #8 x 1-5/8" at each crossing
fasten leg into rail, 2 #8 x 2" at each crossing
`),
    ).toMatchInlineSnapshot(`
      "shop shop.sawbuck
      part leg 4 of 2x4, length 20"
      part rail 2 of 2x4, length 20"
      fasten rail into leg, 2 ⟦deck-mid⟧ at each crossing
      fasten leg into rail, 2 ⟦#8 x 1-5/8"⟧ at each crossing
      fasten leg into rail, 2 #8 x 2" at each crossing
      "
    `);
  });

  test("a measure in sums, bounds and rules", () => {
    expect(
      marked(`measure rim = 30"
measure low = ‸rim - 2", at most rim
part leg of 2x4, length (rim - low) * 2
must rim at most 32" because the rim must be low
`),
    ).toMatchInlineSnapshot(`
      "measure ⟦rim⟧ = 30"
      measure low = ⟦rim⟧ - 2", at most ⟦rim⟧
      part leg of 2x4, length (⟦rim⟧ - low) * 2
      must ⟦rim⟧ at most 32" because the rim must be low
      "
    `);
  });

  test("inside an assembly", () => {
    expect(
      marked(`part leg of 2x4, length 9"
assembly gable
  place l‸eg upright, on floor, 0 from left, 0 from front
  place leg upright, on floor, 0 from left, 3" behind leg
`),
    ).toMatchInlineSnapshot(`
      "part ⟦leg⟧ of 2x4, length 9"
      assembly gable
        place ⟦leg⟧ upright, on floor, 0 from left, 0 from front
        place ⟦leg⟧ upright, on floor, 0 from left, 3" behind ⟦leg⟧
      "
    `);
  });

  test.each([
    ["a word of the language", 'part leg of 2x4, len‸gth 9"'],
    ["words to people", "step Stand the l‸eg up"],
    ["a note", "# the l‸eg\npart leg of 2x4"],
    ["nothing", "\n‸\n"],
  ])("nothing for %s", (_, text) => {
    const { plan, offset } = atCaret(text);
    expect(highlightsAt(plan, offset)).toEqual([]);
  });
});

describe("over all files", () => {
  const text = `bring yard.sawbuck
shop shop.sawbuck
part leg of 2x4, length rim
step Do
  uses rails
`;
  const places = (caret: string, declaration = true) => {
    const { plan, offset } = atCaret(text.replace(caret.replace("‸", ""), caret), FILES);
    const target = declaredAt(plan, offset);
    if (!target) return undefined;
    return [...mentionsIn(plan.worked, target), ...sizesMeant(plan, target)]
      .filter(({ declares }) => declaration || !declares)
      .map(({ at: { file, start, end } }) => {
        const whole = file === PLAN ? plan.text : FILES[file as keyof typeof FILES];
        return `${file}:${whole.slice(0, start).split("\n").length} ${whole.slice(start, end)}`;
      });
  };

  test("a measure and a part that were brought in, a stock of the shop", () => {
    expect(places("r‸im\n")).toEqual(["plan.sawbuck:3 rim", "yard.sawbuck:1 rim", "yard.sawbuck:2 rim"]);
    expect(places("ra‸ils")).toEqual(["plan.sawbuck:5 rails", "yard.sawbuck:2 rail"]);
    expect(places("ra‸ils", false)).toEqual(["plan.sawbuck:5 rails"]);
    expect(places("of 2‸x4")).toEqual(["plan.sawbuck:3 2x4", "yard.sawbuck:2 2x4", "shop.sawbuck:1 2x4"]);
  });

  test("what another plan declares under the same name is something else", () => {
    const [own, other] = [worked('measure rim = 3"\n'), worked(`bring yard.sawbuck\n`, FILES)];
    const target = declaredAt(own, "measure r".length)!;
    expect(mentionsIn(other.worked, target)).toEqual([]);
    expect(mentionsIn(own.worked, target)).toHaveLength(1);
  });
});

test("marks read back are the marks that were set", () => {
  const text = "⟦a⟧ b ⟦c ⟦d⟧ e⟧ ⟦⟧";
  const { text: plain, ranges } = unmarked(text);
  expect(plain).toBe("a b c d e ");
  expect(withMarks(plain, ranges)).toBe(text);
});

test("on any text, all marks lie inside of it, one of them around the cursor", () => {
  let found = 0;
  fc.assert(
    fc.property(anyText, fc.nat(), (text, n) => {
      const plan = worked(text);
      const offset = n % (text.length + 1);
      const marks = highlightsAt(plan, offset);
      for (const { start, end } of marks) expect(0 <= start && start < end && end <= text.length).toBe(true);
      if (marks.length === 0) return;
      found++;
      expect(marks.some(({ start, end }) => start <= offset && offset <= end)).toBe(true);
    }),
    { numRuns: SOME },
  );
  expect(found).toBeGreaterThan(SOME / 50);
});
