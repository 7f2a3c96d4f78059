import type { At } from "../plan";
import type { Worked } from "../worked";
import type { Check, Cure } from "./check";
import { ofKind } from "./faults";
import { type PhraseKey, phrase } from "./phrases";
import { clauseOut, entryAt, textAt } from "./writing";

export const saidTwice: Check = {
  code: "said-twice",
  class: "warning",
  title: "One thing said twice",
  page: `A line says each thing once: one length, one width, one kerf. Where it is said again, the first counts.

\`\`\`sawbuck
part leg 4 of 2x4, length 28", length 30"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
  templates: {
    twice: "“{what}” is said twice; the first counts.",
    first: "It is said first here.",
    leave: "Leave out “{text}”",
  },
  run: (worked) =>
    ofKind(worked, "said-twice")
      .filter(({ at, first }) => !unreadBetween(first, at, worked))
      .map(({ at, what, first }) => ({
        at,
        says: "twice",
        slots: { what: WORDS.has(what) ? phrase(WORDS.get(what)!) : what },
        related: [{ at: first, says: "first", slots: {} }],
        cures: withoutSecond(at, worked),
      })),
};

/** Leaving the second out, where there is no third to take its place. */
function withoutSecond(at: At, worked: Worked): Cure[] {
  const clauses = entryAt(at, worked)?.clauses ?? [];
  const second = clauses.find((c) => c.start === at.start && c.end === at.end);
  if (!second || clauses.filter((c) => c.kind === second.kind).length > 2) return [];
  const edits = clauseOut(at, worked);
  return edits.length > 0 ? [{ says: "leave", slots: { text: textAt(worked, at) }, edits }] : [];
}

/** Said in words already, since no one clause has a name for it. */
const WRITTEN_ALIKE = [
  "which way it is long",
  "flat or on edge",
  "how many across",
  "how many deep",
  "how many high",
] as const;

/** What a builder calls the things whose clauses open otherwise. */
const WORDS: ReadonlyMap<string, PhraseKey> = new Map([
  ["anchored", "anchored to"],
  ["driven", "what it is fastened with"],
  ["fits", "the size"],
  ["joint place", "where it is fastened"],
  ["joint spacing", "on center"],
  ["pack", "box of"],
  ["coats of", "how many coats"],
  ["points", "between which points the length is"],
  ["rips", "whether boards can be ripped"],
  ["salvage", "use up or keep"],
  ["setting", "outdoors or indoors"],
  ["filled", "filled with"],
  ["tapering", "tapering to"],
  ...WRITTEN_ALIKE.map((key) => [key, key] as const),
]);

/** Whether something between the two was not read: then the second may be about another thing. */
const unreadBetween = (first: At, second: At, { loaded }: Worked): boolean =>
  loaded.files
    .find((f) => f.file === second.file)
    ?.tree.complaints.some((c) => c.start >= first.end && c.start < second.start) ?? false;
