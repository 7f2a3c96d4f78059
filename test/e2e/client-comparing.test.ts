/** “Compare With Last Commit” on the editor's side: when it asks, and what it says where there is no answer. */
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { Uri } from "vscode";
import { PAUSE } from "../../client/beside";
import { comparing } from "../../client/comparing";
import type { ShowSheet } from "../../client/preview/messages";
import type { Compared } from "../../client/protocol";
import type { Running } from "../../client/running";
import { speak } from "./spoken";

const editor = vi.hoisted(() => ({
  commands: new Map<string, (asked: unknown) => void>(),
  panels: [] as unknown[],
  trusted: true,
  said: [] as string[],
}));
vi.mock("vscode", async () => ({
  l10n: (await import("./spoken")).l10n,
  Uri: class Address {
    constructor(readonly path: string) {}
    static joinPath = (base: unknown): unknown => base;
    toString(): string {
      return this.path;
    }
  },
  Disposable: { from: () => ({}) },
  ViewColumn: { Beside: -2 },
  env: { language: "en" },
  commands: {
    registerCommand: (name: string, run: (asked: unknown) => void) => editor.commands.set(name, run),
  },
  window: {
    visibleTextEditors: [],
    showInformationMessage: async (what: string) => void editor.said.push(what),
    createWebviewPanel: () => editor.panels.at(-1),
    onDidChangeWindowState: () => {},
  },
  workspace: {
    get isTrusted() {
      return editor.trusted;
    },
    openTextDocument: async () => ({}),
    onDidGrantWorkspaceTrust: () => {},
  },
}));
vi.mock("vscode-languageclient", () => ({ State: { Stopped: 1, Running: 2 } }));
vi.mock("../../client/protocol", () => ({ CompareRequest: "compare" }));

const vscode = await import("vscode");
const address = (path: string): Uri => new (vscode.Uri as unknown as new (path: string) => Uri)(path);
const [A, B] = [address("/a.sawbuck"), address("/b.sawbuck")];
const answer = (title: string): Compared => ({
  title,
  language: "en",
  parts: [{ name: "head", html: `<h1>${title}</h1>` }],
  style: "",
  version: 1,
});

/** A window in which `server` answers, or throws. */
function begin(server: (uri: string) => Compared | null) {
  const told: ShowSheet[] = [];
  const asked: string[] = [];
  let hears: (message: unknown) => void = () => {};
  let worked: (what: { uri: string }) => void = () => {};
  let closed: () => void = () => {};
  const panel = {
    title: "",
    visible: true,
    reveal: () => {},
    webview: {
      html: "",
      asWebviewUri: () => "script",
      postMessage: (message: ShowSheet) => told.push(message),
      onDidReceiveMessage: (hear: typeof hears) => {
        hears = hear;
      },
    },
    onDidDispose: (close: typeof closed) => {
      closed = close;
    },
    onDidChangeViewState: () => {},
  };
  editor.panels.push(panel);
  comparing(
    {
      client: () => ({
        sendRequest: async (_: string, { uri }: { uri: string }) => {
          asked.push(uri);
          return server(uri);
        },
      }),
      onReady: () => {},
      onGone: () => {},
      onWorked: (tell: typeof worked) => {
        worked = tell;
      },
    } as unknown as Running,
    A,
  );
  const run = editor.commands.get("sawbuck.compareWithLastCommit")!;
  const rest = (): Promise<unknown> => vi.advanceTimersByTimeAsync(PAUSE + 1);
  return {
    panel,
    told,
    asked,
    rest,
    compare: async (plan: Uri) => {
      run(plan);
      hears({ ready: {} });
      await rest();
    },
    ask: run,
    worked: (uri: Uri) => worked({ uri: String(uri) }),
    close: () => closed(),
  };
}

beforeEach(() => {
  vi.useFakeTimers();
  editor.trusted = true;
  editor.said.length = 0;
  return () => vi.useRealTimers();
});
afterEach(() => speak("en"));

describe("the comparison", () => {
  test("is asked for when the plan has been worked out and nobody types, and of no other plan", async () => {
    const one = begin((uri) => answer(`What changed: ${uri}`));
    await one.compare(A);
    expect([one.asked.length > 0, one.panel.title]).toEqual([true, "What changed: /a.sawbuck"]);
    const before = one.asked.length;
    one.worked(A);
    one.worked(A);
    one.worked(B);
    await vi.advanceTimersByTimeAsync(PAUSE - 1);
    expect(one.asked.length).toBe(before);
    await one.rest();
    expect(one.asked.length).toBe(before + 1);
    expect(one.told).toHaveLength(1); // the page shows that already
    one.ask(B);
    await one.rest();
    expect(one.panel.title).toBe("What changed: /b.sawbuck");
    one.close();
    one.worked(B);
    await one.rest();
    expect(one.asked.at(-1)).toBe("/b.sawbuck");
    expect(one.told.at(-1)).toMatchObject({ uri: "/b.sawbuck", ticks: { ids: [] } });
  });

  test("says what the server says, and what stood there stays when the server is gone", async () => {
    let works = true;
    const one = begin(() => {
      if (!works) throw new Error("gone");
      return answer("What changed");
    });
    await one.compare(A);
    works = false;
    one.worked(A);
    await one.rest();
    expect(one.told.at(-1)?.view).toMatchObject({
      notice: expect.stringContaining("Restart Language Server"),
      parts: [{ name: "head" }],
    });
    const refused = begin(() => ({ refused: "There is nothing to compare with." }));
    await refused.compare(A);
    expect(refused.told.at(-1)?.view).toMatchObject({
      notice: "There is nothing to compare with.",
      parts: [],
    });
  });

  test("asks no git in a folder that is not trusted", async () => {
    editor.trusted = false;
    const one = begin(() => answer("What changed"));
    await one.compare(A);
    expect([one.asked, one.told.at(-1)?.view.notice]).toMatchInlineSnapshot(`
      [
        [],
        "There is nothing to compare with: git is not asked in a folder that you do not trust. “Workspaces: Manage Workspace Trust” changes that.",
      ]
    `);
  });

  test("needs a plan", () => {
    begin(() => null).ask(undefined);
    speak("fr");
    begin(() => null).ask(undefined);
    expect(editor.said).toMatchInlineSnapshot(`
      [
        "Open a plan (a .sawbuck file) first, then compare it.",
        "Ouvrez d’abord un plan (un fichier .sawbuck), puis comparez-le.",
      ]
    `);
  });
});
