/** `sawbuck adapt` and `sheet --set`, as they are shipped: another space, other wood. Needs dist/cli.js, which `npm test` builds first. */
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runCli } from "./run";

const ROOT = join(__dirname, "../..");
const SAMPLES = join(ROOT, "samples");
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-adapt-"));
  for (const name of readdirSync(SAMPLES).filter((one) => one.endsWith(".sawbuck")))
    copyFileSync(join(SAMPLES, name), join(folder, name));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: readonly string[]) => runCli(args, { cwd: folder });

const read = (name: string): string => readFileSync(join(folder, name), "utf8");
const PLAN = "salad-trough.sawbuck";
const firstLine = (text: string): string => text.split("\n")[0]!;

describe("another measure", () => {
  test("tells what would change, and leaves the plan as it is", () => {
    const before = read(PLAN);
    const { stdout, status } = run("adapt", PLAN, "--set", 'rim-height=28"');
    expect(stdout).toContain('length: 29-1/4" → 27-1/4"');
    expect(status).toBe(0);
    expect(read(PLAN)).toBe(before);
  });

  test("breaks what it breaks: problems that come of it are told, and the exit code too", () => {
    const { stdout, status } = run("adapt", PLAN, "--set", 'rim-height=36"');
    expect(stdout).toContain("must-broken");
    expect(status).toBe(1);
  });

  test("makes the sheet that the changed plan makes", () => {
    const changed = read(PLAN).replace('rim-height = 30"', 'rim-height = 28"');
    writeFileSync(join(folder, "changed.sawbuck"), changed);
    for (const format of ["text", "json", "markdown"]) {
      const sheet = (...args: readonly string[]) => run("sheet", ...args, "--format", format).stdout;
      expect(sheet(PLAN, "--set", 'rim-height=28"')).toBe(
        sheet("changed.sawbuck").replaceAll("changed.sawbuck", PLAN),
      );
    }
  });

  test("is found where it is declared, in a file that is brought too", () => {
    writeFileSync(join(folder, "measures.sawbuck"), 'measure high = (20" + 10") / 2\n');
    writeFileSync(
      join(folder, "stool.sawbuck"),
      'bring measures.sawbuck\npart leg 4 of 2x4, length high\npart rail 2 of 2x4, length (12" + 2") * 2\n',
    );
    const { stdout, stderr } = run(
      "adapt",
      "stool.sawbuck",
      "--set",
      'high=14" - 1/2"',
      "--set",
      'length of rail=19"',
      "--write",
    );
    expect(stdout).toContain('length: 15" → 13-1/2"');
    expect(stdout).toContain('length: 28" → 19"');
    expect(stderr.trim().split("\n").sort()).toEqual(["Written: measures.sawbuck", "Written: stool.sawbuck"]);
    expect(read("measures.sawbuck")).toBe('measure high = 14" - 1/2"\n');
    expect(read("stool.sawbuck")).toContain('part rail 2 of 2x4, length 19"\n');
  });
});

describe("another board", () => {
  test("takes the place of one wherever it is used, and nowhere else", () => {
    writeFileSync(
      join(folder, "swap.sawbuck"),
      `stock 1x4, sold 8' $6
stock slats of 1x4, sold 6' $4
part slat 3 of 1x4, length 30" - thickness of 1x4
part cap 2 of slats, length 30"
fasten slat face into cap face, 2 #8 x 1-1/4" at each end
`,
    );
    const { stdout } = run("adapt", "swap.sawbuck", "--swap", "1x4=18x95", "--write");
    expect(stdout).toContain("of: 1x4");
    expect(read("swap.sawbuck")).toContain(
      'part slat 3 of 18x95, length 30" - thickness of 18x95\npart cap 2 of slats',
    );
    expect(read("swap.sawbuck")).toContain("stock 1x4, sold 8' $6\nstock slats of 1x4");
  });

  test("is one of the reader's own shop, for one that only the plan's own has", () => {
    writeFileSync(
      join(folder, "mine.sawbuck"),
      "stock cedar of 2x4, species western-redcedar, heartwood, sold 8' $9\n",
    );
    writeFileSync(
      join(folder, "seat.sawbuck"),
      'plan Seat\n  indoors\nshop hillside-shop.sawbuck\npart slat 3 of heart-2x4, length 30"\n',
    );
    const checked = run("check", "seat.sawbuck", "--shop", "mine.sawbuck");
    expect(checked.stdout).toContain("Is it “cedar” here?");
    expect(checked.stdout).toContain("cure: Write “cedar” wherever “heart-2x4” stands");
    expect(checked.status).toBe(1);
    const swap = ["--swap", "heart-2x4=cedar", "--write"];
    expect(run("adapt", "seat.sawbuck", "--shop", "mine.sawbuck", ...swap).status).toBe(0);
    expect(read("seat.sawbuck")).toContain("part slat 3 of cedar, length");
    expect(run("check", "seat.sawbuck", "--shop", "mine.sawbuck").status).toBe(0);
  });

  test("shows what breaks", () => {
    const { stdout, status } = run("adapt", PLAN, "--swap", "1x6=1x4");
    expect(stdout).toContain("of: 1x6");
    expect(status).toBe(1);
  });
});

test("says in a sentence what cannot be done", () => {
  const refused = (...args: readonly string[]) => {
    const { stderr, status } = run("adapt", PLAN, ...args);
    expect(status).toBe(2);
    return firstLine(stderr);
  };
  const before = read(PLAN);
  expect(
    [
      refused(),
      refused("--set", "rim-height"),
      refused("--set", 'rim-hight=28"'),
      refused("--set", 'leg=28"'),
      refused("--set", 'length of legg=28"'),
      refused("--set", 'rim-height=28"\nnote x'),
      refused("--set", 'rim-height=28", at most 30"'),
      refused("--set", "rim-height=tall as me"),
      refused("--set", 'rim-height=28"', "--set", 'rim-height=29"'),
      refused("--swap", "1x4=leg"),
      refused("--swap", "1x4=wood"),
      refused("--swap", "3x3=1x4"),
      refused("--swap", "1x4"),
      refused("--write"),
    ].join("\n"),
  ).toMatchSnapshot();
  expect(read(PLAN)).toBe(before);
  expect(firstLine(run("adapt", "none.sawbuck", "--set", 'a=1"').stderr)).toBe(
    "sawbuck: none.sawbuck: there is no such file",
  );
});
