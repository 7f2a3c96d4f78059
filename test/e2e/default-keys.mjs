// Writes test/e2e/default-keys.json: every key that the pinned workbench binds by itself on Windows, macOS and Linux, as its
// command "Open Default Keyboard Shortcuts (JSON)" lists them to a browser of that system.
//
//   node test/e2e/default-keys.mjs
//
// Needs what run.mjs needs. test/keys.test.ts compares the extension's own keys with the list.
import assert from "node:assert/strict";
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { CHROMIUM } from "./chromium.mjs";
import { startWorkbench } from "./workbench.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const SYSTEMS = {
  windows: { agent: "Windows NT 10.0; Win64; x64", platform: "Win32" },
  macos: { agent: "Macintosh; Intel Mac OS X 10_15_7", platform: "MacIntel" },
  linux: { agent: "X11; Linux x86_64", platform: "Linux x86_64" },
};

const workbench = await startWorkbench({ vsix: `${root}dist/sawbuck.vsix`, samples: `${root}samples` });
const browser = await chromium.launch(CHROMIUM);
try {
  const keys = {};
  for (const [name, system] of Object.entries(SYSTEMS)) keys[name] = await keysOn(system);
  const source = `code-server ${workbench.version}, the workbench in a browser, its own keys and those of the extensions that come with it`;
  writeFileSync(`${root}test/e2e/default-keys.json`, `${JSON.stringify({ source, keys }, null, 1)}\n`);
  for (const [name, own] of Object.entries(keys)) console.log(`${name}: ${own.length} keys`);
} finally {
  await browser.close();
  await workbench.stop();
}

async function keysOn({ agent, platform }) {
  const userAgent = `Mozilla/5.0 (${agent}) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/130.0.0.0 Safari/537.36`;
  const context = await browser.newContext({
    userAgent,
    viewport: { width: 1400, height: 900 },
    permissions: ["clipboard-read", "clipboard-write"],
  });
  await context.addInitScript((value) => {
    Object.defineProperty(navigator, "platform", { get: () => value });
  }, platform);
  const page = await context.newPage();
  await page.goto(workbench.url(workbench.newFolder()));
  await page.locator(".monaco-workbench").waitFor();
  // The extensions that come with the workbench bind theirs at once with this one.
  while (!(await offers(page, "Sawbuck: New Plan From a Sample"))) await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  assert.ok(await offers(page, "Preferences: Open Default Keyboard Shortcuts (JSON)"));
  await page.keyboard.press("Enter");
  await page.locator(".monaco-editor .view-line").filter({ hasText: "command" }).first().waitFor();
  await page.locator(".monaco-editor .view-lines").first().click();
  await page.keyboard.press(platform === "MacIntel" ? "Meta+a" : "Control+a");
  await page.keyboard.press("Control+c"); // Chromium's own, which is that of the system it runs on
  const text = await page.evaluate(() => navigator.clipboard.readText());
  await context.close();
  const bound = [...text.matchAll(/"key": "((?:[^"\\]|\\.)+)",\s+"command": "([^"]+)"/g)];
  const others = bound.filter(([, , command]) => !command.startsWith("sawbuck."));
  return [...new Set(others.map(([, key]) => JSON.parse(`"${key}"`)))].sort();
}

/** Whether the palette, which it opens, has the command. */
async function offers(page, title) {
  await page.keyboard.press("F1");
  await page.locator(".quick-input-widget .quick-input-filter input.input").first().fill(`>${title}`);
  const row = page.locator(".quick-input-list .monaco-list-row").filter({ hasText: title }).first();
  return row.waitFor({ timeout: 3000 }).then(
    () => true,
    () => false,
  );
}
