// Working on the text: what the editor says and offers while a plan is read and typed.
import { openEditor, openText, tries } from "../editor.mjs";
import { PLAN } from "../plan.mjs";

export const scenarios = [
  {
    name: "a plan opens without problems, and its parts are listed",
    run: async ({ page, folder }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await page.locator(editor.on.language).filter({ hasText: "Sawbuck Plan" }).waitFor();
      await page.keyboard.press("Control+Shift+o");
      await page.locator(editor.on.rows).filter({ hasText: PLAN.part.name }).first().waitFor();
      await page.locator(editor.on.rows).filter({ hasText: PLAN.use.name }).first().waitFor();
      await page.keyboard.press("Escape");
      await editor.noProblems();
    },
  },
  {
    name: "a mistake is seen while it is typed, read, and clears when it is mended",
    run: async ({ page, folder, shot }) => {
      const { screw } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(screw);
      await page.locator(editor.on.squiggle).first().waitFor();
      await editor.openProblems();
      await editor.problem(screw.code).filter({ hasText: screw.message }).waitFor();
      await page.locator(".monaco-editor .view-lines").first().click();
      await editor.hover(screw.line.slice(0, 20), screw.hoverOn, screw.message);
      await shot("mistake");
      await editor.replace({ line: screw.line.slice(0, 20), find: screw.type, type: screw.find });
      await editor.noProblems();
    },
  },
  {
    name: "too few screws are told with both figures and the number that holds, and clear with it",
    run: async ({ page, folder, shot }) => {
      const { load } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(load);
      await editor.openProblems();
      await editor.problem(load.code).filter({ hasText: load.message }).waitFor();
      await page.locator(".monaco-editor .view-lines").first().click();
      await editor.hover(load.line.slice(0, 20), load.hoverOn, load.cure);
      await shot("overloaded");
      await editor.replace({ line: load.line.slice(0, 20), find: load.type, type: load.find });
      await editor.noProblems();
    },
  },
  {
    name: "the code in the list of problems opens its page",
    run: async ({ page, folder, shot }) => {
      const { screw } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.replace(screw);
      await editor.openProblems();
      await editor.problem(screw.code).waitFor();
      // The list is drawn anew after each evaluation, and a click on a row that is going is lost. And a page opened in the
      // first seconds of a new profile may come as plain text: the workbench has not yet read which editor is for pages.
      const tab = page.getByRole("tab", { name: screw.code });
      await tries(async (time) => {
        if (time > 1 && (await tab.isVisible())) await tab.click({ button: "middle" });
        const link = page.locator(".markers-panel a").filter({ hasText: screw.code });
        await link.first().click({ modifiers: ["ControlOrMeta"] });
        await tab.waitFor({ timeout: 20_000 });
        await editor.sheet().locator("h1").filter({ hasText: screw.page }).waitFor({ timeout: 20_000 });
      });
      await shot("page");
    },
  },
  {
    name: "a part's hover tells its length",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.hover(PLAN.part.line, PLAN.part.name, PLAN.part.hover);
      await shot("hover");
    },
  },
  {
    name: "an empty line offers the words that open an entry",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.newLastLine();
      await page.keyboard.press("Control+Space");
      await page.locator(editor.on.suggestions).first().waitFor();
      await shot("completion");
      // The list holds more than it shows at once: each word is found by its first letters. Two are nowhere in the plan itself.
      for (const word of ["part", "assembly", "bring"]) {
        await page.keyboard.type(word.slice(0, 3), { delay: 30 });
        await page.locator(editor.on.suggestions).filter({ hasText: word }).first().waitFor();
        for (let i = 0; i < 3; i++) await page.keyboard.press("Backspace");
        await page.keyboard.press("Escape");
        await page.keyboard.press("Control+Space");
        await page.locator(editor.on.suggestions).first().waitFor();
      }
    },
  },
  {
    name: "a name leads to the line where it is made",
    run: async ({ page, folder }) => {
      const { use } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.placeCursor(use.line, use.name);
      await editor.repeat(
        () => page.keyboard.press("F12"),
        editor.cursorAt(editor.lineNumber(use.madeAt), use.madeAt.indexOf(use.name) + 1),
      );
    },
  },
  {
    name: "keys: a comment by key, no second quotation mark, two blanks after a box, none after an empty line",
    needsServer: false,
    run: async ({ page, folder }) => {
      const editor = await openText(page, folder, PLAN.file);
      await editor.newLastLine();
      const last = editor.text().split("\n").length;
      await editor.type("bin");
      // The first key that shows whether the language's own settings have been read.
      // A list of suggestions that comes late keeps the key to itself.
      const comment = () => page.keyboard.press("Escape").then(() => page.keyboard.press("Control+/"));
      await editor.repeat(comment, editor.shows("# bin"));
      // The editor closes a bracket only once it has coloured the text as far as there.
      await tries(async () => {
        await page.keyboard.press("Shift+Home");
        await editor.type('box bin, length 3" (4');
        await editor.shows('box bin, length 3" (4)', 10_000);
      });
      await page.keyboard.press("End");
      await editor.enterTo(last + 1, 3);
      await editor.enterTo(last + 2, 1);
    },
  },
];
