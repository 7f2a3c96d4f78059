/** The panel of the sheet: what it asks and tells, and when; what its page may say; a server that ended. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { Uri, WebviewPanel } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { ShowSheet, ToPreview } from "../../client/preview/messages";
import type { SheetAnswer } from "../../client/protocol";
import { keepRunning, type Running } from "../../client/running";
import { type SheetPanel, sheetPanel } from "../../client/sheet-panel";

const editor = vi.hoisted(() => ({ gone: new Set<string>() }));
vi.mock("vscode", async () => ({
  l10n: (await import("./spoken")).l10n,
  Uri: { joinPath: (base: unknown) => base, parse: (text: string) => uri(text) },
  env: { language: "en" },
  EventEmitter: class {
    private readonly heard: ((what: unknown) => void)[] = [];
    readonly event = (tell: (what: unknown) => void): number => this.heard.push(tell);
    readonly fire = (what: unknown): void => {
      for (const tell of this.heard) tell(what);
    };
  },
  window: { visibleTextEditors: [], showErrorMessage: async () => undefined },
  workspace: {
    openTextDocument: async (what: unknown) => {
      if (editor.gone.has(String(what))) throw new Error("there is no such file");
    },
  },
}));
vi.mock("vscode-languageclient", () => ({ State: { Stopped: 1, Running: 2 } }));
vi.mock("../../client/protocol", () => ({
  SheetRequest: "sheet",
  PiecesAtRequest: "pieces",
  WorkedNotification: "worked",
  LayoutsNotification: "layouts",
}));

function uri(text: string): Uri {
  return { toString: () => text } as unknown as Uri;
}
const [A, B] = [uri("file:///a.sawbuck"), uri("file:///b.sawbuck")];
const answer = (title: string): SheetAnswer => ({
  title,
  language: "en",
  parts: [{ name: "head", html: `<h1>${title}</h1>` }],
  style: "",
  state: "good",
  version: 1,
  complete: true,
});
const soon = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
const AS_PLANNED = { units: "plan", reader: "builder" };

/** A panel on a plan, whose page says what it is told to. `server` answers, or throws. */
function begin(server: (asked: { uri: string; units: string }) => SheetAnswer | null, plan: Uri | null = A) {
  const told: ShowSheet[] = [];
  const ticked: unknown[] = [];
  const asked: { uri: string; units: string }[] = [];
  let hears: (message: unknown) => void = () => {};
  let turns: () => void = () => {};
  const webview = {
    visible: true,
    webview: {
      asWebviewUri: (script: unknown) => script,
      postMessage: (message: ToPreview) => "view" in message && told.push(message),
      onDidReceiveMessage: (hear: typeof hears) => {
        hears = hear;
      },
    },
    onDidDispose: () => {},
    onDidChangeViewState: (turn: typeof turns) => {
      turns = turn;
    },
  };
  const client = {
    sendRequest: async (what: string, params: { uri: string; units: string }) => {
      if (what === "pieces") return { pieces: [] };
      asked.push(params);
      return server(params);
    },
  };
  const panel: SheetPanel = sheetPanel(webview as unknown as WebviewPanel, plan ?? undefined, {
    extensionUri: A,
    running: { client: () => client } as unknown as Running,
    ticks: {
      of: (plan) => ({ ids: [`tick of ${plan}`], keeps: true }),
      set: async (...what) => void ticked.push(what),
      move: async () => {},
    },
    lastGood: new Map(),
    save: () => {},
  });
  const page = async (message: unknown): Promise<void> => {
    hears(message);
    await soon();
  };
  const turn = (visible: boolean): void => {
    webview.visible = visible;
    turns();
  };
  return { panel, page, told, asked, ticked, turn };
}

beforeEach(() => editor.gone.clear());

describe("the panel", () => {
  test("asks for nothing before its page has told the choices it kept", async () => {
    const { panel, page, told, asked } = begin(() => answer("Bench"));
    panel.refresh();
    await soon();
    expect([asked, told]).toEqual([[], []]);
    await page({ ready: { ...AS_PLANNED, units: "millimetres" } });
    expect(asked.map(({ units }) => units)).toEqual(["millimetres"]);
    expect(told).toMatchObject([{ uri: String(A), ticks: { ids: [`tick of ${A}`] } }]);
  });

  test("tells all of the sheet to a page that comes into view, whichever speaks first", async () => {
    const { panel, page, told, turn } = begin(() => answer("Bench"));
    await page({ ready: AS_PLANNED });
    turn(false);
    turn(true);
    panel.refresh();
    await soon();
    await page({ ready: AS_PLANNED });
    expect(told.map(({ view, ticks }) => [view.parts[0]?.html, ticks !== undefined])).toEqual(
      Array(3).fill(["<h1>Bench</h1>", true]),
    );
  });

  test("hears ticks of the plans it has shown, and of no others", async () => {
    const { page, ticked } = begin(() => answer("Bench"));
    await page({ ready: AS_PLANNED });
    await page({ uri: "file:///elsewhere", ticks: ["a"] });
    await page({ uri: String(A), ticks: ["a", 3] });
    expect(ticked).toEqual([[String(A), ["a"]]]);
  });

  test("says why it does not follow: no answer, or no file; the sheet stays, in a page that comes back too", async () => {
    let works = true;
    const { panel, page, told } = begin(() => {
      if (!works) throw new Error("the server is gone");
      return answer("Bench");
    });
    await page({ ready: AS_PLANNED });
    works = false;
    panel.refresh();
    await soon();
    expect(told.at(-1)?.view.notice).toContain("Restart Language Server");
    await page({ ready: AS_PLANNED });
    expect(told.at(-1)?.view.parts).toEqual([{ name: "head", html: "<h1>Bench</h1>" }]);
    editor.gone.add(String(A));
    panel.refresh();
    await soon();
    expect(told.at(-1)?.view).toMatchObject({
      notice: expect.stringContaining("the plan cannot be opened"),
      parts: [{ name: "head" }],
    });
  });

  test("that came back without its plan says so, until it finds one", async () => {
    const { panel, page, told } = begin(() => answer("Bench"), null);
    await page({ ready: AS_PLANNED });
    expect(told).toMatchObject([
      { view: { notice: "Open a plan (a .sawbuck file), and its shop sheet is shown here.", parts: [] } },
    ]);
    expect(panel.plan()).toBeUndefined();
    panel.follow(B);
    await soon();
    expect(told.slice(1)).toMatchObject([{ uri: String(B), view: { notice: "" }, ticks: {} }]);
  });

  test("goes with its plan to another name, and tells its ticks", async () => {
    const { panel, page, told } = begin(() => answer("Bench"));
    await page({ ready: AS_PLANNED });
    panel.moved(B);
    await soon();
    panel.moved(B); // it was there already, before the ticks were
    await soon();
    expect(told.slice(1)).toMatchObject(Array(2).fill({ uri: String(B), ticks: { ids: [`tick of ${B}`] } }));
    expect(panel.follows(String(B))).toBe(true);
  });
});

describe("the server", () => {
  const log = { warn: () => {}, error: () => {} } as never;

  test("that ended by itself is told, one that was stopped is not; what is around it goes when it is stopped", async () => {
    const [states, dropped] = [[] as ((change: { newState: number }) => void)[], [] as string[]];
    const client = {
      onNotification: () => {},
      onDidChangeState: (tell: (change: { newState: number }) => void) => states.push(tell),
      start: async () => {},
      dispose: async () => states.at(-1)?.({ newState: 1 }),
    } as unknown as BaseLanguageClient;
    const running = keepRunning(
      () => ({ client, around: { dispose: () => dropped.push("watchers") } as never }),
      log,
    );
    let ended = 0;
    running.onGone(() => ended++);
    await running.restart();
    states[0]!({ newState: 1 });
    expect([ended, dropped]).toEqual([1, []]);
    await running.restart();
    await running.stop();
    expect([ended, dropped]).toEqual([1, ["watchers", "watchers"]]);
  });

  test("that could not be made once can be started the next time", async () => {
    let broken = true;
    let started = 0;
    const running = keepRunning(() => {
      if (broken) throw new Error("no such path");
      const client = {
        onNotification: () => {},
        onDidChangeState: () => {},
        start: async () => void started++,
      };
      return { client: client as unknown as BaseLanguageClient, around: { dispose: () => {} } as never };
    }, log);
    await running.restart();
    broken = false;
    await running.restart();
    expect(started).toBe(1);
  });
});
