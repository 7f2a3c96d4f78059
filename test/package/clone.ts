/** A repository like this one, in a folder of its own, with one commit of the tree as it is. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { expect } from "vitest";

const ROOT = join(__dirname, "../..");
const WHO = ["-c", "user.name=A Builder", "-c", "user.email=builder@example.org"];

export function gitIn(folder: string, ...words: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync("git", [...WHO, ...words], { cwd: folder, encoding: "utf8" });
  expect(status, stderr).toBe(0);
  return stdout;
}

/** Without tests, which nothing that is packed needs. */
export function cloned(): string {
  const clone = mkdtempSync(join(tmpdir(), "sawbuck-release-"));
  const listed = gitIn(ROOT, "ls-files", "-z", "--cached", "--others", "--exclude-standard");
  for (const name of listed.split("\0").filter((one) => one !== "" && !one.startsWith("test/"))) {
    mkdirSync(join(clone, dirname(name)), { recursive: true });
    cpSync(join(ROOT, name), join(clone, name));
  }
  symlinkSync(join(ROOT, "node_modules"), join(clone, "node_modules"));
  gitIn(clone, "init", "--quiet", "--initial-branch", "main");
  writeFileSync(join(clone, ".git/info/exclude"), "/node_modules\n");
  committed(clone, "All there is");
  return clone;
}

export function committed(folder: string, message: string): void {
  gitIn(folder, "add", "--all");
  gitIn(folder, "commit", "--quiet", "--no-verify", "--message", message);
}
