/** Listing the plan files of folders that are not on a disk of the server's. */
import * as vscode from "vscode";

/** The most plan files and folders that are looked at below one folder: of files as many as on a disk. */
const MOST = 5_000;
/** How many folders are read at once. */
const AT_ONCE = 16;

/**
 * All plan files below a folder, those of the nearest folders first: no hidden folders, no `node_modules`, no links, as on a
 * disk. Folder by folder, since the editor's own search waits for ever where a folder's provider has none.
 */
export async function plansBelow(
  address: string,
  token: vscode.CancellationToken,
): Promise<{ readonly uris: readonly string[] }> {
  const uris: string[] = [];
  const folders = [vscode.Uri.parse(address, true)];
  const look = async (folder: vscode.Uri): Promise<void> => {
    for (const [name, type] of await entriesOf(folder)) {
      const one = vscode.Uri.joinPath(folder, name);
      if (type === vscode.FileType.Directory && !/^\.|^node_modules$/.test(name)) folders.push(one);
      if (type === vscode.FileType.File && name.endsWith(".sawbuck")) uris.push(one.toString());
    }
  };
  for (let looked = 0; looked < MOST && uris.length < MOST && !token.isCancellationRequested; ) {
    const next = folders.splice(0, AT_ONCE);
    if (next.length === 0) break;
    await Promise.all(next.map(look));
    looked += next.length;
  }
  return { uris: uris.slice(0, MOST) };
}

const entriesOf = async (folder: vscode.Uri): Promise<readonly [string, vscode.FileType][]> => {
  try {
    return await vscode.workspace.fs.readDirectory(folder);
  } catch {
    return []; // one that is gone, or may not be read
  }
};
