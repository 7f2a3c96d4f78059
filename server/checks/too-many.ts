import { asSays, MOST_FILES } from "../plan";
import type { Check } from "./check";
import { ofKind } from "./faults";

export const tooMany: Check = {
  code: "too-many",
  class: "error",
  title: "More than can be worked out",
  page: `There is a limit to how many pieces, copies, sides, screws or files one plan is worked out for, so that typing never waits. A
number this large is mostly a slip of the finger.

\`\`\`sawbuck
part leg 40000 of 2x4, length 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
  templates: {
    many: "{What}: {found} is too many, and at most {limit} are worked out.",
    files: "This plan brings more files than the {limit} that are read; this one was left out.",
  },
  run: (worked) => [
    ...ofKind(worked, "too-many").map(({ at, what, found, limit }) => ({
      at,
      says: "many",
      slots: { what: asSays(what), found, limit },
    })),
    ...worked.loaded.faults
      .filter((f) => f.kind === "too-many")
      .map(({ at }) => ({ at, says: "files", slots: { limit: MOST_FILES } })),
  ],
};
