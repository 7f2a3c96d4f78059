/** The shop sheet beside the text: one panel, which follows the plan being edited and comes back after a restart; and saving the sheet. */
import * as vscode from "vscode";
import { activePlan, planInSight } from "./active-plan";
import { AS_PLANNED } from "./choices";
import { keptTicks, movedTo } from "./kept-ticks";
import type { PreviewState } from "./preview/messages";
import type { Running } from "./running";
import { saveSheet } from "./save-sheet";
import { isPlan } from "./sheet-formats";
import {
  type Around,
  type LastGood,
  type SheetPanel,
  sayNotKept,
  sheetPanel,
  sheetTitle,
} from "./sheet-panel";

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
    if (uri === undefined)
      return say(vscode.l10n.t("Open a plan (a .sawbuck file) first, then save its shop sheet."));
    const shown = open?.plan()?.toString() === uri.toString();
    return saveSheet(uri, shown && open ? open.choices() : AS_PLANNED, running);
  };

  const ticks = keptTicks(storage);
  const around: Around = {
    extensionUri,
    running,
    ticks,
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

  const show = (asked: unknown): void => {
    const uri = asked instanceof vscode.Uri && isPlan(asked.path) ? asked : planInSight();
    if (uri === undefined) {
      say(vscode.l10n.t("Open a plan (a .sawbuck file) first, then its shop sheet."));
    } else if (open !== undefined) {
      open.follow(uri);
      open.reveal();
    } else {
      const where = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
      adopt(vscode.window.createWebviewPanel(VIEW_TYPE, sheetTitle(""), where), uri);
    }
  };

  /** The panel may be at the new name already, and then does not know its ticks. */
  const moved = (from: string, to: string): void => {
    ticks.move(from, to).then(undefined, sayNotKept);
    const plan = open?.plan()?.toString();
    if (plan === undefined) return;
    const now = movedTo(plan, from, to) ?? movedTo(plan, to, to);
    if (now !== undefined) open?.moved(vscode.Uri.parse(now));
  };

  return vscode.Disposable.from(
    vscode.commands.registerCommand("sawbuck.openSheet", show),
    vscode.commands.registerCommand("sawbuck.saveSheet", () =>
      save(open?.isActive() ? open.plan() : (planInSight() ?? open?.plan())),
    ),
    vscode.window.registerWebviewPanelSerializer(VIEW_TYPE, {
      deserializeWebviewPanel: async (webview, state: unknown) => {
        if (open !== undefined) webview.dispose();
        else adopt(webview, uriIn(state) ?? planInSight());
      },
    }),
    vscode.window.onDidChangeActiveTextEditor(() => {
      const uri = activePlan();
      if (uri !== undefined) open?.follow(uri);
    }),
    vscode.window.onDidChangeVisibleTextEditors(() => {
      const uri = planInSight();
      if (uri !== undefined && open?.plan() === undefined) open?.follow(uri);
    }),
    vscode.window.onDidChangeTextEditorSelection(({ textEditor, selections }) => {
      const [cursor] = selections;
      if (cursor !== undefined) open?.point(textEditor.document.uri, cursor.active.line + 1);
    }),
    vscode.workspace.onDidCloseTextDocument((document) => lastGood.delete(document.uri.toString())),
    vscode.workspace.onDidRenameFiles(({ files }) => {
      for (const { oldUri, newUri } of files) moved(oldUri.toString(), newUri.toString());
    }),
    running.onReady(() => open?.refresh()),
    running.onGone(() => open?.refresh()),
    running.onWorked(({ uri }) => {
      if (open?.follows(uri)) open.refresh();
    }),
  );
}

/** Of what a page left behind, in another session or another version. */
function uriIn(state: unknown): vscode.Uri | undefined {
  const { uri } = (state ?? {}) as Partial<Record<keyof PreviewState, unknown>>;
  try {
    return typeof uri === "string" ? vscode.Uri.parse(uri, true) : undefined;
  } catch {
    return undefined;
  }
}

function say(what: string): undefined {
  void vscode.window.showInformationMessage(what);
}
