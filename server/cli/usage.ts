/** All commands, and how each is called. */
import { EFFORT } from "../cutting/improve";
import { BUNDLE } from "./bundle";
import { CHECK } from "./check";
import type { Command } from "./command";
import { LSP } from "./lsp";
import { SHEET } from "./sheet";

export const COMMANDS: readonly Command[] = [CHECK, SHEET, BUNDLE, LSP];

const MORE = `  --shop FILE   your own shop file, in place of the one a plan names
  --effort N    how long check and sheet look for the cheapest way to cut each stock, in
                millions of steps; ${EFFORT / 1e6} when it is not said, 0 for first answers
`;

/** One form of a command, or all of them. */
export const usageOf = (commands: readonly Command[] = COMMANDS): string =>
  `Usage:\n${commands.map(({ usage }) => usage).join("")}\n${MORE}`;
