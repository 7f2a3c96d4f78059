/** What a merge leaves in a plan: it opens, all that lies outside the conflict works, and it says so. The conflicts are real git's. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { conflictsIn, withFirstVersions } from "../grammar/conflicts";
import { applied, format } from "../grammar/format";
import { parse } from "../grammar/parser";
import { evaluate, sheetOf } from "../server/service";

const none = (path: string) => ({ file: path, refused: "there is no such file" });
const checked = (text: string) => evaluate("plan.sawbuck", text, none);

const BASE = `plan Bench
  language 1
  indoors
measure rim = 30"
part leg 4 of 2x4, length rim
part rail 2 of 2x4, length 40"
part slat 3 of 1x4, length 44"
`;

/** What git leaves after both changed the same lines. */
function merged(ours: string, theirs: string, style: "merge" | "diff3" = "merge"): string {
  const folder = mkdtempSync(join(tmpdir(), "sawbuck-merge-"));
  try {
    for (const [name, text] of Object.entries({ ours, base: BASE, theirs }))
      writeFileSync(join(folder, name), text);
    const args = [
      "merge-file",
      ...(style === "diff3" ? ["--diff3"] : []),
      "-L",
      "HEAD",
      "-L",
      "base",
      "-L",
      "wider",
    ];
    const { status, error } = spawnSync("git", [...args, "ours", "base", "theirs"], { cwd: folder });
    expect(error).toBeUndefined();
    expect(status).toBe(1);
    return readFileSync(join(folder, "ours"), "utf8");
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe("a plan with a conflict", () => {
  const ours = BASE.replace('length 40"', 'length 42"');
  const theirs = BASE.replace('length 40"', 'length 48"').replace("part slat 3", "part slat 4");

  test.each(["merge", "diff3"] as const)("is read with the first version (%s)", (style) => {
    const text = merged(ours, theirs, style);
    const conflicts = conflictsIn(text);
    expect(conflicts.length).toBeGreaterThan(0);
    const { problems, ...e } = checked(text);
    expect(problems.filter((p) => p.class === "error").map((p) => p.code)).toEqual(
      conflicts.map(() => "merge-conflict"),
    );
    const rows = sheetOf({ ...e, problems }).cutList.flatMap((group) => group.rows);
    expect(rows.map(({ part, count, length }) => [part, count, length?.text])).toEqual(
      sheetOf(checked(ours))
        .cutList.flatMap((group) => group.rows)
        .map(({ part, count, length }) => [part, count, length?.text]),
    );
  });

  test("points at the line that opens it, and offers to keep what is read", () => {
    const text = merged(ours, theirs);
    const [problem] = checked(text).problems.filter((p) => p.code === "merge-conflict");
    expect(text.slice(problem!.at.start, problem!.at.end)).toBe("<<<<<<< HEAD");
    expect(applied(text, problem!.cures[0]!.edits)).toBe(ours);
  });

  test("is not laid out until it is settled", () => {
    expect(format(parse(`plan  A\n${merged(ours, theirs)}`))).toEqual([]);
    expect(format(parse(`plan  A\n${ours}`))).not.toEqual([]);
  });

  test("in the middle of an entry, with Windows line ends, and several in one file", () => {
    const lines = (texts: readonly string[]): string => texts.join("\r\n");
    const text = lines([
      "part leg 4 of 2x4",
      "<<<<<<< HEAD",
      '  length 30"',
      "=======",
      '  length 32"',
      ">>>>>>> other",
      "  ends square",
      "<<<<<<< HEAD",
      "=======",
      'part rail 2 of 2x4, length 40"',
      ">>>>>>> other",
      "",
    ]);
    expect(conflictsIn(text).length).toBe(2);
    const { problems, ...e } = checked(text);
    expect(problems.map((p) => p.code)).toEqual(["merge-conflict", "merge-conflict"]);
    expect(sheetOf({ ...e, problems }).cutList[0]!.rows.map((row) => [row.part, row.length?.text])).toEqual([
      ["leg", '30"'],
    ]);
  });

  test("that is not closed, or is only talked about, is none", () => {
    for (const text of [
      `<<<<<<< HEAD\n${BASE}`,
      `<<<<<<< HEAD\n${BASE}>>>>>>> x\n`,
      `${BASE}note <<<<<<< is not a mark\nnote =======\nnote >>>>>>>\n`,
      `${BASE}=======\n>>>>>>> x\n`,
      `<<<<<<<<\n=======\n>>>>>>>\n`,
    ])
      expect(conflictsIn(text)).toEqual([]);
  });

  test("keeps every line and every place, whatever stands in it", () => {
    const line = fc.oneof(
      fc.constantFrom(
        "<<<<<<< a",
        "<<<<<<<",
        "||||||| b",
        "=======",
        ">>>>>>> c",
        ">>>>>>>",
        BASE.slice(0, 40),
        "",
      ),
      fc.string({ maxLength: 9 }),
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 20 }), fc.constantFrom("\n", "\r\n", "\r"), (lines, eol) => {
        const text = lines.join(eol);
        const conflicts = conflictsIn(text);
        const read = withFirstVersions(text, conflicts);
        expect(read.length).toBe(text.length);
        expect(read.replace(/[^\r\n]/g, "")).toBe(text.replace(/[^\r\n]/g, ""));
        for (const { start, end, first, mark } of conflicts) {
          expect([start, mark.end, first.start, first.end, end]).toEqual(
            [start, mark.end, first.start, first.end, end].sort((a, b) => a - b),
          );
          expect(read.slice(first.start, first.end)).toBe(text.slice(first.start, first.end));
          expect(read.slice(first.end, end).trim()).toBe("");
        }
        expect(conflictsIn(read).length === 0 || conflicts.length === 0).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});
