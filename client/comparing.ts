/**
 * “Compare With Last Commit”: one panel that shows what a plan became since then, told of the thing and not of the text. It
 * is asked for anew when the plan has been worked out and nobody types, and when the reader comes back, who may have
 * committed meanwhile.
 */
import * as vscode from "vscode";
import { planInSight } from "./active-plan";
import type { ToPreview } from "./preview/messages";
import { CompareRequest } from "./protocol";
import type { Running } from "./running";
import { isPlan } from "./sheet-formats";
import { newNonce, pageAround } from "./sheet-page";
import { opens } from "./sheet-panel";
import { asItIs, newsOf, notFollowing, onlySays, type SheetView } from "./sheet-view";

const VIEW_TYPE = "sawbuck.comparison";

/** So long after a change, in ms, nothing is asked for: the shop sheet goes first. */
export const PAUSE = 400;

interface Panel {
  readonly show: (uri: vscode.Uri) => void;
  readonly refresh: () => void;
  readonly follows: (uri: string) => boolean;
}

export function comparing(running: Running, extensionUri: vscode.Uri): vscode.Disposable {
  let open: Panel | undefined;

  const compare = (asked: unknown): void => {
    const uri = asked instanceof vscode.Uri && isPlan(asked.path) ? asked : planInSight();
    if (uri === undefined) {
      void vscode.window.showInformationMessage(
        vscode.l10n.t("Open a plan (a .sawbuck file) first, then compare it."),
      );
      return;
    }
    open ??= panelOf(running, extensionUri, () => {
      open = undefined;
    });
    open.show(uri);
  };

  return vscode.Disposable.from(
    vscode.commands.registerCommand("sawbuck.compareWithLastCommit", compare),
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

function panelOf(running: Running, extensionUri: vscode.Uri, onGone: () => void): Panel {
  const title = vscode.l10n.t("What Changed");
  const panel = vscode.window.createWebviewPanel(
    VIEW_TYPE,
    title,
    { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
    { enableScripts: true, localResourceRoots: [vscode.Uri.joinPath(extensionUri, "dist")] },
  );
  let plan: vscode.Uri | undefined;
  let shown: { readonly uri: string; readonly view: SheetView } | undefined;
  let heard = false;
  let gone = false;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let asking = false;
  let askAgain = false;

  const post = (uri: vscode.Uri, view: SheetView): void => {
    if (gone || uri !== plan) return;
    const key = uri.toString();
    const same = shown?.uri === key;
    const news = newsOf(view, same ? shown?.view : undefined);
    if (news === undefined) return;
    shown = { uri: key, view };
    panel.title = view.title === "" ? title : view.title;
    const message: ToPreview = { uri: key, view: news, ...(!same && { ticks: NO_TICKS }) };
    void panel.webview.postMessage(message);
  };

  const ask = async (uri: vscode.Uri): Promise<void> => {
    const key = uri.toString();
    const before = shown?.uri === key ? shown.view : undefined;
    if (!vscode.workspace.isTrusted) return post(uri, onlySays(notTrusted()));
    if (!(await opens(uri))) return post(uri, notFollowing(before, "no file"));
    try {
      const answer = await running
        .client()
        .sendRequest(CompareRequest, { uri: key, language: vscode.env.language });
      if (answer === null) return; // a newer text is on its way, and asks again
      post(uri, "refused" in answer ? onlySays(answer.refused) : asItIs(answer, ""));
    } catch {
      post(uri, notFollowing(before, "no server"));
    }
  };

  const now = async (): Promise<void> => {
    askAgain = true;
    if (asking) return;
    asking = true;
    while (askAgain && !gone && heard && plan !== undefined && panel.visible) {
      askAgain = false;
      await ask(plan);
    }
    asking = false;
  };

  panel.onDidDispose(() => {
    gone = true;
    clearTimeout(waiting);
    onGone();
  });
  panel.onDidChangeViewState(() => {
    if (panel.visible) void now();
  });
  panel.webview.onDidReceiveMessage((message: unknown) => {
    if (typeof message !== "object" || message === null || !("ready" in message)) return;
    heard = true;
    shown = undefined; // it starts empty each time it comes into view
    void now();
  });
  const script = panel.webview.asWebviewUri(vscode.Uri.joinPath(extensionUri, "dist", "preview.js"));
  panel.webview.html = pageAround(script.toString(), newNonce(), title, "");

  return {
    show: (uri) => {
      plan = uri;
      panel.reveal(undefined, true);
      void now();
    },
    refresh: () => {
      clearTimeout(waiting);
      waiting = setTimeout(() => void now(), PAUSE);
    },
    follows: (uri) => uri === plan?.toString(),
  };
}

/** Nothing is ticked off here. */
const NO_TICKS = { ids: [], keeps: true };

const notTrusted = (): string =>
  vscode.l10n.t(
    "There is nothing to compare with: git is not asked in a folder that you do not trust. “Workspaces: Manage Workspace Trust” changes that.",
  );
