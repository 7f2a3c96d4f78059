/** `sawbuck slip` as it is shipped. Needs dist/cli.js, which `npm test` builds first. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { runCli } from "./run";

const SAMPLES = resolve(__dirname, "../../samples");
const slip = (...args: string[]) => runCli(["slip", ...args], { cwd: SAMPLES });

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-slip-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe("sawbuck slip", () => {
  test("lists what to measure in order, with bounds and room to write", () => {
    const { status, stdout, stderr } = slip("salad-trough.sawbuck");
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toMatchSnapshot();
  });

  test("in millimetres, and in French", () => {
    expect(
      slip("salad-trough.sawbuck", "--units", "millimetres", "--language", "fr").stdout,
    ).toMatchSnapshot();
    expect(slip("salad-trough.sawbuck", "--format", "markdown").stdout).toMatchSnapshot();
  });

  test("has lines to write on in the drawings of its page, for what is seen on the thing", () => {
    const out = join(folder, "slip.html");
    const { status, stderr } = slip("cold-frame.sawbuck", "--out", out);
    expect([status, stderr]).toEqual([0, `The slip is in ${out}\n`]);
    const page = readFileSync(out, "utf8");
    const lines = [...page.matchAll(/<text class="dimension"[^>]*>([^<]*)</g)].map((m) => m[1]);
    // The width from the front, the depth from the left; the sash leans, and no face of it is square to its length.
    expect(lines).toEqual(["1 ________", "2 ________"]);
    expect(page).toContain('<span class="blank" role="img" aria-label="sash-depth">');
  });

  test("says that there is nothing to measure, and refuses what it does not take", () => {
    expect(slip("hillside-shop.sawbuck").stdout).toContain("This plan has no measure of its own");
    expect(slip().stderr).toContain("“slip” takes one plan file.");
    expect(slip("salad-trough.sawbuck", "--out", join(folder, "slip.json")).stderr).toContain(
      "A slip is not written as json.",
    );
    expect(slip("salad-trough.sawbuck", "--out", "cold-frame.sawbuck").status).toBe(2);
    expect(slip("missing.sawbuck")).toMatchObject({ status: 2, stdout: "" });
  });
});

describe("sides of the place", () => {
  const set = (wish: string) => runCli(["adapt", "salad-trough.sawbuck", "--set", wish], { cwd: SAMPLES });

  test("are set like measures", () => {
    expect(set('width of space=40"').stdout).toContain("outside-space");
    expect(set("height of way in=6'").status).toBe(0);
  });

  test("that the plan does not say are refused", () => {
    expect(set('depth of way in=6"').stderr).toContain("the plan says no depth of its way in");
  });
});
