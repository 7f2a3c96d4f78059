/** The walkthrough: its practice plan has the two mistakes it speaks of and no other, and its pictures show what is so. */
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "../grammar/parser";
import { countsOf, evaluate } from "../server/service";
import { mended, PLACE, picture, placed, practiceText, STEPS, workedOut } from "./e2e/walkthrough-pictures";

const LANGUAGES = ["en", "fr"] as const;
const codes = (text: string): string[] =>
  workedOut(text)
    .problems.map(({ code }) => code)
    .sort();

describe.each(LANGUAGES)("the practice plan (%s)", (language) => {
  const text = practiceText(language);

  test("has a screw that is too long and a board that stands nowhere; each goes by itself", () => {
    expect(codes(text)).toEqual(["cut-never-placed", "screw-pokes-through"]);
    expect(codes(mended(text))).toEqual(["cut-never-placed"]);
    expect(placed(text)).not.toBe(mended(text));
    expect(codes(placed(text))).toEqual([]);
    expect(countsOf(workedOut(placed(text))).unchecked).toBeGreaterThan(0);
  });

  test("needs no other file, so that it works without a folder", () => {
    const alone = evaluate("untitled:Untitled-1", text, (path) => {
      throw new Error(`${path} was asked for`);
    });
    expect(alone.problems.map(({ code }) => code).sort()).toEqual(codes(text));
  });

  test("has lines that are read without scrolling", () => {
    for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(63);
  });
});

test("the plan is the same in every language but for its remarks, its title and its steps", () => {
  const bare = (text: string): string[] => {
    const { entries } = parse(text);
    return entries
      .filter(({ kind }) => kind !== "plan" && kind !== "step")
      .map(({ start, end }) => text.slice(start, end));
  };
  expect(bare(practiceText("fr"))).toEqual(bare(practiceText("en")));
  expect(bare(practiceText("en")).length).toBeGreaterThan(8);
});

test("the walkthrough tells the line that the plan takes", async () => {
  for (const file of ["package.nls.json", "package.nls.fr.json"]) {
    const words = (await import(join(__dirname, "..", file), { with: { type: "json" } })).default as Record<
      string,
      string
    >;
    expect(words["walkthrough.place.text"]).toContain(`${PLACE.map((line) => line.trim()).join(" ")}`);
  }
});

describe.each(LANGUAGES)("pictures (%s)", (language) => {
  test.each(STEPS)(
    "%s shows what the program shows, in colours of the theme and without styles",
    async (step) => {
      const svg = picture(step, language);
      const ending = language === "en" ? ".svg" : `.${language}.svg`;
      await expect(svg).toMatchFileSnapshot(`../client/media/walkthrough/${step}${ending}`);
      expect(svg).not.toMatch(/<style| style="|<script|href=|NaN|undefined/);
      expect(svg.match(/<svg/g)).toHaveLength(1);
      expect(svg).toMatch(/var\(--vscode-editor-background/);
      expect(svg.length).toBeLessThan(40_000);
    },
  );
});
