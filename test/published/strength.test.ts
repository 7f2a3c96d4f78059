/** Strength against what is printed outside the project; the list is written to test/published/output/strength.txt. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import type { PublishedExample } from "./strength-example";
import { EXAMPLES as adjustments } from "./strength-examples/adjustments";
import { EXAMPLES as beams } from "./strength-examples/beams";
import { EXAMPLES as connections } from "./strength-examples/connections";
import { EXAMPLES as continuous } from "./strength-examples/continuous";
import { EXAMPLES as ground } from "./strength-examples/ground";
import { EXAMPLES as sections } from "./strength-examples/sections";
import { EXAMPLES as spans } from "./strength-examples/spans";
import { EXAMPLES as wood } from "./strength-examples/wood";

const ALL: readonly PublishedExample[] = [
  ...beams,
  ...continuous,
  ...spans,
  ...sections,
  ...adjustments,
  ...connections,
  ...ground,
  ...wood,
];
const OUTPUT = join(__dirname, "output");

const cited = ({ document, edition, table, via }: PublishedExample["source"]): string =>
  [document, edition, table, via && `(${via})`].filter((part) => part !== undefined).join(", ");

describe.each([...new Set(ALL.map(({ topic }) => topic))])("%s", (topic) => {
  it.each(ALL.filter((one) => one.topic === topic))("$name", ({ printed, tolerance, work }) => {
    expect(Math.abs(work() - printed)).toBeLessThanOrEqual(tolerance);
  });
});

describe("the published examples", () => {
  it("are at least 25, formulas and rows of tables both among them, each with a name of its own", () => {
    expect(ALL.length).toBeGreaterThanOrEqual(25);
    for (const kind of ["formula", "table row"])
      expect(ALL.filter((one) => one.kind === kind).length, kind).toBeGreaterThan(5);
    expect(new Set(ALL.map(({ name }) => name)).size).toBe(ALL.length);
  });

  it("name their document and its edition or who reproduced it", () => {
    const bare = ALL.filter(({ source: { document, edition, via } }) => !document || !(edition || via));
    expect(bare.map(({ name }) => name)).toEqual([]);
  });

  it("take at most two rows from any one table of a document", () => {
    const rows = new Map<string, number>();
    for (const { kind, source } of ALL) {
      if (kind !== "table row") continue;
      const table = `${source.document}, ${source.table ?? ""}`;
      rows.set(table, (rows.get(table) ?? 0) + 1);
    }
    expect([...rows].filter(([, count]) => count > 2)).toEqual([]);
  });

  it("ask for something: a tolerance above 0 and at most a tenth of the number", () => {
    for (const { name, printed, tolerance } of ALL) {
      expect(tolerance, name).toBeGreaterThan(0);
      expect(tolerance, name).toBeLessThanOrEqual(Math.abs(printed) * 0.1);
    }
  });

  afterAll(() => {
    mkdirSync(OUTPUT, { recursive: true });
    const count = (kind: string): number => ALL.filter((one) => one.kind === kind).length;
    const lines = [
      `${ALL.length} numbers printed elsewhere: ${count("formula")} formulas and worked examples, ${count("table row")} rows of tables`,
    ];
    for (const topic of [...new Set(ALL.map((one) => one.topic))].sort())
      for (const kind of ["formula", "table row"]) {
        const here = ALL.filter((one) => one.topic === topic && one.kind === kind);
        if (here.length > 0) lines.push("", `${topic}, ${kind}: ${here.length}`);
        for (const { name, source, printed, unit, tolerance, work } of here)
          lines.push(
            `  ${name}: printed ${printed} ${unit}, worked out ${Number(work().toPrecision(6))} (within ${Number(tolerance.toPrecision(3))})`,
            `    ${cited(source)}`,
          );
      }
    writeFileSync(join(OUTPUT, "strength.txt"), `${lines.join("\n")}\n`);
  });
});
