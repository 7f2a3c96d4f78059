import { say } from "../plan";
import { kindWord } from "../worked";
import type { Check } from "./check";
import { baseName } from "./writing";

export const declaredTwice: Check = {
  code: "declared-twice",
  class: "error",
  title: "One name declared twice",
  page: `A name means one thing in a plan, its shop file and the files it brings. Where it is declared again, the first line
counts (the plan's own before the shop's) and the second is passed over. Give one of them another name.
A file is enclosed once, too.

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
part leg 2 of 4x4, length 30"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
part back-leg 2 of 4x4, length 30"
\`\`\``,
  templates: {
    same: "“{name}” is already {kind}: this second one is passed over.",
    elsewhere: "“{name}” is {kind} in {file} too: this line counts, and that one is passed over.",
    first: "The first “{name}” is here.",
    second: "It is declared again here.",
    enclosed: "{path} is enclosed already: this second text of it is passed over.",
  },
  run: ({ scope, loaded }) => [
    ...loaded.faults
      .filter((f) => f.kind === "twice")
      .map(({ at, path }) => ({ at, says: "enclosed", slots: { path } })),
    ...scope.twice.map(({ first, second }) => {
      const about = [second.name];
      const name = second.name;
      // What the plan's builder can change is the plan; the other file may be anyone's.
      if (first.role === "plan" && second.role !== "plan") {
        const slots = { name, kind: say(kindWord(second.kind)), file: baseName(second.at.file) };
        const related = [{ at: second.at, says: "second", slots: {} }];
        return { at: first.at, about, says: "elsewhere", slots, related };
      }
      return {
        at: second.at,
        about,
        says: "same",
        slots: { name, kind: say(kindWord(first.kind)) },
        related: [{ at: first.at, says: "first", slots: { name } }],
      };
    }),
  ],
};
