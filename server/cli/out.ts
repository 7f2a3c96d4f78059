/** Writing to a file that was named: never over what was read, whatever its name or link. */
import { statSync } from "node:fs";
import { resolve } from "node:path";

/** In words why nothing can be written there: it is one of the files that were read, or nothing ordinary. */
export function cannotReplace(out: string, read: readonly string[]): string | undefined {
  if (read.some((plan) => isSame(plan, out)))
    return `${out} is the plan, or a file it reads; nothing was written.`;
  const there = statSync(out, { throwIfNoEntry: false });
  return !there || there.isFile() ? undefined : `${out} is not an ordinary file; nothing was written.`;
}

/** Whether two names lead to one file, through links too. */
function isSame(a: string, b: string): boolean {
  if (resolve(a) === resolve(b)) return true;
  const [one, other] = [a, b].map((path) => statSync(path, { throwIfNoEntry: false, bigint: true }));
  return one !== undefined && one.ino !== 0n && one.ino === other?.ino && one.dev === other.dev;
}

export function whyNotWritten(error: unknown): string {
  const { code } = error as NodeJS.ErrnoException;
  if (code === "ENOENT" || code === "ENOTDIR") return "there is no such folder";
  if (code === "EACCES" || code === "EPERM" || code === "EROFS") return "it may not be written";
  return code === "ENOSPC" ? "the disk is full" : (code ?? "no reason given");
}
