// The workbench that runs in a browser alone: no extension of it has a process or a disk. Its pages come from a server that
// also gives the files of one folder; what is written to them stays in the page.
import { execFileSync, spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { CHROMIUM } from "./chromium.mjs";
import { answers, end, freePort, kill } from "./processes.mjs";
import { unpack } from "./unpack.mjs";

/** Gives `{ url, folder, context, stop }`; `context` is a browser's. */
export async function startWebWorkbench({ vsix, samples }) {
  const installed = execFileSync(fileURLToPath(new URL("setup-web.sh", import.meta.url)), {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  }).trim();
  const home = mkdtempSync(join(tmpdir(), "sawbuck-web-"));
  const [extension, folder] = [join(home, "extension"), join(home, "yard")];
  let server;
  let context;

  const stop = async () => {
    await context?.close();
    if (server !== undefined) await end(server);
    rmSync(home, { recursive: true, force: true, maxRetries: 20, retryDelay: 250 });
  };

  try {
    unpack(vsix, extension);
    cpSync(samples, folder, { recursive: true });
    const port = await freePort();
    const commit = readFileSync(join(installed, "ready"), "utf8").trim();
    const pages = [
      "--quality",
      "stable",
      "--commit",
      commit,
      "--testRunnerDataDir",
      join(installed, "pages"),
    ];
    const served = ["--browser", "none", "--host", "127.0.0.1", "--port", String(port)];
    server = spawn(
      process.execPath,
      [
        join(installed, "node_modules/@vscode/test-web/out/server/index.js"),
        ...pages,
        ...served,
        "--extensionDevelopmentPath",
        extension,
        folder,
      ],
      { stdio: "ignore", detached: true },
    );
    process.once("exit", () => kill(server, "SIGKILL")); // nothing goes on running when a run breaks down
    await answers(`http://127.0.0.1:${port}/`, server);
    context = await browserContext(join(home, "profile"));
    // Pages inside of pages have names below this one.
    return { url: `http://localhost:${port}/`, folder, context, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

/** The sheet's page needs a service worker of another origin, which a browser takes for a foreign cookie. */
function browserContext(profile) {
  mkdirSync(join(profile, "Default"), { recursive: true });
  const preferences = { profile: { cookie_controls_mode: 0, block_third_party_cookies: false } };
  writeFileSync(join(profile, "Default", "Preferences"), JSON.stringify(preferences));
  return chromium.launchPersistentContext(profile, {
    ...CHROMIUM,
    viewport: { width: 1400, height: 900 },
  });
}
