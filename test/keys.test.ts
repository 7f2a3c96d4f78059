/** What the manifest adds to the editor: keys that were free, few settings, commands that are there, and files that ship. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const ROOT = join(__dirname, "..");
const read = (path: string): string => readFileSync(join(ROOT, path), "utf8");

interface Manifest {
  readonly files: readonly string[];
  readonly l10n: string;
  readonly contributes: {
    readonly languages: readonly { readonly icon: Readonly<Record<string, string>> }[];
    readonly commands: readonly { readonly command: string }[];
    readonly keybindings: readonly {
      readonly command: string;
      readonly key: string;
      readonly mac: string;
      readonly when: string;
    }[];
    readonly menus: Readonly<Record<string, readonly { readonly command: string; readonly when: string }[]>>;
    readonly configuration: { readonly properties: object };
    readonly walkthroughs: readonly {
      readonly steps: readonly {
        readonly id: string;
        readonly description: string;
        readonly media: { readonly svg: string };
        readonly completionEvents: readonly string[];
      }[];
    }[];
  };
}
const manifest = JSON.parse(read("package.json")) as Manifest;
const { contributes } = manifest;
const english = JSON.parse(read("package.nls.json")) as Record<string, string>;
const commands = contributes.commands.map(({ command }) => command);

/** Recorded by test/e2e/default-keys.mjs; `source` in it names the workbench and its version. */
const DEFAULTS = JSON.parse(read("test/e2e/default-keys.json")) as {
  readonly source: string;
  readonly keys: Readonly<Record<"windows" | "macos" | "linux", readonly string[]>>;
};

describe("keys", () => {
  const own = contributes.keybindings;
  const on = { windows: "key", macos: "mac", linux: "key" } as const;

  test("are compared with whole lists, of the workbench that the real-editor run pins", () => {
    expect(read("test/e2e/setup-workbench.sh")).toContain(
      `code_server=${/code-server ([\d.]+)/.exec(DEFAULTS.source)![1]}\n`,
    );
    for (const [name, keys] of Object.entries(DEFAULTS.keys)) {
      const control = name === "macos" ? "cmd" : "ctrl";
      expect(keys.length).toBeGreaterThan(390);
      // The palette, saving all, and a key of the Markdown extension that comes with it.
      expect(keys).toEqual(expect.arrayContaining(["f1", `${control}+k s`, `${control}+k v`]));
    }
  });

  test.each(["windows", "macos", "linux"] as const)("were free on %s, and none begins another", (name) => {
    const mine = own.map((binding) => binding[on[name]]);
    const taken = DEFAULTS.keys[name];
    expect(new Set(mine).size).toBe(mine.length);
    for (const key of mine) {
      expect(taken).not.toContain(key);
      expect(taken.filter((one) => one.startsWith(`${key} `))).toEqual([]);
    }
  });

  test("share one first half, stand for commands, and only where a plan or its sheet is", () => {
    expect(new Set(own.map(({ key }) => key.split(" ")[0]))).toEqual(new Set(["ctrl+k"]));
    for (const { command, key, mac, when } of own) {
      expect(commands).toContain(command);
      expect(mac).toBe(key.replace("ctrl", "cmd"));
      expect(when).toMatch(/^editorLangId == sawbuck( \|\| activeWebviewPanelId == 'sawbuck.sheet')?$/);
    }
  });

  test("are told in the README", () => {
    const told = read("README.md");
    for (const { key } of own) {
      const shown = key.split(" ").map((chord) =>
        chord
          .split("+")
          .map((one) => one[0]!.toUpperCase() + one.slice(1))
          .join("+"),
      );
      expect(told).toContain(`\`${shown.join(" ")}\``);
    }
  });
});

describe("the manifest", () => {
  test("has at most twelve settings, each told in the README", () => {
    const names = Object.keys(contributes.configuration.properties);
    expect(names.length).toBeLessThanOrEqual(12);
    expect(names.filter((name) => !read("README.md").includes(`\`${name}\``))).toEqual([]);
  });

  test("names texts that are there, and every text is named", () => {
    const named = [...read("package.json").matchAll(/"%([\w.]+)%"/g)].map((m) => m[1]!);
    expect([...named].sort()).toEqual(Object.keys(english).sort());
  });

  test("has only commands in its menus that are there", () => {
    const inMenus = Object.values(contributes.menus)
      .flat()
      .map(({ command }) => command);
    expect(inMenus.filter((command) => !commands.includes(command))).toEqual([]);
  });
});

describe("the walkthrough", () => {
  const [{ steps } = { steps: [] }] = contributes.walkthroughs;

  test("has buttons for commands of its own in every step", () => {
    for (const { id, description } of steps) {
      const text = english[description.slice(1, -1)]!;
      const linked = [...text.matchAll(/\]\(command:([\w.]+)/g)].map((m) => m[1]!);
      expect([id, linked.length > 0]).toEqual([id, true]);
      const foreign = linked.filter((command) => !commands.includes(command));
      expect([id, foreign]).toEqual([id, []]);
    }
  });

  test("knows when a step is done", () => {
    for (const { id, completionEvents } of steps) {
      expect([id, completionEvents.length > 0]).toEqual([id, true]);
      for (const event of completionEvents) {
        const [kind, what] = event.split(":") as [string, string];
        if (kind === "onContext") expect(read("client/practice.ts")).toContain(`"${what}"`);
        else if (kind === "onSettingChanged")
          expect(Object.keys(contributes.configuration.properties)).toContain(what);
        else expect([kind, commands.includes(what)]).toEqual(["onCommand", true]);
      }
    }
  });
});
