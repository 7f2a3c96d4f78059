// Proves the shop sheet's page in a real browser: every sample's, as its file is opened on a phone, at a desk and on paper.
//
//   node test/e2e/pages.mjs [--all] [--only PART-OF-A-NAME]
//
// --all   every mistake's page too, on a phone; else a few of them, that have what no sample has: problems
//
// A page may load nothing, break no rule of its own content policy, say nothing on the console, run over no side, have no
// letters or boxes too small, lose no tick, break no rule of accessibility (axe-core, WCAG 2.2 A and AA and good practice) and none of
// HTML (html-validate, `test/sheet/html-rules.json`). Pages with faults put into them have to be found out.
//
// Needs dist/cli.js (npm run build) and Chromium at /usr/bin/chromium or $CHROMIUM. In test/e2e/output/ it leaves
// accessibility.txt, validity.txt, looks.txt and ticking.txt, and in pages/ the pages, their pictures, and A4 and Letter as PDF.
import { execFile } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs, promisify } from "node:util";
import { chromium } from "playwright-core";
import { CHROMIUM } from "./chromium.mjs";
import { CROOKED } from "./crooked.mjs";
import { accessibilityOf, looksOf, VIEWS, validityOf, windowsOf } from "./page-proofs.mjs";
import { tickingOf } from "./page-ticks.mjs";

const { values: options } = parseArgs({
  options: { all: { type: "boolean", default: false }, only: { type: "string", default: "" } },
});
/** An error, a hazard, a warning and a hint. */
const MISTAKES = ["unknown-name", "screw-pokes-through", "over-budget", "never-used"];
/** The plan on whose page boxes are ticked. */
const TICKED = "salad-trough";
const output = fromRoot("test/e2e/output");
const folder = join(output, "pages");

process.exitCode = await main();

async function main() {
  const started = performance.now();
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const mistakes = plansIn("samples/mistakes", ["phone"]);
  const few = mistakes.filter(({ name }) => options.all || MISTAKES.includes(name));
  const samples = plansIn("samples", Object.keys(VIEWS));
  const plans = [...samples, ...few].filter(({ name }) => name.includes(options.only));
  await inTurn(plans, writePage);
  const crooked = plans.slice(0, 1).flatMap(crookedPages);
  const browser = await chromium.launch(CHROMIUM);
  try {
    const windows = await windowsOf(browser);
    const overlooked = (await proven(crooked, windows)).flatMap(overlookedIn);
    const ticking = await tickingOf(browser, { file: TICKED, rewrite: rewritten });
    const failed = report(await proven(plans, windows), ticking) + overlooked.length;
    for (const words of overlooked) console.log(`The proof does not see ${words}`);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    console.log(`the pages took ${seconds} s; the reports are in test/e2e/output/`);
    return failed === 0 && plans.length > 0 ? 0 : 1;
  } finally {
    await browser.close();
  }
}

/** Its page, written anew from a changed text, under one name for each who asks. */
async function rewritten(who, change) {
  const own = join(folder, `ticks-${who.replace(/\W+/g, "-")}`);
  mkdirSync(own, { recursive: true });
  const file = join(own, `${TICKED}.sawbuck`);
  writeFileSync(file, change(readFileSync(fromRoot(`samples/${TICKED}.sawbuck`), "utf8")));
  writeFileSync(join(own, "hillside-shop.sawbuck"), readFileSync(fromRoot("samples/hillside-shop.sawbuck")));
  const page = join(own, `${TICKED}.html`);
  await writePage({ file, page });
  return page;
}

/** The plans of a folder, to be looked at in these views. A shop file and a file of measures are no plans. */
function plansIn(where, views) {
  const files = readdirSync(fromRoot(where)).filter((file) => file.endsWith(".sawbuck"));
  return files.flatMap((file) => {
    const path = join(fromRoot(where), file);
    if (where === "samples" && !/^plan /m.test(readFileSync(path, "utf8"))) return [];
    const name = basename(file, ".sawbuck");
    return [{ name, file: path, page: join(folder, `${name}.html`), views }];
  });
}

/** As a builder writes it. A plan with a mistake ends with 1 and is written all the same. */
async function writePage({ file, page }) {
  const words = [fromRoot("dist/cli.js"), "sheet", file, "--format", "html", "--out", page];
  await promisify(execFile)(process.execPath, words).catch((error) => {
    if (error.code !== 1) throw error;
  });
}

function crookedPages(plan) {
  return CROOKED.map(({ name, make, expected }) => {
    const page = join(folder, `${name}.html`);
    writeFileSync(page, make(readFileSync(plan.page, "utf8")));
    return { name, page, views: ["phone"], expected };
  });
}

/** What is proven of each plan's page, all of one plan together: the results by the name of their report. */
async function proven(plans, windows) {
  const jobs = plans.flatMap((plan) => plan.views.map((view) => ({ plan, view: windows[view] })));
  const seen = await inTurn(jobs, async ({ plan, view }) => ({
    plan,
    looks: await looksOf(plan, view),
    // Paper has no keys, no pointer and nothing that is read aloud; its letters are those of the desk.
    accessibility: view.printed ? [] : [await accessibilityOf(plan, view)],
  }));
  const valid = await Promise.all(plans.map(validityOf));
  return plans.map((plan, i) => {
    const own = seen.filter((one) => one.plan === plan);
    const [looks, accessibility] = [own.map((one) => one.looks), own.flatMap((one) => one.accessibility)];
    return { plan, reports: { validity: [valid[i]], looks, accessibility } };
  });
}

/** The faults put into a page that its proof says nothing of. */
function overlookedIn({ plan, reports }) {
  return Object.entries(plan.expected).flatMap(([title, faults]) => {
    const said = reports[title].flatMap(({ wrong }) => wrong);
    const missing = faults.filter((fault) => !said.some((words) => words.includes(fault)));
    return missing.map((fault) => `“${fault}” in ${plan.name}`);
  });
}

/** Writes the reports, prints what is wrong, and tells in how many places. */
function report(plans, ticking) {
  const failed = ["validity", "looks", "accessibility", "ticking"].map((title) => {
    const results = title === "ticking" ? ticking : plans.flatMap(({ reports }) => reports[title]);
    const broken = results.filter(({ wrong }) => wrong.length > 0);
    const sum = `${results.length} looked at, ${broken.length} with a violation`;
    const text = results.map(({ name, wrong, notes }) => {
      const lines = wrong.length === 0 ? ["no violation"] : wrong.map((words) => `VIOLATION ${words}`);
      return [name, ...[...lines, ...notes].map((line) => `  ${line}`)].join("\n");
    });
    writeFileSync(join(output, `${title}.txt`), `${sum}\n\n${text.join("\n\n")}\n`);
    console.log(`${title}: ${sum}`);
    for (const { name, wrong } of broken)
      console.log([`  ${name}`, ...wrong.map((words) => `    ${words}`)].join("\n"));
    return broken.length;
  });
  return failed.reduce((sum, n) => sum + n, 0);
}

/** As many at a time as the machine has processors; the answers in the order of the things. */
async function inTurn(things, work) {
  const answers = new Array(things.length);
  const queue = things.entries();
  const hand = async () => {
    for (const [i, thing] of queue) answers[i] = await work(thing);
  };
  await Promise.all(Array.from({ length: availableParallelism() }, hand));
  return answers;
}

function fromRoot(path) {
  return fileURLToPath(new URL(`../../${path}`, import.meta.url));
}
