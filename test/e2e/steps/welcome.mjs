// The first minutes: the walkthrough, and the status that says how a plan stands.
import assert from "node:assert/strict";
import { openEditor, repeat } from "../editor.mjs";
import { PLAN } from "../plan.mjs";

const STEPS = [
  "Open a plan to practise on",
  "Read a problem, and mend it",
  "Ask how long a piece is",
  "Say where a board stands",
  "Open the shop sheet, and print it",
  "Use your own shop file",
];
/** What only the picture of that step shows. */
const SHOWN = ["Boot rack", "comes out", "Ends: square", "place", "Cut list", "heart-2x4"];
const PLACE = "across, on edge, on slats, flush with left of slats, flush with back of slats";

export const scenarios = [
  {
    name: "the walkthrough leads from a plan with two mistakes to its sheet, without a folder",
    run: async ({ page, shot }) => {
      await page.goto(new URL("/?ew=true", page.url()).href);
      await page.locator(".monaco-workbench").waitFor();
      const walk = await openWalkthrough(page);
      assert.deepEqual(await walk.titles(), STEPS);
      for (const [i, step] of STEPS.entries()) {
        await walk.choose(step);
        await walk.picture(SHOWN[i]);
        await shot(`walkthrough-${i + 1}`);
      }

      await walk.choose(STEPS[0]);
      await walk.press("Open the Practice Plan");
      await page.locator(".monaco-editor .view-line").filter({ hasText: "Boot" }).first().waitFor();
      await page.locator(".monaco-editor .squiggly-error").first().waitFor();
      await walk.done(STEPS[0]);

      await walk.choose(STEPS[1]);
      await walk.press("Show the Problem");
      await page
        .locator(".markers-panel .monaco-list-row")
        .filter({ hasText: "screw-pokes-through" })
        .waitFor();
      await shot("walkthrough-problem");
      await page.keyboard.press("Control+2");
      await page.keyboard.press("Backspace");
      await page.keyboard.type("2");
      await page.locator(".monaco-editor .squiggly-error").first().waitFor({ state: "detached" });
      await walk.done(STEPS[1]);

      await walk.choose(STEPS[2]);
      // The line above the plan follows the mended screw, and what moves with it puts a hover away.
      const length = page.locator(".monaco-hover:visible").filter({ hasText: '30"' }).first();
      await repeat(page, () => walk.press("Show a Length"), length.waitFor());
      await shot("walkthrough-hover");
      await walk.done(STEPS[2]);

      await walk.choose(STEPS[3]);
      const across = page.locator(".suggest-widget.visible .monaco-list-row").filter({ hasText: "across" });
      await repeat(page, () => walk.press("Begin the Line"), across.first().waitFor());
      await shot("walkthrough-place");
      const write = async () => {
        for (const key of ["Escape", "Home", "Shift+End"]) await page.keyboard.press(key);
        await page.keyboard.insertText(`place lip ${PLACE}`);
      };
      await repeat(page, write, walk.done(STEPS[3]));

      await walk.choose(STEPS[4]);
      await walk.press("Open Shop Sheet");
      await page.getByRole("tab", { name: "Shop Sheet: Boot rack" }).waitFor();
      await walk.done(STEPS[4]);
      await shot("walkthrough-sheet");

      await walk.choose(STEPS[5]);
      await walk.press("Name Your Shop File");
      await page
        .locator(".quick-input-list .monaco-list-row")
        .filter({ hasText: "Begin with a copy" })
        .first()
        .waitFor();
    },
  },
  {
    name: "the status of a plan counts its problems and what was not checked, and leads to both",
    run: async ({ page, folder, shot }) => {
      const { screw } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      const status = await pinned(page);
      await status.filter({ hasText: /No problems found; \d+ things not checked/ }).waitFor();
      await editor.replace(screw);
      await status.filter({ hasText: /1 problem; \d+ things not checked/ }).waitFor();
      await shot("status");
      await status.click();
      await editor.problem(screw.code).waitFor();
      await editor.command("Sawbuck: Show What Was Not Checked");
      const row = page.locator(editor.on.rows);
      await row.filter({ hasText: "twist" }).first().waitFor();
      await shot("not-checked");
      await page.keyboard.press("Escape");
      await editor.replace({ line: screw.line.slice(0, 20), find: screw.type, type: screw.find });
      await status.filter({ hasText: /No problems found; / }).waitFor();
    },
  },
  {
    name: "a key opens the sheet, another explains a problem",
    run: async ({ page, folder }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await page.locator(editor.on.language).filter({ hasText: "Sawbuck Plan" }).waitFor();
      await page.locator(".monaco-editor .view-lines").first().click();
      await page.keyboard.press("Control+k");
      await page.keyboard.press("h");
      await editor.sheet().locator("h1").first().waitFor();
      await page.locator(".monaco-editor .view-lines").first().click();
      await page.keyboard.press("Control+k");
      await page.keyboard.press("x");
      await page.locator(editor.on.rows).filter({ hasText: "bad-name" }).first().waitFor();
    },
  },
];

/** Opens the walkthrough and gives the means to go through it. */
async function openWalkthrough(page) {
  const input = page.locator(".quick-input-widget .quick-input-filter input.input").first();
  const rows = page.locator(".quick-input-list .monaco-list-row");
  await page.keyboard.press("F1");
  await input.fill(">Welcome: Open Walkthrough");
  await page
    .locator(".quick-input-list .monaco-list-row.focused")
    .filter({ hasText: "Open Walkthrough" })
    .waitFor();
  await page.keyboard.press("Enter");
  await rows.filter({ hasText: "Your first plan" }).first().waitFor();
  await input.fill("Your first plan");
  await page.keyboard.press("Enter");
  const steps = page.locator(".gettingStartedSlideDetails .getting-started-step");
  await steps.first().waitFor();
  const step = (title) => steps.filter({ hasText: title }).first();
  return {
    titles: () => steps.locator(".step-title").allTextContents(),
    choose: async (title) => {
      const one = step(title);
      if (!(await one.getAttribute("class")).includes("expanded")) await one.locator(".step-title").click();
      await steps.locator("xpath=self::*[contains(@class,'expanded')]").filter({ hasText: title }).waitFor();
    },
    picture: (shown) =>
      page
        .frameLocator(".gettingStartedContainer iframe.webview")
        .first()
        .frameLocator("iframe#active-frame")
        .locator("svg")
        .filter({ hasText: shown })
        .first()
        .waitFor(),
    press: (words) =>
      page.locator(".getting-started-step.expanded").getByRole("button", { name: words }).last().click(),
    done: (title) =>
      step(title)
        .locator(".codicon.complete, .codicon-getting-started-step-checked.complete")
        .first()
        .waitFor(),
  };
}

/** The status of the plan, taken out of the list of the language's statuses into the bar. */
async function pinned(page) {
  const entry = page
    .locator(".hover-language-status .element")
    .filter({ hasText: /problems? found|problems?;/ })
    .first();
  await page.locator("#status\\.languageStatus").hover();
  await entry.waitFor();
  const bar = page.locator(".part.statusbar .statusbar-item").filter({ hasText: /problem/ });
  // What another window has put into the bar stands in this one too.
  if (!(await bar.isVisible())) await entry.locator(".codicon-pin").click();
  return bar;
}
