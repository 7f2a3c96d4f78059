/**
 * Plans typed from scratch by a second builder from the language reference alone, as a test of whether placing is pleasant:
 * clean, and without a coordinate.
 */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import type { Entry } from "../grammar/tree";
import { judge } from "../server/checks";
import { load } from "../server/plan";
import { work } from "../server/worked";

const FOLDER = resolve(__dirname, "fixtures/second-builder");

const read = (name: string) => {
  const file = resolve(FOLDER, name);
  return work(
    load(file, readFileSync(file, "utf8"), (path, from) => {
      const other = resolve(dirname(from), path);
      return { file: other, text: readFileSync(other, "utf8") };
    }),
  );
};

/** Clauses that measure from the plan's own left, right, front, back or floor, but for what simply stands on the floor. */
const coordinates = (entries: readonly Entry[]): number =>
  entries.reduce((sum, e) => {
    const inner = e.kind === "assembly" ? coordinates(e.body) : 0;
    return sum + inner + e.clauses.filter((c) => c.kind === "from").length;
  }, 0);

describe.each(readdirSync(FOLDER).filter((n) => n.endsWith(".sawbuck")))("%s", (name) => {
  const worked = read(name);

  test("has no problem", () => {
    expect(judge(worked).problems.map((p) => p.code)).toEqual([]);
    expect(worked.pieces.complete).toBe(true);
    expect(worked.pieces.all.length).toBeGreaterThanOrEqual(15);
  });

  test("uses no coordinate", () => {
    expect(coordinates(worked.loaded.files[0]!.tree.entries)).toBe(0);
  });
});
