import type { At } from "../plan";
import type { Worked } from "../worked";
import type { Check } from "./check";
import { ofKind } from "./faults";

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
  templates: { twice: "“{what}” is said twice; the first counts.", first: "It is said first here." },
  run: (worked) =>
    ofKind(worked, "said-twice")
      .filter(({ at, first }) => !unreadBetween(first, at, worked))
      .map(({ at, what, first }) => ({
        at,
        says: "twice",
        slots: { what: WORDS[what] ?? what },
        related: [{ at: first, says: "first", slots: {} }],
      })),
};

/** What a builder calls the things whose clauses open otherwise. */
const WORDS: Readonly<Record<string, string>> = {
  driven: "what it is fastened with",
  fits: "the size",
  "joint place": "where it is fastened",
  "joint spacing": "on center",
  pack: "box of",
  points: "between which points the length is",
  rips: "whether boards can be ripped",
  salvage: "use up or keep",
  setting: "outdoors or indoors",
  filled: "filled with",
  tapering: "tapering to",
};

/** Whether something between the two was not read: then the second may be about another thing. */
const unreadBetween = (first: At, second: At, { loaded }: Worked): boolean =>
  loaded.files
    .find((f) => f.file === second.file)
    ?.tree.complaints.some((c) => c.start >= first.end && c.start < second.start) ?? false;
