/** Plan files on disk that change under an open plan: its shop file, a plan it brings. */
import {
  type Connection,
  DidChangeWatchedFilesNotification,
  type InitializeParams,
} from "vscode-languageserver";
import type { Register } from "./registering";

const PLANS = "**/*.sawbuck";

/** Asks the editor to watch them where it can be asked; `changed` is told of each, and of whatever else the editor watches. */
export function watchFiles(
  connection: Connection,
  { capabilities: { workspace } }: InitializeParams,
  register: Register,
  changed: (uri: string) => void,
): void {
  connection.onDidChangeWatchedFiles(({ changes }) => {
    for (const { uri } of changes) changed(uri);
  });
  if (workspace?.didChangeWatchedFiles?.dynamicRegistration)
    register(`the files ${PLANS}`, () =>
      connection.client.register(DidChangeWatchedFilesNotification.type, {
        watchers: [{ globPattern: PLANS }],
      }),
    );
}
