// Drives the packaged extension in a workbench that runs in a browser alone, with the language server in a worker.
//
//   node test/e2e/web.mjs [--only PART-OF-A-NAME] [--vsix FILE]
//
// Needs dist/sawbuck.vsix (npm run package) and Chromium at /usr/bin/chromium or $CHROMIUM. Pictures go to test/e2e/output/.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { scenarios } from "./steps/web.mjs";
import { close, tellScreen, told, withSecondTry } from "./telling.mjs";
import { startWebWorkbench } from "./web-workbench.mjs";

const { values: options } = parseArgs({
  options: {
    only: { type: "string", default: "" },
    vsix: { type: "string", default: fromRoot("dist/sawbuck.vsix") },
  },
});
/** How long any one thing may take to appear, in milliseconds. */
const PATIENCE = 60_000;
const output = fromRoot("test/e2e/output");

process.exitCode = await main();

async function main() {
  const chosen = scenarios.filter(({ name }) => name.includes(options.only));
  mkdirSync(output, { recursive: true });
  const started = performance.now();
  const results = await withSecondTry(chosen, runAll);
  return close(results, ((performance.now() - started) / 1000).toFixed(1));
}

async function runAll(chosen) {
  const workbench = await startWebWorkbench({ vsix: options.vsix, samples: fromRoot("samples") });
  const stopAndLeave = () => workbench.stop().finally(() => process.exit(130));
  process.once("SIGINT", stopAndLeave).once("SIGTERM", stopAndLeave);
  try {
    const results = [];
    for (const [i, scenario] of chosen.entries()) results.push(await runOne(scenario, i + 1, workbench));
    return results;
  } finally {
    await workbench.stop();
  }
}

/** A window of its own for each: what is written in one is not seen in another. */
async function runOne(scenario, number, { context, url, folder }) {
  const started = performance.now();
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  const shot = (name) => page.screenshot({ path: join(output, `web-${name}.png`) });
  let error;
  try {
    await forget(page, url);
    await page.goto(url);
    await page.locator(".monaco-workbench").waitFor();
    await scenario.run({ page, folder, shot });
  } catch (thrown) {
    error = thrown;
    await shot(`failed-${number}`).catch((reason) => console.log(`no picture: ${reason}`));
  }
  const result = told({ scenario, error, started });
  if (error !== undefined) await tellScreen(page).catch((reason) => console.log(reason));
  await page.close();
  return result;
}

/** The workbench keeps in the browser what was open, which is no business of the next scenario. */
async function forget(page, url) {
  await page.goto(`${url}favicon.ico`);
  await page.evaluate(async () => {
    const all = await indexedDB.databases();
    const gone = ({ name }) =>
      new Promise((resolve) => {
        const request = indexedDB.deleteDatabase(name);
        request.onsuccess = request.onerror = request.onblocked = resolve;
      });
    await Promise.all(all.map(gone));
    localStorage.clear();
  });
}

function fromRoot(path) {
  return fileURLToPath(new URL(`../../${path}`, import.meta.url));
}
