/** The extension, for editors that run extensions in Node: starts the language server and offers the commands. */
import { homedir } from "node:os";
import * as vscode from "vscode";
import { LanguageClient, type LanguageClientOptions, TransportKind } from "vscode-languageclient/node";
import { explainProblems, PAGE_SCHEME } from "./explain";
import { layoutStatus } from "./layout-status";
import { newPlans } from "./new-plan";
import type { StartOptions } from "./protocol";
import { type Created, keepRunning, type Running } from "./running";
import { shopFile, shopFilePattern } from "./shop-file";
import { shopSheets } from "./shop-sheets";

let running: Running | undefined;

export function activate(context: vscode.ExtensionContext): void {
  const log = vscode.window.createOutputChannel("Sawbuck", { log: true });
  const server = keepRunning(() => createClient(context, log), log);
  running = server;
  context.subscriptions.push(
    log,
    shopSheets(server, context.extensionUri, context.globalState),
    layoutStatus(server),
    newPlans(context.extensionUri),
    explainProblems(server),
    vscode.commands.registerCommand("sawbuck.restartServer", () => server.restart()),
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (change.affectsConfiguration("sawbuck.shopFile")) void server.restart();
    }),
  );
  void server.restart(); // commands and a restored sheet need not wait for it
}

export async function deactivate(): Promise<void> {
  await running?.stop();
}

function createClient(context: vscode.ExtensionContext, log: vscode.LogOutputChannel): Created {
  const watchers = [vscode.workspace.createFileSystemWatcher("**/*.sawbuck")];
  const shop = shopFilePattern(shopFile(), homedir());
  if (shop !== undefined) watchers.push(vscode.workspace.createFileSystemWatcher(shop));
  const startOptions: StartOptions = {
    pageScheme: PAGE_SCHEME,
    shopFile: shopFile(),
    pictures: true,
    offerAgain: "editor.action.triggerSuggest",
  };
  const options: LanguageClientOptions = {
    documentSelector: [{ language: "sawbuck" }],
    initializationOptions: startOptions,
    outputChannel: log,
    synchronize: { fileEvents: watchers },
  };
  const program = {
    module: vscode.Uri.joinPath(context.extensionUri, "dist", "server.js").fsPath,
    transport: TransportKind.ipc,
    // Measured: DEVELOPERS.md tells what each is for.
    options: {
      execArgv: ["--max-semi-space-size=8", "--heap-growing-percent=100"],
    },
  };
  const client = new LanguageClient(
    "sawbuck",
    "Sawbuck Language Server",
    { run: program, debug: program },
    options,
  );
  // A client that starts its server again after a crash goes on with the same watchers.
  return { client, around: vscode.Disposable.from(...watchers) };
}
