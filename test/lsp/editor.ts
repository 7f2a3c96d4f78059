/** A language server in this process with a scripted editor at the other end of its connection, and files in memory. */
import { posix } from "node:path";
import { PassThrough } from "node:stream";
import { onTestFinished } from "vitest";
import {
  type CancellationToken,
  type ClientCapabilities,
  createConnection,
  createProtocolConnection,
  type Diagnostic,
  type Position,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import { addressOfName, isAddress, nameOfAddress } from "../../server/lsp/addresses";
import type { LastCommitted } from "../../server/lsp/comparing";
import type { FileRead } from "../../server/lsp/editor-files";
import type { LayoutHost } from "../../server/lsp/layouts/host";
import type { Standing } from "../../server/lsp/layouts/looking";
import { serveOn } from "../../server/lsp/server";
import type { Reader } from "../../server/plan";
import type { Counts } from "../../server/service";

export interface Editor {
  readonly connection: ProtocolConnection;
  readonly answer: { readonly capabilities: object };
  readonly open: (file: string, text: string) => Promise<void>;
  readonly edit: (file: string, start: number, end: number, text: string) => Promise<void>;
  readonly replace: (file: string, text: string) => Promise<void>;
  readonly close: (file: string) => Promise<void>;
  /** Says that a file that is watched has changed. */
  readonly changed: (file: string) => Promise<void>;
  readonly textOf: (file: string) => string;
  readonly positionOf: (file: string, offset: number) => Position;
  /** What was pushed last for a file; undefined when nothing ever was. */
  readonly pushed: (file: string) => readonly Diagnostic[] | undefined;
  /** Everything pushed for a file, in order. */
  readonly pushes: { readonly uri: string; readonly version?: number; readonly diagnostics: Diagnostic[] }[];
  readonly pull: (file: string) => Promise<readonly Diagnostic[]>;
  readonly worked: { readonly uri: string; readonly version: number; readonly counts: Counts }[];
  /** What was told of layouts, in order. */
  readonly layouts: ({ readonly uri: string; readonly version: number } & Standing)[];
  readonly refreshes: () => number;
  /** What the server asked to be told of, in order. */
  readonly registered: { readonly method: string; readonly registerOptions?: unknown }[];
  readonly logged: string[];
  /** Resolves when `ready` holds; fails after twenty seconds. */
  readonly until: (ready: () => boolean) => Promise<void>;
  readonly end: () => void;
}

export const uriOf = (file: string): string => (isAddress(file) ? addressOfName(file) : `file://${file}`);

export interface Setup {
  readonly disk?: Map<string, string>;
  readonly capabilities?: ClientCapabilities;
  readonly initializationOptions?: unknown;
  /** The tag of the language that it speaks. */
  readonly locale?: string;
  /** Answers `workspace/configuration`: all that stands under `sawbuck`. */
  readonly setting?: () => unknown;
  readonly folder?: string;
  /** Where better layouts are looked for; unsaid, nowhere. */
  readonly layoutHost?: LayoutHost;
  /** Reads files for the server, by their addresses. */
  readonly read?: (uri: string) => Promise<FileRead>;
  /** Lists plan files for the server, below a folder given by its address. */
  readonly list?: (uri: string, token: CancellationToken) => Promise<unknown>;
  /** What a plan was in the last commit; unsaid, there is no git. */
  readonly lastCommitted?: LastCommitted;
  /** Refuses every `client/registerCapability`. */
  readonly refuses?: boolean;
}

/** It ends with the test that it was started in, if not before. */
export async function editor(setup: Setup = {}): Promise<Editor> {
  const [up, down] = [new PassThrough(), new PassThrough()];
  const server = createConnection(new StreamMessageReader(up), new StreamMessageWriter(down));
  serveOn(server, {
    toFile: (uri) => (uri.startsWith("file://") ? uri.slice("file://".length) : nameOfAddress(uri)),
    toUri: uriOf,
    read: memoryReader(setup.disk ?? new Map()),
    plansBelow: async (folder) => {
      const below = folder.replace(/\/?$/, "/");
      return [...(setup.disk ?? new Map()).keys()].filter((file) => file.startsWith(below));
    },
    home: "/home",
    pageBeside: (code) => `file:///pages/${code}.md`,
    ...(setup.lastCommitted && { lastCommitted: setup.lastCommitted }),
    ...(setup.layoutHost && { layoutHost: () => setup.layoutHost! }),
  });
  server.listen();

  const connection = createProtocolConnection(new StreamMessageReader(down), new StreamMessageWriter(up));
  const pushes: Editor["pushes"] = [];
  const worked: Editor["worked"] = [];
  const layouts: Editor["layouts"] = [];
  const logged: string[] = [];
  let refreshes = 0;
  connection.onNotification("textDocument/publishDiagnostics", (what: Editor["pushes"][number]) => {
    pushes.push(what);
  });
  connection.onNotification("sawbuck/worked", (what: Editor["worked"][number]) => {
    worked.push(what);
  });
  connection.onNotification("sawbuck/layouts", (what: Editor["layouts"][number]) => {
    layouts.push(what);
  });
  connection.onNotification("window/logMessage", ({ message }: { message: string }) => {
    logged.push(message);
  });
  connection.onRequest("workspace/diagnostic/refresh", () => {
    refreshes++;
    return null;
  });
  connection.onRequest("sawbuck/readFile", async ({ uri }: { uri: string }) => setup.read?.(uri));
  connection.onRequest("sawbuck/plansBelow", async ({ uri }: { uri: string }, token) =>
    setup.list?.(uri, token),
  );
  const registered: { method: string; registerOptions?: unknown }[] = [];
  connection.onRequest("client/registerCapability", (asked: { registrations: typeof registered }) => {
    if (setup.refuses) throw new Error("nothing is registered here");
    for (const { method, registerOptions } of asked.registrations)
      registered.push({ method, registerOptions });
    return null;
  });
  connection.onRequest("workspace/configuration", ({ items }: { items: unknown[] }) =>
    items.map(() => setup.setting?.() ?? null),
  );
  connection.listen();
  const answer = await connection.sendRequest<Editor["answer"]>("initialize", {
    processId: null,
    rootUri: null,
    capabilities: setup.capabilities ?? {},
    ...(setup.locale && { locale: setup.locale }),
    initializationOptions: setup.initializationOptions ?? {
      ...(setup.read && { readsFiles: true }),
      ...(setup.list && { listsPlans: true }),
    },
    workspaceFolders: setup.folder ? [{ uri: uriOf(setup.folder), name: "yard" }] : null,
  });
  await connection.sendNotification("initialized", {});

  let ended = false;
  const end = (): void => {
    if (ended) return;
    ended = true;
    void connection.sendRequest("shutdown").finally(() => {
      connection.dispose();
      server.dispose();
    });
  };
  onTestFinished(end);

  const texts = new Map<string, TextDocument>();
  const textOf = (file: string): string => texts.get(file)?.getText() ?? "";
  const change = async (file: string, edit: { range?: { start: Position; end: Position }; text: string }) => {
    const document = texts.get(file)!;
    TextDocument.update(document, [edit as { text: string }], document.version + 1);
    await connection.sendNotification("textDocument/didChange", {
      textDocument: { uri: uriOf(file), version: document.version },
      contentChanges: [edit],
    });
  };
  return {
    connection,
    answer,
    open: async (file, text) => {
      texts.set(file, TextDocument.create(uriOf(file), "sawbuck", 1, text));
      const textDocument = { uri: uriOf(file), languageId: "sawbuck", version: 1, text };
      await connection.sendNotification("textDocument/didOpen", { textDocument });
    },
    edit: (file, start, end, text) => {
      const document = texts.get(file)!;
      return change(file, {
        range: { start: document.positionAt(start), end: document.positionAt(end) },
        text,
      });
    },
    replace: (file, text) => change(file, { text }),
    close: async (file) => {
      texts.delete(file);
      await connection.sendNotification("textDocument/didClose", { textDocument: { uri: uriOf(file) } });
    },
    changed: (file) =>
      connection.sendNotification("workspace/didChangeWatchedFiles", {
        changes: [{ uri: uriOf(file), type: 2 }],
      }),
    textOf,
    positionOf: (file, offset) => texts.get(file)!.positionAt(offset),
    pushed: (file) => pushes.findLast((p) => p.uri === uriOf(file))?.diagnostics,
    pushes,
    pull: async (file) => {
      const report = await connection.sendRequest<{ items: Diagnostic[] }>("textDocument/diagnostic", {
        textDocument: { uri: uriOf(file) },
      });
      return report.items;
    },
    worked,
    layouts,
    refreshes: () => refreshes,
    registered,
    logged,
    until: async (ready) => {
      const late = performance.now() + 20_000;
      while (!ready()) {
        if (performance.now() > late) throw new Error("waited twenty seconds in vain");
        await new Promise((resolve) => setTimeout(resolve, 2));
      }
    },
    end,
  };
}

/** Files in memory, seen from the folder of the file that names them. */
function memoryReader(disk: ReadonlyMap<string, string>): Reader {
  return (path, from) => {
    const file = posix.resolve(posix.dirname(from), path);
    const text = disk.get(file);
    return text === undefined ? { file, refused: "there is no such file" } : { file, text };
  };
}

export const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
