/** All commands, and how each is called. */
import { EFFORT } from "../cutting/improve";
import { ADAPT } from "./adapt";
import { BUNDLE } from "./bundle";
import { CHECK } from "./check";
import type { Command } from "./command";
import { DIFF } from "./diff";
import { FORMAT } from "./format";
import { LINES } from "./lines";
import { LIST } from "./list";
import { LSP } from "./lsp";
import { SHEET } from "./sheet";
import { SLIP } from "./slip";

export const COMMANDS: readonly Command[] = [
  CHECK,
  FORMAT,
  SHEET,
  LIST,
  DIFF,
  LINES,
  SLIP,
  ADAPT,
  BUNDLE,
  LSP,
];

const MORE = `  --shop FILE   your own shop file, in place of the one a plan names
  --effort N    how long check and sheet look for the cheapest way to cut each stock, in
                millions of steps; ${EFFORT / 1e6} when it is not said, 0 for first answers.
                Unsaid, check looks only where a problem depends on it
  --jobs N      on how many cores check works; all of them when it is not said
  --version     alone: which version this is
`;

/** One form of a command, or all of them. */
export const usageOf = (commands: readonly Command[] = COMMANDS): string =>
  `Usage:\n${commands.map(({ usage }) => usage).join("")}\n${MORE}`;
