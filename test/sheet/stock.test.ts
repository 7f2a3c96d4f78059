/** What the sheet tells of each stock: how good its layouts are, stops, rests by name, the pile, and the money. */
import { describe, expect, it } from "vitest";
import { type Evaluated, evaluate, sheetDocument, sheetOf, writeSheet } from "../../server/service";
import type { SheetData } from "../../server/sheet/data";
import { nothing } from "../checks/plans";
import { layoutsOf } from "../laid-out";
import { ALL } from "./samples";

const first = (text: string): Evaluated => evaluate("p.sawbuck", text, nothing);
const better = (text: string, effort?: number): Evaluated =>
  evaluate("p.sawbuck", text, nothing, { layouts: layoutsOf(first(text), effort) });
const english = (e: Evaluated): string => writeSheet(sheetOf(e), "text").replace(/\s+/g, " ");
const french = (e: Evaluated): string =>
  writeSheet(sheetOf(e, undefined, "fr"), "text", { language: "fr" }).replace(/[\s\u00a0]+/g, " ");

const RACK = `plan A rack
stock 2x4, sold 6' $3.15, 8' $4.20, 10' $5.40
part rail 7 of 2x4, length 41"
part post 9 of 2x4, length 33-1/2"
part slat 11 of 2x4, length 22-3/4"
`;
const UNPRICED = `plan A rack
stock 2x4, sold 6' $3.15, 8', 10'
part rail 7 of 2x4, length 41"
part post 9 of 2x4, length 33-1/2"
part slat 11 of 2x4, length 22-3/4"
part peg 5 of 2x4, length 17-1/8"
`;
const SHELF = `plan A shelf
sheet ply, plywood 1/2", sold 48" x 96" $52
part shelf 5 of ply, length 30", width 14"
`;

describe("how good a layout is", () => {
  it("a first answer: nothing is known", () => {
    const sheet = sheetOf(first(RACK));
    const { cost } = sheet.boards[0]!.proof;
    expect(sheet.boards[0]!.proof).toEqual({
      status: "first",
      cost,
      bound: null,
      unit: "cents",
      currency: "$",
      work: 0,
      certificate: null,
    });
    expect(sheet.shopping.total).toBe(`$${(cost / 100).toFixed(2)}`);
    expect(english(first(RACK))).toContain("this is a first answer, and a cheaper way may exist");
  });

  it.each([RACK, SHELF])("proven, with what shows it", (text) => {
    const plan = better(text);
    const sheet = sheetOf(plan);
    const { proof } = [...sheet.boards, ...sheet.panels][0]!;
    expect(proof).toMatchObject({ status: "proven", unit: "cents", currency: "$", bound: proof.cost });
    expect(proof.certificate?.worths.length).toBeGreaterThan(0);
    expect(proof.work).toBeGreaterThan(0);
    expect(english(plan)).toContain("no cheaper way to cut it exists");
    expect(english(plan)).not.toContain("first answer");
    expect(french(plan)).toContain("aucun débit n’est moins cher");
  });

  it("between bounds: how much could be saved at most", () => {
    const plan = better(RACK, 1);
    const { proof } = sheetOf(plan).boards[0]!;
    expect(proof.status).toBe("bounded");
    const over = ((proof.cost - proof.bound!) / 100).toFixed(2);
    expect(english(plan)).toContain(`it costs at most $${over} over the cheapest possible`);
    expect(french(plan)).toContain(`cela coûte au plus ${over.replace(".", ",")} $ de plus`);
  });

  it("where a price is missing, wood and not money", () => {
    const plan = better(UNPRICED);
    expect(sheetOf(plan).boards[0]!.proof).toMatchObject({ status: "proven", unit: "mm", currency: "" });
    expect(english(plan)).toContain("no way to cut it takes less wood; a price is missing");
    const rough = better(UNPRICED, 1);
    const { cost, bound } = sheetOf(rough).boards[0]!.proof;
    expect(bound).toBeLessThan(cost);
    expect(english(rough)).toMatch(/takes at most [\d/-]+" more than the least possible; a price is missing/);
    const sheets = better(SHELF.replace(" $52", ""));
    expect(sheetOf(sheets).panels[0]!.proof).toMatchObject({ unit: "mm2", cost: 48 * 96 * 25.4 ** 2 });
  });

  it("nothing is said of it where nothing is bought", () => {
    const pile = first('plan A peg\nstock 2x4, on hand 1 of 40"\npart peg 2 of 2x4, length 12"\n');
    expect(english(pile)).not.toContain("first answer");
    expect(sheetOf(pile).boards[0]!.proof).toMatchObject({ status: "first", cost: 0 });
  });
});

describe("stops", () => {
  it("the lengths cut more than once, longest first, with marks and boards", () => {
    const sheet = sheetOf(first(`${RACK}part cap 1 of 2x4, length 50"\npart tie 1 of 2x4, length 41"\n`));
    expect(sheet.boards[0]!.stops.map(({ length, count, marks }) => [length.text, count, marks])).toEqual([
      ['41"', 8, "A, E"],
      ['33-1/2"', 9, "B"],
      ['22-3/4"', 11, "C"],
    ]);
    for (const { boards } of sheet.boards[0]!.stops)
      expect(boards.reduce((sum, b) => sum + b.count, 0)).toBeGreaterThan(1);
    expect(english(first(RACK))).toMatch(
      /Set a stop on the saw once for each length: 7 of 41" \(A\) from \d boards/,
    );
  });

  it.each(ALL)("$name: as many pieces as its boards hold", ({ sheet }) => {
    for (const { boards, stops } of sheet().boards) {
      const lengths = boards.flatMap(({ cuts, count }) =>
        cuts.map(({ length }) => ({ mm: length.mm, count })),
      );
      for (const { length, count } of stops)
        expect(lengths.reduce((sum, cut) => sum + (cut.mm === length.mm ? cut.count : 0), 0)).toBe(count);
    }
  });
});

describe("what is left", () => {
  it("by name, and what the shop file then says", () => {
    const plan = first(`plan A rack
stock 2x4, sold 8' $4.20, on hand 2 of 41", 1 of 60" bad 20" to 24", 3 of 60"
part rail 2 of 2x4, length 30"
part post 1 of 2x4, length 19"
part long 2 of 2x4, length 70"
`);
    const [stock] = sheetOf(plan).boards;
    expect(
      stock!.boards.flatMap(({ rests }) => rests.map(({ name, length }) => [name, length.text])),
    ).toEqual([
      ["2x4 rest 1", '36"'],
      ["2x4 rests 2 and 3", '25-3/8"'],
    ]);
    expect(stock!.onHandAfter).toBe('on hand 1 of 36", 2 of 25-3/8", 3 of 60"');
  });

  it.each(ALL)("$name: its line for the shop file is read as it is meant", ({ sheet }) => {
    const { boards, panels } = sheet();
    for (const { boards: laid, onHandAfter } of boards) {
      if (onHandAfter === "") continue;
      const { worked, problems } = first(
        `stock rest of 2x4, ${onHandAfter}\npart a 1 of rest, length 1/8"\n`,
      );
      expect(problems.map((p) => p.code)).toEqual([]);
      const [material] = worked.materials;
      const longest = Math.max(...material!.onHand.map(({ length }) => length.approx));
      const rests = laid.flatMap(({ rests }) => rests);
      expect(material!.onHand.reduce((sum, { count }) => sum + count, 0)).toBeGreaterThanOrEqual(
        rests.reduce((sum, { count }) => sum + count, 0),
      );
      for (const { length } of rests) expect(length.mm).toBeLessThanOrEqual(longest + 1.6);
    }
    for (const { onHandAfter } of panels) {
      if (onHandAfter === "") continue;
      const { problems } = first(
        `sheet rest, thickness 12mm, ${onHandAfter}\npart a 1 of rest, length 1/8", width 1/8"\n`,
      );
      expect(problems.map((p) => p.code)).toEqual([]);
    }
  });

  it.each(ALL)("$name: no rest of a sheet lies on a piece or off its sheet", ({ sheet }) => {
    for (const { cuts, rests, length, width } of sheet().panels.flatMap(({ sheets }) => sheets))
      for (const rest of rests) {
        const [right, top] = [rest.x + rest.length.mm, rest.y + rest.width!.mm];
        expect(right).toBeLessThanOrEqual(length.mm + 1e-6);
        expect(top).toBeLessThanOrEqual(width.mm + 1e-6);
        for (const cut of cuts)
          expect(
            cut.x >= right ||
              cut.y >= top ||
              cut.x + cut.length.mm <= rest.x ||
              cut.y + cut.width.mm <= rest.y,
          ).toBe(true);
      }
  });
});

describe("the money", () => {
  const PLAN = `plan A rack
  budget $20
  tax 5%
stock 2x4, sold 6' $3.30, 8' $4.20, on hand 2 of 41", 1 of 30"
sheet ply, plywood 1/2", sold 48" x 96" $9.60, on hand 1 of 24" x 48"
part rail 5 of 2x4, length 40"
part shelf 1 of ply, length 40", width 20"
`;
  const of = (text: string): SheetData["shopping"] => sheetOf(first(text)).shopping;

  it("what comes from the pile, and about what it would cost new", () => {
    expect(of(PLAN).pile.map(({ stock, count, pieces, saves }) => [stock, count, pieces, saves])).toEqual([
      ["2x4", 2, 2, "$3.50"],
      ["ply", 1, 1, "$1.67"],
    ]);
    expect(of(PLAN).onHand).toEqual(['2 of 41" 2x4', '1 of 24" x 48" ply']);
    expect(english(first(PLAN))).toContain('From the pile: - 2 of 41" 2x4, for 2 pieces; saves about $3.50');
    expect(of(PLAN.replace(" $3.30", "").replace(" $4.20", "")).pile[0]!.saves).toBe(null);
  });

  it("what is left of the budget, or is over it", () => {
    expect(of(PLAN)).toMatchObject({ total: "$7.88", left: { amount: "$12.12", over: false } });
    const over = PLAN.replace("budget $20", "budget $5");
    expect(of(over)).toMatchObject({ total: "$7.88", left: { amount: "$2.88", over: true } });
    expect(english(first(over))).toMatch(/Budget \$5\.00 Over the budget \$2\.88/);
    expect(of(PLAN.replace("  budget $20\n", "")).left).toBe(null);
    expect(of(PLAN.replace("budget $20", "budget €20")).left).toBe(null);
  });

  it("is in every form of the sheet", () => {
    const data = sheetOf(first(PLAN));
    for (const format of ["text", "markdown", "html", "json"] as const)
      expect(writeSheet(data, format)).toContain("$12.12");
    expect(JSON.stringify(sheetDocument(data))).toContain("Left of the budget");
  });
});

describe("ripped pieces of one length", () => {
  const text = `plan A rack
  kerf 1/8"
stock 1x6, sold 8' $10.55
part slat 7 of 1x6, length 22", width 2-1/2"
part lip 3 of 1x6, length 22", width 1-1/4"
part rail 2 of 1x6, length 40"
`;

  it("share a stretch of board, each told once, and take fewer boards than one after the other", () => {
    const sheet = sheetOf(better(text));
    const [plan] = sheet.boards;
    const cut = plan!.boards.flatMap(({ cuts, count }) =>
      cuts.map(({ piece, label }) => ({ piece, label, count })),
    );
    // floor((5-1/2" + 1/8") / (2-1/2" + 1/8")) = 2 side by side: seven slats and three lips on five stretches.
    expect(cut.filter(({ label }) => /slat|lip/.test(label)).reduce((n, { count }) => n + count, 0)).toBe(5);
    const pieces = cut.flatMap(({ piece }) => piece.split(", "));
    expect(pieces.sort()).toEqual([
      ...["lip / 1", "lip / 2", "lip / 3", "rail / 1", "rail / 2"],
      ...[1, 2, 3, 4, 5, 6, 7].map((n) => `slat / ${n}`),
    ]);
    expect(plan!.boards.reduce((n, { count }) => n + count, 0)).toBe(3);
    expect(plan!.assumed).toContain(
      "ripped pieces of one length lie side by side where the board is wide enough: cut to length first, then rip",
    );
    expect(cut.some(({ label }) => label === "2 slat side by side")).toBe(true);
  });
});

describe("pieces with slanted ends", () => {
  const assumed = (end: string): string =>
    sheetOf(better(`plan A frame\nstock 1x4, sold 8' $5\npart rail 4 of 1x4, length 22"${end}\n`))
      .boards.flatMap((plan) => plan.assumed)
      .join("; ");

  it.each([", ends mitered 45°", ", left end mitered 10°", ", right end beveled 22.5°"])(
    "are laid out from tip to tip, which is said: %s",
    (end) => {
      expect(assumed(end)).toMatch(
        /a piece with a slanted end is laid out from tip to tip: two such ends made by one saw cut are not counted on; checked: .* no cheaper way to cut it exists$/,
      );
    },
  );

  it("are not spoken of where there are none", () => {
    expect(assumed("")).not.toContain("tip to tip");
  });

  it("are laid out so on sheets too, where every cut goes from edge to edge", () => {
    const said = (end: string): string =>
      sheetOf(
        better(
          `sheet ply, plywood 1/2", sold 48" x 96" $38\npart cheek 2 of ply, length 22", width 15"${end}\n`,
        ),
      )
        .panels.flatMap((plan) => plan.assumed)
        .join("; ");
    expect(said("")).toMatch(/; every cut goes from edge to edge; checked: /);
    expect(said(", right end mitered 20°")).toMatch(
      /; every cut goes from edge to edge; a piece with a slanted end is laid out from tip to tip: .*; checked: /,
    );
  });
});

describe("prices that are missing", () => {
  const shopping = (text: string) =>
    sheetOf(better(`plan A rack\n  budget $50\n  tax 10%\n${text}`)).shopping;
  const shelf = 'part shelf 2 of 1x6, length 40"\n';
  const post = "stock 2x4, sold 8' $20\npart post 1 of 2x4, length 60\"\n";

  it("of everything leave no sum, which would say that it costs nothing", () => {
    const { subtotal, tax, total, left, withoutPrice } = shopping(`stock 1x6, sold 8'\n${shelf}`);
    expect({ subtotal, tax, total, left }).toEqual({ subtotal: null, tax: null, total: null, left: null });
    expect(withoutPrice).toEqual(["1x6"]);
  });

  it("of something leave the sum of the rest, and nothing of the budget is said to be left", () => {
    const { total, left } = shopping(`stock 1x6, sold 8'\n${shelf}${post}`);
    expect({ total, left }).toEqual({ total: "$22.00", left: null });
  });

  it("do not hide what it is over the budget in any case", () => {
    const { left } = shopping(`stock 1x6, sold 8'\n${shelf}${post.replace("$20", "$60")}`);
    expect(left).toEqual({ amount: "$16.00", over: true });
  });

  it("of screws, and how much or how many it takes, are missed as well", () => {
    const joined = (more: string) => shopping(`${post}part rail 1 of 2x4, length 30"\n${more}`);
    expect(joined('fasten rail into post, 2 #8 x 2-1/2"').withoutPrice).toEqual(['#8 x 2-1/2"']);
    expect(joined('fastener deck, #8 x 2-1/2" screw\nfasten rail into post, 2 deck in all').left).toBeNull();
    const box = 'fastener deck, #8 x 2-1/2" screw, box of 100 $8\n';
    expect(joined(`${box}fasten rail into post, 2 deck in all`).left).toEqual({
      amount: "$19.20",
      over: false,
    });
    expect(
      joined(`${box}fasten rail into post, 2 deck in all\nfasten post into rail, 1 deck at each crossing`)
        .left,
    ).toBeNull();
    expect(joined('part stay of 2x4, length 20"\n').left).toBeNull();
    expect(joined("finish brew, tin of 1 qt $9\ncoat rail with brew, 2 coats\n").left).toBeNull();
  });

  it("of nothing leave a budget", () => {
    expect(shopping(post).left).toEqual({ amount: "$28.00", over: false });
  });
});
