/** `sawbuck format` as it is shipped. Needs dist/cli.js. */
import {
  chmodSync,
  cpSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { runCli } from "./run";

const ROOT = join(__dirname, "../..");
const LOOSE = 'part   leg 4 of 2x4 , length 9"   # four\nprat  a  of 2x4\n';
const LAID = 'part leg 4 of 2x4, length 9"  # four\nprat  a  of 2x4\n';
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "sawbuck-format-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const run = (args: readonly string[], input?: string | Uint8Array) =>
  runCli(["format", ...args], { cwd: folder, ...(input !== undefined && { input }) });
const write = (name: string, text: string | Uint8Array) => writeFileSync(join(folder, name), text);
const read = (name: string) => readFileSync(join(folder, name), "utf8");

test("a plan with an unsettled merge is left as it is, and said so", () => {
  const text =
    '<<<<<<< HEAD\npart  leg 4 of 2x4, length 9"\n=======\npart leg 4 of 2x4, length 8"\n>>>>>>> x\n';
  write("merged.sawbuck", text);
  for (const args of [["merged.sawbuck"], ["merged.sawbuck", "--check"]])
    expect(run(args)).toEqual({
      stdout: "",
      stderr:
        "sawbuck: merged.sawbuck: two versions of the same lines stand in it, one of which has to go; nothing was written\n",
      status: 2,
    });
  expect(read("merged.sawbuck")).toBe(text);
});

describe("files", () => {
  test("are laid out and named where that changes them, and not touched where it does not", () => {
    mkdirSync(join(folder, "plans/deep"), { recursive: true });
    write("plans/a.sawbuck", LOOSE);
    write("plans/deep/two\nlines é#%.sawbuck", LOOSE);
    write("plans/b.sawbuck", LAID);
    const fileItself = () => {
      const { ino, mtimeNs } = statSync(join(folder, "plans/b.sawbuck"), { bigint: true });
      return { ino, mtimeNs };
    };
    const before = fileItself();
    const would =
      "plans/a.sawbuck would be laid out anew\nplans/deep/two\nlines é#%.sawbuck would be laid out anew\n";
    expect(run(["plans", "--check"])).toEqual({ stdout: would, stderr: "", status: 1 });
    expect(read("plans/a.sawbuck")).toBe(LOOSE);
    expect(run(["plans"])).toEqual({
      stdout: would.replaceAll("would be laid", "is laid"),
      stderr: "",
      status: 0,
    });
    expect(read("plans/a.sawbuck")).toBe(LAID);
    expect(fileItself()).toEqual(before);
    expect(readdirSync(join(folder, "plans"))).toEqual(["a.sawbuck", "b.sawbuck", "deep"]);
    expect(run(["plans", "--check"])).toEqual({ stdout: "", stderr: "", status: 0 });
    expect(run(["plans"])).toEqual({ stdout: "", stderr: "", status: 0 });
  });

  test("of the samples and the mistakes come out the same when they are laid out again", () => {
    cpSync(join(ROOT, "samples"), join(folder, "samples"), { recursive: true });
    run(["samples"]);
    expect(run(["samples", "--check"]).stdout).toBe("");
  });

  test("keep their line ends, their byte order mark, and who may read them", () => {
    write("windows.sawbuck", `\uFEFF${LOOSE.replaceAll("\n", "\r\n")}`);
    chmodSync(join(folder, "windows.sawbuck"), 0o640);
    expect(run(["windows.sawbuck"]).status).toBe(0);
    expect(read("windows.sawbuck")).toBe(`\uFEFF${LAID.replaceAll("\n", "\r\n")}`);
    expect(statSync(join(folder, "windows.sawbuck")).mode & 0o777).toBe(0o640);
  });

  test("behind a link are laid out where they are", () => {
    mkdirSync(join(folder, "real"));
    write("real/a.sawbuck", LOOSE);
    symlinkSync("real/a.sawbuck", join(folder, "link.sawbuck"));
    expect(run(["link.sawbuck"]).status).toBe(0);
    expect(read("real/a.sawbuck")).toBe(LAID);
    expect(
      readdirSync(folder, { withFileTypes: true })
        .find((e) => e.name === "link.sawbuck")!
        .isSymbolicLink(),
    ).toBe(true);
  });

  test("that cannot be read or may not be written are told, and the others are laid out", () => {
    const bytes = Uint8Array.from([0x6e, 0x6f, 0x74, 0x65, 0x20, 0x20, 0xe9, 0x0a]);
    write("latin.sawbuck", bytes);
    write("nul.sawbuck", "part \0 leg\n");
    write("shut.sawbuck", LOOSE);
    write("one.sawbuck", LOOSE);
    write("z.sawbuck", LOOSE);
    chmodSync(join(folder, "shut.sawbuck"), 0o444);
    linkSync(join(folder, "one.sawbuck"), join(folder, "two.txt"));
    expect(run([".", "nowhere.sawbuck"])).toMatchInlineSnapshot(`
      {
        "status": 2,
        "stderr": "sawbuck: nowhere.sawbuck: there is no such file
      sawbuck: latin.sawbuck: it is not text in UTF-8; nothing was written
      sawbuck: nul.sawbuck: it is no text of a plan; nothing was written
      sawbuck: one.sawbuck: it has more names than this one (hard links); nothing was written
      sawbuck: shut.sawbuck: it may not be written
      ",
        "stdout": "z.sawbuck is laid out anew
      ",
      }
    `);
    expect([...readFileSync(join(folder, "latin.sawbuck"))]).toEqual([...bytes]);
    expect([read("shut.sawbuck"), read("one.sawbuck"), read("z.sawbuck")]).toEqual([LOOSE, LOOSE, LAID]);
  });
});

test("standard input is printed laid out, or only looked at", () => {
  expect(run(["-"], LOOSE)).toEqual({ stdout: LAID, stderr: "", status: 0 });
  expect(run(["-"], LAID)).toEqual({ stdout: LAID, stderr: "", status: 0 });
  expect(run(["-", "--check"], LOOSE)).toEqual({ stdout: "", stderr: "", status: 1 });
  expect(run(["-", "--check"], LAID)).toEqual({ stdout: "", stderr: "", status: 0 });
  expect(run(["-"], Uint8Array.of(0xe9))).toEqual({
    stdout: "",
    stderr: "sawbuck: standard input: it is not text in UTF-8; nothing was written\n",
    status: 2,
  });
});

test("what is asked wrongly is said", () => {
  mkdirSync(join(folder, "empty"));
  const first = (...args: string[]) => [run(args).stderr.split("\n")[0], run(args).status];
  expect(first()).toEqual(["sawbuck: “format” wants files or folders, or “-”.", 2]);
  expect(first("-", "a.sawbuck")).toEqual(["sawbuck: “-” is given alone, without files.", 2]);
  expect(first("--write", "a.sawbuck")).toEqual(["sawbuck: “format” has no option --write.", 2]);
  expect(first("empty")).toEqual(["sawbuck: no *.sawbuck file was found there", 2]);
});
