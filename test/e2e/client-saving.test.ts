/** Saving the shop sheet: what is asked of the server, what is written where, and that nothing is written over a plan. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { Uri } from "vscode";
import type { Choices } from "../../client/choices";
import type { SheetFile } from "../../client/protocol";
import type { Running } from "../../client/running";
import { saveSheet } from "../../client/save-sheet";

const editor = vi.hoisted(() => ({
  picks: "",
  fails: "",
  target: undefined as unknown,
  proposed: undefined as unknown,
  open: [] as unknown[],
  written: [] as [string, string][],
  said: [] as string[],
  opened: [] as unknown[],
}));
vi.mock("vscode", async () => ({
  l10n: (await import("./spoken")).l10n,
  Uri: { joinPath: (base: { path: string }, name: string) => uri(joined(base.path, name)) },
  ProgressLocation: { Window: 10 },
  UIKind: { Desktop: 1 },
  env: {
    language: "en-gb",
    uiKind: 1,
    openExternal: async (what: unknown) => {
      if (editor.fails === "open") throw new Error("nothing here reads it");
      return editor.opened.push(["out", what]);
    },
  },
  window: {
    showQuickPick: async (items: { format: { format: string } }[]) =>
      items.find(({ format }) => format.format === editor.picks),
    showSaveDialog: async ({ defaultUri }: { defaultUri?: unknown }) => {
      if (editor.fails === "ask") throw new Error("no such folder");
      editor.proposed = String(defaultUri);
      return editor.target === "proposed" ? defaultUri : editor.target;
    },
    withProgress: (_: unknown, work: () => unknown) => work(),
    showErrorMessage: async (said: string) => void editor.said.push(said),
    showInformationMessage: async (said: string, open: string) => {
      editor.said.push(said);
      return open;
    },
  },
  workspace: {
    workspaceFolders: [{ uri: { path: "/yard" } }],
    get textDocuments() {
      return editor.open;
    },
    openTextDocument: async () => ({}),
    fs: {
      writeFile: async (target: unknown, bytes: Uint8Array) => {
        if (editor.fails === "write") throw new Error("the disk is full");
        editor.written.push([String(target), new TextDecoder().decode(bytes)]);
      },
    },
  },
  commands: { executeCommand: async (...what: unknown[]) => editor.opened.push(what) },
}));
vi.mock("../../client/protocol", () => ({ SheetFileRequest: "sawbuck/sheetFile" }));

function uri(path: string, scheme = "file"): Uri {
  return { path, scheme, toString: () => (scheme === "file" ? path : `${scheme}:${path}`) } as unknown as Uri;
}
const joined = (base: string, name: string): string =>
  name === ".." ? base.slice(0, base.lastIndexOf("/")) : `${base}/${name}`;

const PLAN = uri("/yard/stand.sawbuck");
const METRIC: Choices = { units: "millimetres", reader: "learners" };

async function save(answer: SheetFile | null, plan = PLAN): Promise<unknown[]> {
  const asked: unknown[] = [];
  const sendRequest = async (_: unknown, what: unknown) => {
    asked.push(what);
    return answer;
  };
  await saveSheet(plan, METRIC, { client: () => ({ sendRequest }) } as unknown as Running);
  return asked;
}

beforeEach(() => {
  Object.assign(editor, { picks: "markdown", fails: "", target: "proposed", proposed: undefined });
  Object.assign(editor, { open: [], written: [], said: [], opened: [] });
});

describe("the shop sheet", () => {
  test("is asked for as it is shown, written beside the plan, and can be opened", async () => {
    const asked = await save({ text: "# Stand" });
    const path = "/yard/stand-sheet.md";
    expect(asked).toEqual([{ uri: "/yard/stand.sawbuck", format: "markdown", language: "en-gb", ...METRIC }]);
    expect(editor.written).toEqual([[path, "# Stand"]]);
    expect(editor.said).toEqual(["The shop sheet is saved as stand-sheet.md."]);
    expect(editor.opened).toMatchObject([["vscode.open", { path }]]);
  });

  test("as a page is opened where pages are read, and bytes are written as they are", async () => {
    editor.picks = "html";
    await save({ base64: btoa("<!DOCTYPE html>") });
    expect(editor.written).toEqual([["/yard/stand-sheet.html", "<!DOCTYPE html>"]]);
    expect(editor.opened).toMatchObject([["out", { path: "/yard/stand-sheet.html" }]]);
  });

  test("of a text in no folder yet is proposed for the folder that is open", async () => {
    await save({ text: "" }, uri("Untitled-1", "untitled"));
    expect(editor.proposed).toBe("/yard/shop-sheet.md");
  });

  test("is never written over a plan, whatever its name ends with", async () => {
    for (const name of ["/yard/stand.sawbuck", "/yard/other.SAWBUCK", "/yard/plan.txt"]) {
      editor.target = uri(name);
      editor.open = [{ uri: uri("/yard/plan.txt"), languageId: "sawbuck" }];
      await save({ text: "# Stand" });
    }
    expect(editor.written).toEqual([]);
    expect(editor.said).toHaveLength(3);
    expect(editor.said[0]).toContain("nothing is written over a plan");
  });

  test("that cannot be asked for, made, written or opened is told with the reason", async () => {
    editor.picks = "html";
    for (const fails of ["ask", "write", "open"]) {
      editor.fails = fails;
      await save({ text: "" });
    }
    editor.fails = "";
    await save({ refused: "what writes PDF is not there" });
    expect(editor.said).toEqual([
      "The shop sheet was not saved: no such folder",
      "The shop sheet was not saved: the disk is full",
      "The shop sheet is saved as stand-sheet.html.",
      "stand-sheet.html cannot be opened: nothing here reads it",
      "The shop sheet was not saved: what writes PDF is not there",
    ]);
  });

  test("is not written when the reader thinks better of it, and its absence is told", async () => {
    editor.target = undefined;
    expect(await save({ text: "" })).toEqual([]);
    editor.picks = "none of them";
    expect(await save({ text: "" })).toEqual([]);
    Object.assign(editor, { picks: "text", target: "proposed" });
    await save(null);
    expect(editor.written).toEqual([]);
    expect(editor.said).toEqual([
      "The shop sheet was not saved: there is no plan in this file to make a shop sheet from.",
    ]);
  });
});
