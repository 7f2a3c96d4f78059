/** A plan with all that it brings in one text: the same sheet, without prices and what is on hand. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bundled } from "../../server/exchange";
import { diagnosticsOf } from "../../server/features/diagnostics";
import { evaluate } from "../../server/service";
import { SOME } from "../property/plans";
import { among, asShared, bundleOf, expectSameSheet, type Files, written } from "./round";

const SAMPLES: Files = Object.fromEntries(
  readdirSync("samples")
    .filter((name) => name.endsWith(".sawbuck"))
    .map((name) => [`samples/${name}`, readFileSync(`samples/${name}`, "utf8")]),
);
const SHOP = "samples/hillside-shop.sawbuck";

describe.each(Object.keys(SAMPLES))("%s", (plan) => {
  test("gives the same sheet from its bundle, with any shop of the reader's own", () => {
    const bundle = expectSameSheet(plan, SAMPLES);
    if (plan === SHOP) return;
    // With the same shop it is the sheet of the plan itself.
    const own = { shop: "hillside-shop.sawbuck", shopFrom: plan };
    const [alone, before] = [bundle, SAMPLES[plan]!].map((text) =>
      written(evaluate(plan, text, among(SAMPLES), own)),
    );
    expect(alone).toEqual(before);
  });
});

test("a bundle as it is written", () => {
  const bundle = bundleOf("samples/tree-seat.sawbuck", SAMPLES);
  expect(bundle.startsWith(SAMPLES["samples/tree-seat.sawbuck"]!)).toBe(true);
  expect(bundle.slice(SAMPLES["samples/tree-seat.sawbuck"]!.length)).toMatchSnapshot();
  const shop = asShared("samples/tree-seat.sawbuck", bundle)[SHOP]!;
  expect(shop).not.toMatch(/\$|on hand/);
  expect(shop.split("\n")).toHaveLength(SAMPLES[SHOP]!.split("\n").length);
});

test("prices and the pile are left out, and no line moves", () => {
  const shop = [
    "# Mine.",
    "stock 2x4, sold 8' $4.20, 10' $5.60  # from the yard",
    "stock 1x4, on hand 3 of 6', sold 8' $3",
    '  end trim 1/2"  # always',
    "stock 1x6",
    "  on hand 2 of 8',  # the long ones, $5",
    "    1 of 3' bad 1' to 2'",
    "  sold 6' $5.20, 8' $6.95,",
    "    10' $8.70",
    'fastener deck, #8 x 2" screw, box of 100 $7.50, on hand 30  # dear',
    "roll mesh, price $2 per foot, width 3'",
    "  food safe",
    "  # Between.",
    "finish oil",
    "  tin of 1 qt $14  # dear",
    "stock 4x4, on hand 1 of 8'  # from the fence",
    "",
  ].join("\n");
  const bundle = bundleOf("p.sawbuck", {
    "p.sawbuck": "plan P\n  budget $9\nshop s.sawbuck\n",
    "s.sawbuck": shop,
  });
  expect(bundle).toMatchInlineSnapshot(`
    "plan P
      budget $9
    shop s.sawbuck
    enclosed s.sawbuck
    # Mine.
    stock 2x4, sold 8', 10'
    stock 1x4, sold 8'
      end trim 1/2"  # always
    stock 1x6


      sold 6', 8',
        10'
    fastener deck, #8 x 2" screw, box of 100
    roll mesh, width 3'
      food safe
      # Between.
    finish oil
      tin of 1 qt
    stock 4x4
    "
  `);
  expect(asShared("p.sawbuck", bundle)["s.sawbuck"]!.split("\n")).toHaveLength(shop.split("\n").length);
});

const NESTED: Files = {
  "plans/p.sawbuck":
    "plan P\nshop ../shop/s.sawbuck\nbring parts/a.sawbuck\nbring ./parts/../c.sawbuck\npart leg 4 of 2x4, length low\n",
  "plans/parts/a.sawbuck":
    "bring b.sawbuck\nbring ../c.sawbuck\nmeasure tall = 2 * low\npart leg of 2x4, length tall\n",
  "plans/parts/b.sawbuck": 'measure low = 9"',
  "plans/c.sawbuck": "\uFEFFmeasure more = lwo\r\nnote Hi\r\n",
  "shop/s.sawbuck": "bring more.sawbuck\nstock 2x4, sold 8' $4\n",
  "shop/more.sawbuck": "stock 1x4, sold 8' $4\n",
};

test("files are enclosed once each, by their paths from the plan's folder, and tell their places as before", () => {
  const bundle = expectSameSheet("plans/p.sawbuck", NESTED);
  expect(bundle.split("\n").filter((line) => line.startsWith("enclosed"))).toEqual([
    "enclosed ../shop/s.sawbuck",
    "enclosed ../shop/more.sawbuck",
    "enclosed parts/a.sawbuck",
    "enclosed parts/b.sawbuck",
    "enclosed c.sawbuck",
  ]);
  // Where it lies elsewhere, under another name, what it encloses is still found.
  const moved = evaluate("/home/x.sawbuck", bundle, among({}));
  expect(moved.worked.loaded.faults).toEqual([]);
});

test("a file that begins with a line that goes on from nothing is told so in a bundle, too", () => {
  const text =
    'plan P\nbring a.sawbuck\nbring b.sawbuck\nenclosed b.sawbuck\n  stray\nenclosed a.sawbuck\n# A\n\n  lost\nmeasure a = 1"\n';
  const apart = asShared("p.sawbuck", text);
  const told = (plan: string, files: Files) => written(evaluate("p.sawbuck", plan, among(files)));
  expect(told(text, {})).toEqual(told(apart["p.sawbuck"]!, apart));
});

test.each([
  ["a file is missing", { "p.sawbuck": "bring a.sawbuck\n" }, "a.sawbuck: there is no such file"],
  ["files lead back", { "p.sawbuck": "bring p.sawbuck\n" }, "p.sawbuck: it leads back to itself"],
  [
    "a price may be hidden",
    { "p.sawbuck": "shop s.sawbuck\n", "s.sawbuck": "# S\nstock 2x4, slod 8' $4\n" },
    "s.sawbuck, line 2 is not understood, and may hold a price",
  ],
  [
    "a bundle is brought",
    { "p.sawbuck": "bring b.sawbuck\n", "b.sawbuck": "plan B\nenclosed x.sawbuck\n" },
    "b.sawbuck: it encloses other files, and is opened by itself",
  ],
  [
    "one is enclosed twice",
    { "p.sawbuck": "bring x.sawbuck\nenclosed x.sawbuck\nenclosed ./x.sawbuck\n" },
    "./x.sawbuck: it is enclosed twice",
  ],
])("none where %s", (_why, files: Files, refused) => {
  expect(bundled("p.sawbuck", files["p.sawbuck"]!, among(files))).toEqual({ refused });
});

test("what is enclosed comes before any file on disk, and none is looked for", () => {
  const asked: string[] = [];
  const text = 'bring x.sawbuck\nbring y.sawbuck\nenclosed x.sawbuck\nmeasure a = 1"\n';
  const { worked } = evaluate("p.sawbuck", text, (path) => {
    asked.push(path);
    return { file: path, refused: "there is no such file" };
  });
  expect(asked).toEqual(["y.sawbuck"]);
  expect([...worked.scope.declared.keys()]).toEqual(["a"]);
});

test("a second text of one file is told, in both languages", () => {
  const text = 'enclosed x.sawbuck\nmeasure a = 1"\nenclosed x.sawbuck\n';
  const e = evaluate("p.sawbuck", text, among({}));
  const told = (language: "en" | "fr") => diagnosticsOf(e, language).map((d) => [d.code, d.message, d.range]);
  const range = { start: text.lastIndexOf("x.saw"), end: text.length - 1 };
  expect(told("en")).toEqual([
    ["declared-twice", "x.sawbuck is enclosed already: this second text of it is passed over.", range],
  ]);
  expect(told("fr")).toEqual([
    ["declared-twice", "x.sawbuck est déjà inclus\u00a0: ce deuxième texte est laissé de côté.", range],
  ]);
});

test("what whoever gets it will miss", () => {
  const notes = (text: string) => {
    const made = bundled("p.sawbuck", text, among({}));
    return "notes" in made ? made.notes.map((note) => note.slice(0, 35)) : undefined;
  };
  expect(notes("plan P\n")).toEqual([
    "the plan does not say who wrote it:",
    "the plan does not say what others m",
  ]);
  expect(notes("plan P\n  written by the class\n  licence CC BY 4.0\n")).toEqual([]);
});

/** A shop made at random, with prices, a pile, comments and line ends of all kinds. */
const clause = fc.constantFrom(
  "sold 6' $5.25, 8' $6.95",
  "sold 8'",
  'on hand 2 of 41"',
  "on hand 1 of 8' bad 1' to 2', 3 of 30\"",
  'end trim 1/2"',
  "species hem-fir",
  "use up",
);
const board = fc
  .tuple(
    fc.constantFrom("2x4", "1x4", "1x6", "a of 2x4", "b of 1x6"),
    fc.array(fc.tuple(fc.constantFrom(", ", "\n  ", "  # note\n  "), clause), { maxLength: 5 }),
    fc.constantFrom("", "  # at the gate", "\n# Below.", "\n"),
  )
  .map(([name, clauses, end]) => `stock ${name}${clauses.flat().join("")}${end}\n`);
const other = fc.constantFrom(
  'fastener deck, #8 x 2" screw\n  box of 100 $7.50, on hand 30\n',
  'measure low = 9"\n',
  "bring c.sawbuck\n",
  'tools\n  kerf 1/8"\n',
  "note Ask at the gate\n",
  "part rail 2 of 1x4, length low\n",
  "prat leg\n",
);
const anyFile = fc
  .tuple(
    fc.array(fc.oneof(board, other), { maxLength: 5 }),
    fc.constantFrom("", "\uFEFF", "\n"),
    fc.constantFrom("\n", "\r\n", "\r"),
    fc.boolean(),
  )
  .map(([entries, before, eol, ends]) => {
    const text = before + entries.join("");
    return (ends ? text : text.replace(/\n$/, "")).replaceAll("\n", eol);
  });

test("any plan, shop and brought files: the same sheet in all formats, no price, no pile, no line moved", () => {
  let bundles = 0;
  fc.assert(
    fc.property(anyFile, anyFile, anyFile, anyFile, (plan, shop, a, c) => {
      const files: Files = {
        "d/p.sawbuck": `plan P\nshop s.sawbuck\nbring deep/a.sawbuck\npart leg 4 of 2x4, length 28"\n${plan}`,
        "d/s.sawbuck": shop.replaceAll("bring c.", "bring deep/c."),
        "d/deep/a.sawbuck": a,
        "d/deep/c.sawbuck": c.replaceAll("bring c.", "note c."),
        "d/c.sawbuck": 'measure more = 1"\n',
      };
      const made = bundled("d/p.sawbuck", files["d/p.sawbuck"]!, among(files));
      if ("refused" in made) {
        expect(made.refused).toMatch(/is not understood, and may hold a price$/);
        return;
      }
      bundles++;
      const bundle = expectSameSheet("d/p.sawbuck", files);
      for (const [name, text] of Object.entries(asShared("d/p.sawbuck", bundle))) {
        expect(text.replace(/^# .*$/gm, "")).not.toMatch(/\$|on hand/);
        // A last line that was not ended is, unless nothing is left of it.
        const lines = linesIn(files[name]!);
        expect([lines, /[\r\n]$/.test(files[name]!) ? lines : lines + 1]).toContain(linesIn(text));
      }
    }),
    { numRuns: Math.min(SOME, 150) },
  );
  expect(bundles).toBeGreaterThan(10);
});

const linesIn = (text: string): number => text.split(/\r\n|\r|\n/).length;
