/** 8. No text of a plan reaches a format unescaped, whichever words, names or file it comes from, and however long it is. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Reader } from "../../server/plan";
import { drawingsOf, evaluate, problemPages, sheetOf, writeSheet } from "../../server/service";
import { PAGE_SCRIPT } from "../../server/sheet/page/script";
import { cellsOf, isNoFormula } from "../sheet/csv-back";
import { readStrictly } from "../sheet/strict-markup";
import { brokenSample, madePlan, RUNS } from "./plans";

const nothing: Reader = (path) => ({ file: path, refused: "there is no such file" });
const TAG = /<\/?([a-zA-Z!][^\s>/]*)/g;
const KNOWN = new Set(
  "!doctype html head meta title style body main section article header footer h1 h2 h3 p ul ol li dl dt dd div span strong em small b i code pre table thead tbody tr th td caption figure figcaption label input svg g path line rect text tspan defs pattern polyline polygon circle title desc abbr br hr time nav colgroup col details summary button".split(
    " ",
  ),
);
const evil = fc.constantFrom(
  "<script>alert(1)</script>",
  "<img src=x onerror=alert(1)>",
  '"><svg onload=x>',
  "</style><b>",
  "]]>",
  "<!-- x",
  "&lt;",
  "javascript:x",
  '=HYPERLINK("javascript:x")',
  " +1; =1",
  "\u202egnp.\u2066",
);

/** Everything that looks like a tag in a page must be one of the sheet's own. */
function strangeTags(html: string): string[] {
  return [...html.matchAll(TAG)].map((m) => m[1]!.toLowerCase()).filter((name) => !KNOWN.has(name));
}

test("plans with markup in every kind of words", () => {
  fc.assert(
    fc.property(fc.oneof(madePlan, brokenSample), evil, evil, (plan, a, b) => {
      const text = `plan ${a}\n  written by ${b}\n  licence ${a}\n  floor limit 40 psf by ${b}\nshop ${a}\nnote ${b}\nstep ${a}\nmust 1" at most 2" because ${b}\naccept over-budget because ${a}\nbuilt 2026-05-09 by ${b}\n  changed ${a}\n  wear 2027-04-01 ${b}\n${plan}part ${a} of ${b}\n`;
      const page = writeSheet(sheetOf(evaluate(`${a}.sawbuck`, text, nothing)), "html");
      const html = page.replace(`<script>${PAGE_SCRIPT}</script>`, "");
      expect(html.length).toBeLessThan(page.length);
      expect(strangeTags(html)).toEqual([]);
      expect(html.replace(/="[^"]*"/g, "")).not.toMatch(/<[^>]*\son[a-z]+\b/i);
      expect(html).not.toContain("<script");
      for (const cell of cellsOf(sheetOf(evaluate(`${a}.sawbuck`, text, nothing)))) isNoFormula(cell);
    }),
    { numRuns: RUNS },
  );
});

test.each([
  ["letters", "x"],
  ["tags", "<b>"],
  ["quotes", "'“’"],
  ["formulas", "=1;"],
  ["overrides", "\u202ea"],
])("ten thousand characters of %s in every text of a plan, and as many in every name", (_, unit) => {
  const long = unit.repeat(10_000 / unit.length);
  const name = (first: string): string => first.padEnd(10_000, "a");
  const text = `plan ${long}
  written by ${long}
  licence ${long}
  floor limit 40 psf by ${long}
shop ${long}
note ${long}
stock 2x4, sold 8' $4.00
fastener ${name("f")} #8 x 2", box of 100 $9.00
measure ${name("m")} = 9"
part ${name("p")} of 2x4, length ${name("m")}
part ${name("q")} 4 of 2x4, length 20"
place ${name("p")} upright, on floor, at each corner of 40" x 20"
fasten ${name("p")} into ${name("q")}, 2 ${name("f")} at each end
ring ${name("r")} = ${name("q")} and ${name("q")}
must ${name("m")} at most 2" because ${long}
accept over-budget because ${long}
step ${long}
  uses ${name("p")}
`;
  const evaluated = evaluate(`${long}.sawbuck`, text, nothing);
  const sheet = sheetOf(evaluated);
  expect(sheet.pieces.length).toBe(4);
  readStrictly(writeSheet(sheet, "html", { drawings: drawingsOf(evaluated) }));
  expect(JSON.parse(writeSheet(sheet, "json"))).toEqual(sheet);
  expect(writeSheet(sheet, "text")).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069]/u);
  for (const cell of cellsOf(sheet)) isNoFormula(cell);
});

test("the sheet's tags are known because they are there", () => {
  const html = writeSheet(
    sheetOf(evaluate("a.sawbuck", 'plan A\npart leg 4 of 2x4, length 9"\n', nothing)),
    "html",
  );
  expect(html).toContain("<main");
  expect(strangeTags("<script>")).toEqual(["script"]);
  expect(problemPages().length).toBeGreaterThan(20);
});
