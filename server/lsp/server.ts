/**
 * The language server over any connection: open documents in, problems and answers out. What it needs of the world, the
 * reading of files above all, is handed in. A request that fails is logged and answered with nothing; the server lives on.
 */
import {
  type Connection,
  type Diagnostic,
  type InitializeParams,
  type InitializeResult,
  TextDocumentSyncKind,
} from "vscode-languageserver";
import { diagnosticsOf } from "../features/diagnostics";
import { countsOf } from "../service";
import { ANSWERERS, offered } from "./answers";
import { answering, type Guard } from "./answers/answering";
import { locator, type Shows, toDiagnostic } from "./convert";
import { type Documents, documents } from "./documents";
import type { LayoutHost } from "./layouts/host";
import { type Looking, type LookingFor, looking } from "./layouts/looking";
import { type Files, openPlans, type Plans } from "./plans";
import { languageFor } from "./sheet-options";
import { answerOwnRequests } from "./sheets";
import { shopSettings } from "./shop-setting";
import { type Shown, showProblems } from "./show-problems";
import { saysYes, textIn } from "./untyped";

export interface Surroundings extends Files {
  /** The address of the page about a code beside the server; none where there is no such page. */
  readonly pageBeside: (code: string) => string | undefined;
  /** Where better layouts are looked for; without it first answers stand. `log` is told what goes wrong there. */
  readonly layoutHost?: (log: (what: string) => void) => LayoutHost;
}

/** Serves a connection, which the caller then listens on. */
export function serveOn(connection: Connection, around: Surroundings): void {
  connection.onInitialize((params) => {
    start(connection, around, params);
    return offeredTo(params);
  });
}

/** Problems are given when asked for to an editor that asks, and pushed to any other. */
const offeredTo = ({ capabilities }: InitializeParams): InitializeResult => ({
  capabilities: {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    ...(capabilities.textDocument?.diagnostic && {
      diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false },
    }),
    ...offered(capabilities),
  },
  serverInfo: { name: "sawbuck" },
});

function start(connection: Connection, around: Surroundings, params: InitializeParams): void {
  const shows = showsOf(params, around);
  const settings = shopSettings(connection, params, around);
  const host = around.layoutHost?.((what) => connection.console.warn(what));
  const better = host && betterLayouts(connection, host, (uris) => again(uris));
  const plans = openPlans(
    around,
    settings.initial,
    (uri, version, evaluated) => {
      void connection.sendNotification("sawbuck/worked", { uri, version, counts: countsOf(evaluated) });
      better?.worked(uri, version, evaluated);
    },
    better?.layouts,
  );
  if (better) plans.onClosed(better.closed);
  const guard = guarded(connection);
  const diagnosed = (uri: string): Diagnostic[] => {
    const evaluated = plans.evaluated(uri);
    const document = plans.document(uri);
    if (!evaluated || !document) return [];
    const locate = locator(evaluated, plans.uriOf);
    return diagnosticsOf(evaluated, shows.language).map((d) => toDiagnostic(d, document, locate, shows));
  };
  const open = documents(connection);
  const problems = showProblems(connection, params, open, guard("problems", diagnosed, []));
  const again = (uris: readonly string[]): void => {
    for (const uri of uris) plans.layOutAnew(uri);
    problems.again(uris);
  };
  connection.onShutdown(() => {
    problems.end();
    better?.end();
  });
  if (better) open.onChange(better.typed);
  keepUp(open, plans, problems.again);
  settings.watch(open, plans, problems.again);
  connection.onDidChangeWatchedFiles(({ changes }) => {
    for (const { uri } of changes) problems.again(plans.changed(around.toFile(uri)));
  });
  const all = answering({ connection, params, plans, shows, guard });
  for (const { answer } of ANSWERERS) answer(all);
  answerOwnRequests(connection, plans, guard);
}

/** Looked for in the pauses of typing; how they stand is told to the editor. */
const betterLayouts = (connection: Connection, host: LayoutHost, again: LookingFor["again"]): Looking =>
  looking({
    host,
    again,
    tell: (uri, version, standing) => {
      void connection.sendNotification("sawbuck/layouts", { uri, version, ...standing });
    },
  });

/** Open texts, and those that depend on them. */
function keepUp(open: Documents, plans: Plans, again: Shown["again"]): void {
  open.onOpen((document) => {
    plans.open(document);
    again([document.uri, ...plans.changed(plans.fileOf(document.uri))], document.uri);
  });
  open.onChange(({ uri }) => again([uri, ...plans.changed(plans.fileOf(uri))], uri));
  open.onClose(({ uri }) => {
    const file = plans.fileOf(uri);
    plans.close(uri);
    again(plans.changed(file));
  });
}

/** What fails is logged, and answered with nothing. */
const guarded =
  (connection: Connection): Guard =>
  (what, run, otherwise) =>
  (asked) => {
    try {
      return run(asked);
    } catch (error) {
      const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
      connection.console.error(`${what} failed, which is a fault of Sawbuck's own: ${told}`);
      return otherwise;
    }
  };

function showsOf(
  { capabilities, initializationOptions, locale = "" }: InitializeParams,
  around: Surroundings,
): Shows {
  const { textDocument } = capabilities;
  const scheme = textIn(initializationOptions, "pageScheme");
  return {
    language: languageFor(locale),
    snippets: textDocument?.completion?.completionItem?.snippetSupport ?? false,
    related:
      textDocument?.diagnostic?.relatedInformation ??
      textDocument?.publishDiagnostics?.relatedInformation ??
      false,
    markdown: textDocument?.hover?.contentFormat?.includes("markdown") ?? true,
    pictures: saysYes(initializationOptions, "pictures"),
    page: (code) => (scheme ? `${scheme}:/${code}.md` : around.pageBeside(code)),
  };
}
