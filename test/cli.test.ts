/** The command line, run as it is shipped. Needs dist/cli.js, which `npm test` builds first. */
import { spawnSync } from "node:child_process";
import {
  copyFileSync,
  existsSync,
  linkSync,
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
import { version } from "../package.json";
import { planText } from "./bench/layout/plan-text";
import { CLI, runCli } from "./cli/run";

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-cli-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (args: readonly string[], cwd = folder) => runCli(args, { cwd });

function file(name: string, text: string | Uint8Array): string {
  writeFileSync(join(folder, name), text);
  return name;
}

const GOOD = 'part leg 4 of 2x4, length 9"\n';
const BAD = 'prat leg 4 of 2x4, length 9"\n';
const HINT = 'measure a = 2"\npart leg 4 of 2x4, length 9"\n';

describe("check", () => {
  test("exit 0 without errors and hazards, 1 with, 2 when it cannot read", () => {
    expect(run(["check", file("good.sawbuck", GOOD)]).status).toBe(0);
    expect(run(["check", file("hint.sawbuck", HINT)]).status).toBe(0);
    expect(run(["check", file("bad.sawbuck", BAD)]).status).toBe(1);
    expect(run(["check", "nowhere.sawbuck"]).status).toBe(2);
    expect(run(["check"]).status).toBe(2);
    expect(run(["check", "--format", "xml", "good.sawbuck"]).status).toBe(2);
    expect(run(["check", "--colour", "good.sawbuck"]).status).toBe(2);
    expect(run(["chek", "good.sawbuck"]).status).toBe(2);
    expect(run([]).status).toBe(2);
    expect(run(["--help"]).status).toBe(0);
    expect(run(["--version"])).toEqual({ status: 0, stdout: `${version}\n`, stderr: "" });
  });

  test("prints each problem with its place, code and cure, and what was not checked", () => {
    const { stdout } = run(["check", file("bad.sawbuck", BAD)]);
    expect(stdout).toMatchInlineSnapshot(`
      "bad.sawbuck: 1 error
        bad.sawbuck:1:1  error  No line opens with “prat”. Did you mean “part”?  [unknown-entry]
            cure: Write “part”
      "
    `);
  });

  test("a folder is searched for plans, and what a plan brings is seen from the plan", () => {
    mkdirSync(join(folder, "plans/deep"), { recursive: true });
    file("plans/deep/a.sawbuck", "bring ../b.sawbuck\npart leg 4 of 2x4, length tall\n");
    file("plans/b.sawbuck", 'measure tall = 9"\npart foot 1 of 2x4, length 4"\n');
    const { stdout, status } = run(["check", "plans", "--format", "json"]);
    const result = JSON.parse(stdout);
    expect(status).toBe(0);
    expect(result.plans.map((p: { file: string }) => p.file)).toEqual([
      "plans/b.sawbuck",
      "plans/deep/a.sawbuck",
    ]);
    expect(
      result.plans.flatMap((p: { problems: { code: string }[] }) => p.problems.map((q) => q.code)),
    ).toEqual(["never-used"]);
  });

  test("the reader's shop file stands in for the one a plan names", () => {
    file("theirs.sawbuck", "stock 2x4, sold 8' $4.00\n");
    file("mine.sawbuck", "stock 2x4, sold 10' $9.00\n");
    file("shopped.sawbuck", 'shop theirs.sawbuck\npart leg 4 of 2x4, length 9"\n');
    expect(run(["sheet", "shopped.sawbuck"]).stdout).toContain("$4.00");
    const mine = run(["sheet", "shopped.sawbuck", "--shop", "mine.sawbuck"]).stdout;
    expect(mine).toContain("$9.00");
    expect(mine).not.toContain("$4.00");
    expect(run(["check", "shopped.sawbuck", "--shop", "nobodys.sawbuck"]).stdout).toContain(
      "[file-not-found]",
    );
  });
});

describe("bad input ends in a sentence, never a stack trace", () => {
  test.each([
    ["bytes", Uint8Array.from({ length: 3000 }, (_, i) => (i * 7919) % 256)],
    ["nul", "part leg\0 4 of 2x4\n"],
    ["crlf", '\uFEFFplan A\r\n  outdoors\r\npart leg 4 of 2x4, length 9"'],
    ["empty", ""],
    ["large", `note ${"x".repeat(5_000_000)}\n`],
    ["million", 'plan A\n  make 1000000\npart leg 4 of 2x4, length 9"\n'],
    ["deep", `measure a = ${"(".repeat(100_000)}\n`],
    ["itself", "bring itself.sawbuck\n"],
  ])("%s", (name, text) => {
    const { status } = run(["check", file(`${name}.sawbuck`, text)]);
    expect([0, 1]).toContain(status);
    expect([0, 1]).toContain(run(["sheet", `${name}.sawbuck`, "--format", "html"]).status);
  });

  test.runIf(existsSync("/dev/zero"))("a device, a folder, a pipe that nobody writes to", () => {
    expect(run(["check", "/dev/zero"]).stderr).toContain("not an ordinary file");
    expect(run(["sheet", "/dev/zero"]).stderr).toContain("not an ordinary file");
    expect(run(["sheet", "."]).stderr).toContain("folder");
    spawnSync("mkfifo", [join(folder, "pipe")]);
    expect(run(["check", "pipe"]).status).toBe(2);
    expect(run(["check", file("piped.sawbuck", "bring pipe\n")]).stdout).toContain("not an ordinary file");
    file("brings.sawbuck", "bring /dev/zero\n");
    expect(run(["check", "brings.sawbuck"]).stdout).toContain("not from the root of a disk");
  });
});

describe("sheet", () => {
  test("a full disk is told, a reader that stops reading is not", () => {
    file("good.sawbuck", GOOD);
    const shell = (line: string) =>
      spawnSync("bash", ["-c", `set -o pipefail; ${line}`], { cwd: folder, encoding: "utf8" });
    const sheet = `${process.execPath} ${CLI} sheet good.sawbuck`;
    const full = shell(`${sheet} > /dev/full`);
    expect([full.status, full.stderr]).toEqual([2, "sawbuck: nothing more can be written: ENOSPC\n"]);
    const closed = shell(`${sheet} --format html | head -c 1 >/dev/null`);
    expect([closed.status, closed.stderr]).toEqual([0, ""]);
  });

  test("is printed as text, or written as HTML or JSON", () => {
    file("good.sawbuck", GOOD);
    expect(run(["sheet", "good.sawbuck"]).stdout).toContain("Cut list");
    expect(run(["sheet", "good.sawbuck", "--format", "html", "--out", "good.html"]).status).toBe(0);
    expect(readFileSync(join(folder, "good.html"), "utf8")).toMatch(/^<!doctype html>/i);
    for (const [name, begins] of [
      ["named.html", "<!doctype html>"],
      ["named.HTM", "<!doctype html>"],
      ["named.json", "{"],
      ["named.txt", ""],
    ] as const) {
      expect(run(["sheet", "good.sawbuck", `--out=${name}`]).status).toBe(0);
      const text = readFileSync(join(folder, name), "utf8");
      expect(text.toLowerCase().startsWith(begins)).toBe(true);
      if (begins === "") expect(text).toMatch(/^Cut list$/m);
    }
    expect(run(["sheet", "good.sawbuck", "--format", "text", "--out", "named.html"]).status).toBe(0);
    expect(readFileSync(join(folder, "named.html"), "utf8")).toMatch(/^Cut list$/m);
    const json = JSON.parse(run(["sheet", "good.sawbuck", "--format=json"]).stdout);
    expect(json).toMatchObject({
      format: "sawbuck-sheet",
      version: 1,
      cutList: [{ rows: [{ part: "leg", count: 4 }] }],
    });
  });

  test("is drawn, the whole or an assembly alone, as SVG", () => {
    const place = 'place leg upright, wide face front, on floor, at each corner of 30" x 16"\n';
    file("drawn.sawbuck", `${GOOD}${place}`);
    expect(run(["sheet", "drawn.sawbuck", "--drawing", "front"]).stdout).toMatch(/^<svg .*<\/svg>\n$/s);
    const written = run(["sheet", "drawn.sawbuck", "--drawing", "apart", "--out", "drawn.svg"]);
    expect(written.stderr).toBe("The drawing is in drawn.svg\n");
    expect(readFileSync(join(folder, "drawn.svg"), "utf8")).toContain("drawn apart");
    const assembly = `assembly stand\n  ${place}place stand on floor, 0" from left, 0" from front\n`;
    file("stands.sawbuck", `${GOOD.replace(" 4", "")}${assembly}`);
    const alone = ["sheet", "stands.sawbuck", "--drawing", "turned", "--assembly"];
    expect(run([...alone, "stand"]).stdout).toContain('aria-label="stand seen from the left');
    const none = run([...alone, "stool"]);
    expect([none.status, none.stderr]).toEqual([
      2,
      "sawbuck: stands.sawbuck: no assembly “stool” is placed in this plan. There is stand.\n",
    ]);
  });

  test("says in a sentence why there is no drawing, or what was asked wrongly", () => {
    file("good.sawbuck", GOOD);
    const refused = (...args: string[]) => run(["sheet", "good.sawbuck", ...args]).stderr.split("\n")[0];
    expect(refused("--drawing", "turned")).toBe(
      "sawbuck: good.sawbuck: there is nothing to draw: no piece is placed. A `place` line says where a piece stands.",
    );
    expect(refused("--drawing", "below")).toContain("“below” is none of them");
    expect(refused("--drawing", "front", "--format", "html")).toContain("written as svg, not as “html”");
    expect(refused("--assembly", "stand")).toContain("ask for one with --drawing");
    expect(refused("--out", "sheet.svg")).toContain("say which with --drawing");
    expect(refused("--out", "nowhere/sheet.pdf")).toBe(
      "sawbuck: nowhere/sheet.pdf cannot be written: there is no such folder",
    );
  });

  test("tells how a command is asked, alone where it is named", () => {
    const { stdout, status } = run(["help"]);
    expect(status).toBe(0);
    const named = (text: string) => new Set([...text.matchAll(/^ {2}sawbuck ([a-z]+)/gm)].map((m) => m[1]!));
    const all = named(stdout);
    expect([...all]).toEqual(expect.arrayContaining(["check", "sheet", "lsp"]));
    for (const name of all) {
      expect([...named(run(["help", name]).stdout)]).toEqual([name]);
      expect([...named(run([name, "-h"]).stdout)]).toEqual([name]);
    }
    expect([...named(run(["check"]).stderr)]).toEqual(["check"]);
    expect(named(run(["chek", "good.sawbuck"]).stderr)).toEqual(all);
    expect(run([]).status).toBe(2);
  });

  test("takes no option that would do nothing, and gives no file a name that lies", () => {
    file("good.sawbuck", GOOD);
    const refused = (...args: string[]) => run(["sheet", "good.sawbuck", ...args]).stderr.split("\n")[0];
    const [table, drawing] = [["--table", "cut-list"] as const, ["--drawing", "front"] as const];
    expect(refused(...table, ...drawing)).toBe(
      "sawbuck: --drawing and --table are two things: ask for one at a time.",
    );
    for (const args of [table, drawing, ["--format", "json"]])
      expect(refused("--for", "learners", ...args)).toContain("--for is for a sheet that is read");
    for (const args of [[], table, drawing, ["--out", "sheet.html"]])
      expect(refused("--paper", "A4", ...args)).toBe("sawbuck: --paper is for --format pdf.");
    expect(refused(...drawing, "--out", "sheet.html")).toBe(
      "sawbuck: sheet.html would hold svg: give its name the ending .svg.",
    );
    expect(refused(...table, "--out", "sheet.json")).toContain("would hold csv");
    expect(refused("--format", "html", "--out", "sheet.svg")).toContain("would hold html");
    expect(existsSync(join(folder, "sheet.html"))).toBe(false);
    for (const out of ["sheet.constructor", "sheet.v2", "sheet"])
      expect(run(["sheet", "good.sawbuck", "--out", out]).status).toBe(0);
    expect(run(["sheet", "good.sawbuck", ...table, "--format", "csv", "--out", "table.txt"]).status).toBe(0);
  });

  test("without the part that writes PDF says so", () => {
    mkdirSync(join(folder, "alone"), { recursive: true });
    copyFileSync(CLI, join(folder, "alone/cli.js"));
    file("good.sawbuck", GOOD);
    const alone = (...args: string[]) =>
      spawnSync(process.execPath, ["alone/cli.js", "sheet", "good.sawbuck", ...args], {
        cwd: folder,
        encoding: "utf8",
      });
    expect(alone().status).toBe(0);
    const { status, stderr } = alone("--out", "alone.pdf");
    expect([status, stderr]).toEqual([2, expect.stringContaining("pdf.js and fonts beside this program")]);
    expect(existsSync(join(folder, "alone.pdf"))).toBe(false);
  });

  test("ends as it would where nobody hears what it says", () => {
    const line = `${process.execPath} ${CLI} sheet nowhere.sawbuck 2>&1 | true; exit \${PIPESTATUS[0]}`;
    expect(spawnSync("bash", ["-c", line], { cwd: folder }).status).toBe(2);
  });

  test("is never written over a plan, a folder or a device", () => {
    file("good.sawbuck", GOOD);
    file("yard.txt", "stock 2x4, sold 8' $4\n");
    symlinkSync("good.sawbuck", join(folder, "soft.html"));
    linkSync(join(folder, "good.sawbuck"), join(folder, "hard.html"));
    for (const out of [
      ...["good.sawbuck", "other.sawbuck", "other.SAWBUCK", "soft.html", "hard.html"],
      ...[".", "/dev/full"],
    ]) {
      const { status, stderr } = run(["sheet", "good.sawbuck", "--out", out]);
      expect(status).toBe(2);
      expect(stderr).toMatch(/plan|ordinary/);
    }
    expect(run(["sheet", "good.sawbuck", "--shop", "yard.txt", "--out", "yard.txt"]).status).toBe(2);
    expect(readFileSync(join(folder, "good.sawbuck"), "utf8")).toBe(GOOD);
    expect(readFileSync(join(folder, "yard.txt"), "utf8")).toMatch(/^stock/);
  });
});

describe("--effort", () => {
  /** Its first answer costs more than need be; the budget tells what it costs. */
  const dear = () => file("dear.sawbuck", planText([97]));
  const costs = (...args: string[]) => {
    const { stdout, status } = run(["check", dear(), "--format", "json", ...args]);
    expect(status).toBe(0);
    return JSON.parse(stdout).plans[0].problems[0].message as string;
  };

  test("unsaid, the cheapest way is looked for; with 0 the first answer stands", () => {
    const [first, best] = [costs("--effort", "0"), costs()];
    expect(best).not.toBe(first);
    expect(costs("--effort=1000")).toBe(best);
    const sheet = (effort: string) =>
      run(["sheet", dear(), "--table", "shopping", "--effort", effort]).stdout;
    expect(sheet("0")).not.toBe(sheet("50.5"));
  });

  test.each(["-1", "1e9", "some", "1,5", "0x10", "1234567890"])("“%s” is no effort", (effort) => {
    const { stderr, status } = run(["sheet", dear(), `--effort=${effort}`]);
    expect(status).toBe(2);
    expect(stderr).toContain(
      `--effort is a number of millions of steps, such as 0, 50 or 1000; “${effort}” is none.`,
    );
  });
});
