/** The measuring-up slip on the editor's side: what it asks, and what is written. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { Uri } from "vscode";
import { measuring } from "../../client/measuring";
import type { OfSlip, SlipAnswer } from "../../client/protocol";
import type { Running } from "../../client/running";
import type { ToSlip } from "../../client/slip/messages";

const editor = vi.hoisted(() => ({
  commands: new Map<string, (asked: unknown) => void>(),
  panel: undefined as unknown,
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
    showWarningMessage: async (what: string) => void editor.said.push(what),
    createWebviewPanel: () => editor.panel,
    onDidChangeWindowState: () => {},
  },
  workspace: { openTextDocument: async () => ({}), onDidGrantWorkspaceTrust: () => {} },
}));
vi.mock("vscode-languageclient", () => ({ State: { Stopped: 1, Running: 2 } }));
vi.mock("../../client/protocol", () => ({ SlipRequest: "slip", SlipWriteRequest: "write" }));

const vscode = await import("vscode");
const address = (path: string): Uri => new (vscode.Uri as unknown as new (path: string) => Uri)(path);
const PLAN = address("/a.sawbuck");
const SLIP: SlipAnswer = {
  title: "Measuring up",
  key: "",
  language: "en",
  rows: [],
  parts: [],
  style: "",
  version: 1,
};

function begin(written: number | null) {
  const told: ToSlip[] = [];
  const asked: [string, OfSlip][] = [];
  let hears: (message: unknown) => void = () => {};
  editor.panel = {
    title: "",
    visible: true,
    reveal: () => {},
    webview: {
      html: "",
      asWebviewUri: () => "script",
      postMessage: (message: ToSlip) => told.push(message),
      onDidReceiveMessage: (hear: typeof hears) => {
        hears = hear;
      },
    },
    onDidDispose: () => {},
    onDidChangeViewState: () => {},
  };
  measuring(
    {
      client: () => ({
        sendRequest: async (what: string, params: OfSlip) => {
          asked.push([what, params]);
          return what === "slip" ? SLIP : written === null ? null : { written };
        },
      }),
      onReady: () => {},
      onGone: () => {},
      onWorked: () => {},
    } as unknown as Running,
    PLAN,
  );
  editor.commands.get("sawbuck.measureUp")!(PLAN);
  const page = async (message: unknown): Promise<void> => {
    hears(message);
    await vi.advanceTimersByTimeAsync(1000);
  };
  return { told, asked, page };
}

beforeEach(() => {
  vi.useFakeTimers();
  editor.said.length = 0;
  return () => vi.useRealTimers();
});

describe("the slip", () => {
  test("is asked for with what was typed for this very plan, once whoever types rests", async () => {
    const { told, asked, page } = begin(0);
    await page({ ready: { uri: "/other.sawbuck", measured: { tall: "9" } } });
    expect(asked.at(-1)).toEqual(["slip", { uri: "/a.sawbuck", language: "en", measured: {} }]);
    expect(told).toContainEqual({ uri: "/a.sawbuck", slip: SLIP });
    const before = asked.length;
    await page({ uri: "/a.sawbuck", measured: { tall: "28", odd: 3 } });
    expect(asked.slice(before)).toEqual([
      ["slip", { uri: "/a.sawbuck", language: "en", measured: { tall: "28" } }],
    ]);
    await page("nonsense");
    await page({ measured: null, uri: 3 });
    expect(asked).toHaveLength(before + 1);
  });

  test("is written into the plan on request, which is told; then its rows are empty", async () => {
    const { told, asked, page } = begin(2);
    await page({ ready: { uri: "", measured: {} } });
    const state = { uri: "/a.sawbuck", measured: { tall: "28", wide: "30" } };
    await page({ write: { ...state, uri: "/other.sawbuck" } });
    expect(asked.some(([what]) => what === "write")).toBe(false);
    await page({ write: state });
    expect(asked.at(-1)).toEqual(["write", { ...state, language: "en" }]);
    expect(told.at(-1)).toEqual({ written: true });
    const one = begin(1);
    await one.page({ ready: state });
    await one.page({ write: state });
    expect(editor.said).toMatchInlineSnapshot(`
      [
        "2 measures are written into the plan. Undo takes them back.",
        "1 measure is written into the plan. Undo takes it back.",
      ]
    `);
  });

  test("says that nothing was written", async () => {
    const { told, page } = begin(null);
    const state = { uri: "/a.sawbuck", measured: { tall: "28" } };
    await page({ ready: state });
    await page({ write: state });
    expect(editor.said).toMatchInlineSnapshot(`
      [
        "Nothing was written into the plan: it has changed meanwhile, or it cannot be changed.",
      ]
    `);
    expect(told).not.toContainEqual({ written: true });
  });
});
