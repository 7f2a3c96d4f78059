/** The README, the contributor's guide and the language reference stay true. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { ENTRY_FORMS } from "../grammar/forms";
import { DEEPEST, LONGEST_SUM, LONGEST_TEXT, parse } from "../grammar/parser";
import { CHECKS } from "../server/checks";
import { usageOf } from "../server/cli/usage";
import { diskReader } from "../server/lsp/disk";
import { MOST_FILES } from "../server/plan";
import { evaluate } from "../server/service";
import { fillNames, speciesNames } from "../server/trade";
import { UNITS } from "../server/units/table";
import { FUNCTIONS, PROPERTIES } from "../server/worked/expressions";
import { MOST_PIECES } from "../server/worked/parts";
import { MOST_SIDES } from "../server/worked/rings";
import { MOST_COPIES } from "../server/worked/settings";
import { MOST_STEPS } from "../server/worked/step-lines";

const ROOT = join(__dirname, "..");
const read = (name: string): string => readFileSync(join(ROOT, name), "utf8");
const plansIn = (name: string): string[] =>
  [...read(name).matchAll(/```sawbuck\n([\s\S]*?)```/g)].map((m) => m[1]!);
/** What stands between backticks, on one line. */
const quoted = (name: string): string[] => [...read(name).matchAll(/`([^`\n]+)`/g)].map((m) => m[1]!);
const FILES = ["README.md", "DEVELOPERS.md", "grammar/README.md"];
const scripts = (JSON.parse(read("package.json")) as { scripts: Record<string, string> }).scripts;

describe.each(FILES)("%s", (name) => {
  test("its plans read without complaint", () => {
    const complaints = plansIn(name).flatMap((plan) =>
      parse(plan).complaints.map((c) => `${c.says}: ${plan.slice(c.start, c.end)}`),
    );
    expect(complaints).toEqual([]);
    if (name !== "DEVELOPERS.md") expect(plansIn(name).length).toBeGreaterThan(0);
  });

  test("its links lead to files", () => {
    const links = [...read(name).matchAll(/\]\(([^)]+)\)/g)].map((m) => m[1]!);
    expect(links.filter((l) => !existsSync(join(ROOT, dirname(name), l)))).toEqual([]);
  });

  test("its npm commands exist", () => {
    const named = [...read(name).matchAll(/(?:`|^|&& )npm (?:run )?([a-z0-9:]+)/gm)].map((m) => m[1]!);
    const npms = ["ci", "install", "pack", "publish"];
    expect(named.filter((n) => !npms.includes(n) && !(n in scripts))).toEqual([]);
  });
});

describe("README.md", () => {
  test("opens with one paragraph that states the job, and then shows the editor", () => {
    const [title, paragraph, picture] = read("README.md").split("\n\n");
    expect(title).toBe("# Sawbuck");
    expect(paragraph).toMatch(/^Sawbuck is for people who build .+\.$/);
    expect(picture).toMatch(/^!\[.+\]\(client\/media\/editor\.png\)$/);
  });

  test("lists every problem with its class and headline, and no other", () => {
    const rows = [...read("README.md").matchAll(/^\| `([a-z-]+)` \| (\w+) \| (.+) \|$/gm)]
      .map((m) => m.slice(1, 4))
      .filter(([, kind]) => ["error", "hazard", "warning", "hint"].includes(kind!));
    expect(rows).toEqual(CHECKS.map((c) => [c.code, c.class, c.title]));
  });

  test("its plan is the sample it names, and has no problem", () => {
    const [plan] = plansIn("README.md");
    expect(plan).toBe(read("samples/cold-frame.sawbuck"));
    const { problems } = evaluate(join(ROOT, "samples/cold-frame.sawbuck"), plan!, diskReader);
    expect(problems.map((p) => p.code)).toEqual([]);
  });

  test("tells the command line as the program tells it", () => {
    const commands = [...usageOf().matchAll(/^ {2}(sawbuck .+)$/gm)].map((m) => m[1]!);
    expect(commands.length).toBe(14);
    expect(commands.filter((c) => !read("README.md").includes(`\n${c}\n`))).toEqual([]);
  });
});

describe("DEVELOPERS.md", () => {
  const rooms = [
    "grammar/",
    "client/",
    "test/",
    "samples/",
    ...readdirSync(join(ROOT, "server"), { withFileTypes: true })
      .filter((e) => e.isDirectory())
      .map((e) => `server/${e.name}/`),
  ];

  test("names every room in its code map, and no other", () => {
    const named = [...read("DEVELOPERS.md").matchAll(/^\| `([a-z/]+\/)` \|/gm)].map((m) => m[1]!);
    expect([...named].sort()).toEqual([...rooms].sort());
  });

  test("names files and folders that exist", () => {
    const folders = new Set(rooms.map((r) => r.split("/")[0]!).concat("server", ".ci"));
    const paths = quoted("DEVELOPERS.md").filter(
      (q) => /^[\w./-]+$/.test(q) && q.includes("/") && folders.has(q.split("/")[0]!),
    );
    expect(paths.length).toBeGreaterThan(30);
    // What a run leaves behind is not there in a fresh clone.
    const made = ["test/e2e/output/", "test/sheet/output/", "test/published/output/strength.txt"];
    expect(paths.filter((p) => !made.includes(p) && !existsSync(join(ROOT, p)))).toEqual([]);
  });

  test("names every npm script", () => {
    const guide = read("DEVELOPERS.md");
    const missing = Object.keys(scripts).filter(
      (s) => !guide.includes(`npm run ${s}`) && !guide.includes(`npm ${s}`),
    );
    expect(missing).toEqual([]);
  });
});

describe("the language reference", () => {
  const reference = read("grammar/README.md");

  test("tells every entry and every clause, with its example and meaning", () => {
    const missing = ENTRY_FORMS.flatMap((e) => [
      ...(reference.includes(`### \`${e.word}\``) && reference.includes(e.doc) ? [] : [e.word]),
      ...e.clauses
        .filter((c) => !reference.includes(`| \`${c.example}\` | ${c.doc.replace(/\|/g, "\\|")} |`))
        .map((c) => `${e.word}: ${c.example}`),
    ]);
    expect(missing).toEqual([]);
  });

  test("says of every entry whether it works", () => {
    const table = reference.slice(reference.indexOf("## Works, and to come"));
    const rows = [...table.matchAll(/^\| (.+?) \| .+ \|$/gm)].map((m) => m[1]!);
    const told = rows.flatMap((row) => [...row.matchAll(/`([a-z]+)`/g)].map((m) => m[1]!));
    expect(ENTRY_FORMS.map((e) => e.word).filter((word) => !told.includes(word))).toEqual([]);
  });

  test("names every unit, function, property, built-in fill and species", () => {
    const said = reference.match(/`[^`\n]+`/g)!.join(" ");
    const has = (word: string): boolean =>
      new RegExp(`(^|[^a-z-])${word.replace(/[.*+?^$]/g, "\\$&")}($|[^a-z-])`).test(said);
    const units = UNITS.flatMap((u) => u.names);
    expect(units.filter((u) => !has(u))).toEqual([]);
    const words = [...FUNCTIONS, ...PROPERTIES, ...fillNames(), ...speciesNames()];
    expect(words.length).toBeGreaterThan(60);
    expect(words.filter((w) => !has(w))).toEqual([]);
  });

  test("gives the limits of the program", () => {
    const limits = {
      LONGEST_TEXT,
      DEEPEST,
      LONGEST_SUM,
      MOST_FILES,
      MOST_PIECES,
      MOST_COPIES,
      MOST_SIDES,
      MOST_STEPS,
    };
    const table = /## Limits\n([\s\S]+?)\n## /.exec(reference)![1]!;
    const told = [...table.matchAll(/\| ([\d,]+) \|$/gm)].map((m) => Number(m[1]!.replaceAll(",", "")));
    expect(told).toEqual(Object.values(limits));
  });
});
