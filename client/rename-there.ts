/** Starts to rename what stands somewhere, as an action does that gave it a name of its own choice. */
import * as vscode from "vscode";

/** Where the language server counts it, as it comes with the action. */
interface There {
  readonly line: number;
  readonly character: number;
}

/** Only the cursor goes there where nothing can be renamed. */
export const renameThere = (): vscode.Disposable =>
  vscode.commands.registerCommand("sawbuck.renameThere", async (uri: string, there: There) => {
    const at = new vscode.Position(there.line, there.character);
    const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(uri));
    const editor = await vscode.window.showTextDocument(document);
    editor.selection = new vscode.Selection(at, at);
    editor.revealRange(new vscode.Range(at, at));
    const can = await vscode.commands.executeCommand("vscode.prepareRename", document.uri, at).then(
      (found) => found !== undefined && found !== null,
      () => false,
    );
    if (can) await vscode.commands.executeCommand("editor.action.rename");
  });
