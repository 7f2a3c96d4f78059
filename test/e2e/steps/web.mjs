// In a browser alone: the server is a worker, and files are read by the editor.
import { openEditor, openText } from "../editor.mjs";
import { PLAN, SHARED } from "../plan.mjs";
import { openSheet, row } from "../sheet.mjs";

const SHOP = "hillside-shop.sawbuck";

export const scenarios = [
  {
    name: "web: a plan is read with its shop file: no problems, its outline, a hover, what could be typed next",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await page.locator(editor.on.language).filter({ hasText: "Sawbuck Plan" }).waitFor();
      await editor.hover(PLAN.part.line, PLAN.part.name, PLAN.part.hover);
      await editor.noProblems();
      await shot("hover");
      await page.keyboard.press("Control+Shift+o");
      await page.locator(editor.on.rows).filter({ hasText: PLAN.use.name }).first().waitFor();
      await page.keyboard.press("Escape");
      await editor.newLastLine();
      await page.keyboard.press("Control+Space");
      await page.locator(editor.on.suggestions).filter({ hasText: "assembly" }).first().waitFor();
      await shot("completion");
    },
  },
  {
    name: "web: a mistake is seen while it is typed, and clears when it is mended after a restart of the server",
    run: async ({ page, folder, shot }) => {
      const { screw } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(screw);
      await editor.openProblems();
      await editor.problem(screw.code).filter({ hasText: screw.message }).waitFor();
      await shot("mistake");
      await page.locator(".monaco-editor .view-lines").first().click();
      await editor.command("Sawbuck: Restart Language Server");
      await editor.replace({ line: screw.line.slice(0, 20), find: screw.type, type: screw.find });
      await editor.noProblems();
    },
  },
  {
    name: "web: the shop sheet shows the cut list, follows the text, has proven layouts, and is saved",
    run: async ({ page, folder, shot }) => {
      const { measure } = PLAN;
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      await sheet.locator("h1").filter({ hasText: PLAN.title }).waitFor();
      await row(sheet, measure.before).waitFor();
      await sheet
        .getByText(/no cheaper way/i)
        .first()
        .waitFor();
      await shot("sheet");
      await editor.replace(measure);
      await row(sheet, measure.after).waitFor();
      for (const [format, ending, said] of [
        ["Page", "html", "is saved as salad-trough-sheet.html."],
        ["PDF on A4", "pdf", "Save the sheet as a page, and print that."],
      ]) {
        await sheet.locator("#save").click();
        await editor.pick(format);
        await page.locator(".quick-input-title").filter({ hasText: "Save Shop Sheet" }).waitFor();
        const name = `salad-trough-sheet.${ending}`;
        await page.waitForFunction((end) => document.activeElement?.value?.endsWith(end), name);
        await page.keyboard.press("Enter");
        await page.locator(".notification-toast").filter({ hasText: said }).first().waitFor();
        await shot(`saved-${ending}`);
      }
    },
  },
  {
    name: "web: an edit of the shop file reaches the plan, from an editor and from a saved file",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.noProblems();
      const shop = await openText(page, folder, SHOP);
      await shop.replace({ line: "stock heart-2x4", find: "heart-2x4", type: "heart-2x5" });
      await editor.openProblems();
      const problem = editor.problem("unknown-name").filter({ hasText: "heart-2x4" });
      await problem.waitFor();
      await shot("shop");
      const tab = page.getByRole("tab", { name: SHOP });
      await tab.click();
      await page.keyboard.press("Control+s");
      await page.locator(".tab.dirty").waitFor({ state: "detached" });
      await tab.click({ button: "middle" });
      await tab.waitFor({ state: "detached" });
      await page.waitForTimeout(500);
      await problem.waitFor();
    },
  },
  {
    name: "web: a measure is renamed in a plan that was never open, which stays whole",
    run: async ({ page, folder, shot }) => {
      const { plan, file, measure, uses } = SHARED;
      const declares = `measure ${measure} =`;
      const editor = await openText(page, folder, file);
      await editor.hover(declares, measure, measure);
      await editor.rename(declares, measure, "perch");
      await editor.shows("measure perch =");
      const other = await openEditor(page, folder, plan);
      await other.shows(uses.replace(measure, "perch"));
      await other.noProblems();
      await shot("renamed");
    },
  },
  {
    name: "web: a new plan from a sample is saved in the folder, with its shop file there",
    run: async ({ page, folder }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.command("Sawbuck: New Plan From a Sample");
      await editor.pick(PLAN.title);
      await editor.pick("Save a copy in");
      await page.getByRole("tab", { name: PLAN.file.replace(".", "-2.") }).waitFor();
      await editor.noProblems();
    },
  },
];
