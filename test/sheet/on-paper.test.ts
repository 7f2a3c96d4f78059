/**
 * Who holds nothing but the printed page can list every mark, every screw and every step: read off the PDF's text and
 * compared with the JSON. And the sums of the sheet's tables are those of the plan.
 */
import { describe, expect, it } from "vitest";
import { drawingsOf, sheetDocument } from "../../server/service";
import type { CutRow, SheetData } from "../../server/sheet/data";
import { sheetPdf } from "../../server/sheet/pdf";
import { FONTS, textsOf } from "./read-pdf";
import { PLANS } from "./samples";

/** The page's words in order, without blanks, so that it does not matter where lines end. */
async function printed(data: SheetData, drawings: ReturnType<typeof drawingsOf>): Promise<string> {
  const bytes = await sheetPdf(sheetDocument(data, { drawings }), { paper: "Letter", fonts: FONTS });
  const pages = await textsOf(bytes);
  return tight(pages.flatMap((said) => said.filter((s) => s.tagged).map(({ text }) => text)).join(" "));
}

const tight = (words: string): string => words.replace(/\s+/g, "");
const rowsOf = ({ cutList }: SheetData): CutRow[] => cutList.flatMap(({ rows }) => [...rows]);
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

describe.each(PLANS)("$name, printed", ({ evaluated, sheet }) => {
  it("tells every piece: its mark, how many, its part, its length", async () => {
    const words = await printed(sheet(), drawingsOf(evaluated()));
    for (const row of rowsOf(sheet())) {
      expect(words).toContain(tight(`${row.mark}${row.count}${row.part}`));
      if (row.length) expect(words).toContain(tight(`${row.length.text}${row.length.other}`));
    }
  });

  it("tells every screw: of which joint, how many, and each of its marks", async () => {
    const words = await printed(sheet(), drawingsOf(evaluated()));
    for (const { title, what, screws, crossings, setOut } of sheet().joints) {
      expect(words).toContain(tight(title));
      if (what !== "") expect(words).toContain(tight(what));
      if (setOut.length > 0) expect(words).toContain(tight(`${title}: ${screws} screw`));
      expect(crossings === null || crossings > 0).toBe(true);
      for (const set of setOut)
        for (const { along, across } of set.grids) {
          expect(words).toContain(tight(along.words));
          expect(words).toContain(tight(across.words));
        }
    }
  });

  it("tells every step in order, and what is new, driven, coated and waited for in it", async () => {
    const words = await printed(sheet(), drawingsOf(evaluated()));
    let at = 0;
    for (const step of sheet().steps) {
      at = words.indexOf(tight(`${step.number}. ${step.title}`), at);
      expect(at, step.title).toBeGreaterThan(-1);
      const rest = words.slice(at);
      for (const { mark, part, count } of step.fresh)
        expect(rest).toContain(tight(`${mark} ${part}, ${count} piece`));
      for (const { title, screws } of step.joins)
        expect(rest).toContain(tight(screws === null ? title : `${title}: ${screws} screw`));
      for (const said of [...step.coats, ...step.linings, ...step.square])
        expect(rest).toContain(tight(said));
      if (step.wait) expect(rest).toContain(tight(`then wait ${step.wait.text}`));
    }
    expect(sheet().steps.length).toBeGreaterThan(0);
  });
});

describe.each(PLANS)("the sums of $name", ({ evaluated, sheet }) => {
  it("are the same in the cut list, the layouts, the pieces and the steps", () => {
    const data = sheet();
    const { worked } = evaluated();
    const cut = sum(rowsOf(data).map(({ count }) => count));
    expect(rowsOf(data).every((row) => row.pieces.length === row.count)).toBe(true);
    const onBoards = data.boards.flatMap(({ boards }) =>
      boards.flatMap(({ cuts }) => cuts.flatMap(({ piece }) => piece.split(", "))),
    );
    const onPanels = data.panels.flatMap(({ sheets }) =>
      sheets.flatMap(({ cuts }) => cuts.flatMap(({ piece }) => piece.split(", "))),
    );
    const laid = [...onBoards, ...onPanels].filter((id) => !id.startsWith("spare")).length;
    const left = sum([...data.boards, ...data.panels].map(({ unplaced }) => unplaced.length));
    expect(laid + left).toBe(cut);
    const fresh = data.steps.flatMap((step) => step.fresh.flatMap(({ pieces }) => pieces));
    expect(new Set(fresh).size).toBe(fresh.length);
    const placed = worked.pieces.all.map(({ id }) => id);
    expect(fresh.filter((id) => placed.includes(id)).sort()).toEqual([...placed].sort());
  });

  it("are the same for screws in the joints, the fasteners and the steps", () => {
    const data = sheet();
    const known = data.joints.filter(({ what }) => what !== "");
    const screws = sum(known.map((joint) => joint.screws ?? 0));
    const fasteners = sum(data.fasteners.map(({ count }) => count ?? 0));
    expect(fasteners).toBe(screws * data.make);
    const driven = sum(data.steps.flatMap((step) => step.joins.map((join) => join.screws ?? 0)));
    expect(driven).toBe(sum(data.joints.map((joint) => joint.screws ?? 0)));
  });

  it("are the same for money in the rows and under them", () => {
    const { rows, subtotal, tax, total } = sheet().shopping;
    const cents = (money: string | null): number =>
      Math.round(Number((money ?? "0").replace(/[^\d.]/g, "")) * 100);
    expect(sum(rows.map((row) => cents(row.total)))).toBe(cents(subtotal));
    expect(cents(subtotal) + cents(tax)).toBe(cents(total));
    for (const row of rows) if (row.each) expect(cents(row.each) * row.count).toBe(cents(row.total));
  });
});
