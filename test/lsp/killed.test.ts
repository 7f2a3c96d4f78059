/**
 * The server's program is killed while a plan is being written, and started again as editors do it: open texts are told
 * anew as they are by then. Needs dist/server.js, which `npm test` builds first.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, onTestFinished, test } from "vitest";
import {
  createProtocolConnection,
  type Diagnostic,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import { TextDocument } from "vscode-languageserver-textdocument";

const ROOT = join(__dirname, "../..");
const SAMPLES = join(ROOT, "samples");
const sample = (name: string): TextDocument => {
  const file = join(SAMPLES, name);
  return TextDocument.create(pathToFileURL(file).href, "sawbuck", 1, readFileSync(file, "utf8"));
};

/** Longer than problems of a line being typed are held, and than it takes until layouts are looked for. */
const QUIET_MS = 500;

interface Server {
  readonly process: ChildProcess;
  readonly connection: ProtocolConnection;
  /** What is shown once a version is worked out and laid out, and nothing more is told. */
  readonly problemsOf: (uri: string, version: number) => Promise<readonly Diagnostic[]>;
}
type How = "pushed" | "asked for";

/** A program of its own, to which these texts are told. */
async function started(how: How, texts: readonly TextDocument[]): Promise<Server> {
  const process = spawn(globalThis.process.execPath, [join(ROOT, "dist/server.js"), "--stdio"], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  onTestFinished(() => {
    process.kill("SIGKILL");
  });
  process.stdin.on("error", () => {}); // what is still being written when it is killed
  const connection = createProtocolConnection(
    new StreamMessageReader(process.stdout),
    new StreamMessageWriter(process.stdin),
  );
  const pushed = new Map<string, readonly Diagnostic[]>();
  const laidOut = new Map<string, number>();
  let lastNews = 0;
  connection.onNotification("textDocument/publishDiagnostics", ({ uri, diagnostics }) => {
    pushed.set(uri, diagnostics);
    lastNews = performance.now();
  });
  connection.onNotification("sawbuck/layouts", ({ uri, version, state }) => {
    laidOut.set(uri, state === "looking" ? -1 : version);
    lastNews = performance.now();
  });
  connection.listen();
  await connection.sendRequest("initialize", {
    processId: null,
    rootUri: null,
    capabilities: how === "asked for" ? { textDocument: { diagnostic: {} } } : {},
    workspaceFolders: [{ uri: pathToFileURL(SAMPLES).href, name: "samples" }],
  });
  await connection.sendNotification("initialized", {});
  for (const text of texts)
    await connection.sendNotification("textDocument/didOpen", {
      textDocument: { uri: text.uri, languageId: "sawbuck", version: text.version, text: text.getText() },
    });
  return {
    process,
    connection,
    problemsOf: async (uri, version) => {
      const textDocument = { uri };
      await connection.sendRequest("textDocument/documentSymbol", { textDocument });
      const from = performance.now();
      const isQuiet = () => performance.now() - Math.max(from, lastNews) > QUIET_MS;
      while (laidOut.get(uri) !== version || !isQuiet())
        await new Promise((resolve) => setTimeout(resolve, 20));
      if (how === "pushed") return pushed.get(uri) ?? [];
      const { items } = await connection.sendRequest<{ items: Diagnostic[] }>("textDocument/diagnostic", {
        textDocument,
      });
      return items;
    },
  };
}

/** One key, or one removed letter, at a place of a text. */
const change = (text: TextDocument, at: number, removed: number, typed: string) => {
  const edit = {
    range: { start: text.positionAt(at), end: text.positionAt(at + removed) },
    text: typed,
  };
  TextDocument.update(text, [edit], text.version + 1);
  return { textDocument: { uri: text.uri, version: text.version }, contentChanges: [edit] };
};

/** Killed as a crash would end it, with work under way: a change that it has just been told, a request, half a message. */
async function kill({ process, connection }: Server, uri: string): Promise<void> {
  const unanswered = connection.sendRequest("textDocument/hover", {
    textDocument: { uri },
    position: { line: 9, character: 6 },
  });
  unanswered.catch(() => {});
  process.stdin?.write('Content-Length: 4000\r\n\r\n{"jsonrpc":"2.0","method":"textDocument/didCh');
  const ended = once(process, "exit");
  process.kill("SIGKILL");
  expect(await ended).toEqual([null, "SIGKILL"]);
  connection.dispose();
}

/** What is typed over what, key by key, in the plan and in its shop file, which is never saved; and what is wrong then. */
const EDITS = [
  { of: "plan", find: "fasten floor-board", type: "fasten flor-board", wrong: "unknown-name" },
  { of: "shop", find: "stock heart-2x4", type: "stock heart-2x5", wrong: "unknown-name" },
  { of: "plan", find: "fasten flor-board", type: "fasten floor-board", wrong: "unknown-name" },
  { of: "plan", find: 'rim-height = 30"', type: 'rim-height = 3 feet" (', wrong: "not-understood" },
] as const;

test.each(["pushed", "asked for"] as const)(
  "problems are those of a fresh run after each time it was killed in the middle of a word (%s)",
  async (how) => {
    const texts = { plan: sample("salad-trough.sawbuck"), shop: sample("hillside-shop.sawbuck") };
    const both = [texts.plan, texts.shop];
    const { uri } = texts.plan;
    let server = await started(how, both);
    const seen = new Set<string>();
    const asFresh = async () => {
      const [shown, fresh] = await Promise.all([
        server.problemsOf(uri, texts.plan.version),
        freshProblems(how, both),
      ]);
      expect(shown).toEqual(fresh);
      return shown;
    };
    for (const { of, find, type, wrong } of EDITS) {
      const text = texts[of];
      const at = text.getText().indexOf(find);
      expect(at).toBeGreaterThanOrEqual(0);
      const keys: (readonly [at: number, removed: number, typed: string])[] = [
        ...Array.from(find, () => [at, 1, ""] as const),
        ...Array.from(type, (key, i) => [at + i, 0, key] as const),
      ];
      const middle = find.length + Math.floor(type.length / 2);
      for (const [n, key] of keys.entries()) {
        // What is still on its way when it is killed gets there no more.
        server.connection.sendNotification("textDocument/didChange", change(text, ...key)).catch(() => {});
        if (n !== middle) continue;
        await kill(server, uri);
        server = await started(how, both);
        await asFresh();
      }
      const problems = await asFresh();
      expect(problems.map(({ code }) => code)).toContain(wrong);
      seen.add(JSON.stringify(problems));
    }
    expect(seen.size).toBe(EDITS.length);
  },
  120_000,
);

/** Those of a program that was told these texts as they are, and nothing before. */
async function freshProblems(how: How, texts: readonly TextDocument[]): Promise<readonly Diagnostic[]> {
  const server = await started(how, texts);
  const problems = await server.problemsOf(texts[0]!.uri, texts[0]!.version);
  await server.connection.sendRequest("shutdown");
  const ended = once(server.process, "exit");
  await server.connection.sendNotification("exit");
  expect(await ended).toEqual([0, null]);
  server.connection.dispose();
  return problems;
}
