/** How a PDF is laid out: what stays together on a page, columns that find their room, drawings at their scale. */
import { describe, expect, it } from "vitest";
import { type Drawing, text } from "../../server/sheet/display";
import type { Block, Section } from "../../server/sheet/document";
import type { Paper } from "../../server/sheet/pdf";
import { made, smallDrawing } from "./made-document";
import { expectInside, letters, MARGIN, MM, paragraph, pdf, sheet, tagged } from "./pdf-pages";
import { type Said, textsOf } from "./read-pdf";

describe("what belongs together", () => {
  const heading = "A heading for what follows";
  const after: Section = {
    name: "two",
    heading,
    blocks: [{ kind: "paragraph", style: "key", words: "its key" }, paragraph("its words")],
  };
  const pageOf = (pages: readonly (readonly Said[])[], words: string): number =>
    pages.findIndex((page) =>
      letters(page.filter((said) => said.tagged).map((said) => said.text)).includes(letters([words])),
    );

  it("keeps a heading, and a key under it, on the page of what they stand over", async () => {
    for (let lines = 24; lines < 46; lines++) {
      const blocks = Array.from({ length: lines }, (_, i) => paragraph(`line ${i}`));
      const document = { ...made, sections: [{ name: "one", heading: "One", blocks }, after] };
      const pages = await textsOf(await pdf(document));
      const on = [heading, "its key", "its words"].map((words) => pageOf(pages, words));
      expect(new Set(on).size, `${lines} lines`).toBe(1);
    }
  });

  it("keeps a group on one page, and begins a page where a section asks for it", async () => {
    const group: Block = {
      kind: "group",
      name: "step",
      heading,
      blocks: Array.from({ length: 12 }, (_, i) => paragraph(`step words ${i}.`) as never),
    };
    for (const lines of [10, 24, 27, 30]) {
      const pages = await textsOf(
        await pdf(sheet([...Array.from({ length: lines }, (_, i) => paragraph(`line ${i}`)), group])),
      );
      expect(pageOf(pages, heading)).toBe(pageOf(pages, "step words 11."));
    }
    const apart = await textsOf(
      await pdf({ ...made, sections: [after, { ...after, heading: "Second", newPage: true }] }),
    );
    expect([pageOf(apart, heading), pageOf(apart, "Second")]).toEqual([0, 1]);
  });

  const items = (count: number) => Array.from({ length: count }, (_, i) => ({ words: `item ${i}.` }));

  it("parts a list in columns where the page ends, each part read down one column and then the next", async () => {
    for (const lines of [2, 20, 36, 40]) {
      const above = Array.from({ length: lines }, (_, i) => paragraph(`line ${i}`));
      const list: Block = { kind: "list", style: "bullets", columns: 2, items: items(40) };
      const pages = await textsOf(await pdf(sheet([...above, list])));
      for (const page of pages) {
        expectInside(page, "Letter");
        const said = page.filter(({ text }) => text.startsWith("item")).map(({ text }) => text.trim());
        const columns = new Set(page.filter(({ text }) => text.startsWith("item")).map(({ x }) => x));
        expect(columns.size, `${lines} lines, ${said.length} items`).toBe(Math.min(2, said.length));
      }
      const said = tagged(pages).filter(({ text }) => text.startsWith("item"));
      expect(said.map(({ text }) => text.trim())).toEqual(items(40).map(({ words }) => words));
    }
  });

  it("keeps the marks of a drawing on one page", async () => {
    const marks: Block = { kind: "list", style: "marks", items: items(24) };
    for (let lines = 24; lines < 44; lines += 2) {
      const above = Array.from({ length: lines }, (_, i) => paragraph(`line ${i}`));
      const pages = await textsOf(await pdf(sheet([...above, marks])));
      expect(pageOf(pages, "item 0.")).toBe(pageOf(pages, "item 23."));
    }
  });

  const table = (rows: number, lines: number): Block => ({
    kind: "table",
    name: "long",
    columns: [
      { name: "mark", head: "Mark", fit: "mark" },
      { name: "what", head: "What it is", fit: "text" },
    ],
    groups: [
      {
        title: "All of them",
        source: "",
        rows: Array.from({ length: rows }, (_, i) => ({
          cells: [
            { words: `m${i}.` },
            { lines: Array.from({ length: lines }, (_, n) => `row ${i} line ${n}.`) },
          ],
        })),
      },
    ],
    sums: [{ label: "Together", value: "$12.50" }],
  });

  it("never breaks a row, says the heads again on the next page, and keeps the sum with the last row", async () => {
    const pages = await textsOf(await pdf(sheet([table(40, 4)])));
    expect(pages.length).toBeGreaterThan(3);
    for (let i = 0; i < 40; i++) expect(pageOf(pages, `m${i}.`)).toBe(pageOf(pages, `row ${i} line 3.`));
    for (const page of pages.slice(1))
      expect(
        page
          .filter(({ tagged, y }) => !tagged && y > MARGIN)
          .map((said) => said.text.trim())
          .filter(Boolean),
      ).toEqual(["Mark", "What it is"]);
    expect(pageOf(pages, "row 39 line 0.")).toBe(pageOf(pages, "$12.50"));
  });

  it("keeps a row that goes on from the one above on its page", async () => {
    const whole = table(40, 1) as Extract<Block, { kind: "table" }>;
    const [group] = whole.groups;
    const rows = group!.rows.map((row, i) => ({ ...row, ...(i % 3 > 0 && { goesOn: true as const }) }));
    for (let lines = 0; lines < 6; lines++) {
      const above = Array.from({ length: lines }, (_, i) => paragraph(`line ${i}`));
      const pages = await textsOf(await pdf(sheet([...above, { ...whole, groups: [{ ...group!, rows }] }])));
      for (let i = 0; i < 39; i += 3) expect(pageOf(pages, `m${i}.`)).toBe(pageOf(pages, `m${i + 2}.`));
    }
  });

  it("breaks a row only where it is higher than a page", async () => {
    const pages = await textsOf(await pdf(sheet([table(2, 70)])));
    const words = letters(tagged(pages).map((said) => said.text));
    for (let n = 0; n < 70; n++) expect(words).toContain(`row1line${n}.`);
    for (const page of pages) expectInside(page, "Letter");
  });

  it("never breaks a length", async () => {
    for (let n = 20; n < 60; n++) {
      const words = `${"ab ".repeat(n)}1-3/4" and ${"cd ".repeat(n % 7)}1220 mm long`;
      const lines = linesOn((await textsOf(await pdf(sheet([paragraph(words)])))).flat());
      expect(lines.filter((line) => line.includes('1-3/4"'))).toHaveLength(1);
      expect(lines.filter((line) => line.includes("1220 mm"))).toHaveLength(1);
    }
  });
});

/** Texts by the height at which they stand. */
function linesOn(page: readonly Said[]): string[] {
  const lines = new Map<number, string>();
  for (const { text, y } of page) lines.set(y, (lines.get(y) ?? "") + text);
  return [...lines.values()];
}

describe("columns", () => {
  it("puts a wide column under its row where there is no room, and says what it is", async () => {
    const block: Block = {
      kind: "table",
      name: "crowded",
      columns: [
        ...["one", "two", "three", "four"].map((name) => ({
          name,
          head: `Head ${name}`,
          fit: "text" as const,
        })),
        { name: "note", head: "Note", fit: "wide" },
      ],
      groups: [
        {
          title: "",
          source: "",
          rows: [
            {
              cells: [
                ...["a", "b", "c", "d"].map((c) => ({ words: c.repeat(20) })),
                { words: "said under the row at some length" },
              ],
            },
          ],
        },
      ],
      sums: [],
    };
    const page = (await textsOf(await pdf(sheet([block])))).flat();
    const y = (words: string) => page.find(({ text }) => text.includes(words))!.y;
    expect(y("Head one")).toBe(y("Head four"));
    expect(y("aaaa")).toBe(y("dddd"));
    expect(y("said under")).toBeLessThan(y("dddd"));
    expect(linesOn(page)).toContain("Note: said under the row at some length");
  });

  it("wraps many boxes in a cell", async () => {
    const ticks = Array.from({ length: 30 }, (_, i) => ({ id: `${i}`, what: `leg / ${i}`, done: "cut" }));
    const block: Block = {
      kind: "table",
      name: "ticks",
      columns: [
        { name: "tick", head: "Cut", fit: "tick" },
        { name: "part", head: "Part", fit: "text" },
      ],
      groups: [
        {
          title: "",
          source: "",
          rows: [{ cells: [{ ticks }, { words: "leg" }] }, { cells: [{ ticks: [] }, { words: "below" }] }],
        },
      ],
      sums: [],
    };
    const page = (await textsOf(await pdf(sheet([block])))).flat();
    const [leg, below] = ["leg", "below"].map((words) => page.find(({ text }) => text === words)!.y);
    expect(leg! - below!).toBeGreaterThan(3 * 5 * MM);
  });
});

describe("drawings", () => {
  const ruler = (width: number): Drawing => ({
    title: "A ruler",
    width,
    height: 20,
    items: [
      text("label", 10, 10, "from"),
      text("label", width - 30, 10, "to"),
      text("label", width / 2, 18, "up", { upright: true }),
    ],
  });
  const apart = async (width: number, paper: Paper) => {
    const drawing = () => ruler(width);
    const page = (await textsOf(await pdf(sheet([{ kind: "figure", caption: "", drawing }]), paper))).flat();
    return (page.find(({ text }) => text === "to")!.x - page.find(({ text }) => text === "from")!.x) / MM;
  };

  it("are as large on paper as they say, and scaled down only where they are wider than the page", async () => {
    expect(await apart(180, "A4")).toBeCloseTo(140, 2);
    expect(await apart(100, "Letter")).toBeCloseTo(60, 2);
    expect(await apart(360, "A4")).toBeCloseTo(160, 2);
  });

  it("stand side by side where boards are short, each at its scale", async () => {
    const boards = (widths: readonly number[]): Block => ({
      kind: "group",
      name: "layout",
      heading: "2x4",
      loose: true,
      blocks: widths.map((width, i) => ({
        kind: "figure",
        caption: `board ${i}`,
        drawing: () => ruler(width),
        toScale: true,
      })),
    });
    const page = (await textsOf(await pdf(sheet([boards([80, 80, 170, 60])]), "A4"))).flat();
    const at = (words: string) => page.filter(({ text }) => text.trim() === words);
    const [first, second, third, fourth] = [0, 1, 2, 3].map((i) => at(`board ${i}`)[0]!);
    expect(second!.y).toBe(first!.y);
    expect(second!.x - first!.x).toBeGreaterThan(80 * MM);
    expect(third!.y).toBeLessThan(first!.y);
    expect(fourth!.y).toBeLessThan(third!.y);
    for (const { x } of [third!, fourth!]) expect(x).toBe(first!.x);
    expect((at("to")[0]!.x - at("from")[0]!.x) / MM).toBeCloseTo(40, 2);
  });

  it("stand beside the words of their step when small, and above them when not", async () => {
    const step = (width: number): Block => ({
      kind: "group",
      name: "step",
      heading: "A step",
      blocks: [
        { kind: "figure", caption: "Seen", drawing: () => smallDrawing("Small", width), beside: true },
        { kind: "paragraph", style: "plain", words: "First do this" },
      ],
    });
    const heights = async (width: number) => {
      const page = (await textsOf(await pdf(sheet([step(width)])))).flat();
      return ["Seen", "First do this"].map((words) => page.find(({ text }) => text === words)!.y) as [
        number,
        number,
      ];
    };
    const [figure, words] = await heights(62);
    expect(figure).toBe(words);
    const [above, below] = await heights(150);
    expect(above).toBeGreaterThan(below + 40 * MM);
  });

  it("leave out what has no place, and themselves where they have no size", async () => {
    const wild: Drawing = {
      ...ruler(100),
      items: [
        text("label", Number.NaN, 1, "nowhere"),
        {
          kind: "path",
          layer: "edge",
          strokes: [
            [
              [0, 0],
              [Number.POSITIVE_INFINITY, 1],
            ],
          ],
          closed: false,
          weight: 0.4,
          fill: "none",
        },
        text("label", 10, 10, "here"),
      ],
    };
    const figure = (drawing: Drawing): Block => ({ kind: "figure", caption: "", drawing: () => drawing });
    const page = (await textsOf(await pdf(sheet([figure(wild), figure({ ...wild, width: 0 })])))).flat();
    expect(page.map((said) => said.text)).toContain("here");
    expect(page.map((said) => said.text)).not.toContain("nowhere");
  });
});
