import { lookUp } from "../plan";
import type { Check } from "./check";
import { isPlaced, mayBePlaced } from "./placed";

export const countMissing: Check = {
  code: "count-missing",
  class: "error",
  title: "How many of a part is not said",
  page: `A part without a count is counted by the rings it is in, or by the lines that place it. Where there are none, its line must
say how many.

\`\`\`sawbuck
part leg of 2x4, length 28"
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
  templates: {
    missing:
      "How many of “{name}”? Its line does not say, and nothing else counts them. Write it like: {example}",
  },
  run: (worked) =>
    [...worked.parts.values()]
      .filter((p) => p.counted === "unknown" && !isPlaced(p.name, worked) && !mayBePlaced(p.name, worked))
      .filter(
        (p) =>
          !worked.faults.some(
            (f) => f.kind === "unknown-name" && f.near.some((n) => lookUp(worked.scope, n)?.name === p.name),
          ),
      )
      .filter((p) => p.declared.entry.kind === "part" && !p.declared.entry.count)
      .map((p) => ({
        at: p.declared.at,
        about: [p.name],
        says: "missing",
        slots: { name: p.name, example: `part ${p.name} 4 of ${p.material?.name ?? "2x4"}` },
      })),
};
