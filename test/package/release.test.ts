/** The script that makes a release, in a repository of its own. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { newestIn, renamed } from "../../.ci/release.mjs";
import { version } from "../../package.json";
import { cloned, committed, gitIn } from "./clone";
import { unzipped } from "./zip";

const [MAJOR, MINOR] = version.split(".").map(Number) as [number, number];
const NEXT = `${MAJOR}.${MINOR + 1}.0`;
const CHANGES = "client/CHANGELOG.md";
const NAMING = ["package.json", "package-lock.json", "README.md"] as const;

let clone: string;
beforeAll(() => {
  clone = cloned();
}, 120_000);
afterAll(() => rmSync(clone, { recursive: true, force: true }));

const read = (file: string): string => readFileSync(join(clone, file), "utf8");
const write = (file: string, text: string): void => writeFileSync(join(clone, file), text);
const release = (...words: readonly string[]) =>
  spawnSync(process.execPath, [".ci/release.mjs", ...words], {
    cwd: clone,
    encoding: "utf8",
    env: { ...process.env, npm_config_offline: "true" },
  });
const told = (day: string): void =>
  write(CHANGES, read(CHANGES).replace(/^## /m, `## ${NEXT} – ${day}\n\n- More.\n\n## `));

describe("newestIn", () => {
  test("the first version told of, with its day where that is one", () => {
    const of = (behind: string) =>
      newestIn(`# What changed\n\n## 1.2.3${behind}\n\n- A.\n\n## 1.2.2 – 2025-01-01\n`);
    expect(of(" – 2026-02-28")).toEqual({ version: "1.2.3", day: "2026-02-28" });
    for (const none of ["", " – not yet released", " - 2026-02-28", " – 2026-02-30", " – 2026-2-8"])
      expect(of(none)).toEqual({ version: "1.2.3", day: undefined });
    expect(newestIn("# What changed\n")).toEqual({ version: undefined, day: undefined });
  });
});

describe("renamed", () => {
  test("the program's own version alone, and its tags", () => {
    const written = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
    const others = { other: { version: "0.1.0" } };
    const of = (to: string) => ({
      "package.json": written({ name: "a", version: to, main: "b", devDependencies: { other: "0.1.0" } }),
      "package-lock.json": written({
        name: "a",
        version: to,
        packages: { "": { version: to, license: "MIT" }, ...others },
      }),
      "README.md": `rev: v${to}, ref: v${to}; v0.1.01 and 0.1.0 are others\n`,
    });
    expect(renamed(of("0.1.0"), "0.1.0", "0.2.0")).toEqual(of("0.2.0"));
    const own = (name: string): string => readFileSync(join(__dirname, "../..", name), "utf8");
    const texts = Object.fromEntries(NAMING.map((name) => [name, own(name)])) as Record<
      (typeof NAMING)[number],
      string
    >;
    expect(renamed(texts, version, version)).toEqual(texts);
  });
});

describe("a release", () => {
  test("wants one version", () => {
    for (const words of [[], ["1.0"], ["v1.0.0"], ["1.0.0", "1.0.1"], ["1.0.0-rc"]]) {
      const { status, stderr } = release(...words, "--check");
      expect([status, stderr]).toEqual([2, expect.stringContaining("-- X.Y.Z [--check]")]);
    }
  });

  test("tells all that stands in its way, and changes nothing", () => {
    write("stray.txt", "left lying\n");
    gitIn(clone, "tag", "v0.0.9");
    const before = NAMING.map(read);
    for (const words of [["0.0.9", "--check"], ["0.0.9"]]) {
      const { status, stdout, stderr } = release(...words);
      expect([status, stdout]).toEqual([1, ""]);
      expect(stderr).toBe(
        [
          "release: The tree is not clean:",
          "  ?? stray.txt",
          "release: There is a tag v0.0.9 already.",
          `release: 0.0.9 is lower than ${version}, which package.json says.`,
          `release: ${CHANGES} tells first of ${newestIn(read(CHANGES)).version}, not of 0.0.9.`,
          "",
        ].join("\n"),
      );
    }
    expect(NAMING.map(read)).toEqual(before);
    rmSync(join(clone, "stray.txt"));
  });

  test("wants the day said, and no preview any more from 1.0 on", () => {
    told("some day");
    committed(clone, "Told without a day");
    expect(release(NEXT, "--check").stderr).toBe(
      `release: ${CHANGES} says no day: write “## ${NEXT} – YYYY-MM-DD”.\n`,
    );
    write("package.json", JSON.stringify({ ...JSON.parse(read("package.json")), preview: true }));
    const { stderr } = release(`${MAJOR + 1}.0.0`, "--check");
    expect(stderr).toContain("release: package.json still says that it is a preview.\n");
    gitIn(clone, "reset", "--quiet", "--hard", "HEAD~1");
  });

  test("--check says that nothing stands in the way, what is left open, and makes nothing", () => {
    told("2026-03-01");
    committed(clone, "What changed in the next version");
    const { status, stdout, stderr } = release(NEXT, "--check");
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toContain("to think of: package.json names no `repository`");
    expect(stdout).toContain(`Nothing stands in the way of ${NEXT}.\n`);
    expect(gitIn(clone, "status", "--porcelain")).toBe("");
    expect(existsSync(join(clone, "dist"))).toBe(false);
  });

  test("that fails leaves the tree as it was", () => {
    const build = read(".ci/build.mjs");
    write(".ci/build.mjs", "process.exit(1);\n");
    committed(clone, "A build that fails");
    const { status, stderr } = release(NEXT, "--without-tests");
    expect(status).toBe(1);
    expect(stderr).toContain("release: It failed;");
    expect(gitIn(clone, "status", "--porcelain")).toBe("");
    write(".ci/build.mjs", build);
    committed(clone, "A build that succeeds");
  });

  test("makes both packages of that version with their sums, and publishes, commits and tags nothing", async () => {
    const manifest = read("package.json").replace(
      '  "name": "sawbuck",\n',
      '  "name": "sawbuck",\n  "repository": "https://github.com/OWNER/sawbuck",\n',
    );
    write("package.json", manifest);
    committed(clone, "Where its repository is");
    const head = gitIn(clone, "rev-parse", "HEAD");
    const { status, stdout, stderr } = release(NEXT, "--without-tests");
    expect(status, stderr).toBe(0);
    expect(stdout).not.toContain("no `repository`");

    const out = join(clone, "dist/release");
    const made = [`sawbuck-${NEXT}.tgz`, `sawbuck-${NEXT}.vsix`];
    expect(readdirSync(out).sort()).toEqual(["SHA256SUMS", ...made]);
    const sums = made.map((name) => {
      const sum = createHash("sha256")
        .update(readFileSync(join(out, name)))
        .digest("hex");
      return `${sum}  ${name}\n`;
    });
    expect(readFileSync(join(out, "SHA256SUMS"), "utf8")).toBe(sums.join(""));
    for (const words of [
      `npx vsce publish --packagePath dist/release/${made[1]}`,
      `npx ovsx publish dist/release/${made[1]}`,
      `npm publish dist/release/${made[0]}`,
      `git tag v${NEXT}`,
      "Nothing is published.",
    ])
      expect(stdout).toContain(words);

    expect(gitIn(clone, "status", "--porcelain")).toBe(
      " M README.md\n M package-lock.json\n M package.json\n",
    );
    expect([gitIn(clone, "rev-parse", "HEAD"), gitIn(clone, "tag", "--list")]).toEqual([head, "v0.0.9\n"]);
    const renewed = gitIn(clone, "diff", "--unified=0", "README.md").match(/^\+(?!\+\+).*$/gm)!;
    expect(renewed.map((line) => line.includes(`v${NEXT}`))).toEqual([true, true, true]);
    expect(JSON.parse(read("package-lock.json"))).toMatchObject({
      version: NEXT,
      packages: { "": { version: NEXT } },
    });

    const vsix = await unzipped(join(out, made[1]!));
    const inside = (name: string): string => vsix.get(name)!.toString("utf8");
    expect(JSON.parse(inside("extension/package.json")).version).toBe(NEXT);
    expect(inside("extension.vsixmanifest")).toContain(` Version="${NEXT}"`);
    expect(inside("extension/changelog.md")).toContain(`## ${NEXT} – 2026-03-01`);
    // With a repository, the pictures are shown from there.
    expect(inside("extension/readme.md")).toContain(
      "](https://github.com/OWNER/sawbuck/raw/HEAD/client/media/editor.png)",
    );
    const said = spawnSync(process.execPath, ["dist/cli.js", "--version"], { cwd: clone, encoding: "utf8" });
    expect(said.stdout).toBe(`${NEXT}\n`);
  }, 240_000);
});
