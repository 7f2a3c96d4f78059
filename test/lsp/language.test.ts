/** In which language the server speaks. */
import { expect, test } from "vitest";
import { editor, uriOf } from "./editor";

const PLAN = "/yard/bench.sawbuck";

test("problems are told in the language that the editor speaks, or in English", async () => {
  const told = async (locale: string) => {
    const e = await editor({ locale });
    await e.open(PLAN, 'measure rim = 30"\npart leg 4 of 2x4, length rimm\n');
    await e.until(() => (e.pushed(PLAN)?.length ?? 0) > 0);
    e.end();
    return e.pushed(PLAN)?.map(({ message }) => message)[0];
  };
  expect(await told("fr-CA")).toMatchInlineSnapshot(`
    "Rien ne s’appelle « rimm » ici. Vouliez-vous dire « rim » ?
    Remède : Écrivez « rim »"
  `);
  expect(await told("fr")).toBe(await told("fr-CA"));
  expect(await told("en-GB")).toMatchInlineSnapshot(`
    "Nothing here is called “rimm”. Did you mean “rim”?
    Cure: Write “rim”"
  `);
  expect(await told("xx")).toBe(await told("en-GB"));
});

test("hovers and the headlines of problems are in that language too", async () => {
  const told = async (locale: string) => {
    const e = await editor({ locale });
    await e.open(PLAN, 'measure rim = 30"\npart leg 4 of 2x4, length rim\n');
    await e.until(() => e.worked.length > 0);
    const { contents } = await e.connection.sendRequest<{ contents: { value: string } }>(
      "textDocument/hover",
      { textDocument: { uri: uriOf(PLAN) }, position: { line: 0, character: 9 } },
    );
    const { pages } = await e.connection.sendRequest<{
      pages: { code: string; title: string; markdown: string }[];
    }>("sawbuck/problemPages", {});
    e.end();
    const page = pages.find(({ code }) => code === "tips-over");
    return [contents.value, page?.title, page?.markdown.split("\n")[0]];
  };
  expect(await told("fr")).toEqual([
    '**rim**, une mesure\u00a0: **30" (762 mm)**',
    "L’ouvrage se renverse",
    "# It tips over",
  ]);
  expect(await told("en")).toEqual([
    '**rim**, a measure: **30" (762 mm)**',
    "It tips over",
    "# It tips over",
  ]);
});
