/**
 * Plan files as they were in a commit. Runs `git`, which reads its own store and runs nothing of the repository's; a name
 * never becomes an option or a pattern.
 */
import { spawnSync } from "node:child_process";
import { realpathSync } from "node:fs";
import { basename, dirname, join, relative, resolve, sep } from "node:path";
import process from "node:process";
import { LARGEST_FILE, onDisk } from "./disk";
import type { FolderReader } from "./inside";

/** A commit of a repository. */
export interface Commit {
  /** The repository's own folder. */
  readonly root: string;
  readonly id: string;
  /** As it was asked for: `HEAD~1`. */
  readonly called: string;
}

/** In words why there is none. */
export interface Refused {
  readonly refused: string;
  /** Git itself is not there. */
  readonly missing?: true;
}

/** The repository around a folder. */
export function repositoryAt(folder: string): { readonly root: string } | Refused {
  const found = git(folder, ["rev-parse", "--show-toplevel"]);
  if (found.missing) return { refused: "git is not installed, or is not found", missing: true };
  if (found.status !== 0) return { refused: `${folder} is in no git repository` };
  return { root: found.text.replace(/\r?\n$/, "") };
}

/** Undefined where nothing is called so. */
export function commitCalled(root: string, called: string): Commit | undefined {
  if (called === "") return undefined;
  const found = git(root, ["rev-parse", "--verify", "--quiet", "--end-of-options", `${called}^{commit}`]);
  return found.status === 0 ? { root, id: found.text.trim(), called } : undefined;
}

/** The day it was made on, where its maker was: `2026-05-09`; empty where it does not say. */
export function commitDay({ root, id }: Commit): string {
  const [, seconds, sign, hours, minutes] =
    /^committer .* (\d+) ([+-])(\d\d)(\d\d)$/m.exec(git(root, ["cat-file", "commit", id]).text) ?? [];
  if (seconds === undefined) return "";
  const east = (sign === "-" ? -1 : 1) * (Number(hours) * 3600 + Number(minutes) * 60);
  return new Date((Number(seconds) + east) * 1000).toISOString().slice(0, 10);
}

/** A file of a commit by its path below the root, with forward slashes. */
export function fileIn({ root, id, called }: Commit, path: string): { readonly text: string } | Refused {
  const [entry = ""] = git(root, ["ls-tree", "-z", "-l", id, "--", path]).text.split("\0");
  const found = /^(\d+) (\w+) (\w+) +(\S+)\t/.exec(entry);
  if (!found) return { refused: `there is no such file in ${called}` };
  const [, mode, kind, object, size] = found;
  if (kind !== "blob") return { refused: "it is a folder" };
  if (mode === LINK) return { refused: "it is a link" };
  if (Number(size) > LARGEST_FILE) return { refused: `it is larger than ${LARGEST_FILE / 1e6} MB` };
  const { status, text } = git(root, ["cat-file", "blob", object!]);
  return status === 0 ? { text } : { refused: "it cannot be read" };
}
const LINK = "120000";

/** Finds files of that commit as they would be found on disk, by the paths they have there. */
export const readerIn =
  (commit: Commit): FolderReader =>
  (path, from, within) => {
    // The reader's own shop file is the one of today.
    if (within === undefined) return onDisk(path, from, within);
    const file = join(dirname(from), path);
    const below = pathBelow(commit.root, file);
    return {
      file,
      ...(below === undefined ? { refused: "it lies outside the repository" } : fileIn(commit, below)),
    };
  };

/** The path below the root with forward slashes, through links in the folders that are there; undefined outside it. */
export function pathBelow(root: string, file: string): string | undefined {
  const path = relative(root, real(resolve(file)));
  return path === "" || path.startsWith(`..${sep}`) || path === ".." || resolve(path) === path
    ? undefined
    : path.split(sep).join("/");
}

/** A file or a folder that may no longer be there, in the real folder it would be in. */
function real(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    const folder = dirname(path);
    return folder === path ? path : join(real(folder), basename(path));
  }
}

/** A plan file's path in each of two versions, below the root; undefined where it is not there. */
export interface ChangedFile {
  readonly old: string | undefined;
  readonly new: string | undefined;
}

/** The plan files that differ between a commit and another, or what is on disk, with those that git does not know yet. */
export function changedPlans(old: Commit, now: Commit | undefined): ChangedFile[] {
  const { root } = old;
  const ids = [old.id, ...(now ? [now.id] : [])];
  const told = git(root, ["diff", "--no-ext-diff", "--name-status", "-z", "-M", ...ids, "--"]).text.split(
    "\0",
  );
  const changed: ChangedFile[] = [];
  for (let i = 0; i + 1 < told.length; ) {
    const kind = told[i]!;
    const renamed = /^[RC]/.test(kind);
    const [first, second] = [told[i + 1]!, renamed ? told[i + 2] : told[i + 1]];
    changed.push({
      old: kind === "A" || kind.startsWith("C") ? undefined : first,
      new: kind === "D" ? undefined : second,
    });
    i += renamed ? 3 : 2;
  }
  if (!now)
    for (const path of git(root, ["ls-files", "--others", "--exclude-standard", "-z"]).text.split("\0"))
      if (path !== "") changed.push({ old: undefined, new: path });
  const isPlan = (path: string | undefined): boolean => path?.endsWith(".sawbuck") ?? false;
  return changed
    .map((file) => ({
      old: isPlan(file.old) ? file.old : undefined,
      new: isPlan(file.new) ? file.new : undefined,
    }))
    .filter((file) => file.old ?? file.new);
}

/** All plan files on disk that git knows, below the root. */
export const plansKnown = (root: string): string[] =>
  git(root, ["ls-files", "-z"])
    .text.split("\0")
    .filter((path) => path.endsWith(".sawbuck"));

/** All plan files of a commit, below the root. */
export const plansIn = ({ root, id }: Commit): string[] =>
  git(root, ["ls-tree", "-r", "-z", "--name-only", id])
    .text.split("\0")
    .filter((path) => path.endsWith(".sawbuck"));

function git(
  folder: string,
  args: readonly string[],
): { status: number | null; text: string; missing: boolean } {
  const { status, stdout, error } = spawnSync("git", ["--no-pager", "--literal-pathspecs", ...args], {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 4 * LARGEST_FILE,
    env: { ...process.env, GIT_OPTIONAL_LOCKS: "0" },
  });
  const missing = (error as NodeJS.ErrnoException | undefined)?.code === "ENOENT";
  return { status: error ? null : status, text: stdout ?? "", missing };
}
