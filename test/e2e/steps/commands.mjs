// The other commands.
import assert from "node:assert/strict";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { openEditor, openText } from "../editor.mjs";
import { PLAN } from "../plan.mjs";

export const scenarios = [
  {
    name: "a new plan from a sample is saved in the folder, under a free name",
    needsServer: false,
    run: async ({ page, folder }) => {
      const editor = await openText(page, folder, PLAN.file);
      await editor.command("Sawbuck: New Plan From a Sample");
      await editor.pick(PLAN.title);
      await editor.pick("Save a copy in yard");
      const copy = PLAN.file.replace(".", "-2.");
      await page.getByRole("tab", { name: copy }).waitFor();
      assert.equal(readFileSync(join(folder, copy), "utf8"), readFileSync(join(folder, PLAN.file), "utf8"));
    },
  },
  {
    name: "a new plan from a sample opens unsaved",
    needsServer: false,
    run: async ({ page, folder }) => {
      const editor = await openText(page, folder, PLAN.file);
      await editor.command("Sawbuck: New Plan From a Sample");
      await editor.pick(PLAN.title);
      await editor.pick("Open it as a new document");
      await page
        .getByRole("tab", { name: /^Untitled-1|^# / })
        .first()
        .waitFor();
      await page.locator(editor.on.language).filter({ hasText: "Sawbuck Plan" }).waitFor();
      assert.ok(!existsSync(join(folder, PLAN.file.replace(".", "-2."))));
    },
  },
  {
    name: "a problem's page is found by its title or code, those of this plan first",
    run: async ({ page, folder, shot }) => {
      const { screw } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(screw);
      await page.locator(editor.on.squiggle).first().waitFor();
      await editor.command("Sawbuck: Explain a Problem");
      await page.locator(editor.on.rows).first().filter({ hasText: screw.code }).waitFor();
      await shot("explain");
      await editor.pick(screw.code);
      await editor.sheet().locator("h1").filter({ hasText: screw.page }).waitFor();
    },
  },
  {
    name: "a restarted language server finds the same problems",
    run: async ({ page, folder }) => {
      const { name } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(name);
      await editor.openProblems();
      const problem = editor.problem(name.code);
      await problem.waitFor();
      const node = await problem.elementHandle();
      await editor.command("Sawbuck: Restart Language Server");
      await page.waitForFunction((old) => !old.isConnected, node);
      await problem.filter({ hasText: name.message }).waitFor();
    },
  },
  {
    name: "a language server that is killed while a plan is typed is there again by itself, with the problems of the text",
    run: async ({ page, folder, shot, servers }) => {
      const { name, screw } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(name);
      await editor.openProblems();
      await editor.problem(name.code).filter({ hasText: name.message }).waitFor();
      const before = servers();
      assert.ok(before.length > 0, "a language server runs");
      for (const id of before) process.kill(id, "SIGKILL");
      // Typed while there is none.
      await editor.replace(screw);
      await editor.problem(screw.code).filter({ hasText: screw.message }).waitFor();
      await editor.problem(name.code).filter({ hasText: name.message }).waitFor();
      assert.ok(!servers().some((id) => before.includes(id)), "the killed one is gone");
      await shot("killed");
      await editor.replace({ line: "fasten flor-board", find: name.type, type: name.find });
      await editor.problem(name.code).waitFor({ state: "detached" });
      await editor.problem(screw.code).waitFor();
      await editor.replace({ line: screw.line.slice(0, 20), find: screw.type, type: screw.find });
      await editor.noProblems();
    },
  },
];
