/** The command line: check plans, print or write their shop sheet, or serve an editor. */
import process from "node:process";
import { readArguments } from "./arguments";
import { checkCommand } from "./check";
import { sheetCommand } from "./sheet";
import { USAGE } from "./usage";

/** Exit codes: 0 nothing stands in the way, 1 errors or hazards were found, 2 it could not be read or asked. */
async function main(): Promise<number> {
  const [command, ...rest] = process.argv.slice(2);
  if (command === "lsp") {
    const { serve } = await import("../lsp/node");
    serve();
    return -1;
  }
  const help = command === undefined || command === "help" || command === "--help" || command === "-h";
  if (help || rest.includes("--help") || rest.includes("-h")) {
    process.stdout.write(USAGE);
    return command === undefined ? 2 : 0;
  }
  if (command === "check" || command === "sheet") {
    const asked = readArguments(command, rest);
    if ("wrong" in asked) return refuse(asked.wrong);
    return command === "check" ? checkCommand(asked) : sheetCommand(asked);
  }
  return refuse(`There is no command “${command}”.`);
}

function refuse(why: string): number {
  process.stderr.write(`sawbuck: ${why}\n\n${USAGE}`);
  return 2;
}

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
