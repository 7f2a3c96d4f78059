/** Which plan files lie below a folder: on a disk by a walk of its own, elsewhere by the editor, where it lists them. */
import type { CancellationToken, Connection, InitializeParams } from "vscode-languageserver";
import { isAddress, pathFrom, pathFromRoot } from "./addresses";
import type { Files } from "./plans";
import { saysYes } from "./untyped";

/** The names of all plan files below a folder; those found so far once nobody waits for it any more. */
export type PlansBelow = (folder: string, token: CancellationToken) => Promise<readonly string[]>;

/** The most plan files that are looked at in one folder. */
export const MOST_PLANS = 5_000;

/** Takes folders by their addresses; `onDisk` takes those of a disk by their paths. */
export function planLists(
  connection: Connection,
  { initializationOptions }: InitializeParams,
  { toFile }: Pick<Files, "toFile">,
  onDisk: PlansBelow | undefined,
): PlansBelow {
  const byEditor: PlansBelow = async (uri, token) => {
    if (!saysYes(initializationOptions, "listsPlans")) return [];
    try {
      const answer: unknown = await connection.sendRequest("sawbuck/plansBelow", { uri }, token);
      const below = `${toFile(uri).replace(/\/$/, "")}/`;
      const files = addressesIn(answer).map((one) => straight(toFile(one)));
      const plans = files.filter((file) => file.startsWith(below) && file.endsWith(".sawbuck"));
      return [...new Set(plans)].slice(0, MOST_PLANS).sort();
    } catch (error) {
      if (!token.isCancellationRequested)
        connection.console.warn(`The editor did not list the plans below ${uri}: ${String(error)}`);
      return [];
    }
  };
  return async (uri, token) => {
    const folder = toFile(uri);
    return isAddress(folder) ? byEditor(uri, token) : ((await onDisk?.(folder, token)) ?? []);
  };
}

/** One name for each file, however it was written. */
const straight = (file: string): string => pathFrom(pathFromRoot(file), file);

/** What an editor answered, whatever it is. */
function addressesIn(answer: unknown): string[] {
  const { uris } = (answer ?? {}) as Partial<Record<string, unknown>>;
  return Array.isArray(uris) ? uris.filter((uri) => typeof uri === "string") : [];
}
