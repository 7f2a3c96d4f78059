/** What an editor does in the record of how a plan was built. */
import { expect, test } from "vitest";
import { applied } from "../../grammar/format";
import { completionsAt } from "../../server/features/completion";
import { definitionAt } from "../../server/features/definition";
import { foldsOf } from "../../server/features/folding";
import { hoverAt } from "../../server/features/hover";
import { highlightsAt } from "../../server/features/references";
import { renamable, renamed, suffers } from "../../server/features/rename";
import { symbolsOf } from "../../server/features/symbols";
import { tokensOf } from "../../server/features/tokens";
import { atCaret, memory, PLAN, withMarks, worked } from "../features/plans";

const TEXT = `measure rim = 30"
stock pine of 2x4, sold 8' $4
part leg 4 of 2x4, length rim - 1"
part rail 2 of 2x4, length 20"
built 2026-05-09 by Ms Okoro's group
  measured rim = 27-1/2" because the wall leans
  measured length of rail = 19"
  used pine instead of 2x4
  changed Two more screws in each corner
  wear 2027-04-01 One leg is soft
`;

test("the line and its day tell what came out otherwise, and which parts that is about", () => {
  const told = (language: "en" | "fr", at = "built 2026") =>
    hoverAt(worked(TEXT), TEXT.indexOf(at) + at.length - 2, language)?.markdown;
  expect(told("en")).toMatchInlineSnapshot(`
    "**Built on 2026-05-09** by Ms Okoro's group

    - rim: planned 30" (762 mm), built 27-1/2" (699 mm), because the wall leans; what follows from it: leg
    - length of rail: planned 20" (508 mm), built 19" (483 mm)
    - pine instead of 2x4 (leg and rail)
    - Changed: Two more screws in each corner
    - Wear found on 2027-04-01: One leg is soft

    \`sawbuck diff\` with \`--built\` tells what comes of it."
  `);
  expect(told("fr")).toMatchInlineSnapshot(`
    "**Construit le 2026-05-09** par « Ms Okoro's group »

    - rim : prévu 30" (762 mm), construit 27-1/2" (699 mm), parce que « the wall leans » ; en découle : leg
    - longueur de rail : prévu 20" (508 mm), construit 19" (483 mm)
    - pine à la place de 2x4 (leg et rail)
    - Changé : « Two more screws in each corner »
    - Usure vue le 2027-04-01 : « One leg is soft »

    \`sawbuck diff\` avec \`--built\` dit ce qui en découle."
  `);
  expect(told("en", "bui")).toContain(told("en")!);
  expect(hoverAt(worked("built 2026-05-09\n"), 1)?.markdown).toContain(
    "As planned, as far as the plan says.",
  );
});

test("a name in it is marked with its other places, and leads to where it is declared", () => {
  const marked = (word: string, before: string) => {
    const offset = TEXT.indexOf(before) + before.length;
    const plan = worked(TEXT);
    expect(TEXT.slice(offset).startsWith(word)).toBe(true);
    const at = definitionAt(plan, offset, memory({}));
    return [
      at && TEXT.slice(at.start, at.end),
      highlightsAt(plan, offset).map(({ start, end }) => TEXT.slice(start, end)),
    ];
  };
  expect(marked("rim", "  measured ")).toEqual(["rim", ["rim", "rim", "rim"]]);
  expect(marked("rail", "length of ")).toEqual(["rail", ["rail", "rail"]]);
  expect(marked("pine", "  used ")).toEqual(["pine", ["pine", "pine"]]);
  expect(withMarks(TEXT, highlightsAt(worked(TEXT), TEXT.indexOf("2x4\n  changed")))).toContain(
    "part leg 4 of ⟦2x4⟧, length",
  );
});

test.each([
  ["rim", "top-height", '  measured top-height = 27-1/2" because the wall leans'],
  ["rail", "bar", '  measured length of bar = 19"'],
  ["pine", "fir", "  used fir instead of 2x4"],
])("another name for %s is written in it too, from either place", (name, to, line) => {
  for (const from of [TEXT.indexOf(` ${name} `) + 1, TEXT.lastIndexOf(` ${name} `) + 1]) {
    const plan = worked(TEXT);
    const found = renamable(plan, from);
    if ("refused" in found) throw new Error(found.refused);
    const edits = renamed(plan.worked, found.declared, to);
    expect(suffers(plan.worked, edits, found.declared, to, plan.worked.settings.display)).toBeUndefined();
    const after = applied(TEXT, edits);
    expect(after).toContain(line);
    expect(worked(after).problems).toEqual([]);
  }
});

test("completion offers its clauses, then names, then the words that are still missing", () => {
  const offered = (typed: string, text = TEXT): string[] => {
    const { plan, offset } = atCaret(`${text}${typed}`);
    return completionsAt(plan, offset).map(({ label }) => label);
  };
  const own = (typed: string) => offered(typed, 'measure rim = 30"\npart leg 4 of 2x4, length rim\n');
  expect(own("built 2026-05-09\n  ‸")).toEqual(["measured", "used", "changed", "wear"]);
  expect(own("built 2026-05-09 ‸")).toEqual(["by"]);
  expect(own("built 2026-05-09\n  measured ‸")).toEqual(["rim", "length of"]);
  expect(own("built 2026-05-09\n  measured length of ‸")).toEqual(["leg"]);
  expect(own("built 2026-05-09\n  used ‸")).toContain("2x4");
  expect(own("built 2026-05-09\n  used 1x4 ‸")).toEqual(["instead of"]);
  expect(own("built 2026-05-09\n  changed ‸")).toEqual([]);
  expect(own("built 2026-05-09\n  wear 2027-04-01 ‸")).toEqual([]);
  // Each may be said again.
  expect(offered("  ‸")).toEqual(["measured", "used", "changed", "wear"]);
});

test("the outline has it by its day, it folds, and its words and days have colours", () => {
  const plan = worked(TEXT);
  const symbol = symbolsOf(plan).at(-1)!;
  expect([symbol.kind, symbol.name, symbol.detail]).toEqual([
    "built",
    "built 2026-05-09",
    "Ms Okoro's group",
  ]);
  expect(foldsOf(plan.worked.loaded.whole)).toContainEqual({ first: 4, last: 9, kind: "entry" });
  const words = tokensOf(plan)
    .filter(({ start }) => start >= TEXT.indexOf("built"))
    .map(({ start, end, type }) => `${TEXT.slice(start, end)}: ${type}`);
  expect(words).toMatchInlineSnapshot(`
    [
      "built: keyword",
      "2026-05-09: number",
      "by: keyword",
      "Ms Okoro's group: string",
      "measured: keyword",
      "rim: variable",
      "=: operator",
      "27-1/2": number",
      "because: keyword",
      "the wall leans: string",
      "measured: keyword",
      "length: property",
      "of: keyword",
      "rail: class",
      "=: operator",
      "19": number",
      "used: keyword",
      "pine: enumMember",
      "instead: keyword",
      "of: keyword",
      "2x4: enumMember",
      "changed: keyword",
      "Two more screws in each corner: string",
      "wear: keyword",
      "2027-04-01: number",
      "One leg is soft: string",
    ]
  `);
  expect(plan.file).toBe(PLAN);
});
