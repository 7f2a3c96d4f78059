/** “Compare With Last Commit”, as an editor asks for it, in real git repositories. */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { addressOfName } from "../../server/lsp/addresses";
import { lastCommitted } from "../../server/lsp/committed";
import type { LastCommitted } from "../../server/lsp/comparing";
import { type Editor, editor, uriOf } from "./editor";

const LEG = "part leg 4 of 2x4, length tall\n";
const RACK = `plan Boot rack\n  language 1\n  units inches to 1/8"\nbring yard.sawbuck\n${LEG}`;
const YARD = 'measure tall = 12"\n';

let root: string;
let plan: string;
let e: Editor;

function git(...args: string[]): void {
  const { status, stderr } = spawnSync("git", args, {
    cwd: root,
    encoding: "utf8",
    env: {
      ...process.env,
      GIT_CONFIG_GLOBAL: "/dev/null",
      GIT_CONFIG_SYSTEM: "/dev/null",
      GIT_AUTHOR_NAME: "Yard",
      GIT_AUTHOR_EMAIL: "yard@school.example",
      GIT_COMMITTER_NAME: "Yard",
      GIT_COMMITTER_EMAIL: "yard@school.example",
      // Still the day before where Greenwich is.
      GIT_COMMITTER_DATE: "2026-05-09T01:30:00+0600",
    },
  });
  expect([status, stderr]).toEqual([0, ""]);
}

function write(name: string, text: string): void {
  mkdirSync(dirname(join(root, name)), { recursive: true });
  writeFileSync(join(root, name), text);
}

/** Two plans, committed. */
function commit(): void {
  git("init", "-q", "-b", "main");
  git("add", "-A");
  git("commit", "-q", "-m", "A rack");
}

beforeEach(() => {
  root = realpathSync(mkdtempSync(join(tmpdir(), "sawbuck-compare-")));
  plan = join(root, "plans/rack.sawbuck");
  write("plans/rack.sawbuck", RACK);
  write("plans/yard.sawbuck", YARD);
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

async function start(text = RACK, committed: LastCommitted | undefined = lastCommitted): Promise<void> {
  e = await editor({
    disk: new Map([[join(root, "plans/yard.sawbuck"), YARD]]),
    folder: root,
    ...(committed && { lastCommitted: committed }),
  });
  await e.open(plan, text);
}

interface Answer {
  readonly title: string;
  readonly refused?: string;
  readonly version: number;
  readonly parts: readonly { readonly name: string; readonly html: string }[];
}
const compare = (language = "en", uri = uriOf(plan)): Promise<Answer | null> =>
  e.connection.sendRequest("sawbuck/compare", { uri, language });

/** Its text, a line for each part of the page. */
const told = (answer: Answer | null): string[] =>
  (answer?.parts ?? []).map(({ html }) =>
    html
      .replace(/<svg.*?<\/svg>/gs, "[drawing]")
      .replace(/<[^>]+>/g, " ")
      .replace(/\s+/g, " ")
      .trim(),
  );
const commitShown = (texts: string[]): string[] =>
  texts.map((text) => text.replace(/\([0-9a-f]{7},/, "(COMMIT,"));

describe("compared with the last commit", () => {
  test("a plan tells what changed about the thing, while it is edited and not yet saved", async () => {
    commit();
    await start();
    expect(commitShown(told(await compare()))).toMatchInlineSnapshot(`
      [
        "What changed: Boot rack from rack.sawbuck as last committed (COMMIT, 2026-05-09) to rack.sawbuck",
        "The plan Nothing of the thing changed: pieces, joints, boards, cost, work and problems are the same. Lengths are compared to the marks of the tape.",
      ]
    `);
    await e.replace(plan, RACK.replace("leg 4", "leg 5"));
    expect(commitShown(told(await compare()))).toMatchInlineSnapshot(`
      [
        "What changed: Boot rack from rack.sawbuck as last committed (COMMIT, 2026-05-09) to rack.sawbuck",
        "The plan Weight 4.1 lb (1.9 kg) of dry wood → 5.1 lb (2.3 kg) of dry wood",
        "Pieces Changed leg, 5 pieces of 2x4, 12" how many: 4 → 5 new: leg / 5",
      ]
    `);
    expect((await compare())?.title).toBe("What changed: Boot rack");
    expect((await compare())?.version).toBe(2);
  });

  test("what it brings counts as it was then", async () => {
    write("plans/yard.sawbuck", 'measure tall = 14"\n');
    commit();
    await start();
    expect(told(await compare()).join("\n")).toContain('length: 14" → 12"');
  });

  test("in French", async () => {
    commit();
    await start(RACK.replace("leg 4", "leg 5"));
    expect(commitShown(told(await compare("fr")))).toMatchInlineSnapshot(`
      [
        "Ce qui a changé : Boot rack de rack.sawbuck du dernier commit (COMMIT, 2026-05-09) à rack.sawbuck",
        "Le plan Poids 4,1 lb (1,9 kg) de bois sec → 5,1 lb (2,3 kg) de bois sec",
        "Pièces Changé leg, 5 pièces en 2x4, 12" nombre : 4 → 5 nouvelles : leg / 5",
      ]
    `);
  });

  test("a plan that was not there is new", async () => {
    commit();
    write("plans/bench.sawbuck", RACK);
    await start();
    plan = join(root, "plans/bench.sawbuck");
    await e.open(plan, RACK);
    expect(told(await compare())[0]).toBe("What changed: Boot rack bench.sawbuck is new");
  });

  test("is worked out anew after a commit", async () => {
    commit();
    await start(RACK.replace("leg 4", "leg 5"));
    expect(told(await compare()).join()).toContain("Pieces");
    write("plans/rack.sawbuck", RACK.replace("leg 4", "leg 5"));
    git("commit", "-q", "-am", "Five");
    expect(told(await compare()).join()).toContain("Nothing of the thing changed");
  });

  test("an answer for a text that changed meanwhile is none", async () => {
    commit();
    await start();
    const asked = compare();
    await e.replace(plan, RACK.replace("leg 4", "leg 5"));
    expect(await asked).toBeNull();
    await e.close(plan);
    expect(await compare()).toBeNull();
  });
});

describe("is refused in words", () => {
  const refused = async (language: string) => (await compare(language))?.refused;

  test("where there is no repository, or nothing in it yet", async () => {
    await start();
    expect([await refused("en"), await refused("fr")]).toMatchInlineSnapshot(`
      [
        "There is nothing to compare with: this plan is in no git repository. “git init” in its folder begins one.",
        "Il n’y a rien à comparer : ce plan n’est dans aucun dépôt git. « git init » dans son dossier en commence un.",
      ]
    `);
    git("init", "-q");
    expect([await refused("en"), await refused("fr")]).toMatchInlineSnapshot(`
      [
        "There is nothing to compare with yet: this repository has no commit.",
        "Il n’y a encore rien à comparer : ce dépôt n’a aucun commit.",
      ]
    `);
  });

  test("where git is not there", async () => {
    await start(RACK, () => "no git");
    expect([await refused("en"), await refused("fr")]).toMatchInlineSnapshot(`
      [
        "There is nothing to compare with: git is not installed, or is not found.",
        "Il n’y a rien à comparer : git n’est pas installé, ou est introuvable.",
      ]
    `);
  });

  test("of a text on no disk, and in a browser", async () => {
    commit();
    await start();
    plan = "untitled:rack.sawbuck";
    await e.open(addressOfName(plan), RACK);
    const untitled = await compare("en", addressOfName(plan));
    plan = join(root, "plans/rack.sawbuck");
    await start(RACK, undefined);
    expect([untitled?.refused, await refused("en"), await refused("fr")]).toMatchInlineSnapshot(`
      [
        "There is nothing to compare with: the plan is in no file on a disk, where git keeps its versions.",
        undefined,
        undefined,
      ]
    `);
  });
});
