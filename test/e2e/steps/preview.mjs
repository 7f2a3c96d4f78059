// Working in the shop sheet's panel: ticks, units and readers, saving, keys, and how it looks in dark surroundings.
import assert from "node:assert/strict";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { PLAN } from "../plan.mjs";
import { contrastOf, openSheet, reloadWindow, row } from "../sheet.mjs";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const LIGHT_AND_DARK = [
  { name: "light", theme: "Default Light Modern", kind: "vscode-light" },
  { name: "dark", theme: "Default Dark Modern", kind: "vscode-dark" },
];
const HIGH_CONTRAST = [
  { name: "high-contrast", theme: "Default High Contrast", kind: "vscode-high-contrast" },
  { name: "high-contrast-light", theme: "Default High Contrast Light", kind: "vscode-high-contrast-light" },
];

export const scenarios = [
  {
    name: "panel: what is ticked stays ticked, after an edit elsewhere and after the window is loaded again",
    run: async ({ page, folder, shot }) => {
      const { ticked, apart, measure } = PLAN;
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      const box = sheet.locator(`input[data-tick="${ticked.id}"]`);
      const left = (words) => sheet.locator(".progress [role=status]").filter({ hasText: words }).waitFor();
      await left(ticked.before);
      await box.click();
      await left(ticked.after);
      // The row leads to a line, its boxes do not. The place is told only while the text has the keys; that the panel has
      // them after the click is heard of late, and would take them from the text again.
      await page.locator(editor.on.position).waitFor({ state: "hidden" });
      await page.keyboard.press("Control+1");
      await editor.cursorAt(1, 1);
      await editor.replace(apart);
      await sheet.locator(".drawings p").filter({ hasText: apart.after }).waitFor();
      assert.ok(await box.isChecked());
      await editor.replace(measure);
      await row(sheet, measure.after).waitFor();
      assert.ok(await box.isChecked());
      // Rows move down for one that is new, and the ticks with them.
      await editor.placeCursor(PLAN.drawn.first, "part");
      await editor.type(`part ${ticked.other} 2 of 2x4, length 36"`);
      await page.keyboard.press("Enter");
      const other = sheet.locator(`input[data-tick="cut/${ticked.other} / 1"]`);
      await other.waitFor();
      assert.deepEqual([await box.isChecked(), await other.isChecked()], [true, false]);
      await shot("sheet-ticked");
      await reloadWindow(page);
      await other.waitFor();
      await left(ticked.after);
      assert.ok(await box.isChecked());
      await sheet.locator(".progress button").click();
      await left(ticked.before);
      assert.ok(!(await box.isChecked()));
    },
  },
  {
    name: "panel: millimetres and learners are shown without touching the file, and chosen still after a reload",
    run: async ({ page, folder, shot }) => {
      const { metric, measure, drawn } = PLAN;
      const text = readFileSync(join(folder, PLAN.file), "utf8");
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      await row(sheet, measure.before).waitFor();
      await sheet.locator("#units").selectOption("millimetres");
      await row(sheet, metric.row).waitFor();
      await sheet.locator("text.dimension").filter({ hasText: metric.overall }).first().waitFor();
      await sheet
        .locator("text.dimension")
        .filter({ hasText: drawn.before })
        .first()
        .waitFor({ state: "detached" });
      await shot("sheet-millimetres");
      await sheet.locator("#reader").selectOption("learners");
      await sheet.locator("h2").filter({ hasText: "Answers" }).waitFor();
      assert.equal(readFileSync(join(folder, PLAN.file), "utf8"), text);
      assert.equal(await page.locator(".tab.dirty").count(), 0);
      await reloadWindow(page);
      await sheet.locator("h2").filter({ hasText: "Answers" }).waitFor();
      await sheet.locator("text.dimension").filter({ hasText: metric.overall }).first().waitFor();
      assert.equal(await sheet.locator("#units").inputValue(), "millimetres");
      await sheet.locator("#reader").selectOption("builder");
      await sheet.locator("#units").selectOption("plan");
      await row(sheet, measure.before).waitFor();
    },
  },
  {
    name: "panel: the sheet is saved as a page and as Markdown, as it is shown",
    run: async ({ page, folder, shot }) => {
      const { measure, metric, title } = PLAN;
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      await row(sheet, measure.before).waitFor();
      await sheet.locator("#units").selectOption("millimetres");
      await row(sheet, metric.row).waitFor();
      const said = (words) => page.locator(".notification-toast").filter({ hasText: words }).first();
      const asName = async (name) => {
        await page.locator(".quick-input-title").filter({ hasText: "Save Shop Sheet" }).waitFor();
        await page.waitForFunction((end) => document.activeElement?.value?.endsWith(end), name);
      };
      await sheet.locator("#save").click();
      await editor.pick("Page");
      await asName("/yard/salad-trough-sheet.html");
      await shot("sheet-save");
      await page.keyboard.press("Enter");
      await said("The shop sheet is saved as salad-trough-sheet.html.").waitFor();
      const html = readFileSync(join(folder, "salad-trough-sheet.html"), "utf8");
      assert.match(html, /^<!DOCTYPE html>/);
      assert.match(html, /<svg [^>]*class="drawing"/);
      assert.match(html, metric.row);

      // From the panel's own title, which shows its buttons while the reader is in the panel.
      await sheet.locator("h1").click();
      await page
        .getByRole("button", { name: /Save Shop Sheet/ })
        .first()
        .click();
      await editor.pick("Markdown");
      await asName("/yard/salad-trough-sheet.md");
      await page.keyboard.press("Enter");
      await said("The shop sheet is saved as salad-trough-sheet.md.").waitFor();
      const markdown = readFileSync(join(folder, "salad-trough-sheet.md"), "utf8");
      assert.ok(markdown.startsWith(`# ${title}\n`));
      assert.match(markdown, metric.row);
      await said("salad-trough-sheet.md").getByRole("button", { name: "Open" }).click();
      await page.getByRole("tab", { name: "salad-trough-sheet.md" }).waitFor();
    },
  },
  {
    name: "panel: by keys alone: units, reader, a mark, a row and its boxes",
    run: async ({ page, folder, shot }) => {
      const { drawn, metric, ticked } = PLAN;
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      const focused = () => sheet.locator(":focus");
      const has = (what) => sheet.locator(`${what}:focus`).waitFor();
      const press = async (...keys) => {
        for (const key of keys) await page.keyboard.press(key);
      };
      await row(sheet, PLAN.measure.before).waitFor();
      await press("Control+2");
      await press("Tab");
      await has("#units");
      await press("ArrowDown", "ArrowDown");
      await row(sheet, metric.row).waitFor();
      await press("ArrowUp", "ArrowUp");
      await row(sheet, PLAN.measure.before).waitFor();
      await press("Tab");
      await has("#reader");
      await press("Tab");
      await has("#save");
      // The first drawing may scroll sideways, and stands before the marks.
      await press("Tab");
      await has(".paper");
      await press("Tab");
      await has(".marks [role=link]");
      assert.match(await focused().textContent(), /leg/);
      await shot("sheet-keys");
      await press("Enter");
      await editor.cursorAt(editor.lineNumber(drawn.first), 1);
      // The row of the cursor's line is marked at its edge, and the page stays where it is.
      await sheet.locator("tr[aria-current=true]").filter({ hasText: PLAN.measure.row }).waitFor();
      assert.equal(await sheet.locator("tr[aria-current=true]").count(), 1);
      const line = editor.lineNumber(drawn.partOf);
      const link = sheet.locator(`.cuts tr[data-line="${line}"] [role=link]`);
      await link.focus();
      const seenAt = () => link.evaluate((node) => Math.round(node.getBoundingClientRect().top));
      const place = await seenAt();
      await press("Space");
      await editor.cursorAt(line, 1);
      await sheet.locator(`tr[aria-current=true][data-line="${line}"]`).first().waitFor();
      assert.equal(await seenAt(), place);
      await shot("sheet-row-marked");
      await sheet.locator(`input[data-tick="${ticked.id}"]`).focus();
      await press("Space");
      await sheet.locator(".progress [role=status]").filter({ hasText: ticked.after }).waitFor();
      await press("Space");
      await sheet.locator(".progress [role=status]").filter({ hasText: ticked.before }).waitFor();
    },
  },
  ...[
    ["light and dark", LIGHT_AND_DARK],
    ["high-contrast", HIGH_CONTRAST],
  ].map(([named, themes]) => ({
    name: `panel: in ${named} surroundings the sheet is read at 7:1 or better, and axe-core finds nothing`,
    run: async ({ page, folder, shot }) => {
      const settings = join(folder, ".vscode");
      mkdirSync(settings, { recursive: true });
      const choose = ({ theme }) =>
        writeFileSync(join(settings, "settings.json"), JSON.stringify({ "workbench.colorTheme": theme }));
      choose(themes[0]);
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      await row(sheet, PLAN.measure.before).waitFor();
      await editor.placeCursor(PLAN.drawn.first, "leg");
      await sheet.locator(".face.marked").first().waitFor();
      const body = sheet.locator("body");
      await body.evaluate(AXE);
      for (const surroundings of themes) {
        choose(surroundings);
        await sheet.locator(`body[data-vscode-theme-kind="${surroundings.kind}"]`).waitFor();
        await isReadIn(surroundings.name, { page, sheet, body });
        await sheet.locator(".drawings svg").first().scrollIntoViewIfNeeded();
        await shot(`sheet-${surroundings.name}`);
        await sheet.locator(".cuts tr [role=link]").first().focus();
        await shot(`sheet-${surroundings.name}-rows`);
      }
    },
  })),
];

async function isReadIn(name, { page, sheet, body }) {
  const { violations } = await body.evaluate(() => window.axe.run(document));
  const found = violations.map(({ id, nodes }) =>
    `${id}: ${nodes.map((n) => n.html).join("\n")}`.slice(0, 600),
  );
  assert.deepEqual(found, [], name);
  for (const what of [
    "#controls label",
    "#units",
    "#save",
    ".sheet h1",
    ".sheet .about dd",
    ".sheet .cuts td.part",
  ]) {
    const contrast = await contrastOf(page, sheet.locator(what).first());
    assert.ok(contrast >= 7, `${what} has ${contrast.toFixed(1)}:1 in ${name}`);
  }
  const white = await sheet
    .locator(".sheet")
    .evaluate(() => getComputedStyle(document.querySelector("#sheet")).filter);
  assert.equal(white === "none", name.endsWith("light"));
}
