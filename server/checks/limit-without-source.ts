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
    unsaid: "Who says that it carries {value}? Write it behind the limit: by the building's engineer.",
  },
  run: ({ settings }) =>
    [settings.floorLimit, settings.footLimit].flatMap((limit) =>
      limit && !limit.by ? [{ at: limit.at, says: "unsaid", slots: { value: limit.value } }] : [],
    ),
};
