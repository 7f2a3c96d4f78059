/** Another name for something: what changes, and when it is refused. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applied } from "../../grammar/format";
import type { Edit } from "../../server/checks";
import type { Root } from "../../server/features/references";
import { badName, renamable, renamed, suffers } from "../../server/features/rename";
import { pluralOf } from "../../server/plan";
import { type Evaluated, evaluate, sheetOf } from "../../server/service";
import { madePlan, SAMPLES, SOME } from "../property/plans";
import { atCaret, memory, PLAN } from "./plans";

/** Each works three plans out and draws up their sheets. */
const CASES = Math.ceil(SOME / 2);

const YARD = 'measure rim = 30"\npart rail 2 of 2x4, length rim\n';
const FILES = {
  "yard.sawbuck": YARD,
  "shop.sawbuck": "stock 2x4, sold 8' $4\nstock post of 4x4, sold 8' $9\n",
};
type Files = Readonly<Record<string, string>>;

/** What stands where the cursor is, renamed in one plan: the files that change, or why none does. */
function rename(marked: string, to: string, files: Files = FILES, others: readonly Root[] = []) {
  const { plan, offset } = atCaret(marked, files);
  return renameAt(plan, offset, to, files, others);
}

function renameAt(plan: Evaluated, offset: number, to: string, files: Files, others: readonly Root[] = []) {
  const found = renamable(plan, offset);
  if ("refused" in found) return found.refused;
  const wrong = badName(to, plan);
  if (wrong) return wrong;
  const roots = [plan.worked, ...others];
  const edits = new Map<string, Edit>();
  for (const root of roots)
    for (const edit of renamed(root, found.declared, to)) edits.set(`${edit.file} ${edit.start}`, edit);
  const all = [...edits.values()];
  for (const root of roots) {
    const why = suffers(root, all, found.declared, to, plan.worked.settings.display);
    if (why) return why;
  }
  const after: Record<string, string> = {};
  for (const file of new Set(all.map((e) => e.file))) {
    const text = file === PLAN ? plan.text : files[file]!;
    after[file] = applied(
      text,
      all.filter((e) => e.file === file),
    );
  }
  return after;
}

const other = (text: string, files: Files): Root => evaluate("other.sawbuck", text, memory(files)).worked;

describe("renamed", () => {
  test("a part with its plurals everywhere, but no words to people", () => {
    expect(
      rename(
        `part le‸g 4 of 2x4, length 20"
part shelf 2 of 1x6, length width of legs
place leg upright, on floor, at each corner of 20" x 20"
place shelf across, flat, on front legs, flush with left of front left leg
# a leg
step Stand the legs up
  uses legs and shelves
`,
        "bench",
      ),
    ).toMatchInlineSnapshot(`
      {
        "plan.sawbuck": "part bench 4 of 2x4, length 20"
      part shelf 2 of 1x6, length width of benches
      place bench upright, on floor, at each corner of 20" x 20"
      place shelf across, flat, on front benches, flush with left of front left bench
      # a leg
      step Stand the legs up
        uses benches and shelves
      ",
      }
    `);
  });

  test("from its plural: the thing gets the name, the plural follows", () => {
    expect(
      rename('part shelf 2 of 1x6, length 9"\nstep Do\n  uses sh‸elves\n', "knife"),
    ).toMatchInlineSnapshot(`
      {
        "plan.sawbuck": "part knife 2 of 1x6, length 9"
      step Do
        uses knives
      ",
      }
    `);
  });

  test("what another file declares, in both files", () => {
    expect(rename("bring yard.sawbuck\npart leg of 2x4, length r‸im\n", "height")).toMatchInlineSnapshot(`
      {
        "plan.sawbuck": "bring yard.sawbuck
      part leg of 2x4, length height
      ",
        "yard.sawbuck": "measure height = 30"
      part rail 2 of 2x4, length height
      ",
      }
    `);
  });

  test("a stock of the shop", () => {
    expect(rename('shop shop.sawbuck\npart leg of po‸st, length 9"\n', "corner-post")).toMatchInlineSnapshot(`
      {
        "plan.sawbuck": "shop shop.sawbuck
      part leg of corner-post, length 9"
      ",
        "shop.sawbuck": "stock 2x4, sold 8' $4
      stock corner-post of 4x4, sold 8' $9
      ",
      }
    `);
  });
});

describe("refused, with the reason", () => {
  const REFUSED: readonly (readonly [what: string, marked: string, to: string])[] = [
    ["a section", 'part leg of 2‸x4, length 9"', "board"],
    ["a section that the shop sells", 'shop shop.sawbuck\npart leg of 2‸x4, length 9"', "board"],
    ["a word of the language", 'part leg of 2x4, len‸gth 9"', "size"],
    ["what nothing declares", "part leg of 2x4, length r‸im", "height"],
    ["what is built in", 'box b, inside 9" x 9" x 9", filled with so‸il', "earth"],
    ["a name with a blank", 'part l‸eg of 2x4, length 9"', "front leg"],
    ["a name with capitals", 'part l‸eg of 2x4, length 9"', "Leg"],
    ["a name that opens with a figure", 'part l‸eg of 2x4, length 9"', "2nd-leg"],
    ["no name", 'part l‸eg of 2x4, length 9"', ""],
    ["the word that opens a reason", 'part l‸eg of 2x4, length 9"', "because"],
    ["a name with a line's end", 'part l‸eg of 2x4, length 9"', "a\npart b"],
    ["a name that is taken", 'part l‸eg of 2x4, length 9"\npart rail of 2x4, length 9"', "rail"],
    ["a name that a brought file has", 'bring yard.sawbuck\npart l‸eg of 2x4, length 9"', "rim"],
    [
      "a name whose plural is taken",
      'part l‸eg of 2x4, length 9"\npart rails of 1x4, length 9"\nstep Do\n  uses legs and rails\n',
      "rail",
    ],
    [
      "a name that is a plural of another",
      'part l‸eg of 2x4, length 9"\npart rail of 2x4\nstep Do\n  uses rails\n',
      "rails",
    ],
    ["the word for the ground", 'part l‸eg of 2x4, length 9"\nplace leg upright, on floor\n', "floor"],
    [
      "a name that is built in, where it is used",
      "finish o‸il, 2 coats\npart a of 2x4\ncoat a with oil\ncoat a with outdoor-oil\n",
      "outdoor-oil",
    ],
    ["what is given twice", 'part l‸eg of 2x4, length 9"\npart leg of 1x4, length 9"', "post"],
  ];

  test("each in its own words", async () => {
    const told = REFUSED.map(([what, marked, to]) => {
      const why = rename(marked, to);
      if (typeof why !== "string") throw new Error(`${what} is not refused`);
      return `${what}\n  ${why}\n`;
    });
    await expect(told.join("\n")).toMatchFileSnapshot("snapshots/rename-refused.txt");
  });

  test("where another plan would suffer that names the same file", () => {
    const second = other("bring yard.sawbuck\npart height of 2x4, length rim\n", FILES);
    const why = rename("bring yard.sawbuck\npart leg of 2x4, length r‸im\n", "height", FILES, [second]);
    expect(why).toMatchInlineSnapshot(`"“height” is a part already, in other.sawbuck, line 2."`);
  });

  test("where a brought file uses what each plan gives it", () => {
    const files = { "rail.sawbuck": "part rail 2 of 2x4, length rim\n" };
    const second = other('bring rail.sawbuck\nmeasure rim = 9"\n', files);
    const why = rename('bring rail.sawbuck\nmeasure r‸im = 20"\n', "height", files, [second]);
    expect(why).toMatchInlineSnapshot(
      `"With that name, “height” in rail.sawbuck, line 1, would mean something else."`,
    );
  });

  test("in French", () => {
    const { plan, offset } = atCaret('part leg of 2‸x4, length 9"');
    expect(renamable(plan, offset, "fr")).toMatchInlineSnapshot(`
      {
        "refused": "« 2x4 » est une section, pas un nom. Pour nommer ces planches, écrivez « stock NOM of 2x4 » et employez ce nom.",
      }
    `);
    expect(badName("Front Leg", plan, "fr")).toMatchInlineSnapshot(
      `"Un nom tient en un mot : « Front Leg » s’écrit donc front-leg."`,
    );
  });
});

test("plurals are those that people write", () => {
  const words = [
    "leg",
    "bench",
    "shelf",
    "knife",
    "berry",
    "tray",
    "box",
    "brace",
    "cheek",
    "half",
    "roof",
    "post-2",
    "glass",
  ];
  expect(words.map(pluralOf)).toEqual(
    // From memory: an English dictionary's plurals.
    [
      "legs",
      "benches",
      "shelves",
      "knives",
      "berries",
      "trays",
      "boxes",
      "braces",
      "cheeks",
      "halves",
      "roofs",
      "post-2s",
      "glasses",
    ],
  );
});

/** The cut list without names, which may stand in another order once they are others. */
const cutOf = (plan: Evaluated): string[] =>
  sheetOf(plan)
    .cutList.flatMap((group) => group.rows)
    .map(({ mark, count, hand, length, width, ends }) =>
      JSON.stringify({ mark, count, hand, length, width, ends }),
    );

/** How many there are is not asked for while a name that nothing has may be the part's, which hangs on how alike they are. */
const codesOf = ({ problems }: Evaluated): string[] => {
  const codes = problems.map(({ code }) => code);
  return codes.includes("unknown-name") ? codes.filter((code) => code !== "count-missing") : codes;
};

test("5. there and back is the identity, and the sheet in between says the same under another name", () => {
  const shop = SAMPLES.find((s) => s.startsWith("# What the yard"))!;
  const measures = SAMPLES.find((s) => s.startsWith("# Measurements taken"))!;
  const files = { "hillside-shop.sawbuck": shop, "yard-measures.sawbuck": measures };
  let [renamedOnes, refusedOnes] = [0, 0];
  fc.assert(
    fc.property(
      fc.oneof(fc.constantFrom(...SAMPLES), madePlan),
      fc.nat(),
      fc.constantFrom(
        "zebra",
        "shelf",
        "leg",
        "oil",
        "rail",
        "end",
        "step",
        "left",
        "top",
        "floor",
        "x",
        "berry",
        "length",
      ),
      (text, n, to) => {
        const plan = evaluate(PLAN, text, memory(files));
        const names = [...plan.worked.scope.declared.values()].filter((d) => d.at.file === PLAN);
        const one = names[n % Math.max(1, names.length)];
        if (!one || one.name === to) return;
        const there = renameAt(plan, one.at.start, to, files);
        if (typeof there === "string") {
          expect(there).toMatch(/^[^\s].*[.?”]$/su);
          refusedOnes++;
          return;
        }
        renamedOnes++;
        const own = there[PLAN]!;
        const between = evaluate(PLAN, own, memory({ ...files, ...there }));
        expect(codesOf(between)).toEqual(codesOf(plan));
        const now = [...between.worked.scope.declared.values()].find((d) => d.name === to)!;
        const back = renameAt(between, now.at.start, one.name, { ...files, ...there });
        if (typeof back === "string") throw new Error(`${one.name} to ${to}, and not back: ${back}`);
        const natural = applied(text, renamed(plan.worked, one, one.name));
        expect(back[PLAN]).toBe(natural);
        expect(cutOf(between)).toEqual(cutOf(plan));
      },
    ),
    { numRuns: CASES },
  );
  expect(renamedOnes).toBeGreaterThan(CASES / 4);
  expect(refusedOnes).toBeGreaterThan(0);
});
