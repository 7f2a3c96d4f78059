// Plans in git and from others: compared with the last commit, with a merge that is not settled, with all they bring in one file.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openEditor, sheetOf } from "../editor.mjs";
import { PLAN } from "../plan.mjs";
import { take } from "./fixes.mjs";

const CLI = fileURLToPath(new URL("../../../dist/cli.js", import.meta.url));
const MERGED = "merged.sawbuck";
const BUNDLE = "bundle.sawbuck";
const RIM = 'measure rim-height = 30", at least 24", at most 32"\n';

/** The folder as a repository, all of it committed. */
function commit(folder) {
  const git = (...args) => {
    const { status, stderr } = spawnSync(
      "git",
      ["-c", "user.name=Yard", "-c", "user.email=yard@school.example", ...args],
      {
        cwd: folder,
        encoding: "utf8",
      },
    );
    assert.equal(status, 0, stderr);
  };
  git("init", "-q");
  git("add", "-A");
  git("commit", "-q", "-m", "Plans of the yard");
}

export const scenarios = [
  {
    name: "shared: what changed since the last commit is shown beside the plan, follows it, and is nothing after a commit",
    prepare: commit,
    run: async ({ page, folder, shot }) => {
      const { measure } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.command("Sawbuck: Compare With Last Commit");
      const sheet = sheetOf(page);
      await sheet
        .locator("h1")
        .filter({ hasText: `What changed: ${PLAN.title}` })
        .waitFor();
      await sheet.locator("section.same").waitFor();
      await editor.replace(measure);
      await sheet.locator("section.pieces li").filter({ hasText: '29-1/4" → 27-1/4"' }).first().waitFor();
      await sheet.locator('section.drawings [fill="#ffe48a"]').first().waitFor({ state: "attached" });
      await shot("compare");
      await page.keyboard.press("Control+s");
      await page.locator(".tab.dirty").first().waitFor({ state: "detached" });
      commit(folder);
      await sheet.locator("h1").click();
      await sheet.locator("section.same").waitFor();
    },
  },
  {
    name: "shared: a measuring-up slip tells what comes of what is measured, and writes it into the plan on request alone",
    run: async ({ page, folder, shot }) => {
      const { measure } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.command("Sawbuck: Open Measuring-Up Slip");
      const sheet = sheetOf(page);
      const input = (what) => sheet.locator(`tr[data-what="${what}"] input`);
      const outcome = (text) => sheet.locator("section.outcome dd").filter({ hasText: text }).first();
      await sheet
        .locator("h1")
        .filter({ hasText: `Measuring up: ${PLAN.title}` })
        .waitFor();
      await sheet.locator("section.drawings text.dimension").filter({ hasText: "6 ____" }).waitFor();
      assert.ok(await sheet.locator("#write").isDisabled());
      await input("rim-height").fill("twenty");
      await sheet.locator(".wrong").filter({ hasText: "“twenty” is no measure" }).waitFor();
      await input("rim-height").fill("22");
      await sheet
        .locator("section.problems li")
        .filter({ hasText: "measure-out-of-bounds" })
        .first()
        .waitFor();
      await shot("slip-wrong");
      await input("rim-height").fill("28");
      await sheet.locator("section.pieces li").filter({ hasText: '29-1/4" → 27-1/4"' }).first().waitFor();
      await sheet.locator("section.drawings text.dimension").filter({ hasText: '6 28"' }).waitFor();
      await sheet.locator("section.problems").waitFor({ state: "detached" });
      await outcome("$").waitFor();
      await shot("slip");
      assert.equal(await page.locator(".tab.dirty").count(), 0);
      await sheet.locator("#write").click();
      await editor.shows(measure.line.replace(measure.find, measure.type));
      await sheet.locator('tr[data-what="rim-height"] .now').filter({ hasText: '28"' }).waitFor();
      assert.equal(await input("rim-height").inputValue(), "");
      await page.getByRole("tab", { name: PLAN.file }).first().click();
      await page.keyboard.press("Control+z");
      await editor.shows(measure.line);
      await sheet.locator('tr[data-what="rim-height"] .now').filter({ hasText: '30"' }).waitFor();
    },
  },
  {
    name: "shared: a plan with an unsettled merge opens, is read with the first version, and is settled with Ctrl+.",
    prepare: (folder) => {
      const text = readFileSync(join(folder, PLAN.file), "utf8");
      assert.ok(text.includes(RIM));
      const both = `<<<<<<< HEAD\n${RIM}=======\n${RIM.replace("30", "28")}>>>>>>> lower\n`;
      writeFileSync(join(folder, MERGED), text.replace(RIM, both));
    },
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, MERGED);
      await editor.openProblems();
      await editor.problem("merge-conflict").waitFor();
      await page.locator(".monaco-editor .view-lines").first().click();
      await editor.command("Sawbuck: Open Shop Sheet");
      await sheetOf(page).locator("td.length").filter({ hasText: '29-1/4"' }).first().waitFor();
      await shot("merge");
      await page.getByRole("tab", { name: MERGED }).first().click();
      await editor.placeCursor("<<<<<<<", "HEAD");
      await take(page, "Keep the first version");
      await editor.problem("merge-conflict").waitFor({ state: "detached" });
      await shot("merge-settled");
    },
  },
  {
    name: "shared: a bundle opens like any plan, and what it encloses is found in it",
    prepare: (folder) => {
      const { status, stderr } = spawnSync(process.execPath, [CLI, "bundle", PLAN.file, "--out", BUNDLE], {
        cwd: folder,
        encoding: "utf8",
      });
      assert.equal(status, 0, stderr);
    },
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, BUNDLE);
      await editor.noProblems();
      await editor.placeCursor(PLAN.part.line, "heart-2x4");
      await editor.repeat(() => page.keyboard.press("F12"), editor.shows("stock heart-2x4"));
      await shot("bundle");
    },
  },
];
