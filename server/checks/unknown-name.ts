import { kindWord } from "../worked";
import type { Check } from "./check";
import { ofKind } from "./faults";

export const unknownName: Check = {
  code: "unknown-name",
  class: "error",
  title: "A name that nothing declares",
  page: `Every name must be declared by some line: a part by \`part\`, a measurement by \`measure\`, a board by \`stock\`, and so
on, in this plan, in its shop file or in a file it brings. A plural such as \`legs\` means all pieces of \`leg\`.

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rimm
\`\`\`

\`\`\`sawbuck
measure rim = 30"
part leg 4 of 2x4, length rim
\`\`\``,
  templates: {
    near: "Nothing here is called “{name}”. Did you mean {near}?",
    unknown: "Nothing here is called “{name}”; {wants} is wanted.",
    "wrong-kind": "“{name}” is {found}, but {wants} is wanted here.",
    swap: "Write “{to}”",
  },
  run: (worked) => [
    ...ofKind(worked, "unknown-name").map((fault) => ({
      at: fault.at,
      about: [fault.name],
      says: fault.near.length > 0 ? "near" : "unknown",
      slots: { name: fault.name, near: fault.near.map((n) => `“${n}”`).join(" or "), wants: fault.wants },
      cures: fault.near.map((to) => ({ says: "swap", slots: { to }, edits: [{ ...fault.at, text: to }] })),
    })),
    ...ofKind(worked, "wrong-kind").map((fault) => ({
      at: fault.at,
      about: [fault.name],
      says: "wrong-kind",
      slots: { name: fault.name, found: kindWord(fault.found), wants: fault.wants },
    })),
  ],
};
