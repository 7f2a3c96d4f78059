/** The shelf of entries read lately changes nothing: after any edits the tree is the one of a fresh reading. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { Shelf } from "../../grammar/chunks";
import { parse } from "../../grammar/parser";
import { anyText, brokenSample, madePlan, RUNS, SAMPLES } from "./plans";

const edit = fc.tuple(
  fc.nat(),
  fc.nat(30),
  fc.oneof(
    fc.constantFrom("", "\n", "\r\n", "# ", "#", "  ", ",", "x", "\uFEFF"),
    fc.string({ maxLength: 8 }),
  ),
);

test("a warm reading equals a fresh one", () => {
  const warm = new Shelf();
  fc.assert(
    fc.property(
      fc.oneof(fc.constantFrom(...SAMPLES), madePlan, brokenSample, anyText),
      fc.array(edit, { maxLength: 4 }),
      (start, edits) => {
        let text = start;
        parse(text, warm);
        for (const [at, length, insert] of edits) {
          const from = at % (text.length + 1);
          text = text.slice(0, from) + insert + text.slice(from + length);
          expect(parse(text, warm)).toEqual(parse(text, new Shelf()));
        }
      },
    ),
    { numRuns: RUNS },
  );
});

test("the same entry in two places stands in both", () => {
  const text = 'part leg 4 of 2x4, length 9"\n# a note\npart leg 4 of 2x4, length 9"\n# a note\n';
  const warm = new Shelf();
  for (let i = 0; i < 3; i++) {
    const starts = parse(text, warm).entries.map((e) => e.start);
    expect(starts).toEqual([0, text.lastIndexOf("part")]);
  }
});
