/** The shop sheet beside the text: one panel, which follows the plan being edited and comes back after a restart. */
import * as vscode from "vscode";
import type { PreviewState } from "./preview/messages";
import type { SheetAnswer } from "./protocol";
import type { Running } from "./running";
import { SHEET_TITLE, type SheetPanel, sheetPanel } from "./sheet-panel";

const VIEW_TYPE = "sawbuck.sheet";

/** Registers the command, the restoring of a panel from the last session, and the following. */
export function shopSheets(running: Running, extensionUri: vscode.Uri): vscode.Disposable {
  const lastGood = new Map<string, SheetAnswer>();
  let open: SheetPanel | undefined;

  const adopt = (webview: vscode.WebviewPanel, uri: vscode.Uri | undefined): void => {
    const panel = sheetPanel(webview, extensionUri, uri, running, lastGood);
    open = panel;
    webview.onDidDispose(() => {
      if (open === panel) open = undefined;
    });
  };

  const show = (): void => {
    const uri = activePlan();
    if (uri === undefined) {
      void vscode.window.showInformationMessage("Open a plan (a .sawbuck file) first, then its shop sheet.");
    } else if (open !== undefined) {
      open.follow(uri);
      open.reveal();
    } else {
      const where = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
      adopt(vscode.window.createWebviewPanel(VIEW_TYPE, SHEET_TITLE, where), uri);
    }
  };

  return vscode.Disposable.from(
    vscode.commands.registerCommand("sawbuck.openSheet", show),
    vscode.window.registerWebviewPanelSerializer(VIEW_TYPE, {
      deserializeWebviewPanel: async (webview, state: PreviewState | undefined) => {
        const uri = state === undefined ? activePlan() : vscode.Uri.parse(state.uri);
        if (open !== undefined) webview.dispose();
        else adopt(webview, uri);
      },
    }),
    vscode.window.onDidChangeActiveTextEditor(() => {
      const uri = activePlan();
      if (uri !== undefined) open?.follow(uri);
    }),
    vscode.window.onDidChangeTextEditorSelection(({ textEditor, selections }) => {
      const [cursor] = selections;
      if (cursor !== undefined) open?.point(textEditor.document.uri, cursor.active.line + 1);
    }),
    vscode.workspace.onDidCloseTextDocument((document) => lastGood.delete(document.uri.toString())),
    running.onReady(() => open?.refresh()),
    running.onWorked(({ uri }) => {
      if (open?.follows(uri)) open.refresh();
    }),
  );
}

function activePlan(): vscode.Uri | undefined {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === "sawbuck" ? document.uri : undefined;
}
