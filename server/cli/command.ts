/** What every command of the command line is, and what it ends with. */
import process from "node:process";

export interface Command {
  readonly name: string;
  /** How it is called and what it does: one form or more, each begun two blanks in, what it does six. */
  readonly usage: string;
  /** Ends with a code below; -1 for a command that goes on. */
  readonly run: (words: readonly string[]) => number | Promise<number>;
}

/** Nothing stands in the way. */
export const FINE = 0;
/** Errors or hazards were found. */
export const FOUND = 1;
/** It could not be read, written or asked so. */
export const REFUSED = 2;

/** It cannot be done, for that reason. */
export function refuse(why: string): number {
  process.stderr.write(`sawbuck: ${why}\n`);
  return REFUSED;
}

/** It was asked wrongly: the reason, and how the command is asked. */
export function refuseAsked(why: string, { usage }: Pick<Command, "usage">): number {
  process.stderr.write(`sawbuck: ${why}\n\nUsage:\n${usage}`);
  return REFUSED;
}

/** What kinds of problems make a command end with `FOUND`. */
export const standsInTheWay = (p: { readonly class: string }): boolean =>
  p.class === "error" || p.class === "hazard";
