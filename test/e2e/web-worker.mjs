// Holds a browser's worker to the same layouts, byte for byte, as Node's, and the language server in one to the same
// problems of all samples and mistakes.
//
//   node test/e2e/web-worker.mjs
//
// Needs dist/layouts.js and dist/server.js (npm run build) and Chromium at /usr/bin/chromium or $CHROMIUM.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { chromium } from "playwright-core";
import { CHROMIUM } from "./chromium.mjs";
import { inNode, inWorker, samples } from "./server-anywhere.mjs";

const ORIGIN = "http://sawbuck.invalid";
const options = { entryPoints: [fromRoot("test/e2e/layouts-anywhere.ts")], bundle: true, write: false };

process.exitCode = await main();

async function main() {
  const module = await bundled({ platform: "node", format: "esm" });
  const { atOnce } = await import(`data:text/javascript;base64,${Buffer.from(module).toString("base64")}`);
  const program = (name) => ["text/javascript", readFileSync(fromRoot(`dist/${name}`), "utf8")];
  const files = {
    "/": ["text/html", "<!doctype html><title>layouts</title><script src=page.js></script>"],
    "/page.js": [
      "text/javascript",
      await bundled({ platform: "browser", format: "iife", globalName: "layouts" }),
    ],
    "/layouts.js": program("layouts.js"),
    "/server.js": program("server.js"),
  };
  const failed = await inBrowser(files, async (page) => {
    const ends = await page.evaluate(() => layouts.inPage("layouts.js"));
    return sameLayouts(ends, atOnce()) + (await sameProblems(page, files["/layouts.js"][1]));
  });
  return failed === 0 ? 0 : 1;
}

/** How many jobs do not end as in Node. */
function sameLayouts(page, node) {
  let failed = 0;
  for (const [where, ends] of Object.entries(page)) {
    const other = ends.filter((end, i) => end !== node[i]).length;
    console.log(`${ends.length} jobs in the page (${where}): ${other} end otherwise than in Node`);
    failed += other + Math.abs(ends.length - node.length);
  }
  return failed;
}

/** How many plans have other problems than in Node; the files they name must have been read through the page. */
async function sameProblems(page, layouts) {
  const all = samples();
  const node = await inNode(fromRoot("dist/server.js"), all);
  const worker = await inWorker(page, "server.js", all, layouts);
  const other = all.plans.filter((name) => String(node.shown[name]) !== String(worker.shown[name]));
  for (const name of other)
    console.log(`${name}\n  Node    ${node.shown[name]}\n  worker  ${worker.shown[name]}`);
  console.log(
    `${all.plans.length} plans in the server's worker, ${worker.read} files read for it: ${other.length} have other problems than in Node`,
  );
  return other.length + (worker.read > 0 ? 0 : 1);
}

async function bundled(how) {
  const { outputFiles } = await build({ ...options, ...how });
  return outputFiles[0].text;
}

/** What `work` gives with a page that has these files, and nothing else of the network. */
async function inBrowser(files, work) {
  const browser = await chromium.launch(CHROMIUM);
  try {
    const page = await browser.newPage();
    await page.route("**/*", (route) => {
      const [contentType, body] = files[new URL(route.request().url()).pathname] ?? [];
      return body === undefined ? route.abort() : route.fulfill({ contentType, body });
    });
    await page.goto(`${ORIGIN}/`);
    return await work(page);
  } finally {
    await browser.close();
  }
}

function fromRoot(path) {
  return fileURLToPath(new URL(`../../${path}`, import.meta.url));
}
