/** How a PDF is laid out: what stays together on a page, drawings at their scale. */
import { describe, expect, it } from "vitest";
import { type Drawing, text } from "../../server/sheet/display";
import type { Block, Section } from "../../server/sheet/document";
import type { Paper } from "../../server/sheet/pdf";
import { made, smallDrawing } from "./made-document";
import {
  expectInside,
  letters,
  linesOn,
  MARGIN,
  MM,
  paragraph,
  pdf,
  sheet,
  table,
  tagged,
} from "./pdf-pages";
import { type Said, textsOf } from "./read-pdf";

const longTable = (rows: number, lines: number) =>
  table(
    "long",
    [
      { name: "mark", head: "Mark", fit: "mark" },
      { name: "what", head: "What it is", fit: "text" },
    ],
    Array.from({ length: rows }, (_, i) => [
      { words: `m${i}.` },
      { lines: Array.from({ length: lines }, (_, n) => `row ${i} line ${n}.`) },
    ]),
    { title: "All of them", sums: [{ label: "Together", value: "$12.50" }] },
  );

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

  it("does not part a short list, nor a section that asks to stand on one page", async () => {
    const lists = ([1, 2] as const).map((columns): Block => {
      const columned = columns === 2 ? { columns } : {};
      return { kind: "list", style: "bullets", ...columned, items: items(4) };
    });
    for (let lines = 24; lines < 48; lines++) {
      const above = Array.from({ length: lines }, (_, i) => paragraph(`line ${i}`));
      for (const list of lists) {
        const pages = await textsOf(await pdf(sheet([...above, list])));
        expect(pageOf(pages, "item 0."), `${lines} lines`).toBe(pageOf(pages, "item 3."));
      }
      const blocks = Array.from({ length: 9 }, (_, i) => paragraph(`part ${i}.`));
      const whole: Section = { name: "two", heading, blocks, onePage: true };
      const pages = await textsOf(await pdf({ ...made, sections: [...sheet(above).sections, whole] }));
      expect(pageOf(pages, heading), `${lines} lines`).toBe(pageOf(pages, "part 8."));
    }
  });

  it("never breaks a row, says the heads again on the next page, and keeps the sum with the last row", async () => {
    const pages = await textsOf(await pdf(sheet([longTable(40, 4)])));
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
    const whole = longTable(40, 1);
    const [group] = whole.groups;
    const rows = group!.rows.map((row, i) => ({ ...row, ...(i % 3 > 0 && { goesOn: true as const }) }));
    for (let lines = 0; lines < 6; lines++) {
      const above = Array.from({ length: lines }, (_, i) => paragraph(`line ${i}`));
      const pages = await textsOf(await pdf(sheet([...above, { ...whole, groups: [{ ...group!, rows }] }])));
      for (let i = 0; i < 39; i += 3) expect(pageOf(pages, `m${i}.`)).toBe(pageOf(pages, `m${i + 2}.`));
    }
  });

  it("breaks a row only where it is higher than a page", async () => {
    const pages = await textsOf(await pdf(sheet([longTable(2, 70)])));
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

  it("wait for the next page where this one has no room, while what follows fills it", async () => {
    const views: Block = {
      kind: "figures",
      figures: [100, 100].map((height, i) => ({
        kind: "figure",
        caption: `view ${i}`,
        drawing: () => smallDrawing("View", 170, height),
      })),
    };
    const above = Array.from({ length: 14 }, (_, i) => paragraph(`line ${i}.`));
    const below = Array.from({ length: 60 }, (_, i) => paragraph(`after ${i}.`));
    const pages = await textsOf(await pdf(sheet([...above, views, ...below])));
    const starts = pages.map((page) => page.filter(({ tagged }) => tagged).map(({ text }) => text.trim()));
    expect(starts[0]!.slice(-2).every((said) => said.startsWith("after"))).toBe(true);
    expect(starts[0]).toContain("view 0");
    expect(starts[1]![0]).toBe("view 1");
    const said = starts.flat().filter((words) => words.startsWith("after"));
    expect(said).toEqual(Array.from({ length: 60 }, (_, i) => `after ${i}.`));
    for (const page of pages) expectInside(page, "Letter");
    const last = await textsOf(await pdf(sheet([...above, views])));
    expect(last.map((page) => page.some(({ text }) => text === "view 1"))).toEqual([false, true]);
  });

  it("leave no heads of a table alone under them", async () => {
    for (let height = 212; height < 250; height += 3) {
      const figure = {
        kind: "figure" as const,
        caption: "",
        drawing: () => smallDrawing("View", 170, height),
      };
      const views: Block = { kind: "figures", figures: [figure] };
      const above = Array.from({ length: 20 }, (_, i) => paragraph(`line ${i}.`));
      const pages = await textsOf(await pdf(sheet([...above, views, longTable(40, 2)])));
      expect(pages.some((page) => page.some(({ text, tagged }) => text === "Mark" && !tagged))).toBe(true);
      for (const page of pages) {
        expectInside(page, "Letter");
        const head = page.find(({ text }) => text === "Mark");
        const rows = page.filter(({ text, y }) => /^m\d+\.$/.test(text) && head && y < head.y);
        expect(rows.length > 0, `${height} mm`).toBe(head !== undefined);
      }
    }
  });

  it("have their marks beside them where the page is wide enough, else below", async () => {
    const marked = (width: number): Block[] => [
      { kind: "figure", caption: "Seen", drawing: () => smallDrawing("Whole", width) },
      { kind: "list", style: "marks", items: [{ lead: "A", words: "leg, 4 pieces" }] },
    ];
    const places = async (width: number) => {
      const page = (await textsOf(await pdf(sheet(marked(width))))).flat();
      return ["Seen", "leg, 4 pieces"].map((words) => page.find(({ text }) => text === words)!);
    };
    const [seen, beside] = await places(120);
    expect(beside!.y).toBe(seen!.y);
    expect(beside!.x - seen!.x).toBeGreaterThan(120 * MM);
    const [above, below] = await places(160);
    expect(above!.y - below!.y).toBeGreaterThan(40 * MM);
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
