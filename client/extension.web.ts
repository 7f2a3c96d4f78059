/** The extension, for editors that run extensions in a browser's worker: the language server is a worker beside it. */
import * as vscode from "vscode";
import { extensionAt } from "./activate";
import { workerClient } from "./worker-client";

export const { activate, deactivate } = extensionAt({
  clientFor: ({ extensionUri }, options) =>
    workerClient(() => startWorker(shipped(extensionUri, "server.js")), options),
  // A worker finds no program beside its own.
  startOptions: async ({ extensionUri }) => ({ layouts: await textOf(shipped(extensionUri, "layouts.js")) }),
});

const shipped = (extensionUri: vscode.Uri, file: string): vscode.Uri =>
  vscode.Uri.joinPath(extensionUri, "dist", file);

/** Of an extension that lies on another machine, the editor gives workers no address to load it from. */
async function startWorker(program: vscode.Uri): Promise<Worker> {
  if (program.scheme !== "vscode-remote") return new Worker(program.toString(true));
  const text = await textOf(program);
  return new Worker(URL.createObjectURL(new Blob([text], { type: "text/javascript" })));
}

async function textOf(file: vscode.Uri): Promise<string> {
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(file));
}
