import { isDay } from "../../grammar/calendar";
import type { Check, Finding } from "./check";
import { clauseOut, textAt } from "./writing";

export const builtUnclear: Check = {
  code: "built-unclear",
  class: "warning",
  title: "A record of what was built that does not fit",
  page: `A \`built\` line tells how the thing came out: measures by their names, the length of a part whose line says one, and
boards that took the place of others. What the plan does not say cannot have come out otherwise, and wear is found after
the day it was built.

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
built 2026-05-09
  wear 2025-04-01 One leg is soft at its foot
\`\`\`

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
built 2026-05-09
  wear 2027-04-01 One leg is soft at its foot
\`\`\``,
  templates: {
    "wear-early": "This wear was found on {wear}, before the day it was built, {built}.",
    "no-length":
      "The line of “{name}” says no length: that follows from something else, which is what to measure.",
    "not-measured":
      "“{name}” cannot be measured here: what can is a measure by its name, or the “length of” a part.",
    "not-used": "Nothing in this plan is made of “{name}”, so nothing took its place.",
    same: "“{name}” is what the plan says already.",
    leave: "Leave out “{text}”",
  },
  run: (worked) =>
    worked.built.flatMap(({ date, wear, unclear }): Finding[] => [
      ...unclear.map(({ at, why, name }) => ({
        // The plan may have gone on since.
        ...((why === "not used" || why === "same") && { class: "hint" as const }),
        at,
        about: [name],
        says: SAYS[why],
        slots: { name },
        cures:
          why === "same"
            ? [{ says: "leave", slots: { text: textAt(worked, at) }, edits: clauseOut(at, worked) }]
            : [],
      })),
      ...wear
        .filter((found) => isDay(found.date) && isDay(date) && found.date < date)
        .map((found) => ({
          at: found.at,
          says: "wear-early",
          slots: { wear: found.date, built: date },
        })),
    ]),
};

const SAYS = {
  "no length": "no-length",
  "not measured": "not-measured",
  "not used": "not-used",
  same: "same",
} as const;
