// Figures in the text, and what stands above a plan: that they are there, follow the typing, lead on, and can be switched off.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { openEditor } from "../editor.mjs";
import { PLAN } from "../plan.mjs";

const { hints, screw, title } = PLAN;

export const scenarios = [
  {
    name: "hints stand in the text, stay behind what is typed, and follow it",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      const hint = (text) => page.locator(editor.on.hint).filter({ hasText: text }).first();
      await hint(hints.before).waitFor();
      await hint(hints.count).waitFor();
      await shot("hints");
      await editor.placeCursor(hints.line, hints.behind);
      for (const _ of hints.behind) await page.keyboard.press("ArrowRight");
      await editor.type(hints.type);
      await editor.shows(`${hints.behind}${hints.type}`);
      await hint(hints.after).waitFor();
      await shot("hints-typed");
    },
  },
  {
    name: "what stands above a plan opens the sheet and the list of problems",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      const lens = (text) => page.locator(editor.on.lens).filter({ hasText: text }).first();
      await lens(hints.lens).waitFor();
      await shot("lens");
      // A line that comes to stand elsewhere while it is clicked misses the click.
      await editor.repeat(
        () => lens(hints.lens).click(),
        editor.sheet().locator("h1").filter({ hasText: title }).waitFor(),
      );
      await editor.replace(screw);
      await editor.placeCursor("plan ", title);
      await editor.repeat(() => lens(hints.problems).click(), editor.problem(screw.code).waitFor());
    },
  },
  {
    name: "a shop file that changes on disk is seen above the open plan",
    run: async ({ page, folder }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await page.locator(editor.on.lens).filter({ hasText: hints.lens }).first().waitFor();
      const shop = join(folder, "hillside-shop.sawbuck");
      // Boards are still sold, at no known price. What is written before the workbench looks at files is not noticed.
      const withoutPrices = readFileSync(shop, "utf8").replaceAll(/(\d') \$[\d.]+/g, "$1");
      await editor.repeat(
        () => writeFileSync(shop, withoutPrices),
        page.locator(editor.on.lens).filter({ hasText: hints.withoutPrices }).first().waitFor(),
      );
    },
  },
  {
    name: "hints and what stands above a plan are switched off by the settings",
    run: async ({ page, folder }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      const shown = (on, text) => page.locator(on).filter({ hasText: text }).first();
      const gone = [
        shown(editor.on.hint, hints.before),
        shown(editor.on.hint, hints.count),
        shown(editor.on.lens, hints.lens),
      ];
      for (const one of gone) await one.waitFor();
      mkdirSync(join(folder, ".vscode"), { recursive: true });
      const off = { "sawbuck.hints.lengths": false, "sawbuck.hints.counts": false, "sawbuck.lens": false };
      writeFileSync(join(folder, ".vscode/settings.json"), JSON.stringify(off));
      for (const one of gone) await one.waitFor({ state: "detached" });
    },
  },
];
