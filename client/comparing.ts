/** “Compare With Last Commit”: what a plan became since then, told of the thing and not of the text. */
import * as vscode from "vscode";
import { type Beside, beside, type Talk } from "./beside";
import type { ToPreview } from "./preview/messages";
import { CompareRequest } from "./protocol";
import type { Running } from "./running";
import { pageAround } from "./sheet-page";
import { opens } from "./sheet-panel";
import { asItIs, newsOf, notFollowing, onlySays, type SheetView } from "./sheet-view";

export function comparing(running: Running, extensionUri: vscode.Uri): vscode.Disposable {
  const title = vscode.l10n.t("What Changed");
  return beside(running, extensionUri, {
    command: "sawbuck.compareWithLastCommit",
    viewType: "sawbuck.comparison",
    title,
    needsPlan: vscode.l10n.t("Open a plan (a .sawbuck file) first, then compare it."),
    script: "preview.js",
    page: (script, nonce) => pageAround(script, nonce, title),
    begin: (panel) => talkOf(panel, running, title),
  });
}

function talkOf({ webview, plan }: Beside, running: Running, title: string): Talk {
  let shown: { readonly uri: string; readonly view: SheetView } | undefined;

  const post = (uri: vscode.Uri, view: SheetView): void => {
    if (uri !== plan()) return;
    const key = uri.toString();
    const same = shown?.uri === key;
    const news = newsOf(view, same ? shown?.view : undefined);
    if (news === undefined) return;
    shown = { uri: key, view };
    webview.title = view.title === "" ? title : view.title;
    const message: ToPreview = { uri: key, view: news, ...(!same && { ticks: NO_TICKS }) };
    void webview.webview.postMessage(message);
  };

  return {
    ask: async (uri) => {
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
    },
    hear: (message) => {
      if ("ready" in message) shown = undefined; // it starts empty each time it comes into view
    },
  };
}

/** Nothing is ticked off here. */
const NO_TICKS = { ids: [], keeps: true };

const notTrusted = (): string =>
  vscode.l10n.t(
    "There is nothing to compare with: git is not asked in a folder that you do not trust. “Workspaces: Manage Workspace Trust” changes that.",
  );
