/** Columns of a PDF find their room: of tables, and of terms side by side. */
import { describe, expect, it } from "vitest";
import type { Column } from "../../server/sheet/document";
import { linesOn, MM, pdf, sheet, table } from "./pdf-pages";
import { type Said, textsOf } from "./read-pdf";

describe("columns", () => {
  it("puts a wide column under its row where there is no room, and says what it is", async () => {
    const columns = ["one", "two", "three", "four"].map(
      (name): Column => ({ name, head: `Head ${name}`, fit: "text" }),
    );
    const cells = ["a", "b", "c", "d"].map((c) => ({ words: c.repeat(20) }));
    const block = table(
      "crowded",
      [...columns, { name: "note", head: "Note", fit: "wide" }],
      [[...cells, { words: "said under the row at some length" }]],
    );
    const page = (await textsOf(await pdf(sheet([block])))).flat();
    const y = (words: string) => page.find(({ text }) => text.includes(words))!.y;
    expect(y("Head one")).toBe(y("Head four"));
    expect(y("aaaa")).toBe(y("dddd"));
    expect(y("said under")).toBeLessThan(y("dddd"));
    expect(linesOn(page)).toContain("Note: said under the row at some length");
  });

  it("gives room to the words that would take more lines without it", async () => {
    const words = ['from each end: 1-1/2" and 6-3/4"', 'from either edge: 1-3/8" and 4-1/8"'];
    const said = (...cells: string[]) => cells.map((words) => ({ words }));
    const block = table(
      "set-outs",
      [
        { name: "piece", head: "Piece", fit: "text" },
        { name: "per", head: "Screws", fit: "text" },
        { name: "along", head: "Along it", fit: "wide" },
        { name: "across", head: "Across it", fit: "wide" },
      ],
      [
        said("side", "8 each", `from the left end: ${'12-3/16", '.repeat(16)}`, "x"),
        ...[1, 2, 3].map((n) => said(`end-floor, by the left leg ${n}`, "3", ...words)),
      ],
    );
    const page = (await textsOf(await pdf(sheet([block])))).flat();
    const lines = linesOn(page).filter((line) => line.includes("end-floor"));
    expect(lines).toEqual([1, 2, 3].map((n) => `end-floor, by the left leg ${n} 3 ${words.join(" ")}`));
  });

  it("parts terms in two columns about as long as each other", async () => {
    const rows = Array.from({ length: 7 }, (_, i) => ({
      label: `label ${i}`,
      words: i === 0 ? "many words ".repeat(16).trim() : "few",
    }));
    const page = (await textsOf(await pdf(sheet([{ kind: "terms", columns: 2, rows }])))).flat();
    const labels = page.filter(({ text }) => text.startsWith("label"));
    const left = Math.min(...labels.map(({ x }) => x));
    const split = Math.max(...labels.map(({ x }) => x));
    const foot = (of: readonly Said[]) => Math.min(...of.map(({ y }) => y));
    const [first, second] = [page.filter(({ x }) => x < split), page.filter(({ x }) => x >= split)];
    expect(labels.filter(({ x }) => x === left).length).toBeLessThan(4);
    expect(Math.abs(foot(first.filter(({ x }) => x >= left)) - foot(second))).toBeLessThan(6 * MM);
  });

  it("wraps many boxes in a cell", async () => {
    const ticks = Array.from({ length: 30 }, (_, i) => ({ id: `${i}`, what: `leg / ${i}`, done: "cut" }));
    const block = table(
      "ticks",
      [
        { name: "tick", head: "Cut", fit: "tick" },
        { name: "part", head: "Part", fit: "text" },
      ],
      [
        [{ ticks }, { words: "leg" }],
        [{ ticks: [] }, { words: "below" }],
      ],
    );
    const page = (await textsOf(await pdf(sheet([block])))).flat();
    const [leg, below] = ["leg", "below"].map((words) => page.find(({ text }) => text === words)!.y);
    expect(leg! - below!).toBeGreaterThan(3 * 5 * MM);
  });
});
