/** Sizes that do not lie on a plan's marks, the sides of a piece of a sheet, and what stands under one label. */
import { describe, expect, it } from "vitest";
import { evaluate, inUnits, sheetOf, writeSheet } from "../../server/service";
import type { SheetLanguage } from "../../server/sheet/words";

const PLAN = `plan Box
  units inches to 1/8"
stock 2x4
  sold 8' $4.40
sheet ply
  plywood 7/16"
  sold 48" x 96" $33.00
part leg 4 of 2x4, length 16"
part slat 3 of 2x4, length 40"
part deck 2 of ply, length 40", width 23-1/2"
fasten slat into leg, 2 #8 x 2-1/2" at each end, pilot 5/64", clearance 11/64"
fasten deck into slat, 2 #6 x 1-1/4" at each end, pilot 3/64"
step Put it together
  uses leg and slat and deck
`;
const read = evaluate("box.sawbuck", PLAN, (file) => ({ file, refused: "no" }));
const sheet = sheetOf(read);
const written = (format: "markdown" | "text", language: SheetLanguage = "en"): string =>
  writeSheet(sheetOf(read, undefined, language), format, { language });

describe("a hole", () => {
  it("is as wide as the plan says, between its marks too, wherever it is told", () => {
    expect(sheet.fasteners.map(({ holes }) => holes)).toEqual([
      'pilot 5/64", clearance 11/64"',
      'pilot 3/64"',
    ]);
    const joins = sheet.steps.flatMap((step) => step.joins.map(({ holes }) => holes));
    expect(joins).toEqual(sheet.joints.map(({ holes }) => holes));
    expect(sheet.joints.map(({ holes }) => holes)).toEqual(sheet.fasteners.map(({ holes }) => holes));
    const bored = sheet.bits.filter(({ kind, source }) => kind === "pilot" && source === "the plan");
    expect(bored.map(({ what }) => what)).toEqual(['5/64"', '3/64"']);
  });

  it("is the bit's in millimetres", () => {
    const metric = sheetOf(inUnits(read, "millimetres"));
    const bits = metric.bits.filter(({ kind }) => kind === "pilot").map(({ what }) => what);
    expect(metric.fasteners.map(({ holes }) => holes.replace(/^pilot |, clearance.*$/g, ""))).toEqual(bits);
  });
});

describe("a piece of a sheet", () => {
  it("has both its sides on the cut list, and the thickness that is sold", () => {
    const deck = sheet.cutList.find(({ stock }) => stock === "ply")!;
    expect(deck.title).toContain('7/16" thick');
    expect(deck.rows[0]).toMatchObject({ ripped: true, width: { text: '23-1/2"' } });
    expect(written("markdown")).toMatch(/\| deck \| \*\*40"\*\* .*\| \*\*23-1\/2"\*\* \(597 mm\) \|/);
  });

  it("has a thickness to the plan's mark where no rule has the other", () => {
    const metric = sheetOf(inUnits(read, "millimetres"));
    expect(metric.cutList.find(({ stock }) => stock === "ply")!.title).toContain("11 mm thick");
  });
});

describe("a step", () => {
  it("has what stands under one label as a list of its own in Markdown", () => {
    const markdown = written("markdown");
    expect(markdown).not.toContain("**:**");
    expect(markdown).toContain(
      "- **New:**\n  - **A** leg, 4 pieces\n  - **B** slat, 3 pieces\n  - **C** deck, 2 pieces\n- **Join:**\n  - slat into leg",
    );
  });

  it("has its box in plain text", () => {
    expect(written("text")).toContain("[ ] 1. Put it together.\n");
  });

  it("has the marks between its words as French sets them", () => {
    const french = written("text", "fr");
    expect(french).not.toMatch(/[^\s\u00a0\u202f][;:] /);
    expect(french).toMatch(/avant-trou 3\/64"/);
    expect(french).not.toMatch(/" avant-trou\b/);
  });
});
