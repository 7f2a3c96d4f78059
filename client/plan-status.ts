/** How the plan in the active editor stands, beside the name of its language: its problems, and what was not looked at. */
import * as vscode from "vscode";
import { classesText, notCheckedText, planText } from "./plan-words";
import type { Counts, Worked } from "./protocol";
import type { Running } from "./running";

/** How long a version may go unanswered before the item is busy, in milliseconds: it would flicker at every key. */
export const PATIENCE = 400;

export function planStatus(running: Running): vscode.Disposable {
  const told = new Map<string, Worked>();
  let server: "starting" | "ready" | "gone" = "starting";
  let open: vscode.LanguageStatusItem | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const item = itemOf("sawbuck.plan", vscode.l10n.t("Sawbuck Plan"));

  const last = (): Worked | undefined => {
    const document = vscode.window.activeTextEditor?.document;
    return document && told.get(document.uri.toString());
  };
  /** Nothing else is done at each key: whatever is set on an item goes to the window of the editor. */
  const watch = (): void => {
    clearTimeout(waiting);
    const version = vscode.window.activeTextEditor?.document.version ?? 0;
    if ((last()?.version ?? version) >= version) return;
    waiting = setTimeout(() => {
      item.busy = true;
    }, PATIENCE);
  };

  const show = (): void => {
    const counts = last()?.counts;
    tell(item, server, counts);
    watch();
    const left = counts?.unchecked ?? 0;
    if (left === 0) {
      open?.dispose();
      open = undefined;
      return;
    }
    open ??= itemOf("sawbuck.notChecked", vscode.l10n.t("Sawbuck: Not Checked"));
    open.text = notCheckedText(left);
    open.command = { command: "sawbuck.showNotChecked", title: vscode.l10n.t("Show List") };
  };

  const turn = (now: typeof server): void => {
    server = now;
    if (now !== "ready") told.clear();
    show();
  };
  show();

  return vscode.Disposable.from(
    item,
    running.onStarting(() => turn("starting")),
    running.onReady(() => turn("ready")),
    running.onGone(() => turn("gone")),
    running.onWorked((worked) => {
      told.set(worked.uri, worked);
      show();
    }),
    vscode.window.onDidChangeActiveTextEditor(show),
    vscode.workspace.onDidChangeTextDocument(({ document }) => {
      if (document === vscode.window.activeTextEditor?.document) watch();
    }),
    vscode.workspace.onDidCloseTextDocument(({ uri }) => told.delete(uri.toString())),
    {
      dispose: () => {
        clearTimeout(waiting);
        open?.dispose();
      },
    },
  );
}

function itemOf(id: string, name: string): vscode.LanguageStatusItem {
  const item = vscode.languages.createLanguageStatusItem(id, { language: "sawbuck" });
  item.name = name;
  return item;
}

function tell(
  item: vscode.LanguageStatusItem,
  server: "starting" | "ready" | "gone",
  counts: Counts | undefined,
): void {
  item.busy = server !== "gone" && counts === undefined;
  item.severity = server === "gone" ? vscode.LanguageStatusSeverity.Error : severityOf(counts);
  item.detail = counts === undefined ? "" : classesText(counts);
  if (server === "gone") {
    item.text = vscode.l10n.t("Not running: plans are not checked");
    item.command = { command: "sawbuck.restartServer", title: vscode.l10n.t("Restart") };
    return;
  }
  item.command = { command: "workbench.panel.markers.view.focus", title: vscode.l10n.t("Show Problems") };
  if (counts !== undefined) item.text = planText(counts);
  else if (server === "starting") item.text = vscode.l10n.t("Starting: plans are not checked yet");
  else item.text = vscode.l10n.t("Looking at this plan");
}

/** That of the worst class. */
function severityOf(counts: Counts | undefined): vscode.LanguageStatusSeverity {
  if (counts !== undefined && counts.errors + counts.hazards > 0) return vscode.LanguageStatusSeverity.Error;
  if (counts !== undefined && counts.warnings > 0) return vscode.LanguageStatusSeverity.Warning;
  return vscode.LanguageStatusSeverity.Information;
}
