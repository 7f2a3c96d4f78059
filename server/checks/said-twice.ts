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
    ofKind(worked, "said-twice").map(({ at, what, first }) => ({
      at,
      says: "twice",
      slots: { what },
      related: [{ at: first, says: "first", slots: {} }],
    })),
};
