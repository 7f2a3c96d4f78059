/** The sheet as a PDF file: what can be read from it, where it stands, and what the file says of itself. */
import { mkdirSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writePdf } from "../../server/lsp/pdf";
import { wordsOf } from "./document-words";
import { made } from "./made-document";
import { expectInside, letters, MARGIN, PAPERS, pdf, raw, SIZES, tagged } from "./pdf-pages";
import { open, picturesOf, textsOf } from "./read-pdf";

describe.each(PAPERS)("on %s", (paper) => {
  it("says every word of every block, in order, and nothing else", async () => {
    const pages = await textsOf(await pdf(made, paper));
    expect(letters(tagged(pages).map((said) => said.text))).toBe(letters(wordsOf(made)));
  });

  it("has the title, the sections that begin there or go on, and the number of the page at the foot of each", async () => {
    const pages = await textsOf(await pdf(made, paper));
    expect(pages.length).toBeGreaterThan(4);
    let goesOn: string[] = [];
    pages.forEach((page, i) => {
      const texts = page.filter(({ y, tagged }) => !tagged && y < MARGIN).map(({ text }) => text);
      const foot = texts.join(" ").replace(/ +/g, " ").trim();
      const begun = page.filter(({ role }) => role === "H2").map(({ text }) => text.trim());
      const sections = begun.length > 0 ? begun : goesOn;
      if (begun.length > 0) goesOn = begun.slice(-1);
      const place = `${i + 1} of ${pages.length}`;
      expect(foot.startsWith(`${made.title} `)).toBe(true);
      expect(foot.endsWith(` ${place}`)).toBe(true);
      const said = foot.slice(made.title.length, foot.length - place.length).trim();
      expect(sections.join(", ").startsWith(said.replace("…", "")), said).toBe(true);
      expect(said.length).toBeGreaterThan(5);
      if (!said.endsWith("…")) expect(said).toBe(sections.join(", "));
    });
  });

  it("keeps to the paper and its margins", async () => {
    const bytes = await pdf(made, paper);
    const [width, height] = SIZES[paper];
    const first = await (await open(bytes)).getPage(1);
    expect(first.view[2]).toBeCloseTo(width, 1);
    expect(first.view[3]).toBeCloseTo(height, 1);
    for (const page of await textsOf(bytes)) expectInside(page, paper);
  });

  it("is drawn to be looked at", async () => {
    mkdirSync("test/sheet/output", { recursive: true });
    const pictures = await picturesOf(await pdf(made, paper));
    for (const [i, picture] of pictures.entries())
      writeFileSync(`test/sheet/output/pdf-${paper}-${i + 1}.png`, picture);
  });
});

describe("the file", () => {
  it("is the same, byte for byte, each time it is written, and from the bundle", async () => {
    const one = await pdf(made);
    const { writePdf: bundled } = createRequire(import.meta.url)(join(process.cwd(), "dist/pdf.js"));
    for (const other of [await pdf(made), await writePdf(made, "Letter"), await bundled(made, "Letter")])
      expect(Buffer.compare(one, other)).toBe(0);
  });

  it("says what it is, in which language, and nothing of when", async () => {
    const bytes = await pdf({ ...made, title: "Bench & <b>\u{1f477}</b>" });
    const file = await open(bytes);
    const { info, metadata } = await file.getMetadata();
    expect(info).toMatchObject({
      PDFFormatVersion: "1.7",
      Language: "en",
      Title: "Bench & <b>\u{1f477}</b>",
      Producer: "Sawbuck",
    });
    expect(metadata.get("dc:title")).toBe("Bench & <b>\u{1f477}</b>");
    expect(Object.keys(info).filter((name) => /Date/.test(name))).toEqual([]);
    expect(raw(bytes)).not.toMatch(/\(D:\d/);
    expect(await file.getMarkInfo()).toMatchObject({ Marked: true });
    expect(await file.getViewerPreferences()).toMatchObject({ DisplayDocTitle: true });
  });

  it("leads to each section", async () => {
    const file = await open(await pdf(made));
    const outline = await file.getOutline();
    expect(outline.map(({ title }) => title)).toEqual(made.sections.map(({ heading }) => heading));
    for (const { dest } of outline) {
      const [page, kind, left, top] = dest as [
        { num: number; gen: number },
        { name: string },
        number,
        number,
      ];
      expect(await file.getPageIndex(page)).toBeLessThan(file.numPages);
      expect([kind.name, left]).toEqual(["XYZ", 0]);
      expect(top).toBeGreaterThan(MARGIN);
    }
  });

  it("tells a screen reader what everything is", async () => {
    const file = await open(await pdf(made));
    const roles = new Map<string, number>();
    const alts: string[] = [];
    interface Node {
      readonly role?: string;
      readonly alt?: string;
      readonly children?: readonly Node[];
    }
    const walk = ({ role, alt, children = [] }: Node) => {
      if (role) roles.set(role, (roles.get(role) ?? 0) + 1);
      if (alt !== undefined) alts.push(alt);
      children.forEach(walk);
    };
    for (let n = 1; n <= file.numPages; n++) walk((await (await file.getPage(n)).getStructTree()) as Node);
    for (const role of "Document Sect H1 H2 H3 P L LI Lbl LBody Table TR TH TD Figure Span".split(" "))
      expect(roles.get(role) ?? 0, role).toBeGreaterThan(0);
    expect(alts).toContain("The bench from the front");
    expect(alts).toContain("Step 2 shown");
    expect(alts).toContain("leg / 1: cut");
    expect(alts).toContain("who looked at it");
  });

  it("embeds only the letters it uses of both fonts", async () => {
    const bytes = await pdf(made);
    expect(raw(bytes).match(/\/FontFile2 /g)).toHaveLength(2);
    expect(raw(bytes).match(/\/FontName \/[A-Z]{6}\+DejaVuSans(-Bold)?\n/g)).toHaveLength(2);
    expect(bytes.length).toBeLessThan(300_000);
  });
});
