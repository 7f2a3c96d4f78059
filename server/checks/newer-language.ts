import { LANGUAGE } from "../plan";
import type { Check } from "./check";

export const newerLanguage: Check = {
  code: "newer-language",
  class: "error",
  title: "A plan in a newer language",
  page: `The plan says which version of the plan language it is written in. A newer one may mean things by words that this
Sawbuck reads otherwise, so nothing it says about such a plan can be relied on. Get a newer Sawbuck.

\`\`\`sawbuck
plan A bench
  language 2
\`\`\`

\`\`\`sawbuck
plan A bench
  language 1
\`\`\``,
  templates: { newer: "This plan is written in language {found}, but this Sawbuck reads language {read}." },
  run: ({ settings }) =>
    settings.language > LANGUAGE && settings.languageAt
      ? [{ at: settings.languageAt, says: "newer", slots: { found: settings.language, read: LANGUAGE } }]
      : [],
};
