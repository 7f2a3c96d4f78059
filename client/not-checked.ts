/** “Show What Was Not Checked”: the list for the plan at hand, each entry with its reason; one that has a line leads there. */
import * as vscode from "vscode";
import { planInSight } from "./active-plan";
import { goTo } from "./pointed";
import { type NotChecked, NotCheckedRequest } from "./protocol";
import type { Running } from "./running";

export function notCheckedList(running: Running): vscode.Disposable {
  return vscode.commands.registerCommand("sawbuck.showNotChecked", async () => {
    const plan = planInSight();
    if (plan === undefined) {
      void vscode.window.showInformationMessage(vscode.l10n.t("Open a plan (a .sawbuck file) first."));
      return;
    }
    const answer = await running.client().sendRequest(NotCheckedRequest, { uri: plan.toString() });
    const entries = answer?.entries ?? [];
    if (entries.length === 0) {
      void vscode.window.showInformationMessage(
        vscode.l10n.t("Nothing is on the list of what was not checked. That approves no plan."),
      );
      return;
    }
    const picked = await vscode.window.showQuickPick(entries.map(choice), {
      placeHolder: vscode.l10n.t("What was not checked in this plan, and why"),
      matchOnDetail: true,
    });
    if (picked?.entry.uri !== undefined)
      await goTo(vscode.Uri.parse(picked.entry.uri), picked.entry.line ?? 1);
  });
}

interface Choice extends vscode.QuickPickItem {
  readonly entry: NotChecked;
}

const choice = (entry: NotChecked): Choice => ({
  label: entry.what,
  detail: entry.why,
  entry,
  ...(entry.line !== undefined && { description: vscode.l10n.t("line {0}", entry.line) }),
});
