/**
 * All plans there are: the open ones, and those in the folders that are open. Read when someone asks, file by file with
 * room between for other requests; nothing of it is kept.
 */
import type { CancellationToken } from "vscode-languageserver";
import type { Root } from "../features/references";
import { holderOf, pathFromPlan, scopeOf } from "../plan";
import type { EditorFiles } from "./editor-files";
import { gathering } from "./gathering";
import type { PlansBelow } from "./plan-lists";
import type { Plans } from "./plans";
import { turn } from "./turn";

export interface Everywhere {
  /** Runs while all plans there are can be read at once. */
  readonly over: <A>(token: CancellationToken, run: (all: AllPlans) => Promise<A>) => Promise<A>;
  /** Goes through a list with room between for other requests, until nobody waits for it any more. */
  readonly through: <A>(list: readonly A[], token: CancellationToken, run: (one: A) => void) => Promise<void>;
}

export interface AllPlans {
  /** The names of all plan files: the open ones first. */
  readonly files: readonly string[];
  /** Each plan whose files include this one, with all its files. Ends early when nobody waits for it any more. */
  readonly rootsWith: (file: string) => AsyncGenerator<Root, void, void>;
}

/** How long one slice of it may take, in milliseconds. */
const SLICE_MS = 10;

/** `inEditor` are files that are read by the editor, where it reads any. */
export function everywhere(
  folders: () => readonly string[],
  plans: Plans,
  plansBelow: PlansBelow,
  inEditor: EditorFiles | undefined,
): Everywhere {
  const gathered = gathering(plans, inEditor, (file) => filesNamedBy(file, file, plans));

  const over: Everywhere["over"] = async (token, run) => {
    const below = await Promise.all(folders().map((folder) => plansBelow(folder, token)));
    const files = [...new Set([...plans.all().map(plans.fileOf), ...below.flat()])];
    return gathered(files, token, () =>
      run({ files, rootsWith: (file) => rootsWith(holderOf(file), files, token) }),
    );
  };

  const through: Everywhere["through"] = async (list, token, run) => {
    let began = performance.now();
    for (const one of list) {
      if (token.isCancellationRequested) return;
      run(one);
      if (performance.now() - began < SLICE_MS) continue;
      await turn();
      began = performance.now();
    }
  };

  const rootOf = (file: string): Root | undefined => {
    const open = plans.evaluated(plans.uriOf(file));
    if (open) return open.worked;
    const loaded = plans.closed(file);
    return loaded && { loaded, scope: scopeOf(loaded) };
  };

  async function* rootsWith(
    file: string,
    files: readonly string[],
    token: CancellationToken,
  ): AsyncGenerator<Root, void, void> {
    const leads = leadsTo(file, plans);
    const leading: string[] = [];
    await through(files, token, (one) => {
      if (leads(one)) leading.push(one);
    });
    for (const one of leading) {
      if (token.isCancellationRequested) return;
      const root = rootOf(one);
      if (root?.loaded.files.some((f) => holderOf(f.file) === file)) yield root;
      await turn();
    }
  }

  return { over, through };
}

/** Whether a file names another, or names one that does: a look at its lines, without reading it as a plan. */
function leadsTo(file: string, plans: Plans): (from: string) => boolean {
  const names = new Map<string, readonly string[]>();
  const namedBy = (one: string, head: string): readonly string[] => {
    const key = `${plans.folderOf(head)}\n${one}`;
    const known = names.get(key) ?? filesNamedBy(one, head, plans);
    names.set(key, known);
    return known;
  };
  return (from) => {
    const seen = new Set([from]);
    // A set goes on with what is added to it on the way.
    for (const one of seen) for (const next of namedBy(one, from)) seen.add(next);
    return seen.has(file);
  };
}

/** The files that a file names, where a plan may read them, and the reader's own shop file. */
function filesNamedBy(file: string, head: string, plans: Plans): string[] {
  const found = plans.file(file);
  if ("refused" in found) return [];
  const shop = plans.shopOf(file);
  return [
    ...namedPaths(found.text)
      .map(({ path }) => plans.reader(path, file, head))
      .filter((named) => !("refused" in named && named.barred))
      .map((named) => named.file),
    ...(shop ? [plans.reader(shop.shop, shop.shopFrom ?? file, undefined).file] : []),
  ];
}

/** What stands after `shop` and `bring` in a text, and where; not what it encloses. */
export function namedPaths(text: string): { readonly path: string; readonly start: number }[] {
  const enclosed = [...text.matchAll(/^enclosed[^\S\r\n]+(\S.*)$/gm)];
  const own = enclosed[0] ? text.slice(0, enclosed[0].index) : text;
  const held = new Set(enclosed.map(({ 1: path }) => pathFromPlan(path!.trimEnd(), "")));
  return [...own.matchAll(/^((?:shop|bring)[ \t]+)(\S.*)$/gm)]
    .map(({ index, 1: before, 2: path }) => ({ path: path!.trimEnd(), start: index + before!.length }))
    .filter(({ path }) => enclosed.length === 0 || !held.has(pathFromPlan(path, "")));
}
