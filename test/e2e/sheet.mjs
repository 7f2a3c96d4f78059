// The shop sheet's panel in the scenarios: opening it, finding a row, and measuring what is seen of it.
import { openEditor } from "./editor.mjs";
import { PLAN } from "./plan.mjs";

/** Opens the sample plan and its sheet beside it. */
export async function openSheet(page, folder) {
  const editor = await openEditor(page, folder, PLAN.file);
  await editor.command("Sawbuck: Open Shop Sheet");
  return editor;
}

/** The cut list's row of the part that the measure changes, with this length in it. */
export function row(sheet, length) {
  return sheet.locator("tr").filter({ hasText: PLAN.measure.row }).filter({ hasText: length }).first();
}

/** Some seconds may pass until the workbench has put away what it is to know after a reload. */
export async function reloadWindow(page) {
  await page.waitForTimeout(6000);
  await page.reload();
}

/** Between the lightest and the darkest spot of what is on the screen, by the formula of the web's accessibility guidelines. */
export async function contrastOf(page, locator) {
  const picture = await locator.screenshot();
  return page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const context = new OffscreenCanvas(image.width, image.height).getContext("2d");
    context.drawImage(image, 0, 0);
    const { data } = context.getImageData(0, 0, image.width, image.height);
    const linear = (byte) => (byte <= 10 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4);
    const light = [];
    for (let at = 0; at < data.length; at += 4)
      light.push(0.2126 * linear(data[at]) + 0.7152 * linear(data[at + 1]) + 0.0722 * linear(data[at + 2]));
    const [darkest, lightest] = light.reduce(
      ([low, high], l) => [Math.min(low, l), Math.max(high, l)],
      [1, 0],
    );
    return (lightest + 0.05) / (darkest + 0.05);
  }, picture.toString("base64"));
}
