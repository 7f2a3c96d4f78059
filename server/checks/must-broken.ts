import { ifKnown } from "../plan";
import type { Check } from "./check";
import { phrase } from "./phrases";
import { apart, textAt } from "./writing";

export const mustBroken: Check = {
  code: "must-broken",
  class: "error",
  title: "A rule of the plan is broken",
  page: `A \`must\` line is the builder's own rule, with its reason. When another measurement changes and breaks it, the plan says so.

\`\`\`sawbuck
measure rim = 36"
must rim at most 32" because small children must reach the soil
\`\`\`

\`\`\`sawbuck
measure rim = 30"
must rim at most 32" because small children must reach the soil
\`\`\``,
  templates: {
    reason: "“{here}” must be {comparison} {right}, because {because}; it is {left}.",
    bare: "“{here}” must be {comparison} {right}; it is {left}.",
  },
  run: (worked) =>
    worked.musts
      .filter((m) => m.holds === false)
      .map((m) => {
        const [left, right] = apart(ifKnown(m.left)!, ifKnown(m.right)!, worked.settings.display);
        return {
          at: m.at,
          says: m.because ? "reason" : "bare",
          slots: {
            here: textAt(worked, { ...m.at, start: m.entry.left.start, end: m.entry.left.end }),
            comparison: phrase(m.entry.comparison),
            left,
            right,
            because: m.because,
          },
          numbers: [
            { name: "is", value: ifKnown(m.left)!, source: "worked out" },
            { name: "must", value: ifKnown(m.right)!, source: "the plan's own rule" },
          ],
        };
      }),
};
