/**
 * The page is valid HTML, with nothing said that a reader cannot see or hear: by the recommended rules and those of
 * accessibility of html-validate, offline. What is asked otherwise stands in `html-rules.json`, each with its reason.
 */
import { type ConfigData, HtmlValidate, StaticConfigLoader } from "html-validate";
import { describe, expect, it } from "vitest";
import { drawingsOf, sheetDocument, writeSheet } from "../../server/service";
import { sheetPage } from "../../server/sheet/html";
import RULES from "./html-rules.json";
import { ALL, MISTAKES, PLANS } from "./samples";
import { empty, trough } from "./trough";

type Rules = NonNullable<ConfigData["rules"]>;
const changed = Object.fromEntries(RULES.changed.map(({ rule, setting }) => [rule, setting])) as unknown;
const validator = new HtmlValidate(
  new StaticConfigLoader({ root: true, extends: RULES.extends, rules: changed as Rules }),
);

/** What is wrong with a page, each as `rule, line:column: words (element)`. */
async function violations(html: string): Promise<string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map((m) => `${m.ruleId}, ${m.line}:${m.column}: ${m.message} (${m.selector ?? "the page"})`),
  );
}

describe("the page of", () => {
  it.each(ALL)("$name", async ({ sheet, evaluated }) => {
    expect(await violations(writeSheet(sheet(), "html", { drawings: drawingsOf(evaluated()) }))).toEqual([]);
  });

  it("a sheet with everything on it, and one with nothing", async () => {
    expect(await violations(sheetPage(sheetDocument(trough)))).toEqual([]);
    expect(await violations(sheetPage(sheetDocument(empty)))).toEqual([]);
  });
});

describe("the proof", () => {
  it("looks at every plan and every mistake", () => {
    expect(PLANS.length).toBeGreaterThan(6);
    expect(MISTAKES.length).toBeGreaterThan(50);
  });

  it("sees what is wrong", async () => {
    const page = sheetPage(sheetDocument(empty));
    const wrong = [
      page.replace("<html lang=", "<html data-lang="),
      page.replace(/h2>/g, "h4>"),
      page.replace("</main>", '<img src="a.png"/></main>'),
      page.replace("</main>", '<table><tr><th scope="all">a</th></tr></table></main>'),
      page.replace("</main>", "<p><div>a</div></p></main>"),
      page.replace("</main>", '<p id="a"></p><p id="a"></p></main>'),
      page.replace("</main>", '<input type="checkbox"/></main>'),
      page.replace("</main>", '<p aria-describedby="b">a</p></main>'),
      page.replace("</main>", "<paragraph>a</paragraph></main>"),
      page.replace("<!DOCTYPE html>\n", ""),
    ];
    const rules = await Promise.all(wrong.map(async (html) => (await violations(html)).map(ruleOf)));
    expect(rules).toEqual([
      ["element-required-attributes"],
      ["heading-level"],
      ["wcag/h37"],
      ["prefer-tbody", "attribute-allowed-values"],
      ["no-implicit-close", "close-order"],
      ["no-dup-id"],
      ["input-missing-label"],
      ["no-missing-references"],
      ["element-name"],
      ["missing-doctype"],
    ]);
  });

  it("gives a reason for every rule that is asked otherwise", () => {
    for (const { rule, because } of RULES.changed) expect(because, rule).toMatch(/^[A-Z].{20,}\.$/);
  });
});

const ruleOf = (violation: string): string => violation.split(",")[0]!;
