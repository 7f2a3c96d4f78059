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
import { version } from "../../package.json";
import { diagnosticsOf } from "../features/diagnostics";
import { countsOf } from "../service";
import { isInFolder } from "./addresses";
import { ANSWERERS, offered } from "./answers";
import { answering, type Guard, type GuardLater } from "./answers/answering";
import { answerComparisons, type LastCommitted } from "./comparing";
import { locator, type Shows, toDiagnostic } from "./convert";
import { type Documents, documents } from "./documents";
import { type EditorFiles, editorFiles, fileReadIn, readerOf } from "./editor-files";
import { everywhere } from "./everywhere";
import { openFolders, workedIn } from "./folders";
import { confined, type FolderReader } from "./inside";
import type { LayoutHost } from "./layouts/host";
import { type Looking, type LookingFor, looking } from "./layouts/looking";
import { answerSlips } from "./measuring";
import { nearFiles } from "./near-files";
import { type PlansBelow, planLists } from "./plan-lists";
import { type Files, openPlans, type Plans } from "./plans";
import { refreshing } from "./refreshing";
import { registering } from "./registering";
import { settingsOf } from "./settings";
import { languageFor } from "./sheet-options";
import { answerOwnRequests } from "./sheets";
import { shopSetting } from "./shop-setting";
import { type Shown, showProblems } from "./show-problems";
import { saysYes, textIn } from "./untyped";
import { watchFiles } from "./watched-files";

export interface Surroundings extends Omit<Files, "read" | "folderOf"> {
  readonly read: FolderReader;
  /** The address of the page about a code beside the server; none where there is no such page. */
  readonly pageBeside: (code: string) => string | undefined;
  /** All plan files below a folder of a disk, given by its path; none where there is no disk. */
  readonly plansBelow?: PlansBelow;
  /** What a plan was in the last commit; unsaid where there is no git. */
  readonly lastCommitted?: LastCommitted;
  /** Where better layouts are looked for; without it first answers stand. `log` is told what goes wrong there, `options` are what the editor gave at the start. */
  readonly layoutHost?: (log: (what: string) => void, options: unknown) => LayoutHost;
}

/** Serves a connection, which the caller then listens on. */
export function serveOn(connection: Connection, around: Surroundings): void {
  connection.onInitialize((params) => {
    start(connection, around, params);
    return offeredTo(params);
  });
}

/** Problems are given when asked for to an editor that asks, and pushed to any other. */
const offeredTo = ({ capabilities }: InitializeParams): InitializeResult => {
  const { workspace, ...features } = offered(capabilities);
  return {
    capabilities: {
      textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
      ...(capabilities.textDocument?.diagnostic && {
        diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false },
      }),
      ...features,
      workspace: { ...workspace, workspaceFolders: { supported: true, changeNotifications: true } },
    },
    serverInfo: { name: "sawbuck", version },
  };
};

function start(connection: Connection, around: Surroundings, params: InitializeParams): void {
  const shows = showsOf(params, around);
  const open = documents(connection);
  const register = registering(connection);
  const settings = settingsOf(connection, params, open, register);
  const folders = openFolders(connection, params);
  const shop = shopSetting(settings, folders, around);
  const inEditor = readByEditor(connection, params, around, (file) => changed(plans.changed(file)));
  const host = around.layoutHost?.((what) => connection.console.warn(what), params.initializationOptions);
  const better = host && betterLayouts(connection, host, (uris) => again(uris));
  const folderOf = workedIn(folders, around);
  const read = confined(readerOf(around.read, inEditor), folderOf);
  const plans: Plans = openPlans(
    { ...around, read, folderOf, ...(inEditor && { coming: inEditor }) },
    shop.of,
    (uri, version, evaluated) => {
      // One that waits for files is worked out again when they come, or are given up.
      if (!plans.waits(uri))
        void connection.sendNotification("sawbuck/worked", { uri, version, counts: countsOf(evaluated) });
      better?.worked(uri, version, evaluated);
    },
    better?.layouts,
  );
  if (better) plans.onClosed(better.closed);
  plans.onClosed((uri) => {
    inEditor?.keepOnly(plans.asksFor);
    inEditor?.changed(around.toFile(uri));
  });
  const guard = guarded(connection);
  const diagnosed = (uri: string): Diagnostic[] => {
    const evaluated = plans.evaluated(uri);
    const document = plans.document(uri);
    if (!evaluated || !document) return [];
    const locate = locator(evaluated.worked.loaded, plans.uriOf);
    return diagnosticsOf(evaluated, shows.language).map((d) => toDiagnostic(d, document, locate, shows));
  };
  const refresh = refreshing(connection, params);
  const problems = showProblems(connection, params, open, {
    diagnosed: guard("problems", diagnosed, []),
    waits: guard("problems", plans.waits, false),
    settled: plans.settled,
  });
  /** Worked out anew; what an editor asks for by itself of the text that it has just changed, it is to ask for of others. */
  const changed: Shown["again"] = (uris, typed) => {
    problems.again(uris, typed);
    if (uris.some((uri) => uri !== typed)) refresh.all();
  };
  plans.onGivenUp((uri) => changed([uri]));
  const again = (uris: readonly string[]): void => {
    for (const uri of uris) plans.layOutAnew(uri);
    problems.again(uris);
    refresh.lenses();
  };
  connection.onShutdown(() => {
    problems.end();
    refresh.end();
    better?.end();
  });
  if (better) open.onChange(better.typed);
  keepUp(open, plans, changed);
  shop.watch(plans, changed);
  watchFiles(connection, params, register, (uri) => {
    const file = around.toFile(uri);
    if (isInFolder(file)) inEditor?.changed(file);
    else changed(plans.changed(file));
  });
  const plansBelow = planLists(connection, params, around, around.plansBelow);
  const all = answering({
    connection,
    params,
    plans,
    everywhere: everywhere(folders, plans, plansBelow, inEditor),
    nearFiles: nearFiles(folders, plans, plansBelow),
    toFile: around.toFile,
    shows,
    settings,
    refresh,
    guard,
    guardLater: guardedLater(connection),
  });
  for (const { answer } of ANSWERERS) answer(all);
  answerOwnRequests(connection, plans, guard, shows);
  answerComparisons(connection, plans, guard, around.lastCommitted);
  answerSlips(connection, params, plans, guard);
}

/** Where the editor says that it reads files; `news` is told of each that is another than was known. */
const readByEditor = (
  connection: Connection,
  { initializationOptions }: InitializeParams,
  { toUri }: Surroundings,
  news: (file: string) => void,
): EditorFiles | undefined => {
  if (!saysYes(initializationOptions, "readsFiles")) return undefined;
  const ask = async (file: string) =>
    fileReadIn(await connection.sendRequest("sawbuck/readFile", { uri: toUri(file) }));
  return editorFiles(ask, news);
};

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
      logFault(connection, what, error);
      return otherwise;
    }
  };

const guardedLater =
  (connection: Connection): GuardLater =>
  (what, run, otherwise) =>
  (asked, token) =>
    run(asked, token).catch((error: unknown) => {
      logFault(connection, what, error);
      return otherwise;
    });

function logFault(connection: Connection, what: string, error: unknown): void {
  const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
  connection.console.error(`${what} failed, which is a fault of Sawbuck's own: ${told}`);
}

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
    commands: saysYes(initializationOptions, "commands"),
    page: (code) => (scheme ? `${scheme}:/${code}.md` : around.pageBeside(code)),
  };
}
