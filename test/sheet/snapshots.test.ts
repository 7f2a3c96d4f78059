/** The whole sheet as a reader gets it, in each of its forms, held word for word. */
import { describe, expect, it } from "vitest";
import { sheetDocument } from "../../server/service";
import { boardScale, drawBoard } from "../../server/sheet/board-drawing";
import type { SheetData } from "../../server/sheet/data";
import { sheetBody, sheetPage } from "../../server/sheet/html";
import { sheetJson } from "../../server/sheet/json";
import { svgText } from "../../server/sheet/svg";
import { sheetText } from "../../server/sheet/text";
import { readStrictly } from "./strict-markup";
import { empty, trough } from "./trough";

describe("the trough's sheet", () => {
  it("as a page", async () => {
    await expect(lines(sheetPage(sheetDocument(trough)))).toMatchFileSnapshot("snapshots/trough.html.snap");
  });

  it("as plain text in 80 columns", async () => {
    await expect(sheetText(sheetDocument(trough))).toMatchFileSnapshot("snapshots/trough.txt.snap");
  });

  it("as plain text in 50 columns", async () => {
    await expect(sheetText(sheetDocument(trough), 50)).toMatchFileSnapshot("snapshots/trough-50.txt.snap");
  });

  it("as JSON", async () => {
    await expect(sheetJson(trough)).toMatchFileSnapshot("snapshots/trough.json.snap");
  });

  it("one board as SVG", async () => {
    const [first] = trough.boards[0]!.boards;
    const drawing = drawBoard(first!, { scale: boardScale([first!]), system: "inches" });
    await expect(lines(svgText(drawing))).toMatchFileSnapshot("snapshots/board.svg.snap");
  });
});

describe("a sheet with nothing on it", () => {
  it("says what was found and what was looked at, and nothing more", () => {
    expect(sheetText(sheetDocument(empty))).toMatchInlineSnapshot(`
      "Nothing yet
      ===========
      salad-trough.sawbuck, inches to 1/16"


      Open problems
      -------------
      No problem that Sawbuck can name was found.


      Not looked at
      -------------
      Nothing is listed. Sawbuck looks only for the mistakes it can name; the rest is
      for your own eyes.
      "
    `);
    expect(readStrictly(sheetBody(sheetDocument(empty))).texts).toMatchInlineSnapshot(`
      [
        "Nothing yet",
        "salad-trough.sawbuck, inches to 1/16"",
        "Open problems",
        "No problem that Sawbuck can name was found.",
        "Not looked at",
        "Nothing is listed. Sawbuck looks only for the mistakes it can name; the rest is for your own eyes.",
      ]
    `);
  });

  it("says where the rest stands when something was accepted or not looked at", () => {
    const said = (data: SheetData) => sheetText(sheetDocument(data)).split("\n").slice(7, 9).join(" ");
    expect(said({ ...empty, notChecked: trough.notChecked })).toMatchInlineSnapshot(
      `"No problem that Sawbuck can name was found. What it did not look at stands below."`,
    );
    expect(said({ ...empty, accepted: trough.accepted })).toMatchInlineSnapshot(
      `"No open problem that Sawbuck can name was found. What was accepted stands below. "`,
    );
    expect(said({ ...trough, facts: [], problems: [] })).toMatchInlineSnapshot(
      `"Over all: 50" wide, 20" deep, 30" high.   A  leg, 4 pieces"`,
    );
  });
});

describe("what the sheet says of its own", () => {
  it("approves of nothing", () => {
    for (const data of [empty, trough])
      for (const text of [
        sheetText(sheetDocument(data)),
        readStrictly(sheetBody(sheetDocument(data))).texts.join(" "),
      ])
        expect(text).not.toMatch(/\b(ok|okay|safe|safely|pass|passes|passed|approved|fine|correct)\b/i);
  });

  it("keeps the order of its sections, and leaves out those without content", () => {
    const headings = (data: SheetData) =>
      [...sheetBody(sheetDocument(data)).matchAll(/<h2>([^<]*)<\/h2>/g)].map(([, heading]) => heading);
    expect(headings(trough)).toMatchInlineSnapshot(`
      [
        "About this plan",
        "Drawing",
        "Open problems",
        "Accepted, and why",
        "Not looked at",
        "Before you start",
        "Tools",
        "Bits and holes",
        "Buying trip",
        "Measure at the yard",
        "Cut list",
        "Board layouts",
        "Sheet layouts",
        "Offcuts to keep",
        "Liner and fabric",
        "Finish",
        "Where the screws go",
        "Before you screw it tight",
        "Rings",
        "Boxes",
        "Rules of this plan",
        "What it has to carry",
        "The root room",
        "Gaps through the year",
        "When to stop",
        "Order of work",
        "Notes",
        "As built",
        "After it is built",
      ]
    `);
    expect(headings(empty)).toEqual(["Open problems", "Not looked at"]);
    const inText = sheetText(sheetDocument(trough)).match(/^.+(?=\n-+$)/gm);
    expect(inText).toEqual(headings(trough));
  });
});

/** One element to a line, for a snapshot that can be read. */
function lines(markup: string): string {
  return markup.replace(/></g, ">\n<");
}
