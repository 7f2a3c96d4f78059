/**
 * The language server over any connection: open documents in, problems and answers out. What it needs of the world, the
 * reading of files above all, is handed in. A request that fails is logged and answered with nothing; the server lives on.
 */
import {
  type CompletionItem,
  type Connection,
  type Diagnostic,
  type InitializeParams,
  type InitializeResult,
  type Location,
  type TextDocumentPositionParams,
  TextDocumentSyncKind,
} from "vscode-languageserver";
import type { TextDocument } from "vscode-languageserver-textdocument";
import { completionsAt } from "../features/completion";
import { definitionAt } from "../features/definition";
import { diagnosticsOf } from "../features/diagnostics";
import { hoverAt } from "../features/hover";
import { symbolsOf } from "../features/symbols";
import { type Evaluated, hoverDrawing } from "../service";
import { locator, type Shows, toCompletion, toDiagnostic, toHover, toSymbol } from "./convert";
import { type Documents, documents } from "./documents";
import type { LayoutHost } from "./layouts/host";
import { type Looking, type LookingFor, looking } from "./layouts/looking";
import { type Files, openPlans, type Plans } from "./plans";
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
    return CAPABILITIES(pulls(params));
  });
}

const pulls = ({ capabilities }: InitializeParams): boolean =>
  capabilities.textDocument?.diagnostic !== undefined;

const CAPABILITIES = (pull: boolean): InitializeResult => ({
  capabilities: {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    hoverProvider: true,
    completionProvider: { triggerCharacters: [" ", "#"] },
    definitionProvider: true,
    documentSymbolProvider: true,
    ...(pull && { diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false } }),
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
      void connection.sendNotification("sawbuck/worked", { uri, version });
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
    return diagnosticsOf(evaluated).map((d) => toDiagnostic(d, document, locate, shows));
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
  answerRequests(connection, plans, shows, guard);
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

export type Guard = <A, B>(what: string, run: (asked: A) => B, otherwise: B) => (asked: A) => B;

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

function answerRequests(connection: Connection, plans: Plans, shows: Shows, guard: Guard): void {
  const at = <B>(
    { textDocument: { uri }, position }: TextDocumentPositionParams,
    run: (evaluated: Evaluated, document: TextDocument, offset: number) => B | undefined,
  ): B | null => {
    const evaluated = plans.evaluated(uri);
    const document = plans.document(uri);
    return (evaluated && document && run(evaluated, document, document.offsetAt(position))) ?? null;
  };
  connection.onHover(
    guard(
      "hover",
      (asked) =>
        at(asked, (evaluated, document, offset) => {
          const told = hoverAt(evaluated, offset);
          if (!told) return undefined;
          const picture = shows.markdown && shows.pictures ? hoverDrawing(evaluated, offset) : undefined;
          return toHover(told, document, shows, picture);
        }),
      null,
    ),
  );
  connection.onCompletion(
    guard(
      "completion",
      (asked) =>
        at(asked, (evaluated, document, offset): CompletionItem[] =>
          completionsAt(evaluated, offset).map((c) => toCompletion(c, document, shows)),
        ),
      null,
    ),
  );
  connection.onDefinition(
    guard(
      "definition",
      (asked) =>
        at(asked, (evaluated, _, offset): Location | undefined => {
          const found = definitionAt(evaluated, offset, plans.reader);
          return found && locator(evaluated, plans.uriOf)(found);
        }),
      null,
    ),
  );
  connection.onDocumentSymbol(
    guard(
      "symbols",
      ({ textDocument: { uri } }) => {
        const evaluated = plans.evaluated(uri);
        const document = plans.document(uri);
        return evaluated && document ? symbolsOf(evaluated).map((s) => toSymbol(s, document)) : null;
      },
      null,
    ),
  );
}

function showsOf({ capabilities, initializationOptions }: InitializeParams, around: Surroundings): Shows {
  const { textDocument } = capabilities;
  const scheme = textIn(initializationOptions, "pageScheme");
  return {
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
