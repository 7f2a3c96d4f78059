import type { Check } from "./check";
import { ofKind } from "./faults";

export const endsCross: Check = {
  code: "ends-cross",
  class: "error",
  title: "End cuts that run into each other",
  page: `On a short wide piece, slanted end cuts meet before they reach the far edge, and there is nothing left between them. Make
the piece longer, or its ends less slanted.

\`\`\`sawbuck
part block 2 of 1x6, length 8", long point to long point, ends mitered 45°
\`\`\`

\`\`\`sawbuck
part block 2 of 1x6, length 14", long point to long point, ends mitered 45°
\`\`\``,
  templates: { cross: "The end cuts of “{name}” run into each other: at {least} long they would just meet." },
  run: (worked) =>
    ofKind(worked, "ends-cross").map(({ at, name, least }) => ({
      at,
      about: [name],
      says: "cross",
      slots: { name, least },
    })),
};
