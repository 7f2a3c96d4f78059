/** The setting `sawbuck.shopFile`: the reader's own shop file, as given at the start and as the editor says it later. */
import {
  type Connection,
  DidChangeConfigurationNotification,
  type InitializeParams,
} from "vscode-languageserver";
import { isFullPath } from "./addresses";
import type { Documents } from "./documents";
import type { Files, Plans, Shop } from "./plans";
import { textIn } from "./untyped";

const SETTING = "sawbuck.shopFile";

export interface ShopSettings {
  /** As given at the start, for a plan that opens. */
  readonly initial: (uri: string) => Shop | undefined;
  /** Asks the editor for the setting of each plan, where it can be asked; `again` is told which plans have another. */
  readonly watch: (open: Documents, plans: Plans, again: (uris: readonly string[]) => void) => void;
}

export function shopSettings(connection: Connection, params: InitializeParams, files: Files): ShopSettings {
  const { workspace } = params.capabilities;
  const folders = (params.workspaceFolders ?? []).map((f) => f.uri);
  let typed = textIn(params.initializationOptions, "shopFile");
  const shop = (uri: string, setting = typed) => shopOf(setting, uri, folders, files);

  return {
    initial: shop,
    watch: (open, plans, again) => {
      const ask = async (uri: string): Promise<void> => {
        const found: unknown = await connection.workspace.getConfiguration({
          scopeUri: uri,
          section: SETTING,
        });
        if (plans.setShop(uri, shop(uri, typeof found === "string" ? found : typed))) again([uri]);
      };
      const asks = workspace?.configuration ?? false;
      const asked = (uri: string): void => {
        ask(uri).catch((error: unknown) =>
          connection.console.warn(`The editor did not tell the setting ${SETTING}: ${String(error)}`),
        );
      };
      if (asks) open.onOpen(({ uri }) => asked(uri));
      connection.onDidChangeConfiguration(({ settings }) => {
        if (asks) for (const { uri } of open.all()) asked(uri);
        else {
          typed = textIn(inside(settings, "sawbuck"), "shopFile");
          again(open.all().flatMap(({ uri }) => (plans.setShop(uri, shop(uri)) ? [uri] : [])));
        }
      });
      if (asks && workspace?.didChangeConfiguration?.dynamicRegistration)
        connection.onInitialized(() => {
          // An editor may refuse what it said it can do; it then tells of a changed setting or it does not.
          connection.client
            .register(DidChangeConfigurationNotification.type, { section: SETTING })
            .catch((error: unknown) =>
              connection.console.warn(`The editor will not tell of changes of ${SETTING}: ${String(error)}`),
            );
        });
    },
  };
}

const inside = (value: unknown, name: string): unknown =>
  typeof value === "object" && value !== null ? Reflect.get(value, name) : undefined;

/** A full path, a path from `~/`, both of the disk where there is one; or a path from the open folder that the plan is in. */
function shopOf(setting: string, uri: string, folders: readonly string[], files: Files): Shop | undefined {
  const path = setting.trim();
  if (path === "") return undefined;
  const { home } = files;
  if (home !== undefined) {
    if (path.startsWith("~/")) return { shop: `${home}/${path.slice(2)}`, shopFrom: home };
    if (isFullPath(path)) return { shop: path, shopFrom: home };
  }
  const folder = folders.find((f) => uri.startsWith(`${f.replace(/\/$/, "")}/`)) ?? folders[0];
  if (folder === undefined) return { shop: path };
  return { shop: path, shopFrom: files.toFile(`${folder.replace(/\/$/, "")}/plan.sawbuck`) };
}
