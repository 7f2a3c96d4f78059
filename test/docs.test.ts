/** The README, the contributor's guide and the language reference stay true. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { ENTRY_FORMS } from "../grammar/forms";
import { parse } from "../grammar/parser";
import { CHECKS } from "../server/checks";
import type { Reader } from "../server/plan";
import { evaluate } from "../server/service";

const ROOT = join(__dirname, "..");
const read = (name: string): string => readFileSync(join(ROOT, name), "utf8");
const nothing: Reader = (path) => ({ file: path, refused: "there is no such file" });
const FILES = ["README.md", "DEVELOPERS.md", "grammar/README.md"];

describe.each(FILES)("%s", (name) => {
  test("its plans read without complaint", () => {
    const blocks = [...read(name).matchAll(/```sawbuck\n([\s\S]*?)```/g)].map((m) => m[1]!);
    expect(blocks.flatMap((b) => parse(b).complaints.map((c) => `${c.says}: ${b}`))).toEqual([]);
    if (name !== "DEVELOPERS.md") expect(blocks.length).toBeGreaterThan(0);
  });

  test("its links lead to files", () => {
    const links = [...read(name).matchAll(/\]\(([^)]+)\)/g)].map((m) => m[1]!);
    expect(links.filter((l) => !existsSync(join(ROOT, dirname(name), l)))).toEqual([]);
  });

  test("its npm commands exist", () => {
    const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };
    const named = [...read(name).matchAll(/(?:`|^)npm (?:run )?([a-z:]+)/gm)].map((m) => m[1]!);
    const builtIn = ["ci", "start", "test", "run"];
    expect(named.filter((n) => !builtIn.includes(n) && !(n in scripts))).toEqual([]);
  });
});

describe("README.md", () => {
  test("opens with one paragraph that states the job", () => {
    const [title, paragraph] = read("README.md").split("\n\n");
    expect(title).toBe("# Sawbuck");
    expect(paragraph).toMatch(/^Sawbuck is for people who build/);
  });

  test("lists every problem with its class and headline, and no other", () => {
    const rows = [...read("README.md").matchAll(/^\| `([a-z-]+)` \| (\w+) \| (.+) \|$/gm)].map((m) =>
      m.slice(1, 4),
    );
    expect(rows).toEqual(CHECKS.map((c) => [c.code, c.class, c.title]));
  });

  test("its sample plan has no problem", () => {
    const [plan] = [...read("README.md").matchAll(/```sawbuck\n([\s\S]*?)```/g)].map((m) => m[1]!);
    expect(evaluate("plan.sawbuck", plan!, nothing).problems.map((p) => p.code)).toEqual([]);
  });
});

test("the contributor's guide names every room", () => {
  const rooms = readdirSync(join(ROOT, "server"), { withFileTypes: true })
    .filter((e) => e.isDirectory())
    .map((e) => `server/${e.name}/`);
  const guide = read("DEVELOPERS.md");
  const missing = ["grammar/", "client/", "test/", "samples/", ...rooms].filter(
    (r) => !guide.includes(`\`${r}\``),
  );
  expect(missing).toEqual([]);
});

test("the language reference tells every entry and every clause, with its example and meaning", () => {
  const reference = read("grammar/README.md");
  const missing = ENTRY_FORMS.flatMap((e) => [
    ...(reference.includes(`### \`${e.word}\``) && reference.includes(e.doc) ? [] : [e.word]),
    ...e.clauses
      .filter((c) => !reference.includes(`| \`${c.example}\` | ${c.doc.replace(/\|/g, "\\|")} |`))
      .map((c) => `${e.word}: ${c.example}`),
  ]);
  expect(missing).toEqual([]);
});
