/** The command line: check plans, print or write their shop sheet, or serve an editor. */
import process from "node:process";
import { isMainThread } from "node:worker_threads";
import { version } from "../../package.json";
import { checkInThread } from "./check-threads";
import { FINE, REFUSED } from "./command";
import { COMMANDS, usageOf } from "./usage";

/** Exit codes: see `command.ts`. */
async function main(): Promise<number> {
  const [name, ...words] = process.argv.slice(2);
  const asksHelp = (word: string | undefined): boolean => word === "--help" || word === "-h";
  const about = name === "help" ? words[0] : name;
  const command = COMMANDS.find((one) => one.name === about);
  if (name === undefined || name === "help" || asksHelp(name) || words.some(asksHelp)) {
    process.stdout.write(usageOf(command && [command]));
    return name === undefined ? REFUSED : FINE;
  }
  if (command) return command.run(words);
  if (name === "--version") {
    process.stdout.write(`${version}\n`);
    return FINE;
  }
  process.stderr.write(`sawbuck: There is no command “${name}”.\n\n${usageOf()}`);
  return REFUSED;
}

if (isMainThread) {
  main().then(
    (code) => {
      // What was written drains before the process ends.
      if (code >= 0) process.exitCode = code;
    },
    (error: unknown) => {
      process.stderr.write(
        `sawbuck: this should not happen, and is a fault of Sawbuck's own: ${String(error).slice(0, 300)}\n`,
      );
      process.exitCode = 2;
    },
  );
  // With nobody left to tell, what was to be told is dropped, and the exit code stands.
  process.stderr.on("error", () => {});
  // A closed pipe (`sawbuck check … | head`) is not a failure; a full disk is.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") process.stderr.write(`sawbuck: nothing more can be written: ${error.code}\n`);
    process.exit(error.code === "EPIPE" ? (process.exitCode ?? 0) : 2);
  });
} else checkInThread();
