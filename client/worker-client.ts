/** A client of a language server in a browser's worker, which breaks, is started again and is ended as a program of its own would be. */
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
  type LanguageClientOptions,
  type MessageTransports,
} from "vscode-languageclient/browser";

/** `start` starts a worker, and again after each that broke. */
export function workerClient(start: () => Promise<Worker>, options: LanguageClientOptions): LanguageClient {
  return new WorkerClient(start, options);
}

class WorkerClient extends LanguageClient {
  private worker: Worker | undefined;

  constructor(start: () => Promise<Worker>, options: LanguageClientOptions) {
    super(
      "sawbuck",
      "Sawbuck Language Server",
      async () => {
        this.worker = await start();
        return transportsOf(this.worker, (why) => options.outputChannel?.appendLine(why));
      },
      options,
    );
  }

  /** A worker that hangs hears no farewell. */
  override async dispose(timeout?: number): Promise<void> {
    try {
      await super.dispose(timeout);
    } finally {
      this.worker?.terminate();
    }
  }
}

/** What ends a program ends the worker too: an error that nobody caught, which is told, and the end of its connection. */
function transportsOf(worker: Worker, log: (why: string) => void): MessageTransports {
  const over = (event: ErrorEvent): void => {
    event.stopImmediatePropagation(); // it is an end, and not a message that went wrong
    log(`The language server broke down: ${event.message}`);
    worker.terminate();
    reader.end();
  };
  worker.addEventListener("error", over);
  const reader = new Reader(worker);
  return { reader, writer: new Writer(worker) };
}

class Reader extends BrowserMessageReader {
  end(): void {
    this.fireClose();
  }
}

class Writer extends BrowserMessageWriter {
  constructor(private readonly worker: Worker) {
    super(worker);
  }

  override end(): void {
    this.worker.terminate();
  }
}
