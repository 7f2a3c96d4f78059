/** The setting `sawbuck.shopFile`: the reader's own shop file, and where its path is seen from. */
import { isFullPath } from "./addresses";
import { folderAround } from "./folders";
import type { Files, Plans, Shop } from "./plans";
import type { Settings } from "./settings";

type SeenFrom = Pick<Files, "home" | "toFile">;

export interface ShopSetting {
  /** The shop file for a plan, as the settings of now say. */
  readonly of: (uri: string) => Shop | undefined;
  /** `again` is told which plans have another than before. */
  readonly watch: (plans: Plans, again: (uris: readonly string[]) => void) => void;
}

/** `folders` are those that are open now. */
export function shopSetting(
  settings: Settings,
  folders: () => readonly string[],
  files: SeenFrom,
): ShopSetting {
  const of: ShopSetting["of"] = (uri) => {
    const typed = settings.of(uri, "shopFile");
    return typeof typed === "string" ? shopOf(typed, uri, folders(), files) : undefined;
  };
  return {
    of,
    watch: (plans, again) =>
      settings.onChange((uris) => again(uris.filter((uri) => plans.setShop(uri, of(uri))))),
  };
}

/** A full path, a path from `~/`, both of the disk where there is one; or a path from the open folder that the plan is in. */
function shopOf(setting: string, uri: string, folders: readonly string[], files: SeenFrom): Shop | undefined {
  const path = setting.trim();
  if (path === "") return undefined;
  const { home } = files;
  if (home !== undefined) {
    if (path.startsWith("~/")) return { shop: `${home}/${path.slice(2)}`, shopFrom: home };
    if (isFullPath(path)) return { shop: path, shopFrom: home };
  }
  const folder = folderAround(uri, folders) ?? folders[0];
  if (folder === undefined) return { shop: path };
  return { shop: path, shopFrom: files.toFile(`${folder.replace(/\/$/, "")}/plan.sawbuck`) };
}
