// A window of an editor that speaks French: everything that Sawbuck says is French, the words of a plan stay as they are.
import { openEditor } from "../editor.mjs";
import { PLAN } from "../plan.mjs";

const { screw, part, french } = PLAN;

export const scenarios = [
  {
    name: "a French editor is spoken to in French: commands, problems, hovers, figures and sheet",
    locale: "fr-FR",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await page.locator(editor.on.language).filter({ hasText: french.language }).waitFor();
      await page.locator(editor.on.lens).filter({ hasText: french.lens }).first().waitFor();
      await editor.hover(part.line, part.name, french.hover);
      await shot("french-hover");
      await editor.replace(screw);
      await editor.openProblems();
      await editor.problem(screw.code).filter({ hasText: french.problem }).waitFor();
      await shot("french-problem");
      await editor.command(french.openSheet);
      await editor.sheet().locator("h2").filter({ hasText: french.cutList }).waitFor();
      await shot("french-sheet");
    },
  },
];
