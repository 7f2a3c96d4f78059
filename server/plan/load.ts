/** Reads a plan and the files it names, through an injected reader: this room does no input or output of its own. */
import { parse } from "../../grammar/parser";
import type { Entry, Text, Tree } from "../../grammar/tree";
import { type Enclosed, enclosedName, partsOf, pathFromPlan, toldName } from "./enclosed";
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
  /** Its places count from the start of the text that holds it; the text ends where its own does. */
  readonly tree: Tree;
  /** Where its own text begins. */
  readonly begins: number;
  /** Its path from the plan's folder, as the lines say that lead there; undefined for the plan, and for the reader's own shop. */
  readonly path?: string;
}

export interface FileFault {
  readonly kind: "not-found" | "circle" | "too-many" | "twice";
  readonly at: At;
  readonly path: string;
  readonly why: string;
  /** For a circle: the files along it. */
  readonly along: readonly string[];
}

export interface Loaded {
  readonly files: readonly PlanFile[];
  readonly faults: readonly FileFault[];
  /** All of the plan's text, with the files that it encloses. */
  readonly whole: Tree;
  /**
   * Where the reader's own shop file stands in place of one that the plan names: the plan as it is with its own, read
   * when somebody asks, and once. Nothing of it counts; it only tells what its names mean.
   */
  readonly replaced?: () => Loaded;
}

/** The most files one plan may bring. */
export const MOST_FILES = 50;

export interface LoadOptions {
  /** The reader's own shop file, in place of the one the plan names. */
  readonly shop?: string;
  /** The file or folder that path is seen from; the plan when left out. */
  readonly shopFrom?: string;
}

/** A file with all that must be known of it to follow its lines. */
interface Visit {
  readonly file: string;
  readonly role: PlanFile["role"];
  /** The files on the way to it, itself the last. */
  readonly chain: readonly string[];
  /** Whose lines lead there: the plan, or the reader's own shop file. */
  readonly head: string;
  /** Undefined below the reader's own shop file, which nothing is enclosed for. */
  readonly path: string | undefined;
}

/** Loads the plan in `text`, called `file`, with everything it names. The plan itself comes first. */
export function load(file: string, text: string, read: Reader, options: LoadOptions = {}): Loaded {
  const whole = parse(text);
  const parts = partsOf(whole) as [Enclosed, ...Enclosed[]];
  const loaded = loadParts(file, whole, parts, read, options);
  if (!options.shop || !parts[0].tree.entries.some(({ kind }) => kind === "shop")) return loaded;
  let replaced: Loaded | undefined;
  return {
    ...loaded,
    replaced: () => {
      replaced ??= loadParts(file, whole, parts, read, {});
      return replaced;
    },
  };
}

function loadParts(
  file: string,
  whole: Tree,
  [plan, ...enclosed]: readonly [Enclosed, ...Enclosed[]],
  read: Reader,
  options: LoadOptions,
): Loaded {
  const files: PlanFile[] = [];
  const faults: FileFault[] = [];
  const seen = new Set<string>();
  const enclosedAs = new Map<string, Enclosed>();

  const fault = (kind: FileFault["kind"], at: At, path: string, why = "", along: readonly string[] = []) => {
    faults.push({ kind, at, path, why, along });
  };

  const visit = (one: Visit, { tree, begins }: Pick<Enclosed, "tree" | "begins">) => {
    const { role, path } = one;
    seen.add(toldName(one.file));
    files.push({ file: one.file, role, tree, begins, ...(path && { path }) });
    for (const entry of tree.entries) {
      if (entry.kind === "shop" && !(options.shop && role === "plan")) follow(one, entry.path, "shop");
      if (entry.kind === "bring") follow(one, entry.path, role === "shop" ? "shop" : "brought");
    }
  };

  const found = (
    from: Visit,
    typed: string,
  ): { readonly path: string | undefined; readonly found: Found | Held } => {
    const path = from.path === undefined ? undefined : pathFromPlan(typed, from.path);
    const held = path === undefined ? undefined : enclosedAs.get(path);
    if (path !== undefined && held) return { path, found: { file: enclosedName(file, path), held } };
    return { path, found: read(typed, toldName(from.file), from.head) };
  };

  const follow = (from: Visit, { text: typed, start, end }: Text, role: PlanFile["role"]) => {
    const { path, found: to } = found(from, typed);
    enter({ ...from, file: to.file, role, path }, { file: from.file, start, end }, typed, to);
  };

  /** `to` is what was found for a line, or for the reader's own shop file. */
  const enter = (one: Visit, at: At, typed: string, to: Found | Held) => {
    const name = toldName(to.file);
    if ("refused" in to && to.barred) return fault("not-found", at, typed, to.refused);
    if (one.chain.some((other) => toldName(other) === name)) {
      const from = one.chain.findIndex((other) => toldName(other) === name);
      return fault("circle", at, typed, "", [...one.chain.slice(from), to.file]);
    }
    if (seen.has(name)) return;
    if (files.length >= MOST_FILES) return fault("too-many", at, typed, `more than ${MOST_FILES} files`);
    if ("refused" in to) return fault("not-found", at, typed, to.refused);
    const below = { ...one, chain: [...one.chain, to.file] };
    if ("held" in to) return visit(below, to.held);
    const tree = parse(to.text);
    if (tree.entries.some(({ kind }) => kind === "enclosed"))
      return fault("not-found", at, typed, HOLDS_OTHERS);
    visit(below, { tree, begins: 0 });
  };

  for (const one of enclosed) {
    const { start, end, text: path } = one.head!.path;
    if (enclosedAs.has(one.path)) fault("twice", { file, start, end }, path);
    else enclosedAs.set(one.path, one);
  }
  visit({ file, role: "plan", chain: [file], head: file, path: "" }, plan);
  if (options.shop) {
    const shopLine = plan.tree.entries.find((e): e is Entry & { kind: "shop" } => e.kind === "shop");
    const { start, end } = shopLine?.path ?? { start: 0, end: 0 };
    const to = read(options.shop, options.shopFrom ?? file, undefined);
    const own: Visit = { file: to.file, role: "shop", chain: [file], head: to.file, path: undefined };
    enter(own, { file, start, end }, options.shop, to);
  }
  return { files, faults, whole };
}

interface Held {
  readonly file: string;
  readonly held: Enclosed;
}

const HOLDS_OTHERS = "it encloses other files, and is opened by itself";
