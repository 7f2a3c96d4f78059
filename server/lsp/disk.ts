/** Reading plan files from disk: only ordinary files of a sensible size, and a clear sentence for everything else. */
import { closeSync, constants, fstatSync, openSync, readSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { dirname, isAbsolute, join } from "node:path";
import type { Reader } from "../plan";
import { MOST_PLANS } from "./plan-lists";

/** The largest file that is read at all, in bytes; the parser's own limit is lower. */
export const LARGEST_FILE = 20_000_000;

/** Reads one file as UTF-8 text. Never throws, and never waits on a device or a pipe. */
export function readPlan(path: string): { readonly text: string } | { readonly refused: string } {
  let handle: number;
  try {
    // Without O_NONBLOCK, opening a pipe that nobody writes to would wait for ever.
    handle = openSync(path, NON_BLOCKING);
  } catch (error) {
    return { refused: inWords((error as NodeJS.ErrnoException).code) };
  }
  try {
    const stat = fstatSync(handle);
    if (stat.isDirectory()) return { refused: "it is a folder" };
    if (!stat.isFile()) return { refused: "it is not an ordinary file" };
    if (stat.size > LARGEST_FILE) return { refused: `it is larger than ${LARGEST_FILE / 1e6} MB` };
    const bytes = Buffer.alloc(stat.size);
    let read = 0;
    while (read < stat.size) {
      const got = readSync(handle, bytes, read, stat.size - read, read);
      if (got === 0) break;
      read += got;
    }
    return { text: bytes.toString("utf8", 0, read) };
  } catch (error) {
    return { refused: inWords((error as NodeJS.ErrnoException).code) };
  } finally {
    closeSync(handle);
  }
}

/** Finds files beside the one that names them (or below the folder ".", for one named on the command line). */
export const diskReader: Reader = (path, from) => {
  const base = from === "." ? "." : dirname(from);
  const file = isAbsolute(path) ? path : join(base, path);
  return { file, ...readPlan(file) };
};

/**
 * All plan files below a folder, in the order of their names: no hidden folders, no `node_modules`, no links. Those found so
 * far once nobody waits for it any more.
 */
export async function plansBelow(
  folder: string,
  waiting: { readonly isCancellationRequested: boolean },
): Promise<string[]> {
  const found: string[] = [];
  const folders = [folder];
  for (let next = folders.pop(); next !== undefined && found.length < MOST_PLANS; next = folders.pop()) {
    if (waiting.isCancellationRequested) break;
    const entries = await readdir(next, { withFileTypes: true }).catch(() => []);
    for (const entry of entries) {
      const path = join(next, entry.name);
      if (entry.isDirectory() && !/^\.|^node_modules$/.test(entry.name)) folders.push(path);
      if (entry.isFile() && entry.name.endsWith(".sawbuck")) found.push(path);
    }
  }
  return found.sort();
}

const NON_BLOCKING = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);

function inWords(code: string | undefined): string {
  if (code === "ENOENT" || code === "ENOTDIR") return "there is no such file";
  if (code === "EACCES" || code === "EPERM") return "it may not be read";
  return code === "EISDIR" ? "it is a folder" : "it cannot be read";
}
