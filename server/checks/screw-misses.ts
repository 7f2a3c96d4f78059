import { type Joint, missingScrews, type Worked } from "../worked";
import type { Check, Finding } from "./check";
import { phrase } from "./phrases";
import { mm, pieceSlot } from "./piece-words";
import { screwSlot } from "./screw-words";

export const screwMisses: Check = {
  code: "screw-misses",
  class: "error",
  title: "A screw that never enters the piece it is meant for",
  page: `Every screw of a placed joint is followed straight on from where it goes in. One that leaves the wood beside the last piece
joins nothing, however long it is: it was angled too far. One that goes in by the end of a board and ends inside it, far from
the piece behind, joins nothing either. Where a somewhat longer screw would do, \`screw-holds-little\` tells it.

\`\`\`sawbuck
part post of 2x2, length 20"
part block of 4x4, length 6"
part slat of 1x2, length 6"
place post upright, wide face front, on floor, 0 from left, 0 from front
place block upright, wide face front, in front of post, flush with left of post, on floor
place slat upright, wide face front, in front of blocks, flush with left of post, on floor
fasten slat through block into post, #8 x 5", angled 60°
\`\`\`

\`\`\`sawbuck
part post of 2x2, length 20"
part block of 1x4, length 6"
part slat of 1x2, length 6"
place post upright, wide face front, on floor, 0 from left, 0 from front
place block upright, wide face front, in front of post, flush with left of post, on floor
place slat upright, wide face front, in front of blocks, flush with left of post, on floor
fasten slat through block into post, #8 x 2-1/2"
\`\`\``,
  templates: {
    misses: "{Screw} through {first} never enters {into}: it comes out of {leaves} beside it{more}.",
    ends: "{Screw} ends inside {leaves}, which is {through} through on its way to {into}{more}.",
    here: "{piece} is placed here.",
    other: "Drive it from the side of {into}, or at an angle close to where they meet.",
    straight: "Drive it straight, or less far off square.",
  },
  run: (worked) => worked.joints.flatMap((joint) => findingsOf(joint, worked)),
};

function findingsOf(joint: Joint, worked: Worked): Finding[] {
  const missing = missingScrews(joint, worked);
  const [one] = missing;
  if (!one) return [];
  const { crossing } = one.screw;
  const [first, into] = [worked.space.pieces[crossing.first]!, worked.space.pieces[crossing.into]!];
  const more = missing.length - 1;
  const slots = {
    screw: screwSlot(joint),
    first: pieceSlot(first),
    into: pieceSlot(into),
    leaves: pieceSlot(one.last),
    through: mm(one.through),
    more: more > 0 ? phrase("as do more", { n: more }) : "",
  };
  return [
    {
      at: joint.angledAt ?? joint.sizeAt ?? joint.at,
      about: [first.part, into.part, ...first.owners.map((o) => o.name)],
      says: one.ends ? "ends" : "misses",
      slots,
      related: [{ says: "here", slots: { piece: slots.into }, at: into.at }],
      cures: [
        one.ends
          ? { says: "other", slots: { into: slots.into }, edits: [] }
          : { says: "straight", slots: {}, edits: [] },
      ],
    },
  ];
}
