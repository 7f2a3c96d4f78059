/** How the layouts of the plan in the active editor stand, beside the name of its language. */
import * as vscode from "vscode";
import { LAYOUT_WORDS, layoutText } from "./layout-words";
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
    item.detail = now && now.looking > 0 ? LAYOUT_WORDS.left(now.looking) : "";
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
  item.name = LAYOUT_WORDS.name;
  item.command = { command: "sawbuck.openSheet", title: LAYOUT_WORDS.openSheet };
  return item;
}
