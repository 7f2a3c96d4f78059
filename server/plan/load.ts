/** Reads a plan and the files it names, through an injected reader: this room does no input or output of its own. */
import { parse } from "../../grammar/parser";
import type { Entry, Text, Tree } from "../../grammar/tree";
import type { At } from "./value";

/**
 * Finds the file that `path` names, seen from the file `from`. `file` is its own name from then on (a path or an
 * address); `refused` says in words why there is none, `barred` that it may not even be looked at. `head` is the plan (or
 * the reader's own shop file) whose lines lead there, which read only in the folder one works in; where it is undefined,
 * the path is the reader's own word, and leads anywhere.
 */
export type Reader = (path: string, from: string, head: string | undefined) => Found;

export type Found =
  | { readonly file: string; readonly text: string }
  | { readonly file: string; readonly refused: string; readonly barred?: true };

export interface PlanFile {
  readonly file: string;
  readonly role: "plan" | "shop" | "brought";
  readonly tree: Tree;
}

export interface FileFault {
  readonly kind: "not-found" | "circle" | "too-many";
  readonly at: At;
  readonly path: string;
  readonly why: string;
  /** For a circle: the files along it. */
  readonly along: readonly string[];
}

export interface Loaded {
  readonly files: readonly PlanFile[];
  readonly faults: readonly FileFault[];
}

/** The most files one plan may bring. */
export const MOST_FILES = 50;

export interface LoadOptions {
  /** The reader's own shop file, in place of the one the plan names. */
  readonly shop?: string;
  /** The file or folder that path is seen from; the plan when left out. */
  readonly shopFrom?: string;
}

/** Loads the plan in `text`, called `file`, with everything it names. The plan itself comes first. */
export function load(file: string, text: string, read: Reader, options: LoadOptions = {}): Loaded {
  const files: PlanFile[] = [];
  const faults: FileFault[] = [];
  const seen = new Set<string>();

  const visit = (
    name: string,
    source: string,
    role: PlanFile["role"],
    chain: readonly string[],
    head: string,
  ) => {
    seen.add(name);
    const tree = parse(source);
    files.push({ file: name, role, tree });
    for (const entry of tree.entries) {
      if (entry.kind === "shop" && !(options.shop && role === "plan"))
        follow(name, entry.path, "shop", chain, head);
      if (entry.kind === "bring") follow(name, entry.path, role === "shop" ? "shop" : "brought", chain, head);
    }
  };

  const follow = (
    from: string,
    path: Text,
    role: PlanFile["role"],
    chain: readonly string[],
    head: string | undefined,
    seenFrom = from,
  ) => {
    const at: At = { file: from, start: path.start, end: path.end };
    const found = read(path.text, seenFrom, head);
    if ("refused" in found && found.barred) {
      faults.push({ kind: "not-found", at, path: path.text, why: found.refused, along: [] });
      return;
    }
    if (chain.includes(found.file)) {
      const along = [...chain.slice(chain.indexOf(found.file)), found.file];
      faults.push({ kind: "circle", at, path: path.text, why: "", along });
      return;
    }
    if (seen.has(found.file)) return;
    if (files.length >= MOST_FILES) {
      faults.push({ kind: "too-many", at, path: path.text, why: `more than ${MOST_FILES} files`, along: [] });
      return;
    }
    if ("refused" in found) {
      faults.push({ kind: "not-found", at, path: path.text, why: found.refused, along: [] });
      return;
    }
    visit(found.file, found.text, role, [...chain, found.file], head ?? found.file);
  };

  visit(file, text, "plan", [file], file);
  if (options.shop) {
    const shopLine = files[0]!.tree.entries.find((e): e is Entry & { kind: "shop" } => e.kind === "shop");
    const at = shopLine ? shopLine.path : { start: 0, end: 0 };
    follow(
      file,
      { text: options.shop, start: at.start, end: at.end },
      "shop",
      [file],
      undefined,
      options.shopFrom,
    );
  }
  return { files, faults };
}
