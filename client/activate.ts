/** What the extension does wherever it runs: a server that is kept running, the commands, the panels. How a server is started is handed in. */
import * as vscode from "vscode";
import type { BaseLanguageClient, LanguageClientOptions } from "vscode-languageclient";
import { comparing } from "./comparing";
import { explainProblems, PAGE_SCHEME } from "./explain";
import { layoutStatus } from "./layout-status";
import { measuring } from "./measuring";
import { newPlans } from "./new-plan";
import { notCheckedList } from "./not-checked";
import { plansBelow } from "./plan-lists";
import { planStatus } from "./plan-status";
import { practice } from "./practice";
import { PlansBelowRequest, ReadFileRequest, type StartOptions } from "./protocol";
import { readForServer } from "./read-files";
import { renameThere } from "./rename-there";
import { type Created, keepRunning, type Running } from "./running";
import { shopFileChoice } from "./shop-choice";
import { shopFile, shopFilePattern } from "./shop-file";
import { shopSheets } from "./shop-sheets";

/** Where the extension runs. */
export interface Place {
  /** A client of a server that has not been started. */
  readonly clientFor: (
    context: vscode.ExtensionContext,
    options: LanguageClientOptions,
  ) => BaseLanguageClient;
  /** What its server is told beside what every server is. */
  readonly startOptions?: (context: vscode.ExtensionContext) => Promise<Partial<StartOptions>>;
  /** The reader's own folder, for a shop file on a disk; none where there is no disk. */
  readonly home?: string;
}

/** The two ways into the extension. */
export interface Extension {
  readonly activate: (context: vscode.ExtensionContext) => void;
  readonly deactivate: () => Promise<void>;
}

export function extensionAt(place: Place): Extension {
  let running: Running | undefined;
  return {
    activate: (context) => {
      const log = vscode.window.createOutputChannel("Sawbuck", { log: true });
      const server = keepRunning(() => createClient(place, context, log), log);
      running = server;
      context.subscriptions.push(
        log,
        shopSheets(server, context.extensionUri, context.globalState),
        planStatus(server),
        layoutStatus(server),
        notCheckedList(server),
        practice(server, context.extensionUri),
        shopFileChoice(context.extensionUri),
        newPlans(context.extensionUri),
        comparing(server, context.extensionUri),
        measuring(server, context.extensionUri),
        explainProblems(server),
        renameThere(),
        vscode.commands.registerCommand("sawbuck.restartServer", () => server.restart()),
        vscode.workspace.onDidChangeConfiguration((change) => {
          if (change.affectsConfiguration("sawbuck.shopFile")) void server.restart();
        }),
      );
      void server.restart(); // commands and a restored sheet need not wait for it
    },
    deactivate: async () => running?.stop(),
  };
}

async function createClient(
  place: Place,
  context: vscode.ExtensionContext,
  log: vscode.LogOutputChannel,
): Promise<Created> {
  const startOptions: StartOptions = {
    pageScheme: PAGE_SCHEME,
    shopFile: shopFile(),
    pictures: true,
    commands: true,
    offerAgain: "editor.action.triggerSuggest",
    readsFiles: true,
    listsPlans: true,
    ...(await place.startOptions?.(context)),
  };
  // The server itself asks for the plans of the open folder to be watched.
  const shop = place.home === undefined ? undefined : shopFilePattern(shopFile(), place.home);
  const watchers = shop === undefined ? [] : [vscode.workspace.createFileSystemWatcher(shop)];
  const client = place.clientFor(context, {
    documentSelector: [{ language: "sawbuck" }],
    initializationOptions: startOptions,
    outputChannel: log,
    synchronize: { fileEvents: watchers },
  });
  client.onRequest(ReadFileRequest, ({ uri }) => readForServer(uri));
  client.onRequest(PlansBelowRequest, ({ uri }, token) => plansBelow(uri, token));
  // A client that starts its server again after a crash goes on with the same watchers.
  return { client, around: vscode.Disposable.from(...watchers) };
}
