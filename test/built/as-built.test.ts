/** The plan against the thing as it was built: on the sheet, and compared with all that comes of it. */
import { describe, expect, test } from "vitest";
import { adapt, asBuilt, bundled, compare, writeComparisons } from "../../server/exchange";
import { evaluate, sheetOf } from "../../server/service";
import type { SheetChanges } from "../../server/sheet/changes/data";
import { memory } from "../features/plans";

const FILE = "stand.sawbuck";
const FILES = {
  "shop.sawbuck": "stock 2x4, sold 8' $4\nstock pine of 2x4, species eastern-white-pine, sold 8' $6\n",
};
const read = memory(FILES);
const PLAN = `plan Stand
  language 1
shop shop.sawbuck
measure rim = 30", at least 28"
part leg 4 of 2x4, length rim - 1"
part rail 2 of 2x4, length 20"
`;
const RECORD = `built 2026-05-09 by Ms Okoro's group
  measured rim = 27-1/2" because the wall leans
  measured length of rails = 19"
  used pine instead of 2x4
  changed Two more screws in each corner
  wear 2027-04-01 One leg is soft
`;

/** What is told of each building of that day, or why nothing is. */
function built(record: string, day?: string): SheetChanges[] | string {
  const text = PLAN + record;
  const made = asBuilt(FILE, text, read, day);
  if ("refused" in made) return made.refused;
  return made.map(
    (one) =>
      compare(evaluate(FILE, text, read), evaluate(FILE, one.text, one.read), {}, "en", one.building).changes,
  );
}
const one = (record: string, day?: string): SheetChanges => {
  const made = built(record, day);
  if (typeof made === "string") throw new Error(made);
  expect(made.length).toBe(1);
  return made[0]!;
};

describe("compared with the plan", () => {
  test("what came out otherwise is told with all that comes of it, the record first", () => {
    const changes = one(RECORD);
    expect(changes.same).toBe(false);
    expect(
      changes.pieces.map(({ new: now, fields }) => [
        now?.part,
        now?.stock,
        fields.map((f) => `${f.what}: ${f.old} → ${f.new}`),
      ]),
    ).toMatchInlineSnapshot(`
      [
        [
          "leg",
          "pine",
          [
            "of: 2x4, 1-1/2" x 3-1/2" → pine, 1-1/2" x 3-1/2", eastern white pine",
            "length: 29" → 26-1/2"",
          ],
        ],
        [
          "rail",
          "pine",
          [
            "of: 2x4, 1-1/2" x 3-1/2" → pine, 1-1/2" x 3-1/2", eastern white pine",
            "length: 20" → 19"",
          ],
        ],
      ]
    `);
    // The bound of the plan is broken by what was built, and that is told as new.
    expect(changes.problems.new.map(({ code }) => code)).toEqual(["measure-out-of-bounds"]);
    expect(changes.problems.old).toEqual([]);
    expect(changes.built[0]).toMatchObject({
      date: "2026-05-09",
      changed: ["Two more screws in each corner"],
    });
    // Neither the record nor what is planned beside it is a difference of the thing.
    expect(changes.more).toEqual([]);
  });

  test("it is what adapting the plan to the same values tells", () => {
    const wishes = [
      { kind: "set", what: "rim", value: '27-1/2"' },
      { kind: "set", what: "length of rail", value: '19"' },
      { kind: "swap", old: "2x4", new: "pine" },
    ] as const;
    const adapted = adapt(FILE, PLAN, read, wishes);
    if ("refused" in adapted) throw new Error(adapted.refused);
    const { changes } = compare(evaluate(FILE, PLAN, read), evaluate(FILE, adapted.text, adapted.read));
    const told = one(RECORD);
    expect(told.pieces).toEqual(changes.pieces);
    expect(told.buying).toEqual(changes.buying);
    expect(told.cost).toEqual(changes.cost);
    expect(told.cutting).toEqual(changes.cutting);
  });

  test("built as planned, nothing differs; what is changed in words alone does", () => {
    expect(one("built 2026-05-09\n  wear 2027-04-01 One leg is soft\n").same).toBe(true);
    expect(one('built 2026-05-09\n  measured rim = 30"\n').same).toBe(true);
    expect(one("built 2026-05-09\n  changed Two more screws\n").same).toBe(false);
  });

  test("the last day counts, or the one that is named; each building of a day by itself", () => {
    const two = `built 2027-05-09\n  measured rim = 31"\n${RECORD}built 2027-05-09 by others\n`;
    const all = built(two);
    expect(Array.isArray(all) && all.map((c) => [c.built[0]!.by, c.same])).toEqual([
      ["", false],
      ["others", true],
    ]);
    expect(one(two, "2026-05-09").built[0]!.by).toBe("Ms Okoro's group");
  });

  test("of two values for one thing the first counts, as the problem says", () => {
    const twice = 'built 2026-05-09\n  measured rim = 29"\n  measured rim = 31"\n';
    expect(one(twice).built[0]!.measured.map((m) => m.built.text)).toEqual(['29"']);
    expect(evaluate(FILE, PLAN + twice, read).problems.map(({ code }) => code)).toEqual(["said-twice"]);
    expect(one(twice).pieces.map(({ new: now }) => now?.length?.text)).toEqual(['28"']);
  });

  test("why it cannot be told is said in words", () => {
    expect(built("")).toBe("it does not say that it was built; a line like “built 2026-05-09” does");
    expect(built(RECORD, "2026-05-10")).toBe(
      "it does not say that it was built on 2026-05-10, but on 2026-05-09",
    );
    expect(built('built 2026-05-09\n  measured rin = 29"\n')).toBe(
      "no measure is called “rin”; there are rim",
    );
    expect(built("built 2026-05-09\n  used pine instead of 1x4\n")).toBe("nothing is made of “1x4”");
    expect(built('built 2026-05-09\n  measured width of leg = 3"\n')).toContain("width of leg");
  });

  test("in all formats and in French, the record stands first", () => {
    const text = PLAN + RECORD;
    const made = asBuilt(FILE, text, read, undefined);
    if ("refused" in made) throw new Error(made.refused);
    const [building] = made;
    const comparing = (language: "en" | "fr") =>
      compare(
        evaluate(FILE, text, read),
        evaluate(FILE, building!.text, building!.read),
        {},
        language,
        building!.building,
      );
    const english = writeComparisons([comparing("en")], "text");
    expect(english.slice(0, english.indexOf("\nPieces"))).toMatchInlineSnapshot(`
      "What changed: Stand
      ===================
      from stand.sawbuck to stand.sawbuck


      As built
      --------
      Built on 2026-05-09 by Ms Okoro's group
        rim                       planned 30", built 27-1/2" because the wall leans
        length of rail            planned 20", built 19"
        Board                     pine instead of 2x4
        Changed                   Two more screws in each corner
        Wear found on 2027-04-01  One leg is soft


      The plan
      --------
        Weight  13.3 lb (6 kg) of dry wood → 10.7 lb (4.9 kg) of dry wood

      "
    `);
    expect(writeComparisons([comparing("fr")], "markdown", "fr")).toContain("## Tel que construit");
    expect(writeComparisons([comparing("en")], "html")).toContain("Built on 2026-05-09 by Ms Okoro");
    expect(JSON.parse(writeComparisons([comparing("en")], "json")).plans[0].built[0].wear).toEqual([
      { date: "2027-04-01", words: "One leg is soft" },
    ]);
  });
});

describe("the record", () => {
  test("stands on the sheet in the order of the days, beside what is planned", () => {
    const sheet = sheetOf(evaluate(FILE, `${PLAN}built 2027-05-09\n${RECORD}`, read));
    expect(sheet.built.map(({ date }) => date)).toEqual(["2026-05-09", "2027-05-09"]);
    expect(sheet.built[0]!.measured).toEqual([
      {
        what: "rim",
        planned: { value: 762, unit: "mm", text: '30"' },
        built: { value: 698.5, unit: "mm", text: '27-1/2"' },
        because: "the wall leans",
      },
      {
        what: "length of rail",
        planned: { value: 508, unit: "mm", text: '20"' },
        built: { value: 482.6, unit: "mm", text: '19"' },
        because: "",
      },
    ]);
  });

  test("is told of the plan's own file alone", () => {
    const files = memory({
      ...FILES,
      "other.sawbuck": `measure tall = 9"\nbuilt 2020-01-01\n  measured tall = 8"\n`,
    });
    const e = evaluate(FILE, `${PLAN}bring other.sawbuck\n`, files);
    expect(sheetOf(e).built).toEqual([]);
  });

  test("stays in a bundle, and is not changed where a board is adapted", () => {
    const made = bundled(FILE, PLAN + RECORD, read);
    expect("text" in made && made.text).toContain(RECORD);
    // What encloses the shop file tells the same of how it was built.
    const whole = "text" in made ? made.text : "";
    const alone = asBuilt(FILE, whole, read, undefined);
    if ("refused" in alone) throw new Error(alone.refused);
    const [opened] = alone;
    const { changes } = compare(
      evaluate(FILE, whole, read),
      evaluate(FILE, opened!.text, opened!.read),
      {},
      "en",
      opened!.building,
    );
    expect(changes.pieces).toEqual(one(RECORD).pieces);
    const adapted = adapt(FILE, PLAN + RECORD, read, [{ kind: "swap", old: "2x4", new: "2x6" }]);
    expect("text" in adapted && adapted.text).toContain("part rail 2 of 2x6");
    expect("text" in adapted && adapted.text).toContain(RECORD);
  });

  test("a mistake in it is told like any other", () => {
    const codes = (record: string) =>
      evaluate(FILE, PLAN + record, read).problems.map((p) => `${p.code} ${p.says}`);
    expect(codes('built 2026-05-09\n  measured rin = 29"\n')).toEqual(["unknown-name near"]);
    expect(codes('built 2026-05-09\n  measured leg = 29"\n')).toEqual(["unknown-name wrong-kind"]);
    expect(codes("built 2026-05-09\n  measured rim = 40 lb\n")).toEqual(["unit-mismatch wanted"]);
    expect(codes("built 2026-05-09\n  measured rim = 29\n")).toEqual(["unit-mismatch bare"]);
    expect(codes("built 2026-05-09\n  used oak instead of 2x4\n")).toEqual(["unknown-name unknown"]);
    expect(codes("built 2026-05-09\n  used 2x99 instead of 2x4\n")).toEqual(["unknown-section unknown"]);
    expect(codes("built 2026-02-30\n")).toEqual(["bad-date no-day"]);
  });

  test("a mistake in it keeps nothing else from being told", () => {
    const idle = "accept over-budget because the class paid the rest\n";
    const told = (record: string) => evaluate(FILE, PLAN + idle + record, read).problems.map((p) => p.code);
    expect(told("")).toEqual(["cannot-accept"]);
    expect(told('built 2026-05-09\n  measured rin = 29"\n')).toEqual(["cannot-accept", "unknown-name"]);
  });
});
