/** The extension, for editors that run extensions in Node: the language server is a program of its own. */
import { homedir } from "node:os";
import * as vscode from "vscode";
import { LanguageClient, TransportKind } from "vscode-languageclient/node";
import { extensionAt } from "./activate";

export const { activate, deactivate } = extensionAt({
  home: homedir(),
  clientFor: (context, options) => {
    const program = {
      module: vscode.Uri.joinPath(context.extensionUri, "dist", "server.js").fsPath,
      transport: TransportKind.ipc,
      // Measured: DEVELOPERS.md tells what each is for.
      options: {
        execArgv: ["--max-semi-space-size=8", "--heap-growing-percent=100"],
        // Newer Node keeps there what it has compiled, and starts the sooner the next time; older Node pays no heed.
        env: {
          NODE_COMPILE_CACHE: vscode.Uri.joinPath(context.globalStorageUri, "compiled").fsPath,
        },
      },
    };
    return new LanguageClient(
      "sawbuck",
      "Sawbuck Language Server",
      { run: program, debug: program },
      options,
    );
  },
});
