// Holds a browser's worker to the same layouts, byte for byte, as Node's.
//
//   node test/e2e/web-worker.mjs
//
// Needs dist/layouts-web.js (npm run build) and Chromium at /usr/bin/chromium or $CHROMIUM.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { chromium } from "playwright-core";

const ORIGIN = "http://sawbuck.invalid";
const options = { entryPoints: [fromRoot("test/e2e/layouts-anywhere.ts")], bundle: true, write: false };

process.exitCode = await main();

async function main() {
  const module = await bundled({ platform: "node", format: "esm" });
  const { atOnce } = await import(`data:text/javascript;base64,${Buffer.from(module).toString("base64")}`);
  const node = atOnce();
  const page = await inBrowser({
    "/": ["text/html", "<!doctype html><title>layouts</title><script src=page.js></script>"],
    "/page.js": [
      "text/javascript",
      await bundled({ platform: "browser", format: "iife", globalName: "layouts" }),
    ],
    "/layouts-web.js": ["text/javascript", readFileSync(fromRoot("dist/layouts-web.js"), "utf8")],
  });
  let failed = 0;
  for (const [where, ends] of Object.entries(page)) {
    const other = ends.filter((end, i) => end !== node[i]).length;
    console.log(`${ends.length} jobs in the page (${where}): ${other} end otherwise than in Node`);
    failed += other + Math.abs(ends.length - node.length);
  }
  return failed === 0 ? 0 : 1;
}

async function bundled(how) {
  const { outputFiles } = await build({ ...options, ...how });
  return outputFiles[0].text;
}

/** What the page gives that has these files, and nothing else of the network. */
async function inBrowser(files) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--disable-background-networking"],
  });
  try {
    const page = await browser.newPage();
    await page.route("**/*", (route) => {
      const [contentType, body] = files[new URL(route.request().url()).pathname] ?? [];
      return body === undefined ? route.abort() : route.fulfill({ contentType, body });
    });
    await page.goto(`${ORIGIN}/`);
    return await page.evaluate(() => layouts.inPage("layouts-web.js"));
  } finally {
    await browser.close();
  }
}

function fromRoot(path) {
  return fileURLToPath(new URL(`../../${path}`, import.meta.url));
}
