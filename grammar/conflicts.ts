/**
 * What a merge leaves in a text where two people changed the same lines: both versions, between marks of seven letters
 * at the left edge. The text is read as if the first version had been kept.
 */
import { complain } from "./messages";
import type { Complaint, Span } from "./tree";

export interface Conflict extends Span {
  /** The line that opens it. */
  readonly mark: Span;
  /** The lines of the first version. */
  readonly first: Span;
  /** What the first version is called, as the mark says: "HEAD"; may be empty. */
  readonly called: string;
}

/** A text as it is read, and what is said of its conflicts. */
export function withoutConflicts(text: string): { told: string; conflicts: Complaint[] } {
  const found = conflictsIn(text);
  if (found.length === 0) return { told: text, conflicts: [] };
  return { told: withFirstVersions(text, found), conflicts: found.map((one) => complaintOf(text, one)) };
}

/** Both lists in the order of the text. */
export const merged = (complaints: readonly Complaint[], conflicts: readonly Complaint[]): Complaint[] =>
  conflicts.length === 0 ? [...complaints] : [...complaints, ...conflicts].sort((a, b) => a.start - b.start);

function complaintOf(text: string, { start, end, mark, first, called }: Conflict): Complaint {
  const cure = { says: "keep-first", slots: {}, start, end, text: text.slice(first.start, first.end) };
  return called === ""
    ? complain(mark, "merge-conflict", "unnamed", {}, cure)
    : complain(mark, "merge-conflict", "named", { called }, cure);
}

/** The conflicts of a text in order; what is not closed is none. */
export function conflictsIn(text: string): Conflict[] {
  if (!text.includes(OPENS)) return [];
  const found: Conflict[] = [];
  let open: { mark: Span; called: string; firstEnd?: number; split?: true } | undefined;
  for (const { start, end, next, line } of linesOf(text)) {
    const [mark, called = ""] = [line.slice(0, 7), /^.{7} (.*)$/.exec(line)?.[1]];
    const alone = line.length === 7 || line[7] === " ";
    if (mark === OPENS && alone) open = { mark: { start, end }, called };
    else if (!open) continue;
    else if (mark === BASE && alone) open.firstEnd ??= start;
    else if (line === SPLITS) {
      open.firstEnd ??= start;
      open.split = true;
    } else if (mark === CLOSES && alone && open.split) {
      const first = { start: nextLine(text, open.mark.end), end: open.firstEnd! };
      found.push({ start: open.mark.start, end: next, mark: open.mark, first, called: open.called });
      open = undefined;
    }
  }
  return found;
}

const OPENS = "<<<<<<<";
const BASE = "|||||||";
const SPLITS = "=======";
const CLOSES = ">>>>>>>";

/** The text with everything of its conflicts but the first versions blank, every line and place as before. */
export function withFirstVersions(text: string, conflicts: readonly Conflict[]): string {
  let [made, at] = ["", 0];
  const take = (to: number, blank: boolean): void => {
    const part = text.slice(at, to);
    made += blank ? part.replace(/[^\r\n]/g, " ") : part;
    at = to;
  };
  for (const { start, end, first } of conflicts) {
    take(start, false);
    take(first.start, true);
    take(first.end, false);
    take(end, true);
  }
  take(text.length, false);
  return made;
}

function* linesOf(text: string): Generator<{ start: number; end: number; next: number; line: string }> {
  const breaks = /\r|\n|$/g;
  for (let start = 0; start < text.length; ) {
    breaks.lastIndex = start;
    const end = breaks.exec(text)!.index;
    const next = nextLine(text, end);
    yield { start, end, next, line: text.slice(start, end) };
    start = next;
  }
}

/** Where the line begins behind the break at `end`. */
function nextLine(text: string, end: number): number {
  const crlf = text[end] === "\r" && text[end + 1] === "\n";
  return Math.min(text.length, end + (crlf ? 2 : 1));
}
