import type { Check, Finding } from "./check";
import { syntaxCheck } from "./syntax";

const plain = syntaxCheck(
  "bad-date",
  "A date that cannot be read",
  `A date is written with the year first, then the month, then the day: \`2026-05-09\`. In any other order it may be read as
another day elsewhere.

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
built 9/5/2026 by the garden class
\`\`\`

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
built 2026-05-09 by the garden class
\`\`\``,
);

/** Of a day that may be two, each can be chosen. */
export const badDate: Check = {
  ...plain,
  run: (worked, found) =>
    plain.run(worked, found).map((finding): Finding => {
      if (finding.says !== "either") return finding;
      const days = [finding.slots.better, finding.slots.other].filter((text) => typeof text === "string");
      const cures = days.map((text) => ({
        says: "write",
        slots: { text },
        edits: [{ ...finding.at, text }],
      }));
      return { ...finding, cures };
    }),
};
