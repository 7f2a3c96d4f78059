/** The command line, run as it is shipped. Needs dist/cli.js, which `npm test` builds first. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect } from "vitest";

export const CLI = join(__dirname, "../../dist/cli.js");

export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** What it wrote and ended with; it never breaks off, and never shows where in its code something went wrong. */
export function runCli(
  args: readonly string[],
  {
    cwd,
    input,
    env,
    node = [],
  }: {
    readonly cwd: string;
    readonly input?: string | Uint8Array;
    readonly env?: NodeJS.ProcessEnv;
    /** Options of Node itself. */
    readonly node?: readonly string[];
  },
): Ran {
  const { status, stdout, stderr, error } = spawnSync(process.execPath, [...node, CLI, ...args], {
    cwd,
    encoding: "utf8",
    timeout: 120_000,
    ...(input !== undefined && { input }),
    ...(env && { env: { ...process.env, ...env } }),
  });
  expect(error).toBeUndefined();
  expect(`${stdout}${stderr}`).not.toMatch(/\n\s+at .*:\d+:\d+/);
  return { status, stdout, stderr };
}
