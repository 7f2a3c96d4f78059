/** `sawbuck diff` as it is shipped, on files and in real git repositories. Needs dist/cli.js, which `npm test` builds first. */
import { spawnSync } from "node:child_process";
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { CLI, runCli } from "./run";

const ROOT = join(__dirname, "../..");
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-diff-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const NOBODY = {
  GIT_AUTHOR_NAME: "a builder",
  GIT_AUTHOR_EMAIL: "builder@example.org",
  GIT_COMMITTER_NAME: "a builder",
  GIT_COMMITTER_EMAIL: "builder@example.org",
  GIT_CONFIG_GLOBAL: "/dev/null",
  GIT_CONFIG_SYSTEM: "/dev/null",
};

const run = (args: readonly string[], cwd: string) => runCli(args, { cwd, env: NOBODY });

function git(cwd: string, ...args: string[]): string {
  const { stdout, status, stderr } = spawnSync("git", args, {
    cwd,
    encoding: "utf8",
    env: { ...process.env, ...NOBODY },
  });
  expect(status, stderr).toBe(0);
  return stdout;
}

const PLAN = (length: string, more = ""): string =>
  `plan Rack\n  language 1\n  indoors\nshop ../shop/shop.sawbuck\npart leg 4 of 2x4, length ${length}\n${more}`;
const SHOP = (price: string): string => `stock 2x4, sold 8' ${price}\n`;

/** A repository with a plan and a shop file, committed; `at` is what is worked in. */
function repository(name: string) {
  const root = join(folder, name);
  for (const one of ["plans", "shop"]) mkdirSync(join(root, one), { recursive: true });
  const write = (file: string, text: string) => writeFileSync(join(root, file), text);
  write("shop/shop.sawbuck", SHOP("$4.00"));
  write("plans/rack.sawbuck", PLAN('9"'));
  git(root, "init", "-q", "-b", "main");
  const commit = (message: string) => {
    git(root, "add", "-A");
    git(root, "commit", "-q", "-m", message);
  };
  commit("first");
  return { root, write, commit, at: root };
}

describe("sawbuck diff --built", () => {
  const write = (name: string, text: string) => writeFileSync(join(folder, name), text);
  const shelf = (record: string): string =>
    `measure long = 20"\npart board 1 of 1x6, length long\nload board 20 lb\n${record}`;

  test("compares a plan with how it was built, and ends with 0, 1 or 2", () => {
    write("built.sawbuck", shelf('built 2026-05-09 by us\n  measured long = 24"\nbuilt 2027-05-09\n'));
    const last = run(["diff", "built.sawbuck", "--built"], folder);
    expect(last.status).toBe(0);
    expect(last.stdout).toContain("Built on 2027-05-09\nAs planned, as far as the plan says.");
    expect(last.stdout).toContain("Nothing of the thing changed");
    const first = run(["diff", "built.sawbuck", "--built", "2026-05-09"], folder);
    expect(first.status).toBe(1);
    expect(first.stdout).toContain("from built.sawbuck to built.sawbuck as built on 2026-05-09");
    expect(first.stdout).toContain('long  planned 20", built 24"');
    expect(first.stdout).toContain('length: 20" → 24"');
    const other = run(["diff", "built.sawbuck", "--built", "2026-05-10"], folder);
    expect(other.status).toBe(2);
    expect(other.stderr).toBe(
      "sawbuck: built.sawbuck: it does not say that it was built on 2026-05-10, but on 2026-05-09, 2027-05-09\n",
    );
  });

  test("says what a building does not tell, and how it is asked", () => {
    write("never.sawbuck", shelf(""));
    const never = run(["diff", "never.sawbuck", "--built"], folder);
    expect(never.status).toBe(2);
    expect(never.stderr).toContain("never.sawbuck: it does not say that it was built");
    expect(run(["diff", "--built"], folder).stderr).toContain(
      "“diff --built” takes one plan file, and a day.",
    );
  });

  test("in French, in JSON and as a page", () => {
    write(
      "built.sawbuck",
      shelf('built 2026-05-09 by us\n  measured long = 24"\n  changed The ends are oiled\n'),
    );
    const diff = (...more: readonly string[]) => run(["diff", "built.sawbuck", "--built", ...more], folder);
    expect(diff("--language", "fr").stdout).toContain(
      "de built.sawbuck à built.sawbuck, construit le 2026-05-09",
    );
    const [told] = JSON.parse(diff("--format", "json").stdout).plans;
    expect(told.built).toMatchObject([{ date: "2026-05-09", by: "us", changed: ["The ends are oiled"] }]);
    expect(told.plans.new.file).toBe("built.sawbuck as built on 2026-05-09");
    expect(diff("--format", "html").stdout).toContain("The ends are oiled");
  });

  test("a hazard that the thing as built has, and the plan has not, is told as new", () => {
    const bench = readFileSync(join(ROOT, "samples/mistakes/too-weak.sawbuck"), "utf8");
    const record = "built 2026-05-09\n  used 1x8 instead of 2x8 because the yard was out of them\n";
    write("bench.sawbuck", bench.replace("of 1x8", "of 2x8") + record);
    const { stdout, status } = run(["diff", "bench.sawbuck", "--built"], folder);
    expect(status).toBe(1);
    const problems = stdout.slice(stdout.indexOf("\nProblems\n"));
    expect(problems).toMatch(/^\nProblems\n-+\nNew:\n {2}Hazard .*[\s\S]*too-weak/);
  });
});

describe("sawbuck diff", () => {
  test("compares two files, and ends with 0, 1 or 2", () => {
    writeFileSync(join(folder, "a.sawbuck"), PLAN('9"'));
    writeFileSync(join(folder, "b.sawbuck"), PLAN('12"'));
    const other = run(["diff", "a.sawbuck", "b.sawbuck"], folder);
    expect(other.status).toBe(1);
    expect(other.stdout).toContain('length: 9" → 12"');
    expect(other.stdout).toContain("from a.sawbuck to b.sawbuck");
    const same = run(["diff", "a.sawbuck", "a.sawbuck"], folder);
    expect(same.status).toBe(0);
    expect(same.stdout).toContain("Nothing of the thing changed");
    const missing = run(["diff", "a.sawbuck", "c.sawbuck"], folder);
    expect(missing.status).toBe(2);
    expect(missing.stderr).toBe("sawbuck: c.sawbuck: there is no such file\n");
  });

  test("writes a page, Markdown or JSON to a file, never over a plan", () => {
    const out = (name: string) => run(["diff", "a.sawbuck", "b.sawbuck", "--out", name], folder);
    expect(out("d.html").status).toBe(1);
    expect(readFileSync(join(folder, "d.html"), "utf8")).toMatch(/^<!doctype html>/i);
    expect(out("d.md").stderr).toBe("The comparison is in d.md\n");
    expect(readFileSync(join(folder, "d.md"), "utf8")).toContain("# What changed: Rack");
    expect(out("b.sawbuck").status).toBe(2);
    expect(readFileSync(join(folder, "b.sawbuck"), "utf8")).toBe(PLAN('12"'));
    expect(out("d.pdf").stderr).toContain("A comparison is not written as pdf.");
  });

  test("compares what is on disk with the last commit, and a shop file as it was then", () => {
    const { root, at, write, commit } = repository("shop");
    expect(run(["diff"], at)).toMatchObject({ status: 0, stdout: "" });
    expect(JSON.parse(run(["diff", "--format", "json"], at).stdout)).toEqual({
      format: "sawbuck-diff",
      version: 1,
      plans: [],
    });
    write("shop/shop.sawbuck", SHOP("$4.50"));
    const priced = run(["diff"], at);
    expect(priced.status).toBe(1);
    expect(priced.stdout).toContain("from HEAD:plans/rack.sawbuck to plans/rack.sawbuck");
    expect(priced.stdout).toMatch(/Total +\$4.00 → \$4.50/);
    commit("dearer");
    expect(run(["diff", "HEAD~1", "HEAD"], at).stdout).toContain("$4.00 → $4.50");
    expect(run(["diff", "HEAD~1..HEAD"], at).stdout).toContain("$4.00 → $4.50");
    expect(run(["diff", "HEAD", "HEAD~1", "plans/rack.sawbuck"], at).stdout).toContain("$4.50 → $4.00");
    rmSync(join(root, "shop/shop.sawbuck"));
    expect(run(["diff", "plans"], at).stdout).toContain("file-not-found");
  });

  test("names a version as git does", () => {
    const { at, write, commit } = repository("versions");
    write("plans/rack.sawbuck", PLAN('10"'));
    commit("second");
    write("plans/rack.sawbuck", PLAN('11"'));
    const told = (...args: string[]) => run(["diff", ...args], at).stdout;
    expect(told("HEAD~1:plans/rack.sawbuck", "plans/rack.sawbuck")).toContain('9" → 11"');
    expect(told("HEAD~1:plans/rack.sawbuck", "HEAD:plans/rack.sawbuck")).toContain('9" → 10"');
    expect(told("main", "plans/rack.sawbuck")).toContain('10" → 11"');
    expect(told("plans/rack.sawbuck")).toContain('10" → 11"');
    expect(told("HEAD~1", ".")).toContain('9" → 11"');
  });

  test("tells plans that are new, gone and renamed", () => {
    const { root, at, write } = repository("moved");
    git(root, "mv", "plans/rack.sawbuck", "plans/boot rack.sawbuck");
    expect(run(["diff"], at).stdout).toContain("from HEAD:plans/rack.sawbuck to plans/boot rack.sawbuck");
    rmSync(join(root, "plans/boot rack.sawbuck"));
    expect(run(["diff"], at).stdout).toContain("HEAD:plans/rack.sawbuck is gone");
    write("plans/étagère.sawbuck", `part shelf 2 of 2x4, length 14"\n`);
    expect(run(["diff", "--format", "markdown"], at).stdout).toContain("étagère.sawbuck is new");
  });

  test("says in a sentence what it cannot find", () => {
    const { root, at } = repository("lost");
    const refused = (args: readonly string[], cwd = at) => {
      const { status, stderr } = run(["diff", ...args], cwd);
      expect(status).toBe(2);
      return stderr;
    };
    symlinkSync("plans/rack.sawbuck", join(root, "plans/link.sawbuck"));
    git(root, "add", "-A");
    git(root, "commit", "-q", "-m", "a link");
    const told = [
      refused(["HEAD:plans/none.sawbuck", "plans/rack.sawbuck"]),
      refused(["HEAD:plans", "plans/rack.sawbuck"]),
      refused(["HEAD:plans/link.sawbuck", "plans/rack.sawbuck"]),
      refused(["nothing", "plans/rack.sawbuck"]),
      refused(["nothing:plans/rack.sawbuck", "plans/rack.sawbuck"]),
      refused(["HEAD", "HEAD", "HEAD"]),
      refused(["--upload-pack=touch x", "plans/rack.sawbuck"]).split("\n")[0],
      refused(["--", "--output=x", "plans/rack.sawbuck"]),
    ];
    expect(told.join("\n")).toMatchSnapshot();
    const bare = join(folder, "no-repository");
    mkdirSync(bare);
    copyFileSync(join(at, "plans/rack.sawbuck"), join(bare, "rack.sawbuck"));
    expect(refused(["rack.sawbuck"], bare)).toBe("sawbuck: . is in no git repository\n");
    expect(
      spawnSync(process.execPath, [CLI, "diff"], { cwd: at, encoding: "utf8", env: { PATH: "/nowhere" } })
        .stderr,
    ).toBe("sawbuck: git is not installed, or is not found\n");
  });
});

describe("sawbuck lines", () => {
  test("has plain git show changes of pieces, with the shop file of today, and no prices", () => {
    const { root, at, write, commit } = repository("textconv");
    write(".gitattributes", "*.sawbuck diff=sawbuck\n");
    git(root, "config", "diff.sawbuck.textconv", `"${process.execPath}" "${CLI}" lines`);
    commit("how plans are compared");
    write("plans/rack.sawbuck", PLAN('12"', 'part rung 2 of 2x4, length 20"\n'));
    const shown = git(at, "diff", "-U0").replace(/^index .*$/m, "index");
    expect(shown).toMatchSnapshot();
    expect(shown).not.toContain("$");
    commit("longer");
    expect(
      git(root, "log", "-p", "-1", "-U0")
        .replace(/^[\s\S]*?(?=^diff)/m, "")
        .replace(/^index .*$/m, "index"),
    ).toBe(shown);
    expect(git(at, "diff", "--no-textconv", "HEAD~1")).toContain('+part leg 4 of 2x4, length 12"');
  });

  test("says each fact on a line of its own", () => {
    copyFileSync(join(ROOT, "samples/salad-trough.sawbuck"), join(folder, "salad-trough.sawbuck"));
    copyFileSync(join(ROOT, "samples/hillside-shop.sawbuck"), join(folder, "hillside-shop.sawbuck"));
    const { stdout, status } = run(["lines", "salad-trough.sawbuck"], folder);
    expect(status).toBe(0);
    expect(stdout).toMatchSnapshot();
    expect(run(["lines", "none.sawbuck"], folder)).toMatchObject({
      status: 2,
      stderr: "sawbuck: none.sawbuck: there is no such file\n",
    });
  });
});
