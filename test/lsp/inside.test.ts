/** Where the lines of a plan may read: by the look of paths on every system, on a disk with its links, and in an editor. */
import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics";
import { diskReader, onDisk } from "../../server/lsp/disk";
import { workedIn } from "../../server/lsp/folders";
import { confined, isInside, joined, LONGEST_PATH, notRelative } from "../../server/lsp/inside";
import { evaluate } from "../../server/service";
import { RUNS } from "../property/plans";
import { type Editor, editor, uriOf } from "./editor";

const ROOT = "a path is written from the file it stands in, not from the root of a disk";
const HOME = "a path is written from the file it stands in, not from a home folder";
const ADDRESS = "it is an address, and no path to a file";
const OUTSIDE = "it lies outside the folder you work in";
const LINK = "a link leads outside the folder you work in";

test.each([
  ["/etc/passwd", ROOT],
  ["\\Windows\\win.ini", ROOT],
  ["\\\\server\\share\\shop.sawbuck", ROOT],
  ["//server/share/shop.sawbuck", ROOT],
  ["\\\\?\\C:\\shop.sawbuck", ROOT],
  ["C:\\shop.sawbuck", ROOT],
  ["c:shop.sawbuck", ROOT],
  ["~/shop.sawbuck", HOME],
  ["~ada\\shop.sawbuck", HOME],
  ["~", HOME],
  ["file:///etc/passwd", ADDRESS],
  ["FILE:shop.sawbuck", ADDRESS],
  ["https://yard.example/shop.sawbuck", ADDRESS],
  ["data:text/plain,part", ADDRESS],
  ["shop.sawbuck:hidden", ADDRESS],
  ["shop\0.sawbuck", "it cannot be read"],
  ["x".repeat(LONGEST_PATH + 1), "its path is too long"],
  ["~shop.sawbuck", undefined],
  ["../shop.sawbuck", undefined],
  ["my shop, new.sawbuck", undefined],
])("%j", (path, why) => {
  expect(notRelative(path)).toBe(why);
});

test.each([
  ["/yard/a", "/yard", true],
  ["/yard/deep/a", "/yard/", true],
  ["/yard", "/yard", false],
  ["/yard2/a", "/yard", false],
  ["/yard/../etc/a", "/yard", false],
  ["/yard/deep/../a", "/yard", true],
  ["/a", "/", true],
  ["/../a", "/", true],
  ["a", ".", true],
  ["deep/a", ".", true],
  ["../a", ".", false],
  ["deep/../../a", ".", false],
  ["/a", ".", false],
  ["C:\\a", ".", false],
  ["../yard/a", "../yard", true],
  ["../../yard/a", "../yard", false],
  ["../../a", "..", false],
  ["C:\\yard\\a", "c:\\yard", true],
  ["c:/yard/a", "C:\\yard", true],
  ["C:\\yard\\..\\a", "C:\\yard", false],
  ["D:\\yard\\a", "C:\\yard", false],
  ["\\\\server\\share\\a", "\\\\server\\share", true],
  ["\\\\server\\other\\a", "\\\\server\\share", false],
  ["memfs:/yard/a", "memfs:/yard", true],
  ["memfs:/other/a", "memfs:/yard", false],
  ["vscode-vfs://ada/yard/a", "vscode-vfs://ada/yard", true],
  ["vscode-vfs://bob/yard/a", "vscode-vfs://ada/yard", false],
  ["memfs:/yard/..\\..\\a", "memfs:/yard", false],
])("%j lies in %j: %j", (file, folder, inside) => {
  expect(isInside(file, folder)).toBe(inside);
});

test("the name of what a path leads to", () => {
  expect(joined("../b", "/yard/deep/a")).toBe("/yard/b");
  expect(joined("b", "a")).toBe("b");
  expect(joined("../b", "a")).toBe("../b");
  expect(joined("..\\b", "C:\\yard\\deep\\a")).toBe("c:\\yard\\b");
  expect(joined("%2e%2e/b", "memfs:/yard/a")).toBe("memfs:/yard/%252e%252e/b");
  expect(joined("../../b", "memfs:/yard/a")).toBe("memfs:/b");
  expect(joined("/b", "/yard/a")).toBe("/b");
});

test("any path, on any system: nothing is read but what lies in the folder", () => {
  const piece = fc.constantFrom("..", ".", "", "a", "yard", "C:", "~", "%2e%2e", "file:", "\0", "x y");
  const path = fc.array(fc.tuple(piece, fc.constantFrom("/", "\\")), { maxLength: 8 });
  const places = fc.constantFrom(
    { folder: "/home/yard", from: "/home/yard/deep/a" },
    { folder: ".", from: "deep/a" },
    { folder: "../yard", from: "../yard/deep/a" },
    { folder: "C:\\home\\yard", from: "C:\\home\\yard\\deep\\a" },
    { folder: "memfs:/yard", from: "memfs:/yard/deep/a" },
  );
  fc.assert(
    fc.property(path, places, (parts, { folder, from }) => {
      const asked: string[] = [];
      const raw = (typed: string, seenFrom: string) => {
        const file = joined(typed, seenFrom);
        asked.push(file);
        return { file, text: "" };
      };
      const typed = parts.flat().join("");
      const found = confined(raw, () => folder)(typed, from, from);
      expect(asked.every((file) => isInside(file, folder))).toBe(true);
      expect("text" in found).toBe(asked.length === 1);
      // What is read otherwise than it looks would have to name its way up.
      if (asked.length === 1 && !/\.\./.test(typed)) expect(typed).not.toMatch(/^[\\/]|^[A-Za-z]:/);
    }),
    { numRuns: RUNS },
  );
});

test("the outermost open folder, else the plan's own", () => {
  const files = { toFile: (uri: string) => uri.slice("file://".length), toUri: uriOf };
  const within = (...folders: string[]) => workedIn(() => folders.map(uriOf), files);
  expect(within("/yard/deep", "/yard", "/other")("/yard/deep/a")).toBe("/yard");
  expect(within("/yard/")("/yard/a")).toBe("/yard/");
  expect(within()("/yard/deep/a")).toBe("/yard/deep");
  expect(within()("/a")).toBe("/");
  expect(within("/yar")("C:\\yard\\a")).toBe("C:\\yard");
});

describe.runIf(existsSync("/dev/zero"))("on a disk", () => {
  let folder = "";
  const yard = (name: string): string => join(folder, "yard", name);
  beforeEach(() => {
    folder = realpathSync(mkdtempSync(join(tmpdir(), "sawbuck-inside-")));
    mkdirSync(yard("deep"), { recursive: true });
    mkdirSync(join(folder, "secret"));
    writeFileSync(join(folder, "secret/key.sawbuck"), 'measure key = 9"\n');
    writeFileSync(yard("sizes.sawbuck"), 'measure tall = 9"\n');
    symlinkSync("/etc/passwd", yard("passwd.sawbuck"));
    symlinkSync(join(folder, "secret"), yard("out"));
    symlinkSync("../secret/key.sawbuck", yard("key.sawbuck"));
    symlinkSync("/dev/zero", yard("zero.sawbuck"));
    symlinkSync("/proc/self/environ", yard("environ.sawbuck"));
    symlinkSync("sizes.sawbuck", yard("linked.sawbuck"));
    symlinkSync("round.sawbuck", yard("round.sawbuck"));
    execFileSync("mkfifo", [yard("pipe.sawbuck")]);
    symlinkSync(join(folder, "yard"), join(folder, "way"));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const read = (path: string, from = yard("deep/plan.sawbuck"), within = yard("")) =>
    confined(onDisk, () => within)(path, from, from);

  test.each([
    ["../sizes.sawbuck", undefined],
    ["../linked.sawbuck", undefined],
    [`${"../".repeat(20)}etc/passwd`, OUTSIDE],
    ["../../secret/key.sawbuck", OUTSIDE],
    ["..\\..\\secret\\key.sawbuck", OUTSIDE],
    ["../passwd.sawbuck", LINK],
    ["../key.sawbuck", LINK],
    ["../out/key.sawbuck", LINK],
    ["../zero.sawbuck", LINK],
    ["../environ.sawbuck", existsSync("/proc/self/environ") ? LINK : "there is no such file"],
    ["../pipe.sawbuck", "it is not an ordinary file"],
    ["../deep", "it is a folder"],
    ["../round.sawbuck", "it cannot be read"],
    ["%2e%2e/sizes.sawbuck", "there is no such file"],
    ["/dev/stdin", ROOT],
    [`${"x".repeat(400)}.sawbuck`, "its path is too long"],
    ["../sizes\0.sawbuck", "it cannot be read"],
  ])("%j", (path, why) => {
    const found = read(path);
    expect("refused" in found ? found.refused : undefined).toBe(why);
    expect("text" in found).toBe(why === undefined);
  });

  test("a folder that is itself reached by a link, and the reader's own word", () => {
    expect(
      read("../sizes.sawbuck", join(folder, "way/deep/plan.sawbuck"), join(folder, "way")),
    ).toMatchObject({ text: 'measure tall = 9"\n' });
    const own = confined(onDisk, () => yard(""))("../../secret/key.sawbuck", yard("deep/a"), undefined);
    expect(own).toMatchObject({ text: 'measure key = 9"\n' });
  });

  test("on the command line: where it is run, else the plan's own folder", () => {
    const here = "server/plan/load.ts";
    expect(diskReader("../../package.json", here, here)).toHaveProperty("text");
    expect(diskReader("../../../package.json", here, here)).toMatchObject({ refused: OUTSIDE });
    const whole = join(process.cwd(), here);
    expect(diskReader("../../package.json", whole, whole)).toHaveProperty("text");
    const plan = yard("deep/plan.sawbuck");
    expect(diskReader("../sizes.sawbuck", plan, plan)).toMatchObject({ refused: OUTSIDE, barred: true });
  });

  test("what a brought file brings is held to the plan's folder, what the own shop brings to that of the shop", () => {
    const files: Record<string, string> = {
      "parts/a.sawbuck": "bring ../b.sawbuck\nbring ../../secret/key.sawbuck\n",
      "b.sawbuck": "",
    };
    mkdirSync(yard("parts"));
    for (const [name, text] of Object.entries(files)) writeFileSync(yard(name), text);
    writeFileSync(join(folder, "secret/shop.sawbuck"), "bring key.sawbuck\nbring ../yard/b.sawbuck\n");
    const plan = yard("plan.sawbuck");
    const shop = { shop: "../secret/shop.sawbuck", shopFrom: plan };
    const { worked } = evaluate(plan, "bring parts/a.sawbuck\n", diskReader, shop);
    expect(worked.loaded.files.map(({ file }) => file.slice(folder.length))).toEqual([
      "/yard/plan.sawbuck",
      "/yard/parts/a.sawbuck",
      "/yard/b.sawbuck",
      "/secret/shop.sawbuck",
      "/secret/key.sawbuck",
    ]);
    expect(worked.loaded.faults.map(({ path, why }) => [path, why])).toEqual([
      ["../../secret/key.sawbuck", OUTSIDE],
      ["../yard/b.sawbuck", OUTSIDE],
    ]);
  });
});

test("every refusal is said in French too", () => {
  for (const why of [ROOT, HOME, ADDRESS, OUTSIDE, LINK, "its path is too long"]) {
    const refused = (path: string) => ({ file: path, refused: why, barred: true as const });
    const told = (language: "en" | "fr") =>
      diagnosticsOf(evaluate("p.sawbuck", "bring a.sawbuck\n", refused), language).map((d) => d.message);
    expect(told("en")).toEqual([`a.sawbuck was not read: ${why}.`]);
    expect(told("fr")).toHaveLength(1);
    expect(told("fr")[0]).toMatch(/^a\.sawbuck n’a pas été lu\u00a0: /);
    expect(told("fr")[0]).not.toContain(why);
  }
});

describe("in an editor", () => {
  const PLAN = "/yard/plans/bench.sawbuck";
  const told = async (e: Editor, file = PLAN): Promise<string[]> => {
    await e.until(() => e.pushed(file) !== undefined);
    return e.pushed(file)!.map(({ message }) => String(message));
  };

  test("a plan reads in the open folder alone, and no open text from outside", async () => {
    const disk = new Map([
      ["/yard/sizes.sawbuck", 'measure tall = 9"\n'],
      ["/secret/key.sawbuck", 'measure key = 9"\n'],
    ]);
    const e = await editor({ disk, folder: "/yard" });
    await e.open("/secret/key.sawbuck", 'measure key = 9"\n');
    await e.open(PLAN, "bring ../sizes.sawbuck\nbring ../../secret/key.sawbuck\nnote tall\n");
    expect((await told(e)).filter((m) => m.includes("not read"))).toEqual([
      `../../secret/key.sawbuck was not read: ${OUTSIDE}.`,
    ]);
  });

  test("in no open folder, in its own alone", async () => {
    const e = await editor({ disk: new Map([["/yard/sizes.sawbuck", ""]]), folder: "/other" });
    await e.open(PLAN, "bring ../sizes.sawbuck\n");
    expect(await told(e)).toEqual([`../sizes.sawbuck was not read: ${OUTSIDE}.`]);
  });

  test("in a folder that is on no disk, too: nothing outside is even asked for", async () => {
    const asked: string[] = [];
    const read = async (uri: string) => {
      asked.push(uri);
      return { refused: "there is no such file" };
    };
    const plan = "memfs:/yard/plans/bench.sawbuck";
    const e = await editor({ read, folder: "memfs:/yard" });
    const lines = [
      "../../secret/key.sawbuck",
      "..\\..\\..\\key.sawbuck",
      "/secret/key.sawbuck",
      "memfs:/secret/key.sawbuck",
      "%2e%2e/%2e%2e/key.sawbuck",
    ];
    await e.open(plan, lines.map((line) => `bring ${line}\n`).join(""));
    expect((await told(e, plan)).map((m) => m.replace(/^.* was not read: /, ""))).toEqual([
      `${OUTSIDE}.`,
      `${OUTSIDE}.`,
      `${ROOT}.`,
      `${ADDRESS}.`,
      "there is no such file.",
    ]);
    expect(asked).toEqual(["memfs:/yard/plans/%252e%252e/%252e%252e/key.sawbuck"]);
  });
});
