/** Writes what was asked for to a file, and reads its format off the file's name. */
import { statSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import type { SheetFormat } from "../service";

/** A sheet, one of its tables (csv) or of its drawings (svg). */
export type Format = SheetFormat | "pdf" | "csv" | "svg";

/** What a file's ending asks for; any other is written as text. */
const ENDINGS: ReadonlyMap<string, Format> = new Map([
  ["html", "html"],
  ["htm", "html"],
  ["pdf", "pdf"],
  ["md", "markdown"],
  ["markdown", "markdown"],
  ["csv", "csv"],
  ["json", "json"],
  ["svg", "svg"],
]);

/** Undefined for a name that asks for nothing. */
export const endingOf = (out = ""): Format | undefined =>
  ENDINGS.get(/\.([a-z]+)$/i.exec(out)?.[1]?.toLowerCase() ?? "");

/** Writes it; in words why not. `sources` are the files that it was made of. */
export function writeTo(
  out: string,
  made: string | Uint8Array,
  sources: readonly string[],
): string | undefined {
  try {
    const wrong = cannotWrite(out, sources);
    if (wrong === undefined) writeFileSync(out, made);
    return wrong;
  } catch (error) {
    return `${out} cannot be written: ${whyNotWritten(error)}`;
  }
}

/** What is made is no plan: it is not written to a file that is named like one. */
export const cannotWrite = (out: string, sources: readonly string[]): string | undefined =>
  /\.sawbuck$/i.test(out) ? `${out} is named like a plan; nothing was written.` : cannotReplace(out, sources);

/** In words why nothing can be written there: it is one of the files that were read, by whatever name or link, or nothing ordinary. */
export function cannotReplace(out: string, read: readonly string[]): string | undefined {
  if (read.some((plan) => isSame(plan, out)))
    return `${out} is the plan, or a file it reads; nothing was written.`;
  const there = statSync(out, { throwIfNoEntry: false });
  return !there || there.isFile() ? undefined : `${out} is not an ordinary file; nothing was written.`;
}

/** Whether two names lead to one file, through links too. */
export function isSame(a: string, b: string): boolean {
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
