// The shop sheet beside the text: that it is there, follows, and stays when it must.
import assert from "node:assert/strict";
import { openEditor } from "../editor.mjs";
import { PLAN } from "../plan.mjs";
import { openSheet, row } from "../sheet.mjs";

export const scenarios = [
  {
    name: "the shop sheet shows the cut list, and follows the text",
    run: async ({ page, folder, shot }) => {
      const { measure } = PLAN;
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      await sheet.locator("h1").filter({ hasText: PLAN.title }).waitFor();
      await row(sheet, measure.before).waitFor();
      await shot("sheet");
      await editor.replace(measure);
      await row(sheet, measure.after).waitFor();
      await row(sheet, measure.before).waitFor({ state: "detached" });
      await shot("sheet-followed");
    },
  },
  {
    name: "with a mistake the last good sheet stays, and says that it is old",
    run: async ({ page, folder, shot }) => {
      const { name, measure } = PLAN;
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      await row(sheet, measure.before).waitFor();
      await editor.replace(name);
      const broken = name.line.replace(name.find, name.type);
      const line = editor.lineNumber(broken);
      const said = `This sheet is from before the mistake on line ${line}. It follows again when the line is mended.`;
      await sheet.locator("#notice").filter({ hasText: said }).waitFor();
      await row(sheet, measure.before).waitFor();
      await shot("sheet-old");
      await editor.replace({ line: broken, find: name.type, type: name.find });
      await sheet.locator("#notice").waitFor({ state: "hidden" });
    },
  },
  {
    name: "an edit leaves the rest of the sheet as it was: its place, its nodes, its style",
    run: async ({ page, folder }) => {
      const { measure } = PLAN;
      const editor = await openSheet(page, folder);
      const sheet = editor.sheet();
      await row(sheet, measure.before).waitFor();
      const heading = sheet.locator("h1");
      await heading.evaluate((node) => {
        node.seenBefore = true;
        window.scrollTo(0, 40);
      });
      await editor.replace(measure);
      await row(sheet, measure.after).waitFor();
      assert.deepEqual(await heading.evaluate((node) => [node.seenBefore, window.scrollY]), [true, 40]);
      assert.notEqual(
        await sheet.locator("#sheet-style").evaluate((style) => style.sheet?.cssRules.length ?? 0),
        0,
      );
    },
  },
  {
    name: "a click in the drawing lands on the line, the cursor marks its pieces, and the drawing follows a measure",
    run: async ({ page, folder, shot }) => {
      const { drawn, measure } = PLAN;
      const editor = await openSheet(page, folder);
      const drawings = editor.sheet().locator(".drawings");
      const front = drawings.locator("svg").nth(1);
      const marked = (piece) => drawings.locator(`path.face.marked[data-piece="${piece}"]`).first();
      await front.locator(`path.face[data-piece="${drawn.piece}"]`).click();
      await editor.cursorAt(editor.lineNumber(drawn.placedAt), 1);
      await marked(drawn.piece).waitFor();
      await shot("drawing-marked");
      await drawings
        .locator("text.balloon")
        .filter({ hasText: new RegExp(`^${drawn.balloon}$`) })
        .first()
        .click();
      await editor.cursorAt(editor.lineNumber(drawn.partOf), 1);
      await marked(drawn.other).waitFor();
      await marked(drawn.piece).waitFor({ state: "detached" });
      await drawings.locator(".marks [role=link]").first().focus();
      await page.keyboard.press("Enter");
      await editor.cursorAt(editor.lineNumber(drawn.first), 1);
      const said = (words) => drawings.locator("text.dimension").filter({ hasText: words }).first();
      await said(drawn.before).waitFor();
      await editor.replace(measure);
      await said(drawn.after).waitFor();
      await said(drawn.before).waitFor({ state: "detached" });
      await shot("drawing-followed");
    },
  },
  {
    name: "the hover over a part ends with a small drawing",
    run: async ({ page, folder, shot }) => {
      const { part } = PLAN;
      const editor = await openEditor(page, folder, PLAN.file);
      await editor.hover(part.line, part.name, part.hover, 'img[src^="data:image/svg+xml"]');
      await shot("hover-drawing");
    },
  },
];
