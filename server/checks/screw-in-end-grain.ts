import { cite, endGrainLateral, endGrainWithdrawal, lagEndGrainWithdrawal } from "../trade";
import { intoEnds, isLag, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { kindSlot } from "./screw-words";

/** In the hundred. */
const KEEPS = Math.round(endGrainLateral.value * 100);
/** The same, of a lag screw that is pulled out. */
const LAG_KEEPS = Math.round(lagEndGrainWithdrawal.value * 100);

export const screwInEndGrain: Check = {
  code: "screw-in-end-grain",
  class: "warning",
  title: "A screw in the end of a piece",
  page: `A screw that goes into the end of a board runs along its fibers: its thread cuts them off rather than holding on between
them. Sideways it keeps about ${KEEPS}% of its strength (${cite(endGrainLateral.source)}); against being pulled out nothing
may be counted on (${cite(endGrainWithdrawal.source)}), but for a lag screw, which keeps ${LAG_KEEPS}%
(${cite(lagEndGrainWithdrawal.source)}). Put a block into the corner and screw both pieces to it, drive the
screw from the other side where that goes across the grain, or lean it 30° and more, so that it crosses the fibers.

Where a piece only lies there and carries nothing, let it stand: \`accept screw-in-end-grain on cap because it only covers the rim\`.

\`\`\`sawbuck
part post 2 of 4x4, length 30"
part rail 1 of 2x4, length 40"
fasten rail face into post end, 2 #8 x 3" at each end
\`\`\`

\`\`\`sawbuck
part post 2 of 4x4, length 30"
part rail 1 of 2x4, length 40"
fasten rail face into post face, 2 #8 x 3" at each end
\`\`\``,
  templates: {
    counted:
      "In the end of {into} {a} {kind} keeps {share} of its strength sideways, and {pulled} against being pulled out: {many} in there.",
    uncounted:
      "In the end of {into} {a} {kind} keeps {share} of its strength sideways, and {pulled} against being pulled out.",
    block: "Put a block behind, and drive {a} {kind} across the grain into each of the two.",
    other: "Or drive it from the other side, through {into} into {first}, where that goes across the grain.",
    lean: "Or lean it 30° and more off square, so that it crosses the fibers.",
  },
  run: (worked) =>
    worked.joints.flatMap((joint): Finding[] => {
      const { paths, count, pieces } = intoEnds(joint, worked);
      if (paths.length === 0) return [];
      const names = [...new Set(paths.flatMap((p) => [p.first, p.into]))];
      const owners = [...pieces.flatMap((p) => p.owners.map((o) => o.name)), ...ringsOf(names, worked)];
      const kind = kindSlot(joint);
      const into = { all: [...new Set(paths.map((p) => p.into))] };
      const first = { all: [...new Set(paths.map((p) => p.first))] };
      const { start } = joint.entry.into[0] ?? joint.entry;
      const { end } = joint.entry.into.at(-1) ?? joint.entry;
      return [
        {
          at: { file: joint.at.file, start, end },
          about: [...new Set([...names, ...owners, ...(joint.fastener ? [joint.fastener.name] : [])])],
          says: count === undefined ? "uncounted" : "counted",
          slots: {
            into,
            kind,
            share: phrase("percent", { n: KEEPS }),
            pulled: isLag(joint) ? phrase("percent", { n: LAG_KEEPS }) : phrase("none that counts"),
            ...(count !== undefined && { many: phrase("so many go", { n: count, kind }) }),
          },
          cures: [
            { says: "block", slots: { kind }, edits: [] },
            { says: "other", slots: { into, first }, edits: [] },
            { says: "lean", slots: {}, edits: [] },
          ],
        },
      ];
    }),
};

/** The rings that are made of these parts. */
const ringsOf = (parts: readonly string[], { rings }: Worked): string[] =>
  rings.filter((r) => r.sides.some((s) => parts.includes(s))).map((r) => r.name);
