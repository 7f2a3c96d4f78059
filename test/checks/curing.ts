/** Cures put into the text, and what that makes of the plan. */
import type { Edit } from "../../server/checks";
import { run } from "./plans";

export const applied = (text: string, edits: readonly Edit[]): string =>
  [...edits]
    .sort((a, b) => b.start - a.start)
    .reduce((t, e) => t.slice(0, e.start) + e.text + t.slice(e.end), text);

/** How many problems of a code. */
export const countOf = (code: string, text: string): number =>
  run(text).problems.filter((p) => p.code === code).length;

/** Codes of errors and hazards of which the cured text has more than the text had. */
export function graveAdded(text: string, cured: string): string[] {
  const left = graveIn(text);
  return graveIn(cured).filter((code) => {
    const at = left.indexOf(code);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

const graveIn = (text: string): string[] =>
  run(text).problems.flatMap((p) => (p.class === "error" || p.class === "hazard" ? [p.code] : []));
