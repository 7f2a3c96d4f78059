/** The shop sheet of an earlier session: which plan its panel turns to when it comes back. */
import { beforeEach, expect, test, vi } from "vitest";
import type { Memento, Uri, WebviewPanelSerializer } from "vscode";
import type { Running } from "../../client/running";
import { shopSheets } from "../../client/shop-sheets";

const editor = vi.hoisted(() => ({
  visible: [] as { document: { languageId: string; uri: unknown } }[],
  seen: () => {},
  restore: undefined as unknown,
  followed: [] as string[],
}));
vi.mock("vscode", async () => ({
  l10n: (await import("./spoken")).l10n,
  Disposable: { from: () => {} },
  Uri: {
    parse: (text: string) => {
      if (!text.includes(":")) throw new Error("no scheme");
      return uri(text);
    },
  },
  commands: { registerCommand: () => {} },
  window: {
    get visibleTextEditors() {
      return editor.visible;
    },
    registerWebviewPanelSerializer: (_: string, made: unknown) => {
      editor.restore = made;
    },
    onDidChangeActiveTextEditor: () => {},
    onDidChangeVisibleTextEditors: (tell: () => void) => {
      editor.seen = tell;
    },
    onDidChangeTextEditorSelection: () => {},
  },
  workspace: { onDidCloseTextDocument: () => {}, onDidRenameFiles: () => {} },
}));
vi.mock("../../client/save-sheet", () => ({ saveSheet: () => {} }));
vi.mock("../../client/sheet-panel", () => ({
  sheetTitle: () => "",
  sheetPanel: (_: unknown, first: Uri | undefined) => {
    let plan = first;
    editor.followed.push(String(first));
    return {
      plan: () => plan,
      follow: (to: Uri) => {
        plan = to;
        editor.followed.push(String(to));
      },
    };
  },
}));

function uri(text: string): Uri {
  return { toString: () => text } as unknown as Uri;
}
const see = (...files: readonly string[]): void => {
  editor.visible = files.map((file) => ({ document: { languageId: "sawbuck", uri: uri(file) } }));
};
const restored = async (state: unknown): Promise<void> => {
  const running = new Proxy({}, { get: () => () => {} }) as Running;
  shopSheets(running, uri("file:///extension"), {} as Memento);
  const panel = { onDidDispose: () => {}, dispose: () => {} };
  await (editor.restore as WebviewPanelSerializer).deserializeWebviewPanel(panel as never, state);
};

beforeEach(() => {
  editor.followed.length = 0;
  see();
});

test("the plan that it showed", async () => {
  see("file:///b.sawbuck");
  await restored({ uri: "file:///a.sawbuck" });
  editor.seen();
  expect(editor.followed).toEqual(["file:///a.sawbuck"]);
});

test.each([undefined, {}, { uri: "" }, { uri: 3 }])("%o: a plan that can be seen", async (state) => {
  see("file:///b.sawbuck");
  await restored(state);
  expect(editor.followed).toEqual(["file:///b.sawbuck"]);
});

test("one that comes into sight later", async () => {
  await restored(undefined);
  editor.seen();
  see("untitled:Untitled-1");
  editor.seen();
  see("file:///b.sawbuck");
  editor.seen();
  expect(editor.followed).toEqual(["undefined", "untitled:Untitled-1"]);
});
