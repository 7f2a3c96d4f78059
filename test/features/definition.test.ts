/** From each kind of name to where it is declared: in the plan, in its shop file, in a file it brings. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { definitionAt } from "../../server/features/definition";
import { anyText, RUNS } from "../property/plans";
import { atCaret, fixture, memory, PLAN, worked } from "./plans";

const FILES = {
  "shop.sawbuck": `stock 2x4, sold 8' $4
stock post of 4x4, sold 8' $9
sheet ply, plywood 1/2", sold 48" x 96" $30
roll liner, width 6', price $2 per foot
fastener deck-mid, #8 x 1-5/8" screw, box of 100 $8
finish oil, covers 250 sqft per gal
fill mix, saturated 75 lb/cuft
`,
  "yard.sawbuck": 'measure rim = 30"\npart rail 2 of 1x4, length rim\n',
};
const HEAD = "shop shop.sawbuck\nbring yard.sawbuck\n";
const OWN = `part leg 4 of 2x4, length 20"\npart cap 4 of 1x4, length 20", ends mitered 45°\nbox tub, inside 9" x 9" x 9"\n`;

/** What the declaration's own text is, and in which file. */
function led(marked: string): readonly [string, string] | undefined {
  const { plan, offset } = atCaret(`${HEAD}${OWN}${marked}`, FILES);
  const at = definitionAt(plan, offset, memory(FILES));
  if (!at) return undefined;
  const text = at.file === PLAN ? plan.text : FILES[at.file as keyof typeof FILES];
  const line = text.slice(text.lastIndexOf("\n", at.start - 1) + 1);
  return [at.file, `${/^\w+ /.exec(line)?.[0]}${text.slice(at.start, at.end)}`];
}

describe("a name leads to its line", () => {
  test.each([
    ["a part in a joint", 'fasten ‸leg into cap, 1 #8 x 2" in all', PLAN, "part leg"],
    ["all of a part", 'fasten le‸gs into cap, 1 #8 x 2" in all', PLAN, "part leg"],
    ["the last letter's far side", 'fasten leg‸ into cap, 1 #8 x 2" in all', PLAN, "part leg"],
    ["a part brought in", 'fasten ‸rail into leg, 1 #8 x 2" in all', "yard.sawbuck", "part rail"],
    ["a measure brought in", "part slat 1 of 2x4, length ‸rim", "yard.sawbuck", "measure rim"],
    ["a stock of the shop", 'part slat 1 of ‸post, length 9"', "shop.sawbuck", "stock post"],
    ["a section the shop sells", 'part slat 1 of ‸2x4, length 9"', "shop.sawbuck", "stock 2x4"],
    ["the same with its sign", 'part slat 1 of 2‸×4, length 9"', "shop.sawbuck", "stock 2x4"],
    ["a sheet", 'part slat 1 of ‸ply, length 9", width 9"', "shop.sawbuck", "sheet ply"],
    ["the thing of a property", "measure t = thickness of ‸2x4", "shop.sawbuck", "stock 2x4"],
    ["the property itself", "measure t = ‸length of leg", PLAN, "part leg"],
    ["a fastener", "fasten leg into cap, 1 deck‸-mid in all", "shop.sawbuck", "fastener deck-mid"],
    ["a finish", "coat leg with ‸oil", "shop.sawbuck", "finish oil"],
    ["a roll", "line tub with ‸liner", "shop.sawbuck", "roll liner"],
    ["a box", "line ‸tub with liner", PLAN, "box tub"],
    ["a fill", 'box b, inside 9" x 9" x 9", filled with ‸mix', "shop.sawbuck", "fill mix"],
    ["a wall", 'box b, inside 9" x 9" x 9", walls ‸leg', PLAN, "part leg"],
    ["a ring's member", "ring r = 4 ca‸p", PLAN, "part cap"],
    ["what a step uses", "step Do it\n  uses leg and ‸cap", PLAN, "part cap"],
    ["what is accepted on", "accept never-used on ‸leg because so it is", PLAN, "part leg"],
    ["inside an assembly", "assembly gable\n  place ‸leg upright, on floor", PLAN, "part leg"],
    ["the declaration itself", 'part ‸self 1 of 2x4, length 9"', PLAN, "part self"],
  ])("%s", (_, marked, file, declared) => {
    expect(led(marked)).toEqual([file, declared]);
  });

  test.each([
    ["shop shop‸.sawbuck\n", "shop.sawbuck"],
    ["bring y‸ard.sawbuck\n", "yard.sawbuck"],
  ])("%s leads to the start of the file", (marked, file) => {
    const { plan, offset } = atCaret(marked, FILES);
    expect(definitionAt(plan, offset, memory(FILES))).toEqual({ file, start: 0, end: 0 });
  });

  test.each([
    ["a name nothing declares", "part slat 1 of 2x4, length ‸nowhere"],
    ["a section that no line declares", 'part slat 1 of ‸2x6, length 9"'],
    ["a word of the language", 'part slat 1 of 2x4, ‸length 9"'],
    ["a reason", "must 1 at most 2 because the ‸leg says so"],
    ["a file that is not there", "bring no‸where.sawbuck"],
    ["a comment", "# the ‸leg"],
    ["an empty line", "\n‸\n"],
  ])("%s leads nowhere", (_, marked) => {
    expect(led(marked)).toBeUndefined();
  });
});

test("never throws, and never points outside a file", () => {
  const plan = worked(fixture("inches"), { "shop.sawbuck": fixture("shop") });
  let found = 0;
  for (let offset = -1; offset <= plan.text.length + 1; offset++)
    if (definitionAt(plan, offset, memory({}))) found++;
  expect(found).toBeGreaterThan(50);
  fc.assert(
    fc.property(anyText, fc.nat(), (text, n) => {
      const any = worked(text, FILES);
      const at = definitionAt(any, n % (text.length + 2), memory(FILES));
      const { whole, files } = any.worked.loaded;
      const other = files.find((f) => f.file === at?.file)?.tree.text ?? "";
      const target = (at?.file === any.file ? whole.text : other).length;
      if (at) expect(at.start <= at.end && at.end <= target).toBe(true);
    }),
    { numRuns: Math.min(RUNS, 1000) },
  );
});
