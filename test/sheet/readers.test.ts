/** The sheet for a group by stations, for learners, and for a plan that is built more than once. */
import { describe, expect, it } from "vitest";
import { evaluate, sheetDocument, sheetOf } from "../../server/service";
import type { Block, Group, SheetDocument, Table } from "../../server/sheet/document";
import { plainWords, runsOf } from "../../server/sheet/document";
import { tablesIn } from "./document-words";
import { PLANS } from "./samples";

const { sheet } = PLANS.find(({ name }) => name === "salad-trough")!;
const headings = ({ sections }: SheetDocument): string[] => sections.map(({ heading }) => heading);
const sectionOf = ({ sections }: SheetDocument, name: string) => sections.find((s) => s.name === name)!;

const BENCH = `plan Bench
  make 6
part leg 4 of 2x4, length 16"
part slat 3 of 2x4, length 40"
fasten slat into leg, 2 #8 x 2-1/2" at each end
`;
const made = sheetOf(evaluate("bench.sawbuck", BENCH, (file) => ({ file, refused: "no" })));

describe("by station", () => {
  it("marks, cuts, drills, finishes and assembles, each on a page of its own", () => {
    const document = sheetDocument(sheet(), { reader: "stations" });
    const stations = document.sections.filter(({ newPage }) => newPage).map(({ heading }) => heading);
    expect(stations).toEqual([
      "First station: mark the boards: Board layouts",
      "Second station: cut: Cut list",
      "Third station: drill: Where the screws go",
      "Fourth station: finish: Finish",
      "Fifth station: put together: When to stop",
    ]);
  });

  it("leaves nothing out that the builder's sheet has", () => {
    const own = (reader: "builder" | "stations") =>
      sheetDocument(sheet(), { reader })
        .sections.map(({ name }) => name)
        .sort();
    expect(own("stations")).toEqual(own("builder"));
  });
});

describe("for learners", () => {
  const document = sheetDocument(sheet(), { reader: "learners" });
  const cuts = tablesIn(document).find(({ name }) => name === "cuts")!;
  const column = (table: Table, name: string): number => table.columns.findIndex((c) => c.name === name);
  const wordsIn = (table: Table, name: string) =>
    table.groups.flatMap(({ rows }) =>
      rows.map(({ cells }) => {
        const cell = cells[column(table, name)]!;
        return "words" in cell ? cell.words : "";
      }),
    );

  it("has a blank for each length that follows from others, with the rule beside it", () => {
    const blank = wordsIn(cuts, "length").map((words) =>
      runsOf(words).some(({ style }) => style === "blank"),
    );
    const rules = wordsIn(cuts, "rule").map((words) => plainWords(words));
    expect(blank).toEqual(rules.map((rule) => rule !== ""));
    expect(rules).toContain("overall width of ends + 2 * overhang");
    expect(blank.filter(Boolean).length).toBeGreaterThan(5);
  });

  it("has the answers on a page of their own, every blank one with its length", () => {
    const names = document.sections.map(({ name }) => name);
    expect(sectionOf(document, "answers").newPage).toBe(true);
    const before = document.sections.slice(0, names.indexOf("answers"));
    const answers = tablesIn({ ...document, sections: [sectionOf(document, "answers")] })[0]!;
    const rows = sheet().cutList.flatMap((group) => group.rows.filter(({ rule }) => rule !== ""));
    const lengths = wordsIn(answers, "length").map((words) => runsOf(words)[0]?.text);
    expect(lengths.sort()).toEqual(rows.map(({ length }) => length?.text).sort());
    expect(before.some(({ name }) => name === "boards")).toBe(false);
    expect(headings(document)).toContain("Answers");
  });

  it("tells no answer beside the tools, and how an answer is measured with it", () => {
    const shelf = PLANS.find(({ name }) => name === "reading-shelf")!.sheet();
    const said = (reader: "builder" | "learners") =>
      JSON.stringify(sheetDocument(shelf, { reader }).sections.filter(({ name }) => name === "tools"));
    expect(said("builder")).toContain("longest cut along 900 mm");
    expect(said("learners")).not.toContain("900 mm");
    const answers = tablesIn({ ...document, sections: [sectionOf(document, "answers")] })[0]!;
    expect(wordsIn(answers, "measured")).toContain('long point to long point, short point 43"');
  });

  it("tells how a length that is no blank is measured", () => {
    const plan = 'part brace 2 of 2x4, length 30", ends mitered 45°, long point to long point\n';
    const given = sheetOf(evaluate("b.sawbuck", plan, (file) => ({ file, refused: "no" })));
    const own = tablesIn(sheetDocument(given, { reader: "learners" })).find(({ name }) => name === "cuts")!;
    expect(JSON.stringify(own.groups)).toContain("long point to long point, short point 23");
  });
});

describe("built six times", () => {
  const document = sheetDocument(made);
  const groups = sectionOf(document, "kits").blocks.filter((b: Block): b is Group => b.kind === "group");

  it("prints a list for each kit, and one for all", () => {
    expect(groups.map(({ heading }) => heading)).toEqual([
      ...[1, 2, 3, 4, 5, 6].map((n) => `Kit ${n} of 6`),
      "All 6 kits together",
    ]);
    const texts = (group: Group) =>
      group.blocks.flatMap((block) =>
        block.kind === "table"
          ? block.groups.flatMap(({ rows }) =>
              rows.map(({ cells }) =>
                cells.map((c) => ("words" in c ? plainWords(c.words) : "☐")).join(" | "),
              ),
            )
          : block.kind === "paragraph"
            ? [plainWords(block.words)]
            : [],
      );
    expect(texts(groups[0]!)).toMatchInlineSnapshot(`
      [
        "A | 4 | leg | 16" 406 mm | ☐",
        "B | 3 | slat | 40" 1016 mm | ☐",
        "And 12 #8 x 2-1/2".",
      ]
    `);
    expect(texts(groups.at(-1)!)).toMatchInlineSnapshot(`
      [
        "A | leg | 4 | 24",
        "B | slat | 3 | 18",
        " | #8 x 2-1/2" | 12 | 72",
      ]
    `);
  });

  it("has a box to tick of its own for each row of each kit", () => {
    const ids = groups.flatMap(({ blocks }) =>
      blocks.flatMap((b) =>
        b.kind === "table"
          ? b.groups.flatMap(({ rows }) =>
              rows.flatMap(({ cells }) =>
                cells.flatMap((c) => ("ticks" in c ? c.ticks.map(({ id }) => id) : [])),
              ),
            )
          : [],
      ),
    );
    expect(ids.length).toBe(12);
    expect(new Set(ids).size).toBe(12);
  });

  it("prints one list that holds for all where there would be very many", () => {
    const many = sheetOf(
      evaluate("b.sawbuck", BENCH.replace("make 6", "make 40"), (file) => ({ file, refused: "no" })),
    );
    const own = sectionOf(sheetDocument(many), "kits").blocks.filter(
      (b: Block): b is Group => b.kind === "group",
    );
    expect(own.map(({ heading }) => heading)).toEqual(["Each of the 40 kits", "All 40 kits together"]);
  });

  it("has no such list for a plan that is built once", () => {
    expect(sheetDocument(sheet()).sections.some(({ name }) => name === "kits")).toBe(false);
  });
});
