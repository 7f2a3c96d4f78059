import { say } from "../plan";
import type { Check } from "./check";

export const fileNotFound: Check = {
  code: "file-not-found",
  class: "error",
  title: "A file that cannot be read",
  page: `\`shop\` and \`bring\` name a file beside the plan. When it is not there, or cannot be read, everything it would have said is
missing.

What is named lies in the folder you work in: in an editor the open folder that holds the plan, on the command line the folder
it is run in, and for a plan anywhere else that plan's own folder. A path is written from the file it stands in. One that leads
out of that folder, through a link too, is not read: open or run in a folder that holds both, or put the file beside the plan.
Your own shop file (\`--shop FILE\`, or the setting \`sawbuck.shopFile\`) may lie anywhere.

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
