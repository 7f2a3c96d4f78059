/** How the layouts of the plan in the active editor stand, beside the name of its language. */
import * as vscode from "vscode";
import { layoutText, stocksLeft } from "./layout-words";
import type { LayoutsStanding } from "./protocol";
import type { Running } from "./running";

export function layoutStatus(running: Running): vscode.Disposable {
  const standing = new Map<string, LayoutsStanding>();
  let item: vscode.LanguageStatusItem | undefined;

  const show = (): void => {
    const uri = vscode.window.activeTextEditor?.document.uri.toString();
    const now = uri === undefined ? undefined : standing.get(uri);
    const text = now && layoutText(now);
    if (text === undefined) {
      item?.dispose();
      item = undefined;
      return;
    }
    item ??= statusItem();
    item.text = text;
    item.busy = now?.state === "looking";
    item.detail = now && now.looking > 0 ? stocksLeft(now.looking) : "";
  };

  const forget = (): void => {
    standing.clear();
    show();
  };

  return vscode.Disposable.from(
    running.onLayouts((told) => {
      standing.set(told.uri, told);
      show();
    }),
    running.onReady(forget),
    running.onGone(forget),
    vscode.window.onDidChangeActiveTextEditor(show),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => standing.delete(uri.toString())),
    { dispose: () => item?.dispose() },
  );
}

function statusItem(): vscode.LanguageStatusItem {
  const item = vscode.languages.createLanguageStatusItem("sawbuck.layouts", { language: "sawbuck" });
  item.name = vscode.l10n.t("Sawbuck Layouts");
  item.command = { command: "sawbuck.openSheet", title: vscode.l10n.t("Open Shop Sheet") };
  return item;
}
