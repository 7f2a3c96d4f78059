// What is proven of one page, each as `{ name, wrong, notes }`: that it is valid, that it keeps to itself and looks as it must,
// and that everyone can use it.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath, pathToFileURL } from "node:url";
import { HtmlValidate, StaticConfigLoader } from "html-validate";
import { wrongLooks } from "./looks.mjs";

/** Paper is as wide as A4 is between its margins of 15 mm. */
export const VIEWS = {
  phone: {
    context: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true },
    touched: true,
  },
  desk: { context: { viewport: { width: 1280, height: 900 } } },
  paper: { context: { viewport: { width: 680, height: 962 } }, printed: true },
};
const PAPERS = ["A4", "Letter"];
const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const RULES = JSON.parse(
  readFileSync(fileURLToPath(new URL("../sheet/html-rules.json", import.meta.url)), "utf8"),
);

/** By html-validate. */
export async function validityOf({ name, page }) {
  const rules = Object.fromEntries(RULES.changed.map(({ rule, setting }) => [rule, setting]));
  const validator = new HtmlValidate(new StaticConfigLoader({ root: true, extends: RULES.extends, rules }));
  const { results } = await validator.validateString(readFileSync(page, "utf8"));
  const config = await validator.getConfigFor(page);
  const said = results.flatMap(({ messages }) => messages);
  const broken = new Set(said.map(({ ruleId }) => ruleId));
  const asked = [...config.getRules()].filter(([, [severity]]) => severity > 0).map(([rule]) => rule);
  return {
    name,
    wrong: said.map((m) => `${m.ruleId}, ${m.line}:${m.column}: ${m.message} (${m.selector ?? "the page"})`),
    notes: [passed(asked.filter((rule) => !broken.has(rule)))],
  };
}

/**
 * Two windows for each view: one as a reader has it, where the page's own policy holds and every break of it is told, and
 * one without, since the policy would not let axe-core in.
 */
export async function windowsOf(browser) {
  const open = async ([name, { context, ...kind }]) => {
    const own = await browser.newContext(context);
    await own.exposeBinding("refusedByPolicy", ({ page }, words) => page.emit("refused", words));
    await own.addInitScript(() => {
      document.addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI, lineNumber }) =>
        window.refusedByPolicy(`${effectiveDirective} ${blockedURI} (line ${lineNumber})`),
      );
    });
    return [name, { ...kind, name, own, free: await browser.newContext({ ...context, bypassCSP: true }) }];
  };
  return Object.fromEntries(await Promise.all(Object.entries(VIEWS).map(open)));
}

/** The page under its own policy: whatever it says, loads or is refused is wrong, and so is what looks wrong. */
export async function looksOf(plan, view) {
  const page = await view.own.newPage();
  const wrong = [];
  const notes = [];
  const address = pathToFileURL(plan.page).href;
  page.on("console", (said) => wrong.push(`the console says (${said.type()}): ${said.text()}`));
  page.on("pageerror", (error) => wrong.push(`a script breaks: ${error.message}`));
  page.on("refused", (words) => wrong.push(`the policy refuses ${words}`));
  page.on("request", (request) => {
    if (request.url() !== address) wrong.push(`asks for ${request.url().slice(0, 200)}`);
  });
  await page.emulateMedia({ media: view.printed ? "print" : "screen" });
  await page.goto(address);
  wrong.push(...(await wrongLooks(page, view)));
  if (view.printed) for (const format of PAPERS) notes.push(await printed(page, plan, format));
  else await pictured(page, plan, view);
  await page.close();
  return { name: `${plan.name}, ${view.name}`, wrong, notes };
}

/** A picture that hides the cursor or stops what moves would put a style into the page. */
function pictured(page, plan, { name }) {
  const path = beside(plan, `-${name}.png`);
  return page.screenshot({ path, fullPage: true, caret: "initial", animations: "allow" });
}

async function printed(page, plan, format) {
  const bytes = await page.pdf({ path: beside(plan, `-${format.toLowerCase()}.pdf`), format });
  return `${format}: ${bytes.toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0} pages`;
}

/** `salad-trough-phone.png`, beside `salad-trough.html`. */
const beside = ({ page }, ending) => page.replace(/\.html$/, ending);

/** By axe-core. What it cannot decide is told too, with its reason, and is no violation. */
export async function accessibilityOf(plan, view) {
  const page = await view.free.newPage();
  await page.emulateMedia({ media: view.printed ? "print" : "screen" });
  await page.goto(pathToFileURL(plan.page).href);
  await page.evaluate(AXE);
  const { violations, incomplete, passes } = await page.evaluate(
    (options) => window.axe.run(document, options),
    {
      runOnly: { type: "tag", values: TAGS },
      resultTypes: ["violations", "incomplete"],
      // Nobody puts a finger on paper: a box there is as large as a pencil's tick.
      rules: { "target-size": { enabled: !view.printed } },
    },
  );
  await page.close();
  const told = ({ id, help, nodes: [first, ...more] }) => {
    const why = [...first.any, ...first.all, ...first.none].map(({ message }) => message).join("; ");
    return `${id}: ${help} (${why}): ${more.length + 1} places, first ${first.target.join(" ")}`;
  };
  return {
    name: `${plan.name}, ${view.name}`,
    wrong: violations.map(told),
    notes: [...incomplete.map((one) => `undecided, ${told(one)}`), passed(passes.map(({ id }) => id))],
  };
}

function passed(rules) {
  return `${rules.length} rules passed: ${rules.sort().join(", ")}`;
}
