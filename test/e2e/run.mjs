// Drives the packaged extension in a real workbench in a real browser.
//
//   node test/e2e/run.mjs [--broken-server] [--expect-failure] [--only PART-OF-A-NAME] [--times N] [--vsix FILE]
//
// --broken-server   the language server ends as soon as it starts: every scenario that needs it has to fail
// --expect-failure  turns the outcome round: succeeds only if each of those scenarios fails, and no other one; runs those that
//                   need no server, and one of every third kind that does
// --times N         tries all that is chosen N times, each time in a new workbench, and nothing once more that failed
//
// Needs dist/sawbuck.vsix (npm run package) and Chromium at /usr/bin/chromium or $CHROMIUM. Pictures go to test/e2e/output/.
import { mkdirSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { chromium } from "playwright-core";
import { CHROMIUM } from "./chromium.mjs";
import { scenarios as colours } from "./steps/colours.mjs";
import { scenarios as commands } from "./steps/commands.mjs";
import { scenarios as completing } from "./steps/completing.mjs";
import { scenarios as editing } from "./steps/editing.mjs";
import { scenarios as fixes } from "./steps/fixes.mjs";
import { scenarios as french } from "./steps/french.mjs";
import { scenarios as hints } from "./steps/hints.mjs";
import { scenarios as layouts } from "./steps/layouts.mjs";
import { scenarios as naming } from "./steps/naming.mjs";
import { scenarios as preview } from "./steps/preview.mjs";
import { scenarios as shared } from "./steps/shared.mjs";
import { scenarios as sheet } from "./steps/sheet.mjs";
import { scenarios as text } from "./steps/text.mjs";
import { scenarios as welcome } from "./steps/welcome.mjs";
import { close, indented, tellScreen, told, withSecondTry } from "./telling.mjs";
import { startWorkbench } from "./workbench.mjs";

const { values: options } = parseArgs({
  options: {
    "broken-server": { type: "boolean", default: false },
    "expect-failure": { type: "boolean", default: false },
    only: { type: "string", default: "" },
    times: { type: "string", default: "1" },
    vsix: { type: "string", default: fromRoot("dist/sawbuck.vsix") },
  },
});
const LISTS = [
  text,
  completing,
  fixes,
  naming,
  editing,
  hints,
  colours,
  sheet,
  preview,
  commands,
  shared,
  layouts,
  welcome,
  french,
];
const expectFailure = options["expect-failure"];
const times = Number(options.times);
/** How long any one thing may take to appear, in milliseconds: on a busy machine the extension takes a while to start. */
const PATIENCE = 60_000;
/** The same for a scenario that is to fail, which waits it out once. */
const SHORT_PATIENCE = 6_000;
/** Windows at a time: where most of them only wait for what does not come, two. */
const WINDOWS = expectFailure ? 2 : 1;
const output = fromRoot("test/e2e/output");

process.exitCode = await main();

async function main() {
  const chosen = LISTS.flatMap(expectFailure ? few : all).filter(({ name }) => name.includes(options.only));
  mkdirSync(output, { recursive: true });
  if (!expectFailure) clearPictures();
  const started = performance.now();
  const results = [];
  if (times === 1 && !expectFailure) results.push(...(await withSecondTry(chosen, runAll)));
  else for (let i = 0; i < times; i++) results.push(...(await runAll(chosen)));
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  return expectFailure ? closeExpectingFailure(results, seconds) : close(results, seconds);
}

function all(scenarios) {
  return scenarios;
}

/** What needs no server, and of the rest one of every third kind: all of them would only wait for the same. */
function few(scenarios, kind) {
  const alone = scenarios.filter(({ needsServer }) => needsServer === false);
  const others = scenarios.filter((one) => !alone.includes(one));
  return [...alone, ...others.slice(0, kind % 3 === 0 ? 1 : 0)];
}

/** Those of an earlier run: what else stands there is for others to clear away. */
function clearPictures() {
  for (const name of readdirSync(output)) if (name.endsWith(".png")) rmSync(join(output, name));
}

async function runAll(chosen) {
  const workbench = await startWorkbench({
    vsix: options.vsix,
    samples: fromRoot("samples"),
    brokenServer: options["broken-server"],
  });
  const stopAndLeave = () => workbench.stop().finally(() => process.exit(130));
  process.once("SIGINT", stopAndLeave).once("SIGTERM", stopAndLeave);
  // One profile for all that speak a language: what the workbench's many files are compiled to is kept in it.
  const contexts = new Map();
  const contextFor = ({ locale = "en-US" }) => {
    const kept = contexts.get(locale);
    if (kept !== undefined) return kept;
    const made = chromium.launchPersistentContext("", {
      ...CHROMIUM,
      viewport: { width: 1400, height: 900 },
      locale,
    });
    contexts.set(locale, made);
    return made;
  };
  try {
    const results = new Array(chosen.length);
    const left = [...chosen.entries()];
    const inOneWindow = async () => {
      for (let next = left.shift(); next; next = left.shift())
        results[next[0]] = await runOne(next[1], next[0] + 1, workbench, await contextFor(next[1]));
    };
    await Promise.all(Array.from({ length: WINDOWS }, inOneWindow));
    return results;
  } finally {
    await Promise.allSettled([...contexts.values()].map(async (made) => (await made).close()));
    await workbench.stop();
  }
}

/** A folder, a window and an extension host of its own for each scenario. */
async function runOne(scenario, number, workbench, context) {
  const started = performance.now();
  const folder = workbench.newFolder();
  const page = await context.newPage();
  const patience = expectFailure && scenario.needsServer !== false ? SHORT_PATIENCE : PATIENCE;
  page.setDefaultTimeout(patience);
  const shot = (name) => (expectFailure ? undefined : page.screenshot({ path: join(output, `${name}.png`) }));
  let error;
  try {
    scenario.prepare?.(folder);
    await page.goto(workbench.url(folder), { timeout: PATIENCE });
    await page.locator(".monaco-workbench").waitFor({ timeout: PATIENCE });
    await scenario.run({ page, folder, shot, patience, servers: workbench.servers });
  } catch (thrown) {
    error = thrown;
    await shot(`failed-${number}`)?.catch((reason) => console.log(`no picture: ${reason}`));
  }
  const result = told({ scenario, error, started, expected: expectFailure });
  if (error !== undefined && !expectFailure) await tellScreen(page).catch((reason) => console.log(reason));
  await page.close();
  return result;
}

function closeExpectingFailure(results, seconds) {
  const asItMust = ({ scenario, error }) => (error !== undefined) === (scenario.needsServer !== false);
  const wrong = results.filter((result) => !asItMust(result));
  for (const { scenario, error } of wrong) {
    console.log(
      `${error === undefined ? "held, though it needs the server" : "failed, though it needs no server"}: ${scenario.name}`,
    );
    if (error !== undefined) console.log(indented(error));
  }
  const failed = results.filter(({ error }) => error !== undefined).length;
  if (wrong.length > 0 || failed === 0) {
    console.log(`The run did not fail as it must (${seconds} s).`);
    return 1;
  }
  console.log(
    `The run failed, as it must: the ${failed} scenarios that need the server, and no other (${seconds} s).`,
  );
  return 0;
}

function fromRoot(path) {
  return fileURLToPath(new URL(`../../${path}`, import.meta.url));
}
