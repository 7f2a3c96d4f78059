/** 8. No text of a plan reaches HTML or SVG unescaped, whichever words, names or file it comes from. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Reader } from "../../server/plan";
import { evaluate, problemPages, sheetOf, writeSheet } from "../../server/service";
import { PAGE_SCRIPT } from "../../server/sheet/page/script";
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
);

/** Everything that looks like a tag in a page must be one of the sheet's own. */
function strangeTags(html: string): string[] {
  return [...html.matchAll(TAG)].map((m) => m[1]!.toLowerCase()).filter((name) => !KNOWN.has(name));
}

test("plans with markup in every kind of words", () => {
  fc.assert(
    fc.property(fc.oneof(madePlan, brokenSample), evil, evil, (plan, a, b) => {
      const text = `plan ${a}\n  written by ${b}\n  licence ${a}\n  floor limit 40 psf by ${b}\nshop ${a}\nnote ${b}\nstep ${a}\nmust 1" at most 2" because ${b}\naccept over-budget because ${a}\n${plan}part ${a} of ${b}\n`;
      const page = writeSheet(sheetOf(evaluate(`${a}.sawbuck`, text, nothing)), "html");
      const html = page.replace(`<script>${PAGE_SCRIPT}</script>`, "");
      expect(html.length).toBeLessThan(page.length);
      expect(strangeTags(html)).toEqual([]);
      expect(html.replace(/="[^"]*"/g, "")).not.toMatch(/<[^>]*\son[a-z]+\b/i);
      expect(html).not.toContain("<script");
    }),
    { numRuns: RUNS },
  );
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
