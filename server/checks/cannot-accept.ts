import { linesOf } from "../../grammar/lines";
import { nearest } from "../../grammar/near";
import type { Worked } from "../worked";
import { accepts } from "./accepting";
import type { Check, Cure, Finding, Problem } from "./check";
import { CODES } from "./codes";
import { phrase } from "./phrases";
import { entryAt, entryOut } from "./writing";

export const cannotAccept: Check = {
  code: "cannot-accept",
  class: "warning",
  title: "An accept line that does nothing",
  page: `\`accept\` lets a warning, a hint or a hazard stand, with a reason that is printed on the sheet. An error cannot be accepted,
since the thing could not be built; and a line whose problem is gone can be taken out.

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
accept screw-holds-little on leg because the leg is glued too
\`\`\`

\`\`\`sawbuck
part leg 4 of 2x4, length 28"
\`\`\``,
  templates: {
    near: "There is no problem called “{code}”. Did you mean “{near}”?",
    unknown: "There is no problem called “{code}”.",
    error: "“{code}” is an error and cannot be accepted: it could not be built like that.",
    reason: "Say why: accept {code} … because …",
    gone: "Nothing reports “{code}”{on}, so there is nothing to accept.",
    swap: "Write “{to}”",
    out: "Take the line out",
  },
  run: (worked, found) => worked.accepted.flatMap((line) => findings(line, found, worked)),
};

type Line = Worked["accepted"][number];

function findings(line: Line, found: readonly Problem[], worked: Worked): Finding[] {
  const { at, code } = line;
  const of = (says: string, more: Partial<Finding> = {}): Finding[] => [
    { at, says, slots: { code }, ...more },
  ];
  if (!CODES.includes(code)) {
    const [near] = nearest(code, CODES);
    if (!near) return of("unknown");
    const mends = found.some((p) => accepts({ ...line, code: near }, p));
    const cures = mends ? [{ says: "swap", slots: { to: near }, edits: [{ ...at, text: near }] }] : [];
    return of("near", { slots: { code, near }, cures });
  }
  if (!line.because) return of("reason");
  const same = found.filter((p) => accepts(line, p));
  // While something of the plan cannot be worked out, it may only be silent.
  if (same.length === 0 && found.some((p) => p.class === "error" && entryAt(p.at, worked)?.kind !== "built"))
    return [];
  if (same.length === 0) {
    return of("gone", {
      class: "hint",
      slots: { code, on: line.on ? phrase("on it", { name: line.on }) : "" },
      cures: withoutLine(line, worked),
    });
  }
  return same.every((p) => p.class === "error") ? of("error", { cures: withoutLine(line, worked) }) : [];
}

/** Taking the line out, where all that goes with it could be read. */
function withoutLine({ at }: Line, worked: Worked): Cure[] {
  const tree = worked.loaded.files.find((f) => f.file === at.file)?.tree;
  const entry = entryAt(at, worked);
  if (!tree || !entry) return [];
  const { start, end } = linesOf(tree.text, entry);
  if (tree.complaints.some((c) => start <= c.end && c.start < end)) return [];
  return [
    {
      says: "out",
      slots: {},
      get edits() {
        return [entryOut(at.file, entry, worked)];
      },
    },
  ];
}
