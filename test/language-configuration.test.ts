/**
 * What an editor does by itself on Enter and while a line is typed, by `grammar/language-configuration.json`, asked as
 * VS Code asks it: the first rule that fits counts, and a line that comes to match is moved out.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { applied } from "../grammar/format";
import { ENTRY_FORMS } from "../grammar/forms";
import { GO_ON_BELOW, GO_ON_WHEN_BARE } from "../grammar/next-line";
import { parse } from "../grammar/parser";
import { formatOnNewLine } from "../server/features/format";
import { atCaret } from "./features/plans";

interface Rule {
  readonly beforeText: string;
  readonly afterText?: string;
  readonly action: {
    readonly indent: "none" | "indent";
    readonly appendText?: string;
    readonly removeText?: number;
  };
}
const file = join(__dirname, "../grammar/language-configuration.json");
const { onEnterRules: rules, indentationRules: indents } = JSON.parse(readFileSync(file, "utf8")) as {
  readonly onEnterRules: readonly Rule[];
  readonly indentationRules: Readonly<Record<string, string>>;
};

/** The text once Enter was pressed at the ‸, and where the cursor then is. */
function enter(marked: string): string {
  const [before = "", after = ""] = marked.split("‸");
  const left = before.slice(before.lastIndexOf("\n") + 1);
  const right = after.split("\n")[0]!;
  const rule = rules.find(
    (r) => new RegExp(r.beforeText).test(left) && new RegExp(r.afterText ?? "").test(right),
  )!;
  const { indent, appendText = "", removeText = 0 } = rule.action;
  const blanks = /^\s*/.exec(left)![0];
  const kept = blanks.slice(0, Math.max(0, blanks.length - removeText));
  return `${before}\n${kept}${indent === "indent" ? "  " : ""}${appendText}‸${after}`;
}

/** The text once Enter was pressed in an editor that begins every line at the left edge, and asks the server. */
function asked(marked: string): string {
  const { plan, offset } = atCaret(marked.replace("‸", "\n‸"));
  return applied(plan.text, formatOnNewLine(plan.text, offset));
}

const line = (text: string): string => text.replace("‸", "");

describe("Enter, by rules and by the server alike", () => {
  test.each([
    ["behind the name of a stock", "stock 2x4‸", "stock 2x4\n  ‸"],
    ["behind a stock that says all on one line", "stock 2x4, sold 8' $4‸", "stock 2x4, sold 8' $4\n‸"],
    ["behind a plan's title with a comma", "plan Bench, for two‸", "plan Bench, for two\n  ‸"],
    ["behind a step", "step Oil it‸", "step Oil it\n  ‸"],
    ["behind tools", "tools‸", "tools\n  ‸"],
    ["behind a box with walls", "box b, walls a‸", "box b, walls a\n  ‸"],
    ["behind a part", 'part a of 2x4, length 3"‸', 'part a of 2x4, length 3"\n‸'],
    ["behind a comma", "part a of 2x4,‸", "part a of 2x4,\n  ‸"],
    ["behind a note that ends with a comma", "note Lay it, turn it,‸", "note Lay it, turn it,\n‸"],
    [
      "behind a reason that ends with a comma",
      "accept over-budget because a,‸",
      "accept over-budget because a,\n‸",
    ],
    ["behind a clause", "stock 2x4\n  keep‸", "stock 2x4\n  keep\n  ‸"],
    ["behind a list with a comma", "stock 2x4\n  sold 6' $5,‸", "stock 2x4\n  sold 6' $5,\n    ‸"],
    [
      "in such a list",
      "stock 2x4\n  sold 6' $5,\n    8' $6,‸",
      "stock 2x4\n  sold 6' $5,\n    8' $6,\n    ‸",
    ],
    [
      "behind a placed piece of an assembly",
      "assembly g\n  place a flat‸",
      "assembly g\n  place a flat\n  ‸",
    ],
    ["behind its comma", "assembly g\n  place a flat,‸", "assembly g\n  place a flat,\n    ‸"],
    ["behind a comment", "# a bench‸", "# a bench\n‸"],
    [
      "behind an indented one",
      "stock 2x4\n  # a, sold 6,‸\n  keep",
      "stock 2x4\n  # a, sold 6,\n  ‸\n  keep",
    ],
    [
      "at the start of a line",
      "part a of 2x4\n  ends square\n‸place a flat",
      "part a of 2x4\n  ends square\n\n‸place a flat",
    ],
    ["before a clause on the same line", 'part a of 2x4,‸ length 3"', 'part a of 2x4,\n  ‸length 3"'],
  ])("%s", (_, marked, after) => {
    // What is carried down is laid out by the server alone.
    expect(enter(marked).replace("‸ ", "‸")).toBe(after);
    expect(asked(marked)).toBe(line(after));
  });

  test("in a comment goes on with it", () => {
    expect(enter("  # a bench ‸for two")).toBe("  # a bench \n  # ‸for two");
  });

  test("on an empty line that is indented leads to the left edge", () => {
    expect(enter("stock 2x4\n    ‸")).toBe("stock 2x4\n    \n‸");
    expect(asked("stock 2x4\n    ‸")).toBe("stock 2x4\n\n");
  });

  test("before an entry on the same line puts it at the left edge", () => {
    expect(enter("  keep ‸part a of 2x4")).toBe("  keep \n‸part a of 2x4");
    expect(enter("  keep ‸box of 10")).toBe("  keep \n  ‸box of 10");
  });
});

describe("Enter, as the server answers it", () => {
  test.each([
    ["lays out the line", 'measure gap=3"+1"‸', 'measure gap = 3" + 1"\n'],
    [
      "and no other",
      'measure a=1"\nmeasure b=1"‸\nmeasure c=1"',
      'measure a=1"\nmeasure b = 1"\n\nmeasure c=1"',
    ],
    ["leaves a line that it cannot read", "part   leg of‸", "part   leg of\n"],
    [
      "moves out an entry that was indented",
      "stock 2x4\n  keep\n  part a  of 2x4‸",
      "stock 2x4\n  keep\npart a of 2x4\n",
    ],
    ["also a placed one", "stock 2x4\n  place a  flat, on floor‸", "stock 2x4\nplace a flat, on floor\n"],
    ["and what goes on from it", "stock 2x4\n  step Oil it‸", "stock 2x4\nstep Oil it\n  "],
    ["at the top of a text", "  part a of 2x4‸", "part a of 2x4\n"],
    [
      "not one that would take lines with it",
      "stock 2x4\n  sheet p‸\n  keep",
      "stock 2x4\n  sheet p\n  \n  keep",
    ],
    ["not one of an assembly", "assembly g\n  place a flat‸", "assembly g\n  place a flat\n  "],
    [
      "not the pack of a fastener",
      'fastener d, #8 x 2" screw\n  box of 100‸',
      'fastener d, #8 x 2" screw\n  box of 100\n  ',
    ],
    [
      "behind a list begins under it",
      "stock 2x4\n  sold 6' $5,\n    8' $6‸",
      "stock 2x4\n  sold 6' $5,\n    8' $6\n  ",
    ],
    ["in a word to people leaves it", "note Lay  it‸ down", "note Lay  it\n down"],
  ])("%s", (_, marked, after) => {
    expect(asked(marked)).toBe(after);
  });
});

describe("a line that is typed", () => {
  const out = new RegExp(indents.decreaseIndentPattern!);
  const words = ENTRY_FORMS.map((e) => e.word);
  /** Entry words that open a clause, or an inner line of an assembly. */
  const may = new Set([
    ...ENTRY_FORMS.flatMap((e) => e.clauses.map((c) => c.opens[0])),
    "place",
    "fasten",
    "glue",
  ]);

  test("is moved out by each entry's word that opens nothing else", () => {
    for (const word of words.filter((w) => !may.has(w))) {
      expect([word, out.test(`  ${word} `)]).toEqual([word, true]);
      expect(out.test(`  ${word}s `)).toBe(false);
    }
  });

  test("stays by each clause and each line of an assembly", () => {
    const inside = ENTRY_FORMS.flatMap((e) => e.clauses.map((c) => `  ${c.example}`));
    inside.push("  place a flat", "  fasten a into b", "  glue a to b", "  # part a");
    expect(inside.filter((l) => [...l].some((__, i) => out.test(l.slice(0, i + 1))))).toEqual([]);
  });

  test("is moved out by a box once it cannot be a pack", () => {
    expect(["  box", "  box ", "  box o", "  box of", "  box of 100 $9"].filter((l) => out.test(l))).toEqual(
      [],
    );
    expect(["  box b", "  box on-top", "  box of-oak"].filter((l) => !out.test(l))).toEqual([]);
  });

  test("finds the left edge by any line at it: lines further in and comments are looked past", () => {
    const past = new RegExp(indents.unIndentedLinePattern!);
    const opens = new RegExp(indents.increaseIndentPattern!);
    expect(["  keep", "# note", "#"].filter((l) => !past.test(l))).toEqual([]);
    expect(
      ["part a of 2x4", "place a flat", "#8"].filter((l) => past.test(l) || !opens.test(l) || !out.test(l)),
    ).toEqual([]);
    expect(["# note", "#", "  keep"].filter((l) => opens.test(l))).toEqual([]);
  });
});

test("the rules name the entries that the server goes by", () => {
  const all = rules.map((r) => r.beforeText);
  expect(all.some((t) => t.includes(`(?:${GO_ON_BELOW.join("|")})`))).toBe(true);
  expect(all.some((t) => t.includes(`(?:${GO_ON_WHEN_BARE.join("|")})(?:`))).toBe(true);
});

test("a line that is indented alone has its cure, which moves it", () => {
  for (const text of ["  part a of 2x4", "stock 2x4\n  part a of 2x4\n", "\n\t place a flat\n"]) {
    const found = parse(text).complaints.find((c) => c.code === "indented-alone");
    const better = applied(text, [found!.cure!]);
    expect(better).toMatch(/^(?:part|place) a/m);
    expect(parse(better).complaints).toEqual([]);
  }
});
