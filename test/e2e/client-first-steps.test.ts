/** What the walkthrough's buttons do, which plan a command is about, the list of what was not checked, and naming a shop file. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { Uri } from "vscode";
import { activePlan, planInSight } from "../../client/active-plan";
import { notCheckedList } from "../../client/not-checked";
import { MISSING, NAME, practice, SCREW } from "../../client/practice";
import type { Worked } from "../../client/protocol";
import type { Running } from "../../client/running";
import { shopFileChoice } from "../../client/shop-choice";

interface Text {
  readonly uri: { readonly toString: () => string };
  readonly languageId: string;
  text: string;
  isClosed: boolean;
  readonly getText: () => string;
  readonly positionAt: (offset: number) => {
    offset: number;
    translate: (lines: number, by: number) => unknown;
  };
}
const editor = vi.hoisted(() => ({
  language: "en",
  commands: {} as Record<string, () => Promise<unknown>>,
  done: [] as unknown[][],
  documents: [] as unknown[],
  active: undefined as unknown,
  visible: [] as unknown[],
  columns: [] as unknown[],
  selections: [] as unknown[],
  picks: "" as string,
  target: undefined as unknown,
  /** Whether there is a file where one is to be written: else why there is none. */
  stat: "FileNotFound",
  said: [] as string[],
  items: [] as unknown[],
  settings: [] as unknown[],
}));

const { FileSystemError } = vi.hoisted(() => ({
  FileSystemError: class extends Error {
    constructor(readonly code: string) {
      super(code);
    }
  },
}));

vi.mock("../../client/pointed", () => ({
  goTo: async (uri: unknown, line: number) => editor.done.push(["goTo", String(uri), line]),
}));
vi.mock("../../client/protocol", () => ({ NotCheckedRequest: "notChecked" }));
vi.mock("vscode", async () => ({
  l10n: (await import("./spoken")).l10n,
  FileSystemError,
  ConfigurationTarget: { Global: 1 },
  ViewColumn: { Active: -1, Beside: -2 },
  TextEditorRevealType: {},
  Disposable: { from: () => ({}) },
  Range: class {},
  Selection: class {
    constructor(readonly active: unknown) {}
  },
  Uri: {
    joinPath: (base: unknown, ...names: string[]) => [base, ...names].join("/"),
    parse: (text: string) => text,
  },
  env: {
    get language() {
      return editor.language;
    },
  },
  commands: {
    registerCommand: (id: string, run: () => Promise<unknown>) => {
      editor.commands[id] = run;
    },
    executeCommand: async (...what: unknown[]) => editor.done.push(what),
  },
  window: {
    get activeTextEditor() {
      return editor.active;
    },
    get visibleTextEditors() {
      return editor.visible;
    },
    tabGroups: { activeTabGroup: { activeTab: {} } },
    showTextDocument: async (document: Text, { viewColumn }: { viewColumn?: unknown } = {}) => {
      editor.columns.push(viewColumn);
      const shown = {
        document,
        viewColumn: 2,
        revealRange: () => {},
        edit: async (work: (edit: { insert: (at: { offset: number }, text: string) => void }) => void) =>
          work({
            insert: ({ offset }, text) => {
              document.text = document.text.slice(0, offset) + text + document.text.slice(offset);
            },
          }),
        set selection(value: { active: unknown }) {
          editor.selections.push(value.active);
        },
        get selection() {
          return { active: editor.selections.at(-1) };
        },
      };
      editor.visible = [shown];
      return shown;
    },
    showInformationMessage: async (said: string) => void editor.said.push(said),
    showErrorMessage: async (said: string) => void editor.said.push(said),
    showQuickPick: async (items: { label: string }[]) => {
      editor.items = items;
      return items.find(({ label }) => label.startsWith(editor.picks));
    },
    showOpenDialog: async () => editor.target && [editor.target],
    showSaveDialog: async () => editor.target,
  },
  workspace: {
    get textDocuments() {
      return editor.documents;
    },
    fs: {
      readFile: async (path: string) => (path.startsWith("ext/") ? path : readFileSync(path)),
      stat: async () => {
        if (editor.stat !== "there") throw new FileSystemError(editor.stat);
      },
      writeFile: async (to: unknown, bytes: unknown) => editor.done.push(["write", bytes, to]),
    },
    openTextDocument: async ({ content }: { content: string }) => {
      const name = `untitled:${editor.documents.length}`;
      const document: Text = {
        uri: { toString: () => name },
        languageId: "sawbuck",
        text: content,
        isClosed: false,
        getText: () => document.text,
        positionAt: (offset) => ({ offset, translate: (_, by) => ({ offset: offset + by }) }),
      };
      editor.documents.push(document);
      return document;
    },
    getConfiguration: () => ({ update: async (...what: unknown[]) => editor.settings.push(what) }),
  },
}));

const ROOT = join(__dirname, "../..") as unknown as Uri;
const run = (id: string): Promise<unknown> => editor.commands[id]!();
const document = (at = 0): Text => editor.documents[at] as Text;

beforeEach(() => {
  Object.assign(editor, { language: "en", active: undefined, target: undefined, picks: "" });
  editor.stat = "FileNotFound";
  for (const list of ["done", "documents", "visible", "columns", "selections", "said", "settings"] as const)
    editor[list].length = 0;
  editor.visible = [];
});

describe("the practice plan", () => {
  let worked: (what: Worked) => void = () => {};
  beforeEach(() => {
    practice({ onWorked: (tell: typeof worked) => (worked = tell) } as unknown as Running, ROOT);
  });

  test("opens beside the walkthrough, once, and anew after it was closed", async () => {
    await run("sawbuck.openPractice");
    await run("sawbuck.practice.mend");
    expect(editor.documents).toHaveLength(1);
    expect(editor.columns).toEqual([-2, 2]);
    document().isClosed = true;
    await run("sawbuck.practice.hover");
    expect(editor.documents).toHaveLength(2);
  });

  test("is in French where the editor is", async () => {
    editor.language = "fr";
    await run("sawbuck.openPractice");
    expect(document().text).toContain("plan Range-bottes");
  });

  test.each(["en", "fr"])("puts the cursor where each step is about (%s)", async (language) => {
    editor.language = language;
    const line = (): string => {
      const { offset } = editor.selections.at(-1) as { offset: number };
      const { text } = document();
      const start = text.lastIndexOf("\n", offset - 1) + 1;
      return `${text.slice(start, offset)}|${text.slice(offset, text.indexOf("\n", offset))}`;
    };
    await run("sawbuck.practice.mend");
    expect(line()).toBe('fasten slat face into rail face, 2 #8 x 4|" at each crossing');
    await run("sawbuck.practice.hover");
    expect(line()).toBe("part sl|at of 1x6, length rack-length");
    await run("sawbuck.practice.place");
    expect(line()).toBe("place lip |");
    expect(editor.done.at(-1)).toEqual(["editor.action.triggerSuggest"]);
    await run("sawbuck.practice.place");
    expect(line(), "pressed again").toBe("place lip |");
    expect(document().text.match(/place lip/g)).toHaveLength(1);
    expect(editor.done.at(-1)).toEqual(["editor.action.triggerSuggest"]);
    await run("sawbuck.practice.sheet");
    expect(editor.done.at(-1)).toEqual(["sawbuck.openSheet"]);
  });

  test.each(["", "\n"])("begins the missing line at the end where its remark was deleted", async (ending) => {
    await run("sawbuck.practice.mend");
    const bare = document().text.replace(MISSING, "").trimEnd();
    document().text = bare + ending;
    await run("sawbuck.practice.place");
    expect(document().text).toBe(`${bare}\nplace lip `);
    expect(editor.selections.at(-1)).toMatchObject({ offset: document().text.length });
  });

  test("steps stand in both plans", () => {
    for (const name of ["boot-rack", "boot-rack.fr"]) {
      const text = readFileSync(`${ROOT}/client/practice/${name}.sawbuck`, "utf8");
      expect([SCREW, NAME, MISSING].map((one) => one.test(text))).toEqual([true, true, true]);
    }
  });

  test("ticks a step once its problem is gone, and nothing for another plan or a line that is broken", async () => {
    await run("sawbuck.openPractice");
    const told = (uri: string, counts: Partial<Worked["counts"]>): unknown[] => {
      editor.done.length = 0;
      worked({
        uri,
        version: 1,
        counts: { errors: 0, hazards: 0, warnings: 0, hints: 0, unchecked: 3, ...counts },
      });
      return editor.done.map(([, context]) => context);
    };
    const uri = String(document().uri);
    expect(told(uri, { hazards: 1, warnings: 1 })).toEqual([]);
    expect(told(uri, { warnings: 1 })).toEqual(["sawbuck.practice.mended"]);
    expect(told(uri, { hazards: 1 })).toEqual(["sawbuck.practice.placed"]);
    expect(told(uri, { errors: 1 })).toEqual([]);
    expect(told("file:///other", {})).toEqual([]);
  });
});

describe("the plan a command is about", () => {
  const shown = (uri: string, languageId = "sawbuck") => ({ document: { uri, languageId } });
  test("is the active one, or else one in sight", () => {
    editor.visible = [shown("notes", "markdown"), shown("a")];
    expect([activePlan(), planInSight()]).toEqual([undefined, "a"]);
    editor.active = shown("b");
    expect([activePlan(), planInSight()]).toEqual(["b", "b"]);
    editor.active = shown("notes", "markdown");
    expect([activePlan(), planInSight()]).toEqual([undefined, "a"]);
    editor.visible = [];
    expect(planInSight()).toBeUndefined();
  });
});

describe("the list of what was not checked", () => {
  const ask = async (answer: unknown): Promise<void> => {
    notCheckedList({ client: () => ({ sendRequest: async () => answer }) } as unknown as Running);
    await run("sawbuck.showNotChecked");
  };

  test("asks for a plan first, and approves nothing when it is empty", async () => {
    await ask(null);
    editor.active = { document: { uri: "a", languageId: "sawbuck" } };
    await ask({ entries: [] });
    expect(editor.said).toEqual([
      "Open a plan (a .sawbuck file) first.",
      "Nothing is on the list of what was not checked. That approves no plan.",
    ]);
  });

  test("tells each with its reason, and leads to its line", async () => {
    editor.active = { document: { uri: "a", languageId: "sawbuck" } };
    editor.picks = "the screws";
    await ask({
      entries: [
        { what: "a drawing", why: "nothing is placed" },
        { what: "the screws", why: "so", uri: "shop", line: 4 },
      ],
    });
    expect(editor.items).toMatchObject([
      { label: "a drawing", detail: "nothing is placed" },
      { label: "the screws", detail: "so", description: "line 4" },
    ]);
    expect(editor.done).toEqual([["goTo", "shop", 4]]);
    editor.picks = "a drawing";
    await ask({ entries: [{ what: "a drawing", why: "nothing is placed" }] });
    expect(editor.done).toHaveLength(1);
  });
});

describe("your own shop file", () => {
  const target = { scheme: "file", fsPath: "c:\\yard\\my-shop.sawbuck", path: "/c:/yard/my-shop.sawbuck" };
  beforeEach(() => {
    shopFileChoice("ext" as unknown as Uri);
  });

  test("is one that is there, or a copy of the samples'", async () => {
    editor.target = target;
    editor.picks = "Choose";
    await run("sawbuck.useShopFile");
    expect([editor.done, editor.settings]).toEqual([[], [["shopFile", target.fsPath, 1]]]);
    editor.picks = "Begin";
    await run("sawbuck.useShopFile");
    expect(editor.done).toEqual([["write", "ext/samples/hillside-shop.sawbuck", target]]);
    expect(editor.settings).toHaveLength(2);
    editor.target = { ...target, scheme: "memfs" };
    await run("sawbuck.useShopFile");
    expect(editor.settings.at(-1)).toEqual(["shopFile", target.path, 1]);
  });

  test("is not set where the reader thinks better of it, or where another file would be written over", async () => {
    editor.picks = "none of them";
    await run("sawbuck.useShopFile");
    editor.picks = "Begin";
    await run("sawbuck.useShopFile");
    Object.assign(editor, { target, stat: "there" });
    await run("sawbuck.useShopFile");
    editor.stat = "NoPermissions";
    await run("sawbuck.useShopFile");
    expect([editor.settings, editor.done, editor.said]).toEqual([
      [],
      [],
      [
        "The shop file was not copied: there is a file of that name.",
        "The shop file was not copied: NoPermissions",
      ],
    ]);
  });
});
