/** The packed extension: what it holds, how large it is, and what galleries ask of it. Needs dist/, which `npm test` builds first. */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { talkLsp } from "../../.ci/talk-lsp.mjs";
import { filesNeeded, SHIPPED } from "../../client/samples";
import { unzipped } from "./zip";

const ROOT = join(__dirname, "../..");
/** Of the whole package, as it is downloaded. */
const MOST_BYTES = 3_000_000;
/** As vsce and the galleries know them. */
const CATEGORIES = [
  "AI",
  "Azure",
  "Chat",
  "Data Science",
  "Debuggers",
  "Education",
  "Extension Packs",
  "Formatters",
  "Keymaps",
  "Language Packs",
  "Linters",
  "Machine Learning",
  "Notebooks",
  "Other",
  "Programming Languages",
  "SCM Providers",
  "Snippets",
  "Testing",
  "Themes",
  "Visualization",
];

let folder: string;
let out: string;
let size: number;
let files: ReadonlyMap<string, Buffer>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-vsix-"));
  out = join(folder, "sawbuck.vsix");
  pack(out);
  size = statSync(out).size;
  files = await unzipped(out);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Packs as `npm run package` does, of the same day each time. */
function pack(to: string): void {
  const words = [join(ROOT, ".ci/package.mjs"), "--out", to];
  const env = { ...process.env, SOURCE_DATE_EPOCH: "1000000000" };
  const { status, stdout, stderr } = spawnSync(process.execPath, words, {
    cwd: folder,
    env,
    encoding: "utf8",
  });
  expect(status, `${stdout}${stderr}`).toBe(0);
  expect(stderr).not.toContain("WARNING");
}

const bytes = (name: string): Buffer => {
  const found = files.get(`extension/${name}`);
  expect(found, name).toBeDefined();
  return found!;
};
const text = (name: string): string => bytes(name).toString("utf8");
const json = (name: string) => JSON.parse(text(name));
const own = (name: string): string => readFileSync(join(ROOT, name), "utf8");

/** Unpacks one file. */
function lay(name: string): void {
  const file = join(folder, "unpacked", name);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, bytes(name));
}

/** Every string in a value. */
const strings = (value: unknown): readonly string[] =>
  typeof value === "string"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(strings)
      : [];

describe("the packed extension", () => {
  test("is within its budget", () => {
    expect(size).toBeGreaterThan(1_000_000);
    expect(size).toBeLessThanOrEqual(MOST_BYTES);
  });

  test("is the same, byte for byte, when it is packed again", () => {
    pack(join(folder, "again.vsix"));
    expect(readFileSync(join(folder, "again.vsix")).equals(readFileSync(out))).toBe(true);
  });

  test("holds these files and no other", () => {
    expect([...files.keys()].sort().join("\n")).toMatchSnapshot();
  });

  test("holds no sources, tests, packages or source maps", () => {
    const strange = /(^|\/)(test|node_modules|\.ci|\.git)\/|\.(map|tsx?|mjs|mts)$/;
    expect([...files.keys()].filter((name) => strange.test(name))).toEqual([]);
    const mapped = [...files].filter(
      ([name, code]) => name.endsWith(".js") && code.includes("sourceMappingURL"),
    );
    expect(mapped.map(([name]) => name)).toEqual([]);
  });

  test("has the programs as they were built", () => {
    const programs = [...files.keys()].filter((name) => name.endsWith(".js"));
    expect(programs.length).toBe(7);
    for (const name of programs) {
      const inside = name.replace("extension/", "");
      expect(bytes(inside).equals(readFileSync(join(ROOT, inside))), name).toBe(true);
    }
  });

  test("has all that its manifest leads to, in every language", () => {
    const manifest = json("package.json");
    const words = ["package.nls.json", "package.nls.fr.json"].map(json);
    const path = /^(\.\/)?(client|dist|grammar|samples|server)\//;
    const leads = [manifest, ...words].flatMap(strings).filter((one) => path.test(one));
    // The programs, words, icons of files, how the language looks and is typed, a picture for each step in each language.
    expect(leads.length).toBe(8 + 2 * 6);
    for (const one of leads) {
      const inside = one.replace(/^\.\//, "");
      expect(
        [...files.keys()].some((name) => `${name}/`.startsWith(`extension/${inside}/`)),
        one,
      ).toBe(true);
    }
    expect([manifest.main, manifest.browser].every((one) => leads.includes(one))).toBe(true);
  });

  test("has the samples and practice plans that its commands open, with all they need", () => {
    const samples = [...files.keys()].filter((name) => name.startsWith("extension/samples/"));
    expect(samples.sort()).toEqual(SHIPPED.map((name) => `extension/samples/${name}`).sort());
    for (const name of SHIPPED)
      for (const needed of filesNeeded(text(`samples/${name}`))) expect(SHIPPED).toContain(needed);
    for (const ending of ["", ".fr"])
      expect(text(`client/practice/boot-rack${ending}.sawbuck`)).toMatch(/^plan /m);
  });

  test("says nothing in its manifest that is for npm alone, and all else as package.json does", () => {
    const { bin, devDependencies, files: packed, scripts, ...rest } = JSON.parse(own("package.json"));
    expect([bin, devDependencies, packed, scripts].every(Boolean)).toBe(true);
    expect(json("package.json")).toEqual(rest);
  });
});

describe("the packed language server, with nothing beside it but the package", () => {
  test("finds the problems of a sample, and writes its sheet as PDF with the fonts that are there", async () => {
    const fonts = ["dist/fonts/DejaVuSans.ttf", "dist/fonts/DejaVuSans-Bold.ttf"];
    const plans = SHIPPED.map((name) => `samples/${name}`);
    for (const name of ["dist/server.js", "dist/layouts.js", "dist/pdf.js", ...fonts, ...plans]) lay(name);
    const uri = pathToFileURL(join(folder, "unpacked/samples/cold-frame.sawbuck")).href;
    const { said, status } = await talkLsp(
      [process.execPath, join(folder, "unpacked/dist/server.js"), "--stdio"],
      {
        cwd: folder,
        uri,
        text: text("samples/cold-frame.sawbuck"),
        ask: { method: "sawbuck/sheetFile", params: { uri, format: "pdf A4" } },
      },
    );
    expect(status).toBe(0);
    const heard = said.filter(({ from }) => from === "server").map(({ message }) => message);
    const told = heard.find(({ method }) => method === "textDocument/publishDiagnostics")!.params;
    expect(told).toMatchObject({ diagnostics: [] });
    const { base64 } = heard.find(({ id }) => id === 2)!.result as { base64: string };
    expect(Buffer.from(base64, "base64").subarray(0, 5).toString()).toBe("%PDF-");
  });
});

describe("what galleries ask for", () => {
  test("a name, a version, a publisher, a licence, and what it is, in a sentence", () => {
    const { name, version, publisher, displayName, description, license } = json("package.json");
    expect([name, publisher].filter((one) => !/^[a-z0-9][a-z0-9-]*$/.test(one))).toEqual([]);
    expect(version).toMatch(/^\d+\.\d+\.\d+$/);
    expect(displayName).toBe("Sawbuck");
    expect(license).toBe("MIT");
    expect(description).toBe("%description%");
    for (const file of ["package.nls.json", "package.nls.fr.json"])
      expect(json(file).description).toMatch(/^\S.{40,200}\.$/);
    expect(text("LICENSE.txt")).toBe(own("LICENSE"));
    expect(text("dist/NOTICES.txt")).toContain("chevrotain");
  });

  test("categories that there are, at most 30 keywords, its price, and that it is a preview before 1.0", () => {
    const { categories, keywords, pricing, preview, version, galleryBanner } = json("package.json");
    expect(categories.length).toBeGreaterThan(0);
    expect(categories.filter((one: string) => !CATEGORIES.includes(one))).toEqual([]);
    expect(keywords.length).toBeLessThanOrEqual(30);
    expect(new Set(keywords).size).toBe(keywords.length);
    expect(pricing).toBe("Free");
    expect(preview ?? false).toBe(version.startsWith("0."));
    expect(galleryBanner.color).toMatch(/^#[0-9a-f]{6}$/);
    expect(["dark", "light"]).toContain(galleryBanner.theme);
  });

  test("an icon: a square PNG of 128 pixels or more", () => {
    const icon = bytes(json("package.json").icon);
    expect(icon.subarray(0, 8).toString("latin1")).toBe("\x89PNG\r\n\x1a\n");
    const [width, height] = [icon.readUInt32BE(16), icon.readUInt32BE(20)];
    expect(width).toBe(height);
    expect(width).toBeGreaterThanOrEqual(128);
  });

  test("a text, what changed, a licence and an icon, which the package's own list names", () => {
    const list = files.get("extension.vsixmanifest")!.toString("utf8");
    const assets = [...list.matchAll(/<Asset Type="([^"]+)" Path="([^"]+)"/g)].map(([, type, path]) => [
      type!.split(".").pop(),
      path,
    ]);
    expect(Object.fromEntries(assets)).toMatchObject({
      Manifest: "extension/package.json",
      Details: "extension/readme.md",
      Changelog: "extension/changelog.md",
      License: "extension/LICENSE.txt",
      Default: "extension/client/media/icon.png",
    });
    expect(assets.filter(([, path]) => !files.has(path!))).toEqual([]);
    expect(list).toContain("<GalleryFlags>Public Preview</GalleryFlags>");
  });

  test("texts without pictures or links that lead nowhere: without a repository there are none", () => {
    expect("repository" in json("package.json")).toBe(false);
    for (const name of ["readme.md", "changelog.md"]) {
      expect(text(name)).toMatch(/^# \S/);
      expect([...text(name).matchAll(/\]\(([^)]+)\)|src=/g)].map(([link]) => link)).toEqual([]);
    }
    expect(text("changelog.md")).toBe(own("client/CHANGELOG.md"));
    expect(text("changelog.md")).toContain(`\n## ${json("package.json").version} `);
  });
});
