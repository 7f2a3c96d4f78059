/** The shop sheet beside the text: one panel, which follows the plan being edited and comes back after a restart; and saving the sheet. */
import * as vscode from "vscode";
import { AS_PLANNED } from "./choices";
import { keptTicks } from "./kept-ticks";
import type { PreviewState } from "./preview/messages";
import type { Running } from "./running";
import { saveSheet } from "./save-sheet";
import { type Around, type LastGood, SHEET_TITLE, type SheetPanel, sheetPanel } from "./sheet-panel";

const VIEW_TYPE = "sawbuck.sheet";

/** Registers the commands, the restoring of a panel from the last session, and the following. `storage` keeps ticks on this device. */
export function shopSheets(
  running: Running,
  extensionUri: vscode.Uri,
  storage: vscode.Memento,
): vscode.Disposable {
  const lastGood = new Map<string, LastGood>();
  let open: SheetPanel | undefined;

  const save = (uri: vscode.Uri | undefined): Promise<void> | undefined => {
    if (uri === undefined) return sayNoPlan("then save its shop sheet");
    const shown = open?.plan()?.toString() === uri.toString();
    return saveSheet(uri, shown && open ? open.choices() : AS_PLANNED, running);
  };

  const around: Around = {
    extensionUri,
    running,
    ticks: keptTicks(storage),
    lastGood,
    save: () => void save(open?.plan()),
  };

  const adopt = (webview: vscode.WebviewPanel, uri: vscode.Uri | undefined): void => {
    const panel = sheetPanel(webview, uri, around);
    open = panel;
    webview.onDidDispose(() => {
      if (open === panel) open = undefined;
    });
  };

  const show = (): void => {
    const uri = activePlan();
    if (uri === undefined) {
      sayNoPlan("then its shop sheet");
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
    vscode.commands.registerCommand("sawbuck.saveSheet", () =>
      save(open?.isActive() ? open.plan() : activePlan()),
    ),
    vscode.window.registerWebviewPanelSerializer(VIEW_TYPE, {
      deserializeWebviewPanel: async (webview, state: PreviewState | undefined) => {
        const uri = state?.uri === undefined ? activePlan() : vscode.Uri.parse(state.uri);
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

function sayNoPlan(then: string): undefined {
  void vscode.window.showInformationMessage(`Open a plan (a .sawbuck file) first, ${then}.`);
}

function activePlan(): vscode.Uri | undefined {
  const document = vscode.window.activeTextEditor?.document;
  return document?.languageId === "sawbuck" ? document.uri : undefined;
}
