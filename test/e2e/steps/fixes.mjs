// Mending from the keyboard: what Ctrl+. offers is taken with Enter.
import { openEditor, tries } from "../editor.mjs";
import { PLAN } from "../plan.mjs";

/** The list of what can be done; its row in use is the one that Enter takes. */
const MENU = ".action-widget";
const ROW = `${MENU} .monaco-list-row`;
const FOCUSED = `${ROW}.focused`;

/** Opens the list where the cursor is, goes to the row with that in it, and takes it. */
export async function take(page, title) {
  await tries(async (time) => {
    if (time > 1) await page.keyboard.press("Escape");
    await page.keyboard.press("Control+.");
    await page.locator(ROW).filter({ hasText: title }).first().waitFor({ timeout: 15_000 });
  });
  for (let steps = 0; steps < 30; steps++) {
    if ((await page.locator(FOCUSED).filter({ hasText: title }).count()) > 0) break;
    await page.keyboard.press("ArrowDown");
  }
  await page.locator(FOCUSED).filter({ hasText: title }).first().waitFor({ timeout: 5_000 });
  await page.keyboard.press("Enter");
  await page.locator(MENU).first().waitFor({ state: "hidden" });
}

export const scenarios = [
  {
    name: "fixes: a misspelt name is mended with Ctrl+. and Enter",
    run: async ({ page, folder, shot }) => {
      const { name: fix } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(fix);
      await page.locator(editor.on.squiggle).first().waitFor();
      await editor.placeCursor(`fasten ${fix.type}`, fix.type);
      await take(page, fix.title);
      await shot("fixed");
      await editor.noProblems();
    },
  },
  {
    name: "fixes: a hazard is let stand with a reason that is typed",
    run: async ({ page, folder, shot }) => {
      const { screw, accept } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(screw);
      await editor.openProblems();
      await editor.problem(screw.code).waitFor();
      await page.locator(".monaco-editor .view-lines").first().click();
      await editor.placeCursor(screw.line.slice(0, 20), screw.hoverOn);
      await take(page, accept.title);
      await editor.shows(accept.begun);
      await editor.type(accept.reason);
      await editor.shows(`${accept.begun}${accept.reason}`);
      await shot("accepted");
      await editor.problem(screw.code).waitFor({ state: "detached" });
    },
  },
  {
    name: "fixes: a measurement gets a name",
    run: async ({ page, folder, shot }) => {
      const { measured } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.noProblems();
      await editor.placeCursor(measured.line, measured.find);
      await take(page, measured.title);
      await editor.shows(measured.made);
      await page.keyboard.press("Escape");
      await shot("named");
      await editor.noProblems();
    },
  },
];
