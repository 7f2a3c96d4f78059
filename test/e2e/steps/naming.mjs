// Other names: for what a plan declares, over all its files, and for the files themselves.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { openEditor } from "../editor.mjs";
import { SHARED } from "../plan.mjs";

export const scenarios = [
  {
    name: "a measure is renamed in the plan and in the file that declares it, and a name that is taken is refused",
    run: async ({ page, folder, shot }) => {
      const { plan, file, measure, line, taken } = SHARED;
      const editor = await openEditor(page, folder, plan);
      await editor.hover(line, measure, measure);
      await editor.rename(line, measure, taken.name);
      await page
        .locator(".monaco-editor-overlaymessage, .notifications-toasts")
        .filter({ hasText: taken.says })
        .first()
        .waitFor();
      await shot("rename-refused");
      await page.keyboard.press("Escape");
      await editor.rename(line, measure, "perch");
      await editor.shows(line.replaceAll(measure, "perch"));
      await editor.noProblems();
      await editor.command("File: Save All Files");
      const renamed = (name) => {
        const text = readFileSync(join(folder, name), "utf8");
        return text.includes("perch") && !text.includes(measure);
      };
      const saved = () => renamed(plan) && renamed(file);
      for (let seconds = 0; seconds < 30 && !saved(); seconds++) await page.waitForTimeout(1000);
      assert.ok(saved(), "both files have the new name and not the old one");
    },
  },
  {
    name: "a file that is renamed keeps the plans that name it whole",
    run: async ({ page, folder }) => {
      const { plan, file } = SHARED;
      const editor = await openEditor(page, folder, plan);
      await editor.noProblems();
      await page.getByRole("treeitem", { name: file }).first().click();
      await page.keyboard.press("F2");
      const box = page.locator(".explorer-viewlet input").first();
      await box.waitFor();
      await box.fill("measured.sawbuck");
      await page.keyboard.press("Enter");
      // The workbench asks whether the lines that lead there may follow, and may miss the first click.
      const yes = page.getByRole("button", { name: "OK" });
      await yes.waitFor();
      await editor.repeat(async () => {
        if (await yes.isVisible()) await yes.click();
      }, page.getByRole("treeitem", { name: "measured.sawbuck" }).first().waitFor());
      await page.getByRole("tab", { name: plan }).click();
      await editor.shows("bring measured.sawbuck");
      await editor.noProblems();
    },
  },
];
