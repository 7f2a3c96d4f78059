/** The language server in a browser's worker: files through the editor, and a connection by the worker's messages. */
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from "vscode-languageserver/browser";
import { addressOfName, nameOfAddress } from "./addresses";
import { inlineHost } from "./layouts/host";
import { webWorkerOf } from "./layouts/web-worker";
import { workerHost } from "./layouts/worker-host";
import { type Surroundings, serveOn } from "./server";
import { textIn } from "./untyped";

/** Starts the server. It ends when its worker is ended. */
export function serve(): void {
  const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
  serveOn(connection, inBrowser);
  connection.listen();
}

const inBrowser: Surroundings = {
  toFile: nameOfAddress,
  toUri: addressOfName,
  read: (path) => ({ file: path, refused: "there is no disk here: put the file beside the plan" }),
  home: undefined,
  // The text of the program, since a worker may load one from its own address only.
  layoutHost: (log, options) => {
    const program = textIn(options, "layouts");
    return program === ""
      ? inlineHost()
      : workerHost(webWorkerOf(addressOfProgram(program)), { otherwise: inlineHost(), log });
  },
  pageBeside: () => undefined,
};

const addressOfProgram = (text: string): string =>
  URL.createObjectURL(new Blob([text], { type: "text/javascript" }));
