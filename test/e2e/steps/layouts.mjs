// Better layouts while nobody types: what the status of the layouts says, what the sheet says, and that typing does not wait.
import assert from "node:assert/strict";
import { copyFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openEditor } from "../editor.mjs";

const FILE = "many-lengths.sawbuck";
const WITHIN = /Layouts: looking for a cheaper way \(at most \$([\d.]+) over\)/;
const PROVEN = /Layouts: no cheaper way exists, checked/;
const PART = { line: "part cut-73-1 ", find: "28", type: "25" };
const WORD = { line: "part cut-73-2 ", find: "lot-73", type: "lit-73" };

export const scenarios = [
  {
    name: "layouts are looked for until they are proven, and typing does not wait for it",
    run: async ({ page, folder, shot }) => {
      copyFileSync(fileURLToPath(new URL(`../${FILE}`, import.meta.url)), join(folder, FILE));
      const editor = await openEditor(page, folder, FILE);
      const status = await pinned(page);
      await status.filter({ hasText: PROVEN }).waitFor();
      await editor.openProblems();
      await editor.problem("over-budget").filter({ hasText: "no cheaper way to cut it exists" }).waitFor();
      await shot("layouts-proven");

      await page.locator(".monaco-editor .view-lines").first().click();
      const said = await overheard(status);
      const within = status.filter({ hasText: WITHIN }).waitFor();
      await editor.replace(PART);
      await within;
      await shot("layouts-looking");
      await status.filter({ hasText: PROVEN }).waitFor();
      const gaps = (await said()).flatMap((text) => WITHIN.exec(text)?.slice(1).map(Number) ?? []);
      assert.deepEqual(
        gaps,
        [...gaps].sort((a, b) => b - a),
        "what it may be over grew",
      );

      // In the midst of the search a mistake is seen at once, and its mending too.
      await editor.replace({ ...PART, find: PART.type, type: "26" });
      await editor.replace(WORD);
      const from = performance.now();
      await editor.problem(WORD.type).waitFor();
      const seen = performance.now() - from;
      assert.ok(seen < 3000, `the mistake was seen after ${seen} ms`);
      await shot("layouts-typing");
      await editor.replace({ line: WORD.line, find: WORD.type, type: WORD.find });
      await editor.problem(WORD.type).waitFor({ state: "detached" });
      await editor.command("Sawbuck: Open Shop Sheet");
      await status.filter({ hasText: PROVEN }).waitFor();
      await editor
        .sheet()
        .getByText(/no cheaper way/i)
        .first()
        .waitFor();
      await shot("layouts-sheet");
    },
  },
];

/** The status of the layouts, taken out of the list of the language's statuses into the bar. */
async function pinned(page) {
  await page.locator("#status\\.languageStatus").hover();
  const row = page.locator(".hover-language-status .element").filter({ hasText: "Layouts" }).first();
  await row.waitFor();
  await row.locator(".codicon-pin").click();
  return page.locator(".part.statusbar .statusbar-item").filter({ hasText: "Layouts" });
}

/** Gives what it has said since. */
async function overheard(status) {
  await status.evaluate((node) => {
    node.heard = [];
    const hear = () => node.heard.push(node.textContent.replaceAll("\u00a0", " "));
    new MutationObserver(hear).observe(node, { subtree: true, childList: true, characterData: true });
  });
  return () => status.evaluate((node) => node.heard);
}
