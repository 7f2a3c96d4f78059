/** `sawbuck bundle` as it is run: what it writes where, what it says, and what it ends with. */
import { existsSync, linkSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { runCli } from "../cli/run";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-bundle-"));
  mkdirSync(join(folder, "yard"));
  file("yard/p.sawbuck", 'plan P\n  written by us\nshop s.sawbuck\npart leg 4 of 2x4, length 9"\n');
  file("yard/s.sawbuck", "stock 2x4, sold 8' $4, on hand 1 of 8'\n");
});
afterAll(() => rmSync(folder, { recursive: true }));

const file = (name: string, text: string): void => writeFileSync(join(folder, name), text);
const run = (...words: string[]) => runCli(["bundle", ...words], { cwd: folder });
const BUNDLE =
  "plan P\n  written by us\nshop s.sawbuck\npart leg 4 of 2x4, length 9\"\nenclosed s.sawbuck\nstock 2x4, sold 8'\n";
const NOTE = "Note: the plan does not say what others may do with it: add “licence …” under its plan line.\n";

test("prints it, and says what is missing", () => {
  expect(run("yard/p.sawbuck")).toEqual({ status: 0, stdout: BUNDLE, stderr: NOTE });
});

test("writes it to a file, and over that again", () => {
  for (const _ of [1, 2])
    expect(run("yard/p.sawbuck", "--out", "b.sawbuck")).toEqual({
      status: 0,
      stdout: "",
      stderr: `The bundle is in b.sawbuck\n${NOTE}`,
    });
  expect(readFileSync(join(folder, "b.sawbuck"), "utf8")).toBe(BUNDLE);
  // It stands alone, and is itself when it is bundled.
  expect(run("b.sawbuck").stdout).toBe(BUNDLE);
  expect(run("b.sawbuck", "--out", "b.sawbuck").status).toBe(2);
});

test("never over what it reads, nor another plan, nor into what is no plan", () => {
  linkSync(join(folder, "yard/s.sawbuck"), join(folder, "other.sawbuck"));
  file("third.sawbuck", "plan T\n");
  const before = ["yard/p.sawbuck", "yard/s.sawbuck", "third.sawbuck"].map((name) =>
    readFileSync(join(folder, name), "utf8"),
  );
  const said = (out: string) => {
    const { status, stderr } = run("yard/p.sawbuck", "--out", out);
    return [status, stderr];
  };
  for (const out of ["yard/p.sawbuck", "yard/s.sawbuck", "yard/../yard/s.sawbuck", "other.sawbuck"])
    expect(said(out)).toEqual([2, `sawbuck: ${out} is the plan, or a file it reads; nothing was written.\n`]);
  expect(said("third.sawbuck")).toEqual([
    2,
    "sawbuck: third.sawbuck is there already, and is no bundle; nothing was written.\n",
  ]);
  expect(said("b.html")).toEqual([
    2,
    "sawbuck: b.html would hold a plan: give its name the ending .sawbuck.\n",
  ]);
  expect(said("gone/b.sawbuck")).toEqual([
    2,
    "sawbuck: gone/b.sawbuck cannot be written: there is no such folder\n",
  ]);
  const after = ["yard/p.sawbuck", "yard/s.sawbuck", "third.sawbuck"].map((name) =>
    readFileSync(join(folder, name), "utf8"),
  );
  expect(after).toEqual(before);
});

test.each([
  ["bring gone.sawbuck\n", "gone.sawbuck: there is no such file"],
  ["bring ../../secret.sawbuck\n", "../../secret.sawbuck: it lies outside the folder you work in"],
  [
    "shop /etc/passwd\n",
    "/etc/passwd: a path is written from the file it stands in, not from the root of a disk",
  ],
  ["stock 2x4, sodl 8' $4\n", "line 1 is not understood, and may hold a price"],
])("refuses %j", (text, why) => {
  file("yard/bad.sawbuck", text);
  expect(run("yard/bad.sawbuck", "--out", "none.sawbuck")).toEqual({
    status: 2,
    stdout: "",
    stderr: `sawbuck: yard/bad.sawbuck cannot be bundled: ${why}\n`,
  });
  expect(existsSync(join(folder, "none.sawbuck"))).toBe(false);
});

test("asked wrongly", () => {
  expect([run().status, run("a", "b").status, run("gone.sawbuck").status]).toEqual([2, 2, 2]);
});
