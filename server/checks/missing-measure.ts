import type { Check } from "./check";
import { ofKind } from "./faults";

export const missingMeasure: Check = {
  code: "missing-measure",
  class: "error",
  title: "A measurement that is not yet taken",
  page: `A \`measure\` line without a value is a measurement still to be taken in the place itself. Everything that follows from it
waits for it.

\`\`\`sawbuck
measure wall
part shelf 1 of 1x6, length wall - 1"
\`\`\`

\`\`\`sawbuck
measure wall = 41-1/2"
part shelf 1 of 1x6, length wall - 1"
\`\`\``,
  templates: { missing: "“{name}” has no value yet. Measure it, and write it behind an = sign." },
  run: (worked) =>
    ofKind(worked, "missing-measure").map(({ at, name }) => ({
      at,
      about: [name],
      says: "missing",
      slots: { name },
    })),
};
