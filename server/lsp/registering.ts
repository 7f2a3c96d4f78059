/** What an editor is asked to tell of from now on, once it is ready to be asked. */
import type { Connection } from "vscode-languageserver";

/** `what` it would tell of, and how it is asked. */
export type Register = (what: string, ask: () => Promise<unknown>) => void;

/** An editor may refuse what it said it can do; it then tells of it or it does not. */
export function registering(connection: Connection): Register {
  const asked: (readonly [what: string, ask: () => Promise<unknown>])[] = [];
  connection.onInitialized(() => {
    for (const [what, ask] of asked)
      ask().catch((error: unknown) =>
        connection.console.warn(`The editor will not tell of changes of ${what}: ${String(error)}`),
      );
  });
  return (what, ask) => asked.push([what, ask]);
}
