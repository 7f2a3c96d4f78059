/** The grammar reads every form of the language, and keeps what it cannot read. */
import { describe, expect, test } from "vitest";
import { ENTRY_FORMS } from "../grammar/forms";
import { parse } from "../grammar/parser";
import { PlanRules } from "../grammar/rules-work";
import { tokenize } from "../grammar/tokens";

const kindsOf = (text: string) => tokenize(text).tokens.map((t) => t.tokenType.name);

describe("the rules", () => {
  test("are unambiguous and complete by chevrotain's own analysis", () => {
    expect(() => new PlanRules(true)).not.toThrow();
  });

  test.each(ENTRY_FORMS.map((e) => [e.word, e] as const))("%s: its example reads", (_, entry) => {
    const tree = parse(`${entry.example}\n`);
    expect(tree.complaints).toEqual([]);
    expect(tree.entries.map((e) => e.kind)).toEqual([entry.word]);
  });

  const clauses = ENTRY_FORMS.flatMap((e) => e.clauses.map((c) => [e.word, c.example] as const));
  test.each(clauses)("%s: %s reads as a clause of its own and goes on a line", (word, example) => {
    const entry = ENTRY_FORMS.find((e) => e.word === word)!;
    const head =
      word === "tools" ? "tools" : word === "plan" ? "plan A plan" : entry.example.split(/[,\n]/)[0]!;
    const tree = parse(`${head}\n  ${example}\n`);
    expect(tree.complaints).toEqual([]);
    const kinds = tree.entries[0]!.clauses.map((c) => c.kind);
    expect(kinds.length).toBeGreaterThan(0);
    expect(kinds).not.toContain("broken");
  });
});

describe("literals are one token each", () => {
  // The forms of language.md "Writing it down"; tape notation as common practice (trade-facts section 10).
  test.each([
    ...[
      '36"',
      '3/4"',
      '83-1/2"',
      '83 1/2"',
      "6'",
      `6' 11-1/2"`,
      `6'-11 1/2"`,
      "36in",
      "6ft",
      "1220mm",
      "122cm",
      "1.22m",
    ].map((t) => [t, "Length"]),
    ...["83½″", "6′ 2¼″", "¾″", "6’ 2”", '0.131"'].map((t) => [t, "Length"]),
    ...["45°", "45deg", "22.5°"].map((t) => [t, "Angle"]),
    ...["1x4", "2x4", "5/4x6", "4x4", "18x95", "2×4"].map((t) => [t, "Section"]),
    ...['#8 x 1-1/4"', '#8x1-1/4"', "5 x 60mm", "#8 × 1¼″"].map((t) => [t, "ScrewSize"]),
    ...[
      "40 lb",
      "18 kg",
      "2 cuft",
      "60 L",
      "1 gal",
      "1 qt",
      "250 sqft",
      "6 m2",
      "60 psf",
      "2.9 kPa",
      "95 lb/cuft",
      "1500 kg/m3",
      "40 min",
      "12 h",
      "2 days",
    ].map((t) => [t, "Measured"]),
    ...["$7.40", "€6", "£5"].map((t) => [t, "Money"]),
    ...["10%", "7.5 %"].map((t) => [t, "Share"]),
    ...["12", "1.25", "3/4"].map((t) => [t, "Numeral"]),
  ])("%s is a %s", (text, kind) => {
    expect(kindsOf(text!)).toEqual([kind]);
  });

  test("traps", () => {
    expect(kindsOf('11 - 1/2"')).toEqual(["Numeral", "Minus", "Length"]);
    expect(kindsOf('2 1/2"')).toEqual(["Length"]);
    expect(kindsOf("2 1x4")).toEqual(["Numeral", "Section"]);
    expect(kindsOf("# note")).toEqual([]);
    expect(tokenize("# note").comments.map((c) => c.image)).toEqual(["# note"]);
    expect(kindsOf('46-1/2"x16-1/2"')).toEqual(["Length", "By", "Length"]);
    expect(kindsOf("a - b")).toEqual(["Word", "Minus", "Word"]);
    expect(kindsOf("a-b")).toEqual(["Word"]);
    expect(kindsOf("3 high")).toEqual(["Numeral", "word high"]);
  });

  test("words to people run to the end of the line, with any mark in them", () => {
    const tree = parse(
      'plan A 6" bench, #2 of "three"\nnote It’s 1/2" proud # really\nmust a <= b because c, d # e\n',
    );
    expect(tree.complaints).toEqual([]);
    expect(tree.comments).toEqual([]);
    const [plan, note, must] = tree.entries;
    expect(plan).toMatchObject({ kind: "plan", title: { text: 'A 6" bench, #2 of "three"' } });
    expect(note).toMatchObject({ title: { text: 'It’s 1/2" proud # really' } });
    expect(must).toMatchObject({ because: { text: "c, d # e" } });
  });

  test("said by whom is words to the end of the line", () => {
    const tree = parse(
      "plan X\n  floor limit 58 psf by the building's engineer, Ms. 6\" Nail\n  written by us & them\n",
    );
    expect(tree.complaints).toEqual([]);
    expect(tree.entries[0]!.clauses).toMatchObject([
      { kind: "floor limit", by: { text: "the building's engineer, Ms. 6\" Nail" } },
      { kind: "written by", text: { text: "us & them" } },
    ]);
  });
});

describe("names", () => {
  test("may be a keyword's word", () => {
    const text =
      'part end 2 of 1x6, length 12"\npart step 1 of 1x6, length 3"\npart back 1 of 1x4, length 9"\nfasten side and end into leg, #8 x 2"\nplace back front to back, flat\n';
    const tree = parse(text);
    expect(tree.complaints).toEqual([]);
    expect(tree.entries[3]).toMatchObject({
      first: [{ thing: { name: { text: "side" } } }, { thing: { name: { text: "end" } } }],
    });
    expect(tree.entries[4]).toMatchObject({ subject: { name: { text: "back" }, where: [] } });
  });

  test("may be x, where a name is due", () => {
    const tree = parse(
      'part x 1 of 2x4, length 9"\nmeasure y = length of x * 2\nbox b, inside 2" x 3" x y\n',
    );
    expect(tree.complaints).toEqual([]);
    expect(tree.entries[0]).toMatchObject({ kind: "part", name: { text: "x" } });
  });

  test("are narrowed by where they stand", () => {
    const tree = parse("place ledger across, behind front left leg\n");
    expect(tree.entries[0]!.clauses[1]).toMatchObject({
      kind: "touches",
      relation: "behind",
      target: { where: [{ text: "front" }, { text: "left" }], name: { text: "leg" } },
    });
  });
});

describe("recovery", () => {
  test("a broken clause costs that clause only", () => {
    const tree = parse('part leg 4 of 2x4, lenght 9", width 2"\npart rail 2 of 2x4, length 8"\n');
    expect(tree.complaints).toHaveLength(1);
    expect(tree.entries[0]).toMatchObject({ kind: "part", clauses: [{ kind: "broken" }, { kind: "width" }] });
    expect(tree.entries[1]).toMatchObject({ kind: "part" });
  });

  test("a misspelt first word costs that entry only, and keeps its lines", () => {
    const tree = parse('prat leg of 2x4\n  length 9"\npart rail 2 of 2x4, length 8"\n');
    expect(tree.entries.map((e) => e.kind)).toEqual(["unknown", "part"]);
    expect(tree.complaints).toHaveLength(1);
  });

  test("lists go on over commas", () => {
    const tree = parse(
      'stock 2x4, sold 8\' $4.20, 10\' $5.60, on hand 3 of 41", 1 of 8\' bad 30" to 36" and 40" to 41"\n',
    );
    expect(tree.complaints).toEqual([]);
    expect(tree.entries[0]!.clauses).toMatchObject([
      { kind: "sold", offers: [{}, {}] },
      { kind: "on hand", items: [{ bad: [] }, { bad: [{}, {}] }] },
    ]);
  });

  test.each([["\r\n"], ["\n"], ["\r"]])(
    "line ends %j, a byte order mark and no last line end are read alike",
    (end) => {
      const tree = parse(`\uFEFFplan A${end}  outdoors${end}part leg 4 of 2x4, length 9"`);
      expect(tree.complaints).toEqual([]);
      expect(tree.entries.map((e) => e.kind)).toEqual(["plan", "part"]);
    },
  );
});

describe("letters outside the plane, two units each", () => {
  const told = (text: string) =>
    parse(text).complaints.map(({ start, end, slots }) => [text.slice(start, end), ...Object.values(slots)]);

  test("are told whole where they mean nothing", () => {
    expect(told('part leg 4 of 2x4, 🪚, length 9"')).toEqual([["🪚", "🪚"]]);
    expect(told("part 🪚 4 of 2x4").flat().join("")).not.toMatch(HALF);
  });

  test.each([37, 38, 39, 40])(
    "are not cut in half where a message shortens %i letters before one",
    (before) => {
      const long = `part leg 4 of 2x4, length ${"9".repeat(before)}🪚🪚🪚`;
      expect(
        told(`${long}\n${"a".repeat(before)}🪚🪚🪚`)
          .flat()
          .join(""),
      ).not.toMatch(HALF);
    },
  );
});

/** The first half without its second, or the second without its first. */
const HALF = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;
