/** `sawbuck check` over folders, on several cores, as it is shipped. Needs dist/cli.js. */
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { threadOf } from "../../server/cli/check-threads";
import type { Checked } from "../../server/cli/checking";
import { type Heard, inOrder } from "../../server/cli/in-order";
import { SHOP, treePlan } from "../bench/tree/plans";
import { runCli } from "./run";

const ROOT = join(__dirname, "../..");
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-tree-"));
  cpSync(join(ROOT, "samples"), join(folder, "samples"), { recursive: true });
  mkdirSync(join(folder, "yard"));
  mkdirSync(join(folder, "empty"));
  writeFileSync(join(folder, "yard/yard.sawbuck"), SHOP);
  for (let i = 0; i < 6; i++) writeFileSync(join(folder, `yard/plan-${i}.sawbuck`), treePlan(i));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const check = (args: readonly string[], node: readonly string[] = []) =>
  runCli(["check", ...args], { cwd: folder, node });

describe("a folder of plans", () => {
  test.each(["text", "json"])("is told of in the same bytes on any number of cores, as %s", (format) => {
    const on = (jobs: string) => {
      const { stdout, stderr, status } = check([
        "samples",
        "yard",
        "nowhere",
        "--format",
        format,
        "--jobs",
        jobs,
      ]);
      return { stdout, stderr, status };
    };
    const alone = on("1");
    expect(alone.status).toBe(2);
    expect(alone.stderr).toBe("sawbuck: nowhere: there is no such file\n");
    expect(alone.stdout.length).toBeGreaterThan(10_000);
    expect(on("2")).toEqual(alone);
    expect(on("5")).toEqual(alone);
  });

  test("of which one ends its thread, whatever the reason, is told of whole: that one as a fault", async () => {
    const program = join(folder, "thread.cjs");
    writeFileSync(
      program,
      `const { parentPort } = require("node:worker_threads");
      parentPort.on("message", (file) => {
        if (file === "ends") process.exit(3);
        if (file === "throws") throw new Error("a bad day");
        if (file === "grows") for (const all = []; ; ) all.push(new Array(1e6).fill(file));
        parentPort.postMessage({ report: { file } });
      });
      parentPort.postMessage("ready");`,
    );
    const given: Checked[] = [];
    const asked = { shop: {}, effort: undefined, details: false };
    const tasks = ["a", "ends", "b", "throws", "grows", "c"];
    const start = (heard: Heard<Checked>) => threadOf(program, asked, heard, { maxOldGenerationSizeMb: 32 });
    const lost = (file: string, why: string) => ({ file, refused: why });
    const here = (file: string) => lost(file, "not in a thread");
    for await (const one of inOrder({ tasks, hands: 2, start, here, lost })) given.push(one);
    const told = given.map((one) => ("refused" in one ? `${one.file}: ${one.refused}` : one.report.file));
    expect(told).toEqual([
      "a",
      "ends: a thread ended with 3",
      "b",
      "throws: Error: a bad day",
      expect.stringMatching(/^grows: Error.*memory limit/),
      "c",
    ]);
  });

  test("in which the reader's own shop file lies is checked, and the shop file as it is", () => {
    const { stdout, status } = check(["yard", "--shop", "./yard/yard.sawbuck"]);
    expect(stdout).not.toContain("in-a-circle");
    expect(stdout).toContain("yard/yard.sawbuck: no problem that Sawbuck can name was found");
    expect(status).toBe(1);
  });

  test("without plans ends with 2 and says so", () => {
    const { stdout, stderr, status } = check(["empty"]);
    expect([stdout, stderr, status]).toEqual(["", "sawbuck: no *.sawbuck file was found there\n", 2]);
  });

  test.each(["0", "-1", "two", "1.5", "1000"])("is not checked on “%s” cores", (jobs) => {
    const { stderr, status } = check(["yard", "--jobs", jobs]);
    expect([stderr.split("\n")[0], status]).toEqual([
      `sawbuck: --jobs is a whole number from 1 to 999; “${jobs}” is none.`,
      2,
    ]);
  });
});
