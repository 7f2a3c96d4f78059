/** Which cure a complaint about form carries: a guess is read in its place, and offered only when the line then reads better. */
import type { Complaint, Entry, Span } from "./tree";

/** A complaint, and what was likely meant instead: guesses not yet tried. */
export interface Draft {
  readonly complaint: Complaint;
  readonly guesses: () => readonly Complaint[];
}

/** Says for every complaint the first guess whose change mends the line; a change that does not mend is never offered. */
export function settle(
  text: string,
  entries: readonly Entry[],
  drafts: readonly Draft[],
  complaintsIn: (part: string) => number,
): Complaint[] {
  const settled: Complaint[] = [];
  let left = TRIES;
  let at = 0;
  for (const { complaint, guesses } of drafts) {
    while (entries[at + 1] && entries[at + 1]!.start <= complaint.start) at++;
    // A line may go on from the one above, so both are read again.
    const above = entries[complaint.code === "unknown-entry" ? Math.max(0, at - 1) : at]?.start ?? 0;
    const from = Math.min(above, complaint.cure?.start ?? above);
    const slice = text.slice(from, Math.max(entries[at]?.end ?? 0, complaint.end));
    const wrong = left > 0 ? complaintsIn(slice) : 0;
    const mends = ({ start, end, text: better }: Span & { readonly text: string }) => {
      left -= slice.length + 100;
      const cured = slice.slice(0, Math.max(0, start - from)) + better + slice.slice(end - from);
      return left > 0 && complaintsIn(cured) < wrong;
    };
    const tried = [...(left > 0 ? guesses() : []), complaint];
    const { cure, ...bare } = complaint;
    const best = tried.find((c) => !c.cure || mends(c.cure)) ?? bare;
    if (best.says === "goes-on" && settled[settled.length - 1]?.says === "comma-last") settled.pop();
    settled.push(best);
  }
  return settled;
}

/** Most characters of a file that are read again to try what was meant. */
const TRIES = 200_000;
