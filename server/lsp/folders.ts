/** The addresses of the folders that are open in the editor, which may change at any time. */
import {
  type Connection,
  DidChangeWorkspaceFoldersNotification,
  type InitializeParams,
} from "vscode-languageserver";

export function openFolders(connection: Connection, { workspaceFolders }: InitializeParams): () => string[] {
  const folders = new Set((workspaceFolders ?? []).map(({ uri }) => uri));
  connection.onNotification(DidChangeWorkspaceFoldersNotification.type, ({ event: { added, removed } }) => {
    for (const { uri } of removed) folders.delete(uri);
    for (const { uri } of added) folders.add(uri);
  });
  return () => [...folders];
}

/** The address of the innermost of these folders that a document lies in. */
export const folderAround = (uri: string, folders: readonly string[]): string | undefined =>
  folders
    .filter((folder) => uri.startsWith(`${folder.replace(/\/$/, "")}/`))
    .sort((a, b) => b.length - a.length)[0];
