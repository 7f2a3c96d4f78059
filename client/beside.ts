/**
 * A panel beside a plan that shows one thing about it: which is asked for anew when the plan has been worked out and nobody
 * types, one question at a time, and only while the panel can be seen.
 */
import * as vscode from "vscode";
import { planInSight } from "./active-plan";
import type { Running } from "./running";
import { isPlan } from "./sheet-formats";
import { newNonce } from "./sheet-page";

/** So long after a change, in ms, nothing is asked for: the shop sheet goes first. */
export const PAUSE = 400;

/** What is shown in a panel. */
export interface Shows {
  readonly command: string;
  readonly viewType: string;
  readonly title: string;
  /** Told where there is no plan to show it of. */
  readonly needsPlan: string;
  /** The script of its page, in `dist`. */
  readonly script: string;
  readonly page: (script: string, nonce: string) => string;
  /** What the page of a new panel talks with. */
  readonly begin: (panel: Beside) => Talk;
}

/** The panel as what it shows sees it. */
export interface Beside {
  readonly webview: vscode.WebviewPanel;
  /** The plan it is turned to. */
  readonly plan: () => vscode.Uri | undefined;
  /** Asks at once. */
  readonly now: () => void;
}

export interface Talk {
  /** Asks about a plan, and shows the answer unless the panel has been turned to another. */
  readonly ask: (plan: vscode.Uri) => Promise<void>;
  /** The page has loaded, and shows nothing yet; or it says something else. */
  readonly hear: (message: object) => void;
}

interface Open {
  readonly show: (uri: vscode.Uri) => void;
  readonly refresh: () => void;
  readonly follows: (uri: string) => boolean;
}

export function beside(running: Running, extensionUri: vscode.Uri, shows: Shows): vscode.Disposable {
  let open: Open | undefined;

  const show = (asked: unknown): void => {
    const uri = asked instanceof vscode.Uri && isPlan(asked.path) ? asked : planInSight();
    if (uri === undefined) {
      void vscode.window.showInformationMessage(shows.needsPlan);
      return;
    }
    open ??= panelOf(extensionUri, shows, () => {
      open = undefined;
    });
    open.show(uri);
  };

  return vscode.Disposable.from(
    vscode.commands.registerCommand(shows.command, show),
    vscode.window.onDidChangeWindowState(({ focused }) => {
      if (focused) open?.refresh();
    }),
    vscode.workspace.onDidGrantWorkspaceTrust(() => open?.refresh()),
    running.onReady(() => open?.refresh()),
    running.onGone(() => open?.refresh()),
    running.onWorked(({ uri }) => {
      if (open?.follows(uri)) open.refresh();
    }),
  );
}

function panelOf(extensionUri: vscode.Uri, shows: Shows, onGone: () => void): Open {
  const dist = vscode.Uri.joinPath(extensionUri, "dist");
  const webview = vscode.window.createWebviewPanel(
    shows.viewType,
    shows.title,
    { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
    { enableScripts: true, localResourceRoots: [dist] },
  );
  let plan: vscode.Uri | undefined;
  let heard = false;
  let gone = false;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let asking = false;
  let askAgain = false;

  const ask = async (): Promise<void> => {
    askAgain = true;
    if (asking) return;
    asking = true;
    while (askAgain && !gone && heard && plan !== undefined && webview.visible) {
      askAgain = false;
      await talk.ask(plan);
    }
    asking = false;
  };
  const now = (): void => void ask();
  const talk = shows.begin({ webview, plan: () => (gone ? undefined : plan), now });

  webview.onDidDispose(() => {
    gone = true;
    clearTimeout(waiting);
    onGone();
  });
  webview.onDidChangeViewState(() => {
    if (webview.visible) now();
  });
  webview.webview.onDidReceiveMessage((message: unknown) => {
    if (typeof message !== "object" || message === null) return;
    talk.hear(message);
    if (!("ready" in message)) return;
    heard = true;
    now();
  });
  const script = webview.webview.asWebviewUri(vscode.Uri.joinPath(dist, shows.script));
  webview.webview.html = shows.page(script.toString(), newNonce());

  return {
    show: (uri) => {
      plan = uri;
      webview.reveal(undefined, true);
      now();
    },
    refresh: () => {
      clearTimeout(waiting);
      waiting = setTimeout(now, PAUSE);
    },
    follows: (uri) => uri === plan?.toString(),
  };
}
