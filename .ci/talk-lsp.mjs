// Talks to a language server over standard input and output, as an editor does that opens one plan and closes again.
import { spawn } from "node:child_process";

/**
 * Starts `[program, ...words]` in `cwd` and has it serve one open plan: `uri` with `text`. Once the plan's problems are there it is
 * asked `ask`, a method with its params, where that is given, and then told to end. Gives what went over the line, each
 * `{ from, message }`, and what it ended with.
 */
export function talkLsp([program, ...words], { cwd, env, uri, text, ask, patience = 60_000 }) {
  const server = spawn(program, words, { cwd, env, stdio: ["pipe", "pipe", "inherit"] });
  const said = [];
  let told = false;
  const say = (message) => {
    said.push({ from: "client", message: { jsonrpc: "2.0", ...message } });
    const body = JSON.stringify(said.at(-1).message);
    server.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  };
  const hear = (message) => {
    said.push({ from: "server", message });
    if (message.method === "textDocument/publishDiagnostics" && !told) {
      told = true;
      if (ask) say({ id: 2, ...ask });
      else say({ id: 3, method: "shutdown" });
    }
    // What else it asks for, this client does not have.
    else if (message.method !== undefined && message.id !== undefined) say({ id: message.id, result: null });
    else if (message.id === 1) {
      say({ method: "initialized", params: {} });
      const textDocument = { uri, languageId: "sawbuck", version: 1, text };
      say({ method: "textDocument/didOpen", params: { textDocument } });
    } else if (message.id === 2) say({ id: 3, method: "shutdown" });
    else if (message.id === 3) say({ method: "exit" });
  };
  const capabilities = { textDocument: { publishDiagnostics: { relatedInformation: true } } };
  say({ id: 1, method: "initialize", params: { processId: null, rootUri: null, capabilities } });

  let left = Buffer.alloc(0);
  server.stdout.on("data", (chunk) => {
    left = Buffer.concat([left, chunk]);
    for (let part = messageIn(left); part; part = messageIn(left)) {
      left = part.rest;
      hear(part.message);
    }
  });
  const late = setTimeout(() => server.kill(), patience);
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.once("close", (status) => {
      clearTimeout(late);
      resolve({ said, status });
    });
  });
}

/** The first message in it and what comes behind, or undefined while it is not yet whole. */
function messageIn(bytes) {
  const head = bytes.indexOf("\r\n\r\n");
  if (head === -1) return undefined;
  const length = Number(/content-length: *(\d+)/i.exec(bytes.toString("latin1", 0, head))?.[1]);
  const end = head + 4 + length;
  if (bytes.length < end) return undefined;
  return { message: JSON.parse(bytes.toString("utf8", head + 4, end)), rest: bytes.subarray(end) };
}
