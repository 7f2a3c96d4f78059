/** Faults of our own, told to whoever asked where no answer would say something else. */
import { ErrorCodes, ResponseError } from "vscode-languageserver";
import type { Guard } from "./answers/answering";

/** What failed is logged; `null` in its place would say that there is nothing. */
export const toldAsFault =
  (guard: Guard, what: string) =>
  (error: unknown): never => {
    guard(what, rethrown, undefined)(error);
    throw new ResponseError(ErrorCodes.InternalError, "a fault of Sawbuck's own stands in its log");
  };

function rethrown(error: unknown): undefined {
  throw error;
}
