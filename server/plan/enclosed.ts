/**
 * Files whose texts are enclosed in a plan's own text. Places in them count from the start of that text; such a file is
 * known by the name of the text that holds it and the path it is enclosed as, and told as if it lay beside that text.
 */
import type { Complaint, Entry, Span, Tree } from "../../grammar/tree";

/** A name that no file on a disk has. */
const BETWEEN = "\0";

export const enclosedName = (holder: string, path: string): string => `${holder}${BETWEEN}${path}`;

/** The file in whose text the places of a file are counted: itself, unless it is enclosed in another. */
export const holderOf = (file: string): string => file.split(BETWEEN, 1)[0]!;

/** How a file is named to people: one that is enclosed as if it lay where its path leads, seen from what holds it. */
export function toldName(file: string): string {
  const at = file.indexOf(BETWEEN);
  return at < 0 ? file : beside(file.slice(0, at), file.slice(at + 1));
}

/** A path as plans write it, from the folder of the plan; undefined for one that begins elsewhere. `from` is a path like it. */
export function pathFromPlan(path: string, from: string): string | undefined {
  if (/^[\\/~]|^[A-Za-z][A-Za-z0-9+.-]*:/.test(path)) return undefined;
  const parts: string[] = [];
  for (const part of [...from.split("/").slice(0, -1), ...path.split(/[\\/]/)]) {
    if (part === "" || part === ".") continue;
    if (part === ".." && parts.length > 0 && parts.at(-1) !== "..") parts.pop();
    else parts.push(part);
  }
  return parts.join("/");
}

/** The name of a file by its path from the folder of another. */
function beside(file: string, path: string): string {
  let folder = file.replace(/[^\\/]*$/, "");
  let rest = path;
  while (rest.startsWith("../")) {
    if (folder === "" || /(^|[\\/])\.\.[\\/]$/.test(folder)) folder += "../";
    else folder = folder.replace(/[^\\/]+[\\/]$/, "");
    rest = rest.slice(3);
  }
  return folder + (folder.includes("\\") && !folder.includes("/") ? rest.replaceAll("/", "\\") : rest);
}

/** A text in its parts: the plan itself, then each file that it encloses. */
export interface Enclosed {
  /** Empty for the plan itself. */
  readonly path: string;
  /** Where its text begins. */
  readonly begins: number;
  readonly tree: Tree;
  /** The line that encloses it; none for the plan itself. */
  readonly head?: Entry & { readonly kind: "enclosed" };
}

/** The part of the tree that is the plan's own, and those that are enclosed, each with the text up to its own end. */
export function partsOf(tree: Tree): readonly Enclosed[] {
  const heads = tree.entries.filter((e): e is Entry & { kind: "enclosed" } => e.kind === "enclosed");
  if (heads.length === 0) return [{ path: "", begins: 0, tree }];
  const ends = [...heads.map(({ start }) => start), tree.text.length];
  const parts = [undefined, ...heads].map((head, i): Enclosed => {
    const end = ends[i]!;
    const own = { start: head?.end ?? 0, end };
    const begins = head === undefined ? 0 : lineBelow(tree.text, head.end);
    const path = head && (pathFromPlan(head.path.text, "") ?? head.path.text);
    return { path: path ?? "", begins, tree: within(tree, own), ...(head && { head }) };
  });
  // What is wrong with the lines that enclose is told with the plan.
  const [plan, ...others] = parts as [Enclosed, ...Enclosed[]];
  const told = new Set(parts.flatMap((part) => part.tree.complaints));
  const complaints = [...plan.tree.complaints, ...tree.complaints.filter((c) => !told.has(c))];
  return [{ ...plan, tree: { ...plan.tree, complaints } }, ...others];
}

/** The text that a path leads to from an offset of a text, where it is enclosed in the same. */
export function enclosedBy(tree: Tree, offset: number, path: string): Enclosed | undefined {
  const parts = partsOf(tree);
  const from = parts.findLast(({ begins }) => begins <= offset)?.path ?? "";
  const to = pathFromPlan(path, from);
  return to ? parts.find((part) => part.path === to) : undefined;
}

function within({ text, entries, comments, complaints }: Tree, { start, end }: Span): Tree {
  const own = (one: Span): boolean => one.start >= start && one.start < end;
  return {
    text: text.slice(0, end),
    entries: entries.filter(own),
    comments: comments.filter(own),
    complaints: complaints.filter((one: Complaint) => own(one)),
  };
}

const lineBelow = (text: string, at: number): number => {
  const found = /\r\n|\r|\n/.exec(text.slice(at));
  return found ? at + found.index + found[0].length : text.length;
};
