import { say } from "../plan";
import type { Check } from "./check";

export const fileNotFound: Check = {
  code: "file-not-found",
  class: "error",
  title: "A file that cannot be read",
  page: `\`shop\` and \`bring\` name a file beside the plan. When it is not there, or cannot be read, everything it would have said is
missing.

\`\`\`sawbuck
shop hilltop-shop.sawbuck
part leg 4 of 2x4, length 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
  templates: { missing: "{path} was not read: {why}." },
  run: ({ loaded }) =>
    loaded.faults
      .filter((f) => f.kind === "not-found")
      .map(({ at, path, why }) => ({ at, says: "missing", slots: { path, why: say(why) } })),
};
