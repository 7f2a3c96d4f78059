/** Texts that try to get out of where a PDF puts them, and those that no page has room for. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withTexts } from "./document-words";
import { made } from "./made-document";
import { nasty, PATIENCE, RUNS } from "./nasty";
import { expectInside, PAPERS, paragraph, pdf, raw, sheet } from "./pdf-pages";
import { open, textsOf } from "./read-pdf";

describe("texts of a plan", () => {
  it("are shown with a stand-in where the font has no letter, and still said", async () => {
    const bytes = await pdf(sheet([paragraph("a 木工 bench 👷 e\u0301 done")]));
    const page = (await textsOf(bytes)).flat();
    expect(page.map((said) => said.text).join("")).toContain("a \ufffd\ufffd bench \ufffd \u00e9 done");
  });

  it("stand in the order in which they are seen where they read from right to left", async () => {
    const [page] = await textsOf(await pdf(sheet([paragraph("for שלום עולם 4 of them")])));
    const left = (words: string) => page!.find(({ text }) => text.includes(words))!;
    expect(left("עולם").x + left("עולם").width).toBeLessThan(left("שלום").x - 1);
    expect(left("שלום").x + left("שלום").width).toBeLessThan(left("4 of").x + 1);
  });

  const brief = { ...made, sections: made.sections.filter(({ name }) => name !== "boards") };
  const long = (count: number) =>
    ["x", "木", "👷", "i ", '1-1/2"', "e\u0301\u0301\u0301\u0301\u0301"].map((c) =>
      c.repeat(count / c.length),
    );

  it.each(long(10_000))("stay on the page however long a name is", async (name) => {
    const others = ["leg", '1-1/2"', "", "some words", "10 mm"];
    const bytes = await pdf(
      sheet(
        [paragraph(name), { kind: "list", style: "bullets", items: [{ lead: name, words: name }] }],
        name,
      ),
    );
    for (const page of await textsOf(bytes)) expectInside(page, "Letter");
    const all = await pdf(withTexts(brief, [name.slice(0, 400), ...others]));
    for (const page of await textsOf(all)) expectInside(page, "Letter");
  });

  it("take no long time", async () => {
    const begun = performance.now();
    await pdf(withTexts(brief, [...long(10_000), ...Array.from({ length: 24 }, (_, i) => `word ${i}`)]));
    expect(performance.now() - begun).toBeLessThan(30_000);
  });

  it("never throw, and never become anything but text", { timeout: PATIENCE }, async () => {
    const pools = fc.array(nasty, { minLength: 1, maxLength: 24 });
    await fc.assert(
      fc.asyncProperty(pools, fc.constantFrom(...PAPERS), async (pool, paper) => {
        const bytes = await pdf(withTexts(brief, pool), paper);
        expect(withoutTexts(raw(bytes))).not.toMatch(FORBIDDEN);
        const file = await open(bytes);
        expect(await file.getAttachments()).toBeNull();
        expect(await file.getJSActions()).toBeNull();
        expect(await file.getOpenAction()).toBeNull();
        for (let n = 1; n <= file.numPages; n++)
          expect(await (await file.getPage(n)).getAnnotations()).toEqual([]);
        await file.destroy();
      }),
      { numRuns: Math.ceil(RUNS / 40) },
    );
  });
});

const FORBIDDEN =
  /\/(JavaScript|JS|Launch|URI|GoToR|GoToE|SubmitForm|ImportData|EmbeddedFiles?|Filespec|Annots?|OpenAction|AA|AcroForm|XFA|RichMedia|Movie|Sound)\b/;

/** The objects of a file without their strings and streams. */
function withoutTexts(file: string): string {
  return file.replace(/stream\n[\s\S]*?\nendstream/g, "").replace(/\((?:\\[\s\S]|[^\\()])*\)/g, "()");
}
