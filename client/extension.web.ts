/** The extension, for editors that run extensions in a browser's worker: the language server is a worker beside it. */
import * as vscode from "vscode";
import { extensionAt } from "./activate";
import { workerClient } from "./worker-client";

export const { activate, deactivate } = extensionAt({
  clientFor: ({ extensionUri }, options) =>
    workerClient(() => startWorker(shipped(extensionUri, "server.js")), options),
  // A worker finds no program beside its own. Without this one, layouts are looked for between the keys.
  startOptions: ({ extensionUri }) =>
    textOf(shipped(extensionUri, "layouts.js")).then(
      (layouts) => ({ layouts }),
      () => ({}),
    ),
});

const shipped = (extensionUri: vscode.Uri, file: string): vscode.Uri =>
  vscode.Uri.joinPath(extensionUri, "dist", file);

/** Of an extension that lies on another machine, the editor gives workers no address to load it from. */
async function startWorker(program: vscode.Uri): Promise<Worker> {
  if (program.scheme !== "vscode-remote") return new Worker(program.toString(true));
  copied ??= URL.createObjectURL(new Blob([await textOf(program)], { type: "text/javascript" }));
  return new Worker(copied);
}

/** The address of the server's program here, once it has been read. */
let copied: string | undefined;

async function textOf(file: vscode.Uri): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(file));
}
