/** Writing a plan anew where it stands. */
import { randomUUID } from "node:crypto";
import {
  chmodSync,
  closeSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";

/** In words why it was not written. */
export interface Refused {
  readonly refused: string;
}

/** Writes it all or not at all: a reader finds the old text or the new one. */
export function replaced(real: string, text: string): Refused | undefined {
  const { mode, nlink } = statSync(real);
  if ((mode & 0o222) === 0) return { refused: "it may not be written" };
  if (nlink > 1) return { refused: "it has more names than this one (hard links); nothing was written" };
  const beside = join(dirname(real), `.${basename(real)}.${randomUUID()}`);
  const handle = openSync(beside, "wx", 0o600);
  try {
    writeFileSync(handle, text);
    fsyncSync(handle);
    closeSync(handle);
    chmodSync(beside, mode & 0o7777);
    renameSync(beside, real);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
  return undefined;
}
