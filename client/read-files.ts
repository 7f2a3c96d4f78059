/** Reading the files that the server asks for: those in folders that are not on its disk, or in a browser, where it has none. */
import * as vscode from "vscode";
import type { FileRead } from "./protocol";

/** The largest file that is read at all, in bytes: as on a disk. */
const LARGEST_FILE = 20_000_000;

/** Never rejects: `refused` says in words why there is no text. */
export async function readForServer(address: string): Promise<FileRead> {
  try {
    const uri = vscode.Uri.parse(address, true);
    const { type, size } = await vscode.workspace.fs.stat(uri);
    if (type & vscode.FileType.Directory) return { refused: "it is a folder" };
    if (size > LARGEST_FILE) return { refused: TOO_LARGE };
    const bytes = await vscode.workspace.fs.readFile(uri);
    if (bytes.length > LARGEST_FILE) return { refused: TOO_LARGE };
    return { text: new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes) };
  } catch (reason) {
    return { refused: inWords(reason) };
  }
}

/** These reasons are phrases of the server's, which tells them in the reader's language. */
const TOO_LARGE = "it is larger than 20 MB";

function inWords(reason: unknown): string {
  const code = reason instanceof vscode.FileSystemError ? reason.code : "";
  if (code === "FileNotFound" || code === "FileNotADirectory") return "there is no such file";
  if (code === "NoPermissions") return "it may not be read";
  return code === "FileIsADirectory" ? "it is a folder" : "it cannot be read";
}
