/** How far in a new line begins under another: where what is being said goes on, or where the next entry opens. */
import { goesOn } from "./clauses";
import { INDENT } from "./format-changes";
import { clauseForm, entryForm } from "./forms";
import { lineAt } from "./text-lines";
import { Comma, tokenize } from "./tokens";
import type { Clause, Entry, Span, Tree } from "./tree";

/** Entries whose clauses nearly always stand on lines of their own. */
export const GO_ON_BELOW: readonly string[] = ["plan", "tools", "yard", "assembly", "box", "step", "built"];
/** Entries that do so while nothing was said behind their name yet. */
export const GO_ON_WHEN_BARE: readonly string[] = ["stock", "sheet", "roll", "fastener", "finish", "fill"];

/** What a line begins with that is begun right under the line at an offset. */
export function indentBelow({ text, entries }: Tree, at: number): string {
  const line = lineAt(text, at);
  const typed = text.slice(line.start, line.end).replace(/^\uFEFF/, "");
  const { tokens } = tokenize(typed);
  const blanks = /^\s*/.exec(typed)![0];
  if (typed.trim() === "") return "";
  if (tokens.length === 0) return blanks;
  const comma = tokens[tokens.length - 1]!.tokenType === Comma;
  if (blanks === "")
    return goesOnBelow(
      tokens[0]!.image,
      tokens.some((t) => t.tokenType === Comma),
      comma,
    );
  const entry = entryAt(entries, line.start + blanks.length);
  const clause = entry?.clauses.findLast((c) => c.start < line.end && c.end > line.start);
  if (!entry) return blanks;
  const opens = entry.start >= line.start;
  if (comma) return blanks + (opens || (clause && opensList(text, entry, clause, line)) ? INDENT : "");
  if (!clause || clause.start >= line.start) return blanks;
  // Behind the last line of a list, what follows stands under the beginning of the list again.
  const first = lineAt(text, clause.start);
  return /^\s*/.exec(text.slice(first.start, first.end))![0] || blanks;
}

function goesOnBelow(word: string, said: boolean, comma: boolean): string {
  const goes = GO_ON_BELOW.includes(word) || (GO_ON_WHEN_BARE.includes(word) && !said);
  const may = comma && (entryForm(word)?.clauses.length ?? 0) > 0;
  return goes || may ? INDENT : "";
}

/** The innermost entry at an offset. */
function entryAt(entries: readonly Entry[], at: number): Entry | undefined {
  const entry = entries.findLast((e) => e.start <= at && at < e.end);
  return entry?.kind === "assembly" ? (entryAt(entry.body, at) ?? entry) : entry;
}

/** Whether a clause that begins on that line is a list, which goes on over its comma. */
function opensList(text: string, entry: Entry, clause: Clause, line: Span): boolean {
  const { tokens } = tokenize(text.slice(clause.start, clause.end));
  const form = clauseForm(entry.keyword.text, (i) => tokens[i]?.image);
  return clause.start >= line.start && goesOn(entry.keyword.text, form?.opens.join(" ") ?? "", true);
}
