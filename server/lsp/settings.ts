/**
 * The reader's settings, all that stand under `sawbuck`: as given at the start, and as the editor says them later, for each
 * open text by itself. One place asks for them, and tells whoever goes by one of them.
 */
import {
  type Connection,
  DidChangeConfigurationNotification,
  type InitializeParams,
} from "vscode-languageserver";
import type { Documents } from "./documents";
import type { Register } from "./registering";

/** The name under which an editor keeps them. */
export const SECTION = "sawbuck";

export interface Settings {
  /** What a setting says for a text, `hints.lengths` for one; undefined where it is not set. */
  readonly of: (uri: string, name: string) => unknown;
  /** The same, where it is to be yes or no. */
  readonly yes: (uri: string, name: string, unsaid: boolean) => boolean;
  /** `tell` is told of the texts for which some setting is another than before. */
  readonly onChange: (tell: (uris: readonly string[]) => void) => void;
}

export function settingsOf(
  connection: Connection,
  params: InitializeParams,
  open: Documents,
  register: Register,
): Settings {
  const { workspace } = params.capabilities;
  let given: unknown = params.initializationOptions;
  const told = new Map<string, unknown>();
  const listeners: ((uris: readonly string[]) => void)[] = [];
  const changed = (uris: readonly string[]): void => {
    for (const tell of listeners) tell(uris);
  };
  const of: Settings["of"] = (uri, name) => named(told.get(uri), name) ?? named(given, name);

  const ask = async (uri: string): Promise<void> => {
    const found: unknown = await connection.workspace.getConfiguration({ scopeUri: uri, section: SECTION });
    if (!open.get(uri)) return;
    const before = JSON.stringify(told.get(uri));
    told.set(uri, found);
    if (JSON.stringify(found) !== before) changed([uri]);
  };
  const asks = workspace?.configuration ?? false;
  const asked = (uri: string): void => {
    ask(uri).catch((error: unknown) =>
      connection.console.warn(`The editor did not tell the settings of ${SECTION}: ${String(error)}`),
    );
  };
  if (asks) open.onOpen(({ uri }) => asked(uri));
  open.onClose(({ uri }) => told.delete(uri));
  connection.onDidChangeConfiguration(({ settings }) => {
    const uris = open.all().map(({ uri }) => uri);
    if (asks) for (const uri of uris) asked(uri);
    else {
      // One who says nothing of these settings changes none of them.
      given = named(settings, SECTION) ?? given;
      changed(uris);
    }
  });
  if (asks && workspace?.didChangeConfiguration?.dynamicRegistration)
    register(`the settings of ${SECTION}`, () =>
      connection.client.register(DidChangeConfigurationNotification.type, { section: SECTION }),
    );
  return {
    of,
    yes: (uri, name, unsaid) => {
      const found = of(uri, name);
      return typeof found === "boolean" ? found : unsaid;
    },
    onChange: (tell) => listeners.push(tell),
  };
}

/** What stands under `a.b` of an object: under that very name, or under `b` of what stands under `a`. */
function named(value: unknown, name: string): unknown {
  if (typeof value !== "object" || value === null) return undefined;
  if (Object.hasOwn(value, name)) return Reflect.get(value, name) ?? undefined;
  const dot = name.indexOf(".");
  if (dot < 0 || !Object.hasOwn(value, name.slice(0, dot))) return undefined;
  return named(Reflect.get(value, name.slice(0, dot)), name.slice(dot + 1));
}
