/** The package of the command line: what it holds, and that it runs where nothing else is, without a network. */
import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { talkLsp } from "../../.ci/talk-lsp.mjs";
import manifest from "../../package.json";

const ROOT = join(__dirname, "../..");
/** Of the whole package, as it is downloaded. */
const MOST_BYTES = 3_000_000;
const BAD = 'prat leg 4 of 2x4, length 9"\n';

let folder: string;
let tarball: string;
let home: string;
let env: NodeJS.ProcessEnv;

/** Below an empty home, where nothing is kept that npm could take from; a package that is asked for is not to be had. */
const npm = (program: "npm" | "npx", args: readonly string[], cwd: string) =>
  spawnSync(program, args, { cwd, env, encoding: "utf8", timeout: 120_000 });
const sawbuck = (...args: readonly string[]) => npm("npx", ["--no-install", "sawbuck", ...args], home);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-npm-"));
  const settings = {
    npm_config_cache: join(folder, "cache"),
    npm_config_userconfig: join(folder, "npmrc"),
    npm_config_offline: "true",
    npm_config_registry: "http://127.0.0.1:9/",
    npm_config_update_notifier: "false",
  };
  const kept = Object.entries(process.env).filter(([key]) => !/^npm_|^NODE_/i.test(key));
  env = { ...Object.fromEntries(kept), ...settings, HOME: folder };
  // What it builds first is built: other tests are reading it.
  const packed = npm("npm", ["pack", "--ignore-scripts", "--pack-destination", folder], ROOT);
  expect(packed.status, packed.stderr).toBe(0);
  tarball = join(folder, packed.stdout.trim());
  home = join(folder, "empty");
  mkdirSync(home);
  const args = ["install", "--offline", "--no-audit", "--no-fund", "--ignore-scripts", tarball];
  const installed = npm("npm", args, home);
  expect(installed.status, installed.stderr).toBe(0);
  cpSync(join(home, "node_modules/sawbuck/samples"), join(home, "samples"), { recursive: true });
}, 240_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the npm package", () => {
  test("is within its budget", () => {
    expect(statSync(tarball).size).toBeGreaterThan(1_000_000);
    expect(statSync(tarball).size).toBeLessThanOrEqual(MOST_BYTES);
  });

  test("holds these files and no other, and a page for each problem, and its plan", () => {
    const names = namesIn(gunzipSync(readFileSync(tarball))).map((name) => name.replace(/^package\//, ""));
    const pages = names.filter((name) => /^dist\/pages\/[a-z-]+\.md$/.test(name));
    expect(pages.sort()).toEqual(
      readdirSync(join(ROOT, "dist/pages"))
        .map((name) => `dist/pages/${name}`)
        .sort(),
    );
    const mistakes = names.filter((name) => name.startsWith("samples/mistakes/"));
    const own = readdirSync(join(ROOT, "samples/mistakes"), { recursive: true, withFileTypes: true });
    expect(mistakes.length).toBe(own.filter((entry) => entry.isFile()).length);
    expect(
      names
        .filter((n) => !pages.includes(n) && !mistakes.includes(n))
        .sort()
        .join("\n"),
    ).toMatchSnapshot();
  });

  test("needs no other package, and nothing is run when it is installed", () => {
    expect(Object.keys(manifest)).not.toContain("dependencies");
    const lock = JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8"));
    const { dependencies, devDependencies, version } = lock.packages[""];
    expect([dependencies, devDependencies, version]).toEqual([
      undefined,
      manifest.devDependencies,
      manifest.version,
    ]);
    expect(readdirSync(join(home, "node_modules")).filter((name) => !name.startsWith("."))).toEqual([
      "sawbuck",
    ]);
    expect(
      Object.keys(manifest.scripts).filter((name) => /^(pre|post)?install$|^prepare$/.test(name)),
    ).toEqual([]);
    const notices = readFileSync(join(home, "node_modules/sawbuck/dist/NOTICES.txt"), "utf8");
    for (const name of ["chevrotain 11", "vscode-languageserver 11", "pdfkit 0"])
      expect(notices).toContain(`\n${name}`.trimStart());
  });
});

describe("in an empty folder, without a network", () => {
  test("sawbuck check", () => {
    const { status, stdout, stderr } = sawbuck(
      "check",
      "samples/salad-trough.sawbuck",
      "samples/cold-frame.sawbuck",
    );
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("samples/salad-trough.sawbuck: no problem that Sawbuck can name was found");
    const mistakes = sawbuck("check", "samples", "--format", "github");
    expect(mistakes.status).toBe(1);
    expect(mistakes.stdout).toContain("::error ");
  });

  test("sawbuck --version", () => {
    expect(sawbuck("--version")).toMatchObject({ status: 0, stdout: `${manifest.version}\n`, stderr: "" });
  });

  test("sawbuck sheet, as text and as PDF with its fonts", () => {
    const { status, stdout, stderr } = sawbuck("sheet", "samples/cold-frame.sawbuck", "--effort", "0");
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("high-board");
    const written = sawbuck("sheet", "samples/cold-frame.sawbuck", "--effort", "0", "--out", "sheet.pdf");
    expect([written.status, written.stderr]).toEqual([0, "The shop sheet is in sheet.pdf\n"]);
    expect(readFileSync(join(home, "sheet.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  });

  test("sawbuck lsp, which finds a plan's problems, links to their pages, and ends", async () => {
    const uri = pathToFileURL(join(home, "bad.sawbuck")).href;
    const command = ["npx", "--no-install", "sawbuck", "lsp", "--stdio"];
    const { said, status } = await talkLsp(command, { cwd: home, env, uri, text: BAD });
    expect(status).toBe(0);
    const heard = said.filter(({ from }) => from === "server").map(({ message }) => message);
    expect(heard.find(({ id }) => id === 1)!.result).toMatchObject({
      capabilities: { hoverProvider: true },
      serverInfo: { name: "sawbuck", version: manifest.version },
    });
    const told = heard.find(({ method }) => method === "textDocument/publishDiagnostics")!.params as {
      diagnostics: { code: string; codeDescription: { href: string } }[];
    };
    expect(told.diagnostics.map(({ code }) => code)).toEqual(["unknown-entry"]);
    const page = new URL(told.diagnostics[0]!.codeDescription.href);
    expect(page.pathname).toMatch(/\/empty\/node_modules\/sawbuck\/dist\/pages\/unknown-entry\.md$/);
    expect(existsSync(page)).toBe(true);
  });
});

/** The names of the files of a tar file. */
function namesIn(tar: Buffer): string[] {
  const names: string[] = [];
  const field = (at: number, size: number): string => tar.toString("utf8", at, at + size).split("\0")[0]!;
  for (let at = 0; at < tar.length && tar[at] !== 0; ) {
    names.push(field(at, 100));
    at += 512 + Math.ceil(Number.parseInt(field(at + 124, 12), 8) / 512) * 512;
  }
  return names;
}
