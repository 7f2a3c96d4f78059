// The layout of the text: laid out when asked to, and line by line while it is typed.
import { openEditor } from "../editor.mjs";
import { PLAN } from "../plan.mjs";

export const scenarios = [
  {
    name: "layout: a line typed in a hurry is laid out with the document",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.newLastLine();
      await editor.type("measure reach=24");
      // Until the extension has started there is nothing that formats: it has, once it tells that nothing uses this.
      await page.locator(".monaco-editor .squiggly-info").first().waitFor();
      await editor.repeat(() => editor.command("Format Document"), editor.shows("measure reach = 24"));
      await shot("layout");
    },
  },
  {
    name: "layout: an entry typed under a stock moves to the left edge by itself",
    run: async ({ page, folder, shot }) => {
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.newLastLine();
      const last = editor.text().split("\n").length;
      await editor.type("stock tread of 2x4");
      await page.keyboard.press("Escape");
      await editor.enterTo(last + 1, 3);
      await editor.type("keep");
      await page.keyboard.press("Escape");
      await editor.enterTo(last + 2, 3);
      await editor.type("part step of tread");
      await editor.cursorAt(last + 2, "part step of tread".length + 1);
      await shot("outdented");
    },
  },
];
