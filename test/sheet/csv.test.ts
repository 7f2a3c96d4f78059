/** The CSV tables say what the sheet says, whatever a plan says, and nothing in them is worked out by a spreadsheet. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ifKnown } from "../../server/plan";
import { type CsvTable, guarded, sheetCsv, tables, unguarded } from "../../server/sheet/csv";
import { oneLine } from "../../server/sheet/escape";
import { asData, cellsOf, isNoFormula, type Row, read, readBack, text } from "./csv-back";
import { brief, nasty, nastySheets, PATIENCE, RUNS } from "./nasty";
import { ALL, PLANS, type SamplePlan } from "./samples";
import { empty, trough } from "./trough";

const sum = (rows: readonly Row[], of: (row: Row) => number): number =>
  rows.reduce((all, row) => all + of(row), 0);

describe.each(ALL)("$name", ({ sheet }) => {
  it("reads back as the data", () => {
    const data = sheet();
    for (const table of tables) expect(readBack(data, table), table).toEqual(asData(data, table));
  });
});

describe.each(PLANS)("the sums of $name", (plan) => {
  const rows = (table: CsvTable) => read(plan.sheet(), table);

  it("cut list: as many pieces as the plan makes, and as many mm of each", () => {
    const { parts, settings } = plan.evaluated().worked;
    const known = [...parts.values()].filter((p) => p.material && p.count.state === "known");
    const count = known.reduce((all, p) => all + (ifKnown(p.count) ?? 0) * settings.make, 0);
    expect(sum(rows("cut-list"), (row) => Number(row.count))).toBe(count);
    const mm = known.reduce(
      (all, p) => all + (ifKnown(p.count) ?? 0) * settings.make * (ifKnown(p.needs)?.approx ?? 0),
      0,
    );
    expect(sum(rows("cut-list"), (row) => Number(row.count) * Number(row["length mm"]))).toBeCloseTo(mm, 6);
  });

  it("layouts: every piece of a stock that is laid out, and its length", () => {
    const laid = rows("layouts").filter((row) => !row.piece!.startsWith("spare / "));
    expect(laid.filter((row) => row.label === "no wood found")).toEqual([]);
    for (const stock of new Set(laid.map((row) => row.stock))) {
      const own = laid.filter((row) => row.stock === stock);
      const cut = rows("cut-list").filter((row) => row.stock === stock);
      expect(sum(own, (row) => Number(row.alike))).toBe(sum(cut, (row) => Number(row.count)));
      const length = sum(own, (row) => Number(row.alike) * Number(row["cut length mm"]));
      const listed = sum(cut, (row) => Number(row.count) * Number(row["length mm"]));
      // A layout counts in whole ticks of 1/640 mm.
      expect(Math.abs(length - listed)).toBeLessThanOrEqual((own.length + 1) / 64);
    }
  });

  it("shopping: the money before tax", () => {
    const { shopping } = plan.evaluated().worked;
    expect(sum(rows("shopping"), (row) => Number(row["total amount"]))).toBeCloseTo(
      shopping.subtotal?.approx ?? 0,
      6,
    );
    for (const row of rows("shopping"))
      expect(Number(row.count) * Number(row["each amount"])).toBeCloseTo(Number(row["total amount"]), 6);
  });

  it("fasteners and pieces: as many as are counted and placed", () => {
    const { joints, settings, pieces } = plan.evaluated().worked;
    const screws = joints.filter(({ size }) => size).map((joint) => ifKnown(joint.count) ?? 0);
    const made = settings.make * screws.reduce((all, n) => all + n, 0);
    expect(sum(rows("fasteners"), (row) => Number(row.count))).toBe(made);
    expect(rows("pieces").length).toBe(pieces.all.length);
  });

  it("as a whole", async () => {
    await expect(written(plan)).toMatchFileSnapshot(`snapshots/csv/${plan.name}.snap`);
  });
});

describe("hostile texts", () => {
  it(
    "read back as the text on one line, and none is a formula",
    () => {
      fc.assert(
        fc.property(nastySheets(brief(trough)), (data) => {
          for (const table of tables) {
            expect(readBack(data, table), table).toEqual(asData(data, table));
          }
          for (const cell of cellsOf(data)) isNoFormula(cell);
        }),
        { numRuns: Math.ceil(RUNS / 5) },
      );
    },
    PATIENCE,
  );

  it("any string comes back", () => {
    const any = fc.oneof(nasty, fc.string({ unit: fc.constantFrom(...`'"=+-@;,5. \t\r\n＝a\u200b`) }));
    fc.assert(
      fc.property(any, any, (what, why) => {
        expect(unguarded(guarded(what))).toBe(what);
        const [row] = read({ ...empty, notChecked: [{ what, why }] }, "not-checked");
        expect([text(row?.what), text(row?.why)]).toEqual([oneLine(what), oneLine(why)]);
        for (const cell of [row!.what!, row!.why!]) isNoFormula(cell);
      }),
      { numRuns: RUNS },
    );
  });

  it("any number comes back, in plain digits", () => {
    const piece = trough.pieces[0]!;
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (mm) => {
        const data = { ...empty, pieces: [{ ...piece, from: [mm, 0, 0] as const }] };
        const cell = read(data, "pieces")[0]!["from left mm"]!;
        expect(cell).toMatch(/^-?\d+(\.\d+)?$/);
        expect(Number(cell)).toBe(mm === 0 ? 0 : mm);
      }),
      { numRuns: RUNS },
    );
  });

  it("are guarded where they open with what a spreadsheet works out, and nowhere else", () => {
    expect(
      ["=1+1", "+1", "-1+2", "@A1", ' "=1', "'=1", "＝1", "a;=1", "-5", "-5.25", "a=b", "1-1/2", "—"].map(
        guarded,
      ),
    ).toEqual([
      "'=1+1",
      "'+1",
      "'-1+2",
      "'@A1",
      "' \"=1",
      "''=1",
      "'＝1",
      "a;'=1",
      "-5",
      "-5.25",
      "a=b",
      "1-1/2",
      "—",
    ]);
  });
});

describe("a table", () => {
  it("with nothing in it has its heads", () => {
    expect(tables.map((table) => sheetCsv(empty, table).split("\r\n").length)).toEqual(tables.map(() => 2));
  });

  it("begins with a byte order mark only where one is asked for", () => {
    const plain = sheetCsv(trough, "shopping");
    expect(plain.startsWith("aisle,")).toBe(true);
    expect(sheetCsv(trough, "shopping", { byteOrderMark: true })).toBe(`\ufeff${plain}`);
  });

  it("has heads that are unique", () => {
    for (const table of tables) {
      const heads = sheetCsv(empty, table).trim().split(",");
      expect(new Set(heads).size, table).toBe(heads.length);
    }
  });
});

/** All tables in one, for a snapshot that can be read. */
function written({ sheet }: SamplePlan): string {
  const all = tables.map((table) => `# ${table}\n${sheetCsv(sheet(), table).replaceAll("\r\n", "\n")}`);
  return all.join("\n");
}
