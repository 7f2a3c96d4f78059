/** Reading plan files from disk: only ordinary files of a sensible size, and a clear sentence for everything else. */
import {
  closeSync,
  constants,
  fstatSync,
  lstatSync,
  openSync,
  readSync,
  realpathSync,
  type Stats,
} from "node:fs";
import { readdir } from "node:fs/promises";
import { dirname, isAbsolute, join, resolve } from "node:path";
import { confined, type FolderReader, isInside } from "./inside";
import { MOST_PLANS } from "./plan-lists";

/** The largest file that is read at all, in bytes; the parser's own limit is lower. */
export const LARGEST_FILE = 20_000_000;

type Text = { readonly text: string };
type Refused = { readonly refused: string; readonly barred?: true };

/** Reads one file as UTF-8 text. Never throws, and never waits on a device or a pipe. */
export const readPlan = (path: string): Text | Refused => open(path, (handle) => textOf(handle));

/** The same of a file that must lie in a folder, links followed. */
function readWithin(path: string, folder: string): Text | Refused {
  try {
    const [real, within] = [realpathSync.native(path), realpathSync.native(folder)];
    if (!isInside(real, within)) return LED_OUT;
    // What is no file is not even opened.
    const kind = notFile(lstatSync(real));
    if (kind !== undefined) return { refused: kind };
    return open(real, (handle) => (isStill(handle, real) ? textOf(handle) : LED_OUT));
  } catch (error) {
    return { refused: inWords((error as NodeJS.ErrnoException).code) };
  }
}

const LED_OUT: Refused = { refused: "a link leads outside the folder you work in", barred: true };

/** A name may lead elsewhere by the time it is opened. */
function isStill(handle: number, real: string): boolean {
  const [opened, named] = [fstatSync(handle, { bigint: true }), lstatSync(real, { bigint: true })];
  return opened.ino === named.ino && opened.dev === named.dev && realpathSync.native(real) === real;
}

function open(path: string, read: (handle: number) => Text | Refused): Text | Refused {
  let handle: number;
  try {
    // Without O_NONBLOCK, opening a pipe that nobody writes to would wait for ever.
    handle = openSync(path, NON_BLOCKING);
  } catch (error) {
    return { refused: inWords((error as NodeJS.ErrnoException).code) };
  }
  try {
    return read(handle);
  } catch (error) {
    return { refused: inWords((error as NodeJS.ErrnoException).code) };
  } finally {
    closeSync(handle);
  }
}

function textOf(handle: number): Text | Refused {
  const stat = fstatSync(handle);
  const kind = notFile(stat);
  if (kind !== undefined) return { refused: kind };
  if (stat.size > LARGEST_FILE) return { refused: "it is larger than 20 MB" };
  const bytes = Buffer.alloc(stat.size);
  let read = 0;
  while (read < stat.size) {
    const got = readSync(handle, bytes, read, stat.size - read, read);
    if (got === 0) break;
    read += got;
  }
  return { text: bytes.toString("utf8", 0, read) };
}

function notFile(stat: Stats): string | undefined {
  if (stat.isDirectory()) return "it is a folder";
  return stat.isFile() ? undefined : "it is not an ordinary file";
}

/** Finds files beside the one that names them (or below the folder ".", for one named on the command line). */
export const onDisk: FolderReader = (path, from, within) => {
  const base = from === "." ? "." : dirname(from);
  const file = isAbsolute(path) ? path : join(base, path);
  return { file, ...(within === undefined ? readPlan(file) : readWithin(file, within)) };
};

/** For the command line: plans in the folder it is run in read below that, others below their own folder. */
export function folderWorkedIn(head: string): string {
  const here = isAbsolute(head) ? resolve(".") : ".";
  return isInside(head, here) ? here : dirname(head);
}

export const diskReader = confined(onDisk, folderWorkedIn);

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
  if (code === "ENAMETOOLONG") return "its path is too long";
  return code === "EISDIR" ? "it is a folder" : "it cannot be read";
}
