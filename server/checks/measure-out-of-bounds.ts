import { ifKnown } from "../plan";
import type { Check } from "./check";
import { phrase } from "./phrases";
import { apart } from "./writing";

export const measureOutOfBounds: Check = {
  code: "measure-out-of-bounds",
  class: "error",
  title: "A measurement outside its bounds",
  page: `A \`measure\` line may say the least and the most it can be, so that whoever adapts the plan knows how far it goes.

\`\`\`sawbuck
measure rim = 36", at most 32"
part leg 4 of 2x4, length rim
\`\`\`

\`\`\`sawbuck
measure rim = 30", at most 32"
part leg 4 of 2x4, length rim
\`\`\``,
  templates: {
    outside: "“{name}” is {value}, but it must be {comparison} {bound}.",
    bound: "The bound is here.",
  },
  run: ({ measures, settings }) =>
    [...measures.values()].flatMap((measure) => {
      const value = ifKnown(measure.value);
      if (!value) return [];
      return measure.bounds
        .filter((b) => !b.kept)
        .map((b) => {
          const [is, bound] = apart(value, b.value, settings.display);
          return {
            at: measure.declared.at,
            about: [measure.name],
            says: "outside",
            slots: { name: measure.name, value: is, comparison: phrase(b.comparison), bound },
            numbers: [
              { name: measure.name, value, source: "worked out" },
              { name: b.comparison, value: b.value, source: "the measure's own bound" },
            ],
            related: [{ at: b.at, says: "bound", slots: {} }],
          };
        });
    }),
};
