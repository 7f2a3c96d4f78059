/** `sawbuck list` as it is shipped. Needs dist/cli.js. */
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { HtmlValidate } from "html-validate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runCli } from "./run";

const ROOT = join(__dirname, "../..");
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-list-"));
  mkdirSync(join(folder, "plans"));
  mkdirSync(join(folder, "empty"));
  for (const name of ["cold-frame", "potting-bench", "hillside-shop", "yard-measures"])
    cpSync(join(ROOT, `samples/${name}.sawbuck`), join(folder, `plans/${name}.sawbuck`));
  mkdirSync(join(folder, "strange"));
  for (const name of ["a b%20#c|.sawbuck", "été.sawbuck", "two\nlines.sawbuck"])
    writeFileSync(
      join(folder, "strange", name),
      '# <b>Bold</b> | [x](y)\nplan <i>A</i> | `b`\npart leg 1 of 2x4, length 9"\nplace leg upright, wide face front, on floor, 0" from left, 0" from front\n',
    );
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: string[]) => runCli(["list", ...args], { cwd: folder });

/** Where the pictures of Markdown lead. */
const pictures = (text: string): string[] => [...text.matchAll(/!\[.*\]\(<(.+)>\)/g)].map((m) => m[1]!);

describe("a book of plans", () => {
  test("is Markdown with a table of contents, a page for each, and drawings beside it", () => {
    const args = ["plans", "--drawings", "book/drawings", "--out", "book/README.md"];
    mkdirSync(join(folder, "book"));
    expect(run(...args)).toEqual({ stdout: "", stderr: "", status: 0 });
    const text = readFileSync(join(folder, "book/README.md"), "utf8");
    expect(text).toMatchSnapshot();
    for (const picture of pictures(text))
      expect(readFileSync(join(folder, "book", decodeURIComponent(picture)), "utf8")).toMatch(
        /^<svg .*<\/svg>\n$/s,
      );
    expect(readdirSync(join(folder, "book/drawings"))).toHaveLength(pictures(text).length);
    run(...args);
    expect(readFileSync(join(folder, "book/README.md"), "utf8")).toBe(text);
  });

  test("is in French, and in millimetres", () => {
    const { stdout, status } = run("plans/cold-frame.sawbuck", "--language", "fr", "--units", "millimetres");
    expect(status).toBe(0);
    expect(stdout).toMatchSnapshot();
  });

  test("is a page of HTML that needs nothing else, each plan on paper of its own", async () => {
    const { stdout, status } = run("plans", "strange", "--format", "html");
    expect(status).toBe(0);
    const report = await new HtmlValidate({ extends: ["html-validate:standard"] }).validateString(stdout);
    expect(report.results.flatMap((r) => r.messages.map((m) => `${m.ruleId}: ${m.message}`))).toEqual([]);
    expect(stdout.match(/<section class="plan new-page" id="plan-\d"/g)).toHaveLength(5);
    expect(stdout.match(/<a href="#plan-\d"/g)).toHaveLength(5);
    expect(stdout.match(/<svg /g)).toHaveLength(5);
    expect(stdout).not.toMatch(/<(?:b|i)>|(?:src|href)="(?!#)|url\(|<script|<img/);
  });

  test("tells programs the same figures", () => {
    const { stdout } = run("plans", "--format", "json");
    expect(JSON.parse(stdout)).toMatchSnapshot();
  });

  test("takes no word of a plan or a file's name for a mark", () => {
    const { stdout } = run("strange", "--drawings", "strange drawings");
    expect(stdout).toMatchSnapshot();
    expect(pictures(stdout)).toHaveLength(3);
    for (const picture of pictures(stdout))
      expect(existsSync(join(folder, decodeURIComponent(picture)))).toBe(true);
  });

  test("never approves", () => {
    for (const language of ["en", "fr"])
      expect(run("plans", "--language", language).stdout).not.toMatch(
        /\b(?:safe|ok|pass(?:ed|es)?|approved)\b/i,
      );
  });
});

test("what cannot be read is told, and where there are no plans or it is asked wrongly", () => {
  expect(run("plans/cold-frame.sawbuck", "nowhere").stderr).toBe("sawbuck: nowhere: there is no such file\n");
  expect(run("plans/cold-frame.sawbuck", "nowhere").status).toBe(2);
  expect(run("empty")).toEqual({ stdout: "", stderr: "sawbuck: no plan was found there\n", status: 2 });
  expect(run("plans/hillside-shop.sawbuck").status).toBe(2);
  const first = (...args: string[]) => run(...args).stderr.split("\n")[0];
  expect(first()).toBe("sawbuck: “list” wants files or folders.");
  expect(first("plans", "--format", "html", "--drawings", "x")).toContain(
    "--drawings is for --format markdown",
  );
  expect(first("plans", "--out", "plans/cold-frame.sawbuck")).toContain("is named like a plan");
  expect(existsSync(join(folder, dirname("x/y")))).toBe(false);
  writeFileSync(join(folder, "broken.sawbuck"), "prat leg 4 of 2x4\n");
  expect(run("broken.sawbuck").status).toBe(1);
});
