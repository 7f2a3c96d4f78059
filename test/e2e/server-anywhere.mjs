// Asks a language server, wherever it runs, for the problems of many plans: over stdio in Node, by messages in a page.
import { spawn } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { StreamMessageReader, StreamMessageWriter } from "vscode-languageserver/node";

const SAMPLES = fileURLToPath(new URL("../../samples", import.meta.url));

/** All files of the samples, by their paths from there, and those of them that plan something or are a mistake. */
export function samples() {
  const names = readdirSync(SAMPLES, { recursive: true }).filter((name) => name.endsWith(".sawbuck"));
  const files = Object.fromEntries(names.map((name) => [name, readFileSync(join(SAMPLES, name), "utf8")]));
  const plans = names.sort().filter((name) => name.includes("/") || /^plan /m.test(files[name]));
  return { files, plans };
}

/** The problems of each plan as dist/server.js finds them in Node, with its files from the disk. */
export async function inNode(program, { plans, files }) {
  const server = spawn(process.execPath, [program, "--stdio"], { stdio: ["pipe", "pipe", "inherit"] });
  const writer = new StreamMessageWriter(server.stdin);
  try {
    return await problemsOf({
      plans,
      files,
      root: `${pathToFileURL(SAMPLES).href}/`,
      options: {},
      post: (message) => void writer.write(message),
      listen: (hear) => void new StreamMessageReader(server.stdout).listen(hear),
    });
  } finally {
    server.kill();
  }
}

/** The same from a worker of a page, whose address is `program`, with files that the page reads for it. */
export function inWorker(page, program, { plans, files }, layouts) {
  return page.evaluate(
    async ({ source, program, plans, files, layouts }) => {
      const worker = new Worker(program);
      const problemsOf = new Function(`return ${source}`)();
      const broken = new Promise((_, reject) => {
        worker.onerror = ({ message }) => reject(new Error(message));
      });
      const found = problemsOf({
        plans,
        files,
        root: "memfs:/yard/",
        options: { readsFiles: true, layouts },
        post: (message) => worker.postMessage(message),
        listen: (hear) => {
          worker.onmessage = ({ data }) => hear(data);
        },
      });
      return Promise.race([found, broken]).finally(() => worker.terminate());
    },
    { source: problemsOf.toString(), program, plans, files, layouts },
  );
}

/**
 * Opens all plans, and gives their problems once their layouts are as good as they will be, and how many files were read
 * by whoever asks. Is written out into the page: it uses nothing from around it.
 */
function problemsOf({ plans, files, root, options, post, listen }) {
  return new Promise((resolve) => {
    const shown = {};
    const settled = new Set();
    let read = 0;
    const nameOf = (uri) => decodeURIComponent(uri.slice(root.length));
    const send = (method, params, id) => post({ jsonrpc: "2.0", method, params, ...(id && { id }) });
    const open = (name) => {
      const textDocument = { uri: root + name, languageId: "sawbuck", version: 1, text: files[name] };
      send("textDocument/didOpen", { textDocument });
    };
    listen(({ id, method, params }) => {
      if (method === undefined && id === 1) {
        send("initialized", {});
        for (const name of plans) open(name);
      }
      if (method === "sawbuck/readFile") {
        read++;
        const text = files[nameOf(params.uri)];
        const result = text === undefined ? { refused: "there is no such file" } : { text };
        post({ jsonrpc: "2.0", id, result });
      }
      if (method === "textDocument/publishDiagnostics")
        shown[nameOf(params.uri)] = params.diagnostics.map(
          ({ code, severity, message, range }) => `${code} ${severity} ${message} ${JSON.stringify(range)}`,
        );
      if (method === "sawbuck/layouts") {
        if (params.state === "looking") settled.delete(nameOf(params.uri));
        else settled.add(nameOf(params.uri));
      }
      if (plans.every((name) => settled.has(name) && shown[name])) resolve({ shown, read });
    });
    send(
      "initialize",
      { processId: null, rootUri: null, capabilities: {}, initializationOptions: options },
      1,
    );
  });
}
