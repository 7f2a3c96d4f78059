/** Every format of every sample: written to test/sheet/output/formats to be looked at, and held word for word. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { drawingsOf, sheetDocument, writeSheet, writeTable } from "../../server/service";
import { tables } from "../../server/sheet/csv";
import { sheetPdf } from "../../server/sheet/pdf";
import { FONTS, picturesOf, textsOf } from "./read-pdf";
import { PLANS } from "./samples";
import { readStrictly } from "./strict-markup";

const OUTPUT = join(__dirname, "output/formats");
const put = (name: string, content: string | Uint8Array) => writeFileSync(join(OUTPUT, name), content);

beforeAll(() => {
  mkdirSync(OUTPUT, { recursive: true });
});

describe.each(PLANS)("$name", ({ name, evaluated, sheet }) => {
  it("as text, Markdown and JSON", async () => {
    for (const [format, ending] of [
      ["text", "txt"],
      ["markdown", "md"],
      ["json", "json"],
    ] as const) {
      const written = writeSheet(sheet(), format);
      put(`${name}.${ending}`, written);
      await expect(written).toMatchFileSnapshot(`snapshots/formats/${name}.${ending}.snap`);
    }
    for (const table of tables) put(`${name}-${table}.csv`, writeTable(sheet(), table));
  });

  it("as a page, for each of its readers", async () => {
    const drawings = drawingsOf(evaluated());
    for (const reader of ["builder", "stations", "learners"] as const) {
      const page = writeSheet(sheet(), "html", { drawings, reader });
      put(`${name}-${reader}.html`, page);
      const { texts } = readStrictly(page);
      await expect(`${texts.join("\n")}\n`).toMatchFileSnapshot(
        `snapshots/formats/${name}-${reader}.html.snap`,
      );
    }
  });

  it("as PDF on both papers, with pictures of its pages", async () => {
    const document = sheetDocument(sheet(), { drawings: drawingsOf(evaluated()) });
    for (const paper of ["Letter", "A4"] as const) {
      const bytes = await sheetPdf(document, { paper, fonts: FONTS });
      put(`${name}-${paper}.pdf`, bytes);
      const pages = await textsOf(bytes);
      const lines = pages.map((said) => said.map(({ text }) => text).join("\n"));
      await expect(`${lines.join("\n\f\n")}\n`).toMatchFileSnapshot(
        `snapshots/formats/${name}-${paper}.pdf.snap`,
      );
      if (paper === "A4") continue;
      for (const [i, picture] of (await picturesOf(bytes, 1)).entries())
        put(`${name}-page-${String(i + 1).padStart(2, "0")}.png`, picture);
    }
  });
});
