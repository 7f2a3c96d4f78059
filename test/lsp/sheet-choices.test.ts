/** The sheet as the reader of the panel wants it: its units, its reader, its language, and its files. */
import { afterEach, describe, expect, test } from "vitest";
import { pdfOf } from "../../server/lsp/pdf-part";
import { contentOf } from "../../server/lsp/sheet-files";
import { choicesIn } from "../../server/lsp/sheet-options";
import { evaluate, sheetDocument, sheetOf } from "../../server/service";
import { type Editor, editor, uriOf } from "./editor";

const PLAN = "/yard/stand.sawbuck";
const STAND = `plan Stand
  language 1
  units inches to 1/8"
part leg of 2x4, length 20"
part rail of 1x4, length overall width of legs
place leg upright, wide face front, on floor, at each corner of 30" x 16"
place rail across, on edge, in front of legs, flush with left of legs,
  flush with top of legs
fasten rail face into leg face, 2 #8 x 1-5/8" at each crossing
`;

let e: Editor;
let opened: Editor[] = [];
afterEach(() => {
  for (const one of opened) one.end();
  opened = [];
});
async function start(text = STAND): Promise<Editor> {
  e = await editor();
  opened.push(e);
  await e.open(PLAN, text);
  return e;
}

interface Answer {
  readonly language: string;
  readonly parts: readonly { readonly name: string; readonly html: string }[];
}
const sheet = async (choices: object): Promise<Answer> =>
  e.connection.sendRequest<Answer>("sawbuck/sheet", { uri: uriOf(PLAN), soon: false, ...choices });
const part = ({ parts }: Answer, name: string): string => parts.find((p) => p.name === name)?.html ?? "";

describe("the sheet in the panel", () => {
  test("is in the units asked for, its drawings too, and the text stays as it is", async () => {
    await start();
    const planned = await sheet({});
    const metric = await sheet({ units: "millimetres" });
    expect(part(planned, "head")).toContain("inches to 1/8");
    expect(part(metric, "head")).toContain("millimetres");
    expect(part(metric, "cut-list")).toContain("508 mm");
    expect(part(metric, "drawings")).toMatch(/<text class="dimension"[^>]*>508 mm</);
    expect(part(await sheet({}), "drawings")).toBe(part(planned, "drawings"));
    expect(e.textOf(PLAN)).toBe(STAND);
  });

  test("is for the reader asked for", async () => {
    await start();
    expect((await sheet({ reader: "learners" })).parts.map(({ name }) => name)).toContain("answers");
    expect((await sheet({ reader: "stations" })).parts.map(({ name }) => name)).not.toContain("answers");
  });

  test("keeps the same names for its sections after an edit, each once", async () => {
    await start();
    const names = (await sheet({})).parts.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    await e.replace(PLAN, STAND.replace('length 20"', 'length 24"'));
    const after = await sheet({});
    expect(after.parts.map(({ name }) => name)).toEqual(names);
    expect(part(after, "cut-list")).toContain("24");
  });

  test("falls back where it is asked for what there is not", () => {
    const planned = { units: "plan", reader: "builder", language: "en" };
    for (const asked of [
      {},
      null,
      { units: "cubits", reader: 3, language: "xx" },
      { units: ["inches"], language: "" },
    ])
      expect(choicesIn(asked)).toEqual(planned);
    expect(choicesIn({ units: "inches", reader: "stations", language: "EN-gb" })).toEqual({
      units: "inches",
      reader: "stations",
      language: "en",
    });
  });
});

describe("the sheet as a file", () => {
  const file = (asked: object) =>
    e.connection.sendRequest<{ text: string } | null>("sawbuck/sheetFile", { uri: uriOf(PLAN), ...asked });

  test("is written in each format, as it is shown", async () => {
    await start();
    const text = async (format: string, more = {}): Promise<string> =>
      (await file({ format, ...more }))?.text ?? "";
    expect(await text("html")).toMatch(/^<!DOCTYPE html>[\s\S]*<svg [\s\S]*<script>/);
    expect(await text("markdown", { units: "millimetres" })).toMatch(/^# Stand\n[\s\S]*508 mm/);
    expect(await text("text", { reader: "learners" })).toContain("Answers");
    const json = JSON.parse(await text("json", { units: "millimetres" }));
    expect(json).toMatchObject({ format: "sawbuck-sheet", units: { system: "millimetres" } });
  });

  test("is none for a format that is not known, and for a document without a sheet", async () => {
    await start();
    expect(await file({ format: "constructor" })).toBeNull();
    expect(await file({ format: "html", uri: "file:///elsewhere.sawbuck" })).toBeNull();
    await e.replace(PLAN, "stock post of 2x4, sold 8' $4\n");
    expect(await file({ format: "html" })).toBeNull();
  });

  test("that cannot be made is an answer in words, or a failure that is logged, never “no sheet”", async () => {
    class Failing extends Map<string, string> {
      override get(): never {
        throw new Error("the disk is on fire");
      }
    }
    e = await editor({ disk: new Failing() });
    opened.push(e);
    await e.open(PLAN, `shop yard.sawbuck\n${STAND}`);
    await expect(file({ format: "html" })).rejects.toThrow("stands in its log");
    await expect(sheet({})).rejects.toThrow("stands in its log");
    expect(e.logged.join("\n")).toContain("the disk is on fire");

    const document = sheetDocument(sheetOf(evaluate(PLAN, STAND, (path) => ({ file: path, refused: "" }))));
    const missing = (code: string) => async () => Promise.reject(Object.assign(new Error("gone"), { code }));
    for (const code of ["MODULE_NOT_FOUND", "ERR_MODULE_NOT_FOUND", "ENOENT"])
      expect(contentOf(await pdfOf(document, "A4", missing(code)))).toEqual({
        refused: expect.stringContaining("install it again"),
      });
    expect(contentOf(await pdfOf({ ...document, language: "fr" }, "A4", missing("ENOENT")))).toEqual({
      refused: expect.stringContaining("réinstallez-le"),
    });
    await expect(pdfOf(document, "A4", missing("EIO"))).rejects.toThrow("gone");
  });

  test("is sent as text, or as bytes in base 64", () => {
    expect(contentOf("# Stand")).toEqual({ text: "# Stand" });
    const bytes = Uint8Array.from({ length: 20_000 }, (_, i) => i % 256);
    const sent = contentOf(bytes);
    expect("base64" in sent && [...Buffer.from(sent.base64, "base64")]).toEqual([...bytes]);
  });
});

test("a line tells the first and the last line of its entry; of an assembly, that of each of its lines", async () => {
  const top = "assembly top\n  place rail across, flat, on floor\n  place rail across, flat, on front rail\n";
  await start(`${STAND}\n# a remark\n${top}`);
  const lines = async (line: number) =>
    (await e.connection.sendRequest<{ lines?: number[] }>("sawbuck/piecesAt", { uri: uriOf(PLAN), line }))
      .lines;
  expect(await lines(4)).toEqual([4, 4]);
  expect([await lines(7), await lines(8)]).toEqual([
    [7, 8],
    [7, 8],
  ]);
  expect(await lines(11)).toBeUndefined();
  expect([await lines(12), await lines(13), await lines(14)]).toEqual([
    [12, 12],
    [13, 13],
    [14, 14],
  ]);
});
