/** What a selection grows to, step by step: the word, what it belongs to, the clause, the entry, all of the plan. */
import type { Entry, Span, Tree } from "../../grammar/tree";

/** From the smallest stretch around an offset to the whole text; each lies inside the next and is larger. */
export function selectionsAt({ text, entries, comments }: Tree, offset: number): Span[] {
  const around = (s: Span): boolean => s.start <= offset && offset <= s.end && s.start < s.end;
  const found: Span[] = [];
  const comment = comments.find(around);
  if (comment) found.push(trimmed(text, { ...comment, start: comment.start + 1 }), comment);
  const look = (node: object): void => {
    for (const value of Object.values(node)) {
      if (value === null || typeof value !== "object") continue;
      if (isSpan(value) && around(value)) found.push(value);
      if (!isSpan(value) || around(value)) look(value);
    }
  };
  for (const entry of entries.filter(around)) {
    found.push(entry, withNotes(entry, text, comments));
    look(entry);
  }
  found.push({ start: 0, end: text.length });
  return nested(found.filter((s) => s.start <= offset && offset <= s.end));
}

/** With the lines of notes right above it. */
function withNotes(entry: Entry, text: string, comments: Tree["comments"]): Span {
  let { start } = entry;
  for (let i = comments.length - 1; i >= 0; i--) {
    const { start: from, end } = comments[i]!;
    if (end <= start && /^(\r\n|\r|\n)[ \t]*$/.test(text.slice(end, start)) && opensLine(text, from))
      start = from;
  }
  return { start, end: entry.end };
}

const opensLine = (text: string, at: number): boolean =>
  /(^|[\r\n\uFEFF])[ \t]*$/.test(text.slice(Math.max(0, at - 200), at));

const trimmed = (text: string, { start, end }: Span): Span => {
  const words = text.slice(start, end);
  return { start: start + (words.length - words.trimStart().length), end: start + words.trimEnd().length };
};

const isSpan = (node: object): node is Span =>
  "start" in node && typeof node.start === "number" && "end" in node && typeof node.end === "number";

/** The smallest first; what only overlaps another is left out. */
function nested(spans: readonly Span[]): Span[] {
  const bySize = [...spans].sort((a, b) => a.end - a.start - (b.end - b.start));
  const chain: Span[] = [];
  for (const { start, end } of bySize) {
    const last = chain[chain.length - 1];
    const larger = !last || (start <= last.start && last.end <= end && end - start > last.end - last.start);
    if (larger) chain.push({ start, end });
  }
  return chain;
}
