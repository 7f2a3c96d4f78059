/** What the sheet tells of loads, roots and gaps through the year: the numbers by hand, the words, and who reads them. */
import { describe, expect, it } from "vitest";
import { evaluate, type SheetOptions, sheetDocument, sheetOf, writeSheet } from "../../server/service";
import type { SheetData, SheetHeld } from "../../server/sheet/data";
import { plainWords } from "../../server/sheet/document";
import { structuralCaution } from "../../server/trade";
import { tablesIn } from "./document-words";
import { PLANS } from "./samples";

const nothing = (file: string) => ({ file, refused: "no" });
const sheet = (text: string, language: "en" | "fr" = "en"): SheetData =>
  sheetOf(evaluate("plan.sawbuck", text, nothing), undefined, language);

const of = (kind: SheetHeld["kind"], data: SheetData, what = ""): SheetHeld =>
  data.holds.find((row) => row.kind === kind && row.what.startsWith(what))!;

const KG = 0.45359237;

const SHELF = `plan Shelf
  indoors
part stand of 2x4, length 30"
part shelf of 2x6, length 39"
place stand upright, wide face left, on floor, 0 from left, 1" from front
place stand upright, wide face left, on floor, 37-1/2" from left, 1" from front
place shelf across, flat, on stands, flush with left of left stand, 0 from front
load shelf 120 lb spread
`;

describe("a shelf of 2x6 over 37-1/2 in, 120 lb spread on it", () => {
  const row = of("board", sheet(SHELF));
  // 39 x 5-1/2 x 1-1/2 in of spruce-pine-fir weighs 5.2 lb: 3.21 lb on each inch of its 39.
  const each = (120 + 5.2) / 39;

  it("carries its load and itself", () => {
    expect(row.load!.value / KG).toBeCloseTo(125, 0);
    expect(row.load!.text).toMatch(/^125 lb, bends 1\/16"$/);
  });

  it("bends more of what it may than it uses of its strength", () => {
    // 5 w L^4 / 384 E I, half as much again in the long run (NDS 3.5.2), of a span divided by 240 (IRC R301.7).
    const inertia = (5.5 * 1.5 ** 3) / 12;
    const sag = (5 * each * 37.5 ** 4) / (384 * 1_400_000 * inertia);
    const uses = (1.5 * sag) / (37.5 / 240);
    expect(row.uses! / uses).toBeCloseTo(1, 1);
    // w L^2 / 8 over 5-1/2 x 1-1/2^2 / 6, of 875 x 1.3 x 1.15 x 0.9 psi (NDS Supplement, Table 4A).
    const strength = (each * 37.5 ** 2) / 8 / ((5.5 * 1.5 ** 2) / 6) / (875 * 1.3 * 1.15 * 0.9);
    expect(uses).toBeGreaterThan(strength);
    expect(row.state).toBe("within");
    // All of it grown alike until it bends as far as it may.
    expect(row.limit!.value / row.load!.value).toBeCloseTo(1 / row.uses!, 3);
    expect(row.limit!.text).toMatch(/ lb, a bend of 3\/16"$/);
  });

  it("is too weak where its board is thin, told as the problem tells it", () => {
    const data = sheet(SHELF.replace("2x6", "1x6").replace("120 lb", "220 lb"));
    expect(of("board", data)).toMatchObject({ state: "too weak" });
    expect(of("board", data).uses).toBeGreaterThan(1);
    expect(data.problems.map(({ code }) => code)).toContain("too-weak");
  });

  it("bends too far where it is strong enough, just as the problem has it", () => {
    const data = sheet(SHELF.replace("2x6", "1x6").replace("120 lb", "60 lb"));
    expect(of("board", data)).toMatchObject({ state: "bends too far" });
    expect(data.problems.map(({ code }) => code)).toContain("slat-sags");
  });

  it("says nothing of limits that were not typed, and compares those that were", () => {
    expect(of("foot", sheet(SHELF))).toMatchObject({ limit: null, uses: null, state: "no limit typed" });
    const limited = (lb: number) =>
      of("foot", sheet(SHELF.replace("indoors", `foot limit ${lb} lb by the builder\n  indoors`)));
    // Half of 125 lb and a stand of 30" x 3-1/2" x 1-1/2", 2.6 lb.
    expect(limited(130).load!.value / KG).toBeCloseTo(125.2 / 2 + 2.6, 0);
    expect(limited(130).uses).toBeCloseTo(65.2 / 130, 2);
    expect(limited(130).state).toBe("within");
    expect(limited(60).state).toBe("over the limit");
  });
});

const RAIL = `plan Rail between posts
  indoors
part post of 2x4, length 40"
part rail of 2x6, length 36"
place post upright, wide face front, on floor, at each corner of 36" x 6"
place rail across, on edge, in front of posts, flush with left of posts, flush with top of posts
fasten rail into post, 2 #8 x 2-1/2" at each crossing, pilot 1/8"
load rail 200 lb spread
`;

describe("a rail that hangs on screws", () => {
  const row = of("joint", sheet(RAIL));

  it("asks each end for half of it, and two screws hold 0.9 of their reference value", () => {
    // 36" of 2x6 weighs 4.8 lb. 48 lb is what the yield equations give for #8 through 1-1/2", 1" into gravity 0.42.
    expect(row.load!.value / KG).toBeCloseTo(204.8 / 2, 0);
    expect(row.limit!.value / KG / (2 * 48 * 0.9)).toBeCloseTo(1, 1);
    expect(row.uses).toBeCloseTo(row.load!.value / row.limit!.value, 3);
    expect(row.what).toBe("rail into post: 2 screws, loaded across");
    expect(row.state).toBe("overloaded");
  });

  it("names bolts and nails as such", () => {
    const by = (fastener: string, line: string): string =>
      of("joint", sheet(RAIL.replace('2 #8 x 2-1/2"', `1 ${fastener}`).concat(line))).what;
    expect(by("long-bolt", 'fastener long-bolt, 3/8" x 4" bolt\n')).toBe(
      "rail into post: 1 bolt, loaded across",
    );
    expect(by("long-nail", 'fastener long-nail, nail 0.131" x 3"\n')).toBe(
      "rail into post: 1 nail, loaded across",
    );
  });

  it("claims nothing for screws that go in too little", () => {
    const data = sheet(RAIL.replace("2-1/2", "2"));
    expect(of("joint", data)).toMatchObject({
      state: "claims nothing",
      limit: { value: 0, text: "nothing" },
      uses: null,
    });
  });
});

const STAND = `plan Book stand
  indoors
part side of 1x12, length 40"
part top of 1x12, length 30"
place side upright, wide face left, on floor, 0 from left, 0 from front
place side upright, wide face left, on floor, 30-3/4" from left, 0 from front
place top across, flat, 36" up, right of left side, 0 from front
fasten side into top, 3 #8 x 2" at each crossing
`;

describe("a stand that is pushed", () => {
  it("uses 0.7 x 40 / 5.6 of what tips it: it slides with 0.7 of its weight, and tips with weight x 5.6 / 40", () => {
    const row = of("tipping", sheet(`${STAND}load top 20 lb spread\n`), "tipping, by a push");
    expect(row.uses).toBeCloseTo((0.7 * 40) / (11.25 / 2), 2);
    expect(row.state).toBe("tips over");
    expect(row.load!.value / row.limit!.value).toBeCloseTo(row.uses!, 3);
  });

  it("is not told of a plan in which nothing is carried", () => {
    expect(sheet(STAND)).toMatchObject({ holds: [], taken: [], holdsCaution: "" });
  });
});

describe("what was taken for granted", () => {
  const texts = (data: SheetData): string => data.taken.map(({ text }) => text).join(" ");

  it("is told once each, where it applies", () => {
    expect(texts(sheet(SHELF))).toContain("grade No. 2");
    expect(texts(sheet(SHELF))).not.toMatch(/Somebody|blocked drain|wet/);
    const seat = sheet(
      SHELF.replace("indoors", "outdoors")
        .replace('length 30"', 'length 16"')
        .replace(/load.*\n/, ""),
    );
    expect(texts(seat)).toContain('Somebody of 300 lb sits or stands on any flat top 12" to 24" high');
    expect(texts(seat)).toContain("is taken as wet");
    for (const { source } of seat.taken) expect(source).not.toBe("");
  });

  it("has the caution beside it", () => {
    expect(sheet(SHELF).holdsCaution).toBe(structuralCaution.value.text);
  });
});

const BED = `plan Bed
  outdoors
part post of 4x4, length 11"
part side of 2x6, length 41"
part end of 2x6, length 18"
place post upright, wide face front, on floor, 0 from left, 0 from front
place post upright, wide face front, on floor, 37-1/2" from left, 0 from front
place post upright, wide face front, on floor, 0 from left, 14-1/2" from front
place post upright, wide face front, on floor, 37-1/2" from left, 14-1/2" from front
place side across, on edge, in front of posts, flush with left of posts, on floor, 2 high, tight
place side across, on edge, behind posts, flush with left of posts, on floor, 2 high, tight
place end front to back, on edge, left of posts, flush with front of posts, on floor, 2 high, tight
place end front to back, on edge, right of posts, flush with front of posts, on floor, 2 high, tight
fasten side and end into post, 2 #10 x 3" at each crossing
box bed, walls side and end
  filled with soil 7" deep
  drains by 4 holes of 1/2"
  grows carrot and fern
`;

describe("the root room", () => {
  const { roots } = sheet(BED);

  it("tells how deep the fill is, and keeps open ground apart", () => {
    expect(roots.map(({ crop, box }) => [crop, box])).toEqual([
      ["carrot", "bed"],
      ["fern", "bed"],
    ]);
    expect(roots[0]!.here).toContain('7" deep');
    expect(roots[0]!.wants).toMatch(/deep/);
    expect(roots[0]!.state).toBe("less deep");
    expect(roots[1]).toMatchObject({ wants: "", source: "", state: "in no table" });
  });
});

describe("gaps through the year", () => {
  const DECK = `plan Deck board
  outdoors
stock 1x6, species western-redcedar
part slat of 1x6, length 40"
place slat across, flat, on floor, 0 from left, 0 from front, 4 deep, 1/4" apart
`;

  it("a cedar slat of 5-1/2 in swells about 7/64 in outdoors, from each side a half (Wood Handbook, Table 4-3)", () => {
    const [gap, ...others] = sheet(DECK).gaps;
    expect(others).toEqual([]);
    expect(gap!.built).toEqual({ mm: 6.35, text: '1/4"', other: "6 mm" });
    // 5.0% of its green width from 22% to dry, in proportion; 20.5% is what air of 90% humidity makes, 12% as built.
    const swells = (0.05 * (20.5 - 12)) / 22 / (1 - (0.05 * (22 - 12)) / 22);
    expect((gap!.built.mm - gap!.wettest.mm) / (5.5 * 25.4)).toBeCloseTo(swells, 6);
    expect(gap!.driest.mm).toBeGreaterThanOrEqual(gap!.built.mm);
    expect(gap!.row).toBe("4 of slat");
    expect(gap!.where).toBe("outdoors");
  });

  it("are told of rows that have any", () => {
    expect(sheet(DECK.replace('1/4" apart', "tight")).gaps).toEqual([]);
  });
});

describe("the section", () => {
  const plan = PLANS.find(({ name }) => name === "salad-trough")!;
  const names = (reader: NonNullable<SheetOptions["reader"]>): string[] =>
    sheetDocument(plan.sheet(), { reader }).sections.map(({ name }) => name);

  it("stands on every reader's sheet, without gaps and roots for learners, who find lengths themselves", () => {
    for (const reader of ["builder", "stations"] as const)
      expect(names(reader)).toEqual(expect.arrayContaining(["holding", "roots", "gaps"]));
    expect(names("learners")).toContain("holding");
    expect(names("learners")).not.toContain("gaps");
    expect(names("learners")).not.toContain("roots");
  });

  it("tells what uses a tenth and more in a table, and names the rest on one line", () => {
    const data = plan.sheet();
    const document = sheetDocument(data);
    const table = tablesIn(document).find(({ name }) => name === "holds")!;
    const rows = table.groups.flatMap((group) => group.rows);
    const small = data.holds.filter(({ uses }) => uses !== null && uses < 0.1);
    expect(small.length).toBeGreaterThan(0);
    expect(rows.length).toBe(data.holds.length - small.length);
    const section = document.sections.find(({ name }) => name === "holding")!;
    const line = section.blocks.find((block) => block.kind === "paragraph" && block.style === "plain");
    const words = line?.kind === "paragraph" ? plainWords(line.words) : "";
    for (const { what } of small) expect(words).toContain(what);
  });

  it("says percent and never approval", () => {
    const text = writeSheet(sheet(SHELF), "text");
    expect(text).toContain("What it has to carry");
    expect(text).toMatch(/\d\d%\s+within/);
    expect(text.slice(text.indexOf("What it has to carry"))).not.toMatch(/\bOK\b|\bsafe\b|\bpass/i);
  });

  it("is French on a French sheet", () => {
    const text = writeSheet(sheet(SHELF, "fr"), "text", { language: "fr" });
    expect(text).toContain("Ce que cela doit porter");
    expect(text).toMatch(/\d\d\u00a0%\s+dans la limite/);
  });

  it("counts in times where percent would be long", () => {
    const text = writeSheet(sheet(SHELF.replace("120 lb", "60000 lb")), "text");
    expect(text).toMatch(/\d+ times/);
  });
});
