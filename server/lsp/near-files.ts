/** The plan files that a plan may name: those of the open folder that it lies in (the outermost), by their paths from it. */
import { type CancellationToken, CancellationTokenSource } from "vscode-languageserver";
import type { NearFile, PathTyped } from "../features/completion-files";
import { isFullPath } from "./addresses";
import { namedPaths } from "./everywhere";
import { outermostAround } from "./folders";
import { pathBetween } from "./paths";
import type { PlansBelow } from "./plan-lists";
import type { Plans } from "./plans";

/** For the line of an open plan where a path is typed. No file is read for it; where listing takes long, those found by then. */
export type NearFiles = (
  uri: string,
  typing: PathTyped,
  token: CancellationToken,
) => Promise<readonly NearFile[]>;

/** How long files may be looked for, in ms: someone is typing. */
const PATIENCE_MS = 1000;

export function nearFiles(folders: () => readonly string[], plans: Plans, plansBelow: PlansBelow): NearFiles {
  const listed = async (folder: string, token: CancellationToken): Promise<readonly string[]> => {
    const enough = new CancellationTokenSource();
    const given = token.onCancellationRequested(() => enough.cancel());
    const late = setTimeout(() => enough.cancel(), PATIENCE_MS);
    try {
      return await plansBelow(folder, enough.token);
    } finally {
      clearTimeout(late);
      given.dispose();
    }
  };

  /** The files that other open plans have as their shop, each with the file of one of these plans. */
  const shopsBut = (uri: string): Map<string, string> =>
    new Map(
      plans
        .all()
        .filter((other) => other !== uri)
        .flatMap((other) => {
          const loaded = plans.evaluated(other)?.worked.loaded.files ?? [];
          return loaded.filter((f) => f.role === "shop").map((f) => [f.file, plans.fileOf(other)] as const);
        }),
    );

  return async (uri, { typed, range }, token) => {
    const folder = outermostAround(uri, folders());
    if (folder === undefined) return [];
    const below = await listed(folder, token);
    const own = plans.fileOf(uri);
    const text = plans.document(uri)?.getText() ?? "";
    const others = namedPaths(text).filter(({ start }) => start < range.start || start > range.end);
    const named = new Set(others.map(({ path }) => path.replace(/^\.\//, "")));
    const shops = shopsBut(uri);
    return below
      .filter((file) => file !== own && !named.has(pathBetween(own, file, "")))
      .map((file) => {
        const user = shops.get(file);
        return {
          path: pathBetween(own, file, isFullPath(typed) ? "" : typed),
          ...(user !== undefined && { shopOf: pathBetween(own, user, "") }),
        };
      })
      .filter(({ path }) => !isFullPath(path));
  };
}
