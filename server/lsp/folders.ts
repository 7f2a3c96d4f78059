/** The addresses of the folders that are open in the editor, which may change at any time. */
import {
  type Connection,
  DidChangeWorkspaceFoldersNotification,
  type InitializeParams,
} from "vscode-languageserver";
import type { Files } from "./plans";

export function openFolders(connection: Connection, { workspaceFolders }: InitializeParams): () => string[] {
  const folders = new Set((workspaceFolders ?? []).map(({ uri }) => uri));
  connection.onNotification(DidChangeWorkspaceFoldersNotification.type, ({ event: { added, removed } }) => {
    for (const { uri } of removed) folders.delete(uri);
    for (const { uri } of added) folders.add(uri);
  });
  return () => [...folders];
}

/** The address of the outermost of these folders that a document lies in: where its lines may read. */
export const outermostAround = (uri: string, folders: readonly string[]): string | undefined =>
  foldersAround(uri, folders).at(-1);

/** The address of the innermost of these folders that a document lies in. */
export const folderAround = (uri: string, folders: readonly string[]): string | undefined =>
  foldersAround(uri, folders)[0];

/** From the innermost to the outermost. */
const foldersAround = (uri: string, folders: readonly string[]): string[] =>
  folders
    .filter((folder) => uri.startsWith(`${folder.replace(/\/$/, "")}/`))
    .sort((a, b) => b.length - a.length);

/**
 * The folder one works in, for a plan by the name of its file: the outermost open folder that it lies in, else its own. So
 * a file that it brings has the same.
 */
export const workedIn =
  (folders: () => readonly string[], { toFile, toUri }: Pick<Files, "toFile" | "toUri">) =>
  (file: string): string => {
    const folder = outermostAround(toUri(file), folders());
    return folder === undefined ? file.replace(/[\\/][^\\/]*$/, "") || "/" : toFile(folder);
  };
