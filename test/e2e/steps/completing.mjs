// Building a plan by what is offered: whole entries, names and clauses, with the forms of the entry beside them.
import { openEditor } from "../editor.mjs";
import { PLAN, SHARED } from "../plan.mjs";

const SIGNATURE = ".parameter-hints-widget.visible";

/** Opens the list, waits for an offer and takes it. */
async function take(page, editor, offered) {
  const row = page.locator(editor.on.suggestions).filter({ hasText: offered }).first();
  await editor.repeat(() => page.keyboard.press("Control+Space"), row.waitFor());
  await row.click();
}

export const scenarios = [
  {
    name: "a place and a joint are written by taking what is offered, with their forms beside",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.newLastLine();
      await editor.type('part cleat 2 of 1x4, length 10"\n');
      await page.keyboard.type("place cleat across, flat, ", { delay: 30 });
      await page.locator(editor.on.suggestions).filter({ hasText: "on cap" }).first().waitFor();
      await shot("completing-place");
      await take(page, editor, "on cap");
      await editor.shows("place cleat across, flat, on cap");
      await page.keyboard.type(", ", { delay: 30 });
      await take(page, editor, "flush with left of cap");
      await page.keyboard.type(", ", { delay: 30 });
      await take(page, editor, "flush with front of cap");
      await editor.shows("place cleat across, flat, on cap, flush with left of cap, flush with front of cap");
      await page.keyboard.press("Escape");
      await page.keyboard.type("\nfasten cleat face into cap-side face, ", { delay: 15 });
      await page.locator(SIGNATURE).filter({ hasText: "at each crossing" }).waitFor();
      await shot("completing-forms");
      await take(page, editor, '#8 x 1-1/4" at each crossing');
      await editor.shows('fasten cleat face into cap-side face, 2 #8 x 1-1/4" at each crossing');
    },
  },
  {
    name: "a file to bring is found by some of its letters, and replaces the one that was named",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.newLastLine();
      await editor.type("bring old.sawbuck");
      for (const _ of "old.sawbuck") await page.keyboard.press("ArrowLeft");
      const row = page.locator(editor.on.suggestions).filter({ hasText: SHARED.file }).first();
      await editor.repeat(() => page.keyboard.press("Control+Space"), row.waitFor());
      await shot("completing-files");
      await page.keyboard.type("yard", { delay: 30 });
      await page.locator(`${editor.on.suggestions}.focused`).filter({ hasText: SHARED.file }).waitFor();
      await page.keyboard.press("Enter");
      const whole = await page.waitForFunction(
        (line) =>
          [...document.querySelectorAll(".monaco-editor .view-line")].some(
            (shown) => shown.textContent.replaceAll("\u00a0", " ") === line,
          ),
        `bring ${SHARED.file}`,
      );
      await whole.dispose();
    },
  },
];
