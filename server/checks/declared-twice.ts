import { kindWord } from "../worked";
import type { Check } from "./check";

export const declaredTwice: Check = {
  code: "declared-twice",
  class: "error",
  title: "One name declared twice",
  page: `A name means one thing in a plan, its shop file and the files it brings. Where it is declared again, the first line
counts (the plan's own before the shop's) and the second is passed over. Give one of them another name.

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
    first: "The first “{name}” is here.",
  },
  run: ({ scope }) =>
    scope.twice.map(({ first, second }) => ({
      at: second.at,
      about: [second.name],
      says: "same",
      slots: { name: second.name, kind: kindWord(first.kind) },
      related: [{ at: first.at, says: "first", slots: { name: first.name } }],
    })),
};
