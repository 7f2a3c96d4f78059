import { AREA, roughly } from "../units";
import { type Covered, coveredFinish, type Worked } from "../worked";
import type { Check, Cure, Finding } from "./check";
import { phrase } from "./phrases";
import { pieceSlot } from "./piece-words";
import { namesOf, stepMoved, stepSlot } from "./step-words";

export const finishAfterCover: Check = {
  code: "finish-after-cover",
  class: "warning",
  title: "Wood is covered before it is finished",
  page: `Outdoors water gets between pieces that lie on each other and stays there longest: just where a finish is wanted most. What a
step \`coats\` after other wood lies on it stays bare there. So pieces are coated before they are put together. The area is
what the pieces cover of each other; a second coat, after one before they were put together, is left alone.

\`\`\`sawbuck
plan Stand
  outdoors
stock 2x4, treated
part leg of 2x4, length 10"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
finish oil, dries 12 h
coat leg and rail with oil
step Screw the rails on
  uses leg and rail
step Oil it
  coats leg and rail
  wait 12 h
\`\`\`

\`\`\`sawbuck
plan Stand
  outdoors
stock 2x4, treated
part leg of 2x4, length 10"
part rail of 1x6, length 30"
place leg upright, wide face front, on floor, at each corner of 30" x 12"
place rail across, on edge, in front of legs, flush with left of legs, flush with top of legs
place rail across, on edge, behind legs, flush with left of legs, flush with top of legs
fasten rail into leg, 2 #8 x 1-5/8" at each crossing
finish oil, dries 12 h
coat leg and rail with oil
step Oil it
  coats leg and rail
  wait 12 h
step Screw the rails on
  uses leg and rail
\`\`\``,
  templates: {
    covered:
      "{area} of {pieces} to be coated here is covered by then, such as where {by} lies on {piece}: outdoors that wood stays bare.",
    first: "Here the first of it is covered.",
    move: "Move this step before {first}",
    before: "Coat them before {first}.",
  },
  run: (worked) =>
    worked.steps.proposed || worked.settings.place !== "outdoors"
      ? []
      : coveredFinish(worked).map((c) => findingOf(c, worked)),
};

function findingOf({ step, pieces, area, piece, by, first }: Covered, worked: Worked): Finding {
  const { space } = worked;
  const before = stepSlot(first, worked);
  const edits = step.uses.length + step.lines.length === 0 ? stepMoved(step, "before", first, worked) : [];
  const cure: Cure = { says: edits.length > 0 ? "move" : "before", slots: { first: before }, edits };
  const covered = roughly(AREA, area);
  return {
    at: step.at,
    about: namesOf(pieces, worked),
    says: "covered",
    slots: {
      area: covered,
      pieces: phrase("so many pieces", { n: pieces.length }),
      by: pieceSlot(space.pieces[by]!),
      piece: pieceSlot(space.pieces[piece]!),
    },
    numbers: [{ name: "covered before it is coated", value: covered, source: "worked out" }],
    related: [{ says: "first", slots: {}, at: first.at }],
    cures: [cure],
  };
}
