/** The language server in Node: files from disk, and a connection over stdio, or to the editor that started it. */
import { existsSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";
import {
  type Connection,
  createConnection,
  IPCMessageReader,
  IPCMessageWriter,
} from "vscode-languageserver/node";
import { addressOfName, isAddress, nameOfAddress } from "./addresses";
import { lastCommitted } from "./committed";
import { onDisk as diskReader, plansBelow } from "./disk";
import { inlineHost } from "./layouts/host";
import { threadOf } from "./layouts/thread";
import { workerHost } from "./layouts/worker-host";
import { type Surroundings, serveOn } from "./server";

/** Starts the server. It ends when the editor says so or goes away. */
export function serve(): void {
  const connection = connect(process.argv);
  serveOn(connection, onDisk);
  connection.listen();
}

const onDisk: Surroundings = {
  toFile: (uri) => {
    try {
      return uri.startsWith("file:") ? fileURLToPath(uri) : nameOfAddress(uri);
    } catch {
      return uri; // `file://somewhere-else/…`, which is no path here
    }
  },
  toUri: (file) => (isAddress(file) ? addressOfName(file) : pathToFileURL(file).href),
  read: diskReader,
  plansBelow,
  home: homedir(),
  lastCommitted,
  layoutHost: (log) => workerHost(threadOf(join(__dirname, "layouts.js")), { otherwise: inlineHost(), log }),
  pageBeside: (code) => {
    if (!pages.has(code)) pages.set(code, pageOf(code));
    return pages.get(code);
  },
};

/** Looked for once: each list of problems asks for all of its own. */
const pages = new Map<string, string | undefined>();

function pageOf(code: string): string | undefined {
  const page = join(__dirname, "pages", `${code}.md`);
  return existsSync(page) ? pathToFileURL(page).href : undefined;
}

/** As the arguments say (`--stdio`, `--node-ipc` …); else to the program that forked this one, else over stdio. */
function connect(args: readonly string[]): Connection {
  if (args.some((arg) => /^--(stdio|node-ipc|socket|pipe)\b/.test(arg))) return createConnection();
  if (process.send) return createConnection(new IPCMessageReader(process), new IPCMessageWriter(process));
  return createConnection(process.stdin, process.stdout);
}
