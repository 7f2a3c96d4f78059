// Takes the pictures of README.md and of the page in a gallery: client/media/editor.png and problem.png.
//
//   node test/e2e/gallery-pictures.mjs
//
// Needs what run.mjs needs. Look at them before you keep them.
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { CHROMIUM } from "./chromium.mjs";
import { openEditor, sheetOf } from "./editor.mjs";
import { PLAN } from "./plan.mjs";
import { startWorkbench } from "./workbench.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));

const workbench = await startWorkbench({ vsix: `${root}dist/sawbuck.vsix`, samples: `${root}samples` });
const browser = await chromium.launch(CHROMIUM);
try {
  const editor = await opened(1280, 800);
  // These two stay so in the windows to come.
  await editor.command("View: Toggle Minimap");
  await editor.command("View: Toggle Editor Sticky Scroll");
  await planBesideSheet(editor);
  await problemWithCures(await opened(1280, 720));
} finally {
  await browser.close();
  await workbench.stop();
}

/** The sample plan in a window of that size, with nothing beside its text. */
async function opened(width, height) {
  const page = await browser.newPage({ viewport: { width, height } });
  page.setDefaultTimeout(60_000);
  const folder = workbench.newFolder();
  await page.goto(workbench.url(folder));
  const editor = await openEditor(page, folder, PLAN.file);
  await editor.command("View: Toggle Primary Side Bar Visibility");
  return editor;
}

/** The line that places the legs, and the legs marked in the first drawing. */
async function planBesideSheet(editor) {
  const { page } = editor;
  await editor.command("Sawbuck: Open Shop Sheet");
  await sheetOf(page).locator(".drawings svg").first().waitFor();
  await page.keyboard.press("Control+1");
  await editor.placeCursor("place leg", "place");
  await sheetOf(page).locator(".drawings .marked").first().waitFor();
  await sheetOf(page)
    .locator(".drawings svg")
    .first()
    .evaluate((drawing) => drawing.scrollIntoView({ block: "start" }));
  await atRest(page);
  await taken(page, "editor");
}

/** A screw that comes out of the far side: what is told of it, and what would mend it. */
async function problemWithCures(editor) {
  const { page } = editor;
  const { screw } = PLAN;
  await editor.replace(screw);
  await editor.openProblems();
  await editor.problem(screw.code).waitFor();
  await atRest(page);
  await editor.hover(screw.line.slice(0, 20), screw.hoverOn, screw.message);
  await page.locator(editor.on.hover).filter({ hasText: screw.message }).first().waitFor();
  await taken(page, "problem");
}

/** Nothing tells when the last thing on the screen has moved. */
function atRest(page) {
  return page.waitForTimeout(4000);
}

async function taken(page, name) {
  await page.screenshot({ path: `${root}client/media/${name}.png` });
  console.log(`client/media/${name}.png`);
}
