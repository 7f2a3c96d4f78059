/** The plan files below a folder of a disk. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { plansBelow } from "../../server/lsp/disk";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-walk-"));
  for (const name of ["deep/er", ".git", "node_modules"]) mkdirSync(join(folder, name), { recursive: true });
  for (const name of ["b", "a", "deep/er/c", ".git/d", "node_modules/e"])
    writeFileSync(join(folder, `${name}.sawbuck`), "");
  writeFileSync(join(folder, "notes.txt"), "");
  symlinkSync(join(folder, "a.sawbuck"), join(folder, "linked.sawbuck"));
});
afterEach(() => rmSync(folder, { recursive: true }));

test("in the order of their names, without hidden folders, node_modules and links", async () => {
  const found = await plansBelow(folder, { isCancellationRequested: false });
  expect(found).toEqual(["a", "b", "deep/er/c"].map((name) => join(folder, `${name}.sawbuck`)));
});

test("those found by the time nobody waits for them; none of a folder that is not there", async () => {
  let looks = 0;
  const waiting = {
    get isCancellationRequested() {
      return ++looks > 1;
    },
  };
  expect(await plansBelow(folder, waiting)).toEqual(
    ["a", "b"].map((name) => join(folder, `${name}.sawbuck`)),
  );
  expect(await plansBelow(join(folder, "gone"), { isCancellationRequested: false })).toEqual([]);
});
