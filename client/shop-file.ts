/** The reader's own shop file, as their settings name it. */
import * as vscode from "vscode";

/** The setting as typed: a full path, a path from `~/`, or a path from the folder that is open. Empty where it is not set. */
export function shopFile(): string {
  return vscode.workspace.getConfiguration("sawbuck").get<string>("shopFile", "").trim();
}

/** What to watch for a shop file given by a full path or from `~/`; one inside the open folder is watched with the plans. */
export function shopFilePattern(typed: string, home: string): vscode.RelativePattern | undefined {
  const path = typed.startsWith("~/") ? `${home}/${typed.slice(2)}` : typed;
  if (!/^(\/|\\\\|[A-Za-z]:[\\/])/.test(path)) return undefined;
  const file = vscode.Uri.file(path);
  const name = file.path.slice(file.path.lastIndexOf("/") + 1);
  // A name is taken as it is written, not as a pattern.
  return new vscode.RelativePattern(vscode.Uri.joinPath(file, ".."), name.replace(/[*?{}[\]]/g, "[$&]"));
}
