import type { Check } from "./check";

export const limitWithoutSource: Check = {
  code: "limit-without-source",
  class: "hint",
  title: "A limit that nobody has vouched for",
  page: `What a floor or balcony may carry is not a guess: the building's engineer, its owner or a drawing says so. Write who said it
behind the limit, so that the next reader knows.

\`\`\`sawbuck
plan A trough
  floor limit 58 psf
\`\`\`

\`\`\`sawbuck
plan A trough
  floor limit 58 psf by the building's engineer
\`\`\``,
  templates: {
    floor: "Who says that the floor carries {value}? Write it behind the limit: by the building's engineer.",
    foot: "Who says that one foot may press {value} on the floor? Write it behind the limit: by the building's engineer.",
  },
  run: ({ settings }) =>
    (["floor", "foot"] as const).flatMap((says) => {
      const limit = says === "floor" ? settings.floorLimit : settings.footLimit;
      return limit && !limit.by ? [{ at: limit.at, says, slots: { value: limit.value } }] : [];
    }),
};
