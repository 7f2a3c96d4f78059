/**
 * Where the lines of a plan may read: in the folder one works in, and nowhere else. By the look of paths alone, with `/` and
 * `\` between folders on every system; on a disk what links lead to is looked at besides.
 */
import type { Reader } from "../plan";
import { isAddress, isInFolder, pathFrom } from "./addresses";

/** Reads what a path means; `within`, where it is said, is the folder that it must lie in, links followed. */
export type FolderReader = (path: string, from: string, within: string | undefined) => ReturnType<Reader>;

/** The longest path that is looked at, in characters. */
export const LONGEST_PATH = 1_000;

/** Reads as lines of plans may; `folderOf` is the folder one works in, for the plan in a file. */
export function confined(read: FolderReader, folderOf: (head: string) => string): Reader {
  return (path, from, head) => {
    if (head === undefined) return read(path, from, undefined);
    const folder = folderOf(head);
    const why = notRelative(path) ?? (isNowhere(from) ? undefined : notInside(path, from, folder));
    if (why === undefined) return read(path, from, folder);
    return { file: joined(path, from), refused: why, barred: true };
  };
}

/** In words why a line may not name such a path at all. */
export function notRelative(path: string): string | undefined {
  if (path.length > LONGEST_PATH) return "its path is too long";
  if (path.includes("\0")) return "it cannot be read";
  if (/^[\\/]/.test(path) || /^[A-Za-z]:/.test(path))
    return "a path is written from the file it stands in, not from the root of a disk";
  if (path === "~" || /^~[^\\/]*[\\/]/.test(path))
    return "a path is written from the file it stands in, not from a home folder";
  return /^[A-Za-z][A-Za-z0-9+.-]*:/.test(path) ? "it is an address, and no path to a file" : undefined;
}

/** A text that was never saved: who reads says so. */
const isNowhere = (from: string): boolean => isAddress(from) && !isInFolder(from);

const notInside = (path: string, from: string, folder: string): string | undefined =>
  isInside(joined(path, from), folder) ? undefined : OUTSIDE;

const OUTSIDE = "it lies outside the folder you work in";

/** Whether a file lies in a folder, or deeper. The folder `.` is where relative names begin. */
export function isInside(file: string, folder: string): boolean {
  const [parts, around] = [partsOf(file), partsOf(folder)];
  const next = parts[around.length];
  return around.every((part, i) => part === parts[i]) && next !== undefined && next !== ".." && !isRoot(next);
}

/** The name of what a path leads to from a file, as it looks. */
export function joined(path: string, from: string): string {
  if (isInFolder(from)) return pathFrom(path, from);
  if (notRelative(path) !== undefined) return path;
  const by = from.includes("\\") && !from.includes("/") ? "\\" : "/";
  return partsOf(from.slice(0, from.search(/[^\\/]*$/)) + path).join(by);
}

/** What lies between the folders of a path; what leads up stands only at its start. */
function partsOf(path: string): string[] {
  const parts: string[] = [];
  for (const [i, part] of path.split(/[\\/]/).entries()) {
    const last = parts.at(-1);
    if (part === ".") continue;
    if (part === "..") {
      if (last === undefined || last === "..") parts.push(part);
      else if (!isRoot(last)) parts.pop();
    } else if (i === 0) parts.push(/^[A-Za-z]:$/.test(part) ? part.toLowerCase() : part);
    else if (part !== "") parts.push(part);
  }
  return parts;
}

const isRoot = (part: string): boolean => part === "" || part.endsWith(":");
