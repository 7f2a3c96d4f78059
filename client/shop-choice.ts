/** “Use Your Own Shop File”: writes into the reader's settings one that they have, or a copy of the samples' one to begin with. */
import * as vscode from "vscode";
import { copyShipped } from "./new-plan";

export function shopFileChoice(extensionUri: vscode.Uri): vscode.Disposable {
  return vscode.commands.registerCommand("sawbuck.useShopFile", async () => {
    const own = { label: vscode.l10n.t("Choose a shop file that you have") };
    const copy = { label: vscode.l10n.t("Begin with a copy of the samples’ shop file") };
    const picked = await vscode.window.showQuickPick([own, copy], {
      placeHolder: vscode.l10n.t("Which shop file should all plans use?"),
    });
    if (picked === undefined) return;
    const sample = vscode.Uri.joinPath(extensionUri, "samples", "hillside-shop.sawbuck");
    const file = picked === own ? await chosen() : await copied(sample);
    if (file === undefined) return;
    const settings = vscode.workspace.getConfiguration("sawbuck");
    // In a folder that is on no disk, a path is seen from the root of what it is on, whatever the system of the editor.
    const path = file.scheme === "file" ? file.fsPath : file.path;
    await settings.update("shopFile", path, vscode.ConfigurationTarget.Global);
    await vscode.window.showTextDocument(file);
  });
}

const filters = (): Record<string, string[]> => ({ [vscode.l10n.t("Plans and shop files")]: ["sawbuck"] });

const chosen = async (): Promise<vscode.Uri | undefined> =>
  (await vscode.window.showOpenDialog({ filters: filters() }))?.[0];

/** Undefined where the reader thought better of it, or where it cannot be written: nothing is written over another file. */
async function copied(from: vscode.Uri): Promise<vscode.Uri | undefined> {
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
  const to = await vscode.window.showSaveDialog({
    filters: filters(),
    ...(folder && { defaultUri: vscode.Uri.joinPath(folder, "my-shop.sawbuck") }),
  });
  if (to === undefined) return undefined;
  try {
    if (await isThere(to)) throw new Error(vscode.l10n.t("there is a file of that name."));
    await copyShipped(from, to);
    return to;
  } catch (reason) {
    const why = reason instanceof Error ? reason.message : String(reason);
    void vscode.window.showErrorMessage(vscode.l10n.t("The shop file was not copied: {0}", why));
    return undefined;
  }
}

/** What cannot be looked at may be there: it rejects. */
async function isThere(file: vscode.Uri): Promise<boolean> {
  try {
    await vscode.workspace.fs.stat(file);
    return true;
  } catch (reason) {
    if (reason instanceof vscode.FileSystemError && reason.code === "FileNotFound") return false;
    throw reason;
  }
}
