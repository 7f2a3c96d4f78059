/** A text with edits put into it. */
import type { Edit } from "../checks";

/** Those at one place come in the order given. Edits do not overlap. */
export function changed(text: string, edits: readonly Omit<Edit, "file">[]): string {
  const inOrder = edits
    .map((e, i) => ({ e, i }))
    .sort((a, b) => b.e.start - a.e.start || b.e.end - a.e.end || b.i - a.i);
  return inOrder.reduce((t, { e }) => t.slice(0, e.start) + e.text + t.slice(e.end), text);
}
