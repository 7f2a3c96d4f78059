/** No text of a plan reaches a page, a drawing or a terminal unescaped, and none is lost on the way. */
import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetDocument } from "../../server/service";
import { drawBoard } from "../../server/sheet/board-drawing";
import { tables } from "../../server/sheet/csv";
import type { SheetData } from "../../server/sheet/data";
import { cleanText, escapeAttribute, escapeText, oneLine } from "../../server/sheet/escape";
import { SHEET_STYLE, SHEET_STYLE_HASH, sheetBody, sheetPage } from "../../server/sheet/html";
import { sheetJson } from "../../server/sheet/json";
import { sheetMarkdown } from "../../server/sheet/markdown";
import { PAGE_SCRIPT, PAGE_SCRIPT_HASH } from "../../server/sheet/page/script";
import { svgText } from "../../server/sheet/svg";
import { sheetText } from "../../server/sheet/text";
import { columnsOf } from "../../server/sheet/text-layout";
import { asData, readBack } from "./csv-back";
import { board } from "./made";
import { brief, nasty, nastySheets, PATIENCE, RUNS, withTexts } from "./nasty";
import { readStrictly } from "./strict-markup";
import { empty, trough } from "./trough";

/** All that a page says. A length in a text is an element of its own, so that it stays on one line. */
function pageTexts(data: SheetData): string {
  const { texts, values } = readStrictly(sheetPage(sheetDocument(data)));
  return [...texts, ...values, texts.join("")].join("\n");
}

describe("escaping", () => {
  it(
    "leaves nothing that opens a tag, an entity or ends an attribute, and comes back as the cleaned text",
    () => {
      fc.assert(
        fc.property(nasty, (text) => {
          const read = readStrictly(`<p class="${escapeAttribute(text)}">${escapeText(text)}</p>`);
          expect(read.texts.join("")).toBe(cleanText(text));
          expect(read.values).toEqual([cleanText(text)]);
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE,
  );

  it("cleans control characters, direction overrides and broken letters, and keeps all others", () => {
    expect(cleanText("a\u0000b\u001b[31m\u009bc\u202ed\u2066e")).toBe("ab[31mcde");
    expect(cleanText("one\r\ntwo\rthree\u2028four")).toBe("one\ntwo\nthree\nfour");
    expect(cleanText("\ud800x\udc00\ufffe")).toBe("\u{fffd}x\u{fffd}\u{fffd}");
    expect(cleanText('½" 45° 👷 木 é')).toBe('½" 45° 👷 木 é');
    expect(oneLine("  a \n\t b ")).toBe("a b");
  });
});

describe("the page", () => {
  it(
    "reads strictly, whatever stands in the data",
    () => {
      const plain = readStrictly(sheetPage(sheetDocument(brief(trough)))).elements;
      fc.assert(
        fc.property(nastySheets(brief(trough)), (data) => {
          const { elements } = readStrictly(sheetPage(sheetDocument(data)));
          const count = (tag: string, all: typeof elements) => all.filter((one) => one.tag === tag).length;
          for (const tag of ["html", "style", "title", "section", "table", "svg"])
            expect(count(tag, elements), tag).toBeLessThanOrEqual(count(tag, plain));
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE,
  );

  it("carries every text of the data, but for those that only other outputs need", () => {
    const seen = new Map<string, string>();
    let n = 0;
    const data = withTexts(trough, (text, path) => {
      const marked = `<${n++}&>${text}`;
      seen.set(marked, path);
      return marked;
    });
    // Fasteners have a table of their own where not all are set out.
    const loose = { ...data, joints: data.joints.map((joint) => ({ ...joint, setOut: [] })) };
    const shown = [data, loose].map(pageTexts).join("\n");
    const missing = [...seen].filter(([text]) => !shown.includes(text)).map(([, path]) => path);
    expect([...new Set(missing)].sort()).toMatchInlineSnapshot(`
      [
        "boards.*.boards.*.cuts.*.from.other",
        "boards.*.boards.*.cuts.*.from.text",
        "boards.*.boards.*.cuts.*.length.other",
        "boards.*.boards.*.cuts.*.mark",
        "boards.*.boards.*.cuts.*.to.other",
        "boards.*.boards.*.length.other",
        "boards.*.boards.*.length.text",
        "boards.*.boards.*.offcut.other",
        "boards.*.boards.*.offcut.text",
        "boards.*.proof.currency",
        "boards.*.proof.status",
        "boards.*.proof.unit",
        "boards.*.stops.*.boards.*.label",
        "boards.*.stops.*.length.other",
        "built.*.measured.*.built.unit",
        "built.*.measured.*.planned.unit",
        "built.*.place.file",
        "cutList.*.rows.*.place.file",
        "cutList.*.rows.*.rule",
        "cutList.*.rows.*.shortPoint.other",
        "cutList.*.stock",
        "finishes.*.place.file",
        "gaps.*.place.file",
        "gaps.*.wettest.other",
        "holds.*.limit.unit",
        "holds.*.load.unit",
        "holds.*.place.file",
        "joints.*.pattern",
        "joints.*.place.file",
        "joints.*.setOut.*.grids.*.across.at.*.other",
        "joints.*.setOut.*.grids.*.across.at.*.text",
        "joints.*.setOut.*.grids.*.along.at.*.other",
        "joints.*.setOut.*.grids.*.along.at.*.text",
        "joints.*.setOut.*.pieces.*",
        "linings.*.place.file",
        "overall.depth.other",
        "overall.height.other",
        "overall.width.other",
        "panels.*.proof.currency",
        "panels.*.proof.status",
        "panels.*.proof.unit",
        "panels.*.sheets.*.cuts.*.length.other",
        "panels.*.sheets.*.cuts.*.width.other",
        "panels.*.sheets.*.length.other",
        "panels.*.sheets.*.width.other",
        "pieces.*.id",
        "pieces.*.mark",
        "pieces.*.part",
        "pieces.*.place.file",
        "problems.*.numbers.*.name",
        "problems.*.numbers.*.source",
        "problems.*.numbers.*.text",
        "problems.*.numbers.*.unit",
        "shopping.carry.longest.other",
        "shopping.onHand.*",
        "shopping.pile.*.length.other",
        "square.*.name",
        "square.*.sides.*.other",
        "square.*.sides.*.text",
        "steps.*.fresh.*.pieces.*",
        "steps.*.lines.*",
        "steps.*.place.file",
        "tools.*.instead",
        "tools.*.uses.*",
        "weight.text",
        "yard.*.thickness.other",
        "yard.*.width.other",
      ]
    `);
  });

  it("loads nothing and lets one style and one script in, by their hashes", () => {
    const hash = (text: string) => `sha256-${createHash("sha256").update(text).digest("base64")}`;
    expect(SHEET_STYLE_HASH).toBe(hash(SHEET_STYLE));
    expect(PAGE_SCRIPT_HASH).toBe(hash(PAGE_SCRIPT));
    const { values, raw } = readStrictly(sheetPage(sheetDocument(trough)));
    expect(raw).toEqual([SHEET_STYLE, PAGE_SCRIPT]);
    expect(values).toContain(
      `default-src 'none'; style-src '${SHEET_STYLE_HASH}'; script-src '${PAGE_SCRIPT_HASH}'; base-uri 'none'; form-action 'none'`,
    );
    expect(SHEET_STYLE).not.toMatch(/url\(|@import|expression|https?:/);
    expect(PAGE_SCRIPT).not.toMatch(/fetch|XMLHttp|WebSocket|sendBeacon|import\(|eval|innerHTML|https?:/);
    const page = sheetPage(sheetDocument(trough));
    expect(page).not.toMatch(/<script .|<link|<img|<iframe|<[^>]* on[a-z]+=|<[^>]* style=/);
    expect(sheetBody(sheetDocument(trough))).not.toContain("<script");
  });

  it("is the fragment, framed", () => {
    expect(sheetPage(sheetDocument(trough))).toContain(sheetBody(sheetDocument(trough)));
  });
});

describe("ten thousand characters in every text of the data", () => {
  it.each([
    ["letters", "x"],
    ["tags", "<b>"],
    ["quotes", "\"'"],
    ["formulas", "=1;"],
    ["overrides", "\u202ea"],
    ["wide letters", "木👷"],
  ])("%s", (_, unit) => {
    const long = unit.repeat(Math.ceil(10_000 / unit.length));
    const data = withTexts(brief(trough), () => long);
    const { texts } = readStrictly(sheetPage(sheetDocument(data)));
    expect(texts).toContain(cleanText(long));
    expect(JSON.parse(sheetJson(data))).toEqual(data);
    for (const line of sheetText(sheetDocument(data)).split("\n"))
      expect(columnsOf(line)).toBeLessThanOrEqual(80);
    for (const table of tables) expect(readBack(data, table), table).toEqual(asData(data, table));
  });
});

describe("a page of very long numbers", () => {
  it("is written in a time that grows with its length", () => {
    const data = withTexts(brief(trough), (text, path) =>
      path.startsWith("notes") ? "1".repeat(200_000) : text,
    );
    const started = performance.now();
    sheetPage(sheetDocument(data));
    expect(performance.now() - started).toBeLessThan(30_000);
  });

  it("keeps each length of a text on one line", () => {
    const data = withTexts(brief(trough), (text, path) =>
      path.startsWith("notes") ? 'about 83-1/2", or 2121 mm.' : text,
    );
    expect(sheetPage(sheetDocument(data))).toContain(
      '<p>about <span class="whole">83-1/2"</span>, or <span class="whole">2121 mm</span>.</p>',
    );
  });
});

describe("a drawing as SVG", () => {
  it(
    "reads strictly with any label, and names the piece on its items",
    () => {
      fc.assert(
        fc.property(nasty, nasty, (label, piece) => {
          const spec = { label, kind: "bought", length: 96, trim: 0.5, keep: true } as const;
          const one = board({
            ...spec,
            cuts: [
              [label, 30],
              [label, 2],
            ],
          });
          const named = { ...one, cuts: one.cuts.map((cut) => ({ ...cut, piece })) };
          const { values } = readStrictly(svgText(drawBoard(named, { scale: 0.07, system: "inches" })));
          expect(values.filter((value) => value === cleanText(piece)).length).toBeGreaterThan(0);
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE,
  );
});

describe("the plain text", () => {
  it(
    "stays within its columns and sends a terminal nothing but text, whatever stands in the data",
    () => {
      fc.assert(
        fc.property(nastySheets(brief(trough)), fc.integer({ min: 40, max: 120 }), (data, width) => {
          const text = sheetText(sheetDocument(data), width);
          expect(text).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069]/u);
          for (const line of text.split("\n")) expect(columnsOf(line)).toBeLessThanOrEqual(width);
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE,
  );
});

describe("the Markdown", () => {
  it(
    "holds no tag, no address, no control character, and one line for each row, whatever stands in the data",
    () => {
      const plain = sheetMarkdown(sheetDocument(brief(trough))).split("\n").length;
      fc.assert(
        fc.property(nastySheets(brief(trough)), (data) => {
          const markdown = sheetMarkdown(sheetDocument(data));
          expect(markdown).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069]/u);
          const outside = markdown.replace(/^(`{3,})\n[\s\S]*?^\1$/gm, "").replaceAll("<!-- -->", "");
          expect(outside).not.toMatch(/[<>]/);
          expect(markdown.replace(/^(`{3,})\n[\s\S]*?^\1$/gm, "")).not.toMatch(/:\/\/|www\.|@[^<]/i);
          expect(markdown.split("\n").length).toBeLessThanOrEqual(plain * 3);
        }),
        { numRuns: RUNS },
      );
    },
    PATIENCE,
  );
});

describe("the JSON", () => {
  it("reads back as the data and prints without control characters", () => {
    fc.assert(
      fc.property(nastySheets(brief(trough)), (data) => {
        const json = sheetJson(data);
        expect(JSON.parse(json)).toEqual(data);
        expect(json).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e\u2066-\u2069]/u);
      }),
      { numRuns: Math.min(RUNS, 200) },
    );
  });

  it("is the same bytes however the objects were put together", () => {
    const turned = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(turned);
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, inner]) => [key, turned(inner)]),
      );
    };
    expect(Object.keys(turned(trough) as object)[0]).toBe("built");
    expect(sheetJson(turned(trough) as typeof trough)).toBe(sheetJson(trough));
    expect(sheetJson(empty)).toMatch(/^{\n {2}"format": "sawbuck-sheet",\n {2}"version": 1,\n/);
    expect(sheetJson(empty).endsWith("}\n")).toBe(true);
  });
});
