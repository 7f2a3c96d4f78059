/** Getting about in a text: links, folding, growing selections, names of all plans. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "../../grammar/parser";
import { foldsOf } from "../../server/features/folding";
import { linksOf } from "../../server/features/links";
import { selectionsAt } from "../../server/features/selection";
import { symbolsMatching } from "../../server/features/workspace-symbols";
import { anyText, brokenSample, SAMPLES, SOME } from "../property/plans";
import { memory, worked } from "./plans";

describe("links", () => {
  const FILES = { "shop.sawbuck": "stock 2x4\n", "yard.sawbuck": 'measure rim = 30"\n' };
  const linked = (text: string) =>
    linksOf(worked(text, FILES), memory(FILES)).map(({ range, to }) => [
      text.slice(range.start, range.end),
      to,
    ]);

  test("lead to the files that are named, and to the page of what is let stand", () => {
    expect(
      linked(`shop shop.sawbuck
bring  yard.sawbuck   
part leg of 2x4, length 9"
accept never-used on leg because it is spare
`),
    ).toEqual([
      ["shop.sawbuck", { file: "shop.sawbuck" }],
      ["yard.sawbuck", { file: "yard.sawbuck" }],
      ["never-used", { code: "never-used" }],
    ]);
  });

  test("but not to a file that is not there, nor to a code that does not exist", () => {
    expect(linked("shop gone.sawbuck\nbring\naccept no-such-code because so\n")).toEqual([]);
  });
});

/** Each line with the kinds of the folds that open (▾) and end (▴) there. */
function folded(text: string): string {
  const folds = foldsOf(parse(text));
  return text
    .split("\n")
    .map((line, i) => {
      const signs = folds.flatMap(({ first, last, kind }) => [
        ...(first === i ? [`${kind}▾`] : []),
        ...(last === i ? [`${kind}▴`] : []),
      ]);
      return signs.length > 0 ? `${line}   (${signs.join(" ")})` : line;
    })
    .join("\n");
}

describe("folding", () => {
  test("entries, notes, files and what stands under a heading", () => {
    expect(
      folded(`# A bench for the yard,
# measured on a wet day.

plan Bench
  units inches
  outdoors

shop shop.sawbuck
bring yard.sawbuck
bring more.sawbuck

# The frame
part leg of 2x4, length 9"
part rail of 2x4
  length 20"
part seat of 1x4, length 20"

# One part needs no fold
part cap of 1x4, length 20"

assembly gable
  # its foot
  place leg upright, on floor
    wide face front
  place rail across, on leg

step Do it # at last
`),
    ).toMatchInlineSnapshot(`
      "# A bench for the yard,   (notes▾)
      # measured on a wet day.   (notes▴)

      plan Bench   (entry▾)
        units inches
        outdoors   (entry▴)

      shop shop.sawbuck   (files▾)
      bring yard.sawbuck
      bring more.sawbuck   (files▴)

      # The frame   (under a heading▾)
      part leg of 2x4, length 9"
      part rail of 2x4   (entry▾)
        length 20"   (entry▴)
      part seat of 1x4, length 20"   (under a heading▴)

      # One part needs no fold
      part cap of 1x4, length 20"

      assembly gable   (entry▾)
        # its foot
        place leg upright, on floor   (entry▾)
          wide face front   (entry▴)
        place rail across, on leg   (entry▴)

      step Do it # at last
      "
    `);
  });

  test("line ends of every kind count", () => {
    for (const end of ["\n", "\r\n", "\r"])
      expect(foldsOf(parse(["stock 2x4", "  treated", "  sold 8' $4", ""].join(end)))).toEqual([
        { first: 0, last: 2, kind: "entry" },
      ]);
  });

  test("on any text, folds lie inside, begin in order, and either hold one another or do not touch", () => {
    fc.assert(
      fc.property(fc.oneof(anyText, brokenSample, fc.constantFrom(...SAMPLES)), (text) => {
        const lines = text.split(/\r\n|\r|\n/).length;
        const folds = foldsOf(parse(text));
        folds.forEach(({ first, last }, i) => {
          expect(0 <= first && first < last && last < lines).toBe(true);
          const next = folds[i + 1];
          if (next) expect(first <= next.first).toBe(true);
          for (const other of folds.slice(i + 1)) expect(other.first > last || other.last <= last).toBe(true);
        });
      }),
      { numRuns: SOME },
    );
  });
});

describe("a selection grows", () => {
  const grown = (marked: string): string[] => {
    const offset = marked.indexOf("‸");
    const text = marked.replace("‸", "");
    return selectionsAt(parse(text), offset).map(({ start, end }) => text.slice(start, end));
  };

  test("from a name over its sum, clause and entry to all of the plan", () => {
    expect(
      grown(`part rail of 2x4
# how long
part leg of 2x4, length (r‸im - 2") * 2, width 3"
part cap of 2x4
`),
    ).toMatchInlineSnapshot(`
      [
        "rim",
        "rim - 2"",
        "rim - 2") * 2",
        "length (rim - 2") * 2",
        "part leg of 2x4, length (rim - 2") * 2, width 3"",
        "# how long
      part leg of 2x4, length (rim - 2") * 2, width 3"",
        "part rail of 2x4
      # how long
      part leg of 2x4, length (rim - 2") * 2, width 3"
      part cap of 2x4
      ",
      ]
    `);
  });

  test("from a word before a name over the narrowed name, and through an assembly", () => {
    expect(
      grown(`assembly gable
  place rail across, on fr‸ont left leg, 2 high
  place leg upright
`),
    ).toMatchInlineSnapshot(`
      [
        "front",
        "front left leg",
        "on front left leg",
        "place rail across, on front left leg, 2 high",
        "assembly gable
        place rail across, on front left leg, 2 high
        place leg upright",
        "assembly gable
        place rail across, on front left leg, 2 high
        place leg upright
      ",
      ]
    `);
  });

  test("in a note", () => {
    expect(grown("# how l‸ong\npart leg of 2x4\n")).toEqual([
      "how long",
      "# how long",
      "# how long\npart leg of 2x4\n",
    ]);
  });

  test("on any text, each lies inside the next, holds the cursor, and the last is all of it", () => {
    fc.assert(
      fc.property(fc.oneof(anyText, brokenSample), fc.nat(), (text, n) => {
        const offset = n % (text.length + 1);
        const chain = selectionsAt(parse(text), offset);
        chain.forEach(({ start, end }, i) => {
          expect(0 <= start && start <= offset && offset <= end && end <= text.length).toBe(true);
          const next = chain[i + 1];
          if (next)
            expect(next.start <= start && end <= next.end && next.end - next.start > end - start).toBe(true);
        });
        expect(chain[chain.length - 1]).toEqual({ start: 0, end: text.length });
      }),
      { numRuns: SOME },
    );
  });
});

test("names of all plans are found by their letters in order, whatever their case", () => {
  const text =
    'plan Salad trough\nmeasure rim-height = 30"\npart leg of 2x4\npart  of 2x4\nstep Do\nbox trough\n';
  const names = (asked: string) => symbolsMatching(text, asked).map(({ name, within }) => [name, within]);
  expect(names("")).toEqual([
    ["Salad trough", ""],
    ["rim-height", "Salad trough"],
    ["leg", "Salad trough"],
    ["trough", "Salad trough"],
  ]);
  expect(names("RHt")).toEqual([["rim-height", "Salad trough"]]);
  expect(names("trg")).toEqual([
    ["Salad trough", ""],
    ["trough", "Salad trough"],
  ]);
  expect(names("zz")).toEqual([]);
});
