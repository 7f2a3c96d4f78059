/** What stands above a plan: of every sample word for word, and single cases. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics";
import { lensesOf } from "../../server/features/lens";
import { diskReader } from "../../server/lsp/disk";
import { countsOf, evaluate, sheetOf } from "../../server/service";
import { anyText, SOME } from "../property/plans";
import { withMarks, worked } from "./plans";

const titles = (text: string, language: "en" | "fr" = "en"): string[] =>
  lensesOf(worked(text), language).map(({ title }) => title);

const POST = `stock 2x4, sold 8' $4.20\npart leg 3 of 2x4, length 60"\n`;

test("every sample", () => {
  const names = ["cold-frame", "post-stand", "potting-bench", "reading-shelf", "salad-trough", "tree-seat"];
  const told = names.map((name) => {
    const file = new URL(`../../samples/${name}.sawbuck`, import.meta.url).pathname;
    const plan = evaluate(file, readFileSync(file, "utf8"), diskReader);
    const inLanguage = (language: "en" | "fr") =>
      lensesOf(plan, language).map(({ title, opens }) => `${title} (${opens})`);
    return [name, ...inLanguage("en"), ...inLanguage("fr")].join("\n  ");
  });
  expect(told.join("\n")).toMatchInlineSnapshot(`
    "cold-frame
      6 boards, 1 sheet, 3 of them on hand (sheet)
      $43.88 of $160 (sheet)
      11 things not checked (not checked)
      6 planches, 1 panneau, dont 3 en réserve (sheet)
      $43.88 sur $160 (sheet)
      11 points non vérifiés (not checked)
    post-stand
      10 boards, 3 of them on hand (sheet)
      $130.96 of $190 (sheet)
      8 things not checked (not checked)
      10 planches, dont 3 en réserve (sheet)
      $130.96 sur $190 (sheet)
      8 points non vérifiés (not checked)
    potting-bench
      17 boards, 2 sheets, 8 of them on hand (sheet)
      $191.17 (sheet)
      4 things not checked (not checked)
      17 planches, 2 panneaux, dont 8 en réserve (sheet)
      $191.17 (sheet)
      4 points non vérifiés (not checked)
    reading-shelf
      6 boards, 1 sheet (sheet)
      €65.72 of €110 (sheet)
      4 things not checked (not checked)
      6 planches, 1 panneau (sheet)
      €65.72 sur €110 (sheet)
      4 points non vérifiés (not checked)
    salad-trough
      13 boards, 2 of them on hand (sheet)
      $126.46 of $160 (sheet)
      10 things not checked (not checked)
      13 planches, dont 2 en réserve (sheet)
      $126.46 sur $160 (sheet)
      10 points non vérifiés (not checked)
    tree-seat
      21 boards (sheet)
      $542.61 (sheet)
      9 things not checked (not checked)
      21 planches (sheet)
      $542.61 (sheet)
      9 points non vérifiés (not checked)"
  `);
});

describe("it stands", () => {
  const marked = (text: string): string => {
    const [first] = lensesOf(worked(text));
    return first ? withMarks(text, [first.range]) : text;
  };

  test("above the plan line, wherever that stands", () => {
    expect(marked(`${POST}plan A bench\n`)).toContain("⟦plan⟧ A bench");
  });

  test("above the first part where there is no plan line", () => {
    expect(marked(POST)).toContain("⟦part⟧ leg");
  });

  test("nowhere in a file of stock and prices", () => {
    expect(titles(`stock 2x4, sold 8' $4.20\nprat\n`)).toEqual([]);
    expect(titles("")).toEqual([]);
  });
});

describe("it tells", () => {
  test("boards and what they cost, of the budget where there is one", () => {
    // Three legs of 60" need three boards of 8'.
    expect(titles(POST)).toContain("3 boards");
    expect(titles(POST)).toContain("$12.60");
    expect(titles(`plan A\n  budget $20\n${POST}`)).toContain("$12.60 of $20");
    expect(titles(`plan A\n  budget €20\n${POST}`)).toContain("$12.60");
  });

  test("what is on hand, and sheets", () => {
    expect(titles(POST.replace("sold", "on hand 2 of 8'\n  sold"))).toContain("3 boards, 2 of them on hand");
    const sheet = `sheet ply, plywood 1/2", sold 48" x 96" $38\npart top 1 of ply, length 20", width 10"\n`;
    expect(titles(sheet)).toContain("1 sheet");
    expect(titles(POST + sheet)).toContain("3 boards, 1 sheet");
  });

  test("that prices are missing, or that they are in two currencies", () => {
    const rail = `stock 1x4, sold 8'\npart rail 1 of 1x4, length 60"\n`;
    expect(titles(POST + rail)).toContain("$12.60, 1 price missing");
    expect(titles(rail)).toContain("1 price is missing");
    expect(titles(POST + rail.replace("8'", "8' €3"))).toContain("prices in $ and €");
  });

  test("that there is more, where a piece has no wood or its length is not known", () => {
    const told = titles(`${POST}part long 1 of 2x4, length 20'\n`);
    expect(told).toContain("at least 3 boards");
    expect(told).toContain("at least $12.60");
    const sheet = `sheet ply, plywood 1/2", sold 48" x 96" $38\npart top 1 of ply, length 20", width 10"\n`;
    expect(titles(`${sheet}part wide 1 of ply, length 60", width 50"\n`)).toContain("at least 1 sheet");
  });

  test("as many problems as the editor lists, and none where there is none", () => {
    const bad = worked(`plan A\nprat x\npart leg 3 of 2x4, length rimm\n`);
    const count = diagnosticsOf(bad).length;
    expect(count).toBeGreaterThan(1);
    expect(lensesOf(bad)).toContainEqual(
      expect.objectContaining({ title: `${count} problems`, opens: "problems" }),
    );
    expect(titles(POST).join()).not.toContain("problem");
  });

  test("as much that was not checked as the list has, with what is not drawn", () => {
    const plan = worked(`plan A\n${POST}`);
    const { length } = sheetOf(plan).notChecked;
    expect(length).toBeGreaterThan(plan.worked.unchecked.length);
    expect(countsOf(plan).unchecked).toBe(length);
    expect(lensesOf(plan)).toContainEqual(
      expect.objectContaining({ title: `${length} ${length === 1 ? "thing" : "things"} not checked` }),
    );
  });

  test("nothing that approves", () => {
    expect(titles(POST).join()).not.toMatch(/\b(ok|safe|fine|good|pass)/i);
  });
});

test("of any text it stands inside it", () => {
  fc.assert(
    fc.property(anyText, (text) => {
      for (const { range, title } of lensesOf(worked(text))) {
        expect(range.start).toBeGreaterThanOrEqual(0);
        expect(range.end).toBeLessThanOrEqual(text.length);
        expect(range.start).toBeLessThan(range.end);
        expect(title).toMatch(/^\S.*\S$/);
      }
    }),
    { numRuns: SOME },
  );
});
