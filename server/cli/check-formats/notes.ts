/** What programs are told of a problem beside its place: one text with all that is printed on a terminal. */
import { relative, sep } from "node:path";
import type { SheetProblem } from "../../sheet/data";

/** The sentence, what was taken for granted, the cures, and why it was accepted. */
export const wholeText = (p: SheetProblem): string =>
  [
    p.message,
    ...p.assumed.map((text) => `Taken for granted: ${text}`),
    ...p.cures.map((text) => `Cure: ${text}`),
    ...(p.accepted === undefined ? [] : [`Accepted because ${p.accepted}`]),
  ].join("\n");

/** A path as seen from where the command is given, with slashes. */
export const seenFromHere = (file: string): string => relative(".", file).split(sep).join("/");
