/** A stand-in for the editor around a panel beside a plan, and for the language server behind it. */
import type { Uri } from "vscode";
import type { Running } from "../../client/running";
import { l10n } from "./spoken";

class Address {
  constructor(readonly path: string) {}
  static joinPath = (base: unknown): unknown => base;
  toString(): string {
    return this.path;
  }
}

const commands = new Map<string, (asked: unknown) => void>();
let panel: unknown;

/** What the test may change, and what was said to the reader. */
export const editor = { trusted: true, said: [] as string[] };

/** What a test has in place of `vscode`. */
export const vscode = {
  l10n,
  Uri: Address,
  Disposable: { from: () => ({}) },
  ViewColumn: { Beside: -2 },
  env: { language: "en" },
  commands: {
    registerCommand: (name: string, run: (asked: unknown) => void) => commands.set(name, run),
  },
  window: {
    visibleTextEditors: [],
    showInformationMessage: async (what: string) => void editor.said.push(what),
    showWarningMessage: async (what: string) => void editor.said.push(what),
    createWebviewPanel: () => panel,
    onDidChangeWindowState: () => {},
  },
  workspace: {
    get isTrusted() {
      return editor.trusted;
    },
    openTextDocument: async () => ({}),
    onDidGrantWorkspaceTrust: () => {},
  },
};

export const address = (path: string): Uri => new Address(path) as unknown as Uri;

/** A window with a panel that `register` makes when its command is run; `server` answers what is asked, or throws. */
export function besidePanel<Told, Asked>(
  register: (running: Running, extensionUri: Uri) => unknown,
  command: string,
  server: (what: string, asked: Asked) => unknown,
) {
  const told: Told[] = [];
  const asked: [what: string, params: Asked][] = [];
  const on: Record<"message" | "closed" | "worked", (what?: unknown) => void> = {
    message: () => {},
    closed: () => {},
    worked: () => {},
  };
  const webview = {
    title: "",
    visible: true,
    reveal: () => {},
    webview: {
      html: "",
      asWebviewUri: () => "script",
      postMessage: (message: Told) => told.push(message),
      onDidReceiveMessage: (hear: (what?: unknown) => void) => {
        on.message = hear;
      },
    },
    onDidDispose: (close: () => void) => {
      on.closed = close;
    },
    onDidChangeViewState: () => {},
  };
  const running = {
    client: () => ({
      sendRequest: async (what: string, params: Asked) => {
        asked.push([what, params]);
        return server(what, params);
      },
    }),
    onReady: () => {},
    onGone: () => {},
    onWorked: (tell: (what?: unknown) => void) => {
      on.worked = tell;
    },
  };
  register(running as unknown as Running, address("/extension"));
  return {
    panel: webview,
    told,
    asked,
    /** Runs the command on a plan, or on none. */
    run: (plan?: Uri): void => {
      panel = webview;
      commands.get(command)!(plan);
    },
    /** The page says something. */
    page: (message: unknown): void => on.message(message),
    worked: (plan: Uri): void => on.worked({ uri: String(plan) }),
    close: (): void => on.closed(),
  };
}
