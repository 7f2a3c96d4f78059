/** Talks to the bundled language server over standard input and output, as an editor does. */
import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";

export class Server {
  private readonly process: ChildProcess;
  private buffer = Buffer.alloc(0);
  private next = 1;
  private readonly waiting = new Map<number, (result: unknown) => void>();

  /** `told` hears what the server tells unasked. */
  constructor(private readonly told: (method: string, params: unknown) => void = () => {}) {
    this.process = spawn(
      process.execPath,
      ["--max-semi-space-size=8", "--heap-growing-percent=100", "dist/server.js", "--stdio"],
      {
        stdio: ["pipe", "pipe", "inherit"],
      },
    );
    this.process.stdout!.on("data", (chunk: Buffer) => this.read(chunk));
  }

  async open(uri: string, text: string): Promise<void> {
    const textDocument = { diagnostic: { dynamicRegistration: false }, hover: {}, completion: {} };
    await this.request("initialize", { processId: null, rootUri: null, capabilities: { textDocument } });
    this.notify("initialized", {});
    this.notify("textDocument/didOpen", { textDocument: { uri, languageId: "sawbuck", version: 1, text } });
  }

  request(method: string, params: unknown): Promise<unknown> {
    const id = this.next++;
    return new Promise((resolve) => {
      this.waiting.set(id, resolve);
      this.send({ jsonrpc: "2.0", id, method, params });
    });
  }

  notify(method: string, params: unknown): void {
    this.send({ jsonrpc: "2.0", method, params });
  }

  /** Resident memory in megabytes (Linux only; not a number elsewhere). */
  memory(): number {
    try {
      const status = readFileSync(`/proc/${this.process.pid}/status`, "utf8");
      return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024;
    } catch {
      return Number.NaN;
    }
  }

  close(): void {
    this.process.kill();
  }

  private send(message: unknown): void {
    const body = JSON.stringify(message);
    this.process.stdin!.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  }

  private read(chunk: Buffer): void {
    this.buffer = Buffer.concat([this.buffer, chunk]);
    for (;;) {
      const head = this.buffer.indexOf("\r\n\r\n");
      if (head < 0) return;
      const length = Number(/Content-Length: (\d+)/i.exec(this.buffer.toString("utf8", 0, head))?.[1]);
      if (this.buffer.length < head + 4 + length) return;
      const message = JSON.parse(this.buffer.toString("utf8", head + 4, head + 4 + length));
      this.buffer = this.buffer.subarray(head + 4 + length);
      if (message.method && message.id !== undefined)
        this.send({ jsonrpc: "2.0", id: message.id, result: null });
      else if (message.method) this.told(message.method, message.params);
      else if (message.id !== undefined) this.waiting.get(message.id)?.(message.result ?? message.error);
    }
  }
}
